package dev.tipwright.fitcheck;

import dev.tipwright.core.evidence.Caution;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.plan.BenchStage;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.insert.Chamfer;
import dev.tipwright.fitcheck.insert.Clearance;
import dev.tipwright.fitcheck.insert.FirstContact;
import dev.tipwright.fitcheck.taper.MaterialRemoval;
import dev.tipwright.fitcheck.taper.TipSection;
import java.util.ArrayList;
import java.util.List;

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
                Term.fine("i0", "first contact, untouched", untouched.insertion()),
                Term.fine("i1", "first contact, finish off", bare.insertion()),
                Term.fine("e", "stock at the end of the tip", removal.stockAtEnd()),
                Term.fine("es", "of it structure", removal.structureAtEnd()),
                Term.of("V", "taken off", removal.volume())));
        removal.leastWall().ifPresent(wall -> headline.add(Term.fine("t", "wall of structure left", wall)));
        removal.leastStiffness().ifPresent(share -> headline.add(Term.number("EI/EI0", "stiffness left", share)));
        return headline;
    }

    @Override
    public Working working() {
        Length room = bore.profile().diameterAt(insertion);
        Length outside = tip.outside().diameterAt(Length.ZERO);
        Length finish = tip.finish().thickness().at(tip.trimmed());
        Length finished = removal.finished().get(0).mean();
        Term f = Term.fine("f", "finished diameter at the end of the tip", finished);
        return new Working(
                "Tip in bore, at the end of the tip",
                List.of(
                        new Working.Line(
                                f,
                                "min(d - 2 p, D - w)",
                                List.of(
                                        Term.fine("d", "diameter over the finish", outside),
                                        Term.fine("p", "finish, radial", finish),
                                        Term.fine("D", "bore at the insertion", room),
                                        Term.fine("w", "wanted clearance", clearance)),
                                Source.assumption("the finish is stripped, and the bore leaves the wanted clearance")),
                        new Working.Line(
                                Term.fine("e", "stock on the diameter", removal.stockAtEnd()),
                                "d - f",
                                List.of(Term.fine("d", "diameter over the finish", outside), f),
                                Source.assumption("what comes off is what was there less what is left"))));
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
                    Term.fine("b", "bare diameter", tip.stripped().diameterAt(Length.ZERO))));
        }
        if (removal.structureVolume().cubicMillimetres() > 0) {
            operations.add(Operation.of(
                    BenchStage.FIT,
                    FitInstruction.WORK_DOWN,
                    Term.fine("e", "structure to come off the diameter", removal.structureAtEnd()),
                    inserted));
            Length chamfer = insertion.minus(Chamfer.depth(bore).min(insertion));
            for (Station station : removal.finished()) {
                if (station.at().moreThan(chamfer)) {
                    break; // what faces the chamfer fades out by itself
                }
                operations.add(Operation.of(
                        BenchStage.FIT,
                        FitInstruction.STATION,
                        Term.fine("f", "finished diameter", station.least()),
                        Term.of("z", "from the end of the tip", station.at())));
            }
        }
        operations.add(Operation.of(
                BenchStage.DRY_BUILD,
                FitInstruction.TRY_FIT,
                inserted,
                Term.fine("c", "least clearance of the finished tip", seated().least())));
        operations.add(Operation.of(BenchStage.BOND, FitInstruction.BOND, inserted));
        return operations;
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
