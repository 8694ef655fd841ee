package dev.tipwright.evidence;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.balance.BalancePart;
import dev.tipwright.swingweight.learn.LearntCentre;
import dev.tipwright.swingweight.learn.ScaleReading;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;

/** What a club weighs, where it balances, how it swings, what the scale says of it. */
final class BalanceChecks {

    static final SwingWeightScale LETTERS = SwingWeightScale.LETTERS_AT_14_INCHES;

    /** Masses and places are on grids of a picogram and a nanometre, which a club has a dozen of. */
    private static final Bound GRIDS = Bound.relative(1e-9, "masses and places on grids of a picogram and a nanometre");

    private BalanceChecks() {}

    static void balance(Tally tally) {
        tally.cases("balance").forEach(row -> {
            Balance club = Balance.of(Weighed.club(row));
            row.check("total_g", club.total().grams(), Bound.of(1e-12, "a picogram, the grid of masses"));
            row.check("balance_mm", club.balancePoint(), Bound.grid("1e-6"));
            row.check("moment_at_14_in_oz_in", moment(club, 14), Bound.DOUBLES);
            row.check("moment_at_12_in_oz_in", moment(club, 12), Bound.DOUBLES);
        });
        Case example = tally.only("swing-weight-fulcrum", "quantity", "moment about the fulcrum");
        BalancePart club = BalancePart.at(
                "club",
                Mass.ofOunces(fulcrum(tally, "mass")),
                Length.ofInches(fulcrum(tally, "balance point from the top of the grip")));
        Length at = Length.ofInches(fulcrum(tally, "fulcrum from the top of the grip"));
        example.check("value", "moment", "oz in", club.about(at).ounceInches(), Bound.DOUBLES);
    }

    private static double moment(Balance club, double inches) {
        return club.momentAbout(Length.ofInches(inches)).ounceInches();
    }

    private static double fulcrum(Tally tally, String quantity) {
        return tally.only("swing-weight-fulcrum", "quantity", quantity).number("value");
    }

    static void inertia(Tally tally) {
        tally.cases("balance")
                .forEach(row -> row.check(
                        "inertia_about_butt_kg_cm2",
                        Balance.of(Weighed.club(row)).inertiaAboutButt().kilogramSquareCentimetres(),
                        Bound.DOUBLES));
        tally.cases("rigid-bodies")
                .filter(row -> row.text("quantity").equals("inertia about one end"))
                .forEach(row -> row.check("value", "rod about its end", "kg m2", rod(), Bound.DOUBLES));
        tally.cases("rigid-bodies")
                .filter(row -> row.text("quantity").startsWith("inertia across"))
                .forEach(row -> row.check(
                        "value",
                        "tube as a head, less 2 kg x (1 m)^2",
                        "kg m2",
                        tube(row.number("value")),
                        TEN_DIGITS));
    }

    /** The formula's value is printed to ten decimals, and goes in as it is printed. */
    private static final Bound TEN_DIGITS = Bound.of(1e-12, "the arithmetic of doubles");

    /** An even shaft of 2 kg and 3 m, uncut, the top of the grip at its butt. */
    private static double rod() {
        Build build = Club.of(Club.head(), Club.shaft(Club.mm(3000), Mass.ofGrams(2000)), Club.grip());
        Build flush = Club.withGrip(build, grip -> grip.withCap(Length.ZERO));
        return Balance.of(seated(flush)).part("shaft").inertia().kilogramSquareCentimetres() / 1e4;
    }

    /** A head of 2 kg with a tube's inertia, its centre 1 m from the top: by the theorem of parallel axes. */
    private static double tube(double own) {
        Build build = seated(Club.of(Club.head(), Club.shaft(Club.mm(950), Mass.ofGrams(80)), Club.grip()));
        Length along = Club.mm(1000).minus(build.mouthFromTop());
        HeadMass mass = new HeadMass(
                Mass.ofGrams(2000),
                Reading.measured(new HeadCentre(along, Length.ZERO)),
                Reading.measured(Inertia.ofKilogramSquareCentimetres(own * 1e4)));
        Build tube = Club.withHead(build, head -> head.withMass(mass));
        return Balance.of(tube).part("head").inertia().kilogramSquareCentimetres() / 1e4 - 2;
    }

    private static Build seated(Build build) {
        return Club.seated(build, Length.ZERO, Length.ZERO, Club.mm(30));
    }

    static void swingWeight(Tally tally) {
        tally.cases("balance")
                .forEach(row -> row.check(
                        "points_from_a0",
                        Balance.of(Weighed.club(row)).on(LETTERS).points(),
                        GRIDS));
        SwingWeight d0 = LETTERS.parse("D0");
        tally.cases("swing-weight-letters").forEach(row -> {
            SwingWeight reading = LETTERS.read(FirstMoment.ofOunceInches(row.number("moment_oz_in")));
            row.says("reading", LETTERS.designation(reading).replaceAll("\\.0$", ""));
            row.check("points_from_d0", "points from D0", "points", reading.over(d0), TWELVE_DECIMALS);
            double moment = LETTERS.moment(LETTERS.parse(row.text("reading"))).ounceInches();
            row.check("moment_oz_in", moment, Bound.DOUBLES);
        });
        tally.only("swing-weight-fulcrum", "quantity", "fulcrum in patent 6 765 156")
                .check("value", "fulcrum", "in", LETTERS.fulcrum().inches(), Bound.EXACT);
    }

    private static final Bound TWELVE_DECIMALS = Bound.of(1e-12, "the arithmetic of doubles");

    static void scaleReading(Tally tally) {
        tally.cases("scale-reading").forEach(row -> {
            boolean grip = row.text("with").equals("grip");
            SwingWeight read = new SwingWeight(row.number("read_points"));
            ScaleReading reading = new ScaleReading(Weighed.club(row), grip, LETTERS, read, 0.1);
            LearntCentre learnt = new LearntCentre(reading, row.length("u_before_mm"), row.length("u_reading_mm"));
            row.check("predicted_points", reading.predicted().points(), GRIDS);
            row.check("by_reading_mm", learnt.byReading(), Bound.grid("1e-6"));
            row.check("learnt_mm", learnt.centre().along(), LEARNT);
            row.check("u_learnt_mm", learnt.uncertainty(), Bound.grid("1e-6"));
        });
    }

    private static final Bound LEARNT =
            Bound.printedAnd(1e-6, "half the last digit, and two roundings to the nanometre");
}
