/**
 * Published tables as data, so that a test can say where its expected numbers come from.
 *
 * <p>Each table is one CSV file at the top of this module. It opens with lines that name its source:
 *
 * <pre>
 * # source: ASME B94.11M, Twist Drills
 * # edition: 1993
 * # place: table 1
 * # precision: 0.0001 in
 * # status: read
 * name,inch
 * P,0.3230
 * "21/64",0.328125
 * </pre>
 */
package dev.tipwright.checkvalues;
