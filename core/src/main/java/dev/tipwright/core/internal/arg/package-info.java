/** Argument checks shared by the three modules; not exported to anyone else. */
package dev.tipwright.core.internal.arg;
