package dev.tipwright.swingweight.aim;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.plan.BenchStage;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.plan.StepReport;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The tip weight of a stock, or the two stacked in one tip, that bring a club nearest to a wanted swing weight: every single piece
 * and every pair is looked at. Of choices equally near, to a billionth of a point, it is the one of fewest pieces, then the
 * lightest, then the first by label. Nothing is chosen if nothing is nearer than no weight at all.
 *
 * <ul>
 *   <li>A stem must enter the tip, where its inside is known, and a flange the bottom of the bore.
 *   <li>A flange lies between tip and bottom of the bore: if it does not find room there, the insertion is shorter by what is missing.
 *   <li>In a stack the lower piece has no flange and its stem is even, so it is twice as long as its centre is deep; the upper piece,
 *       without a flange too, stands on it.
 * </ul>
 *
 * <pre>{@code
 * SwingWeightScale scale = SwingWeightScale.LETTERS_AT_14_INCHES;
 * TipWeight three = Samples.tipWeights().get(0).withLabel("three").withMass(Mass.ofGrams(3)).withFlange(Length.ZERO);
 * TipWeight four = three.withLabel("four").withMass(Mass.ofGrams(4));
 * SwingWeight wanted = Balance.of(Samples.build()).on(scale).plus(3.2);
 * StockChoice.of(Samples.build(), scale, wanted, List.of(three, four), 1).pieces().size();   // = 1
 * StockChoice.of(Samples.build(), scale, wanted, List.of(three, four), 2).pieces().size();   // = 2
 * }</pre>
 *
 * @param build the club without them, seated
 * @param scale the scale
 * @param wanted what it is to read
 * @param pieces what is chosen, the lower first, each placed as it will lie; may be empty
 * @param passedOver how many of the stock do not go in
 */
