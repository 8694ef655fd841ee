/**
 * What a number rests on and what it means for the work: sources, readings that may be missing, terms, workings, findings and
 * cautions. All of it is data; sentences are made only when asked for, in inches or millimetres.
 *
 * <p><img src="{@docRoot}/resources/evidence.svg" width="900"
 *     alt="Five boxes from left to right: source, reading, term, working and finding; below them a tip trim as term,
 *     working and finding.">
 *
 * <table class="striped">
 * <caption>Which type says what</caption>
 * <thead>
 * <tr><th scope="col">type</th><th scope="col">says</th></tr>
 * </thead>
 * <tbody>
 * <tr><th scope="row" style="text-align:left">{@link dev.tipwright.core.evidence.Source}</th>
 *     <td>where a constant or an assumption comes from</td></tr>
 * <tr><th scope="row" style="text-align:left">{@link dev.tipwright.core.evidence.Reading}</th>
 *     <td>measured, assumed or unknown</td></tr>
 * <tr><th scope="row" style="text-align:left">{@link dev.tipwright.core.evidence.Term}</th>
 *     <td>a symbol, its meaning and its value with unit</td></tr>
 * <tr><th scope="row" style="text-align:left">{@link dev.tipwright.core.evidence.Working}</th>
 *     <td>how a number came about, line by line</td></tr>
 * <tr><th scope="row" style="text-align:left">{@link dev.tipwright.core.evidence.Finding}</th>
 *     <td>what a builder must know before the step</td></tr>
 * <tr><th scope="row" style="text-align:left">{@link dev.tipwright.core.evidence.Caution}</th>
 *     <td>what can hurt someone</td></tr>
 * </tbody>
 * </table>
 */
package dev.tipwright.core.evidence;
