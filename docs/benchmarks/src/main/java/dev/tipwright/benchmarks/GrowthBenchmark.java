package dev.tipwright.benchmarks;

import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.insert.Clearance;
import dev.tipwright.fitcheck.insert.FirstContact;
import dev.tipwright.fitcheck.insert.WitnessMarks;
import dev.tipwright.fitcheck.limits.Lean;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How time grows with the number of stations: rough profiles of a hundred to ten thousand stations each. Growth of {@code n log n} makes
 * ten thousand cost at most two hundred times a hundred.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class GrowthBenchmark {

    /** Stations of each profile. */
    @Param({"100", "1000", "10000"})
    public int stations;

    private Rough rough = Rough.of(2);

    /** A taper, a tip that binds in it, and one that clears. */
    private record Rough(Bore bore, DiameterProfile tip, DiameterProfile slim) {

        /** Of the same taper, both rough by two hundredths of a millimetre, with a station every tenth of a millimetre. */
        static Rough of(int stations) {
            Random random = new Random(stations);
            List<Station> down = new ArrayList<>();
            List<Station> up = new ArrayList<>();
            for (int k = 0; k < stations; k++) {
                Length at = Length.ofMicrometres(100.0 * k);
                double part = k / (double) stations;
                down.add(Station.of(at, Length.ofMillimetres(9.2 - part + random.nextDouble() / 50)));
                up.add(Station.of(at, Length.ofMillimetres(8.2 + part + random.nextDouble() / 50)));
            }
            DiameterProfile tip = DiameterProfile.of(up);
            return new Rough(Bore.ofReadings(down, BoreEnd.FLAT), tip, tip.widenedBy(Length.ofMillimetres(-0.5)));
        }
    }

    /** Makes the state. */
    public GrowthBenchmark() {}

    /** Makes the profiles. */
    @Setup
    public void profiles() {
        rough = Rough.of(stations);
    }

    /**
     * First contact.
     *
     * @return the contact
     */
    @Benchmark
    public FirstContact firstContact() {
        return FirstContact.of(rough.tip(), rough.bore());
    }

    /**
     * All witness marks.
     *
     * @return the marks
     */
    @Benchmark
    public WitnessMarks witnessMarks() {
        return WitnessMarks.of(rough.tip(), rough.bore(), Length.ofMicrometres(5));
    }

    /**
     * Clearance.
     *
     * @return the clearance
     */
    @Benchmark
    public Clearance clearance() {
        return Clearance.of(rough.slim(), rough.bore(), rough.bore().depth());
    }

    /**
     * Lean.
     *
     * @return the lean
     */
    @Benchmark
    public Lean lean() {
        return Lean.of(rough.slim(), rough.bore(), rough.bore().depth());
    }
}
