import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.grip.GripFit;
import dev.tipwright.core.grip.TapeLayers;
import dev.tipwright.core.length.SixtyDegreePlane;
import dev.tipwright.core.mass.ShaftCut;
import dev.tipwright.core.match.ClubCost;
import dev.tipwright.core.match.MatchedPair;
import dev.tipwright.core.match.ShaftMatch;
import dev.tipwright.core.match.ShaftMatcher;
import dev.tipwright.core.offcut.ShaftEvidence;
import dev.tipwright.core.offcut.ShaftReading;
import dev.tipwright.core.offcut.WeighedPiece;
import dev.tipwright.core.orient.OrientStep;
import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.rules.ClubLimits;
import dev.tipwright.core.trim.TipTrim;
import dev.tipwright.core.uncertainty.Budget;
import dev.tipwright.core.uncertainty.Contribution;
import dev.tipwright.core.uncertainty.Input;
import dev.tipwright.core.uncertainty.Inputs;
import dev.tipwright.core.uncertainty.Measurand;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** The figures of {@code core}. */
final class CoreFigures {

    private CoreFigures() {}

    /** The steps of the job and the package that each is in. */
    static String job() {
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
        Sheet sheet =
                new Sheet(1042, 190, "The job, step by step", "Eight steps from left to right, each with its packages.");
        for (int i = 0; i < steps.length; i++) {
            double x = 6 + i * 130;
            sheet.box(x, 40, 120, 78);
            sheet.text(x + 60, 64, "middle", steps[i][0], true);
            sheet.text(x + 60, 88, "middle", steps[i][1], false);
            sheet.text(x + 60, 106, "middle", steps[i][2], false);
            if (i + 1 < steps.length) {
                sheet.arrow(x + 120, 79, x + 130, 79);
            }
        }
        sheet.text(6, 24, "start", "before the planner", false);
        sheet.text(269, 24, "start", "steps of one planner, in the order in which one needs another", false);
        sheet.line(261, 12, 261, 134);
        sheet.line(911, 12, 911, 134);
        sheet.text(919, 24, "start", "after it", false);
        sheet.text(
                6,
                156,
                "start",
                "core.plan: Build, then WorkStep by WorkStep, gives a ClubPlan; PlanText prints it",
                false);
        sheet.text(
                6,
                176,
                "start",
                "core.evidence: source, reading, term, working, finding, caution, at every step",
                false);
        return sheet.text();
    }

