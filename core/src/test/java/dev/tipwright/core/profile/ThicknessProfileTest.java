package dev.tipwright.core.profile;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import dev.tipwright.core.profile.ThicknessProfile.Knot;
import dev.tipwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A wall or a finish along a shaft, by hand, and what it refuses. */
class ThicknessProfileTest {

    private static final ThicknessProfile WALL =
            new ThicknessProfile(List.of(new Knot(len("10 mm"), len("1 mm")), new Knot(len("30 mm"), len("2 mm"))));

    /** A quarter of the way from 1 to 2 mm is 1.25 mm. */
    @Test
    void isStraightBetweenItsKnotsAndFlatBeyondThem() {
        assertThat(WALL.at(len("15 mm"))).isEqualTo(len("1.25 mm"));
        assertThat(WALL.at(len("10 mm"))).isEqualTo(len("1 mm"));
        assertThat(WALL.at(len("30 mm"))).isEqualTo(len("2 mm"));
        assertThat(WALL.at(Length.ZERO)).isEqualTo(len("1 mm"));
        assertThat(WALL.at(len("1 m"))).isEqualTo(len("2 mm"));
        assertThat(ThicknessProfile.uniform(len("3 um")).at(len("1 m"))).isEqualTo(len("3 um"));
        assertThat(WALL.withKnots(WALL.knots().subList(0, 1)).at(len("30 mm"))).isEqualTo(len("1 mm"));
    }

    /** As on a diameter profile: at a step it is what lies beyond it. */
    @Test
    void twoKnotsAtOnePlaceAreAStep() {
        ThicknessProfile step = new ThicknessProfile(List.of(
                new Knot(len("10 mm"), len("1 mm")),
                new Knot(len("20 mm"), len("2 mm")),
                new Knot(len("20 mm"), len("4 mm")),
                new Knot(len("30 mm"), len("6 mm"))));
        assertThat(step.at(len("15 mm"))).isEqualTo(len("1.5 mm"));
        assertThat(step.at(len("20 mm"))).isEqualTo(len("4 mm"));
        assertThat(step.at(len("25 mm"))).isEqualTo(len("5 mm"));
        ThicknessProfile last = new ThicknessProfile(step.knots().subList(0, 3));
        assertThat(last.at(len("20 mm"))).isEqualTo(len("4 mm"));
        assertThat(last.at(len("30 mm"))).isEqualTo(len("4 mm"));
    }

    @Test
    void refusesKnotsOutOfOrderAndNone() {
        Knot knot = new Knot(len("10 mm"), len("1 mm"));
        Knot before = new Knot(len("9 mm"), len("1 mm"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ThicknessProfile(List.of(knot, before)))
                .withMessageStartingWith("knots must be in order of their place, was [Knot[at=10 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ThicknessProfile(List.of(knot, knot, knot)))
                .withMessageStartingWith("knots must be at most two at one place, was [Knot[at=10 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ThicknessProfile(List.of()))
                .withMessage("knots must not be empty, was []");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Knot(len("-1 mm"), len("1 mm")))
                .withMessage("at must be from 0 mm to 3000 mm, was -1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ThicknessProfile.uniform(len("-1 mm")))
                .withMessage("thickness must be from 0 mm to 100 mm, was -1 mm");
        assertThatNullPointerException().isThrownBy(() -> WALL.at(null)).withMessage("fromRawTip must not be null");
    }
}
