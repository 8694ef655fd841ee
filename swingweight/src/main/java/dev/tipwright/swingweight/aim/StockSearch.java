package dev.tipwright.swingweight.aim;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.quantity.FirstMoment;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.balance.BalancePart;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Looks at every piece of a stock, and at every pair, for the one that leaves a club nearest to its target. */
final class StockSearch {

    private final Build build;
    private final SwingWeightScale scale;
    private final SwingWeight wanted;
    private final List<TipWeight> stock;
    private final Map<Length, FirstMoment> momentByFlange = new TreeMap<>();

    private record Candidate(List<TipWeight> pieces, double off) {

        Mass mass() {
            return pieces.stream().map(TipWeight::mass).reduce(Mass.ZERO, Mass::plus);
        }

        String labels() {
            return String.join("\n", pieces.stream().map(TipWeight::label).toList());
        }
    }

    private static final Comparator<Candidate> BEST_FIRST = Comparator.comparingDouble(Candidate::off)
            .thenComparing(candidate -> candidate.pieces().size())
            .thenComparing(Candidate::mass)
            .thenComparing(Candidate::labels);

    StockSearch(Build build, SwingWeightScale scale, SwingWeight wanted, List<TipWeight> stock) {
        this.build = build;
        this.scale = scale;
        this.wanted = wanted;
        this.stock = stock;
    }

    List<TipWeight> best(int most) {
        Candidate best = candidate(List.of());
        for (int i = 0; i < stock.size(); i++) {
            best = better(best, List.of(stock.get(i)));
            for (int j = 0; most == 2 && j < stock.size(); j++) {
                if (i != j && stacks(stock.get(i), stock.get(j))) {
                    best = better(best, List.of(stock.get(i), on(stock.get(i), stock.get(j))));
                }
            }
        }
        return best.pieces();
    }

    private Candidate better(Candidate best, List<TipWeight> pieces) {
        Candidate candidate = candidate(pieces);
        return BEST_FIRST.compare(candidate, best) < 0 ? candidate : best;
    }

    private static boolean stacks(TipWeight lower, TipWeight upper) {
        return lower.flange().equals(Length.ZERO)
                && upper.flange().equals(Length.ZERO)
                && lower.centre().moreThan(Length.ZERO)
                && lower.centre().times(2).plus(upper.centre()).compareTo(Length.ofMillimetres(500)) <= 0;
    }

    private static TipWeight on(TipWeight lower, TipWeight upper) {
        return upper.withCentre(lower.centre().times(2).plus(upper.centre()));
    }

    /** Off by billionths of a point, whole, so that rounding does not decide between equals. */
    private Candidate candidate(List<TipWeight> pieces) {
        Length flange = pieces.stream().map(TipWeight::flange).reduce(Length.ZERO, Length::max);
        FirstMoment moment = momentByFlange.computeIfAbsent(flange, this::momentWithout);
        for (TipWeight piece : pieces) {
            Length place = MassForTarget.fromTop(build, piece);
            moment = moment.plus(
                    BalancePart.at(piece.label(), piece.mass(), place).about(scale.fulcrum()));
        }
        return new Candidate(pieces, Math.rint(Math.abs(scale.read(moment).over(wanted)) * 1e9));
    }

    /** The club seated on a flange of that thickness, without its mass. The tip stays where it is, the head moves. */
    private FirstMoment momentWithout(Length flange) {
        Build seated = build.withWork(
                build.work().withSeat(StockChoice.seat(build, flange).orElseThrow()));
        return Balance.of(seated).momentAbout(scale.fulcrum());
    }
}
