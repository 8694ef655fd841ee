package dev.tipwright.architecture.ring.hen;

import dev.tipwright.architecture.ring.egg.Egg;

/** Half of a planted cycle of packages. */
public record Hen(Egg before) {}
