package dev.tipwright.core.internal.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import org.junit.jupiter.api.Test;

/** Parts of a line read either way, and hostile input. */
class PolylineTest {

    private static final Polyline LINE = Polyline.of(new double[] {1, 2, 2, 4}, new double[] {10, 20, 50, 90});

    @Test
    void partsReadForwards() {
        assertThat(LINE.between(1, 4)).hasToString("stations m [0.0, 1.0, 1.0, 3.0], values [10.0, 20.0, 50.0, 90.0]");
        assertThat(LINE.between(1.5, 3))
                .hasToString("stations m [0.0, 0.5, 0.5, 1.5], values [15.0, 20.0, 50.0, 70.0]");
        assertThat(LINE.between(3, 3.5)).hasToString("stations m [0.0, 0.5], values [70.0, 80.0]");
    }

    @Test
    void partsReadBackwards() {
        assertThat(LINE.between(4, 1)).hasToString("stations m [0.0, 2.0, 2.0, 3.0], values [90.0, 50.0, 20.0, 10.0]");
        assertThat(LINE.between(3, 1.5))
                .hasToString("stations m [0.0, 1.0, 1.0, 1.5], values [70.0, 50.0, 20.0, 15.0]");
    }

    @Test
    void aStepAtAnEndCountsFromInside() {
        assertThat(LINE.between(1, 2)).hasToString("stations m [0.0, 1.0], values [10.0, 20.0]");
        assertThat(LINE.between(2, 4)).hasToString("stations m [0.0, 2.0], values [50.0, 90.0]");
        assertThat(LINE.between(2, 1)).hasToString("stations m [0.0, 1.0], values [20.0, 10.0]");
    }

    @Test
    void leastAndGreatest() {
        assertThat(LINE.least()).isEqualTo(10);
        assertThat(LINE.greatest()).isEqualTo(90);
        assertThat(Polyline.constant(2, 3)).hasToString("stations m [0.0, 2.0], values [3.0, 3.0]");
    }

    @Test
    void theArraysAreCopied() {
        double[] stations = {0, 1};
        double[] values = {1, 1};
        Polyline line = Polyline.of(stations, values);
        stations[1] = 9;
        values[1] = 9;
        assertThat(line).hasToString("stations m [0.0, 1.0], values [1.0, 1.0]");
    }

    @Test
    void thePartIsChecked() {
        double[][] wrong = {{0.5, 2}, {2, 4.5}, {2, 2}, {Double.NaN, 2}, {2, Double.NaN}};
        for (double[] places : wrong) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> LINE.between(places[0], places[1]))
                    .withMessage("fromM and toM must be two places from 1.0 m to 4.0 m, was " + places[0] + " m and "
                            + places[1] + " m");
        }
    }

    @Test
    void stationsAndValuesAreChecked() {
        String station = "stationsM[%d] must be finite, not before the last and no third of one place, was %s m";
        refused(
                new double[] {1},
                new double[] {1},
                "stationsM and values must be equally many, at least 2, was 1 and 1");
        refused(
                new double[] {1, 2},
                new double[] {1},
                "stationsM and values must be equally many, at least 2, was 2 and 1");
        refused(new double[] {1, 0}, new double[] {1, 1}, String.format(station, 1, "0.0"));
        refused(new double[] {0, Double.NaN}, new double[] {1, 1}, String.format(station, 1, "NaN"));
        refused(
                new double[] {Double.NEGATIVE_INFINITY, 0},
                new double[] {1, 1},
                String.format(station, 0, "-Infinity"));
        refused(new double[] {0, 1, 1, 1}, new double[] {1, 1, 1, 1}, String.format(station, 3, "1.0"));
        refused(new double[] {1, 1}, new double[] {1, 2}, "stationsM[1] must be after the first, was 1.0 m");
        refused(new double[] {0, 1}, new double[] {1, Double.NaN}, "values[1] must be finite, was NaN");
        assertThatNullPointerException()
                .isThrownBy(() -> Polyline.of(null, new double[2]))
                .withMessage("stationsM");
        assertThatNullPointerException()
                .isThrownBy(() -> Polyline.of(new double[2], null))
                .withMessage("values");
    }

    private static void refused(double[] stations, double[] values, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Polyline.of(stations, values))
                .withMessage(message);
    }
}
