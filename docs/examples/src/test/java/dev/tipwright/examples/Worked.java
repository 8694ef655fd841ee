package dev.tipwright.examples;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.fitcheck.TipFit;
import dev.tipwright.fitcheck.taper.Stage;
import dev.tipwright.swingweight.ClubBalance;
import dev.tipwright.swingweight.SwingWeightCode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What may stand in the printed block of one club, worked without the library: cells of the scenario's files, independently
 * computed values, and sums of those as one does them on paper. Two things have no such value and are the library's own: the moment
 * of inertia, and what a heavy shaft is worth.
 */
final class Worked {

    /** Which way a number may be rounded. */
    enum Way {
        NEAREST,
        DOWN,
        UP
    }

    /**
     * A value, how far from the truth its last digit leaves it, which way it is to be rounded, and to how many decimals it was
     * given; -1 if it is a sum or a reading of the bench.
     */
    record Value(String name, String unit, double value, double give, Way way, int decimals) {}

    /** A step of the search for how far a tip goes in. */
    private static final double SEARCH = 0.0002;

    private static final double OUNCE = 28.349523125;

    private final Path folder;
    private final String club;
    private final Map<String, String> parts = new LinkedHashMap<>();
    private final List<double[]> bore = new ArrayList<>();
    final List<Value> values = new ArrayList<>();
    final List<String> readings = new ArrayList<>();

    private Worked(Path folder, String club) {
        this.folder = folder;
        this.club = club;
    }

    static Worked of(Scenario scenario, ClubPlan plan, List<Expected> expected) throws IOException {
        Worked worked = new Worked(scenario.folder(), plan.label());
        worked.cells();
        worked.expected(expected);
        worked.surplus(expected);
        worked.sums();
        worked.weight(plan);
        worked.stages(plan);
        worked.doubts(plan);
        worked.computed(plan);
        return worked;
    }

    Stream<Value> named(String name) {
        return values.stream().filter(value -> value.name().equals(name));
    }

    private double get(String name) {
        return named(name)
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing is worked out for " + name))
                .value();
    }

    private boolean has(String name) {
        return named(name).findFirst().isPresent();
    }

    private void put(String name, String unit, double value, double give, Way way) {
        values.add(new Value(name, unit, value, give, way, -1));
    }

    private void length(String name, double inches, Way way) {
        put(name, "in", inches, 0, way);
    }

    private void cells() throws IOException {
        Map<String, String> chosen = row("clubs.csv", "club", club);
        parts.putAll(chosen);
        parts.putAll(row("heads.csv", "head", chosen.get("head")));
        parts.putAll(prefixed("shaft ", row("shafts.csv", "shaft", chosen.get("shaft"))));
        parts.putAll(prefixed("grip ", row("grips.csv", "grip", chosen.get("grip"))));
        parts.putAll(prefixed("chart ", row("chart.csv", "club", club)));
        for (Map<String, String> row : rows("bores.csv")) {
            if (row.get("head").equals(chosen.get("head"))) {
                bore.add(new double[] {inches(row.get("depth")), inches(row.get("diameter"))});
            }
        }
        rows("job.csv").forEach(row -> parts.put("job " + row.get("setting"), row.get("value")));
        length("raw", inches(parts.get("shaft raw length")), Way.NEAREST);
        length("playing length", inches(parts.get("target length")), Way.NEAREST);
        // By the 60 degree plane, the axis half a hosel over the level plane: L - h cot 60.
        double byPlane = inches(parts.get("target length")) - inches(parts.get("hosel outside")) / 2 / Math.sqrt(3);
        length("length by the Rules", byPlane, Way.NEAREST);
        // R&A and USGA, Equipment Rules, Part 2.
        length("widest grip", 1.75, Way.NEAREST);
        length("cap", inches(parts.get("grip cap")), Way.NEAREST);
        length("kerf", inches(parts.get("job kerf")), Way.NEAREST);
        if (parts.containsKey("job clamp")) {
            length("clamp", inches(parts.get("job clamp")), Way.NEAREST);
            double within = Double.parseDouble(parts.get("job frequency within").replace(" /min", ""));
            put("frequency within", "/min", within, 0, Way.NEAREST);
        }
        length("chart", inches(parts.get("chart tip trim")), Way.NEAREST);
        length("chart's height", inches(parts.get("chart bore bottom to ground")), Way.NEAREST);
        length("wanted clearance", inches(parts.get("job wanted clearance")), Way.NEAREST);
        length("least insertion", inches(parts.get("job least insertion")), Way.NEAREST);
        length("ferrule bore", inches(parts.get("job ferrule bore")), Way.NEAREST);
        double depth = bore.get(bore.size() - 1)[0];
        String insertion = parts.get("insertion");
        length("insertion", insertion.isBlank() ? depth : inches(insertion), Way.NEAREST);
        length("chamfer", bore.get(1)[0], Way.NEAREST);
        put("swing weight within", "", number(parts.get("swing weight within")), 0, Way.NEAREST);
        readings.add(parts.get("target swing weight") + ".0");
    }