    /** The club with the symbols of its lengths. */
    static String lengths() {
        Sheet sheet = new Sheet(
                900, 270, "What a playing length is made of", "L = g + S + (B - i) + G along the axis of the shaft.");
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
    static String cut() {
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
        sheet.text(tipMark - 4, 56, "end", "k", true);
        sheet.text(buttMark + 4, 56, "start", "k", true);
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
    static String flex() {
        Sheet sheet = new Sheet(
                800,
                200,
                "A club as a beam",
                "Clamped at the butt; the head and what is fixed to it are one rigid body.");
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

    /** The three modules and who knows of whom. */
    static String modules() {
        Sheet sheet = new Sheet(
                860,
                170,
                "The three modules",
                "fitcheck and swingweight each rest on core and know nothing of each other.");
        sheet.box(20, 20, 240, 40);
        sheet.box(340, 20, 240, 40);
        sheet.box(180, 110, 240, 40);
        sheet.text(140, 45, "middle", "dev.tipwright.fitcheck", true);
        sheet.text(460, 45, "middle", "dev.tipwright.swingweight", true);
        sheet.text(300, 135, "middle", "dev.tipwright.core", true);
        sheet.arrow(140, 60, 250, 110);
        sheet.arrow(460, 60, 350, 110);
        sheet.middle(300, 84, "requires");
        sheet.words(600, 37, "profiles in, numbers out;");
        sheet.words(600, 53, "a build in, a step's report out");
        sheet.words(600, 86, "neither knows of the other");
        sheet.words(600, 127, "quantities, parts, trim, length, planning;");
        sheet.words(600, 143, "depends on nothing");
        return sheet.text();
    }

    /** Two scales that meet exactly. */
    static String grid() {
        Length inch = Example.in("1");
        Length five = Example.in("5");
        Sheet sheet = new Sheet(
                860,
                200,
                "Inches and millimetres on one grid",
                "A scale of 5 in over a scale of 127 mm; they meet exactly at both ends, for both are whole numbers of"
                        + " nanometres.");
        double left = 30;
        double scale = 800 / five.millimetres();
        sheet.line(left, 80, left + 800, 80);
        for (int eighth = 0; eighth <= 40; eighth++) {
            double x = left + Length.ofInchFraction(0, eighth, 8).millimetres() * scale;
            sheet.line(x, 80, x, eighth % 8 == 0 ? 58 : eighth % 4 == 0 ? 66 : 72);
            if (eighth % 8 == 0) {
                sheet.middle(x, 52, eighth / 8 + (eighth == 0 ? "" : " in"));
            }
        }
        for (int mm = 0; mm <= 127; mm++) {
            double x = left + mm * scale;
            sheet.line(x, 80, x, mm % 10 == 0 || mm == 127 ? 98 : mm % 5 == 0 ? 92 : 87);
            if (mm % 20 == 0 && mm < 120 || mm == 127) {
                sheet.middle(x, 112, mm + (mm == 0 ? "" : " mm"));
            }
        }
        sheet.dot(left, 80);
        sheet.dot(left + 800, 80);
        sheet.text(left, 28, "start", "they meet here", true);
        sheet.text(left + 800, 28, "end", "and here, exactly", true);
        sheet.middle(left + 400, 28, "every mark of either is a whole number of nanometres");
        String[] texts = {"1 in", "1/64 in", "0.0001 in", "1 mm", "0.01 mm"};
        for (int i = 0; i < texts.length; i++) {
            double x = left + i * 168;
            sheet.text(x, 148, "start", texts[i], true);
            sheet.words(x, 166, spaced(Length.parse(texts[i]).nanometres()) + " nm");
        }
        sheet.words(
                left,
                190,
                "5 x " + spaced(inch.nanometres()) + " nm = 127 x "
                        + spaced(Length.parse("1 mm").nanometres()) + " nm = " + spaced(five.nanometres())
                        + " nm: 5 in equals 127 mm, to the last digit.");
        return sheet.text();
    }

    private static String spaced(long number) {
        return String.format(Locale.ROOT, "%,d", number).replace(',', ' ');
    }

    /** A bore with its stations, and a tip in it. */
    static String stations() {
        Bore bore = Bore.ofReadings(
                List.of(
                        Station.of(Length.ZERO, Example.in(".378")),
                        Station.of(Example.in(".015"), Example.in(".363")),
                        Station.of(Example.in(".6"), Example.in(".361")),
                        Station.of(Example.in("1 1/4"), Example.in(".355"))),
                BoreEnd.FLAT);
        Sheet sheet = new Sheet(
                860,
                352,
                "Stations along a bore and a tip",
                "The bore is straight between its stations; y runs down from the mouth, z up from the end of the tip,"
                        + " and z sits at y = i - z.");
        double mouth = 250;
        double scale = 400;
        double middle = 150;
        double bottom = mouth + bore.depth().inches() * scale;
        List<double[]> upper = new ArrayList<>();
        List<double[]> lower = new ArrayList<>();
        for (Station station : bore.profile().stations()) {
            double x = mouth + station.at().inches() * scale;
            double r = radius(bore.profile().diameterAt(station.at()));
            upper.add(new double[] {x, middle - r});
            lower.add(new double[] {x, middle + r});
        }
        List<double[]> above = new ArrayList<>(upper);
        above.add(new double[] {bottom, 30});
        above.add(new double[] {mouth, 30});
        List<double[]> below = new ArrayList<>(lower);
        below.add(new double[] {bottom, 270});
        below.add(new double[] {mouth, 270});
        sheet.hatched(above);
        sheet.hatched(below);
        sheet.line(bottom, 30, bottom, 270);
        double end = mouth + 1.0 * scale;
        double r = radius(Example.in(".353"));
        sheet.polygon(60, middle - r, end, middle - r, end, middle + r, 60, middle + r);
        sheet.axis(40, bottom + 30, middle);
        upper.forEach(point -> sheet.dot(point[0], point[1]));
        sheet.words(mouth - 10, 20, "mouth, y = 0");
        sheet.text(bottom, 20, "middle", "bottom, y = B", false);
        sheet.middle(mouth + 245, 20, "stations, straight between: D(y)");
        sheet.words(75, middle - 24, "tip, d(z)");
        double place = mouth + .38 * scale;
        sheet.line(place, middle - 8, place, middle + 8);
        sheet.arrow(mouth, middle + 24, place, middle + 24);
        sheet.text((mouth + place) / 2, middle + 42, "middle", "y = i - z", true);
        sheet.arrow(end, middle + 24, place, middle + 24);
        sheet.text((end + place) / 2, middle + 42, "middle", "z", true);
        sheet.span(mouth, end, 290, "i");
        sheet.span(mouth, bottom, 322, "B");
        sheet.words(40, 344, "Differences of diameter are drawn 10 times as large as lengths.");
        return sheet.text();
    }

    /** Differences of diameter ten times as large as lengths, which are 400 to the inch; from .330 in on. */
    private static double radius(Length diameter) {
        return 10 + (diameter.inches() - .330) / 2 * 400 * 10;
    }

    /** A club taken apart. */
    static String parts() {
        Sheet sheet = new Sheet(
                860,
                230,
                "A club taken apart",
                "Grip, shaft, ferrule and head from left to right, each with the types that describe it.");
        double y = 80;
        sheet.polygon(20, y - 15, 200, y - 10, 200, y + 10, 20, y + 15);
        sheet.line(28, y - 15, 28, y + 15);
        sheet.polygon(230, y - 7, 560, y - 4, 560, y + 4, 230, y + 7);
        sheet.polygon(590, y - 9, 625, y - 6, 625, y + 6, 590, y + 9);
        head(sheet, 660, y);
        sheet.axis(10, 720, y);
        String[][] types = {
            {"Grip", "mass, cap, length", "GripSize: core, outside"},
            {"Shaft", "Blank, ShaftMass, ShaftSection", "ShaftFlex"},
            {"Attachment", "Ferrule, Adhesive,", "GripTape, TipWeight,", "Counterweight, Shim,", "Extension, OtherMass"
            },
            {"Head", "HeadMass", "HeadGeometry", "Bore", "Hosel"},
        };
        double[] at = {20, 230, 560, 720};
        for (int i = 0; i < types.length; i++) {
            sheet.strong(at[i], 138, types[i][0]);
            for (int line = 1; line < types[i].length; line++) {
                sheet.words(at[i], 138 + line * 18, types[i][line]);
            }
        }
        sheet.words(20, 30, "grip");
        sheet.words(230, 30, "shaft, raw: nothing is cut yet");
        sheet.words(560, 30, "what is put on or in");
        sheet.words(664, 58, "head");
        return sheet.text();
    }

    /** The side of an iron whose hosel mouth is at a place, its bore dashed. */
    private static void head(Sheet sheet, double mouth, double y) {
        sheet.polygon(
                mouth,
                y - 13,
                mouth + 80,
                y - 13,
                mouth + 120,
                y - 50,
                mouth + 165,
                y - 42,
                mouth + 150,
                y + 22,
                mouth + 110,
                y + 26,
                mouth + 78,
                y + 13,
                mouth,
                y + 13);
        sheet.dashed(Sheet.points(mouth, y - 7, mouth + 56, y - 5, mouth + 56, y + 5, mouth, y + 7));
    }

    /** Parts and work make a build. */
    static String build() {
        Build planned = Example.plan().after();
        Sheet sheet = new Sheet(
                860,
                200,
                "Parts and work make a build",
                "Left the parts as measured, in the middle the work as a list, right the club that the two give"
                        + " together.");
        sheet.strong(20, 24, "Parts: what was measured");
        sheet.polygon(20, 46, 100, 49, 100, 63, 20, 66);
        sheet.polygon(20, 92, 230, 95, 230, 101, 20, 104);
        sheet.polygon(140, 49, 178, 49, 198, 36, 222, 40, 214, 70, 192, 72, 178, 63, 140, 63);
        sheet.words(20, 84, "grip");
        sheet.words(140, 84, "head");
        sheet.words(
                20,
                122,
                "raw shaft, R = " + Example.inches(planned.parts().shaft().length(), 0));
        sheet.words(20, 158, "never changed by a step");
        sheet.text(275, 104, "middle", "+", true);
        sheet.strong(310, 24, "Work: what is to be done");
        sheet.box(310, 40, 225, 98);
        sheet.words(322, 58, "tip trim T = " + Example.inches(planned.work().tipTrim(), 3));
        sheet.words(322, 76, "butt trim U = " + Example.inches(planned.work().buttTrim(), 3));
        sheet.words(322, 94, "finished tip");
        sheet.words(
                322, 112, "seat, i = " + Example.inches(planned.work().seat().insertion(), 3));
        sheet.words(322, 130, "attached: none");
        sheet.words(310, 158, "Work.NONE: nothing done yet");
        sheet.text(570, 104, "middle", "=", true);
        sheet.strong(600, 24, "Build: the two together");
        sheet.polygon(640, 94, 790, 97, 790, 103, 640, 106);
        sheet.polygon(600, 90, 670, 93, 670, 107, 600, 110);
        sheet.polygon(780, 93, 806, 93, 826, 80, 850, 84, 842, 114, 820, 116, 806, 107, 780, 107);
        sheet.words(600, 60, "cut length, tip as it stands,");
        sheet.words(600, 76, "playing length, balance");
        sheet.words(600, 138, "S = R - T - U = " + Example.inches(planned.cutLength(), 3));
        sheet.words(
                20,
                186,
                "Everything else is a function of the two: a step gives the build back with more work, and the parts"
                        + " as they were.");
        return sheet.text();
    }

    /** From a source to a finding. */
    static String evidence() {
        TipTrim trim = Example.plan().report(TipTrim.class);
        Working.Line line = trim.working().lines().stream()
                .filter(one -> one.result().symbol().equals("T"))
                .findFirst()
                .orElseThrow();
        Finding finding = Example.plan().findings().get(0);
        Sheet sheet = new Sheet(
                900,
                226,
                "From a source to a finding",
                "Five boxes from left to right: source, reading, term, working and finding; below them an example of"
                        + " the last three.");
        String[][] boxes = {
            {"Source", "where a constant", "or an assumption", "comes from"},
            {"Reading", "measured, assumed", "with its source,", "or unknown: whom to ask"},
            {"Term", "symbol, meaning,", "value with its unit", ""},
            {"Working", "terms put into", "a formula, line", "by line"},
            {"Finding", "note, caution or stop,", "with a code and", "its terms"},
        };
        double[] x = {10, 160, 340, 505, 670};
        double[] width = {130, 160, 145, 145, 150};
        for (int i = 0; i < boxes.length; i++) {
            sheet.box(x[i], 20, width[i], 84);
            sheet.text(x[i] + width[i] / 2, 42, "middle", boxes[i][0], true);
            for (int row = 1; row < 4; row++) {
                sheet.middle(x[i] + width[i] / 2, 44 + row * 17, boxes[i][row]);
            }
            if (i + 1 < boxes.length) {
                sheet.arrow(x[i] + width[i], 62, x[i + 1], 62);
            }
        }
        Term result = line.result();
        sheet.strong(10, 132, "term");
        sheet.words(80, 132, result.symbol() + ", " + result.meaning() + ": " + result.text(Units.INCH));
        sheet.strong(10, 152, "working");
        sheet.words(
                80,
                152,
                result.symbol() + " = " + line.formula() + "; source: "
                        + line.source().title());
        sheet.strong(10, 172, "finding");
        String message = finding.severity() + " " + finding.code().name() + ": " + finding.message(Units.INCH);
        int half = message.lastIndexOf(' ', 120);
        sheet.words(80, 172, message.substring(0, half));
        sheet.words(80, 188, message.substring(half + 1));
        sheet.words(
                10,
                214,
                "Beside a step that can hurt someone stands a Caution; it defers to makers' instructions, local rules"
                        + " and qualified people.");
        return sheet.text();
    }

    /** Line density along a shaft, and the pieces that the saw takes. */
    static String density() {
        Build build = Example.plan().after();
        Shaft shaft = build.parts().shaft();
        LineDensityProfile along = ShaftCut.lineDensity(shaft).orElseThrow();
        Length from = build.work().tipTrim();
        Length to = from.plus(build.cutLength());
        Sheet sheet = new Sheet(
                860,
                270,
                "Mass along a shaft",
                "Line density is a straight line from tip to butt; the area under it between the cuts is the mass that"
                        + " stays.");
        Plot plot = new Plot(along, 50, 20, 200);
        sheet.hatched(plot.area(Length.ZERO, from));
        sheet.hatched(plot.area(to, shaft.length()));
        sheet.curve(plot.line());
        sheet.line(plot.x(Length.ZERO), 200, plot.x(shaft.length()), 200);
        for (Length cut : List.of(Length.ZERO, from, to, shaft.length())) {
            sheet.line(plot.x(cut), plot.y(cut), plot.x(cut), 200);
        }
        sheet.words(
                plot.x(Length.ZERO) - 30,
                plot.y(Length.ZERO) - 10,
                "mu = " + Example.fixed(along.knots().get(0).density().gramsPerInch(), 2) + " g/in at the raw tip");
        sheet.text(
                plot.x(shaft.length()) + 10,
                plot.y(shaft.length()) - 10,
                "end",
                Example.fixed(along.knots().get(1).density().gramsPerInch(), 2) + " g/in at the raw butt",
                false);
        ShaftCut stays = new ShaftCut(shaft, from, to);
        double balance = plot.x(from.plus(stays.balance()));
        sheet.polygon(balance, 200, balance - 9, 216, balance + 9, 216);
        sheet.middle(balance, 150, "area between the cuts: m = " + Example.grams(stays.mass()));
        sheet.words(balance + 16, 214, "it balances here, " + Example.inches(stays.balance(), 2) + " from its tip");
        sheet.words(plot.x(Length.ZERO), 220, "off: " + Example.grams(new ShaftCut(shaft, Length.ZERO, from).mass()));
        sheet.text(
                plot.x(shaft.length()),
                220,
                "end",
                "off: " + Example.grams(new ShaftCut(shaft, to, shaft.length()).mass()),
                false);
        sheet.span(plot.x(Length.ZERO), plot.x(from), 250, "T");
        sheet.span(plot.x(from), plot.x(to), 250, "S");
        sheet.span(plot.x(to), plot.x(shaft.length()), 250, "U");
        return sheet.text();
    }

    /** Line density drawn from a base line upwards, 20 pixels to the inch along. */
    private record Plot(LineDensityProfile along, double left, double perInch, double base) {

        double x(Length place) {
            return left + place.inches() * perInch;
        }

        double y(Length place) {
            return base - at(place) * 60;
        }

        private double at(Length place) {
            List<LineDensityProfile.Knot> knots = along.knots();
            int i = 1;
            while (i + 1 < knots.size() && knots.get(i).at().lessThan(place)) {
                i++;
            }
            LineDensityProfile.Knot low = knots.get(i - 1);
            LineDensityProfile.Knot high = knots.get(i);
            double share = place.minus(low.at()).ratioTo(high.at().minus(low.at()));
            return low.density().gramsPerInch() * (1 - share) + high.density().gramsPerInch() * share;
        }

        List<double[]> line() {
            return along.knots().stream()
                    .map(knot -> new double[] {x(knot.at()), y(knot.at())})
                    .toList();
        }

        List<double[]> area(Length from, Length to) {
            return Sheet.points(x(from), base, x(from), y(from), x(to), y(to), x(to), base);
        }
    }

    /** What two offcuts on the scale say. */
    static String offcut() {
        Shaft shaft = Example.shaft("A", 84.1);
        WeighedPiece tip = new WeighedPiece(Length.ZERO, Example.in("3"), Mass.ofGrams(6.1));
        WeighedPiece butt = new WeighedPiece(Example.in("35"), Example.in("39"), Mass.ofGrams(9.2));
        ShaftReading reading = ShaftEvidence.weighed(shaft, List.of(tip, butt));
        LineDensityProfile before = ShaftCut.lineDensity(shaft).orElseThrow();
        LineDensityProfile after = reading.shaft().mass().along().known().orElseThrow();
        Sheet sheet = new Sheet(
                860,
                290,
                "What two offcuts say of a shaft",
                "Two pieces are weighed; the straight line of density, dashed, becomes one that bends at their inner"
                        + " ends.");
        Plot was = new Plot(before, 40, 20, 230);
        Plot now = new Plot(after, 40, 20, 230);
        sheet.box(now.x(Length.ZERO), 28, 20 * 3 - 6, 14);
        sheet.box(now.x(tip.to()), 28, 20 * 32, 14);
        sheet.box(now.x(butt.from()) + 6, 28, 20 * 4 - 6, 14);
        sheet.middle(
                now.x(Example.in("19")),
                39,
                "the rest: " + Example.grams(new ShaftCut(reading.shaft(), tip.to(), butt.from()).mass())
                        + ", by difference");
        for (WeighedPiece piece : List.of(tip, butt)) {
            boolean low = piece == tip;
            double x = now.x(low ? piece.from() : piece.to());
            String words = "weighs " + Example.grams(piece.mass()) + "; the straight line said "
                    + Example.grams(new ShaftCut(shaft, piece.from(), piece.to()).mass());
            sheet.text(x, 18, low ? "start" : "end", words, false);
            sheet.hatched(now.area(piece.from(), piece.to()));
        }
        sheet.dashed(was.line());
        sheet.curve(now.line());
        sheet.line(now.x(Length.ZERO), 230, now.x(shaft.length()), 230);
        sheet.line(now.x(Length.ZERO), now.y(Length.ZERO), now.x(Length.ZERO), 230);
        sheet.line(now.x(shaft.length()), now.y(shaft.length()), now.x(shaft.length()), 230);
        after.knots().forEach(knot -> sheet.dot(now.x(knot.at()), now.y(knot.at())));
        sheet.middle(now.x(Example.in("19")), 170, "the area is the mass: dashed as assumed, solid as weighed");
        sheet.words(now.x(Length.ZERO), 252, "raw tip");
        sheet.text(now.x(shaft.length()), 252, "end", "raw butt", false);
        sheet.words(
                now.x(Length.ZERO),
                278,
                "Raw mass, raw balance point and the mass of every piece are all met; that it is straight between is"
                        + " assumed.");
        return sheet.text();
    }

    /** Three shafts, three heads and what each pair costs. */
    static String match() {
        double[] wanted = {348.5, 354.0, 362.0};
        double[] heads = {264.0, 271.0, 278.0};
        String[] labels = {"6", "7", "8"};
        double[] grams = {83.6, 84.1, 82.2};
        List<Shaft> shafts = new ArrayList<>();
        List<Build> clubs = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            shafts.add(Example.shaft(String.valueOf((char) ('A' + i)), grams[i]));
            clubs.add(Example.club(labels[i], shafts.get(i), heads[i]));
        }
        JobPlanner planner = JobPlanner.of(OrientStep.to("the seam", Angle.ZERO));
        ClubCost cost = plan -> OptionalDouble.of(Math.abs(plan.after()
                        .parts()
                        .head()
                        .mass()
                        .mass()
                        .plus(plan.after().parts().shaft().mass().mass())
                        .grams()
                - wanted[Integer.parseInt(plan.label()) - 6]));
        ShaftMatch match = ShaftMatcher.by(planner, cost).match(new ClubSet(clubs));
        Sheet sheet = new Sheet(
                860,
                290,
                "Which shaft goes to which head",
                "Three shafts on the left, three heads on the right; every pair has its cost, and the pairs of least"
                        + " sum are drawn solid.");
        for (int shaft = 0; shaft < 3; shaft++) {
            double y = 60 + shaft * 75;
            sheet.polygon(30, y - 6, 200, y - 3, 200, y + 3, 30, y + 6);
            sheet.words(
                    30,
                    y - 14,
                    "shaft " + shafts.get(shaft).label() + ", "
                            + Example.grams(shafts.get(shaft).mass().mass()));
            for (int head = 0; head < 3; head++) {
                double to = 60 + head * 75;
                MatchedPair pair = match.pairs().get(head);
                boolean chosen = pair.after().equals(shafts.get(shaft).label());
                if (chosen) {
                    sheet.line(210, y, 560, to);
                } else {
                    sheet.dashed(210, y, 560, to);
                }
                double off = Math.abs(heads[head] + grams[shaft] - wanted[head]);
                double share = Math.abs(head - shaft) == 0 ? .12 : Math.abs(head - shaft) == 1 ? .3 : .2;
                sheet.box(210 + share * 350 - 15, y + share * (to - y) - 9, 30, 18);
                sheet.text(210 + share * 350, y + share * (to - y) + 4, "middle", Example.fixed(off, 1), chosen);
            }
        }
        for (int head = 0; head < 3; head++) {
            double y = 60 + head * 75;
            sheet.polygon(
                    570, y - 8, 610, y - 8, 634, y - 26, 660, y - 22, 650, y + 12, 626, y + 14, 610, y + 8, 570, y + 8);
            sheet.words(676, y - 4, "head " + labels[head] + ", " + Example.fixed(heads[head], 1) + " g;");
            sheet.words(676, y + 12, "wanted with its shaft: " + Example.fixed(wanted[head], 1) + " g");
        }
        sheet.words(
                30,
                276,
                "Cost here: grams from what is wanted. As they came: "
                        + Example.fixed(match.totalBefore().getAsDouble(), 1) + "; the least there is, solid: "
                        + Example.fixed(match.totalAfter().getAsDouble(), 1) + ".");
        return sheet.text();
    }
    /** The grip in section on its butt. */
    static String grip() {
        TapeLayers tape = new TapeLayers(2, Example.in(".007"), Mass.ofGrams(2.2));
        GripFit fit = GripFit.of(Example.plan().after(), tape);
        Sheet sheet = new Sheet(
                860,
                300,
                "A grip on its butt",
                "Shaft, layers of tape and grip in section; the mouth of the grip lies its length less its cap below"
                        + " the butt.");
        double y = 130;
        double top = 40;
        double butt = 70;
        double mouth = 560;
        sheet.polygon(top, y - 62, mouth, y - 44, mouth, y + 44, top, y + 62);
        sheet.polygon(butt, y - 34, 800, y - 22, 800, y + 22, butt, y + 34);
        for (int side = -1; side <= 1; side += 2) {
            for (int layer = 0; layer < tape.count(); layer++) {
                double inner = 34 + layer * 5;
                double slope = 12.0 / 730 * (mouth - butt);
                sheet.hatched(Sheet.points(
                        butt,
                        y + side * inner,
                        mouth,
                        y + side * (inner - slope),
                        mouth,
                        y + side * (inner + 5 - slope),
                        butt,
                        y + side * (inner + 5)));
            }
        }
        sheet.line(butt, y - 34, butt, y + 34);
        sheet.axis(25, 820, y);
        sheet.rise(130, y - 33, y + 33, "");
        sheet.strong(142, y - 6, "db = " + Example.inches(fit.butt(), 3));
        sheet.rise(300, y - 40, y + 40, "");
        sheet.strong(312, y - 6, "db + 2 n t = " + Example.inches(fit.taped(), 3));
        sheet.words(312, y + 16, "with n = " + tape.count() + " layers of t = " + Example.inches(tape.thickness(), 3));
        sheet.words(top, 36, "cap, g");
        sheet.words(
                250,
                50,
                "grip: widest " + Example.inches(fit.outside().orElseThrow(), 3)
                        + " = o + db + 2 n t - c (common practice)");
        sheet.text(mouth, 78, "middle", "mouth of the grip", false);
        sheet.words(600, y - 34, "shaft");
        sheet.line(418, 214, 418, y + 37);
        sheet.words(360, 226, "layers of tape, hatched");
        sheet.span(top, butt, 250, "g");
        sheet.span(
                butt,
                mouth,
                250,
                "mouth below the butt: length of the grip - g = " + Example.inches(fit.mouthFromButt(), 3));
        sheet.words(
                top,
                288,
                "o and c: outside and core of the grip off the shaft. Widths drawn larger than lengths; tape much too"
                        + " thick.");
        return sheet.text();
    }

    /** A shaft turned about its axis, for either hand. */
    static String turn() {
        Sheet sheet = new Sheet(
                860,
                320,
                "Which way a shaft is turned",
                "Seen from the butt, with the head before one: from the target by way of away from the player,"
                        + " clockwise for the right hand.");
        for (int side = 0; side < 2; side++) {
            boolean right = side == 0;
            double x = right ? 215 : 645;
            double y = 170;
            double turn = 50;
            double zero = right ? 180 : 0;
            double seam = right ? 180 - turn : turn;
            sheet.text(
                    x, 22, "middle", right ? "right-handed club: clockwise" : "left-handed club: anticlockwise", true);
            sheet.axis(x - 100, x + 100, y);
            sheet.line(x, y - 96, x, y - 62);
            sheet.line(x, y + 62, x, y + 96);
            sheet.circle(x, y, 62);
            sheet.circle(x, y, 40);
            double a = Math.toRadians(seam);
            sheet.line(x + 40 * Math.cos(a), y - 40 * Math.sin(a), x + 62 * Math.cos(a), y - 62 * Math.sin(a));
            sheet.dot(x + 62 * Math.cos(a), y - 62 * Math.sin(a));
            sheet.arc(x, y, 84, zero, seam);
            sheet.text(x + 104 * Math.cos(a), y - 90 * Math.sin(a), right ? "end" : "start", "seam, turn 50", true);
            sheet.text(x + (right ? -108 : 108), y - 4, right ? "end" : "start", "0", true);
            sheet.text(x + (right ? -108 : 108), y + 12, right ? "end" : "start", "target", false);
            sheet.text(x + (right ? 108 : -108), y + 4, right ? "start" : "end", "180", true);
            sheet.text(x, y - 116, "middle", "90", true);
            sheet.middle(x, y - 102, "away from the player");
            sheet.text(x, y + 112, "middle", "270", true);
            sheet.middle(x, y + 128, "player");
            sheet.middle(x, y + 4, "shaft");
        }
        sheet.middle(430, 310, "seen from the butt, with the head before one");
        return sheet.text();
    }

    /** The length that the Rules measure. */
    static String plane() {
        Build build = Example.plan().after();
        SixtyDegreePlane plane = SixtyDegreePlane.of(build.parts().head());
        ClubLimits limits = ClubLimits.EQUIPMENT_RULES;
        Sheet sheet = new Sheet(
                900,
                360,
                "Length by the 60 degree plane",
                "The club lies on a level plane, its sole against a plane at 60 degrees; the length runs from where"
                        + " the planes meet to the top of the grip.");
        double level = 220;
        double meet = 150;
        double h = 26;
        double axis = level - h;
        double cot = 1 / Math.sqrt(3);
        double onPlane = meet - h * cot;
        sheet.line(meet, level, 880, level);
        sheet.line(meet, level, meet - 190 * cot, level - 190);
        sheet.dashed(meet, level, 40, level);
        sheet.arc(meet, level, 60, 180, 120);
        sheet.text(meet - 62, level - 24, "end", "60 deg", false);
        double toe = 165;
        sheet.polygon(
                meet,
                level,
                262,
                level,
                262,
                level - 2 * h,
                212,
                level - 2 * h,
                176,
                level - 100,
                meet - toe * cot + 70,
                level - toe - 6,
                meet - toe * cot + 18,
                level - toe - 10,
                meet - toe * cot,
                level - toe);
        sheet.polygon(262, axis - 9, 840, axis - 14, 840, axis + 14, 262, axis + 9);
        sheet.polygon(640, axis - 17, 850, axis - 24, 850, axis + 24, 640, axis + 17);
        sheet.axis(onPlane - 12, 870, axis);
        sheet.dot(meet, level);
        sheet.dot(onPlane, axis);
        sheet.rise(560, axis, level, "h");
        sheet.middle(745, axis - 4, "grip");
        sheet.words(270, level - 60, "hosel mouth");
        sheet.line(262, level - 2 * h - 12, 262, level - 2 * h);
        sheet.text(66, 96, "end", "sole", false);
        sheet.text(66, 112, "end", "against", false);
        sheet.text(66, 128, "end", "the plane", false);
        sheet.span(onPlane, 262, 250, "H");
        sheet.span(640, 850, 250, "grip");
        sheet.span(meet, 850, 284, "L60");
        sheet.span(onPlane, 850, 316, "L, along the axis");
        sheet.words(
                300,
                40,
                "Limits of the Rules here: L60 at least " + inches(limits.shortest()) + ", at most "
                        + inches(limits.longest()) + " (not a putter);");
        sheet.words(
                300,
                58,
                "H at most " + inches(limits.neck()) + "; grip at least " + inches(limits.gripShortest())
                        + " long, at most " + Example.fixed(limits.gripWidest().inches(), 2) + " in wide.");
        sheet.words(300, 84, "Drawn for a lie of 60 degrees: L60 = L - h cot 60,");
        sheet.words(
                300,
                102,
                "here " + Example.fixed(plane.shorterBy().millimetres(), 1) + " mm less than L, for a hosel of "
                        + Example.inches(build.parts().head().hosel().outside(), 3) + ".");
        sheet.words(30, 350, "Widths drawn larger than lengths. A finding is arithmetic and not a ruling.");
        return sheet.text();
    }

    private static String inches(Length limit) {
        return Example.inches(limit, 0);
    }

    /** The chart's head and this one. */
    static String trim() {
        TipTrim trim = Example.plan().report(TipTrim.class);
        double ground = 840;
        double scale = 150;
        Sheet sheet = new Sheet(
                900,
                330,
                "Tip trim, corrected by the head",
                "Above the head that the chart assumes, below one whose bore bottom is higher; the same station of the"
                        + " shaft is at the same height in both.");
        sheet.line(ground, 20, ground, 290);
        sheet.text(ground, 14, "middle", "ground", false);
        Length[] toGround = {
            trim.groundReference(), trim.bottomToGround().plus(trim.boreDepth()).minus(trim.insertion())
        };
        Length[] cut = {trim.chart(), trim.trim()};
        double station = ground - (toGround[0].inches() + 2.2) * scale;
        sheet.dashed(station, 30, station, 290);
        sheet.text(station, 22, "middle", "the same station, at the same height", false);
        for (int i = 0; i < 2; i++) {
            double y = 90 + i * 140;
            double tip = ground - toGround[i].inches() * scale;
            double mouth = tip - trim.insertion().inches() * scale;
            sheet.hatched(Sheet.points(mouth, y - 15, tip, y - 15, tip, y - 30, mouth, y - 30));
            sheet.hatched(Sheet.points(mouth, y + 15, tip, y + 15, tip, y + 30, mouth, y + 30));
            sheet.polygon(30, y - 12, tip, y - 12, tip, y + 12, 30, y + 12);
            double raw = tip + cut[i].inches() * scale;
            sheet.dashed(Sheet.points(tip, y - 12, raw, y - 12, raw, y + 12, tip, y + 12));
            sheet.line(tip, y - 30, tip, y - 12);
            sheet.line(tip, y + 12, tip, y + 30);
            sheet.dot(station, y);
            sheet.words(40, y + 4, "shaft");
            sheet.strong(30, y - 30, i == 0 ? "the head that the chart assumes" : "this head");
            sheet.middle((mouth + tip) / 2, y + 4, "in the bore, i");
            sheet.middle((tip + raw) / 2, y + 4, "cut off");
            sheet.span(tip, raw, y - 40, i == 0 ? "chart" : "T");
            sheet.span(
                    tip,
                    ground,
                    y + 56,
                    i == 0
                            ? "G_ref = " + Example.inches(toGround[i], 2)
                            : "G + B - i = " + Example.inches(toGround[i], 2));
        }
        sheet.words(
                30,
                318,
                "T = chart + (G + B - i) - G_ref = "
                        + Example.fixed(trim.chart().inches(), 2) + " + "
                        + Example.fixed(toGround[1].inches(), 2) + " - " + Example.fixed(toGround[0].inches(), 2)
                        + " = "
                        + Example.inches(trim.trim(), 2)
                        + ". Measured along the axis; the rest of the club is left out.");
        return sheet.text();
    }

    /** The budget of the example in the text of the package. */
    static String budget() {
        Inputs inputs = Inputs.of(
                Input.ofStandard("first", "mm", 9.40, 0.003),
                Input.ofStandard("second", "mm", 25.10, 0.003),
                Input.ofLimits("caliper", "mm", 0, 0.02));
        Budget budget = Budget.of(Measurand.of("sum", "mm", inputs, x -> x[0] + x[2] + x[1] + x[2]));
        double expanded = budget.expanded(0.95).uncertainty();
        Sheet sheet = new Sheet(
                860,
                220,
                "A budget and its interval",
                "Left what each input adds to the standard uncertainty, as bars; right the value as a normal curve"
                        + " with its interval.");
        sheet.strong(20, 22, "What makes it so? Contributions |c u|, mm");
        double scale = 200 / budget.standardUncertainty();
        double y = 44;
        for (Contribution line : budget.contributions()) {
            double u = Math.abs(line.uncertainty());
            sheet.text(80, y + 13, "end", line.input().name(), false);
            sheet.hatched(90, y, u * scale, 18);
            sheet.words(
                    98 + u * scale,
                    y + 13,
                    Example.fixed(u, 4) + ", share " + Example.fixed(100 * line.share(), 1) + " %");
            y += 32;
        }
        sheet.text(80, y + 13, "end", "together", true);
        sheet.box(90, y, 200, 18);
        sheet.strong(298, y + 13, "u = " + Example.fixed(budget.standardUncertainty(), 4));
        sheet.words(20, y + 48, "the root of the sum of squares, for independent inputs");
        sheet.strong(500, 22, "How uncertain? y and y ± U, with 95 %");
        double middle = 670;
        double perMm = 80 / expanded * 1.0;
        List<double[]> curve = new ArrayList<>();
        List<double[]> inside = new ArrayList<>();
        inside.add(new double[] {middle - 80, 160});
        for (int i = -60; i <= 60; i++) {
            double mm = i / 60.0 * expanded * 2;
            double t = mm / budget.standardUncertainty();
            double[] point = {middle + mm * perMm, 160 - 100 * StrictMath.exp(-t * t / 2)};
            curve.add(point);
            if (Math.abs(i) <= 30) {
                inside.add(point);
            }
        }
        inside.add(new double[] {middle + 80, 160});
        sheet.hatched(inside);
        sheet.curve(curve);
        sheet.line(500, 160, 840, 160);
        sheet.line(middle, 156, middle, 166);
        sheet.middle(middle, 46, Example.fixed(budget.value(), 2) + " mm");
        sheet.span(middle - 80, middle + 80, 190, "± " + Example.fixed(expanded, 3) + " mm");
        return sheet.text();
    }
}
