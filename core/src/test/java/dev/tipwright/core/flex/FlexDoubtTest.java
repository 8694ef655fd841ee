package dev.tipwright.core.flex;

import static dev.tipwright.core.flex.SampleClub.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.plan.ClubFinding;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.uncertainty.BenchInput;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Instrument;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

/**
 * Five clubs half an inch apart, each shaft timed by itself to 1 a minute. A club's frequency goes in step with the timing of its shaft, so it
 * is known to {@code u_i = f_i / t_i}. Its distance from the line of least squares is {@code d_i = f_i - sum h_ij f_j} with the hat matrix
 * {@code h} of a statistics library, so {@code u(d_i)^2 = (1 - h_ii)^2 u_i^2 + sum over the others of (h_ij u_j)^2} (JCGM 100:2008, 5.1.2).
 */
class FlexDoubtTest {

    private static final double[] TIMED = {290, 290.7, 296, 290.3, 289.5};

    private static final BenchUncertainty TIMER = BenchUncertainty.of(
            BenchUncertainty.Tool.of(Instrument.ofStandard("timer", "/min", 1, 0), BenchInput.TIMED_FREQUENCY));

    private static final FlexStep STEP = FlexStep.clamping(mm(127), Frequency.ofPerMinute(3));

    /** A club whose shaft was timed once, or never. */
    private static Build club(int number, double... timed) {
        Head head = SampleClub.head()
                .withLabel("" + (5 + number))
                .withMass(SampleClub.head().mass().withMass(Mass.ofGrams(253 + 7 * number)));
        Shaft shaft = SampleClub.shaft()
                .withFlex(
                        timed.length > 0
                                ? SampleClub.flex(
                                        SampleClub.stations(0, 15, 1000, 65), SampleClub.timed(timed[0], 127, 200))
                                : SampleClub.flex(SampleClub.stations(0, 15, 1000, 65)));
        Build build = SampleClub.with(SampleClub.with(SampleClub.build(), head), shaft);
        return build.withWork(build.work().withButtTrim(mm(40 + 12.7 * number)));
    }

    private static List<ClubPlan> plans(boolean lastTimed) {
        List<ClubPlan> plans = new ArrayList<>();
        for (int number = 0; number < TIMED.length; number++) {
            plans.add(JobPlanner.of(STEP)
                    .plan(number < TIMED.length - 1 || lastTimed ? club(number, TIMED[number]) : club(number)));
        }
        return plans;
    }

    private static final List<ClubPlan> PLANS = plans(true);

    private static final FrequencyLine LINE = FlexReview.line(PLANS).orElseThrow();

    private static List<Finding> found(double tolerance, String label) {
        return new FlexDoubt(TIMER, Frequency.ofPerMinute(tolerance))
                .review(PLANS).stream()
                        .filter(finding -> finding.label().equals(label))
                        .map(ClubFinding::finding)
                        .toList();
    }

    /** Twice the standard uncertainty of the distance of a club, by the hat matrix. */
    private static double expanded(int club) {
        double[][] lengths = new double[TIMED.length][];
        double[] frequencies = new double[TIMED.length];
        for (int i = 0; i < TIMED.length; i++) {
            lengths[i] = new double[] {LINE.points().get(i).length().inches()};
            frequencies[i] = LINE.points().get(i).frequency().perMinute();
        }
        OLSMultipleLinearRegression fit = new OLSMultipleLinearRegression();
        fit.newSampleData(frequencies, lengths);
        RealMatrix hat = fit.calculateHat();
        double squares = 0;
        for (int j = 0; j < TIMED.length; j++) {
            double share = (j == club ? 1 : 0) - hat.getEntry(club, j);
            squares += Math.pow(share * frequencies[j] / TIMED[j], 2);
        }
        return 2 * Math.sqrt(squares);
    }

    /** The expanded uncertainty that a finding gives is that of the hat matrix, for clubs in the middle and at the ends. */
    @Test
    void theUncertaintyOfADistanceIsThatOfAStatisticsLibrary() {
        for (int club = 0; club < TIMED.length; club++) {
            String label = "" + (5 + club);
            double off = Math.abs(LINE.off(label).perMinute());
            List<Finding> found = found(off, label);
            assertThat(found).hasSize(1);
            assertThat(perMinute(found.get(0), "U")).isCloseTo(expanded(club), within(1e-6));
            assertThat(perMinute(found.get(0), "d")).isCloseTo(off, within(1e-12));
        }
    }

    /** How far each club is off the line when its shaft was timed so. */
    private static double[] off(double... timed) {
        List<ClubPlan> plans = new ArrayList<>();
        for (int number = 0; number < timed.length; number++) {
            plans.add(JobPlanner.of(STEP).plan(club(number, timed[number])));
        }
        FrequencyLine line = FlexReview.line(plans).orElseThrow();
        return plans.stream()
                .mapToDouble(plan -> line.off(plan.label()).perMinute())
                .toArray();
    }

    private static double[] timedFaster(double by, int butFor) {
        double[] timed = TIMED.clone();
        for (int club = 0; club < timed.length; club++) {
            timed[club] += club == butFor ? 0 : by;
        }
        return timed;
    }

