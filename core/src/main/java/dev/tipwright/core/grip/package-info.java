/**
 * The grip on the butt: how wide the butt is after its trim, what the layers of tape make of it, how wide the grip becomes on it, what
 * it all weighs, and where its mouth comes to lie.
 *
 * <p><img src="{@docRoot}/resources/grip.svg" width="860"
 *     alt="A grip in section on its butt: the cap of thickness g above the butt, layers of tape on the shaft, the
 *     grip over them, and its mouth its length less g below the butt.">
 */
package dev.tipwright.core.grip;
