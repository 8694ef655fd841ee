package dev.tipwright.swingweight.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.swingweight.Clubs;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Laws of learning a head's centre from the scale: hundredths of a point, tenths of a millimetre. */
class LearnLawProperties {

    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;
    private static final Build CLUB = Clubs.plain();

    private static LearntCentre learnt(int hundredths, int before, int reading) {
        SwingWeight read = Balance.of(CLUB).on(SCALE).plus(hundredths / 100.0);
        return new LearntCentre(
                ScaleReading.finished(CLUB, SCALE, read, 0.1),
                Length.ofMillimetres(before / 10.0),
                Length.ofMillimetres(reading / 10.0));
    }

    @Property
    void whatIsLearntLiesBetweenWhatWasKnownAndWhatWasRead(
            @ForAll @IntRange(min = -200, max = 200) int hundredths,
            @ForAll @IntRange(min = 0, max = 100) int before,
            @ForAll @IntRange(min = 0, max = 100) int reading) {
        LearntCentre learnt = learnt(hundredths, before, reading);
        Length along = learnt.centre().along();
        Length low = learnt.before().along().min(learnt.byReading());
        Length high = learnt.before().along().max(learnt.byReading());
        assertThat(along).isBetween(low, high);
    }

    @Property
    void aReadingNeverMakesItLessSure(
            @ForAll @IntRange(min = 0, max = 100) int before, @ForAll @IntRange(min = 0, max = 100) int reading) {
        LearntCentre learnt = learnt(0, before, reading);
        assertThat(learnt.uncertainty()).isLessThanOrEqualTo(learnt.uncertaintyBefore());
        assertThat(learnt.weight()).isBetween(0.0, 1.0);
    }

    @Property
    void aReadingAsPredictedTeachesNothing(
            @ForAll @IntRange(min = 0, max = 100) int before, @ForAll @IntRange(min = 0, max = 100) int reading) {
        LearntCentre learnt = learnt(0, before, reading);
        assertThat(learnt.centre()).isEqualTo(learnt.before());
    }

    /** With the centre where the reading alone puts it, the club reads what was read: a nanometre of it is no part of a point. */
    @Property
    void theCentreByTheReadingExplainsTheReading(@ForAll @IntRange(min = -200, max = 200) int hundredths) {
        LearntCentre learnt = learnt(hundredths, 100, 0);
        Build then = CLUB.withParts(learnt.parts());
        assertThat(Balance.of(then).on(SCALE).over(learnt.reading().read())).isCloseTo(0, within(1e-6));
    }
}
