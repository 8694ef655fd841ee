package dev.tipwright.examples.read;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.grip.TapeLayers;
import dev.tipwright.core.orient.OrientStep;
import dev.tipwright.core.part.Adhesive;
import dev.tipwright.core.part.Attachment;
import dev.tipwright.core.part.Ferrule;
import dev.tipwright.core.part.GripTape;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.fitcheck.FitTarget;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What holds for the whole job: {@code job.csv}, whose lines are taken together as one row, a column for each setting. */
final class Settings {
    private static final String LETTERS = "ABCDEFG";
    private static final int LETTERS_BELOW_D = 3;
    private static final String AS_THEY_COME = "as they come";
    private static final String BY_SWING_WEIGHT = "by swing weight";
    private static final String ONE = "one";
    private static final String TWO = "two";
    static final List<String> KNOWN = List.of(
            "wanted clearance",
            "kerf",
            "least insertion",
            "least structural wall",
            "ferrule mass",
            "ferrule bore",
            "ferrule length",
            "ferrule centre above mouth",
            "adhesive mass",
            "adhesive centre",
            "tape mass",
            "tape centre from top",
            "tape layers",
            "tape thickness",
            "orientation mark",
            "orientation turn",
            "shafts to heads",
            "tip weights in one tip",
            "scale fulcrum",
            "scale zero D0",
            "scale moment in a point",
            "scale points in a letter",
            "clamp",
            "frequency within");

    private final Sheet sheet;
    private final Problems problems;
    private final Map<String, Cell> cells = new LinkedHashMap<>();

    private Settings(Sheet sheet, Problems problems) {
        this.sheet = sheet;
        this.problems = problems;
    }

    static Settings read(Path folder, Problems problems) {
        Settings settings = new Settings(Sheet.read(folder, Table.JOB, problems), problems);
        settings.sheet.rows().forEach(settings::add);
        if (settings.sheet.whole()) {
            KNOWN.forEach(name -> settings.cells.putIfAbsent(name, new Cell(Table.JOB.file(), 0, name, "")));
        }
        return settings;
    }

    private void add(Row row) {
        String name = row.choice("setting", KNOWN);
        if (cells.containsKey(name)) {
            row.require(false, "setting", "each setting once");
        } else if (row.sound()) {
            Cell value = row.cell("value");
            cells.put(name, new Cell(value.file(), value.line(), name, value.text()));
        }
    }

    /** The settings as a row of their own for each thing they describe, so that a problem with one hides none of another. */
    private Row row() {
        return new Row(new Cell(Table.JOB.file(), 0, "", ""), cells, problems);
    }

    Length kerf() {
        return row().read("kerf", Limits.KERF);
    }

    FitTarget fit() {
        Row row = row();
        return new FitTarget(
                row.read("wanted clearance", Limits.CLEARANCE),
                row.readIfAny("least insertion", Limits.INSERTION)
                        .map(Reading::measured)
                        .orElse(Reading.unknown("the makers of head and adhesive")),
                row.readIfAny("least structural wall", Limits.WALL)
                        .map(Reading::measured)
                        .orElse(Reading.unknown("the shaft's maker")));
    }

    /** The scale is given by its reading D0; the library counts from A0, three letters below. */
    Optional<SwingWeightScale> scale() {
        Row row = row();
        Length fulcrum = row.read("scale fulcrum", Limits.FULCRUM);
        FirstMoment zero = row.read("scale zero D0", Limits.SCALE_ZERO);
        FirstMoment point = row.read("scale moment in a point", Limits.SCALE_POINT);
        int letter = row.read("scale points in a letter", Limits.LETTER);
        return row.make(() -> new SwingWeightScale(
                fulcrum, zero.minus(point.scaledBy((double) LETTERS_BELOW_D * letter)), point, LETTERS, letter));
    }

    /** How finished clubs are timed; where nothing is said they are not. */
    Optional<Timing> timing() {
        if (!anyOf("clamp") && !anyOf("frequency within")) {
            return Optional.empty();
        }
        Row row = row();
        Length clamp = row.read("clamp", Limits.CLAMP);
        Frequency within = row.read("frequency within", Limits.FREQUENCY_WITHIN);
        return row.make(() -> new Timing(clamp, within));
    }

    /** What goes on every club. A ferrule, an adhesive or a tape of which nothing is said is not used. */
    List<Attachment> attached() {
        List<Attachment> attached = new ArrayList<>();
        if (anyOf("ferrule ")) {
            ferrule().ifPresent(attached::add);
        }
        if (anyOf("adhesive ")) {
            Row row = row();
            Mass mass = row.read("adhesive mass", Limits.SMALL_MASS);
            row.choice("adhesive centre", List.of("half the insertion"));
            row.make(() -> new Adhesive("adhesive", mass)).ifPresent(attached::add);
        }
        if (anyOf("tape mass") || anyOf("tape centre")) {
            Row row = row();
            Mass mass = row.read("tape mass", Limits.SMALL_MASS);
            Length centre = row.read("tape centre from top", Limits.TAPE_CENTRE);
            row.make(() -> new GripTape("tape", mass, centre)).ifPresent(attached::add);
        }
        return attached;
    }

    /** The tape that widens the butt under each grip; its mass is that of the tape as a whole. */
    Optional<TapeLayers> tapeLayers() {
        if (!anyOf("tape layers") && !anyOf("tape thickness")) {
            return Optional.empty();
        }
        Row row = row();
        int layers = row.read("tape layers", Limits.TAPE_LAYERS);
        Length thickness = row.read("tape thickness", Limits.TAPE_THICKNESS);
        return row.make(() -> new TapeLayers(layers, thickness, Mass.ZERO));
    }

    /** How every shaft is turned; empty if it does not matter. */
    Optional<OrientStep> orientation() {
        if (!anyOf("orientation ")) {
            return Optional.empty();
        }
        Row row = row();
        String mark = row.label("orientation mark");
        Angle turn = row.read("orientation turn", Limits.TURN);
        return row.make(() -> OrientStep.to(mark, turn));
    }

    /** Whether shafts may change places between heads of one blank. */
    boolean sharesShafts() {
        Row row = row();
        return row.has("shafts to heads")
                && row.choice("shafts to heads", List.of(AS_THEY_COME, BY_SWING_WEIGHT))
                        .equals(BY_SWING_WEIGHT);
    }

    /** How many tip weights of the stock may go into one tip; one where nothing is said. */
    int weightsInOneTip() {
        Row row = row();
        return row.has("tip weights in one tip")
                        && row.choice("tip weights in one tip", List.of(ONE, TWO))
                                .equals(TWO)
                ? 2
                : 1;
    }

    private Optional<Ferrule> ferrule() {
        Row row = row();
        Mass mass = row.read("ferrule mass", Limits.SMALL_MASS);
        Length bore = row.read("ferrule bore", Limits.TIP_DIAMETER);
        Length length = row.read("ferrule length", Limits.FERRULE);
        Length centre = row.read("ferrule centre above mouth", Limits.FERRULE_CENTRE);
        row.require(!centre.moreThan(length), "ferrule centre above mouth", "no more than the length of the ferrule");
        return row.make(() -> new Ferrule("ferrule", mass, bore, length, centre));
    }

    private boolean anyOf(String start) {
        return cells.values().stream().anyMatch(cell -> cell.column().startsWith(start) && !cell.blank());
    }
}
