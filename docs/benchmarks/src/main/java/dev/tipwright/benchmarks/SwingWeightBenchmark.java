package dev.tipwright.benchmarks;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * The swing weight of a whole build: by the library, by the same mathematics in raw doubles, and a sum of four moments in a generic units
 * library beside the same sum here. Sixty-four clubs come round in turn, so that nothing is known of the next.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class SwingWeightBenchmark {

    private static final int CLUBS = 64;
    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;

    private final Build[] builds = new Build[CLUBS];
    private final RawClub[] raw = new RawClub[CLUBS];
    private int turn;

    private final Mass[] masses = new Mass[4];
    private final Length[] arms = new Length[4];
    private final Quantity<?>[] genericMasses = new Quantity<?>[4];
    private final Quantity<?>[] genericArms = new Quantity<?>[4];

    /** Makes the clubs and sees that both ways give one number. */
    public SwingWeightBenchmark() {
        Build planned = Bench.planner().plan(Bench.build()).after();
        for (int i = 0; i < CLUBS; i++) {
            HeadMass mass = planned.parts().head().mass();
            builds[i] = planned.withParts(
                    planned.parts().withHead(planned.parts().head().withMass(mass.withMass(Mass.ofGrams(250 + i)))));
            raw[i] = new RawClub(builds[i], SCALE);
            // Grams and millimetres are rounded to picograms and nanometres in the one and not in the other.
            double apart = Math.abs(raw[i].points() - points(builds[i]));
            if (!(apart < 1e-6)) {
                throw new IllegalStateException("the two ways are " + apart + " points apart");
            }
        }
        Unit<?> gram = Units.GRAM;
        for (int i = 0; i < 4; i++) {
            masses[i] = Mass.ofGrams(50 + 60 * i);
            arms[i] = Bench.in(String.valueOf(10 + 8 * i));
            genericMasses[i] = Quantities.getQuantity(masses[i].grams(), gram);
            genericArms[i] = Quantities.getQuantity(arms[i].metres(), Units.METRE);
        }
    }

    private static double points(Build build) {
        return SCALE.read(Balance.momentAbout(build, SCALE.fulcrum())).points();
    }

    /**
     * By the library.
     *
     * @return points
     */
    @Benchmark
    public double library() {
        turn = (turn + 1) % CLUBS;
        return points(builds[turn]);
    }

    /**
     * In raw doubles.
     *
     * @return points
     */
    @Benchmark
    public double rawDoubles() {
        turn = (turn + 1) % CLUBS;
        return raw[turn].points();
    }

    /**
     * Four masses at four arms, here.
     *
     * @return g mm
     */
    @Benchmark
    public double fourTerms() {
        FirstMoment sum = masses[0].at(arms[0]);
        for (int i = 1; i < 4; i++) {
            sum = sum.plus(masses[i].at(arms[i]));
        }
        return sum.gramMillimetres();
    }

    /**
     * Four masses at four arms, in a generic units library.
     *
     * @return its quantity
     */
    @Benchmark
    public Quantity<?> fourTermsGeneric() {
        Quantity<?> sum = genericMasses[0].multiply(genericArms[0]);
        for (int i = 1; i < 4; i++) {
            sum = added(sum, genericMasses[i].multiply(genericArms[i]));
        }
        return sum;
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Quantity<?> added(Quantity sum, Quantity more) {
        return sum.add(more);
    }
}
