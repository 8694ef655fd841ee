package dev.tipwright.fitcheck.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Force;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Torque;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Laws of the bond of a parallel tip, in whole micrometres so that a counterexample can be read. */
class BondLawProperties {

    private static Bond bond(int tip, int bore, int depth) {
        Length wide = Length.ofMicrometres(bore);
        Length deep = Length.ofMicrometres(depth);
        return Bond.of(
                DiameterProfile.cylinder(Length.ofMicrometres(tip), Length.ofMillimetres(100)),
                Bore.ofTwoDiameters(wide, wide, deep, BoreEnd.FLAT),
                deep);
    }

    @Property
    void twiceAsDeepHasTwiceTheAreaAndHalfTheShear(
            @ForAll @IntRange(min = 8000, max = 9000) int tip,
            @ForAll @IntRange(min = 10_000, max = 40_000) int depth) {
        Bond once = bond(tip, 9200, depth);
        Bond twice = bond(tip, 9200, 2 * depth);
        // Doubling is exact in doubles but for the sums on the way.
        assertThat(twice.area().ratioTo(once.area())).isCloseTo(2, within(1e-13));
        assertThat(twice.gap().ratioTo(once.gap())).isCloseTo(2, within(1e-10));
        Torque torque = Torque.ofNewtonMetres(10);
        assertThat(once.shear(torque).ratioTo(twice.shear(torque))).isCloseTo(2, within(1e-12));
    }

    @Property
    void aThinnerTipHasLessAreaAThickerLineAndMoreShear(
            @ForAll @IntRange(min = 8000, max = 9000) int tip, @ForAll @IntRange(min = 1, max = 500) int thinner) {
        Bond thick = bond(tip, 9200, 30_000);
        Bond thin = bond(tip - thinner, 9200, 30_000);
        Force pull = Force.ofNewtons(1000);
        Torque torque = Torque.ofNewtonMetres(10);
        assertThat(thin.area()).isLessThan(thick.area());
        assertThat(thin.meanLine()).isGreaterThan(thick.meanLine());
        assertThat(thin.gap()).isGreaterThan(thick.gap());
        assertThat(thin.shear(pull)).isGreaterThan(thick.shear(pull));
        assertThat(thin.shear(torque)).isGreaterThan(thick.shear(torque));
    }

    /** A turn has half the diameter as its lever: T = F d / 2 shears as much as F. */
    @Property
    void aTorqueShearsLikeTheForceAtTheSurface(
            @ForAll @IntRange(min = 8000, max = 9000) int tip, @ForAll @IntRange(min = 1, max = 5000) int newtons) {
        Bond bond = bond(tip, 9200, 30_000);
        Torque torque = Torque.ofNewtonMetres(newtons * (tip / 1e6) / 2);
        assertThat(bond.shear(torque).ratioTo(bond.shear(Force.ofNewtons(newtons))))
                .isCloseTo(1, within(1e-12));
    }
}