    private void expected(List<Expected> rows) {
        for (Expected row : rows) {
            if (row.club().equals(club) && row.unit().equals("letter scale")) {
                readings.add(row.value());
            } else if (row.club().equals(club) && !row.quantity().matches("contribution.*|standard.*")) {
                double scale = row.unit().equals("0.001 in") ? 1e-3 : 1;
                String unit = row.unit().equals("0.001 in") ? "in" : row.unit();
                Way way = switch (row.quantity()) {
                    case "tip trim", "butt trim" -> Way.DOWN;
                    case "cut length" -> Way.UP;
                    default -> Way.NEAREST;
                };
                // Lengths of five decimals are whole thirty-seconds; the others are rounded in their last digit.
                boolean exact = way != Way.NEAREST || row.quantity().matches("bore bottom to ground|tip offcut");
                double give = exact ? 0 : 0.5 * scale * Math.pow(10, -row.decimals());
                double value = scale * Double.parseDouble(row.value());
                int decimals = row.decimals() + (scale == 1 ? 0 : 3);
                values.add(new Value(row.quantity(), unit, value, give, way, decimals));
            }
        }
    }

    /** A club is held against the middle of its blank, which is another club's stock. */
    private void surplus(List<Expected> rows) {
        for (Expected row : rows) {
            if (row.quantity().equals("stock at the tip end")
                    && !row.club().equals(club)
                    && has("stock at the tip end")) {
                double more = get("stock at the tip end") - 1e-3 * Double.parseDouble(row.value());
                put("more stock than club " + row.club(), "in", more, 1e-4, Way.NEAREST);
            }
        }
    }

    private void sums() throws IOException {
        named("off the line")
                .toList()
                .forEach(off -> values.add(new Value(
                        "distance from the line",
                        off.unit(),
                        Math.abs(off.value()),
                        off.give(),
                        off.way(),
                        off.decimals())));
        double i = get("insertion");
        double trim = get("tip trim");
        double cut = get("cut length");
        double raw = get("raw");
        length("bonded below the chamfer", i - get("chamfer"), Way.NEAREST);
        length("tip mark from the butt", raw - trim, Way.UP);
        length("butt mark from the tip", raw - get("butt trim"), Way.UP);
        length("above the mouth", cut - i, Way.UP);
        length("butt offcut", get("butt trim") - get("kerf"), Way.NEAREST);
        length("end of the tip to ground", inches(parts.get("mouth to ground")) - i, Way.NEAREST);
        length("correction", inches(parts.get("mouth to ground")) - i - get("chart's height"), Way.NEAREST);
        if (!has("tip offcut")) {
            length("tip offcut", 0, Way.NEAREST);
        }
        double finish = inches(parts.get("shaft finish"));
        double over = tip(trim);
        length("bare tip", over - 2 * finish, Way.UP);
        length("inside of the tip", over - 2 * inches(parts.get("shaft wall")), Way.NEAREST);
        double top = i + inches(parts.get("job ferrule length"));
        length("strip to", top, Way.NEAREST);
        length("over the finish under the ferrule", tip(trim + top), Way.NEAREST);
        length("bare under the ferrule", tip(trim + top) - 2 * finish, Way.NEAREST);
        length("finish on the diameter", 2 * finish, Way.NEAREST);
        if (!has("of it structure")) {
            length("of it structure", 0, Way.NEAREST);
            length("stock at the tip end", 2 * finish, Way.NEAREST);
            length("structural wall left at the tip end", inches(parts.get("shaft wall")) - finish, Way.NEAREST);
            put("second moment left at the tip end", "1", 1, 0, Way.NEAREST);
            length("least clearance of the finished tip", get("least clearance"), Way.NEAREST);
        } else {
            length("finish to come off", get("stock at the tip end") - get("of it structure"), Way.NEAREST);
            length("least clearance of the finished tip", get("wanted clearance"), Way.NEAREST);
            length("structure to come off", over - 2 * finish - finished(i), Way.DOWN);
            for (double[] station : bore) {
                length("station", i - station[0], Way.NEAREST);
                length("finished", finished(station[0]), Way.UP);
            }
        }
    }

