/**
 * Whole jobs worked with the three modules together. {@link dev.tipwright.examples.MainJob} reads a folder of bench measurements and
 * prints the plan; what it reads, and everything that can be wrong with it, is in {@code read}.
 */
package dev.tipwright.examples;
