package dev.tipwright.examples.read;

import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.BendingStiffness;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.examples.read.Limit.Kind;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The limits of what is taken for a measurement: least, usually from, usually to, most. They catch a slip of the pen, such as a wrong
 * unit or a lost decimal point; they are no limits of good work. Common practice, from memory, widened until nothing that a bench
 * sees is refused; no published source.
 */
final class Limits {
    static final Kind<Length> LENGTH_KIND = new Kind<>("a length with its unit, such as 2 1/4 in", Length::parse);
    static final Kind<Mass> MASS_KIND = new Kind<>("a mass with its unit, such as 84.1 g", Mass::parse);
    private static final Kind<Angle> ANGLE_KIND = new Kind<>("an angle with its unit, such as 61.5 deg", Angle::parse);
    private static final Kind<Density> DENSITY_KIND =
            new Kind<>("a density with its unit, such as 1.55 g/cm3", Density::parse);
    private static final Kind<FirstMoment> MOMENT_KIND =
            new Kind<>("a moment with its unit, such as 213.5 oz in", FirstMoment::parse);
    private static final Kind<BendingStiffness> STIFFNESS_KIND =
            new Kind<>("a stiffness with its unit, such as 24 N m2", BendingStiffness::parse);
    private static final Kind<Frequency> FREQUENCY_KIND =
            new Kind<>("a frequency with its unit, such as 290 /min", Frequency::parse);
    private static final Kind<Double> POINTS_KIND =
            new Kind<>("points, such as 0.5 point", text -> Double.valueOf(points(text)));
    private static final Kind<Integer> LAYERS_KIND =
            new Kind<>("a number of layers, such as 1 layer", text -> Integer.valueOf(layers(text)));
    private static final Kind<Integer> WHOLE_KIND =
            new Kind<>("whole points, such as 10 points", text -> Integer.valueOf(points(text)));

    // Heads: drivers are lightest, putters heaviest and most upright.
    static final Limit<Mass> HEAD_MASS = mass("100 g", "180 g", "400 g", "600 g", "a bare head");
    static final Limit<Angle> LIE = angle("40 deg", "50 deg", "75 deg", "90 deg", "lie");
    static final Limit<Angle> LOFT = angle("-10 deg", "0 deg", "66 deg", "80 deg", "loft");
    static final Limit<Length> HOSEL = length(".35 in", ".43 in", ".65 in", "1 in", "the outside of a hosel");
    static final Limit<Length> MOUTH_TO_GROUND = length(".5 in", "1 1/2 in", "4 in", "6 in", "hosel mouth to ground");
    static final Limit<Length> HEAD_CENTRE =
            length("-1 in", "1 in", "4 in", "6 in", "centre of mass of a head below its hosel mouth");
    static final Limit<Length> BORE_DIAMETER = length(".25 in", ".33 in", ".45 in", ".75 in", "a bore");
    static final Limit<Length> BORE_DEPTH = length("0 in", "0 in", "3 in", "5 in", "depth in a bore");

    // Shafts: from a bare graphite shaft for a wood to a long steel one.
    static final Limit<Mass> SHAFT_MASS = mass("20 g", "40 g", "140 g", "250 g", "a raw shaft");
    static final Limit<Length> RAW_LENGTH = length("20 in", "32 in", "48 in", "60 in", "a raw shaft");
    static final Limit<Length> SHAFT_BALANCE =
            length("5 in", "14 in", "28 in", "45 in", "balance point of a raw shaft from its tip");
    static final Limit<Length> TIP_DIAMETER = length(".25 in", ".33 in", ".45 in", ".75 in", "a tip over its finish");
    static final Limit<Length> TIP_PLACE = length("0 in", ".5 in", "20 in", "45 in", "a place on a shaft from its tip");
    static final Limit<Length> FINISH = length("0 in", "0 in", ".010 in", ".040 in", "finish, on one side");
    static final Limit<Length> WALL =
            length(".005 in", ".010 in", ".140 in", ".250 in", "wall of a shaft, on one side");
    static final Limit<Length> BUTT = length(".45 in", ".55 in", ".68 in", ".80 in", "the butt of a shaft");
    static final Limit<Length> PARALLEL = length("0 in", "0 in", "16 in", "40 in", "parallel tip section");
    static final Limit<Density> FINISH_DENSITY =
            density("0.5 g/cm3", "0.9 g/cm3", "9 g/cm3", "12 g/cm3", "paint, or plating");
    static final Limit<Density> STRUCTURE_DENSITY =
            density("0.8 g/cm3", "1.3 g/cm3", "8 g/cm3", "12 g/cm3", "graphite composite, or steel");
    static final Limit<Length> TIP_TRIM = length("0 in", "0 in", "5 in", "12 in", "a tip trim");
    static final Limit<Length> CHART_HEIGHT =
            length("-1 in", "0 in", "2 in", "4 in", "bore bottom to ground that a chart assumes");

