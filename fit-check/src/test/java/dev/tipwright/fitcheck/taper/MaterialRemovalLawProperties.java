package dev.tipwright.fitcheck.taper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.part.Finish;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.insert.Clearance;
import dev.tipwright.fitcheck.insert.FirstContact;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;

/**
 * Laws of the work on a tip, each with one example worked by hand: the finished tip seats, it leaves the wanted clearance and just that
 * where structure came off, and what comes off adds up along the tip.
 *
 * <p>The finished shape is rounded to the nanometre in place and diameter. On the slopes here, eight to one at most, half a nanometre of
 * place is worth four of diameter, so clearances hold to {@link #ROUNDING}.
 */
class MaterialRemovalLawProperties {

    /** Half a nanometre of diameter, and four for half a nanometre of place. */
    private static final Length ROUNDING = Length.ofNanometres(5);

    @Provide
    Arbitrary<Sections.Job> jobs() {
        return Sections.jobs();
    }

    @Property(shrinking = ShrinkingMode.BOUNDED)
    void aFinishedTipSeats(@ForAll("jobs") Sections.Job job) {
        FirstContact contact = FirstContact.of(job.removal().profile(), job.bore());
        assertThat(contact.insertion()).isGreaterThanOrEqualTo(job.insertion());
    }

    /** Narrow at the mouth, .010 wider half way down: the tip must pass the mouth, so it is .351 all the way. */
    @Example
    void aFinishedTipSeatsInABarrelledBore() {
        Bore barrel = Bore.ofReadings(List.of(at(0, 355), at(500, 365), at(1000, 355)), BoreEnd.FLAT);
        TipSection tip = TipSection.of(DiameterProfile.cylinder(mil(370), mil(8000)), Finish.NONE);
        MaterialRemoval removal = MaterialRemoval.of(tip, barrel, mil(1000), mil(4));
        assertThat(removal.profile().diameterAt(mil(500))).isEqualTo(mil(351));
        assertThat(FirstContact.of(removal.profile(), barrel).kind()).isEqualTo(FirstContact.Kind.CLEARS);
    }

    /** A waist at half depth: below it the bore is wider again, and the tip that has passed it is not. */
    @Example
    void aFinishedTipSeatsPastAWaist() {
        Bore waist = Bore.ofReadings(List.of(at(0, 365), at(500, 355), at(1000, 365)), BoreEnd.FLAT);
        TipSection tip = TipSection.of(DiameterProfile.cylinder(mil(370), mil(8000)), Finish.NONE);
        MaterialRemoval removal = MaterialRemoval.of(tip, waist, mil(1000), mil(4));
        assertThat(removal.profile().diameterAt(mil(0))).isEqualTo(mil(351));
        assertThat(removal.profile().diameterAt(mil(500))).isEqualTo(mil(351));
        assertThat(removal.profile().diameterAt(mil(750))).isEqualTo(mil(356));
        assertThat(FirstContact.of(removal.profile(), waist).kind()).isEqualTo(FirstContact.Kind.CLEARS);
    }

    @Property(shrinking = ShrinkingMode.BOUNDED)
    void itLeavesTheWantedClearanceEverywhere(@ForAll("jobs") Sections.Job job) {
        Clearance clearance = Clearance.of(job.removal().profile(), job.bore(), job.insertion());
        assertThat(clearance.least().plus(ROUNDING)).isGreaterThanOrEqualTo(job.clearance());
    }

    @Property(shrinking = ShrinkingMode.BOUNDED)
    void itLeavesJustTheWantedClearanceWhereStructureCameOff(@ForAll("jobs") Sections.Job job) {
        PointByPoint points = new PointByPoint(job);
        for (Station station : job.removal().finished()) {
            double z = station.at().millimetres();
            // At a step the two values of a station belong to two places: a nanometre below and a nanometre above.
            double below = points.finished(Math.max(0, z - 1e-6));
            double above = points.finished(Math.min(job.insertion().millimetres(), z + 1e-6));
            double here = station.mean().millimetres();
            // A nanometre of place is worth eight of diameter, and the shape is rounded as above.
            assertThat(Math.min(Math.abs(here - below), Math.abs(here - above))).isLessThanOrEqualTo(13e-6);
        }
    }

