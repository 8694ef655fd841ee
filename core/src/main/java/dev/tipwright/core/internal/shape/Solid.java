package dev.tipwright.core.internal.shape;

/**
 * A solid of revolution by its volume and the first and second moment of it about a place on the axis.
 *
 * @param volume in mm3
 * @param first moment in mm4
 * @param second moment in mm5
 */
public record Solid(double volume, double first, double second) {}
