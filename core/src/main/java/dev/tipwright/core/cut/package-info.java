/**
 * Where to mark a raw shaft, on which side of each mark the saw runs, in what order a set is cut, and what a shaft that was cut too
 * far could still become.
 *
 * <p><img src="{@docRoot}/resources/cut.svg" width="900"
 *     alt="A raw shaft with a mark near each end; the saw runs on the waste side of each mark.">
 *
 * <p>The kerf {@code k} lies inside the waste, so that a mark is an end of the finished shaft: {@code T + S + U = R}.
 */
package dev.tipwright.core.cut;
