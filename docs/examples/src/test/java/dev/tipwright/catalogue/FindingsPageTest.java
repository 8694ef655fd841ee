package dev.tipwright.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.catalogue.FoundCodes.Code;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.FindingCode;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.offcut.ShaftEvidence;
import dev.tipwright.core.offcut.WeighedPiece;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.doors.Exported;
import dev.tipwright.doors.Samples;
import dev.tipwright.fitcheck.TipFit;
import dev.tipwright.swingweight.ClubBalance;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page of errors and findings is what the code gives. */
class FindingsPageTest {

    private static final Path PAGE = Sources.ROOT.resolve("docs/guide/errors-and-findings.md");
    private static final Path TO_DO = Path.of("src/test/resources/findings/what-to-do.txt");

    private final FindingsPage page = new FindingsPage(toDo());

    private static Map<String, String> toDo() {
        Map<String, String> toDo = new LinkedHashMap<>();
        String owner = "";
        for (String line : lines()) {
            if (line.startsWith("[")) {
                owner = line.substring(1, line.length() - 1);
            } else if (!line.isBlank() && !line.startsWith("#")) {
                String[] parts = line.split(" = ", 2);
                assertThat(toDo.put(owner + "." + parts[0], parts[1])).as(line).isNull();
            }
        }
        return toDo;
    }

    private static List<String> lines() {
        try {
            return Files.readAllLines(TO_DO);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void thePageIsWhatTheCodeGives() throws IOException {
        if (Boolean.getBoolean("findings.write")) {
            Files.writeString(PAGE, page.text());
        }
        assertThat(Files.readString(PAGE)).isEqualTo(page.text());
    }

    /** The enums on the class path, found without the sources. */
    @Test
    void noCodeIsMissing() {
        Set<String> loaded = Stream.of(Length.class, TipFit.class, ClubBalance.class)
                .flatMap(Exported::inModuleOf)
                .filter(type -> type.isEnum() && FindingCode.class.isAssignableFrom(type))
                .flatMap(type -> Stream.of(type.getEnumConstants())
                        .map(code -> type.getName() + "." + ((FindingCode) code).name()))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(page.codes().stream().map(code -> code.owner() + "." + code.name()))
                .containsExactlyInAnyOrderElementsOf(loaded)
                .hasSizeGreaterThan(140);
    }

    @Test
    void everyCodeHasAllItsCells() {
        assertThat(page.codes()).allSatisfy(code -> {
            assertThat(code.severities()).isNotEmpty();
            assertThat(code.meaning()).endsWith(".");
            assertThat(code.template()).isNotBlank();
        });
        assertThat(toDo().keySet())
                .containsExactlyInAnyOrderElementsOf(page.codes().stream()
                        .map(code -> code.owner() + "." + code.name())
                        .toList());
        assertThat(toDo().values()).allMatch(action -> action.endsWith("."));
    }

    /** As the sources can be read by anyone: three that are given straight, one that is chosen, one that comes in by a parameter. */
    @Test
    void severitiesAreThoseOfTheSources() {
        assertThat(severities("TrimCode.CANNOT_TRIM")).containsExactly(Severity.CAUTION);
        assertThat(severities("FitCode.LOOSE")).containsExactly(Severity.CAUTION);
        assertThat(severities("FitCode.ENTERS")).containsExactly(Severity.NOTE);
        assertThat(severities("TrimCode.CORRECTION_IN_DOUBT")).containsExactly(Severity.NOTE);
        assertThat(severities("FlexCode.STIFFNESS_UNKNOWN")).containsExactly(Severity.NOTE);
        assertThat(severities("RulesCode.GRIP_TOO_WIDE")).containsExactly(Severity.CAUTION);
        assertThat(severities("taper.TaperCode.OVER_REMOVED")).containsExactly(Severity.STOP);
    }

    /** A code and its severity that are chosen together, as they come out. */
    @Test
    void severitiesAreThoseThatComeOut() {
        Length half = Length.parse("1/2 in");
        for (double grams : new double[] {1.0, 3.0}) {
            Finding finding = ShaftEvidence.weighed(
                            Samples.shaft(), List.of(new WeighedPiece(Length.ZERO, half, Mass.ofGrams(grams))))
                    .findings()
                    .get(0);
            assertThat(severities("OffcutCode." + finding.code().name())).containsExactly(finding.severity());
        }
    }

    private Set<Severity> severities(String end) {
        return page.codes().stream()
                .filter(code -> (code.owner() + "." + code.name()).endsWith(end))
                .min(Comparator.comparing(Code::owner))
                .orElseThrow()
                .severities();
    }

    @Test
    void onlyTheKindsOfThePageAreMade() {
        assertThat(page.errors().thrown())
                .containsExactly(
                        "ArithmeticException",
                        "CancellationException",
                        "IllegalArgumentException",
                        "NullPointerException");
        assertThat(page.errors().rules()).containsKeys("must be above zero", "must be given", "must be seated");
    }
}
