package dev.tipwright.fitcheck;

import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.Blank;
import dev.tipwright.core.plan.ClubFinding;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.SetReview;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.taper.MaterialRemoval;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Holds the stock to come off each tip against the middle (the median) of the shafts of its blank. A tip with more to come off than the others
 * looks alarming at the belt: this says whether the surplus is finish, which does not matter, or structure, which may mean a
 * misread tip or bore. It speaks from three thousandths of an inch on, an assumption of this library: about what one sees.
 */
public final class StockReview implements SetReview {

    /** The surplus from which it speaks, on the diameter. */
    public static final Length NOTICEABLE = Length.ofThousandths(3);

    /** Makes the review. */
    public StockReview() {}

    @Override
    public List<ClubFinding> review(List<ClubPlan> clubs) {
        List<ClubPlan> set = Require.list("clubs", clubs);
        List<ClubFinding> found = new ArrayList<>();
        for (ClubPlan club : set) {
            club.find(TipFit.class).ifPresent(fit -> found.addAll(review(club, fit.removal(), sameBlank(club, set))));
        }
        return found;
    }

    private static List<ClubPlan> sameBlank(ClubPlan club, List<ClubPlan> set) {
        return set.stream().filter(other -> blank(other).equals(blank(club))).toList();
    }

    private static Blank blank(ClubPlan club) {
        return club.after().parts().shaft().blank();
    }

    private static List<ClubFinding> review(ClubPlan club, MaterialRemoval removal, List<ClubPlan> blank) {
        Length more = removal.stockAtEnd().minus(middle(blank, MaterialRemoval::stockAtEnd));
        Length structure = removal.structureAtEnd().minus(middle(blank, MaterialRemoval::structureAtEnd));
        if (structure.compareTo(NOTICEABLE) >= 0) {
            return List.of(new ClubFinding(
                    club.label(),
                    Finding.caution(
                            FitCode.MORE_STRUCTURE_THAN_SET, Term.fine("x", "surplus of structure", structure))));
        }
        if (more.compareTo(NOTICEABLE) >= 0) {
            return List.of(new ClubFinding(
                    club.label(),
                    Finding.note(
                            FitCode.MORE_FINISH_THAN_SET,
                            Term.fine("x", "surplus of stock", more),
                            Term.fine(
                                    "xf", "of it finish", more.minus(structure).min(more)))));
        }
        return List.of();
    }

    /** The median over the clubs that have a fit; of an even number, the lower of the two in the middle. */
    private static Length middle(List<ClubPlan> clubs, Function<MaterialRemoval, Length> of) {
        List<Length> sorted = clubs.stream()
                .flatMap(club -> club.find(TipFit.class).stream())
                .map(fit -> of.apply(fit.removal()))
                .sorted()
                .toList();
        return sorted.get((sorted.size() - 1) / 2);
    }
}
