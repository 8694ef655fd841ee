package dev.tipwright.core.cut;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * In what order the tips of a set are cut: blank by blank in the order of the set, and within a blank the least trim first. A shaft
 * that is cut too far can then still become a club that was to be trimmed more, while the shaft meant for that club is still whole.
 *
 * <pre>{@code
 * CuttingOrder order = new CuttingOrder(ClubSet.of(Samples.build()));
 * order.turns().get(0).tipTrim().inches();               // = 0.5
 * order.stillPossible("6", Length.parse("33/64 in"));    // = []
 * }</pre>
 *
 * @param set the clubs as they are planned
 */
public record CuttingOrder(ClubSet set) {

    private static final Comparator<Build> LEAST_TRIM_FIRST =
            Comparator.comparing((Build build) -> build.work().tipTrim());

    /**
     * Checks the value.
     *
     * @param set the clubs as they are planned
     */
    public CuttingOrder {
        Require.given("set", set);
    }

    /**
     * The turns of all shafts whose tip is to be cut. Clubs of one blank with one trim keep the order of the set.
     *
     * @return the turns in the order of cutting; empty if no tip is cut
     */
    public List<CutTurn> turns() {
        List<CutTurn> turns = new ArrayList<>();
        List<String> done = new ArrayList<>();
        for (Build first : set.builds()) {
            String blank = blank(first);
            if (!done.contains(blank)) {
                done.add(blank);
                onBlank(blank).stream()
                        .filter(build -> build.work().tipTrim().nanometres() > 0)
                        .map(this::turn)
                        .forEach(turns::add);
            }
        }
        return turns;
    }

    /** Any slip goes further than planned, so a club with the same trim, or the club itself, is no way out. */
    private CutTurn turn(Build build) {
        Length trim = build.work().tipTrim();
        List<String> others = possible(build, trim.plus(Length.ofNanometres(1))).stream()
                .map(Build::label)
                .toList();
        return new CutTurn(build.label(), build.parts().shaft().label(), blank(build), trim, others);
    }

    /**
     * The clubs of the set that a shaft can still become once its tip is cut: those on the same blank that are trimmed no less, if
     * the shaft is long enough for their cut length. Its own club is among them while it is not cut too far.
     *
     * @param club label of the club whose shaft it is
     * @param trimmed what has come off its tip in fact; zero or more
     * @return labels of the clubs, least trim first; empty if the shaft is lost to this set
     * @throws IllegalArgumentException if there is no such club
     */
    public List<String> stillPossible(String club, Length trimmed) {
        Require.notNegative("trimmed", trimmed);
        Require.given("club", club);
        Require.that(
                set.builds().stream().anyMatch(build -> build.label().equals(club)),
                "club",
                "must be one of the set",
                club);
        return possible(set.club(club), trimmed).stream().map(Build::label).toList();
    }

    private List<Build> possible(Build cut, Length trimmed) {
        Shaft shaft = cut.parts().shaft();
        return onBlank(blank(cut)).stream()
                .filter(other -> !other.work().tipTrim().lessThan(trimmed))
                .filter(other -> !other.work().tipTrim().plus(other.cutLength()).moreThan(shaft.length()))
                .toList();
    }

    private List<Build> onBlank(String blank) {
        return set.builds().stream()
                .filter(build -> blank(build).equals(blank))
                .sorted(LEAST_TRIM_FIRST)
                .toList();
    }

    private static String blank(Build build) {
        return build.parts().shaft().blank().label();
    }
}
