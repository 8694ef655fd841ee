package dev.tipwright.examples.read;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Blank;
import dev.tipwright.core.part.ClubKind;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.Grip;
import dev.tipwright.core.part.GripSize;
import dev.tipwright.core.part.Hand;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.HeadGeometry;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.part.Hosel;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.ShaftFlex;
import dev.tipwright.core.part.ShaftMass;
import dev.tipwright.core.part.ShaftMaterial;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The measured parts: blanks, shafts, grips and heads by their labels. */
final class PartsShelves {

    /** A kind of raw shaft, with what its maker says of its material. */
    record BlankKind(Blank blank, Reading<Density> finish, Reading<Density> structure) {}

    private final Path folder;
    private final Problems problems;
    private final Shelf<BlankKind> blanks;
    private final Shelf<Shaft> shafts;
    private final Shelf<Grip> grips;
    private final Shelf<Head> heads;

    PartsShelves(Path folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
        this.blanks = readBlanks();
        this.shafts = readShafts();
        this.grips = readGrips();
        this.heads = readHeads();
    }

    Shelf<BlankKind> blanks() {
        return blanks;
    }

    Shelf<Shaft> shafts() {
        return shafts;
    }

    Shelf<Grip> grips() {
        return grips;
    }

    Shelf<Head> heads() {
        return heads;
    }

    private Sheet sheet(Table table) {
        return Sheet.read(folder, table, problems);
    }

    private Shelf<BlankKind> readBlanks() {
        Sheet sheet = sheet(Table.BLANKS);
        Shelf<BlankKind> shelf = new Shelf<>(sheet);
        for (Row row : sheet.rows()) {
            String label = row.label("blank");
            ShaftMaterial material =
                    row.choice("material", List.of("graphite", "steel")).equals("steel")
                            ? ShaftMaterial.STEEL
                            : ShaftMaterial.COMPOSITE;
            Length parallel = row.read("parallel tip", Limits.PARALLEL);
            Reading<Density> finish = reading(row.readIfAny("density of finish", Limits.FINISH_DENSITY));
            Reading<Density> structure = reading(row.readIfAny("density of structure", Limits.STRUCTURE_DENSITY));
            shelf.put(
                    row,
                    "blank",
                    row.make(() -> new BlankKind(new Blank(label, parallel, material), finish, structure)));
        }
        return shelf;
    }

    private static <Q> Reading<Q> reading(Optional<Q> value) {
        return value.map(Reading::measured).orElse(Reading.unknown("the shaft's maker, or cut up an offcut"));
    }

    private Shelf<Shaft> readShafts() {
        Sheet sheet = sheet(Table.SHAFTS);
        Sheet tips = sheet(Table.TIPS);
        Map<String, List<Row>> readings = byLabel(tips, "shaft");
        Map<String, List<Row>> flexes = byLabel(sheet(Table.FLEX), "shaft");
        Shelf<Shaft> shelf = new Shelf<>(sheet);
        for (Row row : sheet.rows()) {
            String label = row.cell("shaft").text();
            List<Row> tip = readings.getOrDefault(label, List.of());
            List<Row> flex = flexes.getOrDefault(label, List.of());
            shelf.put(row, "shaft", shaft(row, tip, flex, tips.whole()));
        }
        if (sheet.whole()) {
            readings.values().forEach(rows -> shelf.take(rows.get(0), "shaft"));
            flexes.values().forEach(rows -> shelf.take(rows.get(0), "shaft"));
        }
        return shelf;
    }

    private Optional<Shaft> shaft(Row row, List<Row> tip, List<Row> bends, boolean allTips) {
        String label = row.label("shaft");
        Optional<BlankKind> kind = blanks.take(row, "blank");
        Length raw = row.read("raw length", Limits.RAW_LENGTH);
        Mass mass = row.read("mass", Limits.SHAFT_MASS);
        Length balance = row.read("balance from tip", Limits.SHAFT_BALANCE);
        Length diameter = row.read("tip diameter", Limits.TIP_DIAMETER);
        Optional<Length> finish = row.readIfAny("finish", Limits.FINISH);
        Optional<Length> wall = row.readIfAny("wall", Limits.WALL);
        Length butt = row.read("butt diameter", Limits.BUTT);
        row.require(balance.lessThan(raw), "balance from tip", "less than the raw length");
        row.require(
                wall.isEmpty() || wall.get().times(2).lessThan(diameter), "wall", "less than half the tip diameter");
        row.require(
                finish.isEmpty() || wall.isEmpty() || finish.get().lessThan(wall.get()),
                "finish",
                "less than the wall, in which it is included");
        Optional<DiameterProfile> outside = kind.flatMap(
                known -> outside(row, tip, raw, diameter, known.blank().parallelTip(), allTips));
        Optional<Reading<ShaftFlex>> flex = row.sound() ? new FlexReader(bends, raw).flex() : Optional.empty();
        if (kind.isEmpty() || outside.isEmpty() || flex.isEmpty()) {
            return Optional.empty();
        }
        ShaftSection section = new ShaftSection(
                outside.get(),
                butt,
                reading(wall.map(thick ->
                        new Wall(ThicknessProfile.uniform(thick), kind.get().structure()))),
                reading(finish.map(thick ->
                        new Finish(ThicknessProfile.uniform(thick), kind.get().finish()))));
        return row.make(
                () -> new Shaft(label, kind.get().blank(), raw, ShaftMass.of(mass, balance), section, flex.get()));
    }

