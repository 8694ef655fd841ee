package dev.tipwright.fitcheck;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Caution;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.plan.BenchStage;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.uncertainty.Measure;
import dev.tipwright.fitcheck.insert.Chamfer;
import dev.tipwright.fitcheck.insert.Clearance;
import dev.tipwright.fitcheck.insert.FirstContact;
import dev.tipwright.fitcheck.other.ShimReach;
import dev.tipwright.fitcheck.taper.MaterialRemoval;
import dev.tipwright.fitcheck.taper.Stage;
import dev.tipwright.fitcheck.taper.StageTable;
import dev.tipwright.fitcheck.taper.StagedTip;
import dev.tipwright.fitcheck.taper.TipSection;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a tip fits its bore and what it takes to make it seat: the report of {@link TipFitStep}.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse(".363 in"), Length.parse(".355 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * TipSection tip = TipSection.of(
 *         DiameterProfile.cylinder(Length.parse(".3685 in"), Length.parse("8 in")), Finish.NONE);
 * TipFit fit = TipFit.of(tip, bore, bore.depth(), Length.parse(".004 in"));
 * fit.untouched().insertion().inches();                       // = 0.0
 * fit.removal().stockAtEnd().thousandths();                   // = 17.5
 * fit.seated().least().thousandths();                         // = 4.0
 * }</pre>
 *
 * @param tip the trimmed tip as it stands
 * @param bore the bore
 * @param insertion planned insertion ({@code i})
 * @param clearance wanted clearance on the diameter ({@code w})
 * @param untouched how far the tip goes in as it stands
 * @param bare how far it goes in with its finish off
 * @param removal the finished shape and what it takes off
 */
