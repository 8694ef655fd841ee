/**
 * The tip in the bore as a step of the job: {@link dev.tipwright.fitcheck.TipFitStep} seats a tip, works it down to a wanted
 * clearance and reports a {@link dev.tipwright.fitcheck.TipFit}. The mathematics below it, profiles in and numbers out, is in
 * {@code insert} and {@code taper}.
 *
 * <p><img src="{@docRoot}/resources/fit.svg" width="900"
 *     alt="Left a tip wider than the mouth of its bore, the stock to come off hatched; right the finished tip seated
 *     with the wanted clearance.">
 */
package dev.tipwright.fitcheck;
