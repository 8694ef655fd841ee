import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadCentreRule;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.ClubBalance;
import dev.tipwright.swingweight.SwingWeightStep;
import dev.tipwright.swingweight.aim.MassForTarget;
import dev.tipwright.swingweight.aim.SwingWeightTarget;
import dev.tipwright.swingweight.aim.SwingWeightTargets;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.balance.BalancePart;
import dev.tipwright.swingweight.learn.LearntCentre;
import dev.tipwright.swingweight.learn.ScaleReading;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import dev.tipwright.swingweight.set.ChartClub;
import dev.tipwright.swingweight.set.SetChart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The figures of {@code swingweight}; the one of a set is drawn by the library itself. */
final class SwingFigures {

    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;

    private SwingFigures() {}

    static String set() {
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

    /** The club on its scale. */
    static String fulcrum() {
        Sheet sheet = new Sheet(
                800, 200, "What a swing weight scale reads", "The moment of every part about a fulcrum near the grip.");
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

    /** Every part of a club with its mass and its arm. */
    static String arms() {
        Build build = Example.plan().after();
        Balance balance = Balance.of(build);
        Sheet sheet = new Sheet(
                900,
                300,
                "Parts of a club and their arms",
                "Grip, shaft and head each with its mass and its distance x from the top of the grip; the club"
                        + " balances where the arms even out.");
        double top = 40;
        double scale = 20;
        double y = 70;
        clubFrom(sheet, build, top, scale, y);
        double below = 130;
        for (BalancePart part : balance.parts()) {
            if (part.mass().equals(Mass.ZERO)) {
                continue; // what came off a tip of unknown density
            }
            Length arm = part.moment().over(part.mass());
            double x = top + arm.inches() * scale;
            sheet.dot(x, y);
            sheet.dashed(x, y, x, below + 7);
            sheet.middle(x, y - 34, part.label() + ", " + Example.grams(part.mass()));
            sheet.span(top, x, below, "x = " + Example.inches(arm, 2));
            below += 36;
        }
        double at = top + balance.balancePoint().inches() * scale;
        sheet.polygon(at, y + 8, at - 10, y + 26, at + 10, y + 26);
        sheet.words(at + 16, y + 26, "balance point");
        sheet.dashed(at, y + 26, at, below + 7);
        sheet.span(top, at, below, "sum m x / total = " + Example.inches(balance.balancePoint(), 2));
        sheet.line(top, y - 20, top, below + 7);
        sheet.words(
                top - 30,
                below + 40,
                "total = sum m = " + Example.grams(balance.total())
                        + ";  moment about a fulcrum = sum m (x - F);  J = sum m x^2 = "
                        + Example.fixed(balance.inertiaAboutButt().kilogramSquareCentimetres(), 0)
                        + " kg cm2 about the top of the grip");
        return sheet.text();
    }

    /** A club to scale along its axis. */
    private static void clubFrom(Sheet sheet, Build build, double top, double scale, double y) {
        double mouth = top + build.mouthFromTop().inches() * scale;
        double ground = mouth + build.parts().head().geometry().mouthToGround().inches() * scale;
        sheet.box(top, y - 8, build.parts().grip().length().inches() * scale, 16);
        sheet.line(top + build.parts().grip().length().inches() * scale, y - 3, mouth, y - 3);
        sheet.line(top + build.parts().grip().length().inches() * scale, y + 3, mouth, y + 3);
        sheet.polygon(
                mouth,
                y - 6,
                mouth + 24,
                y - 6,
                ground - 8,
                y - 26,
                ground + 10,
                y - 22,
                ground + 4,
                y + 14,
                ground - 14,
                y + 16,
                mouth + 24,
                y + 6,
                mouth,
                y + 6);
    }

    /** What a step does: predict, choose, predict again. */
    static String weight() {
        List<TipWeight> stock = new ArrayList<>();
        for (int grams = 2; grams <= 8; grams += 2) {
            stock.add(
                    new TipWeight(grams + " g", Mass.ofGrams(grams), Example.in(".2"), Length.ZERO, Example.in("1/2")));
        }
        SwingWeightTarget target = new SwingWeightTarget("6", SCALE.parse("D2"), 0.5);
        Build build = Example.plan().after();
        ClubBalance balance = JobPlanner.of(
                        SwingWeightStep.towards(new SwingWeightTargets(SCALE, List.of(target)), stock))
                .plan(ClubSet.of(build))
                .club("6")
                .report(ClubBalance.class);
        TipWeight chosen = balance.chosen().get(0);
        Sheet sheet = new Sheet(
                860,
                220,
                "A club brought to its swing weight",
                "A scale in points: what the club is predicted to read, what each weight of the stock would make of"
                        + " it, and the wanted band.");
        double perPoint = 120;
        double left = 60;
        double first = Math.floor(balance.readsBefore().points()) - 0;
        double y = 120;
        for (int tick = 0; tick <= 6; tick++) {
            double x = left + tick * perPoint;
            sheet.line(x, y, x, y + 8);
            sheet.middle(x, y + 24, SCALE.designation(new SwingWeight(first + tick)));
        }
        double wanted = left + (target.wanted().points() - first) * perPoint;
        sheet.hatched(wanted - target.within() * perPoint, y - 12, 2 * target.within() * perPoint, 12);
        sheet.line(left - 20, y, left + 6.3 * perPoint, y);
        double before = left + (balance.readsBefore().points() - first) * perPoint;
        double after = left + (balance.reads().points() - first) * perPoint;
        sheet.dot(before, y);
        sheet.strong(before - 10, 36, "predicted as it is: " + SCALE.designation(balance.readsBefore()));
        sheet.line(before, 42, before, y);
        Balance without = Balance.of(build);
        for (TipWeight weight : stock) {
            BalancePart part = BalancePart.at(weight.label(), weight.mass(), MassForTarget.fromTop(build, weight));
            FirstMoment moment = without.momentAbout(SCALE.fulcrum()).plus(part.about(SCALE.fulcrum()));
            double x = left + (SCALE.read(moment).points() - first) * perPoint;
            boolean taken = weight.label().equals(chosen.label());
            sheet.box(x - 18, y - 42, 36, 20);
            sheet.text(x, y - 28, "middle", weight.label(), taken);
            sheet.line(x, y - 22, x, y);
            if (taken) {
                sheet.dot(x, y);
            }
        }
        sheet.arrow(before, 54, after, 54);
        sheet.strong(
                after + 8, 58, "with the " + chosen.label() + " of the stock: " + SCALE.designation(balance.reads()));
        sheet.middle(
                wanted,
                y + 48,
                "wanted " + SCALE.designation(target.wanted()) + ", near enough within "
                        + Example.fixed(target.within(), 1));
        sheet.words(
                20,
                206,
                "An exact weight would be "
                        + Example.grams(balance.exactWeight().orElseThrow())
                        + "; the nearest of the stock is taken, and none if the club is near enough without.");
        return sheet.text();
    }

    /** The moment that is missing, and the mass that gives it. */
    static String moment() {
        Build build = Example.plan().after();
        Balance balance = Balance.of(build);
        SwingWeight wanted = SCALE.parse("D2");
        Length place = build.tipFromTop().minus(Example.in("1/2"));
        Mass mass = MassForTarget.at(balance, SCALE, wanted, place).orElseThrow();
        FirstMoment has = balance.momentAbout(SCALE.fulcrum());
        FirstMoment missing = SCALE.moment(wanted).minus(has);
        Length arm = place.minus(SCALE.fulcrum());
        Sheet sheet = new Sheet(
                860,
                300,
                "The mass that is missing",
                "A club on its fulcrum F; the moment that is missing, over the arm from the fulcrum to the place, is"
                        + " the mass to add there.");
        double top = 30;
        double scale = 20;
        double y = 70;
        clubFrom(sheet, build, top, scale, y);
        double fulcrum = top + SCALE.fulcrum().inches() * scale;
        double x = top + place.inches() * scale;
        sheet.polygon(fulcrum, y + 3, fulcrum - 14, y + 30, fulcrum + 14, y + 30);
        sheet.dot(x, y);
        sheet.arrow(x, y + 10, x, y + 46);
        sheet.text(x - 8, y + 44, "end", "m = ?", true);
        sheet.middle(x, y - 34, "where it would go");
        sheet.span(top, fulcrum, 140, "F");
        sheet.span(fulcrum, x, 140, "arm x - F = " + Example.inches(arm, 2));
        double from = 212;
        double perPoint = 110;
        double low = Math.floor(SCALE.read(has).points());
        double hasAt = from + (SCALE.read(has).points() - low) * perPoint;
        double wantedAt = from + (wanted.points() - low) * perPoint;
        sheet.text(from - 12, 182, "end", "M, as it is", false);
        sheet.box(from, 170, hasAt - from, 16);
        sheet.text(from - 12, 208, "end", "M_wanted, for " + SCALE.designation(wanted), false);
        sheet.box(from, 196, hasAt - from, 16);
        sheet.hatched(hasAt, 196, wantedAt - hasAt, 16);
        sheet.words(wantedAt + 10, 208, "missing: " + Example.fixed(missing.ounceInches(), 2) + " oz in");
        sheet.words(hasAt + 10, 182, SCALE.designation(SCALE.read(has)));
        sheet.words(from, 230, "bars from " + SCALE.designation(new SwingWeight(low)) + " on");
        sheet.words(
                30,
                272,
                "m = (M_wanted - M) / (x - F) = " + Example.fixed(missing.ounceInches(), 2) + " oz in / "
                        + Example.inches(arm, 2) + " = " + Example.fixed(missing.ounceInches() / arm.inches(), 3)
                        + " oz = " + Example.grams(mass)
                        + "; below zero it has to come off.");
        return sheet.text();
    }

    /** What a reading says of the centre of a head. */
    static String centre() {
        Build build = Example.plan().after();
        Head head = build.parts().head();
        SwingWeight predicted = Balance.of(build).on(SCALE);
        ScaleReading reading = ScaleReading.finished(build, SCALE, predicted.plus(-0.6), 0.1);
        LearntCentre learnt = new LearntCentre(reading, HeadCentreRule.STANDARD_UNCERTAINTY, Length.ofMillimetres(1.2));
        Sheet sheet = new Sheet(
                860,
                350,
                "Where the centre of a head is, by one reading",
                "Three normal curves along the axis of the head: as assumed, wide and dashed; by the reading alone;"
                        + " and the two weighed together, narrowest.");
        double scale = 24;
        double from = 48;
        double left = 300;
        double ground = left + (head.geometry().mouthToGround().millimetres() - from) * scale;
        double base = 290;
        Length[] centres = {
            learnt.before().along(), learnt.byReading(), learnt.centre().along()
        };
        Length[] us = {learnt.uncertaintyBefore(), learnt.uncertaintyOfReading(), learnt.uncertainty()};
        String[] names = {"c0, assumed", "c, by the reading", "both together"};
        for (int i = 0; i < 3; i++) {
            List<double[]> curve = new ArrayList<>();
            double c = centres[i].millimetres();
            double u = us[i].millimetres();
            for (int step = -36; step <= 36; step++) {
                double t = step / 12.0;
                curve.add(
                        new double[] {left + (c + t * u - from) * scale, base - 185 / u * StrictMath.exp(-t * t / 2)});
            }
            if (i == 0) {
                sheet.dashed(curve);
            } else {
                sheet.curve(curve);
            }
            double x = left + (c - from) * scale;
            sheet.dashed(x, base, x, base - 185 / u);
        }
        sheet.line(left, base, 840, base);
        for (int mm = 50; mm <= 70; mm += 5) {
            sheet.line(left + (mm - from) * scale, base - 4, left + (mm - from) * scale, base + 4);
            sheet.middle(left + (mm - from) * scale, base + 20, mm + " mm");
        }
        sheet.line(ground, 60, ground, base + 26);
        sheet.middle(ground, 52, "ground");
        double[] x = new double[3];
        for (int i = 0; i < 3; i++) {
            x[i] = left + (centres[i].millimetres() - from) * scale;
        }
        sheet.text(x[1] - 24, base - 120, "end", names[1], false);
        sheet.text(x[2], base - 185 / us[2].millimetres() - 10, "middle", names[2], true);
        sheet.words(ground + 8, base - 46, names[0]);
        sheet.strong(
                20, 40, "predicted " + SCALE.designation(predicted) + ", read " + SCALE.designation(reading.read()));
        sheet.words(20, 58, "less than predicted: the centre lies nearer");
        sheet.words(20, 74, "the hosel mouth than was assumed");
        for (int i = 0; i < 3; i++) {
            sheet.words(
                    20,
                    110 + i * 20,
                    names[i] + ": " + Example.fixed(centres[i].millimetres(), 1) + " mm, u = "
                            + Example.fixed(us[i].millimetres(), 1) + " mm");
        }
        sheet.words(
                20,
                342,
                "Counted from the hosel mouth along the axis. The surer, the higher and narrower: heights go with 1 /"
                        + " u.");
        return sheet.text();
    }
}
