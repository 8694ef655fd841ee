/** Straight-line shapes in doubles, the working form of profiles; not exported beyond the three modules. */
package dev.tipwright.core.internal.shape;
