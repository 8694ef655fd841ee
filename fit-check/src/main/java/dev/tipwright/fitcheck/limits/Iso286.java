package dev.tipwright.fitcheck.limits;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Length;

/**
 * Tolerances of ISO 286-1 for the sizes tips and bores have: standard tolerance grades IT5 to IT11 up to 30 mm, and the
 * fundamental deviations of shafts d to s from over 3 to 18 mm, in whole micrometres. The hole is H: its lower limit is the nominal
 * size. A range excludes its lower end and includes its upper one, so 10 mm belongs to 6 to 10.
 *
 * <p>Source: ISO 286-1:2010, table 1 and the tables of fundamental deviations for shafts; the table rules, the formula behind it does not
 * give it by rounding alone. Read for the grades and for g, h, k, n and p; from memory for d, e, f, m, r and s.
 *
 * <pre>{@code
 * Length ten = Length.parse("10 mm");
 * SizeLimits hole = Iso286.hole(ten, Iso286.Grade.IT7);
 * SizeLimits shaft = Iso286.shaft(ten, Iso286.Deviation.G, Iso286.Grade.IT6);
 * hole.greatest();                                       // = 10.015 mm
 * shaft.least();                                         // = 9.986 mm
 * FitClass.of(hole, shaft).leastClearance();             // = 0.005 mm
 * }</pre>
 */
public final class Iso286 {

    /** Upper ends of the ranges of nominal size, in millimetres. */
    private static final int[] UP_TO = {3, 6, 10, 18, 30};

    /** Where the deviations begin and end. */
    private static final int FIRST_DEVIATION = 1;

    private static final int LAST_DEVIATION = 3;

    /** A standard tolerance grade, with its widths in micrometres by range. */
    public enum Grade {
        /** Grade 5. */
        IT5(4, 5, 6, 8, 9),
        /** Grade 6. */
        IT6(6, 8, 9, 11, 13),
        /** Grade 7. */
        IT7(10, 12, 15, 18, 21),
        /** Grade 8. */
        IT8(14, 18, 22, 27, 33),
        /** Grade 9. */
        IT9(25, 30, 36, 43, 52),
        /** Grade 10. */
        IT10(40, 48, 58, 70, 84),
        /** Grade 11. */
        IT11(60, 75, 90, 110, 130);

        private final int first;
        private final int second;
        private final int third;
        private final int fourth;
        private final int fifth;

        Grade(int first, int second, int third, int fourth, int fifth) {
            this.first = first;
            this.second = second;
            this.third = third;
            this.fourth = fourth;
            this.fifth = fifth;
        }

        private int micrometres(int range) {
            return switch (range) {
                case 0 -> first;
                case 1 -> second;
                case 2 -> third;
                case 3 -> fourth;
                default -> fifth;
            };
        }
    }

    /** A fundamental deviation of a shaft: of the upper limit for d to h, of the lower for k to s. */
    public enum Deviation {
        /** Loose. */
        D(true, -30, -40, -50),
        /** Loose. */
        E(true, -20, -25, -32),
        /** Running. */
        F(true, -10, -13, -16),
        /** Close running. */
        G(true, -4, -5, -6),
        /** Touching at the nominal size. */
        H(true, 0, 0, 0),
        /** Transition; for grades 4 to 7. */
        K(false, 1, 1, 1),
        /** Transition. */
        M(false, 4, 6, 7),
        /** Transition. */
        N(false, 8, 10, 12),
        /** Light interference. */
        P(false, 12, 15, 18),
        /** Interference. */
        R(false, 15, 19, 23),
        /** Interference. */
        S(false, 19, 23, 28);

        private final boolean upper;
        private final int second;
        private final int third;
        private final int fourth;

        Deviation(boolean upper, int second, int third, int fourth) {
            this.upper = upper;
            this.second = second;
            this.third = third;
            this.fourth = fourth;
        }

        private int micrometres(int range) {
            return switch (range) {
                case 1 -> second;
                case 2 -> third;
                default -> fourth;
            };
        }
    }

    private Iso286() {}

    /**
     * The width of a standard tolerance.
     *
     * @param nominal nominal size; above zero, at most 30 mm
     * @param grade the grade
     * @return upper limit less lower limit
     */
    public static Length width(Length nominal, Grade grade) {
        Require.given("grade", grade);
        return Length.ofMicrometres(grade.micrometres(range(nominal)));
    }

    /**
     * The limits of a hole H.
     *
     * @param nominal nominal size; above zero, at most 30 mm
     * @param grade the grade
     * @return from the nominal size up
     */
    public static SizeLimits hole(Length nominal, Grade grade) {
        Length width = width(nominal, grade);
        return new SizeLimits(nominal, nominal.plus(width));
    }

    /**
     * The limits of a shaft.
     *
     * @param nominal nominal size; over 3 mm, at most 18 mm
     * @param deviation the letter
     * @param grade the grade; at most IT7 for k
     * @return the limits
     */
    public static SizeLimits shaft(Length nominal, Deviation deviation, Grade grade) {
        Require.given("deviation", deviation);
        Length width = width(nominal, grade);
        int range = range(nominal);
        Require.that(
                range >= FIRST_DEVIATION && range <= LAST_DEVIATION,
                "nominal",
                "must be over 3 mm and at most 18 mm for a shaft",
                nominal);
        Require.that(
                deviation != Deviation.K || grade.compareTo(Grade.IT7) <= 0,
                "grade",
                "must be at most IT7 for k",
                grade);
        Length off = Length.ofMicrometres(deviation.micrometres(range));
        Length least = deviation.upper ? nominal.plus(off).minus(width) : nominal.plus(off);
        return new SizeLimits(least, least.plus(width));
    }

    private static int range(Length nominal) {
        Require.between("nominal", nominal, Length.ofNanometres(1), Length.ofMillimetres(UP_TO[UP_TO.length - 1]));
        int range = 0;
        while (nominal.moreThan(Length.ofMillimetres(UP_TO[range]))) {
            range++;
        }
        return range;
    }
}
