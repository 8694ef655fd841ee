/**
 * Reads a folder of bench measurements, one CSV file for each kind of thing, and says everything that is wrong with it at once.
 *
 * <pre>
 *   Table    which files there are, and their columns
 *   Sheet    one file as rows of cells
 *   Row      one line; each typed read of a cell reports what is wrong with it
 *   Limits   how big things can be, and how big they usually are
 *   Shelf    things by their label
 *   JobFolder   all of it: a Job, or Problems
 * </pre>
 */
package dev.tipwright.examples.read;
