/**
 * How sure a number is: uncertainty budgets and Monte Carlo runs over any model.
 *
 * <p>One idea: a {@link dev.tipwright.core.uncertainty.Measurand} is a model and its inputs, and everything else is
 * asked of it.
 *
 * <p><img src="{@docRoot}/resources/budget.svg" width="860"
 *     alt="Left bars of what caliper and two readings contribute to a standard uncertainty of 0.0235 mm; right the
 *     sum of 34.50 mm as a normal curve with its interval of 0.046 mm to either side.">
 *
 * <table class="striped">
 * <caption>Four questions to a measurand</caption>
 * <thead>
 * <tr><th scope="col">question</th><th scope="col">answer</th><th scope="col">source</th></tr>
 * </thead>
 * <tbody>
 * <tr><th scope="row" style="text-align:left">How uncertain, and what makes it so?</th>
 *     <td>{@link dev.tipwright.core.uncertainty.Budget}</td>
 *     <td>JCGM 100:2008, clause 5 and annex G</td></tr>
 * <tr><th scope="row" style="text-align:left">What does first order leave out?</th>
 *     <td>{@link dev.tipwright.core.uncertainty.SecondOrder}</td>
 *     <td>JCGM 100:2008, 5.1.2, note</td></tr>
 * <tr><th scope="row" style="text-align:left">May it be left out?</th>
 *     <td>{@link dev.tipwright.core.uncertainty.LinearityCheck}</td>
 *     <td>this library</td></tr>
 * <tr><th scope="row" style="text-align:left">And if the model bends or jumps?</th>
 *     <td>{@link dev.tipwright.core.uncertainty.MonteCarlo}</td>
 *     <td>JCGM 101:2008</td></tr>
 * </tbody>
 * </table>
 *
 * <p>For example, two readings of one caliper whose own error, the same in both, is known within 0.02 mm:
 *
 * <pre>
 * Inputs inputs = Inputs.of(
 *         Input.ofStandard("first", "mm", 9.40, 0.003),
 *         Input.ofStandard("second", "mm", 25.10, 0.003),
 *         Input.ofLimits("caliper", "mm", 0, 0.02));
 * Budget budget = Budget.of(Measurand.of("sum", "mm", inputs, x -&gt; x[0] + x[2] + x[1] + x[2]));
 * budget.standardUncertainty();       // 0.0235 mm, of which the caliper's error 0.0231
 * budget.expanded(0.95).uncertainty() // 0.046 mm
 * </pre>
 *
 * <p>The package works in plain doubles with unit names, whatever the unit. Every function is pure: the same inputs and
 * seed give the same bits. No method returns NaN or an infinity; a model that does is refused with its name and the
 * inputs it was given.
 *
 * <p>JCGM 100:2008 is the Guide to the expression of uncertainty in measurement (GUM); JCGM 101:2008 is its first
 * supplement, Propagation of distributions using a Monte Carlo method.
 */
package dev.tipwright.core.uncertainty;
