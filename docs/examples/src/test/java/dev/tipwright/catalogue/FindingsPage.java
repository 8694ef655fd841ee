package dev.tipwright.catalogue;

import dev.tipwright.catalogue.FoundCodes.Code;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.part.HeadMass;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.doors.Samples;
import dev.tipwright.fitcheck.insert.Clearance;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The page of errors and findings, made from the code and the list of what to do. */
final class FindingsPage {

    /** Calls that are refused, one of each kind, with what the page says of the kind. */
    private static final Map<String, Runnable> REFUSED = new LinkedHashMap<>();

    static {
        refused("Length.parse(null)", () -> Length.parse(null));
        refused("Length.parse(\"37 1/2\")", () -> Length.parse("37 1/2"));
        refused("Length.ofInches(Double.NaN)", () -> Length.ofInches(Double.NaN));
        refused("HeadMass.of(Mass.ofGrams(-1))", () -> HeadMass.of(Mass.ofGrams(-1)));
        refused("Reading.unknown(\" \")", () -> Reading.unknown(" "));
        refused(
                "DiameterProfile.cylinder(Length.parse(\"150 mm\"), Length.parse(\"8 in\"))",
                () -> DiameterProfile.cylinder(Length.parse("150 mm"), Length.parse("8 in")));
        refused("Clearance.of(tip, bore, Length.parse(\"2 in\"))", () -> {
            Bore bore = Bore.ofTwoDiameters(
                    Length.parse(".363 in"), Length.parse(".355 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
            Clearance.of(
                    DiameterProfile.cylinder(Length.parse(".35 in"), Length.parse("8 in")), bore, Length.parse("2 in"));
        });
        refused("set.club(\"12\")", () -> Samples.set().club("12"));
        refused(
                "Length.ofNanometres(Long.MAX_VALUE).plus(Length.parse(\"1 in\"))",
                () -> Length.ofNanometres(Long.MAX_VALUE).plus(Length.parse("1 in")));
        refused("set.builds().clear()", () -> Samples.set().builds().clear());
    }

    private final Sources sources = new Sources();
    private final FoundCodes found = new FoundCodes(sources);
    private final ErrorRules errors = new ErrorRules(sources);
    private final Map<String, String> toDo;

    FindingsPage(Map<String, String> toDo) {
        this.toDo = toDo;
    }

    private static void refused(String call, Runnable run) {
        REFUSED.put(call, run);
    }

    List<Code> codes() {
        return found.codes();
    }

    ErrorRules errors() {
        return errors;
    }

    String text() {
        StringBuilder page = new StringBuilder();
        page.append("""
                # Errors and findings

                <!-- Made from the code by FindingsPageTest, which fails when this page is stale. To write it anew:
                mvn -q test -pl docs/examples -am -Dtest=FindingsPageTest -Dsurefire.failIfNoSpecifiedTests=false -Dfindings.write=true -->

                A bad club never throws, and a misused call never makes a finding. What the work itself brings up is a `Finding`: a code, a
                severity, and the numbers. What a program does wrong is an exception that names the argument, the rule, and the value with its
                unit. A code keeps its name from version to version; branch on it, not on the sentence.

                | severity | means |
                |---|---|
                | note | worth knowing |
                | caution | to be looked at before going on |
                | stop | reason not to take the step |

                In the sentences a symbol in braces stands for a number that comes with the finding, `finding.term("i")`, and that is printed in
                inches or millimetres as asked for.

                """);
        page.append("## Findings\n");
        String owner = "";
        for (Code code : codes()) {
            if (!code.owner().equals(owner)) {
                owner = code.owner();
                page.append("\n### `")
                        .append(simple(owner))
                        .append("`, in `")
                        .append(folder(owner))
                        .append("`\n\n");
                page.append("| code | severity | means | says | what to do |\n|---|---|---|---|---|\n");
            }
            page.append(String.format(
                    Locale.ROOT,
                    "| `%s` | %s | %s | %s | %s |%n",
                    code.name(),
                    severities(code.severities()),
                    cell(code.meaning()),
                    cell(code.template()),
                    cell(toDo.getOrDefault(owner + "." + code.name(), ""))));
        }
        return errors(page.append("\n## Errors\n\n")).toString().replace("\r", "");
    }

    private StringBuilder errors(StringBuilder page) {
        page.append("""
                | kind | thrown as |
                |---|---|
                | an argument, or an element of a list, is `null` | `NullPointerException` |
                | a value is outside its range, a text is not understood, arguments contradict each other, a name is not there | `IllegalArgumentException` |
                | a result does not fit into the range of a quantity | `ArithmeticException` |
                | trials that run on other threads are interrupted | `CancellationException` |
                | a list that was handed out is changed | `UnsupportedOperationException`, from the JDK |

                No other exception is made by the three modules, nothing is logged, and no public method gives NaN or infinity.
                One of each kind, as it is thrown:

                | call | throws | says |
                |---|---|---|
                """);
        REFUSED.forEach((call, run) -> {
            RuntimeException thrown = thrownBy(run);
            page.append(String.format(
                    Locale.ROOT,
                    "| `%s` | `%s` | %s |%n",
                    call,
                    thrown.getClass().getSimpleName(),
                    thrown.getMessage() == null ? "" : cell(thrown.getMessage())));
        });
        page.append(
                "\n### Rules\n\nEvery rule that an argument can break, and the types that hold to it; in braces, what the message puts a value for:\n\n");
        page.append("| the argument | held to by |\n|---|---|\n");
        errors.rules()
                .forEach((rule, types) -> page.append("| ")
                        .append(cell(rule))
                        .append(" | ")
                        .append(few(types))
                        .append(" |\n"));
        return page;
    }

    static RuntimeException thrownBy(Runnable run) {
        try {
            run.run();
        } catch (RuntimeException e) {
            return e;
        }
        throw new AssertionError("a call on the page is not refused");
    }

    /** All of them, unless nearly everything does. */
    private static String few(Set<String> types) {
        return types.size() > 12
                ? types.size() + " types"
                : types.stream().map(type -> "`" + type + "`").collect(Collectors.joining(", "));
    }

    private static String severities(Set<Severity> severities) {
        return severities.stream()
                .map(severity -> severity.name().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(" or "));
    }

    private static String simple(String name) {
        return name.substring(name.lastIndexOf('.') + 1);
    }

    private static String folder(String name) {
        return name.substring(0, name.lastIndexOf('.'));
    }

    private static String cell(String text) {
        return text.replace("|", "\\|").replace("<", "&lt;").replace("\n", " ");
    }
}
