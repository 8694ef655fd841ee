import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Draws the figures of the Javadoc. */
public final class Figures {

    private Figures() {}

    /**
     * Writes each figure into a folder.
     *
     * @param args the folder, which is there
     * @throws IOException if it cannot
     */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        write(folder, "job", CoreFigures.job());
        write(folder, "modules", CoreFigures.modules());
        write(folder, "grid", CoreFigures.grid());
        write(folder, "stations", CoreFigures.stations());
        write(folder, "parts", CoreFigures.parts());
        write(folder, "build", CoreFigures.build());
        write(folder, "evidence", CoreFigures.evidence());
        write(folder, "trim", CoreFigures.trim());
        write(folder, "lengths", CoreFigures.lengths());
        write(folder, "plane", CoreFigures.plane());
        write(folder, "cut", CoreFigures.cut());
        write(folder, "density", CoreFigures.density());
        write(folder, "offcut", CoreFigures.offcut());
        write(folder, "match", CoreFigures.match());
        write(folder, "flex", CoreFigures.flex());
        write(folder, "grip", CoreFigures.grip());
        write(folder, "turn", CoreFigures.turn());
        write(folder, "budget", CoreFigures.budget());
        write(folder, "section", FitFigures.section());
        write(folder, "stages", FitFigures.stages());
        write(folder, "lean", FitFigures.lean());
        write(folder, "shim", FitFigures.shim());
        write(folder, "fit", FitFigures.fit());
        write(folder, "seated", FitFigures.seated());
        write(folder, "shear", FitFigures.shear());
        write(folder, "pairs", FitFigures.pairs());
        write(folder, "pulled", FitFigures.pulled());
        write(folder, "fulcrum", SwingFigures.fulcrum());
        write(folder, "set", SwingFigures.set());
        write(folder, "arms", SwingFigures.arms());
        write(folder, "weight", SwingFigures.weight());
        write(folder, "moment", SwingFigures.moment());
        write(folder, "centre", SwingFigures.centre());
    }

    private static void write(Path folder, String name, String svg) throws IOException {
        Files.writeString(folder.resolve(name + ".svg"), svg);
    }
}
