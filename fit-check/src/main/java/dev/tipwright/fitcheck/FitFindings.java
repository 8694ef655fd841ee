package dev.tipwright.fitcheck;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.part.Attachment;
import dev.tipwright.core.part.Ferrule;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.BoreReading;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.insert.Chamfer;
import dev.tipwright.fitcheck.insert.Clearance;
import dev.tipwright.fitcheck.insert.FirstContact;
import dev.tipwright.fitcheck.taper.MaterialRemoval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a builder must know of one fit. */
final class FitFindings {

    /** Looseness beyond what was wanted from which it is worth a caution: a thousandth, an assumption of this library. */
    private static final Length NOTICEABLE = Length.ofThousandths(1);

    private final Build build;
    private final TipFit fit;
    private final DiameterProfile stripped;
    private final FitTarget target;
    private final MaterialRemoval removal;
    private final Length chamfer;
    private final List<Finding> findings = new ArrayList<>(4);

    private FitFindings(Build build, TipFit fit, DiameterProfile stripped, FitTarget target) {
        this.build = build;
        this.fit = fit;
        this.stripped = stripped;
        this.target = target;
        this.removal = fit.removal();
        this.chamfer = Chamfer.depth(fit.bore());
    }

    static List<Finding> of(Build build, TipFit fit, DiameterProfile stripped, FitTarget target) {
        FitFindings found = new FitFindings(build, fit, stripped, target);
        found.wayIn();
        found.stock();
        found.bondedLength();
        found.mouthAndBottom();
        found.wall();
        found.unknowns();
        found.ferrules();
        return found.findings;
    }

    private Term insertion() {
        return Term.of("i", "insertion", fit.insertion());
    }

    private void wayIn() {
        FirstContact untouched = fit.untouched();
        if (untouched.insertion().lessThan(fit.insertion())) {
            Term bare =
                    Term.fine("i1", "insertion with the finish off", fit.bare().insertion());
            Term asIs = Term.fine("i0", "insertion untouched", untouched.insertion());
            boolean inChamfer = untouched.boreStation().lessThan(chamfer);
            findings.add(
                    inChamfer
                            ? Finding.note(FitCode.STOPS_IN_CHAMFER, asIs, bare)
                            : Finding.note(
                                    FitCode.STOPS_ON_THE_WAY,
                                    asIs,
                                    bare,
                                    Term.of("z", "where it binds", untouched.tipStation())));
        }
        if (!fit.bare().insertion().lessThan(fit.insertion())) {
            findings.add(bareFits());
        }
    }

    /** Bare, the tip goes in all the way: too tight, too loose, or as wanted. */
    private Finding bareFits() {
        if (removal.structureVolume().cubicMillimetres() > 0) {
            return Finding.note(FitCode.ENTERS_TIGHT, wanted());
        }
        Length least = Clearance.of(stripped, fit.bore(), fit.insertion()).least();
        return least.minus(fit.clearance()).moreThan(NOTICEABLE)
                ? Finding.caution(FitCode.LOOSE, Term.fine("c", "least clearance", least), wanted())
                : Finding.note(FitCode.ENTERS);
    }

    private Term wanted() {
        return Term.fine("w", "wanted clearance", fit.clearance());
    }

    private void stock() {
        Length finish = removal.finishAtEnd();
        if (finish.nanometres() > 0 && removal.structureAtEnd().nanometres() > 0) {
            findings.add(Finding.note(
                    FitCode.PARTLY_FINISH,
                    Term.fine("e", "stock on the diameter", removal.stockAtEnd()),
                    Term.fine("ef", "of it finish", finish),
                    Term.fine("es", "of it structure", removal.structureAtEnd())));
        }
    }

    private void bondedLength() {
        if (target.leastInsertion() instanceof Reading.Unknown<Length> unknown) {
            findings.add(Finding.caution(
                    FitCode.NO_INSERTION_LIMIT, insertion(), Term.of("ask", "whom to ask", unknown.ask())));
            return;
        }
        Length least = target.leastInsertion().orElse(Length.ZERO);
        if (fit.insertion().lessThan(least)) {
            findings.add(Finding.stop(FitCode.SHORT_INSERTION, insertion(), Term.of("imin", "least insertion", least)));
        }
    }

