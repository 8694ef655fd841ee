package dev.tipwright.core.uncertainty;

/**
 * The shape of what is known about an {@link Input}, used when values are drawn from it (JCGM 101:2008, 6.4) and for
 * the fourth moment in {@link SecondOrder}. First order (JCGM 100:2008) needs the standard uncertainty alone and does
 * not look at the shape.
 */
public enum Distribution {
    /** Gaussian about the estimate with the standard uncertainty as its standard deviation (JCGM 101:2008, 6.4.7). */
    NORMAL,

    /**
     * Equally probable everywhere between two limits, none outside. Half-width {@code a = u sqrt 3} (JCGM 100:2008,
     * 4.3.7; JCGM 101:2008, 6.4.2).
     */
    RECTANGULAR,

    /**
     * Symmetric triangle between two limits, most probable at the estimate. Half-width {@code a = u sqrt 6} (JCGM
     * 100:2008, 4.3.9; JCGM 101:2008, 6.4.5).
     */
    TRIANGULAR,

    /**
     * Student's t scaled by the standard uncertainty, for the mean of repeated readings (JCGM 101:2008, 6.4.9). Its own
     * standard deviation is {@code u sqrt(nu / (nu - 2))}, larger than {@code u}, and exists only above two degrees of
     * freedom.
     */
    STUDENT
}
