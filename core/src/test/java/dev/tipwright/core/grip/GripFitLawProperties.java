package dev.tipwright.core.grip;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.TradeBench;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.GripSize;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Laws of a grip on its butt: layers of a tenth of a millimetre, a core in tenths, trims in millimetres. */
class GripFitLawProperties {

    private static final Length OUTSIDE = Length.ofMillimetres(25);

    private static GripFit fit(int core, int layers, int buttTrim) {
        Build build = TradeBench.club("6", "S", "mid");
        Length moulded = Length.ofMillimetres(core / 10.0);
        Build sized = build.withParts(build.parts()
                .withGrip(build.parts().grip().withSize(Reading.measured(new GripSize(moulded, OUTSIDE)))));
        Build cut = sized.withWork(sized.work().withButtTrim(Length.ofMillimetres(buttTrim)));
        return GripFit.of(cut, new TapeLayers(layers, Length.ofMillimetres(0.1), Mass.ofGrams(0.5)));
    }

    @Property
    void eachLayerAddsTwiceItsThicknessAndItsMass(
            @ForAll @IntRange(min = 140, max = 160) int core, @ForAll @IntRange(min = 0, max = 9) int layers) {
        GripFit less = fit(core, layers, 0);
        GripFit more = fit(core, layers + 1, 0);
        Length step = Length.ofMillimetres(0.2);
        assertThat(more.taped()).isEqualTo(less.taped().plus(step));
        assertThat(more.outside().orElseThrow())
                .isEqualTo(less.outside().orElseThrow().plus(step));
        assertThat(more.mass()).isEqualTo(less.mass().plus(Mass.ofGrams(0.5)));
    }

    /** Rubber that keeps its volume grows by less than the butt under it, and shrinks by less. */
    @Property
    void rubberOfTheSameVolumeChangesByLess(
            @ForAll @IntRange(min = 140, max = 160) int core, @ForAll @IntRange(min = 0, max = 10) int layers) {
        GripFit fit = fit(core, layers, 0);
        Length practice = fit.outside().orElseThrow().minus(OUTSIDE);
        Length volume = fit.outsideOfSameVolume().orElseThrow().minus(OUTSIDE);
        assertThat(volume.abs()).isLessThanOrEqualTo(practice.abs());
        assertThat(Long.signum(volume.nanometres())).isEqualTo(Long.signum(practice.nanometres()));
    }

    /** A shaft that grows from tip to butt is thinner where more of the butt is gone. */
    @Property
    void moreOffTheButtLeavesItNoWider(
            @ForAll @IntRange(min = 0, max = 300) int trim, @ForAll @IntRange(min = 0, max = 100) int more) {
        assertThat(fit(150, 0, trim + more).butt())
                .isLessThanOrEqualTo(fit(150, 0, trim).butt());
    }
}
