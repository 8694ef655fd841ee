package dev.tipwright.examples.read;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.length.LengthMeasure;
import dev.tipwright.core.length.LengthPlan;
import dev.tipwright.core.length.LengthTarget;
import dev.tipwright.core.part.Attachment;
import dev.tipwright.core.part.Grip;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.swingweight.aim.SwingWeightTarget;
import dev.tipwright.swingweight.aim.SwingWeightTargets;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The clubs to be built: which parts go together, and what each club is to be. */
final class Clubs {
    private static final String BOTTOM = "bottom of the bore";
    private static final String AXIS = "along the axis";
    private static final String PLANE = "by the 60 degree plane";
    private static final String MARK = "mark on the shaft";

    private final PartsShelves parts;
    private final Work untouched;
    private final SwingWeightScale scale;
    private final List<Build> builds = new ArrayList<>();
    private final List<LengthTarget> lengths = new ArrayList<>();
    private final List<SwingWeightTarget> targets = new ArrayList<>();
    private final Set<String> used = new HashSet<>();

    Clubs(PartsShelves parts, List<Attachment> attached, SwingWeightScale scale) {
        this.parts = parts;
        this.untouched = Work.NONE.withAttached(attached);
        this.scale = scale;
    }

    List<Build> builds() {
        return List.copyOf(builds);
    }

    LengthPlan lengths() {
        return new LengthPlan(lengths);
    }

    SwingWeightTargets swingWeights() {
        return new SwingWeightTargets(scale, targets);
    }

    void read(Sheet sheet) {
        Shelf<Build> shelf = new Shelf<>(sheet);
        for (Row row : sheet.rows()) {
            shelf.put(row, "club", club(row, row.label("club")));
        }
        builds.addAll(shelf.all());
    }

    private Optional<Build> club(Row row, String label) {
        Optional<Head> head = each(row, "head", parts.heads());
        Optional<Shaft> shaft = each(row, "shaft", parts.shafts());
        Optional<Grip> grip = each(row, "grip", parts.grips());
        Optional<Seat> seat = seat(row, head);
        target(row, label);
        if (head.isEmpty() || shaft.isEmpty() || grip.isEmpty() || seat.isEmpty()) {
            return Optional.empty();
        }
        // The bench calls a head by the club it makes.
        return row.make(() -> new Build(
                new Parts(head.get().withLabel(label), shaft.get(), grip.get()), untouched.withSeat(seat.get())));
    }

    /** A part that is there; each is one piece, so that no two clubs can have it. */
    private <T> Optional<T> each(Row row, String column, Shelf<T> shelf) {
        Optional<T> part = shelf.take(row, column);
        if (part.isPresent() && !used.add(column + ' ' + row.cell(column).text())) {
            row.problem(column, "a " + column + " that no other club has");
        }
        return part;
    }

    private static Optional<Seat> seat(Row row, Optional<Head> head) {
        if (row.choice("stop", List.of(BOTTOM, MARK)).equals(MARK)) {
            Length insertion = row.read("insertion", Limits.INSERTION);
            head.ifPresent(known -> row.require(
                    !insertion.moreThan(known.bore().depth()), "insertion", "no deeper than the bore of the head"));
            return row.make(() -> new Seat(insertion, Stop.MARK));
        }
        row.require(!row.has("insertion"), "insertion", "nothing, since the bottom of the bore stops the tip");
        head.ifPresent(known -> row.require(
                known.bore().end() != BoreEnd.THROUGH, "stop", MARK + ", since the bore of the head goes through"));
        return head.flatMap(known -> row.make(() -> Seat.onBottomOf(known.bore())));
    }

    private void target(Row row, String label) {
        Length length = row.read("target length", Limits.PLAYING_LENGTH);
        LengthMeasure measure =
                row.choice("length measured", List.of(AXIS, PLANE)).equals(AXIS)
                        ? LengthMeasure.ALONG_AXIS
                        : LengthMeasure.SIXTY_DEGREE_PLANE;
        row.make(() -> new LengthTarget(label, length, measure)).ifPresent(lengths::add);
        if (row.has("target swing weight")) {
            SwingWeight wanted = wanted(row);
            double within = row.read("swing weight within", Limits.WITHIN);
            row.make(() -> new SwingWeightTarget(label, wanted, within)).ifPresent(targets::add);
        } else {
            row.require(!row.has("swing weight within"), "target swing weight", "a reading of the scale, such as D1");
        }
    }

    private SwingWeight wanted(Row row) {
        SwingWeight zero = new SwingWeight(0);
        SwingWeight wanted = zero;
        try {
            wanted = scale.parse(row.cell("target swing weight").text());
        } catch (IllegalArgumentException e) {
            row.problem("target swing weight", "a reading of the scale, such as D1");
        }
        SwingWeight top = new SwingWeight((double) scale.letters().length() * scale.pointsPerLetter());
        row.require(
                wanted.compareTo(zero) >= 0 && wanted.compareTo(top) < 0,
                "target swing weight",
                "a reading between the first letter of the scale and the last");
        return wanted;
    }
}
