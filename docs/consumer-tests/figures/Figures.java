import dev.tipwright.core.part.Finish;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.fitcheck.draw.SectionDrawing;
import dev.tipwright.fitcheck.draw.StageDrawing;
import dev.tipwright.fitcheck.taper.MaterialRemoval;
import dev.tipwright.fitcheck.taper.StageTable;
import dev.tipwright.fitcheck.taper.StagedTip;
import dev.tipwright.fitcheck.taper.TipSection;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import dev.tipwright.swingweight.set.ChartClub;
import dev.tipwright.swingweight.set.SetChart;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Draws the figures of the Javadoc. Those of a tip, its stages and a set are drawn by the library itself, the others here.
 *
 * <pre>java -cp JARS Figures.java FOLDER</pre>
 */
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
        write(folder, "job", job());
        write(folder, "lengths", lengths());
        write(folder, "cut", cut());
        write(folder, "flex", flex());
        write(folder, "section", section());
        write(folder, "stages", stages());
        write(folder, "lean", lean());
        write(folder, "shim", shim());
        write(folder, "fulcrum", fulcrum());
        write(folder, "set", set());
    }

    private static void write(Path folder, String name, String svg) throws IOException {
        Files.writeString(folder.resolve(name + ".svg"), svg);
    }

    // --- By the library

    private static Bore bore() {
        return Bore.ofTwoDiameters(in(".363"), in(".355"), in("1 1/4"), BoreEnd.FLAT);
    }

    private static String section() {
        return SectionDrawing.svg(DiameterProfile.cylinder(in(".359"), in("8")), bore(), 20, Units.INCH);
    }

    private static String stages() {
        DiameterProfile tip = DiameterProfile.cylinder(in(".3685"), in("8"));
        MaterialRemoval removal = MaterialRemoval.of(TipSection.of(tip, Finish.NONE), bore(), bore().depth(), in(".004"));
        StagedTip staged = new StagedTip(tip, removal.profile(), bore(), bore().depth());
        return StageDrawing.svg(StageTable.of(staged, in(".001")), Units.INCH);
    }

    private static String set() {
        SwingWeightScale scale = SwingWeightScale.LETTERS_AT_14_INCHES;
        String[] reads = {"D1", "D1.4", "D2.3", "D1.8", "D2", "D2.6"};
        List<ChartClub> clubs = new ArrayList<>();
        for (int i = 0; i < reads.length; i++) {
            clubs.add(new ChartClub(
                    String.valueOf(4 + i),
                    scale.parse(reads[i]),
                    0.5,
                    Mass.ofGrams(404 + 7 * i),
                    Mass.ofGrams(0.6),
                    Inertia.ofKilogramSquareCentimetres(2740 - 14 * i),
                    Inertia.ofKilogramSquareCentimetres(8),
                    new ChartClub.Wanted(Optional.of(scale.parse("D2")), Optional.empty(), Optional.empty())));
        }
        return new SetChart(scale, clubs).svg();
    }

    // --- By hand

    /** The steps of the job and the package that each is in. */
    private static String job() {
        String[][] steps = {
            {"take in", "core.part", "core.profile"},
            {"share out", "core.match", "fitcheck.set"},
            {"tip trim", "core.trim", "core.cut"},
            {"fit", "fitcheck.insert", "fitcheck.taper"},
            {"length", "core.length", "core.rules"},
            {"balance", "swingweight.scale", "swingweight.aim"},
            {"grip", "core.grip", "core.orient"},
            {"check", "core.uncertainty", "swingweight.learn"},
        };
        Sheet sheet = new Sheet(1100, 190, "The job, step by step", "Eight steps from left to right, each with its packages.");
        for (int i = 0; i < steps.length; i++) {
            double x = 10 + i * 137;
            sheet.box(x, 40, 124, 78);
            sheet.text(x + 62, 64, "middle", steps[i][0], true);
            sheet.text(x + 62, 88, "middle", steps[i][1], false);
            sheet.text(x + 62, 106, "middle", steps[i][2], false);
            if (i + 1 < steps.length) {
                sheet.arrow(x + 124, 79, x + 137, 79);
            }
        }
        sheet.text(10, 24, "start", "before the planner", false);
        sheet.text(286, 24, "start", "steps of one planner, in the order in which one needs another", false);
        sheet.line(277.5, 12, 277.5, 134);
        sheet.line(962.5, 12, 962.5, 134);
        sheet.text(971, 24, "start", "after it", false);
        sheet.text(10, 156, "start", "core.plan: Build, then WorkStep by WorkStep, gives a ClubPlan; PlanText prints it", false);
        sheet.text(10, 176, "start", "core.evidence: source, reading, term, working, finding, caution, at every step", false);
        return sheet.text();
    }

    /** The club with the symbols of its lengths. */
    private static String lengths() {
        Sheet sheet = new Sheet(900, 270, "What a playing length is made of", "L = g + S + (B - i) + G along the axis of the shaft.");
        double top = 30;
        double butt = 60;
        double mouth = 640;
        double tip = 730;
        double bottom = 790;
        double ground = 860;
        sheet.box(top, 84, 190, 32); // grip
        sheet.line(butt, 92, butt, 108);
        sheet.line(220, 92, tip, 92);
        sheet.line(220, 108, tip, 108);
        sheet.line(tip, 92, tip, 108);
        sheet.line(mouth, 78, bottom, 78);
        sheet.line(mouth, 122, bottom, 122);
        sheet.line(mouth, 78, mouth, 92);
        sheet.line(mouth, 108, mouth, 122);
        sheet.line(bottom, 78, bottom, 122);
        sheet.line(bottom, 78, ground - 8, 66);
        sheet.line(bottom, 122, ground - 8, 134);
        sheet.line(ground, 50, ground, 150);
        sheet.text(125, 76, "middle", "grip", false);
        sheet.text(450, 84, "middle", "shaft", false);
        sheet.text(715, 70, "middle", "hosel", false);
        sheet.text(ground - 4, 44, "end", "ground", false);
        sheet.span(top, butt, 150, "g");
        sheet.span(butt, tip, 150, "S");
        sheet.span(tip, bottom, 150, "B - i");
        sheet.span(bottom, ground, 150, "G");
        sheet.span(mouth, tip, 186, "i");
        sheet.span(mouth, ground, 218, "H");
        sheet.span(top, ground, 254, "L = g + S + (B - i) + G");
        return sheet.text();
    }

    /** The raw shaft with its marks. */
    private static String cut() {
        Sheet sheet = new Sheet(900, 190, "Where the saw runs", "T + S + U = R; the kerf k lies inside the waste.");
        double tip = 30;
        double tipMark = 150;
        double buttMark = 720;
        double butt = 870;
        sheet.box(tip, 60, tipMark - tip - 12, 24);
        sheet.hatched(tipMark - 12, 60, 12, 24);
        sheet.box(tipMark, 60, buttMark - tipMark, 24);
        sheet.hatched(buttMark, 60, 12, 24);
        sheet.box(buttMark + 12, 60, butt - buttMark - 12, 24);
        sheet.line(tipMark, 46, tipMark, 96);
        sheet.line(buttMark, 46, buttMark, 96);
        sheet.text(tipMark, 40, "middle", "mark", false);
        sheet.text(buttMark, 40, "middle", "mark", false);
        sheet.text(tip, 40, "start", "raw tip", false);
        sheet.text(butt, 40, "end", "raw butt", false);
        sheet.text((tip + tipMark - 12) / 2, 77, "middle", "offcut", false);
        sheet.text((tipMark + buttMark) / 2, 77, "middle", "the finished shaft", false);
        sheet.text((buttMark + 12 + butt) / 2, 77, "middle", "offcut", false);
        sheet.span(tip, tipMark, 118, "T");
        sheet.span(tipMark, buttMark, 118, "S");
        sheet.span(buttMark, butt, 118, "U");
        sheet.span(tip, butt, 156, "R");
        return sheet.text();
    }

    /** The club as a beam. */
    private static String flex() {
        Sheet sheet = new Sheet(800, 200, "A club as a beam", "Clamped at the butt; the head and what is fixed to it are one rigid body.");
        sheet.hatched(30, 60, 90, 24);
        sheet.hatched(30, 108, 90, 24);
        sheet.line(30, 90, 640, 90);
        sheet.line(30, 102, 640, 100);
        List<double[]> swung = new ArrayList<>();
        for (int i = 0; i <= 40; i++) {
            double s = i / 40.0;
            double y = s * s * (6 - 4 * s + s * s) / 3; // a straight beam under its own weight
            swung.add(new double[] {120 + s * 520, 95 + 56 * y});
        }
        sheet.dashed(swung);
        sheet.box(640, 84, 40, 22);
        sheet.box(680, 76, 74, 46);
        sheet.text(75, 52, "middle", "clamp", false);
        sheet.text(370, 78, "middle", "EI(z) bends, mu(z) is moved", false);
        sheet.text(717, 104, "middle", "head", false);
        sheet.text(640, 70, "middle", "hosel mouth", false);
        sheet.span(120, 640, 182, "beam");
        return sheet.text();
    }

    /** A shaft that leans in its bore. */
    private static String lean() {
        Sheet sheet = new Sheet(800, 230, "How far a shaft can lean", "It turns until it touches one side at z1 and the other at z2.");
        sheet.hatched(60, 30, 480, 26);
        sheet.hatched(60, 160, 480, 26);
        sheet.line(540, 56, 540, 160);
        double fall = 0.07; // drawn far more than any club allows
        double right = 56 + fall * 470;
        sheet.polygon(10, 56 - fall * 50, 530, right, 530, 160, 10, 160 - fall * 520);
        sheet.dot(60, 56);
        sheet.dot(530, 160);
        sheet.text(66, 78, "start", "touches at z2", false);
        sheet.text(520, 146, "end", "touches at z1", false);
        sheet.text(560, 74, "start", "c(z1), c(z2): clearance, diametral", false);
        sheet.text(560, 98, "start", "lean allowed: the least of", false);
        sheet.text(560, 122, "start", "(c(z1) + c(z2)) / (2 (z2 - z1))", true);
        sheet.span(60, 530, 214, "z2 - z1");
        return sheet.text();
    }

    /** The same gap, filled or opened. */
    private static String shim() {
        Sheet sheet = new Sheet(800, 240, "Two other ways to a fit", "A shim fills a loose bore on both sides; a cutter opens a tight one.");
        for (int side = 0; side < 2; side++) {
            double x = 30 + side * 390;
            boolean shim = side == 0;
            sheet.text(x, 24, "start", shim ? "too loose: a shim of wall t" : "too tight: a cutter through the bore", true);
            sheet.hatched(x, 40, 340, 26);
            sheet.hatched(x, 174, 340, 26);
            if (shim) {
                sheet.box(x, 72, 340, 10);
                sheet.box(x, 158, 340, 10);
                sheet.box(x, 88, 340, 64);
                sheet.text(x + 170, 124, "middle", "tip", false);
                sheet.text(x, 224, "start", "left on the diameter: c - 2 t", false);
            } else {
                sheet.dashed(List.of(new double[] {x, 74}, new double[] {x + 340, 80}));
                sheet.dashed(List.of(new double[] {x, 166}, new double[] {x + 340, 160}));
                sheet.text(x + 170, 124, "middle", "bore as it was (dashed), and opened", false);
                sheet.text(x, 224, "start", "wall left: (outside - bore) / 2, by the caller's limit", false);
            }
        }
        return sheet.text();
    }

    /** The club on its scale. */
    private static String fulcrum() {
        Sheet sheet = new Sheet(800, 200, "What a swing weight scale reads", "The moment of every part about a fulcrum near the grip.");
        sheet.line(40, 80, 700, 80);
        sheet.box(40, 72, 150, 16);
        sheet.box(700, 58, 60, 44);
        sheet.polygon(290, 82, 274, 112, 306, 112);
        sheet.text(115, 66, "middle", "grip", false);
        sheet.text(730, 48, "middle", "head", false);
        sheet.arrow(115, 92, 115, 118);
        sheet.arrow(365, 84, 365, 118);
        sheet.arrow(730, 104, 730, 130);
        sheet.text(365, 134, "middle", "m of the shaft", false);
        sheet.text(730, 146, "middle", "m of the head", false);
        sheet.text(115, 134, "middle", "m of the grip", false);
        sheet.span(40, 290, 160, "F");
        sheet.span(290, 730, 160, "x - F");
        sheet.text(300, 190, "middle", "M = sum of m (x - F)", true);
        sheet.text(560, 190, "middle", "P = (M - M0) / K", true);
        return sheet.text();
    }

    private static Length in(String inches) {
        return Length.parse(inches + " in");
    }

    /** Black lines on white, and words in them. */
    private static final class Sheet {

        private final StringBuilder svg = new StringBuilder();

        Sheet(int width, int height, String title, String description) {
            svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"" + width + "\" height=\"" + height
                    + "\" viewBox=\"0 0 " + width + " " + height
                    + "\" font-family=\"sans-serif\" font-size=\"12\" stroke=\"black\" fill=\"none\">\n");
            svg.append("<title>" + title + "</title>\n<desc>" + description + "</desc>\n");
            svg.append("<defs><pattern id=\"cut\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\">"
                    + "<path d=\"M0 6 L6 0\" stroke-width=\"0.7\"/></pattern></defs>\n");
            svg.append("<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"white\" stroke=\"none\"/>\n");
        }

        void line(double x1, double y1, double x2, double y2) {
            add("<path d=\"M%s %s L%s %s\"/>", x1, y1, x2, y2);
        }

        void dashed(List<double[]> points) {
            StringBuilder way = new StringBuilder();
            points.forEach(point -> way.append(way.isEmpty() ? "" : " ").append(n(point[0]) + "," + n(point[1])));
            svg.append("<polyline points=\"" + way + "\" stroke-dasharray=\"5 4\"/>\n");
        }

        void polygon(double... xy) {
            StringBuilder way = new StringBuilder();
            for (int i = 0; i < xy.length; i += 2) {
                way.append(i == 0 ? "" : " ").append(n(xy[i]) + "," + n(xy[i + 1]));
            }
            svg.append("<polygon points=\"" + way + "\" fill=\"white\"/>\n");
        }

        void box(double x, double y, double width, double height) {
            add("<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"white\"/>", x, y, width, height);
        }

        void hatched(double x, double y, double width, double height) {
            add("<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"url(#cut)\"/>", x, y, width, height);
        }

        void dot(double x, double y) {
            add("<circle cx=\"%s\" cy=\"%s\" r=\"4\" fill=\"black\"/>", x, y);
        }

        void arrow(double x1, double y1, double x2, double y2) {
            line(x1, y1, x2, y2);
            head(x1, y1, x2, y2);
        }

        private void head(double x1, double y1, double x2, double y2) {
            double length = Math.hypot(x2 - x1, y2 - y1);
            double ux = (x2 - x1) / length * 7;
            double uy = (y2 - y1) / length * 7;
            add("<path d=\"M%s %s L%s %s L%s %s Z\" fill=\"black\"/>",
                    x2, y2, x2 - ux - uy / 2.5, y2 - uy + ux / 2.5, x2 - ux + uy / 2.5, y2 - uy - ux / 2.5);
        }

        /** A dimension from one place to another, its name on it. */
        void span(double x1, double x2, double y, String name) {
            line(x1, y - 7, x1, y + 7);
            line(x2, y - 7, x2, y + 7);
            line(x1, y, x2, y);
            if (x2 - x1 > 24) {
                head(x1 + 8, y, x1, y);
                head(x2 - 8, y, x2, y);
            }
            text((x1 + x2) / 2, y - 5, "middle", name, true);
        }

        void text(double x, double y, String anchor, String words, boolean strong) {
            svg.append("<text x=\"" + n(x) + "\" y=\"" + n(y) + "\" text-anchor=\"" + anchor + "\" fill=\"black\" stroke=\"none\""
                    + (strong ? " font-weight=\"bold\"" : "") + ">" + words + "</text>\n");
        }

        private void add(String element, double... numbers) {
            Object[] words = new Object[numbers.length];
            for (int i = 0; i < numbers.length; i++) {
                words[i] = n(numbers[i]);
            }
            svg.append(String.format(Locale.ROOT, element, words)).append('\n');
        }

        /** Tenths are as fine as a screen shows. */
        private static String n(double number) {
            return String.valueOf(Math.round(number * 10) / 10.0);
        }

        String text() {
            return svg + "</svg>\n";
        }
    }
}
