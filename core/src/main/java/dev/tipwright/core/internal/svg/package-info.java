/** A small writer of black-and-white SVG text; not exported beyond the three modules. */
package dev.tipwright.core.internal.svg;
