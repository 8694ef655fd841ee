package dev.tipwright.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.evidence.Working;
import dev.tipwright.doors.Exported;
import dev.tipwright.doors.Shown;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Runs every check of a headline function against values from outside, and holds the guide's page on the evidence to what came out. A
 * headline function without such a check, a law, a working, a test by bad arguments or a page of the guide fails.
 */
class HeadlinesTest {

    private static final Path ROOT = Path.of("").toAbsolutePath().getParent().getParent();
    private static final Path PAGE = ROOT.resolve("docs/guide/evidence.md");

    /** The most a bound may be of its value. */
    private static final BigDecimal WIDEST = new BigDecimal("0.04");

    /** The most it may be of a value of nothing, in whatever unit: the end gauge has contributions of nothing, printed to 0.1 nm. */
    private static final BigDecimal WIDEST_OF_ZERO = new BigDecimal("0.05");

    private static final Map<Headline, Consumer<Tally>> CHECKS = checks();

    private static Map<Headline, Consumer<Tally>> checks() {
        Map<Headline, Consumer<Tally>> checks = new EnumMap<>(Headline.class);
        checks.put(Headline.PROFILE_VOLUME, MassChecks::profileVolume);
        checks.put(Headline.TIP_TRIM, LengthChecks::tipTrim);
        checks.put(Headline.CUT_MARKS, LengthChecks::cutMarks);
        checks.put(Headline.PLAYING_LENGTH, LengthChecks::playingLength);
        checks.put(Headline.SIXTY_DEGREE_LENGTH, LengthChecks::sixtyDegreeLength);
        checks.put(Headline.SHAFT_MASS, MassChecks::shaftMass);
        checks.put(Headline.FREQUENCY, FlexChecks::frequency);
        checks.put(Headline.TRIM_FOR_FREQUENCY, FlexChecks::trimForFrequency);
        checks.put(Headline.FIRST_CONTACT, FitChecks::firstContact);
        checks.put(Headline.CLEARANCE, FitChecks::clearance);
        checks.put(Headline.LEAN, FitChecks::lean);
        checks.put(Headline.CLASS_OF_FIT, FitChecks::classOfFit);
        checks.put(Headline.MATERIAL_REMOVAL, TaperChecks::materialRemoval);
        checks.put(Headline.STAGE_TABLE, TaperChecks::stageTable);
        checks.put(Headline.STOP_READING, TaperChecks::stopReading);
        checks.put(Headline.SHIM, OtherWaysChecks::shim);
        checks.put(Headline.BORE_OPENING, OtherWaysChecks::boreOpening);
        checks.put(Headline.BOND, OtherWaysChecks::bond);
        checks.put(Headline.SELECTIVE_ASSEMBLY, OtherWaysChecks::selectiveAssembly);
        checks.put(Headline.RULES_CHECK, RulesChecks::rulesCheck);
        checks.put(Headline.BUDGET, UncertaintyChecks::budget);
        checks.put(Headline.MONTE_CARLO, UncertaintyChecks::monteCarlo);
        checks.put(Headline.RESCUE, SetChecks::rescue);
        checks.put(Headline.BALANCE, BalanceChecks::balance);
        checks.put(Headline.INERTIA, BalanceChecks::inertia);
        checks.put(Headline.SWING_WEIGHT, BalanceChecks::swingWeight);
        checks.put(Headline.TARGET_SOLVE, AimChecks::targetSolve);
        checks.put(Headline.WEIGHTS_FROM_STOCK, AimChecks::weightsFromStock);
        checks.put(Headline.SHAFT_MATCHING, SetChecks::shaftMatching);
        checks.put(Headline.SCALE_READING, BalanceChecks::scaleReading);
        return checks;
    }

    private static List<Check> run(Headline headline) {
        Tally tally = new Tally();
        CHECKS.getOrDefault(headline, none -> {}).accept(tally);
        return tally.checks();
    }

