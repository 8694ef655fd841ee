package dev.tipwright.fuzz;

import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Area;
import dev.tipwright.core.quantity.BendingStiffness;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Force;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.LineDensity;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.quantity.Speed;
import dev.tipwright.core.quantity.Stress;
import dev.tipwright.core.quantity.Torque;
import dev.tipwright.core.quantity.Volume;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.List;
import java.util.function.Function;

/** Every door that takes a text. */
final class Parsers {

    static final List<Function<String, Object>> ALL = List.of(
            Angle::parse,
            Area::parse,
            BendingStiffness::parse,
            Density::parse,
            FirstMoment::parse,
            Force::parse,
            Frequency::parse,
            Inertia::parse,
            Length::parse,
            LineDensity::parse,
            Mass::parse,
            Speed::parse,
            Stress::parse,
            Torque::parse,
            Volume::parse);

    static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;

    private Parsers() {}
}
