/**
 * The parts of a club as they were measured. They know nothing of what will be done to them.
 *
 * <table>
 * <caption>Parts and their sub-records</caption>
 * <tr><th>part</th><th>made of</th></tr>
 * <tr><td>{@link dev.tipwright.core.part.Head}</td><td>{@link dev.tipwright.core.part.HeadMass},
 *     {@link dev.tipwright.core.part.HeadGeometry}, {@link dev.tipwright.core.profile.Bore},
 *     {@link dev.tipwright.core.part.Hosel}</td></tr>
 * <tr><td>{@link dev.tipwright.core.part.Shaft}</td><td>{@link dev.tipwright.core.part.Blank},
 *     {@link dev.tipwright.core.part.ShaftMass}, {@link dev.tipwright.core.part.ShaftSection},
 *     {@link dev.tipwright.core.part.ShaftFlex}</td></tr>
 * <tr><td>{@link dev.tipwright.core.part.Grip}</td><td>{@link dev.tipwright.core.part.GripSize}</td></tr>
 * <tr><td>{@link dev.tipwright.core.part.Attachment}</td><td>ferrule, adhesive, tape, weights, shim, extension</td></tr>
 * </table>
 */
package dev.tipwright.core.part;
