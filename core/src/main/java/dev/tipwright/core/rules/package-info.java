/**
 * Limits of the Equipment Rules of golf that bear on a club as it is built: length, neck and straight zone, grip. Findings, never rulings.
 *
 * <table>
 * <caption>What is checked</caption>
 * <tr><th>limit</th><th>measured</th></tr>
 * <tr><td>longest, shortest club</td><td>by the 60 degree plane; putters along the axis</td></tr>
 * <tr><td>neck, straight shaft</td><td>hosel mouth to the sole along the axis</td></tr>
 * <tr><td>grip</td><td>its length, and its width where known</td></tr>
 * </table>
 */
package dev.tipwright.core.rules;