    static final Limit<BendingStiffness> STIFFNESS =
            new Limit<>(STIFFNESS_KIND, "0.5 N m2", "8 N m2", "150 N m2", "1000 N m2", "bending stiffness of a shaft");
    static final Limit<Frequency> FREQUENCY =
            new Limit<>(FREQUENCY_KIND, "20 /min", "150 /min", "600 /min", "5000 /min", "frequency of a raw shaft");
    static final Limit<Frequency> FREQUENCY_WITHIN =
            new Limit<>(FREQUENCY_KIND, "0 /min", "0.5 /min", "10 /min", "100 /min", "how far off a frequency will do");
    static final Limit<Length> CLAMP = length("0 in", "3 in", "8 in", "15 in", "length of butt held in a clamp");
    static final Limit<Mass> MASS_ON_TIP = mass("0 g", "0 g", "300 g", "1000 g", "mass on the tip of a timed shaft");

    // Grips: a long putter grip is twice as long and heavy as another.
    static final Limit<Mass> GRIP_MASS = mass("10 g", "22 g", "130 g", "250 g", "a grip");
    static final Limit<Length> GRIP_CAP = length("0 in", ".05 in", ".4 in", "1 in", "thickness of a grip cap");
    static final Limit<Length> GRIP_LENGTH = length("4 in", "9 in", "14 in", "25 in", "a grip");
    static final Limit<Length> GRIP_CENTRE =
            length(".5 in", "3 in", "7 in", "20 in", "centre of mass of a grip from its top");

    // Small parts.
    static final Limit<Mass> SMALL_MASS = mass("0.05 g", "0.3 g", "8 g", "30 g", "ferrule, adhesive or tape");
    static final Limit<Length> FERRULE = length(".1 in", ".1 in", "2 in", "4 in", "a ferrule");
    static final Limit<Length> FERRULE_CENTRE = length("0 in", "0 in", "1 in", "4 in", "centre of a ferrule");
    static final Limit<Length> TAPE_CENTRE = length("0 in", "3 in", "8 in", "20 in", "centre of the tape");
    static final Limit<Mass> TIP_WEIGHT = mass("0.1 g", "0.5 g", "16 g", "60 g", "a tip weight");
    static final Limit<Length> STEM = length(".05 in", ".1 in", ".33 in", ".6 in", "the stem of a tip weight");
    static final Limit<Length> FLANGE = length("0 in", "0 in", ".1 in", ".5 in", "the flange of a tip weight");
    static final Limit<Length> WEIGHT_CENTRE =
            length("-1 in", "0 in", "2 in", "6 in", "centre of a tip weight above the tip end");

    static final Limit<Length> TAPE_THICKNESS = length("0 in", ".002 in", ".015 in", ".050 in", "a layer of tape");
    static final Limit<Integer> TAPE_LAYERS =
            new Limit<>(LAYERS_KIND, "0 layers", "0 layers", "6 layers", "20 layers", "tape under a grip");
    static final Limit<Length> GRIP_CORE = length(".4 in", ".56 in", ".64 in", ".9 in", "the core of a grip");
    static final Limit<Length> GRIP_OUTSIDE = length(".5 in", ".9 in", "1.7 in", "2.5 in", "the outside of a grip");

