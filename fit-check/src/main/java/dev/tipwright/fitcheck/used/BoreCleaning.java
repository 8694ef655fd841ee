package dev.tipwright.fitcheck.used;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Volume;
import java.util.ArrayList;
import java.util.List;

/**
 * A bore read before and after it was cleaned. What is wider or deeper came out; what is narrower was misread. Mean diameters are
 * compared, over the depth that both readings share.
 *
 * <pre>{@code
 * Bore before = Bore.ofTwoDiameters(
 *         Length.parse(".359 in"), Length.parse(".352 in"), Length.parse("1.15 in"), BoreEnd.FLAT);
 * Bore after = Bore.ofTwoDiameters(
 *         Length.parse(".363 in"), Length.parse(".355 in"), Length.parse("1.25 in"), BoreEnd.FLAT);
 * BoreCleaning cleaning = new BoreCleaning(before, after, Length.parse(".0005 in"));
 * cleaning.thickest().thousandths();              // = 2.0
 * cleaning.depthGained().inches();                // = 0.1
 * cleaning.findings().get(0).code();              // = CRUST_OUT
 * }</pre>
 *
 * @param before as it was read with the crust in it
 * @param after as it reads now
 * @param within difference of diameters or depths that is only the reading; zero or more
 */
public record BoreCleaning(Bore before, Bore after, Length within) {

    /**
     * Checks the values.
     *
     * @param before as it was read with the crust in it
     * @param after as it reads now
     * @param within difference that is only the reading; zero or more
     */
    public BoreCleaning {
        Require.given("before", before);
        Require.given("after", after);
        Require.notNegative("within", within);
    }

    /** How much wider one bore is than another over the depth they share. */
    private static Polyline wider(Bore bore, Bore than) {
        double depth = bore.depth().min(than.depth()).millimetres();
        return Polyline.of(bore.profile(), Polyline.Diameter.MEAN)
                .between(0, depth)
                .plus(Polyline.of(than.profile(), Polyline.Diameter.MEAN).between(0, depth), -1);
    }

    /**
     * The thickest crust that came out of the shared depth.
     *
     * @return half of what the diameter gained most, radial; negative if the bore reads narrower everywhere
     */
    public Length thickest() {
        Polyline gained = wider(after, before);
        return Length.ofMillimetres(gained.value(gained.greatest()) / 2);
    }

    /**
     * The depth that came free.
     *
     * @return depth now less depth before; negative if it reads less deep
     */
    public Length depthGained() {
        return after.depth().minus(before.depth());
    }

    /**
     * What came out.
     *
     * @return volume now less volume before; negative if the bore reads smaller
     */
    public Volume volume() {
        return Volume.ofCubicMillimetres(Polyline.of(after.profile(), Polyline.Diameter.MEAN)
                        .solid()
                        .volume()
                - Polyline.of(before.profile(), Polyline.Diameter.MEAN).solid().volume());
    }

    /**
     * What the two readings say.
     *
     * @return one finding or more
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        Polyline gained = wider(after, before);
        Length widest = Length.ofMillimetres(gained.value(gained.greatest()));
        if (widest.moreThan(within) || depthGained().moreThan(within)) {
            findings.add(Finding.note(
                    UsedCode.CRUST_OUT,
                    Term.fine("k", "thickest crust", widest.half().max(Length.ZERO)),
                    down(gained, gained.greatest()),
                    Term.of("x", "depth gained", depthGained().max(Length.ZERO))));
        }
        Length narrower = Length.ofMillimetres(-gained.value(gained.least()));
        if (narrower.moreThan(within)) {
            findings.add(Finding.caution(
                    UsedCode.READS_LESS, Term.fine("x", "narrower", narrower), down(gained, gained.least())));
        }
        if (depthGained().negated().moreThan(within)) {
            findings.add(Finding.caution(
                    UsedCode.READS_LESS,
                    Term.of("x", "less deep", depthGained().negated()),
                    Term.of("y", "down the bore", after.depth())));
        }
        return findings.isEmpty()
                ? List.of(Finding.note(UsedCode.BORE_AS_BEFORE, Term.fine("u", "difference of reading", within)))
                : findings;
    }

    /**
     * Holds the cleaned bore against what is known of it: from its maker, or from before it was first bonded.
     *
     * @param known the bore as it is known
     * @return a finding if it reads wider by more than the difference of reading, else none
     */
    public List<Finding> against(Bore known) {
        Require.given("known", known);
        Polyline over = wider(after, known);
        Length wider = Length.ofMillimetres(over.value(over.greatest()));
        return wider.moreThan(within)
                ? List.of(Finding.caution(
                        UsedCode.WIDER_THAN_KNOWN, Term.fine("x", "wider", wider), down(over, over.greatest())))
                : List.of();
    }

    private static Term down(Polyline line, int knot) {
        return Term.of("y", "down the bore", Length.ofMillimetres(line.at(knot)));
    }

    /**
     * The same cleaning with another reading before.
     *
     * @param before as it was read with the crust in it
     * @return a copy that differs in that alone
     */
    public BoreCleaning withBefore(Bore before) {
        return new BoreCleaning(before, after, within);
    }

    /**
     * The same cleaning with another reading after.
     *
     * @param after as it reads now
     * @return a copy that differs in that alone
     */
    public BoreCleaning withAfter(Bore after) {
        return new BoreCleaning(before, after, within);
    }

    /**
     * The same cleaning with another difference of reading.
     *
     * @param within difference that is only the reading
     * @return a copy that differs in that alone
     */
    public BoreCleaning withWithin(Length within) {
        return new BoreCleaning(before, after, within);
    }
}
