package dev.tipwright.fitcheck;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Torque;
import dev.tipwright.fitcheck.bond.Bond;
import dev.tipwright.fitcheck.insert.Clearance;
import dev.tipwright.fitcheck.insert.FirstContact;
import dev.tipwright.fitcheck.limits.Lean;
import dev.tipwright.fitcheck.taper.StagedTip;
import java.util.function.ToDoubleFunction;

/**
 * A number that readings of a fit give, for {@link FitBudget}: one of those below, or any other function of them.
 *
 * @param name what it is called
 * @param unit its unit
 * @param value the number from the readings; a pure function
 */
public record FitQuantity(String name, String unit, ToDoubleFunction<FitReadings> value) {

    /** How far the tip goes in before it touches, mm. */
    public static final FitQuantity FIRST_CONTACT = new FitQuantity(
            "first contact",
            "mm",
            r -> FirstContact.of(r.tip(), r.bore()).insertion().millimetres());

    /** Least clearance at the insertion, on the diameter, mm. */
    public static final FitQuantity LEAST_CLEARANCE =
            new FitQuantity("least clearance", "mm", r -> clearance(r).least().millimetres());

    /** Mean clearance at the insertion, on the diameter, mm. */
    public static final FitQuantity MEAN_CLEARANCE =
            new FitQuantity("mean clearance", "mm", r -> clearance(r).mean().millimetres());

    /** How far the shaft can lean, degrees. */
    public static final FitQuantity LEAN = new FitQuantity(
            "lean",
            "deg",
            r -> Lean.of(r.tip(), r.bore(), r.insertion()).angle().degrees());

    /**
     * Checks the values.
     *
     * @param name what it is called
     * @param unit its unit
     * @param value the number from the readings
     */
    public FitQuantity {
        Require.label("name", name);
        Require.label("unit", unit);
        Require.given("value", value);
    }

    private static Clearance clearance(FitReadings readings) {
        return Clearance.of(readings.tip(), readings.bore(), readings.insertion());
    }

    /**
     * The least clearance beside a shim.
     *
     * @param wall its wall, radial
     * @return clearance less twice the wall, on the diameter, mm
     */
    public static FitQuantity besideShim(Length wall) {
        double thick = Require.notNegative("wall", wall).millimetres();
        return new FitQuantity(
                "least clearance beside the shim",
                "mm",
                r -> clearance(r).least().millimetres() - 2 * thick);
    }

    /**
     * The stock that a measured insertion leaves, at most: the insertion of the readings is the one that was measured.
     *
     * @param finished diameter the tip is to have, up from its end
     * @param planned planned insertion
     * @return on the diameter, mm
     */
    public static FitQuantity stockAtDepth(DiameterProfile finished, Length planned) {
        Require.given("finished", finished);
        Require.positive("planned", planned);
        return new FitQuantity(
                "stock at that depth",
                "mm",
                r -> new StagedTip(r.tip(), finished, r.bore(), planned)
                        .stock(r.insertion(), Length.ZERO)
                        .most()
                        .millimetres());
    }

    /**
     * The mean shear of the bond under a torque.
     *
     * @param torque the torque
     * @return MPa
     */
    public static FitQuantity shear(Torque torque) {
        Require.given("torque", torque);
        return new FitQuantity(
                "mean shear under torque",
                "MPa",
                r -> Bond.of(r.tip(), r.bore(), r.insertion()).shear(torque).megapascals());
    }

    /**
     * The wall of a hosel after a cutter: the same at every place of the bore that it cuts.
     *
     * @param outside outside diameter of the hosel
     * @param cut what the cutter cuts, oversize and all
     * @return radial, mm
     */
    public static FitQuantity hoselWall(Length outside, Length cut) {
        Require.positive("outside", outside);
        Require.positive("cut", cut);
        return new FitQuantity("wall of the hosel left", "mm", r -> {
            double widest = Extremes.widest(
                            r.bore().profile(), Length.ZERO, r.bore().depth())
                    .max(cut)
                    .millimetres();
            return (outside.millimetres() - widest) / 2;
        });
    }
}
