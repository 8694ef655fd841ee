package dev.tipwright.lessons;

/**
 * A club in plain arithmetic, in grams and millimetres from the top of the grip, by the formulas of a textbook of statics: the sums
 * that the library's balance is held against. The shaft's line density is {@code a + b z} with the raw mass and balance point given.
 */
final class Lumps {

    static final double INCH = 25.4;

    double mass;
    double moment;
    double inertia;

    Lumps add(double grams, double place) {
        mass += grams;
        moment += grams * place;
        inertia += grams * place * place;
        return this;
    }

    /** The rest of a shaft of raw length {@code r}, from {@code from} to {@code to} up from its raw tip, its cut tip at {@code tip}. */
    Lumps shaft(double grams, double balance, double r, double from, double to, double tip) {
        double a = (4 * r * grams - 6 * grams * balance) / (r * r);
        double b = (12 * grams * balance - 6 * r * grams) / (r * r * r);
        // In thin slices, each a lump: the midpoint rule, exact to a millionth with so many.
        int n = 20_000;
        double dz = (to - from) / n;
        for (int k = 0; k < n; k++) {
            double z = from + (k + 0.5) * dz;
            add((a + b * z) * dz, tip - (z - from));
        }
        return this;
    }

    /** Points above A0 on the scale of 14 in, 1.75 oz in a point. */
    double points() {
        double ounceInch = 28.349523125 * INCH;
        return ((moment - mass * 14 * INCH) / ounceInch - 161) / 1.75;
    }

    double kilogramSquareCentimetres() {
        return inertia / 1e5;
    }
}
