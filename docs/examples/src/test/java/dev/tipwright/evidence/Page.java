package dev.tipwright.evidence;

import dev.tipwright.checkvalues.CheckTable;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The guide's page on the evidence, as the checks give it. */
final class Page {

    private static final String TOP = """
            # Evidence

            What each headline function was held against when the library was built, how far off it was at worst, and how far off it may
            be. No expected value comes from the library: the tables lie in [check-values](../check-values/README.md), where the words of
            status are explained, and [for testers](for-testers.md) says how to run a check with them, here or in another program.

            This page is written by `HeadlinesTest`, which fails when it is not what the checks give. A largest error is rounded up; one under a
            twentieth of its bound is given as that, since it is mostly the rounding of doubles. A check in words (a label, a kind of finding) is met or
            it is not. To write the page again:

            ```sh
            %s
            ```
            """;

    static final String COMMAND = "mvn -o -q test -Pfast -pl docs/examples -am -Dtest=HeadlinesTest "
            + "-Dsurefire.failIfNoSpecifiedTests=false -Devidence.write=true";

    private Page() {}

    static String of(Map<Headline, List<Check>> checks) {
        int all = checks.values().stream().mapToInt(List::size).sum();
        StringBuilder page = new StringBuilder(TOP.formatted(COMMAND));
        page.append("\n")
                .append(all)
                .append(" checks of ")
                .append(checks.size())
                .append(" functions.\n");
        summary(page, checks);
        checks.forEach((headline, made) -> section(page, headline, made));
        return page.toString();
    }

    /** How many of each function's checks rest on what was read, and how many on what was worked by another route. */
    private static void summary(StringBuilder page, Map<Headline, List<Check>> checks) {
        page.append("\n| function | ").append(String.join(" | ", Case.STATUSES)).append(" | other libraries |\n");
        page.append("|---|").append("---|".repeat(Case.STATUSES.size() + 1)).append("\n");
        checks.forEach((headline, made) -> {
            page.append("| ").append(headline.title()).append(" | ");
            for (String status : Case.STATUSES) {
                long count = made.stream()
                        .filter(check -> check.status().equals(status))
                        .count();
                page.append(count == 0 ? "" : count).append(" | ");
            }
            int libraries = References.of(headline).size();
            page.append(libraries == 0 ? "" : libraries).append(" |\n");
        });
    }

    private static void section(StringBuilder page, Headline headline, List<Check> checks) {
        page.append("\n## ").append(headline.title()).append("\n\n");
        page.append("`").append(headline.door().getSimpleName()).append("`, in [");
        page.append(headline.page().replace(".md", "").replace('-', ' '))
                .append("](")
                .append(headline.page());
        page.append("). ").append(working(headline));
        page.append(" A law is stated in `").append(Laws.name(headline)).append("`.\n\n");
        tables(checks).forEach(table -> page.append(source(table)));
        References.of(headline)
                .forEach(reference -> page.append("- ")
                        .append(reference.library())
                        .append(", in `")
                        .append(reference.test())
                        .append("`\n"));
        page.append("\n| number | table | status | checks | largest error | of the value | bound | why |\n");
        page.append("|---|---|---|---|---|---|---|---|\n");
        groups(checks).values().forEach(group -> page.append(line(group)));
    }

    private static String working(Headline headline) {
        String shows = "`" + headline.shows().getSimpleName() + "`";
        return switch (headline) {
            case RESCUE, SHAFT_MATCHING -> "Each plan it makes shows the working of its steps, such as " + shows + ".";
            case MONTE_CARLO -> "It has no formula to show; the same inputs to first order are shown by " + shows + ".";
            default -> "The working is shown by " + shows + ".";
        };
    }

    private static List<String> tables(List<Check> checks) {
        return checks.stream().map(Check::table).distinct().toList();
    }

    private static String source(String name) {
        CheckTable table = CheckTable.named(name);
        String place = table.header("place");
        return "- [" + name + "](../check-values/" + name + ".csv): " + table.source()
                + (place.isEmpty() || place.equals("none") ? "" : "; " + place) + "\n";
    }

    private static Map<String, List<Check>> groups(List<Check> checks) {
        return checks.stream()
                .collect(Collectors.groupingBy(
                        check -> check.what() + "|" + check.table() + "|" + check.unit() + "|" + check.reason(),
                        LinkedHashMap::new,
                        Collectors.toList()));
    }

    private static String line(List<Check> group) {
        Check first = group.get(0);
        BigDecimal error = greatest(group, Check::error);
        BigDecimal bound = greatest(group, Check::give);
        List<String> cells = new ArrayList<>();
        cells.add(first.what());
        cells.add(first.table());
        cells.add(statuses(group));
        cells.add(String.valueOf(group.size()));
        if (first.unit().equals(Case.WORDS)) {
            cells.addAll(List.of("none", "", "none", "the same word"));
        } else {
            String unit = first.unit().isEmpty() ? "" : " " + first.unit();
            cells.add(Figures.error(error, bound) + (error.signum() == 0 ? "" : unit));
            cells.add(error.signum() == 0 ? "" : Figures.part(greatest(group, Check::part)));
            cells.add(Figures.of(bound) + (bound.signum() == 0 ? "" : unit));
            cells.add(first.reason());
        }
        return "| " + String.join(" | ", cells) + " |\n";
    }

    private static BigDecimal greatest(List<Check> group, java.util.function.Function<Check, BigDecimal> of) {
        return group.stream().map(of).reduce(BigDecimal.ZERO, BigDecimal::max);
    }

    private static String statuses(List<Check> group) {
        Map<String, Long> counts =
                group.stream().collect(Collectors.groupingBy(Check::status, TreeMap::new, Collectors.counting()));
        return counts.size() == 1
                ? group.get(0).status()
                : counts.entrySet().stream()
                        .map(entry -> entry.getKey() + " " + entry.getValue())
                        .collect(Collectors.joining("; "));
    }
}
