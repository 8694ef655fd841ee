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
 */
package dev.tipwright.fitcheck.insert;
