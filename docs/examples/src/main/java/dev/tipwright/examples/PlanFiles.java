package dev.tipwright.examples;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlan;
import dev.tipwright.core.plan.PlanText;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.fitcheck.TipFit;
import dev.tipwright.fitcheck.draw.SectionDrawing;
import dev.tipwright.swingweight.ClubBalance;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import dev.tipwright.swingweight.set.ChartClub;
import dev.tipwright.swingweight.set.SetChart;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A plan as files: for the wall, for a browser, for a program, and a drawing of each finished tip in its bore.
 *
 * @param plan of all clubs
 * @param units to print in
 * @param bench what things were measured with, if that is said
 */
record PlanFiles(JobPlan plan, Units units, Optional<BenchUncertainty> bench) {
    /** A clearance of a few thousandths is then as wide on the page as the wall of a hosel. */
    private static final int EXAGGERATION = 20;

    /** The page for the wall. */
    String page() {
        return bench.map(known -> PlanText.plain(plan, units, known)).orElseGet(() -> PlanText.plain(plan, units));
    }

    private String markdown() {
        return bench.map(known -> PlanText.markdown(plan, units, known))
                .orElseGet(() -> PlanText.markdown(plan, units));
    }

    /** Writes all of them to a folder, which is made if it is not there. */
    void writeTo(Path output) throws IOException {
        Path folder = Files.createDirectories(output);
        Files.writeString(folder.resolve("plan.txt"), page());
        Files.writeString(folder.resolve("plan.md"), markdown());
        Files.writeString(folder.resolve("plan.json"), PlanJson.write(plan));
        Path asBuilt = folder.resolve("as-built.csv");
        if (Files.notExists(asBuilt)) {
            Files.writeString(asBuilt, asBuilt());
        }
        Optional<String> chart = chart();
        if (chart.isPresent()) {
            Files.writeString(folder.resolve("set.svg"), chart.get());
        }
        List<ClubPlan> clubs = plan.clubs();
        for (int i = 0; i < clubs.size(); i++) {
            Optional<TipFit> fit = clubs.get(i).find(TipFit.class);
            if (fit.isPresent()) {
                Files.writeString(folder.resolve(drawingName(i, clubs.get(i).label())), drawing(fit.get()));
            }
        }
    }

    /** What each club should be, in the order of the bench, with room for what it was found to be; a sheet that somebody may have filled in is kept. */
    private String asBuilt() throws IOException {
        StringWriter sheet = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(sheet)) {
            csv.writeRecord("club", "measured", "predicted", "found");
            for (ClubPlan club : plan.clubs()) {
                club.find(ClubBalance.class).ifPresent(balance -> {
                    AsBuilt.Measures predicted = AsBuilt.Measures.predictedBy(club);
                    String reads = balance.scale().designation(predicted.swingWeight());
                    String mass = Term.of("m", "total mass", predicted.mass()).text(units);
                    predicted
                            .frequency()
                            .map(f -> Term.of("f", "frequency", f).text(units))
                            .ifPresent(f -> csv.writeRecord(club.label(), "frequency before tape and grip", f, ""));
                    csv.writeRecord(club.label(), "length along the shaft", text(predicted.length()), "");
                    csv.writeRecord(club.label(), "swing weight", reads, "");
                    csv.writeRecord(club.label(), "total mass", mass, "");
                    csv.writeRecord(club.label(), "balance from the top", text(predicted.balance()), "");
                });
            }
        }
        return sheet.toString();
    }

    private String text(Length length) {
        return Term.of("L", "a length", length).text(units);
    }

    /** The whole set at a glance; only where it is said how sure the numbers are, and a scale was used. */
    private Optional<String> chart() {
        Optional<SwingWeightScale> scale = plan.clubs().stream()
                .flatMap(club -> club.find(ClubBalance.class).stream())
                .map(ClubBalance::scale)
                .findFirst();
        List<ChartClub> clubs = bench.stream()
                .flatMap(known -> plan.clubs().stream().flatMap(club -> ChartClub.of(club, known).stream()))
                .toList();
        return scale.filter(known -> !clubs.isEmpty()).map(known -> new SetChart(known, clubs).svg());
    }

    /** The number keeps two labels apart that differ in what a file name cannot hold. */
    private static String drawingName(int index, String label) {
        return "tip-" + (index + 1) + "-" + label.replaceAll("[^A-Za-z0-9]+", "-") + ".svg";
    }

    /** As deep as the tip seats; of a bore that goes on below a mark no more is drawn. */
    private String drawing(TipFit fit) {
        return SectionDrawing.svg(
                fit.removal().profile(), fit.bore().shallowedTo(fit.insertion()), EXAGGERATION, units);
    }
}