public record TipFit(
        TipSection tip,
        Bore bore,
        Length insertion,
        Length clearance,
        FirstContact untouched,
        FirstContact bare,
        MaterialRemoval removal)
        implements StepReport {

    /** A tenth of a thousandth: less shows on no caliper. */
    private static final Length NOTICEABLE = Length.ofThousandths(0.1);

    /**
     * Checks the values.
     *
     * @param tip the trimmed tip as it stands
     * @param bore the bore
     * @param insertion planned insertion
     * @param clearance wanted clearance on the diameter
     * @param untouched how far the tip goes in as it stands
     * @param bare how far it goes in with its finish off
     * @param removal the finished shape and what it takes off
     */
    public TipFit {
        Require.given("tip", tip);
        Require.given("bore", bore);
        Require.given("insertion", insertion);
        Require.given("clearance", clearance);
        Require.given("untouched", untouched);
        Require.given("bare", bare);
        Require.given("removal", removal);
    }

    /**
     * The fit of a tip in a bore.
     *
     * @param tip the trimmed tip as it stands
     * @param bore the bore
     * @param insertion planned insertion; above zero, at most the depth of the bore and what was read of the tip
     * @param clearance wanted clearance on the diameter; zero or more, less than the bore is wide
     * @return contacts, finished shape and what it takes off
     */
    public static TipFit of(TipSection tip, Bore bore, Length insertion, Length clearance) {
        Require.given("tip", tip);
        Require.given("bore", bore);
        return of(tip, tip.stripped(), bore, insertion, clearance);
    }

    /** The fit of a tip whose stripped outside is at hand. */
    static TipFit of(TipSection tip, DiameterProfile stripped, Bore bore, Length insertion, Length clearance) {
        return new TipFit(
                tip,
                bore,
                insertion,
                clearance,
                FirstContact.of(tip.outside(), bore),
                FirstContact.of(stripped, bore),
                MaterialRemoval.of(tip, bore, insertion, clearance));
    }

    /**
     * The length over which bore and shaft lie close enough to hold: the insertion less the chamfer at the mouth.
     *
     * @return the length; zero for a tip that ends in the chamfer
     */
    public Length bondedLength() {
        return insertion.minus(Chamfer.depth(bore)).max(Length.ZERO);
    }

    /**
     * Where to stop and measure while the stripped tip is worked down, with passes of a thousandth of an inch.
     *
     * @return the stages, from all the structure that comes off to none
     */
    public StageTable stages() {
        return stages(StageTable.USUAL_PASS);
    }

    /**
     * Where to stop and measure while the stripped tip is worked down.
     *
     * @param pass what one pass takes off the diameter; 1 um to 1 mm
     * @return the stages, from all the structure that comes off to none
     */
    public StageTable stages(Length pass) {
        Require.given("pass", pass);
        return StageTable.of(new StagedTip(tip.stripped(), removal.profile(), bore, insertion), pass);
    }

    /**
     * The clearance of the finished tip where it seats.
     *
     * @return least, greatest and mean; the least is the wanted clearance unless the bare tip is looser
     */
    public Clearance seated() {
        return Clearance.of(removal.profile(), bore, insertion);
    }

    /**
     * From which stage on no shim saves the tip: to be known before the last passes.
     *
     * @param loosest the greatest clearance the caller allows; at least the wanted one, at most 100 mm
     * @param walls walls of shims in stock; each above zero, at most 10 mm
     * @param leastWall the caller's limit for the wall of structure left; it counts if it and the wall are known, and a finished tip
     *     under it has nothing to spare
     * @return what the shims make up for
     */
    public ShimReach shimReach(Length loosest, List<Length> walls, Reading<Length> leastWall) {
        Require.given("leastWall", leastWall);
        Optional<Length> spare = removal.leastWall()
                .flatMap(wall -> leastWall
                        .known()
                        .map(limit -> wall.minus(limit).max(Length.ZERO).min(Length.ofMillimetres(100))));
        return ShimReach.of(clearance, loosest, walls, spare);
    }

    @Override
    public List<Term> headline() {
        List<Term> headline = new ArrayList<>(List.of(
                Term.of("i", "insertion", insertion),
                Term.of("ib", "bonded below the chamfer", bondedLength()),
                Term.fine("i0", "first contact, untouched", untouched.insertion()),
                Term.fine("i1", "first contact, finish off", bare.insertion()),
                Term.fine("e", "stock at the end of the tip", removal.stockAtEnd()),
                Term.fine("es", "of it structure", removal.structureAtEnd()),
                Term.of("V", "taken off", removal.volume()),
                Term.fine("c", "least clearance of the finished tip", seated().least())));
        removal.leastWall().ifPresent(wall -> headline.add(Term.fine("t", "wall of structure left", wall)));
        removal.leastStiffness().ifPresent(share -> headline.add(Term.number("EI/EI0", "stiffness left", share)));
        return headline;
    }

    /** The fit that the parts ask for, with the same wanted clearance. */
    private MaterialRemoval removal(Build build) {
        Bore nudged = build.parts().head().bore();
        return MaterialRemoval.of(
                TipSection.of(build), nudged, build.work().seat().insertion(), clearance);
    }

    /** The clearance that the finished tip of the plan has in the bore. */
    private static Length finishedClearance(Build build) {
        DiameterProfile finished = DiameterProfile.of(build.work().tip().finished());
        return Clearance.of(
                        finished,
                        build.parts().head().bore(),
                        build.work().seat().insertion())
                .least();
    }

    /**
     * First contacts, stock and what is left as the parts ask for; the clearance as the finished tip of the plan has it.
     *
     * @return the measures
     */
    @Override
    public List<Measure> measures() {
        List<Measure> measures = new ArrayList<>(List.of(
                Measure.length("i", "insertion", build -> build.work().seat().insertion()),
                Measure.fine(
                        "i0",
                        "first contact, untouched",
                        build -> FirstContact.of(
                                        build.trimmedTip(), build.parts().head().bore())
                                .insertion()),
                Measure.fine(
                        "i1",
                        "first contact, finish off",
                        build -> FirstContact.of(
                                        TipSection.of(build).stripped(),
                                        build.parts().head().bore())
                                .insertion()),
                Measure.fine(
                        "e",
                        "stock at the end of the tip",
                        build -> removal(build).stockAtEnd()),
                Measure.fine("es", "of it structure", build -> removal(build).structureAtEnd()),
                Measure.fine("c", "least clearance of the finished tip", TipFit::finishedClearance)));
        if (removal.leastWall().isPresent()) {
            measures.add(Measure.fine(
                    "t",
                    "wall of structure left",
                    build -> removal(build).leastWall().orElseThrow()));
        }
        return measures;
    }

    @Override
    public Working working() {
        return FitWorking.of(this);
    }

    @Override
    public List<Operation> operations() {
        List<Operation> operations = new ArrayList<>();
        Term inserted = Term.of("i", "insertion", insertion);
        if (removal.finishVolume().cubicMillimetres() > 0) {
            operations.add(Operation.of(
                    BenchStage.STRIP,
                    FitInstruction.STRIP,
                    Term.of("s", "stripped", insertion),
                    Term.fineAtLeast("b", "bare diameter", tip.stripped().diameterAt(Length.ZERO))));
        }
        if (removal.structureVolume().cubicMillimetres() > 0) {
            operations.add(workDown(inserted));
            Length chamfer = insertion.minus(Chamfer.depth(bore).min(insertion));
            for (Station station : removal.finished()) {
                if (station.at().moreThan(chamfer)) {
                    break; // what faces the chamfer fades out by itself
                }
                operations.add(Operation.of(
                        BenchStage.FIT,
                        FitInstruction.STATION,
                        Term.fineAtLeast("f", "finished diameter", station.least()),
                        Term.of("z", "from the end of the tip", station.at())));
            }
            stops(operations);
        }
        operations.add(Operation.of(
                BenchStage.DRY_BUILD,
                FitInstruction.TRY_FIT,
                inserted,
                Term.fine("c", "least clearance of the finished tip", seated().least())));
        operations.add(Operation.of(BenchStage.BOND, FitInstruction.BOND, inserted));
        return operations;
    }

    /** Says where the most comes off, if that is further up than the end of the tip. */
    private Operation workDown(Term inserted) {
        Polyline bare = Polyline.of(tip.stripped(), Polyline.Diameter.GREATEST).between(0, insertion.millimetres());
        Polyline stock = bare.plus(Polyline.of(removal.profile(), Polyline.Diameter.GREATEST), -1);
        Length most = Length.ofMillimetres(stock.value(stock.greatest()));
        Term end = Term.fineAtMost("e", "structure to come off the diameter", removal.structureAtEnd());
        return most.moreThan(removal.structureAtEnd().plus(NOTICEABLE))
                ? Operation.of(
                        BenchStage.FIT,
                        FitInstruction.WORK_DOWN_FURTHER_UP,
                        Term.fineAtMost("em", "the most to come off the diameter", most),
                        Term.of("zm", "from the end of the tip", Length.ofMillimetres(stock.at(stock.greatest()))),
                        end,
                        inserted)
                : Operation.of(BenchStage.FIT, FitInstruction.WORK_DOWN, end, inserted);
    }

    /** The stops between the first, which is the untouched tip, and the last, which is the finished one. */
    private void stops(List<Operation> operations) {
        List<Stage> stages = stages().stages();
        for (int k = 1; k < stages.size() - 1; k++) {
            Stage stage = stages.get(k);
            boolean seated = !stage.insertion().lessThan(insertion);
            operations.add(Operation.of(
                    BenchStage.FIT,
                    seated ? FitInstruction.STOP_SEATED : FitInstruction.STOP,
                    Term.fine("e", "still to come off the diameter", stage.stock()),
                    Term.fine("i", "insertion then", stage.insertion())));
        }
    }

    @Override
    public List<Caution> cautions() {
        return List.of(
                Caution.COMPOSITE_DUST,
                Caution.CUTTING,
                Caution.MAKERS_WORD,
                Caution.ADHESIVE,
                Caution.HEAD_CAN_COME_OFF);
    }
}
