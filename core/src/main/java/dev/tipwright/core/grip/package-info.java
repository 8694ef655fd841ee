/**
 * The grip on the butt: how wide the butt is after its trim, what the layers of tape make of it, how wide the grip becomes on it, what
 * it all weighs, and where its mouth comes to lie.
 */
package dev.tipwright.core.grip;
