package dev.tipwright.core.profile;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * The hole in a hosel that the tip goes into: its diameter down from the mouth, how it ends, and how it was read. The
 * depth is that of the full bore, down to a flat bottom or to where the cone of a drill begins.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse(".363 in"), Length.parse(".355 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * bore.depth().inches();                                       // = 1.25
 * bore.profile().diameterAt(Length.parse("5/8 in")).inches();  // = 0.359
 * }</pre>
 *
 * @param profile diameter down from the mouth; starts at 0 and ends at the depth
 * @param end how it ends
 * @param reading how it was read
 */
public record Bore(DiameterProfile profile, BoreEnd end, BoreReading reading) {

    /**
     * Checks the values.
     *
     * @param profile diameter down from the mouth; starts at 0 and ends at the depth
     * @param end how it ends
     * @param reading how it was read
     */
    public Bore {
        Require.given("profile", profile);
        Require.given("end", end);
        Require.given("reading", reading);
        checkMouth("profile", profile);
    }

    private static void checkMouth(String name, DiameterProfile profile) {
        Require.that(profile.from().equals(Length.ZERO), name, "must start at the mouth, 0", profile.from());
    }

    /** A bore from readings that its caller has a name for. */
    private static Bore named(String name, List<Station> readings, BoreEnd end, BoreReading reading) {
        DiameterProfile profile = DiameterProfile.named(name, readings);
        Require.given("end", end);
        checkMouth(name, profile);
        return new Bore(profile, end, reading);
    }

    /**
     * A bore from diameters read at their places.
     *
     * @param readings two or more, from the mouth (0) to the full depth
     * @param end how it ends
     * @return the bore
     */
    public static Bore ofReadings(List<Station> readings, BoreEnd end) {
        return named("readings", readings, end, BoreReading.AT_STATIONS);
    }

    /**
     * A bore from its two end diameters, straight between them.
     *
     * @param mouth diameter at the mouth
     * @param bottom diameter at the full depth
     * @param depth full depth; above zero
     * @param end how it ends
     * @return the bore
     */
    public static Bore ofTwoDiameters(Length mouth, Length bottom, Length depth, BoreEnd end) {
        Require.someUpTo("depth", depth, 3000);
        Require.someUpTo("mouth", mouth, 100);
        Require.someUpTo("bottom", bottom, 100);
        return ofReadings(List.of(Station.of(Length.ZERO, mouth), Station.of(depth, bottom)), end);
    }

    /**
     * A bore from its mouth and its taper.
     *
     * @param mouth diameter at the mouth
     * @param taperRate what the diameter loses for each length of depth, a pure number ({@code q}); negative widens downwards
     * @param depth full depth; above zero
     * @param end how it ends
     * @return the bore; its bottom diameter is rounded to the nanometre
     */
    public static Bore ofMouthAndTaper(Length mouth, double taperRate, Length depth, BoreEnd end) {
        Require.someUpTo("mouth", mouth, 100);
        Require.someUpTo("depth", depth, 3000);
        Require.that(
                Double.isFinite(taperRate) && Math.abs(taperRate) < 1,
                "taperRate",
                "must be between -1 and 1",
                taperRate);
        Length bottom = mouth.minus(depth.scaledBy(taperRate));
        Require.that(
                bottom.nanometres() > 0 && !bottom.moreThan(Bounds.WIDEST),
                "taperRate",
                "must leave a bottom diameter at depth " + depth + " from mouth " + mouth + " above zero and at most "
                        + Bounds.WIDEST,
                taperRate);
        return ofTwoDiameters(mouth, bottom, depth, end);
    }

    /**
     * A bore from gauge pins, and readings of the chamfer above them.
     *
     * <p>The pins go in by falling diameter; the last is the largest that reaches the bottom, and the bore there is at least that
     * wide. The depth is that pin's drop, so it must be flat ended.
     *
     * @param chamfer readings at the mouth, from 0; empty if a pin was read at 0
     * @param pins one or more, each no wider and dropping no less far than the one before
     * @param end how it ends
     * @return the bore
     */
    public static Bore ofPins(List<Station> chamfer, List<GaugePin> pins, BoreEnd end) {
        List<Station> readings = new ArrayList<>(Require.list("chamfer", chamfer));
        List<GaugePin> dropped = Require.someOf("pins", pins);
        for (int i = 0; i < dropped.size(); i++) {
            GaugePin pin = dropped.get(i);
            Require.that(
                    i == 0 || !pin.diameter().moreThan(dropped.get(i - 1).diameter()),
                    "pins",
                    "must each be no wider than the one before",
                    pin);
            readings.add(Station.of(pin.drop(), pin.diameter()));
        }
        return named("chamfer and pins", readings, end, BoreReading.BY_PINS);
    }

    /**
     * The full depth of a drilled bore that was read with a pointed rod: the rod goes to the point of the cone, the tip does not.
     *
     * @param read depth at the point of the cone
     * @param bottom diameter of the bore where the cone begins
     * @param point included angle of the drill's point; above 0, under 180 degrees
     * @return the depth read less the height of the cone, {@code read - (bottom / 2) / tan(point / 2)}
     */
    public static Length depthByPointedRod(Length read, Length bottom, Angle point) {
        Require.positive("read", read);
        Require.positive("bottom", bottom);
        Require.that(
                Require.given("point", point).degrees() > 0 && point.degrees() < 180,
                "point",
                "must be above 0 and under 180 deg",
                point);
        double cone = bottom.millimetres() / 2 / StrictMath.tan(point.radians() / 2);
        Length depth = Length.ofMillimetres(read.millimetres() - cone);
        Require.that(depth.nanometres() > 0, "read", "must be deeper than the cone of a bottom of " + bottom, read);
        return depth;
    }

    /**
     * The full depth {@code B}.
     *
     * @return from the mouth to the bottom, or through
     */
    public Length depth() {
        return profile.to();
    }

    /**
     * The same bore made shallower by what lies at its bottom, such as old adhesive.
     *
     * @param depth the depth left; above zero, not over the present one
     * @return the shallower bore
     */
    public Bore shallowedTo(Length depth) {
        Require.between("depth", depth, Length.ofNanometres(1), depth());
        return new Bore(profile.endedAt(depth), end, reading);
    }

    /**
     * This one with another value in one place.
     *
     * @param profile diameter down from the mouth; starts at 0 and ends at the depth
     * @return a copy that differs in that alone
     */
    public Bore withProfile(DiameterProfile profile) {
        return new Bore(profile, end, reading);
    }

    /**
     * This one with another value in one place.
     *
     * @param end how it ends
     * @return a copy that differs in that alone
     */
    public Bore withEnd(BoreEnd end) {
        return new Bore(profile, end, reading);
    }

    /**
     * This one with another value in one place.
     *
     * @param reading how it was read
     * @return a copy that differs in that alone
     */
    public Bore withReading(BoreReading reading) {
        return new Bore(profile, end, reading);
    }
}
