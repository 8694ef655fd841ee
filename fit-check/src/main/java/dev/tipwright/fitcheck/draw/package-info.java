/**
 * Drawings as SVG text, black on white: a tip in its bore in section, and the stages of working a tip down. Each carries a title and
 * a description in words.
 */
package dev.tipwright.fitcheck.draw;
