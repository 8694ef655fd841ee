package dev.tipwright.lessons;

import static dev.tipwright.lessons.LessonParts.in;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.club.Parts;
import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Caution;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.length.CutToLength;
import dev.tipwright.core.length.CutToLengthStep;
import dev.tipwright.core.length.LengthMeasure;
import dev.tipwright.core.length.LengthPlan;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.plan.JobPlanner;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.trim.TipTrimStep;
import dev.tipwright.core.trim.TrimChart;
import dev.tipwright.fitcheck.FitTarget;
import dev.tipwright.fitcheck.TipFitStep;
import dev.tipwright.fitcheck.set.Rescue;
import dev.tipwright.fitcheck.set.RescueChoice;
import java.util.List;

/**
 * A miscut rescued. The mark for the 8 was put on the shaft of the 6, and an inch and a half came off its tip instead of half an inch.
 * Then it was sanded into the 6's bore before anyone noticed. What can that shaft still become?
 */
public final class Miscut {

    private static final List<String> CLUBS = List.of("6", "7", "8");
    static final Length KERF = in("1/16");

    private Miscut() {}

    static Shaft shaft() {
        return LessonParts.shaft("M1", LessonParts.blank("mid"), "39", 84.1, "20.25");
    }

    static ClubSet set() {
        return ClubSet.of(club("6", 263.9, 61.5), club("7", 270.9, 62), club("8", 273.6, 62.5));
    }

    private static Build club(String label, double grams, double lie) {
        return Build.of(new Parts(
                LessonParts.head(label, grams, lie, "2 1/4", "2.15", LessonParts.taperedBore()),
                shaft().withLabel("for the " + label),
                LessonParts.grip(50)));
    }

    static JobPlanner planner() {
        return JobPlanner.of(
                TipTrimStep.by(TrimChart.stepped("mid", CLUBS, in("1/2"), in("1/2"), in("1")), KERF),
                TipFitStep.with(FitTarget.of(in(".004"))),
                CutToLengthStep.to(LengthPlan.byStep(CLUBS, in("37 1/2"), in("1/2"), LengthMeasure.ALONG_AXIS), KERF));
    }

    /** The shaft with the wrong cut, and its tip worked to the shape that was planned for the 6. */
    static Rescue rescue() {
        Work planned = planner().plan(set()).club("6").after().work();
        return new Rescue(shaft(), Work.NONE.withTipTrim(in("1 1/2")).withTip(planned.tip()));
    }

    static List<RescueChoice> choices() {
        return rescue().over(set(), planner());
    }

    /** Prints the page. */
    public static void main(String[] args) {
        Sheet.print(page());
    }

    static String page() {
        Sheet sheet = new Sheet().title("A miscut, and what is left of it");
        sheet.say(
                "An inch and a half is off a tip that should have lost half an inch, and the tip is worked for a bore of .355 in."
                        + " Every head of the set is tried with it, as it is and with the worked part cut off; best first.");
        for (RescueChoice choice : choices()) {
            Work work = choice.plan().after().work();
            sheet.line(
                    "as the %s, %.3f in off its tip in all: %s",
                    choice.head(), work.tipTrim().inches(), verdict(choice));
            choice.plan()
                    .find(CutToLength.class)
                    .ifPresent(cut -> sheet.row(
                            "  left to cut off its butt",
                            "%.4f in",
                            cut.buttTrim().inches()));
            sheet.gap()
                    .findings(choice.plan().findings().stream()
                            .filter(Miscut::matters)
                            .toList());
        }
        sheet.say(
                "Limits: what is off stays off. A shaft trimmed deeper than its chart asks plays stiffer; time it before it is bonded,"
                        + " and let the customer say. No limits for wall and insertion were given, so the cautions ask for them.");
        return sheet.cautions(Caution.COMPOSITE_DUST, Caution.CUTTING, Caution.MAKERS_WORD)
                .toString();
    }

    private static String verdict(RescueChoice choice) {
        return choice.possible() ? "possible, " + choice.cautions() + " to look at" : "no";
    }

    private static boolean matters(Finding finding) {
        return finding.severity() != Severity.NOTE;
    }
}
