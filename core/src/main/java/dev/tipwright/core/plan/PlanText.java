package dev.tipwright.core.plan;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.cut.CutTurn;
import dev.tipwright.core.cut.CuttingOrder;
import dev.tipwright.core.evidence.Assumption;
import dev.tipwright.core.evidence.Caution;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.text.Page;
import dev.tipwright.core.part.Head;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.Budget;
import dev.tipwright.core.uncertainty.Measure;
import dev.tipwright.core.uncertainty.UncertainClub;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * A plan to tape above the vice: the set at a glance, then one block a club with its findings, its numbers and what to do in bench
 * order, then cautions and assumptions once. Plain text of at most a hundred columns, or the same as Markdown.
 *
 * <pre>{@code
 * JobPlan plan = JobPlanner.of(TipTrimStep.by(Samples.chart(), Length.parse("1/16 in"))).plan(Samples.set());
 * PlanText.plain(plan, Units.INCH).contains("0.500 in (1/2)");      // = true
 * PlanText.markdown(plan, Units.METRIC).contains("12.7 mm");        // = true
 * }</pre>
 */
public final class PlanText {

    private static final int CLUBS_ABREAST = 6;

    private final JobPlan plan;
    private final Units units;
    private final Optional<BenchUncertainty> bench;
    private final Page page = new Page();

    private PlanText(JobPlan plan, Units units, Optional<BenchUncertainty> bench) {
        this.plan = Require.given("plan", plan);
        this.units = Require.given("units", units);
        this.bench = bench;
        write();
    }

    /**
     * The plan as plain text.
     *
     * @param plan what is to be printed
     * @param units what sentences and tables are in; the numbers of a club are printed in both
     * @return lines of at most a hundred characters, ended by line feeds
     */
    public static String plain(JobPlan plan, Units units) {
        return new PlanText(plan, units, Optional.empty()).page.plain();
    }

    /**
     * The plan as Markdown.
     *
     * @param plan what is to be printed
     * @param units what sentences and tables are in; the numbers of a club are printed in both
     * @return the same page as the plain text
     */
    public static String markdown(JobPlan plan, Units units) {
        return new PlanText(plan, units, Optional.empty()).page.markdown();
    }

    /**
     * The plan as plain text, with a column that says how sure each number is and what that mostly comes from.
     *
     * @param plan the plan
     * @param units inch or metric
     * @param bench what things were measured and are made with
     * @return lines ended by line feeds
     */
    public static String plain(JobPlan plan, Units units, BenchUncertainty bench) {
        return new PlanText(plan, units, Optional.of(Require.given("bench", bench))).page.plain();
    }

    /**
     * The plan as Markdown, with a column that says how sure each number is and what that mostly comes from.
     *
     * @param plan the plan
     * @param units inch or metric
     * @param bench what things were measured and are made with
     * @return lines ended by line feeds
     */
    public static String markdown(JobPlan plan, Units units, BenchUncertainty bench) {
        return new PlanText(plan, units, Optional.of(Require.given("bench", bench))).page.markdown();
    }

    private void write() {
        page.heading(
                1,
                plan.clubs().size() == 1
                        ? "Plan for one club"
                        : "Plan for " + plan.clubs().size() + " clubs");
        page.paragraph(
                "Trims and stock are rounded down, cut lengths, marks to cut at and finished diameters up, so that a cut to the"
                        + " number never takes too much; all else is rounded to the last digit shown. A fraction in brackets is exact,"
                        + " unless it says that the length is over it, under it or near it; it is the next sixty-fourth."
                        + " Do the steps of a club in the order given: the butt is cut last, after the cure.");
        if (bench.isPresent()) {
            page.paragraph(
                    "The uncertainty beside a number is expanded: the number lies that near with a probability of about"
                            + " 95 %. It is twice the standard uncertainty, or more by Student's t where that rests on few readings, to"
                            + " first order.");
        }
        set();
        cuttingOrder();
        plan.clubs().forEach(this::club);
        cautions();
        assumptions();
    }

