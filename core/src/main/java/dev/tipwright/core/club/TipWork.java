package dev.tipwright.core.club;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.List;

/**
 * What is done to the outside of a tip: how far its finish is stripped, and the shape it is worked down to.
 *
 * @param stripped how far up from the trimmed tip the finish comes off; zero or more
 * @param finished diameter after the work, from the trimmed tip (0) up; empty if the structure is left as it is
 */
public record TipWork(Length stripped, List<Station> finished) {

    /**
     * Checks the values.
     *
     * @param stripped how far up from the trimmed tip the finish comes off; zero or more
     * @param finished diameter after the work, from the trimmed tip (0) up, two at one place being a step; empty if the
     *     structure is left as it is
     */
    public TipWork {
        Require.within("stripped", stripped, 0, 3000);
        finished = Require.list("finished", finished);
        for (int k = 0; k < finished.size(); k++) {
            Length at = finished.get(k).at();
            boolean inOrder = k == 0
                    ? at.equals(Length.ZERO)
                    : !at.lessThan(finished.get(k - 1).at())
                            && (k == 1 || at.moreThan(finished.get(k - 2).at()));
            Require.that(
                    inOrder, "finished", "must run up from the trimmed tip, 0, in order, at most two at one place", at);
        }
        Require.that(
                finished.isEmpty() || finished.get(finished.size() - 1).at().moreThan(Length.ZERO),
                "finished",
                "must be empty or reach up from the end of the tip",
                finished);
    }

    /** The tip as it was supplied. */
    public static final TipWork NONE = new TipWork(Length.ZERO, List.of());

    /**
     * How far up the work reaches.
     *
     * @return the greater of what is stripped and what is worked down, from the trimmed tip
     */
    public Length reach() {
        return finished.isEmpty()
                ? stripped
                : stripped.max(finished.get(finished.size() - 1).at());
    }

    /**
     * This one with another value in one place.
     *
     * @param stripped how far up from the trimmed tip the finish comes off; zero or more
     * @return a copy that differs in that alone
     */
    public TipWork withStripped(Length stripped) {
        return new TipWork(stripped, finished);
    }

    /**
     * This one with another value in one place.
     *
     * @param finished diameter after the work, from the trimmed tip (0) up; empty if the structure is left as it is
     * @return a copy that differs in that alone
     */
    public TipWork withFinished(List<Station> finished) {
        return new TipWork(stripped, finished);
    }
}
