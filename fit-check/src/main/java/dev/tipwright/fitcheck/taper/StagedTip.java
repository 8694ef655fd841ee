package dev.tipwright.fitcheck.taper;

import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.insert.FirstContact;
import java.util.List;
import java.util.Optional;

/**
 * A tip on its way from what it is to its finished shape: with {@code e} still to come off the diameter it is {@code min(d, f + e)}.
 *
 * <p>Its insertion grows as {@code e} falls. In a taper of rate {@code q} a thousandth off is worth {@code 0.001 / q} of depth, so depth
 * is a micrometer, but only between two ends: before the tip has passed the mouth depth says nothing, and it seats when {@code e}
 * equals the wanted clearance, so the last of it says nothing either. Taking a measured insertion back to {@code e} therefore
 * gives an interval. All of it is exact arithmetic on the nanometres of the readings; an insertion is rounded down to the nanometre,
 * the ends of the interval outwards.
 *
 * <pre>{@code
 * Bore bore = Bore.ofTwoDiameters(
 *         Length.parse(".363 in"), Length.parse(".355 in"), Length.parse("1 1/4 in"), BoreEnd.FLAT);
 * DiameterProfile tip = DiameterProfile.cylinder(Length.parse(".3685 in"), Length.parse("8 in"));
 * DiameterProfile finished = DiameterProfile.of(
 *         Station.of(Length.ZERO, Length.parse(".351 in")),
 *         Station.of(Length.parse("1 1/4 in"), Length.parse(".359 in")));
 * StagedTip staged = new StagedTip(tip, finished, bore, bore.depth());
 * staged.contact(Length.ofThousandths(8)).insertion().inches();                       // = 0.625
 * staged.stock(Length.parse("5/8 in"), Length.ZERO).kind();                           // = READING
 * staged.stock(Length.parse("5/8 in"), Length.ZERO).most().thousandths();             // = 8.0
 * staged.stock(bore.depth(), Length.ZERO).kind();                                     // = BOTTOMED
 * staged.stock(bore.depth(), Length.ZERO).most().thousandths();                       // = 4.0
 * }</pre>
 *
 * @param tip diameter of the tip as it is, up from its end ({@code d})
 * @param finished diameter it is to have, over the insertion ({@code f})
 * @param bore the bore
 * @param insertion planned insertion; above zero, at most the depth of the bore and the length of either profile
 */
public record StagedTip(DiameterProfile tip, DiameterProfile finished, Bore bore, Length insertion) {

    private static final Length STEP = Length.ofNanometres(1);

    /**
     * Checks the values.
     *
     * @param tip diameter of the tip as it is, up from its end
     * @param finished diameter it is to have, over the insertion
     * @param bore the bore
     * @param insertion planned insertion; above zero, at most the depth of the bore and the length of either profile
     */
    public StagedTip {
        Require.given("tip", tip);
        Require.given("finished", finished);
        Require.given("bore", bore);
        Require.between(
                "insertion", insertion, STEP, bore.depth().min(tip.length()).min(finished.length()));
    }

    /** Tip, finished tip and running least of the bore over the insertion. */
    private Lines lines() {
        return new Lines(
                ExactLine.of(tip, Station::greatest, insertion),
                ExactLine.of(finished, Station::greatest, insertion),
                ExactLine.of(bore.profile(), Station::least, insertion).runningLeast());
    }

    /**
     * The stock there is to begin with.
     *
     * @return the greatest of {@code d - f} over the insertion; rounded up
     */
    public Length stock() {
        return Length.ofNanometres(lines().stock().ceiling());
    }

    /**
     * How far the tip goes in with so much still to come off.
     *
     * @param stock still to come off, on the diameter ({@code e}); within 100 mm; negative if too much is off
     * @return how far it goes in, at most the planned insertion, and where it binds
     */
    public FirstContact contact(Length stock) {
        Length most = Length.ofMillimetres(100);
        Require.between("stock", stock, most.negated(), most);
        Contact contact = lines().contact(Fraction.of(stock.nanometres()));
        Length deep = Length.ofNanometres(contact.insertion().floor());
        return new FirstContact(
                deep,
                Length.ofNanometres(contact.tipStation().floor()),
                deep.lessThan(insertion) ? FirstContact.Kind.TOUCHES : FirstContact.Kind.CLEARS);
    }

    /**
     * The stage with so much still to come off.
     *
     * @param stock still to come off, on the diameter ({@code e}); within 99 mm
     * @return insertion and what the next thousandth is worth
     */
    public Stage stage(Length stock) {
        Length most = Length.ofMillimetres(99);
        Require.between("stock", stock, most.negated(), most);
        FirstContact now = contact(stock);
        Length then = contact(stock.minus(Length.ofThousandths(1))).insertion();
        return new Stage(stock, now, then.minus(now.insertion()));
    }

