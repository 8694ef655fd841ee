package dev.tipwright.swingweight.balance;

import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Mass;
import java.util.Arrays;
import java.util.List;

/** Keeps the parts of a build one by one. */
final class PartList implements ClubParts.Taker {

    private final BalancePart[] parts;
    private int size;

    /** Room for grip, shaft, head, what came off the tip, and as much as is attached. */
    PartList(int attached) {
        parts = new BalancePart[4 + attached];
    }

    @Override
    public void take(String label, Mass mass, double first, double second) {
        parts[size++] = new BalancePart(
                label, mass, FirstMoment.ofGramMillimetres(first), Inertia.ofGramSquareMillimetres(second));
    }

    List<BalancePart> list() {
        return List.of(size == parts.length ? parts : Arrays.copyOf(parts, size));
    }
}
