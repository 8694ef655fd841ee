package dev.tipwright.fitcheck.taper;

import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.insert.FirstContact;
import dev.tipwright.fitcheck.internal.Facing;
import java.util.ArrayList;
import java.util.List;

/**
 * Where to stop and measure while a tip is worked down: each stop takes half of what is left, so that the steps shrink until what is
 * left is within one pass. The stage at which the tip seats is a stop of its own, because from there on depth is silent.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse(".363 in"), Length.parse(".355 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * DiameterProfile tip = DiameterProfile.cylinder(Length.parse(".3685 in"), Length.parse("8 in"));
 * DiameterProfile finished = DiameterProfile.of(
 *         Station.of(Length.ZERO, Length.parse(".351 in")),
 *         Station.of(Length.parse("1 1/4 in"), Length.parse(".359 in")));
 * StageTable table = StageTable.of(new StagedTip(tip, finished, bore, bore.depth()), Length.parse(".001 in"));
 * table.stages().get(1).stock().thousandths();              // = 8.75
 * table.stages().get(3).insertion().inches();               // = 1.25
 * table.stages().get(1).perThousandth().inches();           // = 0.15625
 * }</pre>
 *
 * @param tip the tip on its way
 * @param pass what one pass takes off the diameter; above zero
 * @param stages from all the stock to none
 */
public record StageTable(StagedTip tip, Length pass, List<Stage> stages) {

    /** What one pass takes where the caller does not say: an assumption of this library. */
    public static final Length USUAL_PASS = Length.ofThousandths(1);

    /** Stops beyond which a table is no help. */
    private static final int MOST = 200;

    /**
     * Checks the values.
     *
     * @param tip the tip on its way
     * @param pass what one pass takes off the diameter; above zero
     * @param stages from all the stock to none
     */
    public StageTable {
        Require.given("tip", tip);
        Require.positive("pass", pass);
        stages = Require.someOf("stages", stages);
    }

    /**
     * Stops that halve what is left.
     *
     * @param tip the tip on its way
     * @param pass what one pass takes off the diameter; 1 um to 1 mm
     * @return the stages
     */
    public static StageTable of(StagedTip tip, Length pass) {
        Require.given("tip", tip);
        Require.between("pass", pass, Length.ofMicrometres(1), Length.ofMillimetres(1));
        Length seats = tip.seatsAt();
        List<Stage> stages = new ArrayList<>();
        Length left = tip.stock();
        stages.add(tip.stage(left));
        while (left.nanometres() > 0) {
            Length half = left.moreThan(pass) ? left.half() : Length.ZERO;
            left = half.lessThan(seats) && seats.lessThan(left) ? seats : half;
            stages.add(tip.stage(left));
        }
        return new StageTable(tip, pass, stages);
    }

    /**
     * Stops of equal steps, to hold the halving ones against.
     *
     * @param tip the tip on its way
     * @param pass what one pass takes off the diameter; 1 um to 1 mm, at least a two-hundredth of the stock
     * @return the stages, the last step no more than a pass
     */
    public static StageTable equalSteps(StagedTip tip, Length pass) {
        Require.given("tip", tip);
        Require.between("pass", pass, Length.ofMicrometres(1), Length.ofMillimetres(1));
        Length left = tip.stock();
        Require.that(
                !left.moreThan(pass.times(MOST)), "pass", "must be at least the " + MOST + "th part of " + left, pass);
        List<Stage> stages = new ArrayList<>();
        stages.add(tip.stage(left));
        while (left.nanometres() > 0) {
            left = left.minus(pass).max(Length.ZERO);
            stages.add(tip.stage(left));
        }
        return new StageTable(tip, pass, stages);
    }

    /**
     * The measurement worth taking when this is all that is known: depth where it tells, else a caliper at the finished stations where
     * the tip is inserted, or, once it is seated, the sweep of the shaft as well.
     *
     * @param known what the last insertion said
     * @return the next measurement
     */
    public NextMeasurement next(StockLeft known) {
        Require.given("known", known);
        return NextMeasurement.after(known, tip);
    }

    /**
     * How the insertion of each stage comes about. It is found by search: the equation it solves, the answer, and what is left of the
     * equation there.
     *
     * @return two lines for each stage at which the tip touches, none for one at which it seats
     */
    public Working working() {
        List<Working.Line> lines = new ArrayList<>();
        for (int k = 0; k < stages.size(); k++) {
            if (stages.get(k).contact().kind() == FirstContact.Kind.TOUCHES) {
                stage(k, lines);
            }
        }
        return new Working("Stage table", lines);
    }

    private void stage(int k, List<Working.Line> lines) {
        Stage stage = stages.get(k);
        FirstContact contact = stage.contact();
        Length z = contact.tipStation();
        Facing untouched = Facing.tight(tip.tip(), tip.bore(), contact.insertion(), z);
        Facing done = Facing.tight(tip.finished(), tip.bore(), contact.insertion(), z);
        Term e = Term.fine("e", "still to come off", stage.stock());
        Term d = Term.fine("d", "tip there as it was", untouched.tip());
        Term f = Term.fine("f", "finished tip there", done.tip());
        lines.add(new Working.Line(
                Term.fine("i" + k, "insertion with " + stage.stock() + " to come off", stage.insertion()),
                "y + z",
                List.of(
                        Term.fine("y", "down the bore, where it meets", contact.boreStation()),
                        Term.fine("z", "up the tip, where it meets", z)),
                Source.assumption("the least y + z at which D - min(d, f + e) is not above zero, by search")));
        lines.add(new Working.Line(
                Term.fine(
                        "r" + k,
                        "residual: zero where they touch, else the size of a step",
                        done.bore().minus(untouched.tip().min(done.tip().plus(stage.stock())))),
                "D - min(d, f + e)",
                List.of(Term.fine("D", "bore there", done.bore()), d, f, e),
                Source.assumption("touching is not interference")));
    }
}
