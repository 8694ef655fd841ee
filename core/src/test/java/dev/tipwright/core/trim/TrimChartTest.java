package dev.tipwright.core.trim;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import dev.tipwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A chart by rows and by steps, and what it refuses. */
class TrimChartTest {

    private static final TrimChart CHART =
            TrimChart.stepped("mid", List.of("6", "7", "8"), len("1/2 in"), len("1/2 in"), len("1 in"));

    /** First 1/2 in, then 1/2 in more from club to club: 1/2, 1, 1 1/2. */
    @Test
    void stepsFromClubToClub() {
        assertThat(CHART.rows())
                .containsExactly(
                        new TrimChart.Row("6", "mid", len("1/2 in")),
                        new TrimChart.Row("7", "mid", len("1 in")),
                        new TrimChart.Row("8", "mid", len("1 1/2 in")));
        assertThat(CHART.trim("8", "mid")).contains(len("1.5 in"));
        assertThat(CHART.trim("9", "mid")).isEmpty();
        assertThat(CHART.trim("8", "long")).isEmpty();
        assertThat(CHART.withGroundReference(len("2 in")).groundReference()).isEqualTo(len("2 in"));
        assertThat(CHART.withRows(CHART.rows().subList(0, 1)).trim("7", "mid")).isEmpty();
    }

    @Test
    void refusesTwoRowsForOneClubAndBlank() {
        TrimChart.Row row = new TrimChart.Row("7", "mid", len("1 in"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CHART.withRows(List.of(row, row)))
                .withMessage("rows must name each one once, but has more than one of [[7, mid]]");
        assertThat(CHART.withRows(List.of(row, new TrimChart.Row("7", "long", len("1 in"))))
                        .rows())
                .hasSize(2);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TrimChart.stepped("mid", List.of("6", "6"), len("1 in"), len("1 in"), len("1 in")))
                .withMessage("clubs must name each one once, but has more than one of [6]");
    }

    @Test
    void refusesWhatIsNoChart() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CHART.withRows(List.of()))
                .withMessage("rows must not be empty, was []");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TrimChart.stepped("mid", List.of(), len("1 in"), len("1 in"), len("1 in")))
                .withMessage("clubs must not be empty, was []");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TrimChart.Row("7", "mid", len("-1 mm")))
                .withMessage("trim must be from 0 mm to 1000 mm, was -1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TrimChart.Row(" ", "mid", Length.ZERO))
                .withMessage("club must be 1 to 80 printable characters, was \" \"");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CHART.withGroundReference(len("1 m")))
                .withMessage("groundReference must be from -200 mm to 200 mm, was 1000 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TrimChart.stepped("mid", List.of("6"), len("-1 in"), len("1 in"), len("1 in")))
                .withMessageStartingWith("first must be from 0 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TrimChart.stepped("mid", List.of("6"), len("1 in"), len("-1 in"), len("1 in")))
                .withMessageStartingWith("step must be from 0 mm");
        assertThatNullPointerException()
                .isThrownBy(() -> CHART.trim(null, "mid"))
                .withMessage("club must not be null");
        assertThatNullPointerException().isThrownBy(() -> CHART.trim("7", null)).withMessage("blank must not be null");
    }
}
