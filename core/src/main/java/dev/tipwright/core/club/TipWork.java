package dev.tipwright.core.club;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.Stations;
import dev.tipwright.core.quantity.Length;
import java.util.List;

/**
 * What is done to the outside of a tip: how far its finish is stripped, and the shape it is worked down to.
 *
 * @param stripped how far up from the trimmed tip the finish comes off; zero to 3 m
 * @param finished diameter after the work, from the trimmed tip (0) up; empty if the structure is left as it is
 */
public record TipWork(Length stripped, List<Station> finished) {

    /**
     * Checks the values.
     *
     * @param stripped how far up from the trimmed tip the finish comes off; zero to 3 m
     * @param finished diameter after the work, from the trimmed tip (0) up, two at one place being a step; empty if the
     *     structure is left as it is
     */
    public TipWork {
        Require.within("stripped", stripped, 0, 3000);
        Stations shape = Stations.of(finished instanceof Stations ? finished : Require.list("finished", finished));
        for (int k = 0; k < shape.size(); k++) {
            long at = shape.atNanometres(k);
            boolean inOrder =
                    k == 0 ? at == 0 : at >= shape.atNanometres(k - 1) && (k == 1 || at > shape.atNanometres(k - 2));
            if (!inOrder) {
                throw Require.broken(
                        "finished",
                        "must run up from the trimmed tip, 0, in order, at most two at one place",
                        shape.at(k));
            }
        }
        Require.that(
                shape.isEmpty() || shape.atNanometres(shape.size() - 1) > 0,
                "finished",
                "must be empty or reach up from the end of the tip",
                shape);
        finished = shape;
    }

    /** The tip as it was supplied. */
    public static final TipWork NONE = new TipWork(Length.ZERO, List.of());

    /**
     * How far up the work reaches.
     *
     * @return the greater of what is stripped and what is worked down, from the trimmed tip
     */
    public Length reach() {
        Stations shape = Stations.of(finished);
        return shape.isEmpty() ? stripped : stripped.max(shape.at(shape.size() - 1));
    }

    /**
     * This one with another value in one place.
     *
     * @param stripped how far up from the trimmed tip the finish comes off; zero to 3 m
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
