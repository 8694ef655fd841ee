package dev.tipwright.swingweight.aim;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.root.GridSearch;
import dev.tipwright.core.length.PlayingLength;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.List;

/**
 * The cut length, within bounds, that brings a club to a wanted swing weight; only the butt is cut otherwise. The moment has no
 * straight line in the cut length, because the piece at the butt comes or goes with it, so the answer is looked for by halving, on
 * the grid of nanometres: a millionth of a point or better. A club swings heavier the longer it is as long as what lies below the butt
 * outweighs an arm's length of shaft up to the fulcrum, which is so for every club.
 *
 * <pre>{@code
 * SwingWeightScale scale = SwingWeightScale.LETTERS_AT_14_INCHES;
 * SwingWeight now = scale.read(Balance.of(Samples.build()).momentAbout(scale.fulcrum()));
 * LengthSolve solve = LengthSolve.of(Samples.build(), scale, now.plus(-3), Length.parse("30 in"));
 * solve.reached();                               // = true
 * Math.round(1000 * solve.reads().over(now));    // = -3000
 * }</pre>
 *
 * @param build the club, seated
 * @param scale the scale
 * @param wanted what it is to read
 * @param shortest least cut length ({@code S}); above zero
 * @param longest greatest cut length; not below the shortest, and no longer than the shaft with its tip trimmed
 */
public record LengthSolve(Build build, SwingWeightScale scale, SwingWeight wanted, Length shortest, Length longest)
        implements StepReport {

    /** Nearer than this a reading is the wanted one: a few nanometres of the heaviest club. */
    private static final double HIT = 1e-6;

    /** What a sum in doubles may be off, in points: a nanometre is hundreds of it, and none more is cut for it. */
    private static final double ROUNDING = 1e-9;

    /**
     * Checks the values.
     *
     * @param build the club, seated
     * @param scale the scale
     * @param wanted what it is to read
     * @param shortest least cut length ({@code S}); above zero
     * @param longest greatest cut length; not below the shortest, and no longer than the shaft with its tip trimmed
     */
    public LengthSolve {
        Require.given("build", build);
        Require.that(
                build.work().seat().insertion().moreThan(Length.ZERO),
                "build",
                "must be seated",
                build.work().seat());
        Require.given("scale", scale);
        Require.given("wanted", wanted);
        Length whole = build.parts().shaft().length().minus(build.work().tipTrim());
        Require.between("longest", longest, Length.ofNanometres(1), whole);
        Require.atMost("shortest", Require.positive("shortest", shortest), "longest", longest);
    }

    /**
     * For every length from a least one up to what the shaft gives.
     *
     * @param build the club, seated
     * @param scale the scale
     * @param wanted what it is to read
     * @param shortest least cut length; above zero
     * @return the question and its answer
     */
    public static LengthSolve of(Build build, SwingWeightScale scale, SwingWeight wanted, Length shortest) {
        Require.given("build", build);
        Length whole = build.parts().shaft().length().minus(build.work().tipTrim());
        return new LengthSolve(build, scale, wanted, Require.given("shortest", shortest), whole);
    }

    /**
     * The cut length that comes nearest.
     *
     * @return the least at which the club reads no less than wanted, to a billionth of a point; the longest if it never does
     */
    public Length cutLength() {
        return Length.ofNanometres(GridSearch.least(
                        shortest.nanometres(),
                        longest.nanometres(),
                        cut -> reads(Length.ofNanometres(cut)).over(wanted) >= -ROUNDING)
                .orElse(longest.nanometres()));
    }

    /**
     * Whether a length within the bounds gives the target.
     *
     * @return true if the reading is within a millionth of a point
     */
    public boolean reached() {
        return Math.abs(reads().over(wanted)) <= HIT;
    }

    /**
     * What the scale reads at that length.
     *
     * @return the reading
     */
    public SwingWeight reads() {
        return reads(cutLength());
    }

    private SwingWeight reads(Length cut) {
        return scale.read(Balance.of(cutTo(cut)).momentAbout(scale.fulcrum()));
    }

    /**
     * The club cut to that length.
     *
     * @return the same parts, another butt trim
     */
    public Build after() {
        return cutTo(cutLength());
    }

    private Build cutTo(Length cut) {
        Length trim =
                build.parts().shaft().length().minus(build.work().tipTrim()).minus(cut);
        return build.withWork(build.work().withButtTrim(trim));
    }

    /**
     * What came of it.
     *
     * @return a note if the target is reached, a caution if it is not
     */
    public Finding finding() {
        Term value = Term.of("value", "cut length", cutLength());
        Term reads = Term.of("reads", "swing weight", scale.designation(reads()));
        return reached()
                ? Finding.note(AimCode.REACHED, Term.of("what", "what is changed", "a cut length"), value, reads)
                : Finding.caution(
                        AimCode.NO_LENGTH,
                        Term.of("least", "shortest", shortest),
                        Term.of("most", "longest", longest),
                        value,
                        reads);
    }

    @Override
    public List<Term> headline() {
        Build after = after();
        return List.of(
                Term.of("S", "cut length", after.cutLength()),
                Term.of("L", "playing length", PlayingLength.alongAxis(after)),
                Term.of("reads", "swing weight", scale.designation(reads())));
    }

    /** The equation, the answer put in, and what is left over. */
    @Override
    public Working working() {
        Balance balance = Balance.of(after());
        return new Working(
                "Length for a target",
                List.of(
                        new Working.Line(
                                Term.of("U", "butt trim", after().work().buttTrim()),
                                "R - T - S",
                                List.of(
                                        Term.of(
                                                "R",
                                                "raw length",
                                                build.parts().shaft().length()),
                                        Term.of("T", "tip trim", build.work().tipTrim()),
                                        Term.of("S", "cut length, found by halving", cutLength())),
                                Source.assumption("the pieces of a shaft add up to the shaft")),
                        new Working.Line(
                                Term.number("rest", "points over the target that are left", reads().over(wanted)),
                                "(M - Mw) / K",
                                List.of(
                                        Term.of("M", "moment at that length", balance.momentAbout(scale.fulcrum())),
                                        Term.of("Mw", "moment that reads the target", scale.moment(wanted)),
                                        Term.of("K", "moment of a point", scale.perPoint())),
                                Source.published("any text on mechanics", "a club is the sum of its parts"))));
    }
}