    @ParameterizedTest
    @EnumSource
    void agreesWithWhatIsKnownOutside(Headline headline) {
        List<Check> checks = run(headline);
        assertThat(checks).as("checks of %s from outside", headline.title()).isNotEmpty();
        assertThat(checks).extracting(Check::status).isSubsetOf(Case.STATUSES);
        assertThat(checks.stream().filter(check -> !check.holds()))
                .as(headline.title())
                .isEmpty();
    }

    /** A bound may be as wide as the digits printed make it, but not so wide that another value would do. */
    @ParameterizedTest
    @EnumSource
    void noBoundIsSoWideThatItSaysNothing(Headline headline) {
        assertThat(run(headline).stream().filter(check -> check.give().compareTo(widest(check.expected())) > 0))
                .isEmpty();
    }

    private static BigDecimal widest(BigDecimal expected) {
        return expected.signum() == 0 ? WIDEST_OF_ZERO : expected.abs().multiply(WIDEST);
    }

    @ParameterizedTest
    @EnumSource
    void showsItsWorking(Headline headline) throws ReflectiveOperationException {
        Working working = Shown.by(headline.shows());
        assertThat(working.lines()).as(headline.title()).isNotEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void isTriedWithBadArguments(Headline headline) {
        assertThat(Exported.types()).as("what BadArgumentTest tries").contains(headline.door());
        assertThat(Stream.concat(
                        Stream.of(headline.door().getConstructors()),
                        Stream.of(headline.door().getMethods())
                                .filter(method -> method.getDeclaringClass() == headline.door())))
                .as("doors of %s", headline.title())
                .anyMatch(door -> door.getParameterCount() > 0);
    }

    @ParameterizedTest
    @EnumSource
    void hasAPageInTheGuide(Headline headline) throws IOException {
        String page = Files.readString(ROOT.resolve("docs/guide").resolve(headline.page()));
        String name = headline.door().getSimpleName();
        assertThat(page.contains(name)).as("%s names %s", headline.page(), name).isTrue();
    }

    /** A law holds for inputs that no table has; the class states one and names the function. */
    @ParameterizedTest
    @EnumSource
    void hasALaw(Headline headline) throws IOException {
        String laws = Files.readString(ROOT.resolve(Laws.of(headline)));
        String name = headline.door().getSimpleName();
        assertThat(laws.contains("@Property") && laws.matches("(?s).*\\b" + name + "\\b.*"))
                .as("%s states a law of %s", Laws.of(headline), name)
                .isTrue();
    }

    @ParameterizedTest
    @EnumSource
    void drawsOnTheLibrariesItNames(Headline headline) throws IOException {
        for (Reference reference : References.of(headline)) {
            assertThat(Files.readString(ROOT.resolve(reference.file())))
                    .as(reference.toString())
                    .contains("import " + reference.root());
        }
    }

    /** A table that no test reads looks like evidence and is none. */
    @Test
    void everyTableIsReadByATest() throws IOException {
        StringBuilder tests = new StringBuilder();
        for (String folder : List.of("core", "fit-check", "swingweight", "docs/examples")) {
            try (Stream<Path> files = Files.walk(ROOT.resolve(folder).resolve("src/test/java"))) {
                for (Path file :
                        files.filter(path -> path.toString().endsWith(".java")).toList()) {
                    tests.append(Files.readString(file));
                }
            }
        }
        try (Stream<Path> files = Files.list(ROOT.resolve("docs/check-values"))) {
            assertThat(files.map(file -> file.getFileName().toString())
                            .filter(file -> file.endsWith(".csv"))
                            .map(file -> "\"" + file.replace(".csv", "") + "\""))
                    .isNotEmpty()
                    .allMatch(name -> tests.indexOf(name) >= 0);
        }
    }

    @Test
    void thePageIsWhatTheChecksGive() throws IOException {
        Map<Headline, List<Check>> checks = new EnumMap<>(Headline.class);
        for (Headline headline : Headline.values()) {
            checks.put(headline, run(headline));
        }
        String page = Page.of(checks);
        if (Boolean.getBoolean("evidence.write")) {
            Files.writeString(PAGE, page);
        }
        assertThat(Files.readString(PAGE))
                .as("write it again with:\n%s\n", Page.COMMAND)
                .isEqualTo(page);
    }
}
