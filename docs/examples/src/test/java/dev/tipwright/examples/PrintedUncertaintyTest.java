package dev.tipwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.PlanText;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.LinearityCheck;
import dev.tipwright.core.uncertainty.Measurand;
import dev.tipwright.core.uncertainty.Measure;
import dev.tipwright.core.uncertainty.MonteCarlo;
import dev.tipwright.core.uncertainty.UncertainClub;
import dev.tipwright.examples.read.Job;
import dev.tipwright.examples.read.JobFolder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The page as the program prints it, with its column of uncertainties: a checked file, and each number of the column against trials of
 * the same club, which know nothing of sensitivities.
 */
class PrintedUncertaintyTest {

    private static final int TRIALS = 4000;

    /** A standard uncertainty from 4000 trials is itself uncertain by 1 / sqrt(2 * 4000), 1.1 %; four times that. */
    private static final double SAMPLING = 0.045;

    private static final MonteCarlo MONTE_CARLO = MonteCarlo.of(TRIALS, 7);

    private static Path file(String scenario) {
        return Path.of("src/test/resources/plans", scenario + "-with-uncertainty.txt");
    }

    @ParameterizedTest
    @ValueSource(strings = {"practice-set", "wedges-and-wood"})
    void theProgramPrintsWhatIsInTheFile(String scenario) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int code = MainJob.run(
                new String[] {"scenarios/" + scenario},
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8));
        assertThat(code).isEqualTo(MainJob.PLANNED);
        PrintedPlanTest.holds(file(scenario).getFileName().toString(), out.toString(StandardCharsets.UTF_8));
    }

    /** Less the two columns it is the page whose every number is traced elsewhere. */
    @ParameterizedTest
    @ValueSource(strings = {"practice-set", "wedges-and-wood"})
    void allElseIsThePageWithoutThem(String scenario) throws IOException {
        List<String> with = withoutNumbers(Files.readString(file(scenario)));
        with.removeIf(line -> line.startsWith("The uncertainty beside a number is expanded")
                || line.startsWith("95 %. It is twice")
                || line.equals("to first order."));
        assertThat(with)
                .isEqualTo(withoutNumbers(Files.readString(Path.of("src/test/resources/plans", scenario + ".txt"))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"practice-set", "wedges-and-wood"})
    void everyUncertaintyIsThatOfTrials(String scenario) throws IOException {
        String page = Files.readString(file(scenario));
        Job job = JobFolder.read(Path.of("scenarios", scenario)).job().orElseThrow();
        BenchUncertainty bench = job.bench().orElseThrow();
        SoftAssertions all = new SoftAssertions();
        int compared = 0;
        for (ClubPlan club : MainJob.plan(job).clubs()) {
            UncertainClub uncertain = UncertainClub.of(club.after(), bench);
            List<Measure> measures = club.reports().stream()
                    .flatMap(report -> report.measures().stream())
                    .toList();
            for (Measure measure : measures) {
                Measurand measurand = uncertain.measurand(measure);
                if (LinearityCheck.straysWith(measurand, 0.1).isEmpty()) {
                    compare(page, club, measure, measurand, all);
                    compared++;
                }
            }
        }
        all.assertAll();
        assertThat(compared).isGreaterThan(40);
    }

    private static void compare(String page, ClubPlan club, Measure measure, Measurand measurand, SoftAssertions all) {
        String printed = cell(page, club.label(), measure);
        double number = Double.parseDouble(printed.split(" ", -1)[0]);
        double trials = 2 * MONTE_CARLO.run(measurand).standardUncertainty();
        double inUnit = printed.endsWith(" in") ? trials / 25.4 : trials;
        int decimals = printed.split(" ", -1)[0].replaceAll("^[^.]*\\.?", "").length();
        all.assertThat(Math.abs(number - inUnit))
                .as("%s of club %s: %s, by trials %s", measure.meaning(), club.label(), printed, inUnit)
                .isLessThanOrEqualTo(0.5 * Math.pow(10, -decimals) + SAMPLING * inUnit);
    }

    /** The cell of the column of uncertainties, as it stands on the page. */
    private static String cell(String page, String label, Measure measure) {
        String block = block(page, label);
        return block.lines()
                .map(line -> line.strip().split(" {2,}", -1))
                .filter(cells ->
                        cells.length == 4 && cells[0].equals(measure.meaning()) && cells[1].equals(measure.symbol()))
                .map(cells -> cells[3])
                .findFirst()
                .orElseThrow(() -> new AssertionError(measure.meaning() + " of club " + label + " is not on the page"));
    }

    private static String block(String page, String label) {
        String heading = "\nCLUB " + label.toUpperCase(Locale.ROOT) + "\n";
        String rest = page.substring(page.indexOf(heading) + heading.length());
        return rest.substring(rest.indexOf("\nNumbers"), rest.indexOf("\nAt the bench"));
    }

    /** The lines of a page but for the tables of numbers. */
    private static List<String> withoutNumbers(String page) {
        List<String> lines = new ArrayList<>();
        boolean inTable = false;
        for (String line : page.lines().toList()) {
            if (line.equals("Numbers")) {
                inTable = true;
            } else if (line.equals("At the bench")) {
                inTable = false;
            }
            if (!inTable) {
                lines.add(line);
            }
        }
        lines.removeIf(String::isEmpty);
        return lines;
    }

    /** Wrong by a digit it is seen. */
    @ParameterizedTest
    @ValueSource(strings = {"swing weight", "total mass", "butt trim", "frequency without grip"})
    void anUncertaintyThatIsOffIsSeen(String meaning) throws IOException {
        String page = Files.readString(file("practice-set"));
        Job job = JobFolder.read(Path.of("scenarios", "practice-set")).job().orElseThrow();
        ClubPlan club = MainJob.plan(job).club("6");
        Measure measure = club.reports().stream()
                .flatMap(report -> report.measures().stream())
                .filter(one -> one.meaning().equals(meaning))
                .findFirst()
                .orElseThrow();
        String cell = cell(page, "6", measure);
        String wrong = cell.replaceFirst("[01]\\.", "2.");
        SoftAssertions all = new SoftAssertions();
        Measurand measurand =
                UncertainClub.of(club.after(), job.bench().orElseThrow()).measurand(measure);
        compare(page.replace(cell, wrong), club, measure, measurand, all);
        assertThat(all.errorsCollected()).hasSize(1);
        assertThat(PlanText.plain(MainJob.plan(job), Units.INCH)).doesNotContain("most of it from");
    }
}
