package dev.tipwright.core.internal.beam;

/**
 * How far the free end of a beam moves under a load that stays.
 *
 * @param deflectionM across the beam, in metres
 * @param slope rise over run, without unit
 */
public record EndMotion(double deflectionM, double slope) {}
