package dev.tipwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlan;
import dev.tipwright.core.plan.PlanText;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.examples.Worked.Value;
import dev.tipwright.examples.Worked.Way;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The printed plans are files under {@code plans}. One test holds the plan to its file, another traces every number of the file to a
 * cell, an independent value or a sum of those, so that the file is more than a recording. With {@code -Dplans.write=true} the files are
 * written anew, to be read before they are committed.
 */
class PrintedPlanTest {

    private static final Map<String, List<String>> EXPECTED = Map.of(
            "practice-set",
            List.of(
                    "practice-set.csv",
                    "practice-set-tip-weight.csv",
                    "practice-set-uncertainty.csv",
                    "practice-set-frequency.csv"),
            "wedges-and-wood",
            List.of("wedges-and-wood.csv"));

    /** Rows of a club's table by the names of the expected values. */
    private static final Map<String, String> ROWS = Map.ofEntries(
            Map.entry("bore bottom to ground", "bore bottom to ground"),
            Map.entry("tip trim", "tip trim"),
            Map.entry("tip offcut", "tip offcut"),
            Map.entry("insertion", "insertion"),
            Map.entry("bonded below the chamfer", "bonded below the chamfer"),
            Map.entry("first contact, untouched", "first contact untouched"),
            Map.entry("first contact, finish off", "first contact with the finish off"),
            Map.entry("stock at the end of the tip", "stock at the tip end"),
            Map.entry("of it structure", "of it structure"),
            Map.entry("taken off", "volume removed"),
            Map.entry("least clearance of the finished tip", "least clearance of the finished tip"),
            Map.entry("wall of structure left", "structural wall left at the tip end"),
            Map.entry("stiffness left", "second moment left at the tip end"),
            Map.entry("playing length", "playing length"),
            Map.entry("cut length", "cut length"),
            Map.entry("butt trim", "butt trim"),
            Map.entry("total mass", "total mass"),
            Map.entry("balance from the top", "balance from the top"),
            Map.entry("inertia about the butt", "inertia about the butt"),
            Map.entry("frequency without grip", "frequency without grip"),
            Map.entry("length by the Rules", "length by the Rules"));

    private static final Pattern NUMBER = Pattern.compile("(?<![A-Za-z0-9./])(-?[0-9]+(?:\\.[0-9]+)?)"
            + "(?: (in|mm3|mm|g|kg cm2|/min)\\b)?(?: \\((near |over |under )?([0-9/ ]+)\\))?");

    private static final Pattern READING = Pattern.compile("\\b[A-G][0-9]\\.[0-9]\\b");

    private static final Path FOLDER = Path.of("src/test/resources/plans");

    private static String file(String name) throws IOException {
        return Files.readString(FOLDER.resolve(name));
    }

    /** The page of a file, which is written anew first where that was asked for. */
    static void holds(String name, String page) throws IOException {
        if (Boolean.getBoolean("plans.write")) {
            Files.writeString(FOLDER.resolve(name), page);
        }
        assertThat(page).isEqualTo(file(name));
    }

    @ParameterizedTest
    @ValueSource(strings = {"practice-set", "wedges-and-wood"})
    void thePlanIsThatOfItsFile(String scenario) throws IOException {
        JobPlan plan = Scenario.named(scenario).plan();
        holds(scenario + ".txt", PlanText.plain(plan, Units.INCH));
        holds(scenario + ".md", PlanText.markdown(plan, Units.INCH));
    }

    @ParameterizedTest
    @ValueSource(strings = {"practice-set", "wedges-and-wood"})
    void fitsTheWall(String scenario) throws IOException {
        assertThat(file(scenario + ".txt").lines()).allMatch(line -> line.length() <= 100);
        assertThat(PlanText.plain(Scenario.named(scenario).plan(), Units.METRIC).lines())
                .allMatch(line -> line.length() <= 100);
    }

    @ParameterizedTest
    @ValueSource(strings = {"practice-set", "wedges-and-wood"})
    void everyNumberIsTraced(String scenario) throws IOException {
        SoftAssertions all = new SoftAssertions();
        int traced = trace(scenario, file(scenario + ".txt"), all);
        all.assertAll();
        assertThat(traced).isGreaterThan(300);
    }