    /** The bore at one of its stations less the wanted clearance. */
    private double finished(double depth) {
        return bore.stream().filter(station -> station[0] == depth).findFirst().orElseThrow()[1]
                - get("wanted clearance");
    }

    /** Parallel, or straight through the second reading of a tapered tip. */
    private double tip(double fromRawTip) throws IOException {
        double first = inches(parts.get("shaft tip diameter"));
        if (!folder.resolve("tips.csv").toFile().exists()) {
            return first;
        }
        for (Map<String, String> row : rows("tips.csv")) {
            if (row.get("shaft").equals(parts.get("shaft"))) {
                return first + (inches(row.get("diameter")) - first) / inches(row.get("from tip")) * fromRawTip;
            }
        }
        return first;
    }

    /** A weight in the tip adds its moment, a quarter inch above the end of the tip, and 1.75 oz in make a point. */
    private void weight(ClubPlan plan) throws IOException {
        double points = get("points from D0");
        double give = named("points from D0").findFirst().orElseThrow().give();
        double off = points - pointsFromD0(parts.get("target swing weight"));
        put("off", "", Math.abs(off), give, Way.NEAREST);
        if (plan.report(ClubBalance.class).chosen().isEmpty()) {
            return;
        }
        String label = plan.report(ClubBalance.class).chosen().get(0).label();
        double grams = number(row("tip-weights.csv", "tip weight", label).get("mass"));
        double place = get("cap") + get("cut length") - 0.25;
        double perGram = (place - 14) / OUNCE / 1.75;
        put("off with the weight", "", Math.abs(off + grams * perGram), give, Way.NEAREST);
        put("exact weight", "g", Math.abs(off) / perGram, give / perGram, Way.NEAREST);
        put("chosen weight", "g", grams, 0, Way.NEAREST);
        double total = get("total mass");
        double balance = get("balance from the top");
        double massGive = named("total mass").findFirst().orElseThrow().give();
        double balanceGive =
                named("balance from the top").findFirst().orElseThrow().give();
        values.removeIf(value -> value.name().matches("total mass|balance from the top"));
        put("total mass", "g", total + grams, massGive, Way.NEAREST);
        put(
                "balance from the top",
                "in",
                (total * balance + grams * place) / (total + grams),
                balanceGive,
                Way.NEAREST);
        readings.clear();
        readings.add(parts.get("target swing weight") + ".0");
        readings.add(letters(points + grams * perGram));
    }

    private static double pointsFromD0(String reading) {
        return 10 * (reading.charAt(0) - 'D') + Double.parseDouble(reading.substring(1));
    }

    private static String letters(double points) {
        long tenths = Math.round(10 * points) + 300;
        return "" + "ABCDEFG".charAt((int) (tenths / 100)) + tenths % 100 / 10 + "." + tenths % 10;
    }

