package dev.tipwright.fitcheck.used;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Laws of used tips and bores, in whole micrometres so that a counterexample can be read. */
class UsedPartsLawProperties {

    private static Length um(int micrometres) {
        return Length.ofMicrometres(micrometres);
    }

    /** Raw 9.5 mm over 50 micrometres of finish, with a wall of 2 mm. */
    private static UsedTip tip(int found, int crust) {
        ShaftSection raw = new ShaftSection(
                DiameterProfile.cylinder(um(9500), um(200_000)),
                um(15_000),
                Reading.measured(new Wall(ThicknessProfile.uniform(um(2000)), Reading.unknown("the maker"))),
                Reading.measured(Finish.NONE.withThickness(ThicknessProfile.uniform(um(50)))));
        return new UsedTip(
                raw, Length.ZERO, DiameterProfile.cylinder(um(found), um(40_000)), ThicknessProfile.uniform(um(crust)));
    }

    @Property
    void crustHidesTwiceItsThickness(
            @ForAll @IntRange(min = 8500, max = 9500) int found, @ForAll @IntRange(min = 0, max = 200) int crust) {
        UsedTip used = tip(found, crust);
        assertThat(used.cleaned().diameterAt(Length.ZERO)).isEqualTo(um(found - 2 * crust));
        assertThat(used.mostOff()).isEqualTo(um(9500 - found + 2 * crust));
    }

    /** The hole stays where it is: outside less two walls is what it was, 9.5 - 2 x 2 = 5.5 mm. */
    @Property
    void whatComesOffTheOutsideComesOffTheWall(
            @ForAll @IntRange(min = 6000, max = 9500) int found, @ForAll @IntRange(min = 0, max = 200) int crust) {
        UsedTip used = tip(found, crust);
        Length wall = used.section().wall().known().orElseThrow().thickness().at(Length.ZERO);
        Length hole = used.cleaned().diameterAt(Length.ZERO).minus(wall.times(2));
        // Half an odd number of micrometres is on the grid.
        assertThat(hole).isEqualTo(um(5500));
    }

    @Property
    void theFinishGoesFirstAndIsNeverLessThanNone(@ForAll @IntRange(min = 6000, max = 9500) int found) {
        Length off = um(9500 - found).half();
        Length finish = tip(found, 0).section().finish().thickness().at(Length.ZERO);
        assertThat(finish).isEqualTo(um(50).minus(off).max(Length.ZERO));
    }

    @Property
    void whatComesOutInTwoCleaningsComesOutInOne(
            @ForAll @IntRange(min = 9000, max = 9300) int crusted,
            @ForAll @IntRange(min = 0, max = 200) int first,
            @ForAll @IntRange(min = 0, max = 200) int second) {
        double both = volume(crusted, crusted + first) + volume(crusted + first, crusted + first + second);
        // A few sums of cylinders of 2000 mm3.
        assertThat(both).isCloseTo(volume(crusted, crusted + first + second), within(1e-9));
    }

    private static double volume(int before, int after) {
        return new BoreCleaning(bore(before), bore(after), Length.ZERO).volume().cubicMillimetres();
    }

    private static Bore bore(int wide) {
        return Bore.ofTwoDiameters(um(wide), um(wide), um(30_000), BoreEnd.FLAT);
    }
}
