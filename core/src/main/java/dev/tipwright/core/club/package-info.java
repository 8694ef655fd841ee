/**
 * A club on its way: {@link dev.tipwright.core.club.Parts} are what was measured and never change,
 * {@link dev.tipwright.core.club.Work} is what is to be done, and a {@link dev.tipwright.core.club.Build} is the two together.
 */
package dev.tipwright.core.club;