    /**
     * What all timings have wrong alike leaves of a distance only how far the club's own {@code f_i / t_i} is off a straight line through
     * all of them over length, by a statistics library: a thousandth of a minute for a minute, where the review counts three quarters. A
     * timer that runs a thousandth fast makes each distance a thousandth longer.
     */
    @Test
    void whatAllTimingsHaveWrongAlikeFallsOut() {
        double[][] lengths = new double[TIMED.length][];
        double[] inStep = new double[TIMED.length];
        for (int i = 0; i < TIMED.length; i++) {
            lengths[i] = new double[] {LINE.points().get(i).length().inches()};
            inStep[i] = LINE.points().get(i).frequency().perMinute() / TIMED[i];
        }
        OLSMultipleLinearRegression fit = new OLSMultipleLinearRegression();
        fit.newSampleData(inStep, lengths);
        double[] left = fit.estimateResiduals();
        double[] now = off(TIMED);
        double[] ahead = off(timedFaster(1, -1));
        double[] quick = off(Arrays.stream(TIMED).map(timed -> 1.001 * timed).toArray());
        for (int club = 0; club < TIMED.length; club++) {
            assertThat(ahead[club] - now[club]).isCloseTo(left[club], within(1e-6));
            assertThat(Math.abs(left[club])).isLessThan(0.02 * expanded(club) / 2);
            assertThat(quick[club] - now[club]).isCloseTo(0.001 * now[club], within(1e-6));
        }
    }

    /**
     * Where all clubs but one were timed in one sitting, what they share does not fall out of the distance of that one. At even steps and
     * with clubs alike the hat matrix of five has .2 everywhere in its middle row: {@code sqrt(.8^2 + .8^2) = 1.131} for an error of 1 each,
     * where {@code sqrt(.8^2 + 4 x .2^2) = .894} is counted, 1.265 times less (and so by 400 000 trials of another program).
     */
    @Test
    void whatOnlyTheOthersShareIsCountedTooLow() {
        double own = (1 - 0.2) * LINE.points().get(2).frequency().perMinute() / TIMED[2];
        double others = off(timedFaster(1, 2))[2] - off(TIMED)[2];
        assertThat(Math.hypot(own, others) / (expanded(2) / 2)).isCloseTo(1.265, within(0.002));
    }

    private static double perMinute(Finding finding, String symbol) {
        return ((Term.OfFrequency) finding.term(symbol)).value().perMinute();
    }

    /** Club 7 is well over its line: a note where what is allowed is within the uncertainty of that, on either side, and none beyond. */
    @Test
    void whatIsAllowedIsHeldAgainstTheUncertainty() {
        double off = LINE.off("7").perMinute();
        double expanded = expanded(2);
        assertThat(off).isGreaterThan(2 * expanded);
        assertThat(codes(off - 1.001 * expanded)).isEmpty();
        assertThat(codes(off - 0.999 * expanded)).containsExactly(FlexCode.OFF_BY_LITTLE);
        assertThat(codes(Math.nextDown(off))).containsExactly(FlexCode.OFF_BY_LITTLE);
        assertThat(codes(off)).containsExactly(FlexCode.MARGINAL);
        assertThat(codes(off + 0.999 * expanded)).containsExactly(FlexCode.MARGINAL);
        assertThat(codes(off + 1.001 * expanded)).isEmpty();
    }

    private static List<FlexCode> codes(double tolerance) {
        return found(tolerance, "7").stream()
                .map(finding -> (FlexCode) finding.code())
                .toList();
    }

    @Test
    void saysOnWhichSideAndWhatToDo() {
        double off = LINE.off("7").perMinute();
        Finding faster = found(off - 0.5, "7").get(0);
        assertThat(faster.severity()).isEqualTo(Severity.NOTE);
        assertThat(faster.message(Units.INCH))
                .contains("/min faster than the line through the set, which is over")
                .endsWith(
                        "for which timed frequency counts most: it may be on the line, so measure that again before its trim is moved");
        Finding slower = found(Math.abs(LINE.off("5").perMinute()), "5").get(0);
        assertThat(slower.message(Units.METRIC))
                .contains("/min slower than the line through the set, which is within")
                .endsWith("for which timed frequency counts most: on the line only within its uncertainty");
    }

    /** One shaft that was never timed leaves the whole line without an uncertainty; two clubs are no line. */
    @Test
    void nothingIsSaidWhereTheUncertaintyIsNotKnown() {
        FlexDoubt doubt = new FlexDoubt(TIMER, Frequency.ofPerMinute(1));
        assertThat(doubt.review(plans(true))).isNotEmpty();
        assertThat(doubt.review(plans(false))).isEmpty();
        assertThat(doubt.review(PLANS.subList(0, 2))).isEmpty();
        assertThat(doubt.review(List.of())).isEmpty();
    }

    @Test
    void hostileInputIsRefusedByName() {
        assertThatNullPointerException()
                .isThrownBy(() -> new FlexDoubt(null, Frequency.ZERO))
                .withMessageStartingWith("bench ");
        assertThatNullPointerException()
                .isThrownBy(() -> new FlexDoubt(TIMER, null))
                .withMessageStartingWith("tolerance ");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FlexDoubt(TIMER, Frequency.ofPerMinute(-1)))
                .withMessageStartingWith("tolerance ");
        assertThatNullPointerException()
                .isThrownBy(() -> new FlexDoubt(TIMER, Frequency.ZERO).review(null))
                .withMessageStartingWith("clubs ");
    }
}
