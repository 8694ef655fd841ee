/**
 * Limits of the Equipment Rules of golf that bear on a club as it is built: length, neck and straight zone, grip. Findings, never rulings.
 *
 * <p><img src="{@docRoot}/resources/plane.svg" width="900"
 *     alt="A club on a level plane, its sole against a plane at 60 degrees; L60 runs from where the planes meet to
 *     the top of the grip, and L along the axis is longer by h cot 60.">
 *
 * <table class="striped">
 * <caption>What is checked</caption>
 * <thead>
 * <tr><th scope="col">limit</th><th scope="col">measured</th></tr>
 * </thead>
 * <tbody>
 * <tr><th scope="row" style="text-align:left">longest, shortest club</th>
 *     <td>by the 60 degree plane; putters along the axis</td></tr>
 * <tr><th scope="row" style="text-align:left">neck, straight shaft</th>
 *     <td>hosel mouth to the sole along the axis</td></tr>
 * <tr><th scope="row" style="text-align:left">grip</th><td>its length, and its width where known</td></tr>
 * </tbody>
 * </table>
 */
package dev.tipwright.core.rules;
