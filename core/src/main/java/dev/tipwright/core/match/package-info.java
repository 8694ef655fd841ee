/**
 * Which shaft goes to which head. Shafts of one model differ by a few grams and its blanks by their length, so the shafts of a job are
 * shared out among its heads before anything is cut: every pair is planned, the caller says what a plan is worth, and the pairing of
 * least cost is found exactly.
 *
 * <p><img src="{@docRoot}/resources/match.svg" width="860"
 *     alt="Three shafts and three heads, every pair with its cost; the pairing of least sum is drawn solid, the
 *     others dashed.">
 *
 * <p>It comes before the plan and gives back untouched builds, to be planned like any others.
 */
package dev.tipwright.core.match;
