package dev.tipwright.fitcheck.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;

/**
 * Lean and sweep against a linear program: the axis of the tip runs at {@code s + a z} off that of the bore, and stays within half the
 * clearance at every knot. The most {@code a} is the lean, the most {@code s + a Z} half the sweep. And against the formula for parallels.
 */
class LeanTest {

    private static final Bore PARALLEL = Bore.ofTwoDiameters(in(".370"), in(".370"), in("1.25"), BoreEnd.FLAT);

    private static Length in(String inches) {
        return Length.parse(inches + " in");
    }

    private static DiameterProfile tip(String diameter) {
        return DiameterProfile.cylinder(in(diameter), in("8"));
    }

    @Test
    void leanAndSweepAreTheOptimaOfALinearProgram() {
        Random random = new Random(5);
        for (int n = 0; n < 500; n++) {
            DiameterProfile tip = profile(random, 8.8, 9.4);
            Bore bore = Bore.ofReadings(profile(random, 9.45, 9.9).stations(), BoreEnd.FLAT);
            Length insertion = Length.ofMillimetres(10 + 20 * random.nextDouble());
            Length place = insertion.plus(Length.ofMillimetres(1000 * random.nextDouble()));
            Polyline gap = Gap.of(tip, bore, insertion);
            double slope = optimum(gap, 0, 1);
            Lean lean = Lean.of(tip, bore, insertion);
            // The simplex solver works to 1e-6 relative by default; asked here for 1e-10.
            assertThat(StrictMath.tan(lean.angle().radians())).isCloseTo(slope, offset(1e-9));
            assertThat(Sweep.at(tip, bore, insertion, place).millimetres())
                    .isCloseTo(2 * optimum(gap, 1, place.millimetres()), offset(1e-5));
            assertThat(lean.free()).isTrue();
        }
    }

    private static double optimum(Polyline gap, double ofOffset, double ofSlope) {
        List<LinearConstraint> constraints = new ArrayList<>();
        for (int k = 0; k < gap.size(); k++) {
            double[] row = {1, gap.at(k)};
            constraints.add(new LinearConstraint(row, Relationship.LEQ, gap.value(k) / 2));
            constraints.add(new LinearConstraint(row, Relationship.GEQ, -gap.value(k) / 2));
        }
        LinearObjectiveFunction goal = new LinearObjectiveFunction(new double[] {ofOffset, ofSlope}, 0);
        return new SimplexSolver(1e-10, 10, 1e-12)
                .optimize(
                        new MaxIter(10_000),
                        goal,
                        new LinearConstraintSet(constraints),
                        GoalType.MAXIMIZE,
                        new NonNegativeConstraint(false))
                .getValue();
    }

    private static DiameterProfile profile(Random random, double least, double most) {
        List<Station> stations = new ArrayList<>();
        for (int k = 0; k < 6; k++) {
            stations.add(Station.of(
                    Length.ofMillimetres(6 * k), Length.ofMillimetres(least + (most - least) * random.nextDouble())));
        }
        return DiameterProfile.of(stations);
    }

    @Test
    void parallelInParallelObeysItsEquation() {
        for (String diameter : List.of(".3690", ".3650", ".3600")) {
            double d = in(diameter).millimetres();
            double i = 31.75;
            double a =
                    Lean.of(tip(diameter), PARALLEL, PARALLEL.depth()).angle().radians();
            double residual = i * StrictMath.sin(a) + d * StrictMath.cos(a) - 9.398;
            // First order: d (1 - cos a) is left over, and i a^3 / 2 for the tangent.
            assertThat(Math.abs(residual)).isLessThanOrEqualTo(d * a * a / 2 + i * a * a * a);
        }
    }

    @Test
    void byHand() {
        // .005 in 1 1/4: tan a = .01 / 2.5. Sweep at 35: .005 (70 - 1.25) / 1.25 = .275.
        Lean lean = Lean.of(tip(".365"), PARALLEL, in("1.25"));
        assertThat(StrictMath.tan(lean.angle().radians())).isCloseTo(.004, offset(1e-15));
        assertThat(lean.lieError()).isEqualTo(lean.angle());
        assertThat(lean.loftError()).isEqualTo(lean.angle());
        assertThat(Sweep.at(tip(".365"), PARALLEL, in("1.25"), in("35"))).isEqualTo(in(".275"));
    }

    @Test
    void aTipThatBindsDoesNotLean() {
        Lean lean = Lean.of(tip(".371"), PARALLEL, in("1.25"));
        assertThat(lean.free()).isFalse();
        assertThat(lean.angle().degrees()).isZero();
        assertThat(Sweep.at(tip(".371"), PARALLEL, in("1.25"), in("35"))).isEqualTo(Length.ZERO);
    }

    @Test
    void aMeasuredSweepGivesTheClearanceBack() {
        Random random = new Random(6);
        for (int n = 0; n < 300; n++) {
            DiameterProfile believed = profile(random, 8.8, 9.4);
            Bore bore = Bore.ofReadings(profile(random, 9.5, 9.9).stations(), BoreEnd.FLAT);
            Length off = Length.ofMicrometres(random.nextInt(190) - 90);
            DiameterProfile real = believed.widenedBy(off.negated());
            Length swept = Sweep.at(real, bore, in("1"), in("30"));
            // Half a nanometre of the sweep, divided by its gain of at least 30, and half of rounding.
            assertThat(Sweep.looser(believed, bore, in("1"), in("30"), swept)
                            .minus(off)
                            .abs())
                    .isLessThanOrEqualTo(Length.ofNanometres(1));
        }
    }

    @Test
    void hostileInput() {
        assertThatThrownBy(() -> Lean.of(tip(".365"), PARALLEL, in("1.3"))).hasMessageContaining("insertion");
        assertThatThrownBy(() -> Lean.of(tip(".365"), PARALLEL, in(".001"))).hasMessageContaining("insertion");
        assertThatThrownBy(() -> Sweep.at(tip(".365"), PARALLEL, in("1"), in(".9")))
                .hasMessageContaining("place");
        assertThatThrownBy(() -> Sweep.looser(tip(".365"), PARALLEL, in("1"), in("30"), in("-1")))
                .hasMessageContaining("measured");
    }
}
