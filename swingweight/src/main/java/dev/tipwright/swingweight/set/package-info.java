/**
 * A set of clubs as a whole: how far apart they are in swing weight and mass, what it takes to make them alike in another way, and a
 * picture of it.
 *
 * <p><img src="{@docRoot}/resources/set.svg" width="424"
 *     alt="Swing weight, total mass and inertia of six clubs with their uncertainty; drawn by SetChart.">
 */
package dev.tipwright.swingweight.set;
