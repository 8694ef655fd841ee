package dev.tipwright.architecture.ring.egg;

import dev.tipwright.architecture.ring.hen.Hen;

/** Half of a planted cycle of packages. */
public record Egg(Hen before) {}
