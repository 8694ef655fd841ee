/** What the packages of this module share and hand to nobody else. */
package dev.tipwright.fitcheck.internal;
