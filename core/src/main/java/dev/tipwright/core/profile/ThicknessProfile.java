package dev.tipwright.core.profile;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;
import java.util.List;

/**
 * A wall or a finish along a shaft: thickness at stations measured from the raw tip, straight between them, and the
 * end values beyond the first and the last.
 *
 * <pre>{@code
 * ThicknessProfile finish = ThicknessProfile.uniform(Length.parse(".0025 in"));
 * finish.at(Length.parse("1.25 in")).inches();   // = 0.0025
 * }</pre>
 *
 * @param knots one or more, in order of their place; two at one place are a step
 */
public record ThicknessProfile(List<Knot> knots) {

    /**
     * Checks the values.
     *
     * @param knots one or more, in order of their place; two at one place are a step
     */
    public ThicknessProfile {
        knots = Require.someOf("knots", knots);
        for (int i = 1; i < knots.size(); i++) {
            Length here = knots.get(i).at();
            Require.that(!here.lessThan(knots.get(i - 1).at()), "knots", "must be in order of their place", knots);
            Require.that(
                    i < 2 || here.moreThan(knots.get(i - 2).at()), "knots", "must be at most two at one place", knots);
        }
    }

    /**
     * A thickness at a place.
     *
     * @param at from the raw tip; 0 to 3 m
     * @param thickness radial; zero to 100 mm
     */
    public record Knot(Length at, Length thickness) {

        /**
         * Checks the values.
         *
         * @param at from the raw tip; 0 to 3 m
         * @param thickness radial; zero to 100 mm
         */
        public Knot {
            Require.within("at", at, 0, 3000);
            Require.within("thickness", thickness, 0, 100);
        }
    }

    /**
     * The same thickness everywhere.
     *
     * @param thickness radial; zero to 100 mm
     * @return the profile
     */
    public static ThicknessProfile uniform(Length thickness) {
        return new ThicknessProfile(List.of(new Knot(Length.ZERO, thickness)));
    }

    /**
     * The thickness at a place.
     *
     * @param fromRawTip distance from the raw tip
     * @return the thickness, rounded to the nanometre
     */
    public Length at(Length fromRawTip) {
        Require.given("fromRawTip", fromRawTip);
        int next = 0;
        while (next < knots.size() && !knots.get(next).at().moreThan(fromRawTip)) {
            next++;
        }
        if (next == 0 || next == knots.size()) {
            return knots.get(Math.max(0, next - 1)).thickness();
        }
        Knot low = knots.get(next - 1);
        Knot high = knots.get(next);
        double part = fromRawTip.minus(low.at()).ratioTo(high.at().minus(low.at()));
        return low.thickness().plus(high.thickness().minus(low.thickness()).scaledBy(part));
    }

    /**
     * This one with another value in one place.
     *
     * @param knots one or more, in order of their place; two at one place are a step
     * @return a copy that differs in that alone
     */
    public ThicknessProfile withKnots(List<Knot> knots) {
        return new ThicknessProfile(knots);
    }
}