    private void set() {
        page.heading(2, "The set");
        for (int from = 0; from < plan.clubs().size(); from += CLUBS_ABREAST) {
            page.table(table(plan.clubs()
                    .subList(from, Math.min(from + CLUBS_ABREAST, plan.clubs().size()))));
        }
    }

    /** One row a headline number of any club, one column a club. */
    private List<List<String>> table(List<ClubPlan> clubs) {
        List<Term> kinds = new ArrayList<>();
        for (ClubPlan club : clubs) {
            for (Term term : headlines(club)) {
                if (find(kinds, term).isEmpty()) {
                    kinds.add(term);
                }
            }
        }
        List<List<String>> rows = new ArrayList<>();
        rows.add(row("club", clubs, ClubPlan::label));
        for (Term kind : kinds) {
            String unit = kind.unit(units);
            rows.add(row(
                    kind.meaning() + (unit.isEmpty() ? "" : ", " + unit),
                    clubs,
                    club -> find(headlines(club), kind)
                            .map(term -> term.number(units, 0))
                            .orElse("-")));
        }
        rows.add(row("worst finding", clubs, PlanText::worst));
        return rows;
    }

    private static List<String> row(String label, List<ClubPlan> clubs, Function<ClubPlan, String> cell) {
        List<String> row = new ArrayList<>();
        row.add(label);
        clubs.forEach(club -> row.add(cell.apply(club)));
        return row;
    }

    private static String worst(ClubPlan club) {
        return club.worst()
                .map(severity -> severity.name().toLowerCase(Locale.ROOT))
                .orElse("-");
    }

    private static List<Term> headlines(ClubPlan club) {
        return club.reports().stream()
                .flatMap(report -> report.headline().stream())
                .toList();
    }

    private static Optional<Term> find(List<Term> terms, Term kind) {
        return terms.stream()
                .filter(term ->
                        term.symbol().equals(kind.symbol()) && term.meaning().equals(kind.meaning()))
                .findFirst();
    }

    private void cuttingOrder() {
        List<Build> planned = plan.clubs().stream().map(ClubPlan::after).toList();
        List<CutTurn> turns = new CuttingOrder(new ClubSet(planned)).turns();
        if (turns.size() < 2) {
            return;
        }
        page.heading(2, "The order of cutting tips");
        page.paragraph(
                "Blank by blank, the least trim first: a tip cut too far may still make a club that is trimmed more, so long as the"
                        + " shaft meant for that club is whole. Then let the two shafts change places and plan again.");
        for (int i = 0; i < turns.size(); i++) {
            page.item((i < 9 ? " " : "") + (i + 1) + ".", turn(turns.get(i)), "");
        }
    }

    private String turn(CutTurn turn) {
        String cut = "shaft " + turn.shaft() + " (blank " + turn.blank() + ") for club " + turn.club() + ": "
                + Term.atMost("T", "tip trim", turn.tipTrim()).text(units) + ". Cut too far, it ";
        return turn.couldBecome().isEmpty()
                ? cut + "is lost to this set."
                : cut + "could still become " + String.join(" or ", turn.couldBecome()) + ".";
    }

    private void club(ClubPlan club) {
        Head head = club.after().parts().head();
        page.heading(2, "Club " + club.label());
        page.paragraph(head.kind().name().toLowerCase(Locale.ROOT) + ", "
                + head.hand().name().toLowerCase(Locale.ROOT) + " hand; shaft "
                + club.after().parts().shaft().label() + " (blank "
                + club.after().parts().shaft().blank().label() + "); grip "
                + club.after().parts().grip().label());
        findings(club);
        numbers(club);
        bench(club);
    }

    private void findings(ClubPlan club) {
        if (!club.findings().isEmpty()) {
            page.heading(3, "Findings");
        }
        for (Severity severity : List.of(Severity.STOP, Severity.CAUTION, Severity.NOTE)) {
            for (Finding finding : club.findings()) {
                if (finding.severity() == severity) {
                    page.item(severity == Severity.NOTE ? "note" : severity.name(), finding.message(units), "");
                }
            }
        }
    }

