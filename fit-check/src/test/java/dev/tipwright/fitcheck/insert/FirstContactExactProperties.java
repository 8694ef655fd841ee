package dev.tipwright.fitcheck.insert;

import static dev.tipwright.fitcheck.insert.EverySegmentPair.ORDER;
import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.profile.DiameterProfile;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Pins first contact to the exact rational answer, rounded down to the nanometre, on random shapes of every kind; and the place where
 * it binds to a place where tip and bore are as wide as each other.
 */
class FirstContactExactProperties {

    private static final BigFraction WIDE = BigFraction.of(1_000_000_000);

    @Provide
    Arbitrary<Shapes.Pair> pairs() {
        return Shapes.pairs();
    }

    @Provide
    Arbitrary<Shapes.Pair> wholePairs() {
        return Shapes.wholePairs();
    }

    /** The short way for few stations is as exact, and it names the same place as the long way. */
    @Property(tries = 10_000, shrinking = ShrinkingMode.BOUNDED)
    void theShortWayIsTheLongWay(@ForAll("wholePairs") Shapes.Pair pair) {
        FirstContact contact = FirstContact.of(pair.tip(), pair.bore());
        assertThat(contact.insertion().nanometres())
                .isEqualTo(EverySegmentPair.floor(EverySegmentPair.insertion(pair.tip(), pair.bore())));
        assertThat(contact).isEqualTo(FirstContact.merged(pair.tip(), pair.bore()));
    }

    @Provide
    Arbitrary<Shapes.Pair> cutOnCylinders() {
        return Shapes.cutOnCylinders();
    }

    /** A tip trimmed on its cylinder takes the short way too; one that is not quite a cylinder must not. */
    @Property(tries = 10_000, shrinking = ShrinkingMode.BOUNDED)
    void aCutOnACylinderIsTheLongWay(@ForAll("cutOnCylinders") Shapes.Pair pair) {
        FirstContact contact = FirstContact.of(pair.tip(), pair.bore());
        assertThat(contact.insertion().nanometres())
                .isEqualTo(EverySegmentPair.floor(EverySegmentPair.insertion(pair.tip(), pair.bore())));
        assertThat(contact).isEqualTo(FirstContact.merged(pair.tip(), pair.bore()));
    }

    /** No tolerance: the search claims to be exact, so it must give the very nanometre. */
    @Property(tries = 10_000, shrinking = ShrinkingMode.BOUNDED)
    void isTheLeastSumOverAllPairsOfSegments(@ForAll("pairs") Shapes.Pair pair) {
        BigFraction exact = EverySegmentPair.insertion(pair.tip(), pair.bore());
        assertThat(FirstContact.of(pair.tip(), pair.bore()).insertion().nanometres())
                .isEqualTo(EverySegmentPair.floor(exact));
    }

    /**
     * One of the two places is a station and exact, the other is rounded down by less than a nanometre, so over the next
     * nanometre of each the widths must share a value. The end of the tip has every width below its own, and the mouth every width
     * above.
     */
    @Property(tries = 10_000, shrinking = ShrinkingMode.BOUNDED)
    void bindsWhereTipAndBoreAreAsWide(@ForAll("pairs") Shapes.Pair pair) {
        FirstContact contact = FirstContact.of(pair.tip(), pair.bore());
        if (contact.kind() == FirstContact.Kind.CLEARS) {
            assertThat(contact.boreStation()).isEqualTo(pair.bore().depth());
            return;
        }
        long z = contact.tipStation().nanometres();
        long y = contact.boreStation().nanometres();
        BigFraction[] tip = range(pair.tip(), true, z);
        BigFraction[] bore = range(pair.bore().profile(), false, y);
        BigFraction tipLow = z == 0 ? BigFraction.ZERO : tip[0];
        BigFraction boreHigh = y == 0 ? WIDE : bore[1];
        assertThat(tipLow).isLessThanOrEqualTo(boreHigh);
        assertThat(bore[0]).isLessThanOrEqualTo(tip[1]);
    }

    /** Least and greatest diameter from a place to one nanometre on, steps included. */
    private static BigFraction[] range(DiameterProfile profile, boolean greatest, long place) {
        BigFraction from = BigFraction.of(place);
        BigFraction to = BigFraction.of(place + 1);
        BigFraction low = WIDE;
        BigFraction high = BigFraction.ZERO;
        for (EverySegmentPair.Segment segment : EverySegmentPair.segments(profile, greatest)) {
            BigFraction start = ORDER.compare(segment.from(), from) > 0 ? segment.from() : from;
            BigFraction end = ORDER.compare(segment.to(), to) < 0 ? segment.to() : to;
            if (ORDER.compare(start, end) <= 0) {
                for (BigFraction value : List.of(segment.value(start), segment.value(end))) {
                    low = ORDER.compare(value, low) < 0 ? value : low;
                    high = ORDER.compare(value, high) > 0 ? value : high;
                }
            }
        }
        return new BigFraction[] {low, high};
    }
}