public record StockChoice(
        Build build, SwingWeightScale scale, SwingWeight wanted, List<TipWeight> pieces, int passedOver)
        implements StepReport {

    /**
     * Checks the values.
     *
     * @param build the club without them, seated
     * @param scale the scale
     * @param wanted what it is to read
     * @param pieces what is chosen, the lower first, each placed as it will lie; at most two, may be empty
     * @param passedOver how many of the stock do not go in; zero or more
     */
    public StockChoice {
        Require.given("build", build);
        Require.that(
                build.work().seat().insertion().moreThan(Length.ZERO),
                "build",
                "must be seated",
                build.work().seat());
        Require.given("scale", scale);
        Require.given("wanted", wanted);
        pieces = Require.list("pieces", pieces);
        Require.that(pieces.size() <= 2, "pieces", "must be at most two", pieces.size());
        for (TipWeight piece : pieces) {
            Require.that(seat(build, piece.flange()).isPresent(), "pieces", "must leave some insertion", piece);
        }
        Require.that(passedOver >= 0, "passedOver", "must be zero or more", passedOver);
    }

    /**
     * The best choice of a stock.
     *
     * @param build the club, seated, without a tip weight
     * @param scale the scale
     * @param wanted what it is to read
     * @param stock the pieces there are, one entry a piece, at most 1000; may be empty
     * @param most how many may go into one tip, 1 or 2
     * @return the choice
     */
    public static StockChoice of(
            Build build, SwingWeightScale scale, SwingWeight wanted, List<TipWeight> stock, int most) {
        Require.given("build", build);
        List<TipWeight> all = Require.list("stock", stock);
        Require.that(all.size() <= 1000, "stock", "must be at most 1000 pieces", all.size());
        Require.that(most == 1 || most == 2, "most", "must be 1 or 2", most);
        List<TipWeight> usable =
                all.stream().filter(piece -> enters(build, piece)).toList();
        StockSearch search =
                new StockSearch(build, Require.given("scale", scale), Require.given("wanted", wanted), usable);
        return new StockChoice(build, scale, wanted, search.best(most), all.size() - usable.size());
    }

    /**
     * The inside diameter at the end of the trimmed tip: outside less twice the wall.
     *
     * @param build the club
     * @return the diameter; empty where the wall is not known or the tip was not measured so far up
     */
    public static Optional<Length> insideOfTip(Build build) {
        Require.given("build", build);
        ShaftSection section = build.parts().shaft().section();
        if (!build.work().tipTrim().lessThan(section.outside().to())) {
            return Optional.empty();
        }
        Length outside = build.trimmedTip().diameterAt(Length.ZERO);
        return section.wall()
                .known()
                .map(wall -> outside.minus(
                                wall.thickness().at(build.work().tipTrim()).times(2))
                        .max(Length.ZERO));
    }

    private static boolean enters(Build build, TipWeight piece) {
        Optional<Length> inside = insideOfTip(build);
        return (inside.isEmpty() || !piece.stem().moreThan(inside.get()))
                && seat(build, piece.flange()).isPresent();
    }

    /**
     * How a tip seats with a flange under it: as before, or lifted by what room is missing between tip and bottom of the bore.
     *
     * @param build the club, seated
     * @param flange thickness of the flange; zero or more
     * @return the seat; empty where the flange leaves no insertion
     */
    public static Optional<Seat> seatOn(Build build, Length flange) {
        Require.given("build", build);
        return seat(build, Require.notNegative("flange", flange));
    }

    static Optional<Seat> seat(Build build, Length flange) {
        Seat seat = build.work().seat();
        Bore bore = build.parts().head().bore();
        Length room = bore.depth().minus(flange);
        if (flange.equals(Length.ZERO)
                || bore.end() == BoreEnd.THROUGH
                || !seat.insertion().moreThan(room)) {
            return Optional.of(seat);
        }
        return room.moreThan(Length.ZERO) ? Optional.of(new Seat(room, Stop.FLANGE)) : Optional.empty();
    }

    /**
     * The club with what is chosen: seated on the flange, if there is one that lifts the tip.
     *
     * @return the same parts with more work
     */
    public Build after() {
        Build after = build;
        for (TipWeight piece : pieces) {
            after = after.withWork(after.work()
                    .withSeat(seat(after, piece.flange()).orElseThrow())
                    .plus(piece));
        }
        return after;
    }

    /**
     * What the scale reads with what is chosen.
     *
     * @return the reading
     */
    public SwingWeight reads() {
        return Balance.of(after()).on(scale);
    }

    /**
     * What the pieces weigh together.
     *
     * @return the sum; zero if there are none
     */
    public Mass mass() {
        return pieces.stream().map(TipWeight::mass).reduce(Mass.ZERO, Mass::plus);
    }

    /**
     * What came of it.
     *
     * @return findings, the choice first
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        Term off = Term.number("off", "points off", Math.abs(reads().over(wanted)));
        findings.add(
                pieces.isEmpty()
                        ? Finding.caution(AimCode.NOTHING_NEARER, off)
                        : Finding.note(
                                AimCode.STOCK_CHOSEN,
                                Term.of("pieces", "what is chosen", names()),
                                Term.of("value", "mass", mass()),
                                Term.of("reads", "swing weight", scale.designation(reads())),
                                off));
        Length before = build.work().seat().insertion();
        Length then = after().work().seat().insertion();
        if (then.lessThan(before)) {
            findings.add(Finding.caution(
                    AimCode.FLANGE_SHORTENS,
                    Term.of("before", "insertion without it", before),
                    Term.of("i", "insertion", then)));
        }
        if (passedOver > 0) {
            findings.add(Finding.note(AimCode.DOES_NOT_ENTER, Term.count("n", "passed over", passedOver)));
        }
        return findings;
    }

    /** Two labels can be longer than a word of a finding. */
    private String names() {
        String names =
                String.join(" and ", pieces.stream().map(TipWeight::label).toList());
        return names.length() > 80 ? pieces.size() + " pieces" : names;
    }

    @Override
    public List<Term> headline() {
        return List.of(
                Term.of("m", "tip weight", mass()), Term.of("reads", "swing weight", scale.designation(reads())));
    }

    @Override
    public List<Operation> operations() {
        return pieces.stream()
                .map(piece -> Operation.of(
                        BenchStage.DRY_BUILD,
                        AimInstruction.FIT_TIP_WEIGHT,
                        Term.of("weight", "tip weight", piece.label()),
                        Term.of("m", "its mass", piece.mass()),
                        Term.of("z", "its centre above the end of the tip", piece.centre())))
                .toList();
    }

    @Override
    public Working working() {
        Term moment =
                Term.of("M", "moment with what is chosen", Balance.of(after()).momentAbout(scale.fulcrum()));
        Term reads = Term.number("P", "points above the zero of the scale", reads().points());
        return new Working(
                "Weights from stock",
                List.of(
                        new Working.Line(
                                reads,
                                "(M - M0) / K",
                                List.of(
                                        moment,
                                        Term.of("M0", "moment that reads zero", scale.zero()),
                                        Term.of("K", "moment of a point", scale.perPoint())),
                                Source.commonPractice("a scale with a fulcrum, a zero and a moment for each point")),
                        new Working.Line(
                                Term.number("off", "points over the target", reads().over(wanted)),
                                "P - Pw",
                                List.of(reads, Term.number("Pw", "points wanted", wanted.points())),
                                Source.assumption("of the stock, what leaves least"))));
    }
}
