package dev.tipwright.core.orient;

import static dev.tipwright.core.TradeBench.club;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.part.Hand;
import dev.tipwright.core.plan.BenchStage;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Units;
import org.junit.jupiter.api.Test;

/** The turn of a shaft for either hand. */
class OrientStepTest {

    private static String sentence(Hand hand) {
        Build build = club("6", "M1", "mid");
        Build handed =
                build.withParts(build.parts().withHead(build.parts().head().withHand(hand)));
        StepOutcome outcome = OrientStep.to("the seam", Angle.ofDegrees(90)).take(handed);
        assertThat(outcome.after()).isEqualTo(handed);
        Operation turn = outcome.reports().get(0).operations().get(0);
        assertThat(turn.stage()).isEqualTo(BenchStage.BOND);
        assertThat(turn.oneWay()).isTrue();
        return turn.text(Units.INCH);
    }

    /** A right-handed player looks down at the head with the target on his left: from there to away from him is clockwise. */
    @Test
    void isMirroredForTheOtherHand() {
        assertThat(sentence(Hand.RIGHT))
                .contains("the seam points 90.00 deg clockwise of the target", "(right-handed club)");
        assertThat(sentence(Hand.LEFT))
                .contains("the seam points 90.00 deg anticlockwise of the target", "(left-handed club)");
    }

    @Test
    void isInTheNumbersOfThePlan() {
        Orientation turned = Orientation.of(club("6", "M1", "mid"), "the seam", Angle.ofDegrees(180));
        assertThat(turned.headline()).extracting(Term::symbol).containsExactly("turn");
        assertThat(turned.working().lines()).hasSize(1);
    }

    @Test
    void aTurnIsLessThanOnceRound() {
        for (double degrees : new double[] {-1, 360}) {
            assertThatThrownBy(() -> OrientStep.to("the seam", Angle.ofDegrees(degrees)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("turn");
            assertThatThrownBy(() -> new Orientation("the seam", Angle.ofDegrees(degrees), Hand.LEFT))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("turn");
        }
    }

    @Test
    void theMarkMayPointAtTheTarget() {
        Orientation turned = (Orientation) OrientStep.to("the seam", Angle.ZERO)
                .take(club("6", "M1", "mid"))
                .reports()
                .get(0);
        assertThat(turned.turn()).isEqualTo(Angle.ZERO);
    }
}