    private void mouthAndBottom() {
        Length bonded = fit.bondedLength();
        Optional<Length> least = target.leastInsertion().known();
        if (least.isPresent()
                && bonded.lessThan(least.get())
                && !fit.insertion().lessThan(least.get())) {
            findings.add(Finding.caution(
                    FitCode.SHORT_BELOW_CHAMFER,
                    insertion(),
                    Term.of("imin", "least insertion", least.get()),
                    bonded(bonded),
                    Term.of("ask", "whom to ask", "whoever gave the limit")));
        } else if (chamfer.nanometres() > 0) {
            findings.add(Finding.note(
                    FitCode.CHAMFER_HOLDS_NOTHING,
                    Term.of("ch", "depth of the chamfer", chamfer),
                    insertion(),
                    bonded(bonded)));
        }
        if (fit.bore().end() == BoreEnd.CONE) {
            findings.add(Finding.note(
                    FitCode.CONE_AT_BOTTOM,
                    Term.of("B", "bore depth", fit.bore().depth())));
        }
    }

    private static Term bonded(Length bonded) {
        return Term.of("ib", "bonded below the chamfer", bonded);
    }

    private void wall() {
        if (removal.structureVolume().cubicMillimetres() <= 0
                || removal.leastWall().isEmpty()) {
            return;
        }
        Length left = removal.leastWall().get();
        Term wall = Term.fine("t", "wall of structure left", left);
        if (target.leastWall() instanceof Reading.Unknown<Length> unknown) {
            findings.add(Finding.caution(FitCode.NO_WALL_LIMIT, wall, Term.of("ask", "whom to ask", unknown.ask())));
            return;
        }
        Length least = target.leastWall().orElse(Length.ZERO);
        if (left.lessThan(least)) {
            findings.add(Finding.stop(
                    FitCode.THIN_WALL,
                    wall,
                    Term.of("z", "from the end of the tip", removal.leastWallAt()),
                    Term.fine("tmin", "least wall", least)));
        }
    }

    private void unknowns() {
        if (build.parts().shaft().section().wall() instanceof Reading.Unknown<?> unknown) {
            findings.add(Finding.caution(FitCode.WALL_UNKNOWN, Term.of("ask", "whom to ask", unknown.ask())));
        }
        if (build.parts().shaft().section().finish() instanceof Reading.Unknown<?> unknown) {
            findings.add(Finding.caution(FitCode.FINISH_UNKNOWN, Term.of("ask", "whom to ask", unknown.ask())));
        }
        if (removal.mass().isEmpty()) {
            findings.add(Finding.note(FitCode.DENSITY_UNKNOWN));
        }
        if (fit.bore().reading() == BoreReading.BY_PINS) {
            findings.add(Finding.note(FitCode.PINS_SEE_LEAST));
        }
    }

    private void ferrules() {
        for (Attachment attachment : build.work().attached()) {
            if (attachment instanceof Ferrule ferrule) {
                ferrule(ferrule);
            }
        }
    }

    /** The ferrule sits on the mouth, so it must pass over the shaft from there up to its own top, as far as that was read. */
    private void ferrule(Ferrule ferrule) {
        Length top = fit.insertion().plus(ferrule.length());
        Length place = top.min(fit.tip().outside().length());
        Length over = Extremes.widest(fit.tip().outside(), fit.insertion(), place);
        if (!ferrule.bore().lessThan(over)) {
            return;
        }
        Length bare = Extremes.widest(stripped, fit.insertion(), place);
        Term label = Term.of("ferrule", "ferrule", ferrule.label());
        Term bore = Term.fine("df", "bore of the ferrule", ferrule.bore());
        if (ferrule.bore().lessThan(bare)) {
            findings.add(
                    Finding.caution(FitCode.FERRULE_TOO_SMALL, label, bore, Term.fine("d", "bare diameter", bare)));
        } else {
            findings.add(Finding.note(
                    FitCode.FERRULE_OVER_FINISH,
                    label,
                    bore,
                    Term.fine("d", "diameter over the finish", over),
                    Term.of("s", "strip to", top)));
        }
    }
}
