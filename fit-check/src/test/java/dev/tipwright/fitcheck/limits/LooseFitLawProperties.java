package dev.tipwright.fitcheck.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Laws of lean, sweep and class of fit, in whole micrometres so that a counterexample can be read. */
class LooseFitLawProperties {

    private static Length um(int micrometres) {
        return Length.ofMicrometres(micrometres);
    }

    /** 9 mm at its end, wider or narrower above. */
    private static DiameterProfile tip(int wider) {
        return DiameterProfile.of(Station.of(Length.ZERO, um(9000)), Station.of(um(40_000), um(9000 + wider)));
    }

    private static Bore bore(int mouth, int bottom, int depth) {
        return Bore.ofTwoDiameters(um(mouth), um(bottom), um(depth), BoreEnd.FLAT);
    }

    @Property
    void aWiderBoreLetsItLeanNoLess(
            @ForAll @IntRange(min = 9000, max = 9500) int mouth,
            @ForAll @IntRange(min = 9000, max = 9500) int bottom,
            @ForAll @IntRange(min = -100, max = 100) int taper,
            @ForAll @IntRange(min = 0, max = 200) int more) {
        Lean narrow = Lean.of(tip(taper), bore(mouth, bottom, 30_000), um(30_000));
        Lean wide = Lean.of(tip(taper), bore(mouth + more, bottom + more, 30_000), um(30_000));
        assertThat(wide.angle()).isGreaterThanOrEqualTo(narrow.angle());
    }

    @Property
    void parallelItLeansByTheClearanceOverTheDepth(
            @ForAll @IntRange(min = 9000, max = 9500) int wide, @ForAll @IntRange(min = 5000, max = 40_000) int depth) {
        Lean lean = Lean.of(tip(0), bore(wide, wide, depth), um(depth));
        // Of fractions of a millimetre, in doubles.
        assertThat(Math.tan(lean.angle().radians())).isCloseTo((wide - 9000) / (double) depth, within(1e-13));
    }

    @Property
    void itTouchesAtTwoPlacesOfTheInsertedPart(
            @ForAll @IntRange(min = 9000, max = 9500) int mouth,
            @ForAll @IntRange(min = 9000, max = 9500) int bottom,
            @ForAll @IntRange(min = -100, max = 100) int taper) {
        Lean lean = Lean.of(tip(taper), bore(mouth, bottom, 30_000), um(30_000));
        assertThat(lean.lowerAt()).isBetween(Length.ZERO, lean.upperAt());
        assertThat(lean.upperAt()).isLessThanOrEqualTo(um(30_000));
    }

    @Property
    void aLooserFitSweepsFurtherAndTheSweepTellsByHowMuch(
            @ForAll @IntRange(min = 9010, max = 9300) int wide, @ForAll @IntRange(min = 0, max = 100) int more) {
        Bore bore = bore(wide, wide, 30_000);
        Length at = um(900_000);
        Length found = Sweep.at(tip(0), bore(wide + more, wide + more, 30_000), um(30_000), at);
        assertThat(found).isGreaterThanOrEqualTo(Sweep.at(tip(0), bore, um(30_000), at));
        // Two searches to the nanometre; a millionth of a millimetre of sweep is less of clearance.
        Length back = Sweep.looser(tip(0), bore, um(30_000), at, found);
        assertThat(back.minus(um(more)).abs()).isLessThan(Length.ofNanometres(10));
    }

    @Property
    void theKindOfAFitIsTheSignsOfItsEnds(
            @ForAll @IntRange(min = -50, max = 50) int hole,
            @ForAll @IntRange(min = 0, max = 50) int holeWidth,
            @ForAll @IntRange(min = -50, max = 50) int tip,
            @ForAll @IntRange(min = 0, max = 50) int tipWidth) {
        FitClass fit = FitClass.of(limits(hole, holeWidth), limits(tip, tipWidth));
        int least = hole - tip - tipWidth;
        int greatest = hole + holeWidth - tip;
        FitClass.Kind kind = least >= 0
                ? FitClass.Kind.CLEARANCE
                : greatest <= 0 ? FitClass.Kind.INTERFERENCE : FitClass.Kind.TRANSITION;
        assertThat(fit.kind()).isEqualTo(kind);
        assertThat(fit.greatestClearance().minus(fit.leastClearance())).isEqualTo(um(holeWidth + tipWidth));
    }

    private static SizeLimits limits(int from, int width) {
        return new SizeLimits(um(10_000 + from), um(10_000 + from + width));
    }
}
