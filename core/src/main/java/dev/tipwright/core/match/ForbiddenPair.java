package dev.tipwright.core.match;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Shaft;
import java.util.ArrayList;
import java.util.List;

/**
 * A shaft that must not go to a head.
 *
 * @param head label of the head
 * @param shaft label of the shaft
 */
public record ForbiddenPair(String head, String shaft) {

    /**
     * Checks the values.
     *
     * @param head label of the head
     * @param shaft label of the shaft
     */
    public ForbiddenPair {
        Require.label("head", head);
        Require.label("shaft", shaft);
    }

    /**
     * Every pair that would give a head a shaft of another blank than the one it comes with.
     *
     * @param set the clubs as they come
     * @param shafts the shafts to be shared out
     * @return the pairs, head by head in the order of the set
     */
    public static List<ForbiddenPair> acrossBlanks(ClubSet set, List<Shaft> shafts) {
        Require.given("set", set);
        List<ForbiddenPair> pairs = new ArrayList<>();
        List<Shaft> given = Require.list("shafts", shafts);
        for (Build build : set.builds()) {
            for (Shaft shaft : given) {
                if (!shaft.blank().label().equals(build.parts().shaft().blank().label())) {
                    pairs.add(new ForbiddenPair(build.label(), shaft.label()));
                }
            }
        }
        return pairs;
    }
}
