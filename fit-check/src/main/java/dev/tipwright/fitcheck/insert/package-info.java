/**
 * How far a tip goes into a bore and what clearance it then has. Profiles in, no head or shaft needed.
 *
 * <pre>
 *   z + y at contact:   d(z) &gt; D(y) just beyond          c(z) = D(i - z) - d(z)
 *
 *   mouth |------- D(y) -------|
 *         |  y                 |
 *         |----&gt;|x             |   x: where it binds, and the witness marks show
 *               |&lt;--- z ---|end of the tip
 *         |------- i ------|
 * </pre>
 *
 * <p><img src="{@docRoot}/resources/section.svg" width="760"
 *     alt="A tip of .359 in binds halfway down a bore that narrows from .363 to .355 in; drawn by SectionDrawing.">
 */
package dev.tipwright.fitcheck.insert;
