/**
 * What a number rests on and what it means for the work: sources, readings that may be missing, terms, workings, findings and
 * cautions. All of it is data; sentences are made only when asked for, in inches or millimetres.
 *
 * <table>
 * <caption>Which type says what</caption>
 * <tr><th>type</th><th>says</th></tr>
 * <tr><td>{@link dev.tipwright.core.evidence.Source}</td><td>where a constant or an assumption comes from</td></tr>
 * <tr><td>{@link dev.tipwright.core.evidence.Reading}</td><td>measured, assumed or unknown</td></tr>
 * <tr><td>{@link dev.tipwright.core.evidence.Term}</td><td>a symbol, its meaning and its value with unit</td></tr>
 * <tr><td>{@link dev.tipwright.core.evidence.Working}</td><td>how a number came about, line by line</td></tr>
 * <tr><td>{@link dev.tipwright.core.evidence.Finding}</td><td>what a builder must know before the step</td></tr>
 * <tr><td>{@link dev.tipwright.core.evidence.Caution}</td><td>what can hurt someone</td></tr>
 * </table>
 */
package dev.tipwright.core.evidence;
