/**
 * Learning from the scale: a reading says where the head's centre of mass is, which was only assumed, and what is now to be expected of the
 * rest of the set.
 *
 * <p><img src="{@docRoot}/resources/centre.svg" width="860"
 *     alt="Three normal curves along the axis of a head: its centre as assumed, wide; by the reading alone; and the
 *     two together, the narrowest.">
 *
 * <pre>
 *   centre by the reading:   c = c0 + (P_read - P_predicted) K / m_head
 * </pre>
 */
package dev.tipwright.swingweight.learn;
