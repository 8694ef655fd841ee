package dev.tipwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.plan.JobPlan;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;

/** The main job from its arguments to its exit code. */
class MainJobTest {
    private static final String FIRST = "scenarios/practice-set";

    @TempDir
    private Path temp;

    private record Run(int code, String out, String err) {

        static Run of(String... args) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            int code = MainJob.run(
                    args,
                    new PrintStream(out, true, StandardCharsets.UTF_8),
                    new PrintStream(err, true, StandardCharsets.UTF_8));
            return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"practice-set", "wedges-and-wood"})
    void plansEachScenarioWithoutAWord(String scenario) {
        Run run = Run.of("scenarios/" + scenario);
        assertThat(run.code()).isEqualTo(MainJob.PLANNED);
        assertThat(run.err()).isEmpty();
        for (String club : Scenario.named(scenario).plan().clubs().stream()
                .map(plan -> plan.label().toUpperCase(Locale.ROOT))
                .toList()) {
            assertThat(run.out()).contains("CLUB " + club);
        }
    }

    @Test
    void printsTheSamePlanEachTimeAndAnotherInMillimetres() {
        Run inches = Run.of(FIRST);
        assertThat(Run.of(FIRST)).isEqualTo(inches);
        assertThat(Run.of(FIRST, "inch")).isEqualTo(inches);
        Run metric = Run.of(FIRST, "metric");
        assertThat(metric.code()).isEqualTo(MainJob.PLANNED);
        assertThat(metric.out()).contains("924.0 mm (rounded up)").isNotEqualTo(inches.out());
    }

    @Test
    void takesAFolderAnywhere() throws IOException {
        Scenario.named("practice-set").copiedTo(temp);
        assertThat(Run.of(temp.toString())).isEqualTo(Run.of(FIRST));
    }

    @Test
    void saysEveryProblemAndPrintsNoPlanAndWritesNothing() throws IOException {
        Scenario.named("practice-set")
                .copiedTo(temp)
                .cell("heads.csv", "7", "mass", "2 kg")
                .cell("clubs.csv", "gap", "shaft", "S9");
        List<Path> before = files();
        Run run = Run.of(temp.toString());
        assertThat(run.code()).isEqualTo(MainJob.PROBLEMS);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines())
                .containsExactly(
                        "problem: heads.csv, line 3, mass: found \"2 kg\", expected 100 g to 600 g (a bare head)",
                        "problem: clubs.csv, line 7, shaft: found \"S9\", expected a label in shafts.csv",
                        "2 to put right; nothing was planned.");
        assertThat(files()).isEqualTo(before);
    }

    @Test
    void warnsOfWhatIsUnusualAndPlansIt() throws IOException {
        Scenario.named("practice-set").copiedTo(temp).cell("job.csv", "kerf", "value", "3/16 in");
        Run run = Run.of(temp.toString());
        assertThat(run.code()).isEqualTo(MainJob.PLANNED);
        assertThat(run.out()).contains("CLUB GAP");
        assertThat(run.err().lines())
                .containsExactly(
                        "warning: job.csv, line 3, kerf: found \"3/16 in\", expected usually .015 in to .125 in"
                                + " (the cut of a saw or a wheel)");
    }

    @Test
    void saysWhatItExpectsOfItsArguments() {
        for (Run run : List.of(Run.of(), Run.of(FIRST, "feet"), Run.of(FIRST, "inch", "more"), Run.of("no\0where"))) {
            assertThat(run.code()).isEqualTo(MainJob.PROBLEMS);
            assertThat(run.out()).isEmpty();
            assertThat(run.err()).startsWith("expected: the folder with the measurements");
        }
    }

    @Test
    void saysThatThereIsNoSuchFolder() {
        Run run = Run.of("scenarios/nowhere");
        assertThat(run.code()).isEqualTo(MainJob.PROBLEMS);
        assertThat(run.err()).contains("nowhere: found no such folder");
    }

    @Test
    void writesThePlanWhenAskedAndLeavesOtherFilesAlone() throws IOException {
        Path output = temp.resolve("deep/down");
        Files.createDirectories(output);
        Files.writeString(output.resolve("mine.txt"), "mine");
        Run run = Run.of(FIRST, "--out", output.toString());
        assertThat(run).isEqualTo(Run.of(FIRST));
        assertThat(output.resolve("plan.txt")).hasContent(run.out());
        assertThat(Files.readString(output.resolve("plan.md"))).startsWith("# Plan for 6 clubs");
        assertThat(output.resolve("mine.txt")).hasContent("mine");
        try (Stream<Path> files = Files.list(output)) {
            assertThat(files.map(file -> file.getFileName().toString()).sorted())
                    .containsExactly(
                            "as-built.csv",
                            "mine.txt",
                            "plan.json",
                            "plan.md",
                            "plan.txt",
                            "set.svg",
                            "tip-1-6.svg",
                            "tip-2-7.svg",
                            "tip-3-8.svg",
                            "tip-4-9.svg",
                            "tip-5-pitching.svg",
                            "tip-6-gap.svg");
        }
        Path sheet = output.resolve("as-built.csv");
        assertThat(sheet)
                .content()
                .startsWith(
                        "club,measured,predicted,found\n6,frequency before tape and grip,280.1 /min,\n6,length along the shaft,37.500 in (37 1/2),\n")
                .contains("\n6,swing weight,C9.0,\n", "\n6,total mass,396.48 g,\n");
        Files.writeString(sheet, "filled in");
        assertThat(Run.of(FIRST, "--out", output.toString())).isEqualTo(Run.of(FIRST));
        assertThat(sheet).hasContent("filled in");
        Path fresh = temp.resolve("fresh");
        assertThat(Run.of(FIRST, "metric", "--out", fresh.toString()).out())
                .isEqualTo(Run.of(FIRST, "metric").out());
        assertThat(fresh.resolve("plan.txt")).hasContent(Run.of(FIRST, "metric").out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"practice-set", "wedges-and-wood"})
    void whatIsWrittenAsDataIsThePlan(String scenario) throws IOException {
        Run.of("scenarios/" + scenario, "--out", temp.toString());
        JobPlan back = PlanJson.read(Files.readString(temp.resolve("plan.json")), JobPlan.class);
        assertThat(back).isEqualTo(Scenario.named(scenario).plan());
    }

    /** The nine's bore is 1.000 in deep; the wood sits on a mark 1 1/2 in up its tip. */
    @Test
    void drawsEachTipAsDeepAsItSeats() throws Exception {
        Run.of(FIRST, "--out", temp.toString());
        assertThat(drawing("set.svg")).contains("Swing weight", "pitching", "D1.0");
        assertThat(drawing("tip-4-9.svg")).contains("insertion 1.000 in").contains("Nothing binds.");
        assertThat(drawing("tip-1-6.svg")).contains("insertion 1.250 in").isNotEqualTo(drawing("tip-4-9.svg"));
        Run.of("scenarios/wedges-and-wood", "metric", "--out", temp.toString());
        assertThat(drawing("tip-4-3-wood.svg")).contains("insertion 38.1 mm");
    }

    private String drawing(String name) throws Exception {
        Path file = temp.resolve(name);
        Document svg = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
        assertThat(svg.getDocumentElement().getTagName()).isEqualTo("svg");
        return Files.readString(file);
    }

    @Test
    void writesNothingWhenTheInputHasProblems() throws IOException {
        Path input = Files.createDirectory(temp.resolve("input"));
        Scenario.named("practice-set").copiedTo(input).cell("heads.csv", "7", "mass", "2 kg");
        Path output = temp.resolve("output");
        assertThat(Run.of(input.toString(), "--out", output.toString()).code()).isEqualTo(MainJob.PROBLEMS);
        assertThat(output).doesNotExist();
    }

    @Test
    void saysWhenThePlanCannotBeWritten() throws IOException {
        Path taken = Files.writeString(temp.resolve("taken"), "a file");
        Run run = Run.of(FIRST, "--out", taken.toString());
        assertThat(run.code()).isEqualTo(MainJob.PROBLEMS);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("problem: --out: the plan could not be written");
        assertThat(taken).hasContent("a file");
        for (Run bad :
                List.of(Run.of(FIRST, "--out"), Run.of("--out", "x"), Run.of(FIRST, "--out", "a", "--out", "b"))) {
            assertThat(bad.code()).isEqualTo(MainJob.PROBLEMS);
            assertThat(bad.err()).startsWith("expected:");
        }
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(temp)) {
            return files.sorted().toList();
        }
    }
}
