/**
 * What an offcut tells of the shaft it came from. A piece on the scale says how heavy the rest is, and its cut face shows wall and
 * finish: each reading gives the shaft back with the estimate replaced, and says when the reading cannot be believed.
 *
 * <p><img src="{@docRoot}/resources/offcut.svg" width="860"
 *     alt="Two weighed pieces at the ends of a shaft; the straight line of density, dashed, becomes one that bends
 *     at their inner ends.">
 *
 * <p>Mass along a shaft that was only weighed and balanced is a straight line. Each piece that is weighed adds one place where that
 * line may bend: the inner end of a piece that came off an end, the middle of any other. The line is then the only one that gives
 * the raw mass, the raw balance point and the mass of every piece; that it is straight between is an assumption of this library.
 */
package dev.tipwright.core.offcut;
