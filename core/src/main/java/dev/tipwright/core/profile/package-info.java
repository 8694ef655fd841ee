/**
 * Shapes along an axis: a diameter through measured stations, a wall, and the bore of a hosel from whatever was used to read it.
 *
 * <pre>
 *        mouth                         bottom
 *   y:   0   .015                      B
 *        |\____                         |
 *        |     ``----.....____          |    D(y): straight between stations
 *   axis -  -  -  -  -  -  -  -``--...__|
 *        |             ____....----     |    z:  up from the tip's end,
 *        |____....----                  |        which sits at y = i - z
 * </pre>
 */
package dev.tipwright.core.profile;
