/**
 * The parts of a club as they were measured. They know nothing of what will be done to them. A label is 1 to 80
 * printable characters.
 *
 * <p><img src="{@docRoot}/resources/parts.svg" width="860"
 *     alt="A club taken apart: grip, shaft, what is put on or in, and head, each with the types that describe it.">
 *
 * <table class="striped">
 * <caption>Parts and their sub-records</caption>
 * <thead>
 * <tr><th scope="col">part</th><th scope="col">made of</th></tr>
 * </thead>
 * <tbody>
 * <tr><th scope="row" style="text-align:left">{@link dev.tipwright.core.part.Head}</th>
 *     <td>{@link dev.tipwright.core.part.HeadMass},
 *     {@link dev.tipwright.core.part.HeadGeometry}, {@link dev.tipwright.core.profile.Bore},
 *     {@link dev.tipwright.core.part.Hosel}</td></tr>
 * <tr><th scope="row" style="text-align:left">{@link dev.tipwright.core.part.Shaft}</th>
 *     <td>{@link dev.tipwright.core.part.Blank},
 *     {@link dev.tipwright.core.part.ShaftMass}, {@link dev.tipwright.core.part.ShaftSection},
 *     {@link dev.tipwright.core.part.ShaftFlex}</td></tr>
 * <tr><th scope="row" style="text-align:left">{@link dev.tipwright.core.part.Grip}</th>
 *     <td>{@link dev.tipwright.core.part.GripSize}</td></tr>
 * <tr><th scope="row" style="text-align:left">{@link dev.tipwright.core.part.Attachment}</th>
 *     <td>ferrule, adhesive, tape, weights, shim, extension</td></tr>
 * </tbody>
 * </table>
 */
package dev.tipwright.core.part;
