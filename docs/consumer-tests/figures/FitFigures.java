import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Stress;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.fitcheck.TipFit;
import dev.tipwright.fitcheck.bond.ShearLag;
import dev.tipwright.fitcheck.bond.Tube;
import dev.tipwright.fitcheck.draw.SectionDrawing;
import dev.tipwright.fitcheck.draw.StageDrawing;
import dev.tipwright.fitcheck.set.AssemblyAim;
import dev.tipwright.fitcheck.set.LabelledBore;
import dev.tipwright.fitcheck.set.LabelledTip;
import dev.tipwright.fitcheck.set.SelectiveAssembly;
import dev.tipwright.fitcheck.taper.MaterialRemoval;
import dev.tipwright.fitcheck.taper.StageTable;
import dev.tipwright.fitcheck.taper.StagedTip;
import dev.tipwright.fitcheck.taper.TipSection;
import dev.tipwright.fitcheck.used.UsedTip;
import java.util.ArrayList;
import java.util.List;

/** The figures of {@code fit-check}; a tip in its bore and its stages are drawn by the library itself. */
final class FitFigures {

    private FitFigures() {}

    static String section() {
        return SectionDrawing.svg(
                DiameterProfile.cylinder(Example.in(".359"), Example.in("8")), Example.bore(), 20, Units.INCH);
    }

    static String stages() {
        DiameterProfile tip = DiameterProfile.cylinder(Example.in(".3685"), Example.in("8"));
        MaterialRemoval removal = MaterialRemoval.of(
                TipSection.of(tip, Finish.NONE), Example.bore(), Example.bore().depth(), Example.in(".004"));
        StagedTip staged = new StagedTip(
                tip, removal.profile(), Example.bore(), Example.bore().depth());
        return StageDrawing.svg(StageTable.of(staged, Example.in(".001")), Units.INCH);
    }

