package dev.tipwright.evidence;

import dev.tipwright.core.cut.CutSheet;
import dev.tipwright.core.flex.ClubFrequency;
import dev.tipwright.core.length.CutToLength;
import dev.tipwright.core.length.PlayingLength;
import dev.tipwright.core.length.SixtyDegreePlane;
import dev.tipwright.core.mass.ProfileVolume;
import dev.tipwright.core.mass.ShaftCut;
import dev.tipwright.core.match.ShaftMatcher;
import dev.tipwright.core.rules.RulesCheck;
import dev.tipwright.core.rules.RulesReport;
import dev.tipwright.core.trim.TipTrim;
import dev.tipwright.core.uncertainty.Budget;
import dev.tipwright.core.uncertainty.MonteCarlo;
import dev.tipwright.fitcheck.TipFit;
import dev.tipwright.fitcheck.bond.Bond;
import dev.tipwright.fitcheck.insert.Clearance;
import dev.tipwright.fitcheck.insert.FirstContact;
import dev.tipwright.fitcheck.limits.FitClass;
import dev.tipwright.fitcheck.limits.Lean;
import dev.tipwright.fitcheck.other.BoreOpening;
import dev.tipwright.fitcheck.other.ShimFit;
import dev.tipwright.fitcheck.set.Rescue;
import dev.tipwright.fitcheck.set.SelectiveAssembly;
import dev.tipwright.fitcheck.taper.MaterialRemoval;
import dev.tipwright.fitcheck.taper.StageTable;
import dev.tipwright.fitcheck.taper.StopReport;
import dev.tipwright.swingweight.ClubBalance;
import dev.tipwright.swingweight.aim.MassSolve;
import dev.tipwright.swingweight.aim.StockChoice;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.learn.LearntCentre;
import dev.tipwright.swingweight.learn.ScaleReading;
import dev.tipwright.swingweight.scale.SwingWeightScale;

/**
 * What the library is there for, written down from its design and not from its code: a function that is missing from the code, or from
 * the checks, does not go missing here. Each is to have a check from outside, a law, a working, a test by bad arguments and a page of the
 * guide.
 */
enum Headline {
    PROFILE_VOLUME("profile volume", ProfileVolume.class, ProfileVolume.class, "the-tip-in-the-bore.md"),
    TIP_TRIM("tip trim", TipTrim.class, TipTrim.class, "reading-a-working.md"),
    CUT_MARKS("cut marks", CutSheet.class, CutToLength.class, "the-job-at-the-bench.md"),
    PLAYING_LENGTH("playing length", PlayingLength.class, CutToLength.class, "length-by-the-rules.md"),
    SIXTY_DEGREE_LENGTH("60 degree length", SixtyDegreePlane.class, SixtyDegreePlane.class, "length-by-the-rules.md"),
    SHAFT_MASS("shaft mass after cutting", ShaftCut.class, ShaftCut.class, "the-job-at-the-bench.md"),
    FREQUENCY("frequency", ClubFrequency.class, ClubFrequency.class, "flex.md"),
    TRIM_FOR_FREQUENCY("trim for a frequency", ClubFrequency.class, ClubFrequency.class, "flex.md"),
    RULES_CHECK("Rules check", RulesCheck.class, RulesReport.class, "length-by-the-rules.md"),
    BUDGET("budget", Budget.class, Budget.class, "how-sure-is-a-swing-weight.md"),
    MONTE_CARLO("Monte Carlo", MonteCarlo.class, Budget.class, "the-tip-in-the-bore.md"),
    FIRST_CONTACT("first contact", FirstContact.class, StageTable.class, "the-tip-in-the-bore.md"),
    CLEARANCE("clearance", Clearance.class, Clearance.class, "the-tip-in-the-bore.md"),
    LEAN("lean", Lean.class, Lean.class, "the-tip-in-the-bore.md"),
    CLASS_OF_FIT("class of fit", FitClass.class, FitClass.class, "the-tip-in-the-bore.md"),
    MATERIAL_REMOVAL("material removal", MaterialRemoval.class, TipFit.class, "the-tip-in-the-bore.md"),
    STAGE_TABLE("stage table", StageTable.class, StageTable.class, "the-tip-in-the-bore.md"),
    STOP_READING("stop reading", StopReport.class, StopReport.class, "the-tip-in-the-bore.md"),
    SHIM("shim", ShimFit.class, ShimFit.class, "the-tip-in-the-bore.md"),
    BORE_OPENING("bore opening", BoreOpening.class, BoreOpening.class, "the-tip-in-the-bore.md"),
    BOND("bond", Bond.class, Bond.class, "the-tip-in-the-bore.md"),
    SELECTIVE_ASSEMBLY(
            "selective assembly", SelectiveAssembly.class, SelectiveAssembly.class, "the-tip-in-the-bore.md"),
    RESCUE("rescue", Rescue.class, TipTrim.class, "the-tip-in-the-bore.md"),
    BALANCE("balance", Balance.class, ClubBalance.class, "swing-weight.md"),
    INERTIA("inertia", Balance.class, ClubBalance.class, "swing-weight.md"),
    SWING_WEIGHT("swing weight", SwingWeightScale.class, ClubBalance.class, "swing-weight.md"),
    TARGET_SOLVE("target solve", MassSolve.class, MassSolve.class, "swing-weight.md"),
    WEIGHTS_FROM_STOCK("weights from stock", StockChoice.class, StockChoice.class, "swing-weight.md"),
    SHAFT_MATCHING("shaft matching", ShaftMatcher.class, ClubBalance.class, "the-job-at-the-bench.md"),
    SCALE_READING("scale reading", ScaleReading.class, LearntCentre.class, "learning-from-the-scale.md");

    private final String title;
    private final Class<?> door;
    private final Class<?> shows;
    private final String page;

    Headline(String title, Class<?> door, Class<?> shows, String page) {
        this.title = title;
        this.door = door;
        this.shows = shows;
        this.page = page;
    }

    String title() {
        return title;
    }

    /** The type through which a caller comes in. */
    Class<?> door() {
        return door;
    }

    /** The type that shows the working. */
    Class<?> shows() {
        return shows;
    }

    /** Its page of the guide. */
    String page() {
        return page;
    }
}
