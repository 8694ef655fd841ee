package dev.tipwright.fitcheck.taper;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.commons.math3.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/**
 * The staged tip against a search that shares nothing with it: in exact fractions, every piece of the tip against every piece of the
 * bore, the corners of the region in which they overlap listed one by one. The 10 000 pairs are drawn on a coarse grid, so that
 * touching, steps and equal diameters are common.
 */
class StagedTipExactTest {

    private static final int PAIRS = 10_000;
    private static final int END = 1000;

    /** A straight piece: from place 0 to 1, value {@code v0} to {@code v1}. */
    private record Piece(long at0, long at1, long v0, long v1) {

        BigFraction value(BigFraction at) {
            return at0 == at1
                    ? new BigFraction(v0)
                    : new BigFraction(v1 - v0, at1 - at0)
                            .multiply(at.subtract(new BigFraction(at0)))
                            .add(new BigFraction(v0));
        }
    }

    @Test
    void insertionIsThatOfTheSearchOverAllPairsOfPieces() {
        Random random = new Random(20_240_607);
        for (int n = 0; n < PAIRS; n++) {
            StagedTip staged = staged(random);
            int stock = random.nextInt(81) - 20;
            long expected = search(staged, stock);
            assertThat(staged.contact(Length.ofNanometres(stock)).insertion().nanometres())
                    .as("pair %d, %s with %d", n, staged, stock)
                    .isEqualTo(expected);
        }
    }

    @Test
    void theInverseHoldsTheStageAndNothingThatStopsElsewhere() {
        Random random = new Random(42);
        Map<StockLeft.Kind, Integer> seen = new EnumMap<>(StockLeft.Kind.class);
        for (int n = 0; n < PAIRS; n++) {
            StagedTip staged = staged(random);
            Length whole = staged.stock();
            Length stock = Length.ofNanometres(random.nextInt(81) - 20).min(whole);
            Length measured = staged.contact(stock).insertion();
            StockLeft left = staged.stock(measured, Length.ZERO);
            seen.merge(left.kind(), 1, Integer::sum);
            assertThat(left.holds(stock))
                    .as("pair %d, %s with %s: %s", n, staged, stock, left)
                    .isTrue();
            // The ends are rounded outwards by less than a nanometre: one inside them, the tip stops where it was
            // measured.
            Length high = left.most().minus(Length.ofNanometres(1));
            if (left.holds(high)) {
                assertThat(staged.contact(high).insertion()).isGreaterThanOrEqualTo(measured);
            }
            left.least()
                    .map(low -> low.plus(Length.ofNanometres(1)))
                    .filter(left::holds)
                    .ifPresent(
                            low -> assertThat(staged.contact(low).insertion()).isLessThanOrEqualTo(measured));
        }
        assertThat(seen.get(StockLeft.Kind.READING)).isGreaterThan(100);
        assertThat(seen.get(StockLeft.Kind.NOT_ENTERED)).isGreaterThan(100);
        assertThat(seen.get(StockLeft.Kind.BOTTOMED)).isGreaterThan(100);
    }

    @Test
    void moreOffNeverGoesInLess() {
        Random random = new Random(7);
        for (int n = 0; n < 1000; n++) {
            StagedTip staged = staged(random);
            long before = -1;
            for (long stock = 60; stock >= -20; stock -= 10) {
                long now =
                        staged.contact(Length.ofNanometres(stock)).insertion().nanometres();
                assertThat(now).isGreaterThanOrEqualTo(before);
                before = now;
            }
        }
    }

    private static StagedTip staged(Random random) {
        return new StagedTip(
                profile(random, 80, 140),
                profile(random, 60, 110),
                Bore.ofReadings(profile(random, 70, 130).stations(), BoreEnd.FLAT),
                Length.ofNanometres(END));
    }

    /** One to five pieces on a grid of hundreds, a step now and then, diameters on a grid of tens. */
    private static DiameterProfile profile(Random random, int least, int most) {
        List<Station> stations = new ArrayList<>();
        for (int at = 0; at <= END; at += 100) {
            boolean end = at == 0 || at == END;
            int readings = end ? 1 : random.nextInt(10) < 6 ? 0 : 1 + random.nextInt(2);
            for (int k = 0; k < readings; k++) {
                int diameter = least + 10 * random.nextInt((most - least) / 10 + 1);
                stations.add(Station.of(Length.ofNanometres(at), Length.ofNanometres(diameter)));
            }
        }
        return DiameterProfile.of(stations);
    }

