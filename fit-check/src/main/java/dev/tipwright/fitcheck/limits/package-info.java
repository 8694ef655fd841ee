/**
 * Limits: the class of a fit when diameters carry tolerances, how likely it is to bind, and how far a loose shaft can lean.
 *
 * <pre>
 *   clearance     |---shaft---|  |---hole---|        the tightest pair still clears
 *   transition    |---shaft------|
 *                           |---hole---|             some pairs clear, some bind
 *   interference  |---hole---|  |---shaft---|        the loosest pair still binds
 * </pre>
 *
 * <p>A shaft with room in its bore turns until it touches one side near its end and the other near the mouth:
 *
 * <p><img src="{@docRoot}/resources/lean.svg" width="800"
 *     alt="A shaft leaning in a bore, touching at z1 and z2.">
 */
package dev.tipwright.fitcheck.limits;