    private void numbers(ClubPlan club) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(
                bench.isPresent()
                        ? List.of("number", "", unitNames(units), "uncertainty", "most of it from")
                        : List.of("number", "", unitNames(units), unitNames(other())));
        Optional<UncertainClub> uncertain = bench.map(known -> UncertainClub.of(club.after(), known));
        List<Measure> measures = club.reports().stream()
                .flatMap(report -> report.measures().stream())
                .toList();
        for (Term term : headlines(club)) {
            rows.add(uncertain.map(known -> sure(measures, term, known)).orElseGet(() -> inBoth(term)));
        }
        if (rows.size() > 1) {
            page.heading(3, "Numbers");
            page.table(rows);
        }
    }

    private Units other() {
        return units == Units.INCH ? Units.METRIC : Units.INCH;
    }

    private static String unitNames(Units units) {
        return units == Units.INCH ? "inches" : "metric";
    }

    private List<String> inBoth(Term term) {
        String first = term.text(units);
        String second = term.text(other());
        return List.of(term.meaning(), term.symbol(), first, second.equals(first) ? "" : second);
    }

    private List<String> sure(List<Measure> measures, Term term, UncertainClub known) {
        Optional<Measure> measure = measures.stream()
                .filter(one ->
                        one.symbol().equals(term.symbol()) && one.meaning().equals(term.meaning()))
                .findFirst();
        Optional<Budget> budget = measure.flatMap(known::budget);
        return List.of(
                term.meaning(),
                term.symbol(),
                term.text(units),
                budget.map(one -> measure.get().uncertainty(one, units)).orElse(""),
                budget.flatMap(Budget::largest).map(line -> line.input().name()).orElse(""));
    }

    private void bench(ClubPlan club) {
        List<Operation> operations = club.operations();
        if (!operations.isEmpty()) {
            page.heading(3, "At the bench");
        }
        int step = 1;
        for (Operation operation : operations) {
            String before = operation.oneWay() ? "First: " + operation.checkFirst(units) : "";
            page.item((step < 10 ? " " : "") + step + ".", operation.text(units), before);
            step++;
        }
    }

    private void cautions() {
        TreeSet<Caution> cautions = new TreeSet<>();
        plan.clubs().forEach(club -> club.reports().forEach(report -> cautions.addAll(report.cautions())));
        if (!cautions.isEmpty()) {
            page.heading(2, "Cautions");
            page.paragraph(
                    "Makers' instructions, local rules and a qualified person come first. This plan checks numbers; it"
                            + " certifies nothing.");
            cautions.forEach(caution -> page.item("", caution.text(), ""));
        }
    }

    private void assumptions() {
        List<String> said = new ArrayList<>();
        for (ClubPlan club : plan.clubs()) {
            for (String assumption : assumed(club)) {
                if (said.isEmpty()) {
                    page.heading(2, "Assumed, not measured");
                }
                if (!said.contains(assumption)) {
                    said.add(assumption);
                    page.item(whose(assumption), assumption, "");
                }
            }
        }
    }

    private List<String> assumed(ClubPlan club) {
        return club.reports().stream()
                .flatMap(report -> report.assumptions().stream())
                .map(this::words)
                .toList();
    }

    /** The clubs that rest on an assumption. */
    private String whose(String assumption) {
        List<String> clubs = plan.clubs().stream()
                .filter(club -> assumed(club).contains(assumption))
                .map(ClubPlan::label)
                .toList();
        return clubs.size() == plan.clubs().size() ? "all" : String.join(", ", clubs);
    }

    private String words(Assumption assumption) {
        Term value = assumption.value();
        return value.meaning() + ": " + value.text(units) + " (" + words(assumption.source()) + ")";
    }

    private static String words(Source source) {
        String kind = switch (source.kind()) {
            case PUBLISHED -> "published: ";
            case COMMON_PRACTICE -> "common practice, no source: ";
            case FROM_MEMORY -> "from memory: ";
            case ASSUMPTION -> "assumption: ";
            case GIVEN -> "given by ";
        };
        return kind + source.title() + (source.place().isEmpty() ? "" : ", " + source.place());
    }
}
