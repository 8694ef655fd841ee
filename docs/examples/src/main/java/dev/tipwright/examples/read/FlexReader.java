package dev.tipwright.examples.read;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.ShaftFlex;
import dev.tipwright.core.part.StiffnessShape;
import dev.tipwright.core.quantity.BendingStiffness;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How one shaft bends: its stiffness in the first of its lines, and in each a frequency timed on it, if there is one. */
final class FlexReader {
    private final List<Row> rows;
    private final Length raw;

    FlexReader(List<Row> rows, Length raw) {
        this.rows = rows;
        this.raw = raw;
    }

    /** Unknown where nothing is said; empty where something is wrong. */
    Optional<Reading<ShaftFlex>> flex() {
        if (rows.isEmpty()) {
            return Optional.of(Reading.unknown("time the shaft in a clamp"));
        }
        Row first = rows.get(0);
        BendingStiffness tip = first.read("stiffness at tip", Limits.STIFFNESS);
        BendingStiffness butt = first.read("stiffness at butt", Limits.STIFFNESS);
        List<ShaftFlex.Timed> timed = new ArrayList<>();
        for (Row row : rows) {
            boolean more = row != first;
            row.require(!more || !row.has("stiffness at tip"), "stiffness at tip", "nothing but in the first line");
            row.require(!more || !row.has("stiffness at butt"), "stiffness at butt", "nothing but in the first line");
            if (more || row.has("frequency")) {
                timed(row).ifPresent(timed::add);
            }
        }
        boolean sound = rows.stream().allMatch(Row::sound);
        return sound ? first.make(() -> flex(tip, butt, timed)) : Optional.empty();
    }

    private Optional<ShaftFlex.Timed> timed(Row row) {
        Frequency frequency = row.read("frequency", Limits.FREQUENCY);
        Length clamp = row.read("clamp", Limits.CLAMP);
        Mass mass = row.read("mass on tip", Limits.MASS_ON_TIP);
        row.require(clamp.lessThan(raw), "clamp", "less than the raw length of the shaft");
        return row.make(() -> new ShaftFlex.Timed(frequency, clamp, mass));
    }

    private Reading<ShaftFlex> flex(BendingStiffness tip, BendingStiffness butt, List<ShaftFlex.Timed> timed) {
        StiffnessShape shape = new StiffnessShape.AtStations(
                List.of(new StiffnessShape.Knot(Length.ZERO, tip), new StiffnessShape.Knot(raw, butt)));
        return Reading.measured(new ShaftFlex(Reading.measured(shape), timed));
    }
}
