/**
 * Short jobs beside the main one: each class opens with what happened in the shop, works it with the library, and prints the numbers with
 * their limits and cautions. All parts are invented. Each has a {@code main} that prints its page.
 */
package dev.tipwright.lessons;
