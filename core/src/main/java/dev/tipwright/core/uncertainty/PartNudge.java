package dev.tipwright.core.uncertainty;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.internal.arg.Require;

/** A nudge that moves a part of a club where it lies. */
interface PartNudge extends Nudge {

    void move(Draft draft, double delta);

    @Override
    default Build by(Build build, double delta) {
        Draft draft = new Draft(Require.given("build", build));
        move(draft, delta);
        return draft.build();
    }

    @Override
    default Nudge and(Nudge other) {
        Require.given("other", other);
        return (PartNudge) (draft, delta) -> {
            move(draft, delta);
            draft.move(other, delta);
        };
    }
}
