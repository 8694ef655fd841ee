package dev.tipwright.swingweight.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.part.Anchor;
import dev.tipwright.core.part.Place;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.Clubs;
import dev.tipwright.swingweight.balance.Balance;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Laws of making the clubs of a set alike: heads that differ by whole grams. */
class SetLawProperties {

    private static ClubSet set(List<Integer> heads) {
        List<Build> builds = new ArrayList<>();
        for (int grams : heads) {
            Build plain = Clubs.plain();
            Build club = Clubs.withHead(
                    plain,
                    plain.parts()
                            .head()
                            .withLabel("club " + builds.size())
                            .withMass(plain.parts().head().mass().withMass(Mass.ofGrams(grams))));
            builds.add(club);
        }
        return new ClubSet(builds);
    }

    @Property(tries = 200)
    void clubsBroughtToOneInertiaHaveIt(
            @ForAll @Size(min = 1, max = 4) List<@IntRange(min = 200, max = 350) Integer> heads,
            @ForAll @IntRange(min = 90, max = 110) int percent) {
        Inertia wanted = Balance.of(Clubs.plain()).inertiaAboutButt().scaledBy(percent / 100.0);
        for (ClubChange change : SetAims.equalInertia(set(heads), wanted, 0)) {
            assertThat(change.reached()).isTrue();
            assertThat(change.inertia().ratioTo(wanted)).isCloseTo(1, within(1e-12));
            assertThat(change.longer()).isEqualTo(Length.ZERO);
        }
    }

    @Property(tries = 200)
    void noClubIsMadeLighterAndThoseReachedAreOnTheirMarks(
            @ForAll @Size(min = 1, max = 4) List<@IntRange(min = 200, max = 350) Integer> heads,
            @ForAll @IntRange(min = 300, max = 600) int first,
            @ForAll @IntRange(min = -10, max = 10) int step) {
        Place place = new Place(Anchor.TIP_END, Length.ZERO);
        List<ClubChange> changes = SetAims.evenMass(set(heads), Mass.ofGrams(first), Mass.ofGrams(step), place);
        for (int i = 0; i < changes.size(); i++) {
            ClubChange change = changes.get(i);
            assertThat(change.heavier()).isGreaterThanOrEqualTo(Mass.ZERO);
            if (change.reached()) {
                assertThat(change.total()).isEqualTo(Mass.ofGrams(first + i * step));
            } else {
                assertThat(change.after()).isEqualTo(change.before());
            }
        }
    }

    /** The least first mark that every club can come up to is reached by every club, and one less by a gram is not. */
    @Property(tries = 200)
    void theLeastFirstMarkIsTheLeast(
            @ForAll @Size(min = 1, max = 4) List<@IntRange(min = 200, max = 350) Integer> heads,
            @ForAll @IntRange(min = -10, max = 10) int step) {
        Place place = new Place(Anchor.TIP_END, Length.ZERO);
        ClubSet set = set(heads);
        Mass least = SetAims.leastFirst(set, Mass.ofGrams(step));
        assertThat(SetAims.evenMass(set, least, Mass.ofGrams(step), place)).allMatch(ClubChange::reached);
        assertThat(SetAims.evenMass(set, least.minus(Mass.ofGrams(1)), Mass.ofGrams(step), place))
                .anyMatch(change -> !change.reached());
    }
}
