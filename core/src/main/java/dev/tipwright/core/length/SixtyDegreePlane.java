package dev.tipwright.core.length;

import dev.tipwright.core.evidence.Assumption;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.SoleShape;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.uncertainty.Measure;
import java.util.ArrayList;
import java.util.List;

/**
 * Playing length as the Equipment Rules measure woods and irons: the club lies on a level plane with its sole against
 * a plane at 60 degrees, and the length runs from where the two planes meet to the top of the grip.
 *
 * <p>{@code L60 = L - h cot 60 + [u sin(60 - lie) + r (1 - cos(lie - 60))] / sin 60}, with the sole taken as a circle of
 * radius {@code r} that touches the ground {@code u} toe-ward of the shaft axis. Near 60 degrees of lie the sole
 * matters by less than a millimetre, the height of the axis by several. Source: R&amp;A and USGA, Equipment Rules,
 * Part 2 (how the length is measured); the formula is plane geometry.
 *
 * <pre>{@code
 * SixtyDegreePlane plane = new SixtyDegreePlane(
 *         Angle.ofDegrees(60), Length.parse(".25 in"), Length.ZERO, Length.ZERO);
 * plane.shorterBy().millimetres();                       // = 3.666174
 * plane.length(Length.parse("37 1/2 in")).millimetres();   // = 948.833826
 * }</pre>
 *
 * @param lie lie of the head; above 0, at most 90 degrees
 * @param axisHeight height of the shaft axis over the level plane ({@code h}); zero or more, at most 100 mm
 * @param lowest from the axis at the ground to where the sole touches it, toe-ward ({@code u}); -300 mm to 300 mm
 * @param radius radius of the sole from heel to toe ({@code r}); zero or more, at most 3 m
 */
public record SixtyDegreePlane(Angle lie, Length axisHeight, Length lowest, Length radius) {

    /**
     * Checks the values.
     *
     * @param lie lie of the head; above 0, at most 90 degrees
     * @param axisHeight height of the shaft axis over the level plane ({@code h}); zero or more, at most 100 mm
     * @param lowest from the axis at the ground to where the sole touches it, toe-ward ({@code u}); -300 mm to 300 mm
     * @param radius radius of the sole from heel to toe ({@code r}); zero or more, at most 3 m
     */
    public SixtyDegreePlane {
        Require.given("lie", lie);
        Require.that(lie.degrees() > 0 && lie.degrees() <= 90, "lie", "must be above 0 and at most 90 deg", lie);
        Require.within("axisHeight", axisHeight, 0, 100);
        Require.within("lowest", lowest, -300, 300);
        Require.within("radius", radius, 0, 3000);
    }

    /**
     * The plane against a head: half the outside of its hosel for the height of the axis, and its sole if that was measured. A sole
     * that was not is taken to touch the ground at the axis and to be sharp there.
     *
     * @param head the head
     * @return the measure of clubs with this head
     */
    public static SixtyDegreePlane of(Head head) {
        Require.given("head", head);
        SoleShape sole = head.geometry().sole().orElse(new SoleShape(Length.ZERO, Length.ZERO));
        return new SixtyDegreePlane(
                head.geometry().lie(), head.hosel().outside().half(), sole.lowest(), sole.radius());
    }

    /**
     * What this measure takes for granted of a head.
     *
     * @param head the head
     * @return the height of the axis, and the sole if it was not measured
     */
    public static List<Assumption> assumptions(Head head) {
        Require.given("head", head);
        List<Assumption> assumptions = new ArrayList<>();
        assumptions.add(new Assumption(
                Term.fine(
                        "h",
                        "height of the shaft axis over the level plane",
                        head.hosel().outside().half()),
                Source.assumption("half the outside of the hosel")));
        if (head.geometry().sole().known().isEmpty()) {
            assumptions.add(new Assumption(
                    Term.of("u", "lowest sole point toe-ward of the axis", Length.ZERO),
                    Source.assumption("sole not measured; it matters little near 60 deg of lie")));
        }
        assumptions.addAll(Assumption.of(
                head.geometry().sole(), sole -> Term.of("u", "lowest sole point toe-ward of the axis", sole.lowest())));
        return assumptions;
    }

    /**
     * How much shorter this measure is than the one along the axis.
     *
     * @return {@code h cot 60 - [u sin(60 - lie) + r (1 - cos(lie - 60))] / sin 60}, rounded to the nanometre; may be negative
     */
    public Length shorterBy() {
        double over = StrictMath.toRadians(lie.degrees() - 60);
        double sin60 = StrictMath.sqrt(3) / 2;
        double cot60 = 1 / StrictMath.sqrt(3);
        double sole = -lowest.millimetres() * StrictMath.sin(over) + radius.millimetres() * (1 - StrictMath.cos(over));
        return Length.ofMillimetres(axisHeight.millimetres() * cot60 - sole / sin60);
    }

    /**
     * The length by the plane of a club of a length along the axis.
     *
     * @param alongAxis length along the axis ({@code L}); -10 m to 10 m
     * @return {@code L60}
     */
    public Length length(Length alongAxis) {
        return between(alongAxis, "alongAxis").minus(shorterBy());
    }

    /**
     * The length along the axis of a club of a length by the plane.
     *
     * @param byPlane length by the plane ({@code L60}); -10 m to 10 m
     * @return {@code L}
     */
    public Length alongAxis(Length byPlane) {
        return between(byPlane, "byPlane").plus(shorterBy());
    }

    private static Length between(Length length, String name) {
        return Require.between(name, length, Length.ofMillimetres(-10_000), Length.ofMillimetres(10_000));
    }

    /**
     * The length by the plane of a whole club, so that it can have a budget. It rests on lie, hosel and sole as well as on what the
     * length along the axis rests on.
     *
     * @return the measure
     */
    public static Measure measure() {
        return Measure.length(
                "L60",
                "length by the 60 degree plane",
                build -> of(build.parts().head()).length(PlayingLength.alongAxis(build)));
    }

    /**
     * How the length by the plane of a club comes about.
     *
     * @param alongAxis length along the axis ({@code L})
     * @return the formula with its numbers; angles in degrees
     */
    public Working working(Length alongAxis) {
        return new Working(
                "Length by the 60 degree plane",
                List.of(new Working.Line(
                        Term.of("L60", "length by the 60 degree plane", length(alongAxis)),
                        "L - h / tan(60) + (u * sin(60 - lie) + r * (1 - cos(lie - 60))) / sin(60)",
                        List.of(
                                Term.of("L", "length along the axis", alongAxis),
                                Term.of("h", "height of the axis", axisHeight),
                                Term.of("u", "lowest sole point toe-ward of the axis", lowest),
                                Term.of("r", "radius of the sole", radius),
                                Term.of("lie", "lie", lie)),
                        Source.published("R&A and USGA, Equipment Rules", "Part 2, length of woods and irons"))));
    }
}