    /** In a table, in a sentence, in the order of cutting, a fraction, a reading, and one that is rounded to the unsafe side. */
    @ParameterizedTest
    @CsvSource({
        "0.0792 in                2.013 mm, 0.0793 in                2.013 mm",
        "Mark 0.500 in (1/2) from the raw tip and, Mark 0.501 in (1/2) from the raw tip and",
        "for club 8: 1.531 in (1 17/32), for club 8: 1.532 in (1 17/32)",
        "an offcut of 0.438 in (7/16), an offcut of 0.438 in (27/64)",
        "should read C9.0, should read C9.1",
        "time the club: 280.1 /min is, time the club: 280.2 /min is",
        "Mark 1.593 in (1 19/32) from the raw tip and, Mark 1.594 in (1 19/32) from the raw tip and"
    })
    void aNumberThatIsOffIsSeen(String right, String wrong) throws IOException {
        String page = file("practice-set.txt");
        assertThat(page).contains(right);
        SoftAssertions all = new SoftAssertions();
        trace("practice-set", page.replace(right, wrong), all);
        assertThat(all.errorsCollected()).isNotEmpty();
    }

    private static int trace(String scenario, String page, SoftAssertions all) throws IOException {
        List<Expected> expected = new ArrayList<>();
        for (String table : EXPECTED.get(scenario)) {
            expected.addAll(Expected.in(table));
        }
        int traced = 0;
        List<ClubPlan> clubs = Scenario.named(scenario).plan().clubs();
        for (int column = 0; column < clubs.size(); column++) {
            Worked worked = Worked.of(Scenario.named(scenario), clubs.get(column), expected);
            String label = clubs.get(column).label();
            traced += summary(page, column, clubs.size(), label, worked, all);
            traced += order(page, label, worked, all);
            traced += block(page, label, worked, all);
        }
        return traced;
    }

    /** The column of a club in the table of the set. */
    private static int summary(String page, int column, int columns, String label, Worked worked, SoftAssertions all) {
        int traced = 0;
        String table = page.substring(page.indexOf("THE SET"), page.indexOf("THE ORDER OF CUTTING"));
        for (String line : table.lines().filter(row -> row.startsWith("  ")).toList()) {
            String[] cells = line.strip().split(" {2,}", -1);
            String[] name = cells[0].split(", (?=[^,]*$)", -1);
            // "3 wood" is one cell; the head of the table needs no tracing.
            if (cells.length != columns + 1 || cells[0].matches("club|worst finding")) {
                continue;
            }
            String cell = cells[column + 1];
            traced++;
            if (cells[0].equals("swing weight")) {
                all.assertThat(worked.readings)
                        .as("%s of club %s", cells[0], label)
                        .contains(cell);
                continue;
            }
            boolean unitless = cells[0].equals("stiffness left");
            String row = unitless ? cells[0] : cells[0].substring(0, cells[0].lastIndexOf(", "));
            String number = cell + (unitless ? "" : " " + name[name.length - 1]);
            all.assertThat(known(number, row, worked))
                    .as("%s of club %s: %s", row, label, number)
                    .isTrue();
        }
        return traced;
    }

    private static int order(String page, String label, Worked worked, SoftAssertions all) {
        String section = unwrapped(page.substring(page.indexOf("THE ORDER OF CUTTING"), page.indexOf("\nCLUB ")));
        Matcher turn = Pattern.compile("for club " + Pattern.quote(label) + ": ([^.]+\\.[0-9]+ in \\([^)]*\\))")
                .matcher(section);
        all.assertThat(turn.find()).as("the turn of club %s", label).isTrue();
        all.assertThat(known(turn.group(1), "tip trim", worked))
                .as("the turn of club %s", label)
                .isTrue();
        return 1;
    }

