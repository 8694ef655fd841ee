package dev.tipwright.benchmarks;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.fitcheck.insert.FirstContact;
import dev.tipwright.swingweight.balance.Balance;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One club: where its tip first touches, how it balances, and its whole plan. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class JobBenchmark {

    private final Bore bore = Bench.bore();
    private final DiameterProfile tip = Bench.tip();
    private final Build build = Bench.build();
    private final JobPlanner planner = Bench.planner();
    private final Build planned = planner.plan(build).after();

    /** Makes the state. */
    public JobBenchmark() {}

    /**
     * First contact of three stations with three.
     *
     * @return the contact
     */
    @Benchmark
    public FirstContact firstContact() {
        return FirstContact.of(tip, bore);
    }

    /**
     * Balance of a planned club from all its parts.
     *
     * @return the balance
     */
    @Benchmark
    public Balance balance() {
        return Balance.of(planned);
    }

    /**
     * The plan of one club: trim, fit, cut, weigh; no text.
     *
     * @return the plan
     */
    @Benchmark
    public ClubPlan plan() {
        return planner.plan(build);
    }
}
