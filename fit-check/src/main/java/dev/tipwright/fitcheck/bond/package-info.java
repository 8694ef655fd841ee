/**
 * The glued joint: how much is bonded, how thick the adhesive is, what shear the loads put on it, and how that stands to the caller's
 * allowables. Torque, bond line, insertion and preparation come first; a large margin in pull is no comfort.
 *
 * <p><img src="{@docRoot}/resources/shear.svg" width="860"
 *     alt="A glued joint in section and below it the shear along it: a peak of 6.5 times the mean at the hosel
 *     mouth, little in the middle, 2.1 at the end of the tip.">
 *
 * <pre>
 *   mean shear    torque T / (integral of pi d^2 / 2)       pull F / (integral of pi d)
 *   peak shear    at the mouth, where the soft tip hands its load to the stiff hosel (shear-lag)
 * </pre>
 *
 * The numbers certify nothing: adhesive, preparation and cure are the word of the adhesive's maker, and a head can come off.
 */
package dev.tipwright.fitcheck.bond;
