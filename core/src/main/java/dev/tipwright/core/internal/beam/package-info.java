/**
 * How fast a clamped shaft swings with a head on its end, and how far it bends under a load.
 *
 * <pre>
 *     |                                        head: mass, inertia
 *     |========================================-----o
 *     | s = 0                            s = L  offset
 *     clamp            EI(s), mu(s)       free end of the shaft, head rigid beyond it
 * </pre>
 *
 * <p>A slender beam in the sense of Euler and Bernoulli: bending stiffness {@code EI} and line density {@code mu} are
 * piecewise linear along it, each with its own stations, steps allowed; shear, rotary inertia of the beam itself, axial
 * force, gravity and damping are left out. The lowest natural frequency follows from the largest number {@code t} for
 * which some shape {@code w} satisfies
 *
 * <pre>
 *     t w = bend(w),    f = 1 / (2 pi sqrt(t)),
 *
 *     bend:  load q = mu w, head force F and couple C   ->   shear V = F + int_s^L q
 *            moment m = C + int_s^L V                   ->   curvature m / EI
 *            slope = int_0^s curvature                  ->   deflection = int_0^s slope
 * </pre>
 *
 * <p>that is, a shape that its own inertia forces reproduce. The four integrals are taken panel by panel at Gauss points.
 * That has three happy consequences. Nothing cancels, since under a load of one sign all terms have one sign, while a
 * stiffness matrix of fourth differences loses more than a digit each time its elements are halved. The rule is symmetric
 * in just the way that makes the discrete operator as self-adjoint as the true one, so that a few steps of the Lanczos
 * process yield its largest {@code t} almost to rounding. And the error falls with the eighth power of the panel length.
 *
 * <p>Only additions, multiplications, divisions and square roots occur: the same bits on every JVM.
 */
package dev.tipwright.core.internal.beam;