    /** The same diameter over the parallel tip, and then straight through the readings further up. */
    private static Optional<DiameterProfile> outside(
            Row row, List<Row> tip, Length raw, Length diameter, Length parallel, boolean allTips) {
        boolean tipped = !parallel.equals(Length.ZERO) || !tip.isEmpty();
        row.require(!parallel.moreThan(raw), "raw length", "no less than the parallel tip of its blank");
        row.require(
                tipped || !allTips, "blank", "a parallel tip, or another reading of this tip in " + Table.TIPS.file());
        List<Station> above = new ArrayList<>();
        Length before = parallel;
        for (Row reading : tip) {
            Length place = reading.read("from tip", Limits.TIP_PLACE);
            Length wide = reading.read("diameter", Limits.TIP_DIAMETER);
            reading.require(
                    place.moreThan(before), "from tip", "further up than the reading before, or the parallel tip");
            reading.require(
                    !row.sound() || !place.moreThan(raw), "from tip", "no more than the raw length of the shaft");
            if (reading.sound()) {
                above.add(Station.of(place, wide));
                before = place;
            }
        }
        return tipped && above.size() == tip.size()
                ? row.make(() -> profile(diameter, parallel, above))
                : Optional.empty();
    }

    private static DiameterProfile profile(Length diameter, Length parallel, List<Station> above) {
        List<Station> stations = new ArrayList<>();
        stations.add(Station.of(Length.ZERO, diameter));
        if (!parallel.equals(Length.ZERO)) {
            stations.add(Station.of(parallel, diameter));
        }
        stations.addAll(above);
        return DiameterProfile.of(stations);
    }

    /** Either is of no use without the other. */
    private static Reading<GripSize> gripSize(Row row) {
        Reading<GripSize> unknown = Reading.unknown("caliper the grip, or its maker");
        if (!row.has("core") && !row.has("outside")) {
            return unknown;
        }
        Length core = row.read("core", Limits.GRIP_CORE);
        Length outside = row.read("outside", Limits.GRIP_OUTSIDE);
        row.require(core.lessThan(outside), "outside", "more than the core");
        return row.make(() -> new GripSize(core, outside))
                .map(Reading::measured)
                .orElse(unknown);
    }

    private Shelf<Grip> readGrips() {
        Sheet sheet = sheet(Table.GRIPS);
        Shelf<Grip> shelf = new Shelf<>(sheet);
        for (Row row : sheet.rows()) {
            String label = row.label("grip");
            Mass mass = row.read("mass", Limits.GRIP_MASS);
            Length cap = row.read("cap", Limits.GRIP_CAP);
            Length length = row.read("length", Limits.GRIP_LENGTH);
            Length centre = row.read("centre of mass from top", Limits.GRIP_CENTRE);
            row.require(centre.lessThan(length), "centre of mass from top", "less than the length of the grip");
            Reading<GripSize> size = gripSize(row);
            shelf.put(row, "grip", row.make(() -> new Grip(label, mass, cap, length, centre, size)));
        }
        return shelf;
    }

    private Shelf<Head> readHeads() {
        Sheet sheet = sheet(Table.HEADS);
        Sheet bores = sheet(Table.BORES);
        Map<String, List<Row>> readings = byLabel(bores, "head");
        Shelf<Head> shelf = new Shelf<>(sheet);
        for (Row row : sheet.rows()) {
            List<Row> bore = readings.getOrDefault(row.cell("head").text(), List.of());
            shelf.put(row, "head", head(row, bore, bores.whole()));
        }
        if (sheet.whole()) {
            readings.values().forEach(rows -> shelf.take(rows.get(0), "head"));
        }
        return shelf;
    }

    private static Optional<Head> head(Row row, List<Row> bore, boolean allBores) {
        String label = row.label("head");
        ClubKind kind = row.choice("kind", ClubKind.class);
        Hand hand = row.choice("hand", Hand.class);
        BoreEnd end =
                row.choice("bore end", List.of("blind", "through")).equals("through") ? BoreEnd.THROUGH : BoreEnd.FLAT;
        Mass mass = row.read("mass", Limits.HEAD_MASS);
        Angle lie = row.read("lie", Limits.LIE);
        Angle loft = row.read("loft", Limits.LOFT);
        Length hosel = row.read("hosel outside", Limits.HOSEL);
        Length mouthToGround = row.read("mouth to ground", Limits.MOUTH_TO_GROUND);
        Optional<Length> centre = row.readIfAny("centre of mass from mouth", Limits.HEAD_CENTRE);
        if (bore.isEmpty()) {
            row.require(!allBores, "head", "a head whose bore is in " + Table.BORES.file());
            return Optional.empty();
        }
        Optional<Bore> made = new BoreReader(bore, row.sound() ? Optional.of(hosel) : Optional.empty()).bore(end);
        if (made.isEmpty()) {
            return Optional.empty();
        }
        row.require(
                made.get().depth().lessThan(mouthToGround),
                "mouth to ground",
                "more than the depth of the bore, "
                        + bore.get(bore.size() - 1).cell("depth").text());
        return row.make(() -> new Head(
                label,
                kind,
                hand,
                HeadMass.of(mass)
                        .withCentre(centre.map(along -> Reading.measured(new HeadCentre(along, Length.ZERO)))
                                .orElse(HeadMass.of(mass).centre())),
                HeadGeometry.of(lie, loft, mouthToGround),
                made.get(),
                Hosel.of(hosel)));
    }

    private static Map<String, List<Row>> byLabel(Sheet sheet, String column) {
        Map<String, List<Row>> rows = new LinkedHashMap<>();
        for (Row row : sheet.rows()) {
            rows.computeIfAbsent(row.cell(column).text(), label -> new ArrayList<>())
                    .add(row);
        }
        return rows;
    }
}
