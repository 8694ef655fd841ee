/** How long the calculations take, each with the bytes it allocates. Run by hand; nothing here is a test. */
package dev.tipwright.benchmarks;
