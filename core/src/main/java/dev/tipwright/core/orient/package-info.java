/** Which way a shaft is turned in its head: by its graphics, its seam, or a plane in which it was found to bend straight. */
package dev.tipwright.core.orient;