    /** A shaft that leans in its bore. */
    static String lean() {
        Sheet sheet = new Sheet(
                800, 230, "How far a shaft can lean", "It turns until it touches one side at z1 and the other at z2.");
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
    static String shim() {
        Sheet sheet = new Sheet(
                800,
                240,
                "Two other ways to a fit",
                "A shim fills a loose bore on both sides; a cutter opens a tight one.");
        for (int side = 0; side < 2; side++) {
            double x = 30 + side * 390;
            boolean shim = side == 0;
            sheet.text(
                    x,
                    24,
                    "start",
                    shim ? "too loose: a shim of wall t" : "too tight: a cutter through the bore",
                    true);
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

    /** The finished tip where it belongs. */
    static String seated() {
        TipFit fit = Example.plan().report(TipFit.class);
        Length raw = fit.tip().outside().diameterAt(fit.insertion());
        List<Station> stations = new ArrayList<>(fit.removal().profile().stations());
        stations.add(Station.of(fit.insertion().plus(Example.in("1/8")), raw)); // blended above the hosel
        stations.add(Station.of(Example.in("8"), raw));
        return SectionDrawing.svg(DiameterProfile.of(stations), fit.bore(), 20, Units.INCH);
    }

    /** The raw tip before its bore, and the finished one in it. */
    static String fit() {
        TipFit fit = Example.plan().report(TipFit.class);
        Sheet sheet = new Sheet(
                900,
                320,
                "A tip worked down to its bore",
                "Left the tip as it stands, too wide for the bore, with the stock to come off hatched; right the"
                        + " finished tip seated with the wanted clearance.");
        double y = 150;
        hosel(sheet, fit.bore(), 250, y);
        double end = 250 + fit.untouched().insertion().inches() * ALONG;
        double raw = radius(fit.tip().outside().diameterAt(Length.ZERO));
        double shoulder = end - fit.insertion().inches() * ALONG;
        double[] finished = {
            radius(fit.removal().profile().diameterAt(Length.ZERO)),
            radius(fit.bore().profile().diameterAt(Length.ZERO).minus(fit.clearance()))
        };
        for (int side = -1; side <= 1; side += 2) {
            sheet.hatched(Sheet.points(
                    shoulder,
                    y + side * raw,
                    end,
                    y + side * raw,
                    end,
                    y + side * finished[0],
                    shoulder,
                    y + side * finished[1]));
        }
        sheet.curve(Sheet.points(8, y - raw, end, y - raw, end, y + raw, 8, y + raw));
        sheet.axis(2, 500, y);
        sheet.strong(
                15,
                24,
                "as it stands: wider than the mouth, it goes in "
                        + Example.inches(fit.untouched().insertion(), 3));
        sheet.words(15, 290, "hatched: stock e to come off,");
        sheet.words(15, 306, "at the end " + Example.inches(fit.removal().stockAtEnd(), 4) + " on the diameter");
        sheet.words(330, y - 6, "bore, D(y)");
        sheet.arrow(503, y, 525, y);
        double mouth = 655;
        hosel(sheet, fit.bore(), mouth, y);
        double seated = mouth + fit.insertion().inches() * ALONG;
        sheet.curve(Sheet.points(
                535,
                y - raw,
                mouth,
                y - raw,
                mouth,
                y - finished[1],
                seated,
                y - finished[0],
                seated,
                y + finished[0],
                mouth,
                y + finished[1],
                mouth,
                y + raw,
                535,
                y + raw));
        sheet.axis(530, 898, y);
        sheet.strong(535, 24, "worked down: seats, with clearance w = " + Example.inches(fit.clearance(), 3));
        sheet.words(mouth + 20, y - 6, "f(z) = D(i - z) - w");
        sheet.span(mouth, seated, 280, "i = " + Example.inches(fit.insertion(), 3));
        sheet.text(890, 306, "end", "Differences of diameter are drawn 20 times as large as lengths.", false);
        return sheet.text();
    }

    private static final double ALONG = 180;

    private static void hosel(Sheet sheet, Bore bore, double mouth, double y) {
        double bottom = mouth + bore.depth().inches() * ALONG;
        double wide = radius(bore.profile().diameterAt(Length.ZERO));
        double narrow = radius(bore.profile().diameterAt(bore.depth()));
        sheet.hatched(Sheet.points(
                mouth,
                y - 100,
                bottom + 14,
                y - 100,
                bottom + 14,
                y + 100,
                mouth,
                y + 100,
                mouth,
                y + wide,
                bottom,
                y + narrow,
                bottom,
                y - narrow,
                mouth,
                y - wide));
    }

    /** Differences of diameter twenty times as large as lengths; from .335 in on, to save paper. */
    private static double radius(Length diameter) {
        return (diameter.inches() - .335) / 2 * ALONG * 20;
    }

    /** Shear along the joint. */
    static String shear() {
        Tube tip = new Tube(mm("9.2"), mm("5"), Stress.ofGigapascals(100), Stress.ofGigapascals(10));
        Tube hosel = new Tube(mm("13.4"), mm("9.4"), Stress.ofGigapascals(207), Stress.ofGigapascals(80));
        Stress adhesive = Stress.ofGigapascals(1);
        Length overlap = mm("30");
        ShearLag pull = ShearLag.ofPull(tip, hosel, adhesive, overlap);
        Sheet sheet = new Sheet(
                860,
                370,
                "Shear along a glued joint",
                "Above the joint in section, below the shear of the adhesive over its mean: a peak at the hosel mouth"
                        + " and a smaller one at the end of the tip.");
        double mouth = 240;
        double end = 740;
        sheet.hatched(mouth, 24, end - mouth + 60, 22);
        sheet.hatched(mouth, 104, end - mouth + 60, 22);
        sheet.line(end + 4, 46, end + 4, 104);
        sheet.polygon(40, 52, end, 52, end, 98, 40, 98);
        sheet.axis(30, end + 80, 75);
        sheet.words(60, 70, "tip, graphite: soft");
        sheet.words(mouth + 6, 18, "hosel, steel: stiff");
        sheet.words(mouth + 170, 18, "adhesive in the thin gap between the two");
        sheet.arrow(40, 75, 14, 75);
        sheet.words(14, 66, "F");
        double base = 320;
        double unit = 26;
        sheet.line(mouth, base, end, base);
        sheet.line(mouth, base, mouth, base - unit * 7);
        sheet.dashed(mouth, base - unit, end, base - unit);
        sheet.text(mouth - 8, base - unit + 4, "end", "mean F / (integral of pi d) = 1", false);
        sheet.text(mouth - 8, base + 4, "end", "0", false);
        List<double[]> curve = new ArrayList<>();
        double w = pull.perMillimetre();
        double length = overlap.millimetres();
        for (int i = 0; i <= 100; i++) {
            double down = length * i / 100;
            double ratio = (pull.atMouth() * StrictMath.sinh(w * (length - down))
                            + pull.atBottom() * StrictMath.sinh(w * down))
                    / StrictMath.sinh(w * length);
            curve.add(new double[] {mouth + (end - mouth) * i / 100, base - unit * ratio});
        }
        sheet.curve(curve);
        sheet.dot(mouth, base - unit * pull.atMouth());
        sheet.dot(end, base - unit * pull.atBottom());
        sheet.strong(
                mouth + 14,
                base - unit * pull.atMouth() + 4,
                "peak at the mouth: " + Example.fixed(pull.atMouth(), 1)
                        + " times the mean; the tip carries all the load here");
        sheet.text(
                end,
                base - unit * pull.atBottom() - 12,
                "end",
                "at the end of the tip: " + Example.fixed(pull.atBottom(), 1),
                true);
        sheet.middle((mouth + end) / 2, base - unit - 14, "the middle carries little: more length helps little");
        sheet.words(
                30,
                344,
                "Pull on a joint of 30 mm, tip 9.2 mm wide outside and 5 mm inside, bore 9.4 mm, hosel 13.4 mm; moduli"
                        + " 100, 207 and, of the adhesive,");
        sheet.words(30, 361, "1 GPa. Elastic, by shear-lag: where a bond begins to fail, and not at which load.");
        return sheet.text();
    }

    private static Length mm(String millimetres) {
        return Length.parse(millimetres + " mm");
    }

    /** Tips, bores and what each pair takes off. */
    static String pairs() {
        String[] tips = {".3705", ".3690", ".3675"};
        double[] walls = {86, 92, 92};
        String[][] bores = {{".363", ".355", "1 1/4"}, {".365", ".357", "1 1/4"}, {".362", ".356", "1"}};
        List<LabelledTip> labelledTips = new ArrayList<>();
        List<LabelledBore> labelledBores = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            labelledTips.add(new LabelledTip(
                    String.valueOf((char) ('A' + i)),
                    TipSection.of(DiameterProfile.cylinder(Example.in(tips[i]), Example.in("8")), Finish.NONE)
                            .withWall(Reading.measured(new Wall(
                                    ThicknessProfile.uniform(Length.ofThousandths(walls[i])),
                                    Reading.unknown("the shaft's maker"))))));
            Bore bore = Bore.ofTwoDiameters(
                    Example.in(bores[i][0]), Example.in(bores[i][1]), Example.in(bores[i][2]), BoreEnd.FLAT);
            labelledBores.add(new LabelledBore(String.valueOf(7 + i), bore, bore.depth()));
        }
        Reading<Length> least = Reading.assumed(Example.in(".077"), Source.assumption("the caller's limit"));
        SelectiveAssembly best = assembled(labelledTips, labelledBores, least);
        Sheet sheet = new Sheet(
                860,
                346,
                "Which tip goes to which bore",
                "Tips down the left, bores along the top; each pair with the structure it takes off, the best pairing"
                        + " in boxes.");
        sheet.words(30, 40, "structure to take off, mm3;");
        sheet.words(30, 58, "boxed: the pairing of least sum");
        for (int bore = 0; bore < 3; bore++) {
            double x = 270 + bore * 200;
            double wide = (Example.in(bores[bore][0]).inches() - .35) * 1000;
            double narrow = (Example.in(bores[bore][1]).inches() - .35) * 1000;
            double deep = x + 96 * Example.in(bores[bore][2]).inches();
            sheet.words(x, 22, "bore " + (7 + bore) + ", " + bores[bore][2] + " in deep,");
            sheet.words(x, 38, bores[bore][0] + " to " + bores[bore][1] + " in");
            sheet.hatched(Sheet.points(x, 48, deep, 48, deep, 74 - narrow, x, 74 - wide));
            sheet.hatched(Sheet.points(x, 100, deep, 100, deep, 74 + narrow, x, 74 + wide));
        }
        for (int tip = 0; tip < 3; tip++) {
            double y = 146 + tip * 64;
            double half = (Example.in(tips[tip]).inches() - .35) * 1000;
            sheet.polygon(30, y - half, 120, y - half, 120, y + half, 30, y + half);
            sheet.middle(75, y + 4, "tip " + labelledTips.get(tip).label());
            sheet.words(130, y, tips[tip] + " in,");
            sheet.words(130, y + 15, "wall .0" + Example.fixed(walls[tip], 0) + " in");
            for (int bore = 0; bore < 3; bore++) {
                double x = 330 + bore * 200;
                SelectiveAssembly one =
                        assembled(List.of(labelledTips.get(tip)), List.of(labelledBores.get(bore)), least);
                String label = labelledTips.get(tip).label();
                String to = labelledBores.get(bore).label();
                boolean chosen = best.pairs().stream()
                        .anyMatch(
                                pair -> pair.tip().equals(label) && pair.bore().equals(to));
                if (chosen) {
                    sheet.box(x - 32, y - 15, 64, 30);
                }
                sheet.text(
                        x,
                        y + 4,
                        "middle",
                        one.pairs().isEmpty()
                                ? "no fit"
                                : Example.fixed(one.structure().cubicMillimetres(), 0),
                        chosen);
            }
        }
        sheet.words(
                30,
                334,
                "Together " + Example.fixed(best.structure().cubicMillimetres(), 0)
                        + " mm3, the least there is. No fit: less wall would be left than the caller's limit.");
        return sheet.text();
    }

    private static SelectiveAssembly assembled(
            List<LabelledTip> tips, List<LabelledBore> bores, Reading<Length> least) {
        return SelectiveAssembly.of(tips, bores, Example.in(".004"), least, AssemblyAim.LEAST_MATERIAL);
    }

    /** A pulled tip, upper half. */
    static String pulled() {
        DiameterProfile found = DiameterProfile.of(
                Station.of(Length.ZERO, Example.in(".355")), Station.of(Example.in("1 1/4"), Example.in(".363")));
        ShaftSection raw = new ShaftSection(
                DiameterProfile.cylinder(Example.in(".3735"), Example.in("8")),
                Example.in(".601"),
                Reading.measured(new Wall(
                        ThicknessProfile.uniform(Example.in(".092")),
                        Reading.measured(Density.ofGramsPerCubicCentimetre(1.55)))),
                Reading.measured(Finish.NONE));
        UsedTip used = new UsedTip(raw, Example.in("1/2"), found, ThicknessProfile.uniform(Example.in(".002")));
        Sheet sheet = new Sheet(
                860,
                290,
                "A pulled tip",
                "The upper half in section: the raw outline dashed, the cleaned tip solid, hatched the crust on it,"
                        + " the shortened end dashed.");
        double end = 640;
        double scale = PULLED;
        double axis = 220;
        double upper = end - found.length().inches() * scale;
        double full = axis - height(raw.outside().diameterAt(Length.ZERO));
        double gone = end + used.shortened().inches() * scale;
        double[] clean = {
            axis - height(used.cleaned().diameterAt(found.length())),
            axis - height(used.cleaned().diameterAt(Length.ZERO))
        };
        double[] crust = {axis - height(found.diameterAt(found.length())), axis - height(found.diameterAt(Length.ZERO))
        };
        sheet.hatched(Sheet.points(upper, clean[0], upper, crust[0], end, crust[1], end, clean[1]));
        sheet.curve(Sheet.points(40, full, upper, full, upper, clean[0], end, clean[1], end, axis));
        sheet.dashed(Sheet.points(upper, full, gone, full, gone, axis));
        sheet.axis(25, 840, axis);
        sheet.words(
                50,
                full - 10,
                "never worked: d0 = " + Example.inches(raw.outside().diameterAt(Length.ZERO), 4));
        sheet.middle((upper + end) / 2, full - 10, "dashed: as it was raw, d0");
        sheet.words(end + 12, full + 24, "cut off when it was");
        sheet.words(end + 12, full + 40, "first built");
        sheet.words(40, 140, "cleaned: d = found - 2 k");
        sheet.strong(40, 158, "at the end " + Example.inches(used.cleaned().diameterAt(Length.ZERO), 3));
        sheet.words(
                90,
                204,
                "hatched: crust k = " + Example.inches(Example.in(".002"), 3)
                        + ", radial; it comes off before anything is measured for good");
        sheet.line(300, 190, 300, 138);
        sheet.rise(end - 20, full, clean[1], "");
        sheet.words(end - 246, full + 20, "(d0 - d) / 2, off finish first, then wall");
        sheet.text(end, axis + 18, "middle", "z = 0", false);
        sheet.span(end, gone, 262, "shortened");
        sheet.arrow(end, 256, end - 90, 256);
        sheet.words(end - 106, 260, "z");
        sheet.words(40, 262, "Most that is off the diameter: " + Example.inches(used.mostOff(), 4) + ".");
        sheet.words(40, 280, "Differences of diameter are drawn 36 times as large as lengths.");
        return sheet.text();
    }

    private static final double PULLED = 330;

    /** Differences of diameter 36 times as large as lengths; from .345 in on. */
    private static double height(Length diameter) {
        return (diameter.inches() - .345) / 2 * PULLED * 36;
    }
}
