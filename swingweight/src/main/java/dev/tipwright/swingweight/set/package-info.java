/**
 * A set of clubs as a whole: how far apart they are in swing weight and mass, what it takes to make them alike in another way, and a
 * picture of it.
 */
package dev.tipwright.swingweight.set;
