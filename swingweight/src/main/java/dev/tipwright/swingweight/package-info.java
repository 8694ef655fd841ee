/**
 * Swing weight as a step of the job: {@link dev.tipwright.swingweight.SwingWeightStep} predicts how a club will balance, brings it
 * towards its target with a weight from stock, and reports a {@link dev.tipwright.swingweight.ClubBalance}.
 *
 * <p><img src="{@docRoot}/resources/weight.svg" width="860"
 *     alt="A scale in points: the club is predicted to read C8.2, with the 8 g of the stock D1.7, within the wanted
 *     band about D2.">
 */
package dev.tipwright.swingweight;