    private static List<Piece> pieces(DiameterProfile profile) {
        List<Piece> pieces = new ArrayList<>();
        for (int k = 1; k < profile.stations().size(); k++) {
            Station low = profile.stations().get(k - 1);
            Station high = profile.stations().get(k);
            pieces.add(new Piece(
                    low.at().nanometres(),
                    high.at().nanometres(),
                    low.least().nanometres(),
                    high.least().nanometres()));
        }
        return pieces;
    }

    /** The least of z + y over the closure of {d(z) > D(y), f(z) + e > D(y)} in every box of pieces. */
    private static long search(StagedTip staged, long stock) {
        BigFraction best = new BigFraction(END);
        for (Piece d : pieces(staged.tip())) {
            for (Piece f : pieces(staged.finished())) {
                long from = Math.max(d.at0(), f.at0());
                long to = Math.min(d.at1(), f.at1());
                if (from >= to) {
                    continue;
                }
                for (Piece bore : pieces(staged.bore().profile())) {
                    boolean near = best.compareTo(new BigFraction(from + bore.at0())) > 0;
                    if (near && bore.at0() < bore.at1() && mayBind(d, bore, 0) && mayBind(f, bore, stock)) {
                        best = min(best, corner(d, f, bore, from, to, stock));
                    }
                }
            }
        }
        return best.getNumerator().divide(best.getDenominator()).longValueExact();
    }

    private static boolean mayBind(Piece tip, Piece bore, long offset) {
        return Math.max(tip.v0(), tip.v1()) + offset > Math.min(bore.v0(), bore.v1());
    }

    private static BigFraction min(BigFraction a, BigFraction b) {
        return a.compareTo(b) <= 0 ? a : b;
    }

    /**
     * In one box the region is a convex polygon: start with the box, cut it by the two half planes (Sutherland and Hodgman), and take
     * the nearest corner; the open region is there if the polygon has a corner strictly inside each half plane and area.
     */
    private static BigFraction corner(Piece d, Piece f, Piece bore, long from, long to, long stock) {
        List<BigFraction[]> polygon = new ArrayList<>();
        long[][] box = {{from, bore.at0()}, {to, bore.at0()}, {to, bore.at1()}, {from, bore.at1()}};
        for (long[] point : box) {
            polygon.add(new BigFraction[] {new BigFraction(point[0]), new BigFraction(point[1])});
        }
        polygon = cut(polygon, d, bore, 0);
        polygon = cut(polygon, f, bore, stock);
        if (area(polygon).compareTo(BigFraction.ZERO) == 0
                || !inside(polygon, d, bore, 0)
                || !inside(polygon, f, bore, stock)) {
            return new BigFraction(END);
        }
        BigFraction best = new BigFraction(END);
        for (BigFraction[] point : polygon) {
            best = min(best, point[0].add(point[1]));
        }
        return best;
    }

    private static boolean inside(List<BigFraction[]> polygon, Piece tip, Piece bore, long offset) {
        return polygon.stream().anyMatch(point -> over(point, tip, bore, offset).compareTo(BigFraction.ZERO) > 0);
    }

    private static BigFraction area(List<BigFraction[]> polygon) {
        BigFraction twice = BigFraction.ZERO;
        for (int k = 0; k < polygon.size(); k++) {
            BigFraction[] a = polygon.get(k);
            BigFraction[] b = polygon.get((k + 1) % polygon.size());
            twice = twice.add(a[0].multiply(b[1])).subtract(b[0].multiply(a[1]));
        }
        return twice;
    }

    private static List<BigFraction[]> cut(List<BigFraction[]> polygon, Piece tip, Piece bore, long offset) {
        List<BigFraction[]> kept = new ArrayList<>();
        for (int k = 0; k < polygon.size(); k++) {
            BigFraction[] a = polygon.get(k);
            BigFraction[] b = polygon.get((k + 1) % polygon.size());
            BigFraction here = over(a, tip, bore, offset);
            BigFraction there = over(b, tip, bore, offset);
            if (here.compareTo(BigFraction.ZERO) >= 0) {
                kept.add(a);
            }
            if (here.multiply(there).compareTo(BigFraction.ZERO) < 0) {
                BigFraction part = here.divide(here.subtract(there));
                kept.add(new BigFraction[] {
                    a[0].add(part.multiply(b[0].subtract(a[0]))), a[1].add(part.multiply(b[1].subtract(a[1])))
                });
            }
        }
        return kept;
    }

    private static BigFraction over(BigFraction[] point, Piece tip, Piece bore, long offset) {
        return tip.value(point[0]).add(new BigFraction(offset)).subtract(bore.value(point[1]));
    }
}
