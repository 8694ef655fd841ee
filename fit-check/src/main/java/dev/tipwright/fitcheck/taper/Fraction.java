package dev.tipwright.fitcheck.taper;

import java.math.BigInteger;

/** An exact number, as a numerator over a denominator above zero; not kept in lowest terms. */
record Fraction(BigInteger over, BigInteger under) implements Comparable<Fraction> {

    static final Fraction ZERO = of(0);

    static Fraction of(long whole) {
        return new Fraction(BigInteger.valueOf(whole), BigInteger.ONE);
    }

    Fraction plus(Fraction other) {
        return under.equals(other.under)
                ? new Fraction(over.add(other.over), under)
                : new Fraction(over.multiply(other.under).add(other.over.multiply(under)), under.multiply(other.under));
    }

    Fraction minus(Fraction other) {
        return plus(new Fraction(other.over.negate(), other.under));
    }

    Fraction times(Fraction other) {
        return new Fraction(over.multiply(other.over), under.multiply(other.under));
    }

    /** This one over another, which is not zero. */
    Fraction by(Fraction other) {
        BigInteger sign = BigInteger.valueOf(other.sign());
        return new Fraction(over.multiply(other.under).multiply(sign), under.multiply(other.over.abs()));
    }

    int sign() {
        return over.signum();
    }

    /** The greatest whole number not above it. */
    long floor() {
        BigInteger[] parts = over.divideAndRemainder(under);
        return parts[0].longValueExact() - (parts[1].signum() < 0 ? 1 : 0);
    }

    /** The least whole number not below it. */
    long ceiling() {
        return -new Fraction(over.negate(), under).floor();
    }

    /** The lesser of two; this one if they are the same. */
    Fraction min(Fraction other) {
        return compareTo(other) <= 0 ? this : other;
    }

    /** The greater of two; this one if they are the same. */
    Fraction max(Fraction other) {
        return compareTo(other) >= 0 ? this : other;
    }

    boolean same(Fraction other) {
        return compareTo(other) == 0;
    }

    @Override
    public int compareTo(Fraction other) {
        return over.multiply(other.under).compareTo(other.over.multiply(under));
    }
}
