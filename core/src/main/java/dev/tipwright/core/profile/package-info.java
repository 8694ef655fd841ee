/**
 * Shapes along an axis: a diameter through measured stations, a wall, and the bore of a hosel from whatever was used to read it.
 *
 * <p><img src="{@docRoot}/resources/stations.svg" width="860"
 *     alt="A bore in section, straight between its stations; y runs down from the mouth to the bottom, z up from the
 *     end of the tip, and z sits at y = i - z.">
 */
package dev.tipwright.core.profile;
