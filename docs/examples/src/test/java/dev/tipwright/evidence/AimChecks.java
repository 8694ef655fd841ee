package dev.tipwright.evidence;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.aim.InertiaSolve;
import dev.tipwright.swingweight.aim.LengthSolve;
import dev.tipwright.swingweight.aim.MassSolve;
import dev.tipwright.swingweight.aim.StockChoice;
import dev.tipwright.swingweight.scale.SwingWeight;
import java.util.List;
import java.util.stream.Collectors;

/** Bringing a club to a wanted number. */
final class AimChecks {

    private static final Mass LEAST = Mass.ofGrams(1);
    private static final Mass MOST = Mass.ofGrams(1000);

    /** A moment is good to about 1e-14 of itself, and a gram is a few hundredths of a thousandth of it. */
    private static final Bound MASS = Bound.of(1e-10, "the grid of masses, and the rounding of a moment far larger");

    private static final Bound STEP =
            Bound.printedAnd(1e-6, "half the last digit, and the first nanometre that reaches it");

    private AimChecks() {}

    static void targetSolve(Tally tally) {
        tally.cases("target-solve").forEach(row -> {
            Build club = Weighed.club(row);
            SwingWeight wanted = new SwingWeight(row.number("wanted_points"));
            if (row.text("what").equals("cut length")) {
                LengthSolve solve = LengthSolve.of(club, BalanceChecks.LETTERS, wanted, Club.mm(500));
                row.check("answer", "cut length", "mm", solve.cutLength().millimetres(), STEP);
            } else {
                MassSolve solve = mass(row, club, wanted);
                row.check(
                        "answer",
                        row.text("what"),
                        "g",
                        solve.exact().orElseThrow().grams(),
                        MASS);
            }
        });
        tally.cases("target-inertia").forEach(row -> {
            Inertia wanted = Inertia.ofKilogramSquareCentimetres(row.number("wanted_kg_cm2"));
            Build after = new InertiaSolve(Weighed.club(row), wanted, 0).after();
            row.check("head_needed_g", after.parts().head().mass().mass().grams(), MASS);
        });
    }

    private static MassSolve mass(Case row, Build club, SwingWeight wanted) {
        return switch (row.text("what")) {
            case "head" -> MassSolve.ofHead(club, BalanceChecks.LETTERS, wanted, LEAST, MOST);
            case "grip" -> MassSolve.ofGrip(club, BalanceChecks.LETTERS, wanted, LEAST, MOST);
            case "tip weight" ->
                MassSolve.ofTipWeight(club, BalanceChecks.LETTERS, wanted, row.length("place_mm"), MOST);
            default -> MassSolve.ofCounterweight(club, BalanceChecks.LETTERS, wanted, row.length("place_mm"), MOST);
        };
    }

    static void weightsFromStock(Tally tally) {
        tally.cases("weights-from-stock").forEach(row -> {
            SwingWeight wanted = new SwingWeight(row.number("wanted_points"));
            StockChoice choice = StockChoice.of(
                    Weighed.club(row), BalanceChecks.LETTERS, wanted, stock(row), (int) row.number("most"));
            String pieces = choice.pieces().stream().map(TipWeight::label).collect(Collectors.joining(" "));
            row.says("pieces", pieces);
            row.check("points_from_a0", choice.reads().points(), Bound.PRINTED);
        });
    }

    private static List<TipWeight> stock(Case row) {
        Length centre = row.length("centre_mm");
        return row.words("stock_g").stream()
                .map(word -> word.split(":", -1))
                .map(piece -> new TipWeight(
                        piece[0], Mass.ofGrams(Double.parseDouble(piece[1])), Club.mm(4), Length.ZERO, centre))
                .toList();
    }
}