    /**
     * What a measured insertion says of the stock still to come off.
     *
     * @param measured how far the tip went in; zero or more, at most the planned insertion
     * @param tolerance how far wrong that may be, either way; zero to 100 mm
     * @return the interval of stock that agrees with it, and its kind
     */
    public StockLeft stock(Length measured, Length tolerance) {
        Require.between("measured", measured, Length.ZERO, insertion);
        Require.within("tolerance", tolerance, 0, 100);
        Lines lines = lines();
        Fraction whole = lines.stock();
        Fraction high = lines.stock(Fraction.of(measured.minus(tolerance).nanometres()));
        Length most = Length.ofNanometres(high.ceiling());
        Length deepest = measured.plus(tolerance);
        if (!deepest.lessThan(insertion)) {
            return new StockLeft(StockLeft.Kind.BOTTOMED, Optional.empty(), most);
        }
        Fraction low = lines.stock(Fraction.of(deepest.plus(STEP).nanometres()));
        return new StockLeft(
                kind(lines, low, high, whole, deepest), Optional.of(Length.ofNanometres(low.floor())), most);
    }

    private static StockLeft.Kind kind(Lines lines, Fraction low, Fraction high, Fraction whole, Length deepest) {
        if (lines.contact(whole).insertion().floor() > deepest.nanometres()) {
            return StockLeft.Kind.DISAGREES;
        }
        if (low.same(high)) {
            return StockLeft.Kind.JUMP;
        }
        Fraction quarter = high.minus(low).by(Fraction.of(4));
        boolean held = lines.contact(low.plus(quarter))
                .insertion()
                .same(lines.contact(high.minus(quarter)).insertion());
        return held || high.same(whole) ? StockLeft.Kind.NOT_ENTERED : StockLeft.Kind.READING;
    }

    /**
     * The stock at which the tip seats: from here on depth says nothing.
     *
     * @return the greatest stock with which it goes in all the way; the wanted clearance, where the bore narrows all the way down and
     *     the tip has to be worked at its end; rounded down; negative if even the finished tip does not seat
     */
    public Length seatsAt() {
        return Length.ofNanometres(
                lines().stock(Fraction.of(insertion.nanometres())).floor());
    }

    /** Where nothing touches, all the way in and zero. */
    private record Contact(Fraction insertion, Fraction tipStation) {}

    private record Lines(ExactLine tip, ExactLine finished, ExactLine bore) {

        /** The greatest of {@code d - f}. */
        Fraction stock() {
            Fraction most = tip.after(Fraction.ZERO).minus(finished.after(Fraction.ZERO));
            for (Fraction at : ExactLine.places(tip, finished)) {
                most = most.max(tip.before(at).minus(finished.before(at)))
                        .max(tip.after(at).minus(finished.after(at)));
            }
            return most;
        }

        /**
         * The greatest stock with which the tip goes in at least so far, at most all there is: the least of {@code D(y) - f(z)} over
         * the places that come by each other on the way, {@code z + y < x}, and would bind there untouched, {@code d(z) > D(y)}.
         */
        Fraction stock(Fraction insertion) {
            Fraction least = stock();
            ExactLine around = bore.mirrored(insertion);
            List<Fraction> places = ExactLine.places(tip, finished, around);
            for (int k = 1; k < places.size(); k++) {
                Fraction from = places.get(k - 1);
                Fraction to = places.get(k);
                Fraction over = tip.after(from).minus(around.after(from));
                Fraction under = tip.before(to).minus(around.before(to));
                if (over.sign() <= 0 && under.sign() <= 0) {
                    continue;
                }
                Fraction start = around.after(from).minus(finished.after(from));
                Fraction end = around.before(to).minus(finished.before(to));
                least = least.min(over.sign() < 0 ? middle(over, under, start, end) : start)
                        .min(under.sign() < 0 ? middle(over, under, start, end) : end);
            }
            return least;
        }

        /** The value of a straight line where another is zero, from what both are at two places. */
        private static Fraction middle(Fraction over, Fraction under, Fraction start, Fraction end) {
            return start.plus(over.by(over.minus(under)).times(end.minus(start)));
        }

        Contact contact(Fraction stock) {
            ExactLine worked = tip.least(finished.plus(stock)).negated().runningLeast();
            ExactLine shrinking = bore.negated();
            Contact nearest = new Contact(bore.end(), Fraction.ZERO);
            for (ExactLine.Knot knot : worked.knots()) {
                Optional<Fraction> stop = bore.firstBelow(Fraction.ZERO.minus(knot.value()));
                nearest = nearer(nearest, knot.at(), stop.orElse(bore.end()));
            }
            for (ExactLine.Knot knot : shrinking.knots()) {
                Optional<Fraction> stop = worked.firstBelow(knot.value());
                nearest = nearer(nearest, stop.orElse(bore.end()), knot.at());
            }
            return nearest;
        }

        /** Of several places with the same insertion, the one nearest to the end of the tip. */
        private static Contact nearer(Contact nearest, Fraction tip, Fraction bore) {
            Fraction sum = tip.plus(bore);
            int sign = sum.compareTo(nearest.insertion());
            if (sign > 0) {
                return nearest;
            }
            return new Contact(sum, sign == 0 ? tip.min(nearest.tipStation()) : tip);
        }
    }
}
