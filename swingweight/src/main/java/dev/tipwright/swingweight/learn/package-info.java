/**
 * Learning from the scale: a reading says where the head's centre of mass is, which was only assumed, and what is now to be expected of the
 * rest of the set.
 *
 * <pre>
 *   centre by the reading:   c = c0 + (P_read - P_predicted) K / m_head
 * </pre>
 */
package dev.tipwright.swingweight.learn;
