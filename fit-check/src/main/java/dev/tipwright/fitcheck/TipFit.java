package dev.tipwright.fitcheck;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.evidence.Caution;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.mass.ProfileVolume;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.plan.BenchStage;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.uncertainty.Measure;
import dev.tipwright.fitcheck.insert.Chamfer;
import dev.tipwright.fitcheck.insert.Clearance;
import dev.tipwright.fitcheck.insert.FirstContact;
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
        return new TipFit(
                tip,
                bore,
                insertion,
                clearance,
                FirstContact.of(tip.outside(), bore),
                FirstContact.of(tip.stripped(), bore),
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
        List<Working.Line> lines = new ArrayList<>();
        contact(lines, "i0", "r0", "untouched", tip.outside(), untouched);
        contact(lines, "i1", "r1", "with the finish off", tip.stripped(), bare);
        endOfTip(lines);
        seatedLine(lines);
        wallLeft(lines);
        volumes(lines);
        return new Working("Tip in bore", lines);
    }

    /** A first contact is found by search: the equation it solves, the answer, and what is left of the equation there. */
    private void contact(
            List<Working.Line> lines, String i, String r, String how, DiameterProfile shape, FirstContact contact) {
        Term insertion = Term.fine(i, "first contact, " + how, contact.insertion());
        if (contact.kind() == FirstContact.Kind.CLEARS) {
            lines.add(new Working.Line(
                    insertion,
                    "B",
                    List.of(Term.fine("B", "bore depth: nothing stops the tip before", bore.depth())),
                    Source.assumption("a tip goes in until it meets the bore")));
            return;
        }
        Term up = Term.fine("z", "up the tip, where it meets", contact.tipStation());
        lines.add(new Working.Line(
                insertion,
                "y + z",
                List.of(Term.fine("y", "down the bore, where it meets", contact.boreStation()), up),
                Source.assumption("the least y + z at which D(y) - d(z) is no longer above zero, by search")));
        Length around = bore.profile().diameterAt(contact.boreStation());
        Length inside = shape.diameterAt(contact.tipStation());
        lines.add(new Working.Line(
                Term.fine(r, "residual: zero where they touch, else the size of a step", around.minus(inside)),
                "D - d",
                List.of(Term.fine("D", "bore there", around), Term.fine("d", "tip there", inside)),
                Source.assumption("touching is not interference")));
    }

    private void endOfTip(List<Working.Line> lines) {
        Length finish = tip.finish().thickness().at(tip.trimmed());
        Length outside = Extremes.widestEnd(tip.outside());
        Term d = Term.fine("d", "diameter over the finish", outside);
        Term p = Term.fine("p", "finish, radial", finish);
        Term f = Term.fine(
                "f",
                "finished diameter at the end of the tip",
                removal.finished().get(0).mean());
        lines.add(new Working.Line(
                f,
                "min(d - 2 * p, D - w)",
                List.of(
                        d,
                        p,
                        Term.fine("D", "narrowest bore down to the insertion", Extremes.narrowest(bore, insertion)),
                        Term.fine("w", "wanted clearance", clearance)),
                Source.assumption("the finish is stripped, and the bore leaves the wanted clearance")));
        Term e = Term.fine("e", "stock on the diameter", removal.stockAtEnd());
        lines.add(new Working.Line(
                e, "d - f", List.of(d, f), Source.assumption("what comes off is what was there less what is left")));
        lines.add(new Working.Line(
                Term.fine("es", "of it structure", removal.structureAtEnd()),
                "e - 2 * p",
                List.of(e, p),
                Source.assumption("the finish comes off first")));
    }

    private void seatedLine(List<Working.Line> lines) {
        Length at = seated().leastAt();
        Length around = bore.profile().diameterAt(insertion.minus(at));
        Length inside = removal.profile().diameterAt(at);
        lines.add(new Working.Line(
                Term.fine("c", "clearance where it is least, " + at + " up", around.minus(inside)),
                "D - f",
                List.of(Term.fine("D", "bore there", around), Term.fine("f", "finished tip there", inside)),
                Source.assumption("the end of the tip is at the insertion")));
    }

    private void wallLeft(List<Working.Line> lines) {
        tip.wall().known().ifPresent(wall -> {
            Length at = removal.leastWallAt();
            Length thickness = wall.thickness().at(tip.trimmed().plus(at));
            Length outside = tip.outside().diameterAt(at);
            Length finished = removal.profile().diameterAt(at);
            Length left = finished.minus(outside.minus(thickness.times(2))).half();
            lines.add(new Working.Line(
                    Term.fine("t", "wall of structure left, " + at + " up", left),
                    "(f - (d - 2 * W)) / 2",
                    List.of(
                            Term.fine("f", "finished diameter there", finished),
                            Term.fine("d", "diameter over the finish there", outside),
                            Term.fine("W", "wall there, finish included", thickness)),
                    Source.assumption("the hole stays where it is")));
        });
    }

    private void volumes(List<Working.Line> lines) {
        Term before = Term.of(
                "V1", "inserted tip, untouched", new ProfileVolume(tip.outside().endedAt(insertion)).volume());
        Term after = Term.of("V2", "inserted tip, finished", new ProfileVolume(removal.profile()).volume());
        lines.add(new Working.Line(
                Term.of("V", "taken off", removal.volume()),
                "V1 - V2",
                List.of(before, after),
                Source.assumption("what comes off is what was there less what is left")));
        Optional<Density> structure = tip.wall().known().map(Wall::density).flatMap(Reading::known);
        if (removal.mass().isPresent()) {
            lines.add(new Working.Line(
                    Term.of("m", "mass taken off", removal.mass().get()),
                    "(pf * Vf + ps * Vs) / 1000",
                    List.of(
                            Term.of(
                                    "pf",
                                    "density of the finish",
                                    tip.finish().density().orElse(Density.ZERO)),
                            Term.of("Vf", "finish taken off", removal.finishVolume()),
                            Term.of("ps", "density of the structure", structure.orElse(Density.ZERO)),
                            Term.of("Vs", "structure taken off", removal.structureVolume())),
                    Source.assumption("each material by its own density")));
        }
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
            operations.add(Operation.of(
                    BenchStage.FIT,
                    FitInstruction.WORK_DOWN,
                    Term.fineAtMost("e", "structure to come off the diameter", removal.structureAtEnd()),
                    inserted));
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
