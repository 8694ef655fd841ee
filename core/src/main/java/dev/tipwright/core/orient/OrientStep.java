package dev.tipwright.core.orient;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.plan.StepOutcome;
import dev.tipwright.core.plan.WorkStep;
import dev.tipwright.core.quantity.Angle;
import java.util.List;

/** The step that carries the wanted turn of every shaft into the plan. It needs nothing and changes no number. */
public final class OrientStep implements WorkStep {

    private final String mark;
    private final Angle turn;

    private OrientStep(String mark, Angle turn) {
        this.mark = mark;
        this.turn = turn;
    }

    /**
     * A step that turns every shaft alike, each for the hand of its own head.
     *
     * @param mark what on the shaft is lined up, in words, such as {@code "the seam"}
     * @param turn from the target, by way of away from the player; 0 or more, less than 360 degrees
     * @return the step
     */
    public static OrientStep to(String mark, Angle turn) {
        Require.label("mark", mark);
        Require.given("turn", turn);
        Require.that(turn.degrees() >= 0 && turn.degrees() < 360, "turn", "must be from 0 to under 360 deg", turn);
        return new OrientStep(mark, turn);
    }

    @Override
    public StepOutcome take(Build build) {
        return StepOutcome.of(build, List.of(), Orientation.of(build, mark, turn));
    }
}
