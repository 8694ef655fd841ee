/**
 * Limits: the class of a fit when diameters carry tolerances, how likely it is to bind, and how far a loose shaft can lean.
 *
 * <pre>
 *   clearance     |---shaft---|  |---hole---|        the tightest pair still clears
 *   transition    |---shaft------|
 *                           |---hole---|             some pairs clear, some bind
 *   interference  |---hole---|  |---shaft---|        the loosest pair still binds
 * </pre>
 */
package dev.tipwright.fitcheck.limits;
