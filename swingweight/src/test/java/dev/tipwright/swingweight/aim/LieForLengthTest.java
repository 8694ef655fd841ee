package dev.tipwright.swingweight.aim;

import static dev.tipwright.swingweight.Refusals.missing;
import static dev.tipwright.swingweight.Refusals.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.checkvalues.CheckTable;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.evidence.Severity;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.swingweight.Clubs;
import dev.tipwright.swingweight.PrintedWorking;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Pins down lie for length at the same hands: a triangle done by hand, the band of the trade's table, and the law the hands obey. */
class LieForLengthTest {

    private static LieForLength lie(double degrees, double before, double after) {
        return LieForLength.of(Angle.ofDegrees(degrees), Clubs.inches(before), Clubs.inches(after));
    }

    /** Half the hypotenuse stands over 30 degrees: 40 in at 30 degrees and 20 in straight up reach 20 in; 20 sqrt 2 lies at 45. */
    @Test
    void trianglesByHand() {
        assertThat(lie(30, 40, 40 / Math.sqrt(2)).bend().orElseThrow().degrees())
                .isCloseTo(15, within(1e-6));
        assertThat(lie(30, 40, 40).bend().orElseThrow().degrees()).isCloseTo(0, within(1e-12));
        assertThat(lie(30, 40, 40).hands().inches()).isCloseTo(20, within(1e-7));
        assertThat(lie(45, 20 * Math.sqrt(2), 40).suits().orElseThrow().degrees())
                .isCloseTo(30, within(1e-6));
    }

    /**
     * Half an inch more or less, the mean of the two, because a rule of thumb says no direction; middle irons, half an inch and
     * half a degree apart. To first order it is {@code tan(lie) / L}, so long irons, which lie flatter, want less.
     */
    @Test
    void halfAnInchIsWithinTheBandOfTheTable() {
        CheckTable.Row row =
                CheckTable.named("trade-facts").row("fact", "lie for 1/2 in of length with constant hands");
        for (double length = 36.5; length <= 37.5; length += 0.5) {
            double degrees = 62 - (length - 37.5);
            double longer =
                    -lie(degrees, length, length + 0.5).bend().orElseThrow().degrees();
            double shorter =
                    lie(degrees, length, length - 0.5).bend().orElseThrow().degrees();
            assertThat((longer + shorter) / 2)
                    .as("%s in at %s deg", length, degrees)
                    .isBetween(row.number("low"), row.number("high"));
        }
    }

    @Test
    void theHandsStayWhereTheyWere() {
        SplittableRandom random = new SplittableRandom(16);
        int flatter = 0;
        for (int i = 0; i < 10_000; i++) {
            double degrees = random.nextDouble(50, 75);
            double before = random.nextDouble(30, 48);
            double after = before + random.nextDouble(-1, 2);
            LieForLength solved = lie(degrees, before, after);
            Angle suits = solved.suits().orElseThrow();
            assertThat(after * Math.sin(Math.toRadians(suits.degrees())))
                    .isCloseTo(before * Math.sin(Math.toRadians(degrees)), within(1e-6));
            flatter += solved.bend().orElseThrow().degrees() < 0 ? 1 : 0;
            assertThat(solved.bend().orElseThrow().degrees() < 0).isEqualTo(after > before);
        }
        assertThat(flatter).isBetween(6_000, 7_500);
    }

    @Test
    void theLimitIsTheCallers() {
        LieForLength half = lie(62, 37, 37.5);
        assertThat(half.finding().severity()).isEqualTo(Severity.CAUTION);
        assertThat(half.finding().message(Units.INCH))
                .isEqualTo(
                        "bend -1.40 deg to keep the hands where they were, but how far the head may be bent is not known:"
                                + " ask the head's maker, and say what it is made of");
        LieForLength forged = half.withLimit(Reading.measured(Angle.ofDegrees(2)));
        assertThat(forged.finding().code()).isEqualTo(AimCode.BEND_WITHIN);
        LieForLength cast = half.withLimit(Reading.assumed(Angle.ofDegrees(1), Source.given("the maker's leaflet")));
        assertThat(cast.finding().code()).isEqualTo(AimCode.BEND_TOO_FAR);
        assertThat(cast.finding().severity()).isEqualTo(Severity.STOP);
        LieForLength short1 = lie(62, 37, 30);
        assertThat(short1.bend()).isEmpty();
        assertThat(short1.finding().code()).isEqualTo(AimCode.HANDS_TOO_HIGH);
        PrintedWorking.isTrue(half.working());
        PrintedWorking.isTrue(short1.working());
    }

    @Test
    void hostileInputIsNamed() {
        Angle lie = Angle.ofDegrees(62);
        Length at = Clubs.inches(37);
        missing("lie", () -> LieForLength.of(null, at, at));
        missing("before", () -> LieForLength.of(lie, null, at));
        missing("after", () -> LieForLength.of(lie, at, null));
        missing("limit", () -> new LieForLength(lie, at, at, null));
        refused("before must be from 0.000001 mm to 3000 mm, was 0 mm", () -> LieForLength.of(lie, Length.ZERO, at));
        assertThatThrownBy(() -> LieForLength.of(Angle.ofDegrees(90), at, at))
                .hasMessageStartingWith("lie must be above 0 and below 90 deg, was ");
        assertThatThrownBy(() -> LieForLength.of(Angle.ZERO, at, at)).hasMessageStartingWith("lie must be above 0");
        assertThatThrownBy(() -> new LieForLength(lie, at, at, Reading.measured(Angle.ofDegrees(21))))
                .hasMessageStartingWith("limit must be from ");
    }
}
