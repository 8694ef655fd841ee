package dev.tipwright.core.orient;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Hand;
import dev.tipwright.core.plan.BenchStage;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.quantity.Angle;
import java.util.List;

/**
 * How a shaft is turned about its axis: the report of {@link OrientStep}.
 *
 * <p>The turn is counted from the target by way of away from the player: at 0 degrees the mark points at the target, at 90 away from
 * the player, at 180 away from the target, at 270 at the player. Seen from the butt, with the head before one, that is clockwise for a
 * right-handed club, whose target is on the left, and anticlockwise for a left-handed one; so one number serves both hands.
 *
 * <pre>
 *   right hand, seen from the butt        left hand
 *
 *               90                           90
 *                |                            |
 *   target 0 ----o---- 180         180 ----o---- 0 target
 *                |                            |
 *               270                          270
 *              player                       player
 * </pre>
 *
 * @param mark what on the shaft is lined up, in words
 * @param turn from the target, by way of away from the player; 0 or more, less than 360 degrees
 * @param hand for which hand the head is
 */
public record Orientation(String mark, Angle turn, Hand hand) implements StepReport {

    /**
     * Checks the values.
     *
     * @param mark what on the shaft is lined up, in words
     * @param turn from the target, by way of away from the player; 0 or more, less than 360 degrees
     * @param hand for which hand the head is
     */
    public Orientation {
        Require.label("mark", mark);
        Require.given("turn", turn);
        Require.that(turn.degrees() >= 0 && turn.degrees() < 360, "turn", "must be from 0 to under 360 deg", turn);
        Require.given("hand", hand);
    }

    /**
     * The shaft of a club.
     *
     * @param build the club
     * @param mark what on the shaft is lined up, in words
     * @param turn from the target, by way of away from the player; 0 or more, less than 360 degrees
     * @return how it is turned, for the hand of the club's head
     */
    public static Orientation of(Build build, String mark, Angle turn) {
        Require.given("build", build);
        return new Orientation(mark, turn, build.parts().head().hand());
    }

    private String sense() {
        return hand == Hand.RIGHT ? "clockwise" : "anticlockwise";
    }

    @Override
    public List<Term> headline() {
        return List.of(Term.of("turn", "shaft mark turned", turn));
    }

    /** There is nothing to work out: the turn is the caller's word. */
    @Override
    public Working working() {
        return new Working(
                "Turn of the shaft",
                List.of(new Working.Line(
                        Term.of("turn", "shaft mark turned", turn),
                        "turn",
                        List.of(Term.of("turn", "as asked for", turn)),
                        Source.given("the builder"))));
    }

    @Override
    public List<Operation> operations() {
        return List.of(Operation.of(
                BenchStage.BOND,
                OrientInstruction.TURN,
                Term.of("mark", "what is lined up", mark),
                Term.of("turn", "turn", turn),
                Term.of("sense", "which way", sense()),
                Term.of("hand", "for which hand", hand == Hand.RIGHT ? "right" : "left")));
    }
}
