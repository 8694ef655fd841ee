package dev.tipwright.core.cut;

import static dev.tipwright.core.TradeBench.club;
import static dev.tipwright.core.TradeBench.in;
import static dev.tipwright.core.TradeBench.trimmed;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.tipwright.core.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** Marks, waste and kerf: sums of sixteenths that a reader can do. */
class CutSheetTest {

    private static final CutSheet SHEET = new CutSheet(in("39"), in("1/2"), in("2 1/8"), in("1/16"));

    @Test
    void marksFromBothEnds() {
        assertThat(SHEET.tip().fromTip()).isEqualTo(in("1/2"));
        assertThat(SHEET.tip().fromButt()).isEqualTo(in("38 1/2"));
        assertThat(SHEET.butt().fromButt()).isEqualTo(in("2 1/8"));
        assertThat(SHEET.butt().fromTip()).isEqualTo(in("36 7/8"));
        assertThat(SHEET.cutLength()).isEqualTo(in("36 3/8"));
    }

    @Test
    void theKerfIsPartOfTheWaste() {
        assertThat(SHEET.tip().waste()).isEqualTo(ShaftEnd.TIP);
        assertThat(SHEET.tip().offcut()).isEqualTo(in("7/16"));
        assertThat(SHEET.butt().waste()).isEqualTo(ShaftEnd.BUTT);
        assertThat(SHEET.butt().offcut()).isEqualTo(in("2 1/16"));
        assertThat(SHEET.butt().dust()).isEqualTo(in("1/16"));
    }

    @Test
    void aTrimNoWiderThanTheKerfIsGroundAndLeavesNoOffcut() {
        CutSheet thin = new CutSheet(in("36"), in("1/16"), in("1/32"), in("1/16"));
        assertThat(thin.tip().ground()).isTrue();
        assertThat(thin.butt().ground()).isTrue();
        assertThat(thin.tip().offcut()).isEqualTo(Length.ZERO);
        assertThat(thin.butt().dust()).isEqualTo(in("1/32"));
        CutSheet wider = new CutSheet(in("36"), in("5/64"), Length.ZERO, in("1/16"));
        assertThat(wider.tip().ground()).isFalse();
        assertThat(wider.tip().offcut()).isEqualTo(in("1/64"));
        assertThat(wider.butt().ground()).isFalse();
    }

    @Test
    void onlyWhatIsCutIsMarked() {
        assertThat(SHEET.marks()).containsExactly(SHEET.tip(), SHEET.butt());
        assertThat(new CutSheet(in("39"), Length.ZERO, in("1"), in("1/16")).marks())
                .extracting(CutMark::waste)
                .containsExactly(ShaftEnd.BUTT);
        assertThat(new CutSheet(in("39"), Length.ZERO, Length.ZERO, in("1/16")).marks())
                .isEmpty();
    }

    @Test
    void isReadOffAPlannedClub() {
        assertThat(CutSheet.of(trimmed(club("6", "M1", "mid"), "1/2", "2 1/8"), in("1/16")))
                .isEqualTo(SHEET);
    }

    @Property
    void thePiecesOfAShaftAddUpToTheShaft(
            @ForAll @LongRange(min = 0, max = 400_000_000) long tip,
            @ForAll @LongRange(min = 0, max = 400_000_000) long butt,
            @ForAll @LongRange(min = 0, max = 5_000_000) long kerf) {
        CutSheet sheet = new CutSheet(
                Length.ofMillimetres(1000),
                Length.ofNanometres(tip),
                Length.ofNanometres(butt),
                Length.ofNanometres(kerf));
        Length sum = sheet.cutLength();
        for (CutMark mark : sheet.marks()) {
            sum = sum.plus(mark.offcut()).plus(mark.dust());
            assertThat(mark.fromTip().plus(mark.fromButt())).isEqualTo(sheet.rawLength());
            assertThat(mark.ground()).isEqualTo(mark.offcut().equals(Length.ZERO));
        }
        assertThat(sum).isEqualTo(sheet.rawLength());
    }

    @Test
    void somethingMustBeLeft() {
        assertThatThrownBy(() -> new CutSheet(in("39"), in("39"), Length.ZERO, in("1/16")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("tipTrim");
        assertThatThrownBy(() -> new CutSheet(in("39"), in("20"), in("19"), in("1/16")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("buttTrim");
    }
}
