/**
 * Drawings as SVG text, black on white: a tip in its bore in section, and the stages of working a tip down. Each carries a title and
 * a description in words.
 *
 * <p><img src="{@docRoot}/resources/seated.svg" width="760"
 *     alt="A tip worked down to .351 in at its end, seated at the bottom of a bore of 1 1/4 in with even clearance;
 *     drawn by SectionDrawing.">
 *
 * <p><img src="{@docRoot}/resources/stages.svg" width="760"
 *     alt="Insertion against stock still to come off, with a table of stages below; drawn by StageDrawing.">
 */
package dev.tipwright.fitcheck.draw;
