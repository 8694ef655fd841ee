/**
 * A club on its way: {@link dev.tipwright.core.club.Parts} are what was measured and never change,
 * {@link dev.tipwright.core.club.Work} is what is to be done, and a {@link dev.tipwright.core.club.Build} is the two together.
 *
 * <p><img src="{@docRoot}/resources/build.svg" width="860"
 *     alt="Left the parts as they were measured, grip, head and raw shaft; in the middle the work as a list of
 *     trims, finished tip, seat and attachments; right the club that the two give together.">
 */
package dev.tipwright.core.club;
