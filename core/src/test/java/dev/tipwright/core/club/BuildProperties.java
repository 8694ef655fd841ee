package dev.tipwright.core.club;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import dev.tipwright.core.Bench;
import dev.tipwright.core.part.Adhesive;
import dev.tipwright.core.part.Extension;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

/** A build is parts and work: what follows from the two, and which work cannot be. */
class BuildProperties {

    private static final Build CLUB = Bench.club("7");

    /** Trims 1 and 2 in of 39 leave 36 in; cap 1/8, seated 1 1/4 in: mouth at 34 7/8, tip end at 36 1/8 in from the top. */
    @Example
    void byHand() {
        Build build = CLUB.withWork(new Work(
                len("1 in"), len("2 in"), TipWork.NONE, new Seat(len("1 1/4 in"), Stop.BORE_BOTTOM), List.of()));
        assertThat(build.label()).isEqualTo("7");
        assertThat(build.cutLength()).isEqualTo(len("36 in"));
        assertThat(build.buttFromTop()).isEqualTo(len("1/8 in"));
        assertThat(build.tipFromTop()).isEqualTo(len("36 1/8 in"));
        assertThat(build.mouthFromTop()).isEqualTo(len("34 7/8 in"));
        assertThat(build.trimmedTip().length()).isEqualTo(len("9 in"));
        Build longer = build.withWork(build.work()
                .plus(new Extension("plug", Mass.parse("5 g"), len("1 in"), len(".5 in")))
                .plus(new Adhesive("glue", Mass.parse("1 g"))));
        assertThat(longer.buttFromTop()).isEqualTo(len("1 1/8 in"));
        assertThat(longer.cutLength()).isEqualTo(len("36 in"));
    }

    @Example
    void untouchedPartsAreATrueStatement() {
        assertThat(CLUB.work()).isEqualTo(Work.NONE);
        assertThat(CLUB.cutLength()).isEqualTo(CLUB.parts().shaft().length());
        assertThat(CLUB.work().seat()).isEqualTo(Seat.APART);
        assertThat(CLUB.work().tip().reach()).isEqualTo(Length.ZERO);
    }

    @Property
    void thePiecesAddUpToTheRawShaft(
            @ForAll @LongRange(min = 0, max = 495_000_000) long tip,
            @ForAll @LongRange(min = 0, max = 495_000_000) long butt) {
        Build build =
                CLUB.withWork(Work.NONE.withTipTrim(Length.ofNanometres(tip)).withButtTrim(Length.ofNanometres(butt)));
        assertThat(build.work()
                        .tipTrim()
                        .plus(build.cutLength())
                        .plus(build.work().buttTrim()))
                .isEqualTo(build.parts().shaft().length());
        assertThat(build.tipFromTop().minus(build.buttFromTop())).isEqualTo(build.cutLength());
    }

    @Example
    void refusesWorkThatLeavesNothing() {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> CLUB.withWork(Work.NONE.withTipTrim(len("19 in")).withButtTrim(len("20 in"))))
                .withMessage("work must leave some of the shaft's 990.6 mm, was tip trim 482.6 mm, butt trim 508 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CLUB.withWork(Work.NONE.withSeat(new Seat(len("1.3 in"), Stop.MARK))))
                .withMessage("work must insert no deeper than the bore's 31.75 mm, was 33.02 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Work.NONE.withTipTrim(len("-1 mm")))
                .withMessage("tipTrim must not be negative, was -1 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Work.NONE.withButtTrim(len("-1 mm")))
                .withMessage("buttTrim must not be negative, was -1 mm");
        assertThatNullPointerException()
                .isThrownBy(() -> Work.NONE.plus(null))
                .withMessage("attachment must not be null");
        assertThatNullPointerException().isThrownBy(() -> CLUB.withWork(null)).withMessage("work must not be null");
        assertThatNullPointerException().isThrownBy(() -> CLUB.withParts(null)).withMessage("parts must not be null");
    }

    @Example
    void aSeatHasAStopJustWhenItHasAnInsertion() {
        for (ThrowingSeat bad : List.<ThrowingSeat>of(
                () -> new Seat(len("1 in"), Stop.NOTHING), () -> new Seat(Length.ZERO, Stop.MARK))) {
            assertThatIllegalArgumentException()
                    .isThrownBy(bad::seat)
                    .withMessageStartingWith("stop must be NOTHING just when the insertion is zero, was ");
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Seat(len("-1 mm"), Stop.MARK))
                .withMessage("insertion must be from 0 mm to 3000 mm, was -1 mm");
        assertThat(Seat.onBottomOf(Bench.bore(BoreEnd.CONE))).isEqualTo(new Seat(len("1.25 in"), Stop.BORE_BOTTOM));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Seat.onBottomOf(Bench.bore(BoreEnd.THROUGH)))
                .withMessage("bore must be blind, was THROUGH");
        assertThatNullPointerException().isThrownBy(() -> Seat.onBottomOf(null)).withMessage("bore must not be null");
    }

    private interface ThrowingSeat {
        Seat seat();
    }

    @Example
    void tipWorkRunsUpFromTheTip() {
        Station end = Station.of(Length.ZERO, len("9 mm"));
        Station up = Station.of(len("30 mm"), len("9.2 mm"));
        TipWork work = new TipWork(len("20 mm"), List.of(end, up));
        assertThat(work.reach()).isEqualTo(len("30 mm"));
        assertThat(work.withStripped(len("40 mm")).reach()).isEqualTo(len("40 mm"));
        assertThat(work.withFinished(List.of()).reach()).isEqualTo(len("20 mm"));
        // Two at one place are a step.
        Station stepped = up.withAt(len("10 mm"));
        assertThat(work.withFinished(List.of(end, stepped, stepped, up)).finished())
                .hasSize(4);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> work.withFinished(List.of(up, end)))
                .withMessage(
                        "finished must run up from the trimmed tip, 0, in order, at most two at one place, was 30 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> work.withFinished(List.of(end, up, up, up)))
                .withMessage(
                        "finished must run up from the trimmed tip, 0, in order, at most two at one place, was 30 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> work.withFinished(List.of(end)))
                .withMessageStartingWith("finished must be empty or reach up from the end of the tip, was [Station[");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> work.withStripped(len("-1 mm")))
                .withMessage("stripped must be from 0 mm to 3000 mm, was -1 mm");
    }

    @Example
    void aSetKnowsItsClubsByLabel() {
        List<Build> given = new ArrayList<>(List.of(CLUB, Bench.club("8")));
        ClubSet set = new ClubSet(given);
        given.clear();
        assertThat(set.builds()).hasSize(2);
        assertThat(set.club("8").label()).isEqualTo("8");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> set.club("9"))
                .withMessage("label must be one of the clubs of the set, was \"9\"");
        assertThatNullPointerException().isThrownBy(() -> set.club(null)).withMessage("label must not be null");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ClubSet.of(CLUB, CLUB))
                .withMessage("builds must name each one once, but has more than one of [7]");
        assertThatIllegalArgumentException().isThrownBy(ClubSet::of).withMessage("builds must not be empty, was []");
        assertThatNullPointerException()
                .isThrownBy(() -> ClubSet.of((Build[]) null))
                .withMessage("builds must not be null");
    }
}