    /**
     * A tip with some stock still on it is the finished one so much wider, or the bare one where that is less. How far it goes in is
     * searched for station by station: it stops where any of it would be wider than the bore around it. Which stops there are is
     * the plan's choice.
     */
    private void stages(ClubPlan plan) throws IOException {
        if (get("of it structure") == 0) {
            return;
        }
        double i = get("insertion");
        double bare = get("bare tip");
        for (Stage stage : plan.report(TipFit.class).stages().stages()) {
            double stock = stage.stock().inches();
            length("stock at a stop", stock, Way.NEAREST);
            boolean whole = enters(i, i, stock, bare);
            double in = whole ? i : 0;
            double stuck = i;
            while (stuck - in > SEARCH / 4) {
                double middle = (in + stuck) / 2;
                if (enters(middle, i, stock, bare)) {
                    in = middle;
                } else {
                    stuck = middle;
                }
            }
            put("insertion at a stop", "in", in, SEARCH, Way.NEAREST);
        }
    }

    private boolean enters(double in, double whole, double stock, double bare) {
        for (double z = 0; z <= in; z += SEARCH) {
            double tip = Math.min(bare, diameter(whole - z) - get("wanted clearance") + stock);
            if (tip > diameter(in - z) + 1e-12) {
                return false;
            }
        }
        return true;
    }

    private double diameter(double depth) {
        for (int k = 1; k < bore.size(); k++) {
            double[] above = bore.get(k - 1);
            double[] below = bore.get(k);
            if (depth <= below[0]) {
                return above[1] + (below[1] - above[1]) * (depth - above[0]) / (below[0] - above[0]);
            }
        }
        return bore.get(bore.size() - 1)[1];
    }

    /** How sure the numbers are has a test of its own; here the independent values count where there are any. */
    private void doubts(ClubPlan plan) {
        boolean independent = has("expanded uncertainty, coverage factor 2");
        for (Finding finding : plan.findings()) {
            boolean swing = finding.code() instanceof SwingWeightCode;
            for (Term term : finding.terms()) {
                String number = term.number(Units.INCH, 9);
                boolean doubt = term.symbol().matches("[Uu]|share|low|high") && number.matches("-?[0-9.]+");
                if (doubt && !(swing && independent)) {
                    put("doubt", term.unit(Units.INCH), Double.parseDouble(number), 0, Way.NEAREST);
                }
            }
        }
        if (independent) {
            double share = get("share of centre of mass in the variance");
            put("share in percent", "", 100 * share, 0.005, Way.NEAREST);
        }
    }

    private void computed(ClubPlan plan) {
        double inertia =
                plan.report(ClubBalance.class).after().inertiaAboutButt().kilogramSquareCentimetres();
        put("inertia about the butt", "kg cm2", inertia, 0, Way.NEAREST);
        plan.findings().stream()
                .filter(finding -> finding.code() == SwingWeightCode.SHAFT_STANDS_OUT)
                .forEach(finding -> finding.terms().forEach(term -> {
                    String number = term.number(Units.INCH, 9);
                    if (number.matches("[0-9.]+")) {
                        String unit = term.unit(Units.INCH);
                        put("a heavy shaft's worth", unit, Double.parseDouble(number), 0, Way.NEAREST);
                    }
                }));
    }

    private static Map<String, String> prefixed(String prefix, Map<String, String> row) {
        Map<String, String> renamed = new LinkedHashMap<>();
        row.forEach((column, cell) -> renamed.put(prefix + column, cell));
        return renamed;
    }

    private Map<String, String> row(String file, String column, String label) throws IOException {
        return rows(file).stream()
                .filter(row -> row.get(column).equals(label))
                .findFirst()
                .orElseThrow(() -> new AssertionError(file + " has no " + label));
    }

    private List<Map<String, String>> rows(String file) throws IOException {
        List<Map<String, String>> rows = new ArrayList<>();
        try (CsvReader<NamedCsvRecord> reader =
                CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofNamedCsvRecord(folder.resolve(file))) {
            reader.forEach(row -> rows.add(row.getFieldsAsMap()));
        }
        return rows;
    }

    private static double number(String cell) {
        return Double.parseDouble(cell.split(" ", -1)[0]);
    }

    /** {@code 39 1/32 in}, {@code 1/2 in}, {@code .3735 in}. */
    private static double inches(String cell) {
        double sum = 0;
        for (String part : cell.replace(" in", "").split(" ", -1)) {
            String[] fraction = part.split("/", -1);
            sum += Double.parseDouble(fraction[0]) / (fraction.length == 2 ? Double.parseDouble(fraction[1]) : 1);
        }
        return sum;
    }
}
