/**
 * Swing weight as a step of the job: {@link dev.tipwright.swingweight.SwingWeightStep} predicts how a club will balance, brings it
 * towards its target with a weight from stock, and reports a {@link dev.tipwright.swingweight.ClubBalance}.
 */
package dev.tipwright.swingweight;