    /** Rows of the table by their names, sentences by any number known of the club. */
    private static int block(String page, String label, Worked worked, SoftAssertions all) {
        String heading = "\nCLUB " + label.toUpperCase(Locale.ROOT) + "\n";
        String rest = page.substring(page.indexOf(heading) + heading.length());
        int end = Math.max(rest.indexOf("\nCLUB "), -1);
        String block = rest.substring(0, end < 0 ? rest.indexOf("\nCAUTIONS") : end);
        String table = block.substring(block.indexOf("\nNumbers"), block.indexOf("\nAt the bench"));
        int traced = 0;
        for (String line :
                table.lines().filter(row -> row.startsWith("  ")).skip(1).toList()) {
            String[] cells = line.strip().split(" {2,}", -1);
            if (cells[0].equals("swing weight")) {
                all.assertThat(worked.readings)
                        .as("%s of club %s", cells[0], label)
                        .contains(cells[2]);
                continue;
            }
            for (int k = 2; k < cells.length; k++) {
                all.assertThat(known(cells[k], cells[0], worked))
                        .as("%s of club %s: %s", cells[0], label, cells[k])
                        .isTrue();
                traced++;
            }
        }
        String findings = block.substring(block.indexOf("\nFindings"), block.indexOf("\nNumbers"));
        String bench = block.substring(block.indexOf("\nAt the bench"));
        String sentences = unwrapped((findings + bench)
                .replaceAll("(?m)^ +[0-9]+\\. ", " ")
                .replaceAll("Put tip weight [^,]+,", "")
                .replaceAll("Equipment\\s+Rules,\\s+Part\\s+2", "")
                .replaceAll("[0-9]+ of the stock were passed over", ""));
        Matcher reading = READING.matcher(sentences);
        while (reading.find()) {
            all.assertThat(worked.readings).as("club %s", label).contains(reading.group());
            traced++;
        }
        Matcher number = NUMBER.matcher(READING.matcher(sentences).replaceAll(""));
        while (number.find()) {
            String found = number.group();
            all.assertThat(worked.values.stream().anyMatch(value -> stands(found, value)))
                    .as("club %s: %s", label, found)
                    .isTrue();
            traced++;
        }
        return traced;
    }

    private static String unwrapped(String text) {
        return text.replaceAll("\\s+", " ").replace(" (rounded down)", "").replace(" (rounded up)", "");
    }

    private static boolean known(String printed, String row, Worked worked) {
        String name = ROWS.get(row);
        assertThat(name).as("a row of the table without a name: %s", row).isNotNull();
        return worked.named(name).anyMatch(value -> stands(unwrapped(printed), value));
    }

    /** Whether a printed number stands for a value: near enough, and on the right side of it. */
    private static boolean stands(String printed, Value value) {
        Matcher number = NUMBER.matcher(printed);
        if (!number.matches()) {
            return false;
        }
        String unit = number.group(2) == null ? "" : number.group(2);
        double scale = unit.equals("mm") ? 25.4 : 1;
        boolean sameUnit = value.unit().equals("in")
                ? unit.matches("in|mm")
                : unit.equals(value.unit().replaceAll("^(1|point)$", ""));
        String digits = number.group(1);
        int decimals = digits.contains(".") ? digits.length() - digits.indexOf('.') - 1 : 0;
        double step = Math.pow(10, -decimals);
        double give = value.give() * scale + 1e-9;
        double over = Double.parseDouble(digits) - value.value() * scale;
        // To as many decimals as the independent value has, the digits must be the same.
        boolean sameDigits = scale == 1 && value.decimals() == decimals && value.give() > 0;
        boolean near = switch (value.way()) {
            case NEAREST -> sameDigits ? Math.abs(over) < 1e-9 : Math.abs(over) <= 0.5 * step + give;
            case DOWN -> over <= give && over > -step - give;
            case UP -> over >= -give && over < step + give;
        };
        return sameUnit && near && fraction(number.group(3), number.group(4), value);
    }

    private static boolean fraction(String word, String text, Value value) {
        if (text == null) {
            return true;
        }
        double fraction = 0;
        for (String part : text.split(" ", -1)) {
            String[] two = part.split("/", -1);
            fraction += Double.parseDouble(two[0]) / (two.length == 2 ? Double.parseDouble(two[1]) : 1);
        }
        double over = value.value() - fraction;
        double give = value.give() + 1e-9;
        if (word == null) {
            return Math.abs(over) <= give;
        }
        return switch (word) {
            case "over " -> value.way() == Way.DOWN && over > 0 && over < 1.0 / 64;
            case "under " -> value.way() == Way.UP && over < 0 && over > -1.0 / 64;
            default -> Math.abs(over) <= 1.0 / 128 + give;
        };
    }
}
