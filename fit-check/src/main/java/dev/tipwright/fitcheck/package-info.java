/**
 * The tip in the bore as a step of the job: {@link dev.tipwright.fitcheck.TipFitStep} seats a tip, works it down to a wanted
 * clearance and reports a {@link dev.tipwright.fitcheck.TipFit}. The mathematics below it, profiles in and numbers out, is in
 * {@code insert} and {@code taper}.
 */
package dev.tipwright.fitcheck;
