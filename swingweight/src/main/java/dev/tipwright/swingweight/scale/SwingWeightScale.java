package dev.tipwright.swingweight.scale;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Torque;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A swing weight scale: where its fulcrum is, what moment reads zero, and how much moment makes a point, {@code P =
 * (M - M0) / K}.
 *
 * <pre>{@code
 * SwingWeightScale scale = SwingWeightScale.LETTERS_AT_14_INCHES;
 * SwingWeight reading = scale.read(FirstMoment.ofOunceInches(213.5));
 * scale.designation(reading);                       // = D0.0
 * scale.designation(scale.parse("C9").plus(0.24));  // = C9.2
 * }</pre>
 *
 * @param fulcrum distance of the fulcrum from the top of the grip ({@code F}); above zero
 * @param zero moment that reads zero ({@code M0})
 * @param perPoint moment of a point ({@code K}); above zero
 * @param letters capital letters of the designation from zero up, such as {@code ABCDEFG}, none twice; empty if the
 *     scale has none
 * @param pointsPerLetter points in a letter; 1 to 1000
 */
public record SwingWeightScale(
        Length fulcrum, FirstMoment zero, FirstMoment perPoint, String letters, int pointsPerLetter) {

    /**
     * Checks the values.
     *
     * @param fulcrum distance of the fulcrum from the top of the grip ({@code F}); above zero
     * @param zero moment that reads zero ({@code M0})
     * @param perPoint moment of a point ({@code K}); above zero
     * @param letters capital letters of the designation from zero up, such as {@code ABCDEFG}, none twice; empty
     *     if the scale has none
     * @param pointsPerLetter points in a letter; 1 to 1000
     */
    public SwingWeightScale {
        Require.positive("fulcrum", fulcrum);
        Require.given("zero", zero);
        Require.given("perPoint", perPoint);
        Require.that(perPoint.gramMillimetres() > 0, "perPoint", "must be above zero", perPoint);
        Require.given("letters", letters);
        Require.that(
                letters.chars().distinct().filter(c -> c >= 'A' && c <= 'Z').count() == letters.length(),
                "letters",
                "must be capital letters, none twice",
                letters);
        Require.that(
                pointsPerLetter > 0 && pointsPerLetter <= 1000,
                "pointsPerLetter",
                "must be from 1 to 1000",
                pointsPerLetter);
    }

    /**
     * The usual letter scale: fulcrum 14 in from the top of the grip, 1.75 oz in a point, ten points a letter, A0 at 161 oz in, so that
     * D0 is 213.5 oz in. Common practice, from memory; no published source is known.
     */
    public static final SwingWeightScale LETTERS_AT_14_INCHES = new SwingWeightScale(
            Length.ofInches(14), FirstMoment.ofOunceInches(161), FirstMoment.ofOunceInches(1.75), "ABCDEFG", 10);

    /** m/s2, exact. */
    private static final double STANDARD_GRAVITY = 9.80665;

    private static final Pattern DESIGNATION = Pattern.compile("([A-Z]?) *(-?[0-9]{1,6}(?:\\.[0-9]{1,9})?)");

    /**
     * What the scale reads for a moment.
     *
     * @param moment about the fulcrum
     * @return {@code (M - M0) / K} points
     * @throws IllegalArgumentException if the points are out of range
     */
    public SwingWeight read(FirstMoment moment) {
        Require.given("moment", moment);
        double points = moment.minus(zero).ratioTo(perPoint);
        Require.that(SwingWeight.inRange(points), "moment", "must read from -1e9 to 1e9 points", moment);
        return new SwingWeight(points);
    }

    /**
     * The moment that gives a reading.
     *
     * @param reading on this scale
     * @return {@code M0 + P K}
     */
    public FirstMoment moment(SwingWeight reading) {
        Require.given("reading", reading);
        return zero.plus(perPoint.scaledBy(reading.points()));
    }

    /**
     * The torque with which a moment turns a club about the fulcrum, where gravity is standard: {@code M g}, with {@code g} = 9.80665
     * m/s2 by definition (third General Conference on Weights and Measures, 1901).
     *
     * @param moment mass times arm
     * @return weight times arm
     * @throws IllegalArgumentException if it overflows
     */
    public static Torque torque(FirstMoment moment) {
        Require.given("moment", moment);
        return Torque.ofNewtonMetres(moment.gramMillimetres() * 1e-6 * STANDARD_GRAVITY);
    }

    /**
     * A reading as it is written, to a tenth of a point: {@code C9.2}. Below the first letter the points go below zero
     * ({@code }), past the last they go on ({@code G12.0}); a scale without letters gives the points alone.
     *
     * @param reading on this scale
     * @return letter and points
     */
    public String designation(SwingWeight reading) {
        Require.given("reading", reading);
        long tenths = (long) Math.rint(reading.points() * 10);
        StringBuilder text = new StringBuilder(8);
        if (!letters.isEmpty()) {
            long perLetter = 10L * pointsPerLetter;
            int letter = (int) Math.max(0, Math.min(letters.length() - 1L, Math.floorDiv(tenths, perLetter)));
            text.append(letters.charAt(letter));
            tenths -= letter * perLetter;
        }
        text.append(tenths < 0 ? "-" : "").append(Math.abs(tenths / 10));
        return text.append('.').append(Math.abs(tenths % 10)).toString();
    }

    /**
     * Reads a designation: {@code D2}, {@code D2.4}, {@code }; for a scale without letters, points alone.
     *
     * @param designation what was written
     * @return the reading
     * @throws IllegalArgumentException if it is none of this scale
     */
    public SwingWeight parse(String designation) {
        Require.given("designation", designation);
        Matcher matcher = DESIGNATION.matcher(designation.strip());
        boolean matches = matcher.matches() && matcher.group(1).isEmpty() == letters.isEmpty();
        int letter = matches ? letters.indexOf(matcher.group(1)) : -1;
        Require.that(
                letter >= 0,
                "designation",
                "must be " + (letters.isEmpty() ? "points" : "a letter of " + letters + " and points"),
                "\"" + designation + "\"");
        return new SwingWeight(letter * (double) pointsPerLetter + Double.parseDouble(matcher.group(2)));
    }
}
