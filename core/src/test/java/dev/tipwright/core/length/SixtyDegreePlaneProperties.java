package dev.tipwright.core.length;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Laws of length by the 60 degree plane, in whole degrees and millimetres so that a counterexample can be read. */
class SixtyDegreePlaneProperties {

    private static Length mm(int millimetres) {
        return Length.ofMillimetres(millimetres);
    }

    private static SixtyDegreePlane plane(int lie, int height, int lowest, int radius) {
        return new SixtyDegreePlane(Angle.ofDegrees(lie), mm(height), mm(lowest), mm(radius));
    }

    @Property
    void thereAndBackIsTheSameLength(
            @ForAll @IntRange(min = 45, max = 90) int lie,
            @ForAll @IntRange(min = 0, max = 20) int height,
            @ForAll @IntRange(min = -50, max = 50) int lowest,
            @ForAll @IntRange(min = 0, max = 500) int radius,
            @ForAll @IntRange(min = 400, max = 1300) int length) {
        SixtyDegreePlane plane = plane(lie, height, lowest, radius);
        assertThat(plane.alongAxis(plane.length(mm(length)))).isEqualTo(mm(length));
    }

    @Property
    void atSixtyDegreesTheSoleDoesNotMatter(
            @ForAll @IntRange(min = 0, max = 20) int height,
            @ForAll @IntRange(min = -50, max = 50) int lowest,
            @ForAll @IntRange(min = 0, max = 500) int radius) {
        assertThat(plane(60, height, lowest, radius).shorterBy())
                .isEqualTo(plane(60, height, 0, 0).shorterBy());
    }

    /** The planes meet further up a shaft that lies higher; a curved sole comes down further out, away from the grip. */
    @Property
    void anAxisThatLiesHigherShortensAndACurvedSoleNever(
            @ForAll @IntRange(min = 45, max = 90) int lie,
            @ForAll @IntRange(min = 0, max = 20) int height,
            @ForAll @IntRange(min = 1, max = 20) int higher,
            @ForAll @IntRange(min = 0, max = 500) int radius) {
        Length flat = plane(lie, height, 0, 0).shorterBy();
        assertThat(plane(lie, height + higher, 0, 0).shorterBy()).isGreaterThan(flat);
        assertThat(plane(lie, height, 0, radius).shorterBy()).isLessThanOrEqualTo(flat);
    }
}
