package dev.tipwright.fitcheck.other;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Laws of opened bores and shims, in whole micrometres so that a counterexample can be read. */
class OtherWaysLawProperties {

    private static final Length DEPTH = um(30_000);
    private static final DiameterProfile TIP = DiameterProfile.cylinder(um(9000), um(100_000));

    private static Length um(int micrometres) {
        return Length.ofMicrometres(micrometres);
    }

    private static Bore bore(int mouth, int bottom) {
        return Bore.ofTwoDiameters(um(mouth), um(bottom), DEPTH, BoreEnd.FLAT);
    }

    private static BoreOpening open(Bore bore, int cutter) {
        return BoreOpening.of(bore, um(13_500), um(cutter), Reading.measured(Length.ZERO));
    }

    @Property
    void aCutterNoWiderThanTheBoreTakesNothingOut(
            @ForAll @IntRange(min = 9000, max = 9500) int mouth,
            @ForAll @IntRange(min = 9000, max = 9500) int bottom,
            @ForAll @IntRange(min = 8000, max = 9000) int cutter) {
        BoreOpening opening = open(bore(mouth, bottom), cutter);
        assertThat(opening.removed().cubicMillimetres()).isZero();
        assertThat(opening.after().profile()).isEqualTo(bore(mouth, bottom).profile());
    }

    @Property
    void twoCuttersTakeOutWhatTheWiderOneDoes(
            @ForAll @IntRange(min = 9000, max = 9500) int mouth,
            @ForAll @IntRange(min = 9000, max = 9500) int bottom,
            @ForAll @IntRange(min = 9000, max = 9600) int first,
            @ForAll @IntRange(min = 0, max = 200) int more) {
        BoreOpening once = open(bore(mouth, bottom), first + more);
        BoreOpening before = open(bore(mouth, bottom), first);
        BoreOpening then = open(before.after(), first + more);
        assertThat(then.wallLeft()).isEqualTo(once.wallLeft());
        // Where the first cutter leaves the taper is rounded to the nanometre in place, in a ring of some 15 mm2 and
        // less.
        assertThat(before.removed().plus(then.removed()).cubicMillimetres())
                .isCloseTo(once.removed().cubicMillimetres(), within(2e-4));
    }

    @Property
    void aWiderCutterLeavesNoMoreWall(
            @ForAll @IntRange(min = 9000, max = 9500) int mouth,
            @ForAll @IntRange(min = 9000, max = 9600) int cutter,
            @ForAll @IntRange(min = 0, max = 200) int more) {
        Bore bore = bore(mouth, 9000);
        assertThat(open(bore, cutter + more).wallLeft())
                .isLessThanOrEqualTo(open(bore, cutter).wallLeft());
    }

    @Property
    void aShimLeavesAtLeastTheWantedClearance(
            @ForAll @IntRange(min = 9000, max = 9600) int mouth,
            @ForAll @IntRange(min = 9000, max = 9600) int bottom,
            @ForAll @Size(max = 4) List<@IntRange(min = 1, max = 300) Integer> walls) {
        ShimFit fit = shim(mouth, bottom, walls);
        fit.wall().ifPresent(wall -> assertThat(fit.least()).isGreaterThanOrEqualTo(um(100)));
        boolean within = !fit.greatest().moreThan(um(150));
        assertThat(fit.verdict() == ShimFit.Verdict.CURES || fit.verdict() == ShimFit.Verdict.NOT_NEEDED)
                .isEqualTo(within);
    }

    @Property
    void oneMoreShimInTheBoxNeverLeavesItLooser(
            @ForAll @IntRange(min = 9000, max = 9600) int mouth,
            @ForAll @IntRange(min = 9000, max = 9600) int bottom,
            @ForAll @Size(max = 4) List<@IntRange(min = 1, max = 300) Integer> walls,
            @ForAll @IntRange(min = 1, max = 300) int another) {
        List<Integer> more = new ArrayList<>(walls);
        more.add(another);
        assertThat(shim(mouth, bottom, more).greatest())
                .isLessThanOrEqualTo(shim(mouth, bottom, walls).greatest());
    }

    private static ShimFit shim(int mouth, int bottom, List<Integer> walls) {
        List<Length> stock = walls.stream().map(OtherWaysLawProperties::um).toList();
        return ShimFit.of(TIP, bore(mouth, bottom), DEPTH, um(100), um(150), stock);
    }
}