    /** .363 and .355 less .004, straight between. */
    @Example
    void aTaperLessTheClearance() {
        Bore taper = Bore.ofTwoDiameters(mil(363), mil(355), mil(1250), BoreEnd.FLAT);
        TipSection tip = TipSection.of(DiameterProfile.cylinder(mil(370), mil(8000)), Finish.NONE);
        MaterialRemoval removal = MaterialRemoval.of(tip, taper, mil(1250), mil(4));
        assertThat(removal.finished()).containsExactly(at(0, 351), at(1250, 359));
        Clearance clearance = Clearance.of(removal.profile(), taper, mil(1250));
        assertThat(clearance.least()).isEqualTo(clearance.greatest()).isEqualTo(mil(4));
    }

    /** In a parallel bore: the lower part of the tip and the rest above it, as if trimmed, make the whole. */
    @Property(shrinking = ShrinkingMode.BOUNDED)
    void whatComesOffAddsUpAlongTheTip(
            @ForAll("jobs") Sections.Job job, @ForAll @IntRange(min = 1, max = 99) int part) {
        long length = job.tip().outside().length().nanometres();
        Length lower = Length.ofNanometres(Math.max(1, length * part / 100));
        Length upper = Length.ofNanometres(length).minus(lower);
        Bore bore = parallel(Length.ofNanometres(length));
        TipSection rest = new TipSection(
                job.tip().outside().trimmedFromStart(lower),
                job.tip().finish(),
                job.tip().wall(),
                job.tip().trimmed().plus(lower));
        MaterialRemoval whole = MaterialRemoval.of(job.tip(), bore, Length.ofNanometres(length), job.clearance());
        MaterialRemoval first = MaterialRemoval.of(job.tip(), bore, lower, job.clearance());
        MaterialRemoval second = MaterialRemoval.of(rest, bore, upper, job.clearance());
        // Doubles: a part in 1e12 of some thousand cubic millimetres of tip.
        double tolerance = 1e-9;
        assertThat(first.finishVolume().plus(second.finishVolume()).cubicMillimetres())
                .isCloseTo(whole.finishVolume().cubicMillimetres(), within(tolerance));
        assertThat(first.structureVolume().plus(second.structureVolume()).cubicMillimetres())
                .isCloseTo(whole.structureVolume().cubicMillimetres(), within(tolerance));
    }

    /** 10 mm down to 9 mm: pi / 4 (100 - 81) is 4.75 pi for each mm, 95 pi for 20. */
    @Example
    void twentyMillimetresAreTwelveAndEight() {
        TipSection tip = TipSection.of(
                DiameterProfile.cylinder(Length.ofMillimetres(10), Length.ofMillimetres(200)), Finish.NONE);
        double[] volumes = {20, 12, 8};
        for (int i = 0; i < volumes.length; i++) {
            Length insertion = Length.ofMillimetres(volumes[i]);
            volumes[i] = MaterialRemoval.of(tip, parallel(insertion), insertion, Length.ofMillimetres(0.2))
                    .volume()
                    .cubicMillimetres();
        }
        // Doubles: sixteen digits of 300.
        assertThat(volumes[0]).isCloseTo(95 * Math.PI, within(1e-12));
        assertThat(volumes[1] + volumes[2]).isCloseTo(95 * Math.PI, within(1e-12));
    }

    /** More clearance takes off more; a stage of the work on the way to another. */
    @Property(shrinking = ShrinkingMode.BOUNDED)
    void moreClearanceTakesNoLessOff(
            @ForAll("jobs") Sections.Job job, @ForAll @IntRange(min = 0, max = 100_000) int more) {
        MaterialRemoval loose = MaterialRemoval.of(
                job.tip(), job.bore(), job.insertion(), job.clearance().plus(Length.ofNanometres(more)));
        MaterialRemoval close = job.removal();
        assertThat(loose.stockAtEnd()).isGreaterThanOrEqualTo(close.stockAtEnd());
        // A part in 1e12 of some thousand cubic millimetres of tip.
        assertThat(loose.structureVolume().cubicMillimetres())
                .isGreaterThanOrEqualTo(close.structureVolume().cubicMillimetres() - 1e-9);
        assertThat(loose.finishVolume().cubicMillimetres())
                .isCloseTo(close.finishVolume().cubicMillimetres(), within(1e-9));
    }

    private static Bore parallel(Length depth) {
        Length wide = Length.ofMillimetres(9.2);
        return Bore.ofTwoDiameters(wide, wide, depth, BoreEnd.FLAT);
    }

    private static Station at(double place, double diameter) {
        return Station.of(mil(place), mil(diameter));
    }

    private static Length mil(double thousandths) {
        return Length.ofThousandths(thousandths);
    }
}