    // The job.
    static final Limit<Angle> TURN =
            angle("0 deg", "0 deg", "359 deg", "359.99 deg", "from the target, by way of away from the player");
    static final Limit<Length> PLAYING_LENGTH = length("18 in", "32 in", "48 in", "60 in", "playing length of a club");
    static final Limit<Length> INSERTION = length(".25 in", ".9 in", "2 in", "5 in", "how far a tip goes in");
    static final Limit<Length> CLEARANCE =
            length("0 in", ".001 in", ".010 in", ".050 in", "clearance for adhesive, on the diameter");
    static final Limit<Length> KERF = length("0 in", ".015 in", ".125 in", ".250 in", "the cut of a saw or a wheel");
    static final Limit<Length> FULCRUM = length("8 in", "12 in", "14 in", "24 in", "fulcrum of a swing weight scale");
    static final Limit<FirstMoment> SCALE_ZERO =
            moment("20 oz in", "150 oz in", "250 oz in", "600 oz in", "moment at which a scale reads D0");
    static final Limit<FirstMoment> SCALE_POINT =
            moment("0.1 oz in", "1 oz in", "3 oz in", "20 oz in", "moment in a point of a scale");
    static final Limit<Integer> LETTER =
            new Limit<>(WHOLE_KIND, "1 point", "10 points", "10 points", "100 points", "points in a letter");
    static final Limit<Double> WITHIN =
            points("0 points", "0.2 points", "2 points", "20 points", "how far off a swing weight will do");
    static final Limit<Length> LENGTH_UNCERTAINTY =
            length("0 in", ".00005 in", ".1 in", ".5 in", "standard uncertainty of a reading");
    static final Limit<Mass> MASS_UNCERTAINTY =
            mass("0 g", "0.001 g", "1 g", "20 g", "standard uncertainty of a reading");

    static final Limit<Angle> ANGLE_UNCERTAINTY =
            angle("0 deg", "0.01 deg", "2 deg", "10 deg", "standard uncertainty of a reading");
    static final Limit<Frequency> FREQUENCY_UNCERTAINTY = new Limit<>(
            FREQUENCY_KIND, "0 /min", "0.05 /min", "5 /min", "50 /min", "standard uncertainty of a reading");

    private static final Pattern LAYERS = Pattern.compile("([0-9]{1,2}) layers?");
    private static final Pattern POINTS = Pattern.compile("([0-9]{1,4}(?:\\.[0-9]{1,6})?|\\.[0-9]{1,6}) points?");

    private Limits() {}

    /** The number before the word. */
    private static String points(String text) {
        Matcher matcher = POINTS.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("text must be a number of points, was \"" + text + "\"");
        }
        return matcher.group(1);
    }

    private static String layers(String text) {
        Matcher matcher = LAYERS.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("text must be a number of layers, was \"" + text + "\"");
        }
        return matcher.group(1);
    }

    private static Limit<Length> length(String least, String usualLeast, String usualMost, String most, String what) {
        return new Limit<>(LENGTH_KIND, least, usualLeast, usualMost, most, what);
    }

    private static Limit<Mass> mass(String least, String usualLeast, String usualMost, String most, String what) {
        return new Limit<>(MASS_KIND, least, usualLeast, usualMost, most, what);
    }

    private static Limit<Angle> angle(String least, String usualLeast, String usualMost, String most, String what) {
        return new Limit<>(ANGLE_KIND, least, usualLeast, usualMost, most, what);
    }

    private static Limit<Density> density(String least, String usualLeast, String usualMost, String most, String what) {
        return new Limit<>(DENSITY_KIND, least, usualLeast, usualMost, most, what);
    }

    private static Limit<FirstMoment> moment(
            String least, String usualLeast, String usualMost, String most, String what) {
        return new Limit<>(MOMENT_KIND, least, usualLeast, usualMost, most, what);
    }

    private static Limit<Double> points(String least, String usualLeast, String usualMost, String most, String what) {
        return new Limit<>(POINTS_KIND, least, usualLeast, usualMost, most, what);
    }
}
