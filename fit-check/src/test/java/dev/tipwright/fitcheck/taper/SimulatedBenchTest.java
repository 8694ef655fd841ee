package dev.tipwright.fitcheck.taper;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.part.Finish;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * A bench on which the truth is known. Tips with 17.5 thousandths to come off are worked down by the advice of the stops; each pass
 * takes 0.8 to 1.2 thousandths; the micrometer errs by 0.2 thousandths and the rule by 1/64 in (one standard deviation each, normal),
 * and the builder allows three times that. Over-sanded means more off than the finished shape wants.
 */
class SimulatedBenchTest {

    private static final Bore BORE = Bore.ofTwoDiameters(in(".363"), in(".355"), in("1.25"), BoreEnd.FLAT);
    private static final StagedTip TIP = new StagedTip(
            DiameterProfile.cylinder(in(".3685"), in("8")),
            DiameterProfile.of(Station.of(Length.ZERO, in(".351")), Station.of(in("1.25"), in(".359"))),
            BORE,
            in("1.25"));
    private static final double MICROMETER = 0.2;
    private static final double RULE = 1000 / 64.0;
    private static final int SEEDS = 10_000;

    /** The plain taper, and of the practice set the six and the eight, whose bores are chamfered and were read with pins. */
    private static final List<StagedTip> TIPS = List.of(
            TIP,
            tip(0, 396, 15, 366.4, 400, 363, 840, 359, 1180, 356, 1250, 355),
            tip(0, 396, 15, 366.6, 420, 363, 860, 359, 1190, 356, 1250, 355));

    private static StagedTip tip(double... placesAndDiameters) {
        List<Station> stations = new ArrayList<>();
        for (int k = 0; k < placesAndDiameters.length; k += 2) {
            stations.add(Station.of(thou(placesAndDiameters[k]), thou(placesAndDiameters[k + 1])));
        }
        Bore bore = Bore.ofReadings(stations, BoreEnd.FLAT);
        DiameterProfile bare = DiameterProfile.cylinder(in(".3685"), in("8"));
        MaterialRemoval removal = MaterialRemoval.of(TipSection.of(bare, Finish.NONE), bore, in("1.25"), in(".004"));
        return new StagedTip(bare, removal.profile(), bore, in("1.25"));
    }

    /** Eight in ten are plain; the bores of many readings take long in exact arithmetic. */
    private static StagedTip tip(int seed) {
        return TIPS.get(Math.max(0, seed % 10 - 7));
    }

    /** What became of one tip. */
    private record Outcome(double left, int stops, boolean oversanded) {}

    private static Length in(String inches) {
        return Length.parse(inches + " in");
    }

    private static Length thou(double thousandths) {
        return Length.ofThousandths(thousandths);
    }

    @Test
    void adviceFollowedOversandsNoMoreOftenThanStatedAndStopsLessOftenThanEqualSteps() {
        int oversanded = 0;
        int stops = 0;
        double worstLeft = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            Outcome outcome = workDown(tip(seed), new Random(seed), Long.MAX_VALUE);
            oversanded += outcome.oversanded() ? 1 : 0;
            stops += outcome.stops();
            worstLeft = Math.max(worstLeft, outcome.left());
        }
        // Seen: 2 of 10 000. A reading is more than three standard deviations too high once in 741; a tip is calipered
        // fewer than ten
        // times.
        assertThat(oversanded / (double) SEEDS).isLessThan(10 * 0.00135);
        // Seen: 7.2 stops a tip, against 17.2 with a stop after every pass.
        assertThat(stops / (double) SEEDS).isLessThan(equalSteps() / 2);
        // What is left when no whole pass is safe: a pass of at most 1.2 and six deviations of the micrometer.
        assertThat(worstLeft).isLessThan(1.2 + 6 * MICROMETER + 4 * MICROMETER);
    }

    /** Mean number of stops when every pass is followed by one. */
    private static double equalSteps() {
        int stops = 0;
        for (int seed = 0; seed < 200; seed++) {
            stops += workDown(tip(seed), new Random(seed), 1).stops();
        }
        return stops / 200.0;
    }

    private static Outcome workDown(StagedTip tip, Random random, long mostPasses) {
        PassRate rate = new PassRate(thou(.8), thou(1.2));
        double left = 17.5;
        int stops = 0;
        while (true) {
            long passes = Math.min(mostPasses, rate.nextPasses(read(tip, left, random)));
            stops++;
            if (passes == 0) {
                return new Outcome(left, stops, left < 0);
            }
            for (long pass = 0; pass < passes; pass++) {
                left -= 0.8 + 0.4 * random.nextDouble();
            }
        }
    }

    /** Depth first; a caliper at the end of the tip where depth is silent, as the report says. */
    private static StockRange read(StagedTip tip, double left, Random random) {
        Length insertion = tip.contact(thou(left)).insertion();
        Length measured = insertion
                .plus(thou(RULE * random.nextGaussian()))
                .max(Length.ZERO)
                .min(tip.insertion());
        StopReport report = report(tip, StopReading.ofDepth(measured));
        if (report.next().orElseThrow().means() == NextMeasurement.Means.DEPTH) {
            return report.stock().orElseThrow();
        }
        Length diameter = in(".351").plus(thou(left + MICROMETER * random.nextGaussian()));
        return report(tip, StopReading.ofCalipers(List.of(Station.of(Length.ZERO, diameter))))
                .stock()
                .orElseThrow();
    }

    private static StopReport report(StagedTip tip, StopReading stop) {
        return StopReport.of(tip, stop, in(".004"), thou(3 * RULE), thou(3 * MICROMETER));
    }
}
