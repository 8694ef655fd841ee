package dev.tipwright.fitcheck.taper;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A tip under its finish: bare it is as wide as it is outside less twice the finish. */
class TipSectionTest {

    private static final DiameterProfile NINE = DiameterProfile.cylinder(mm(9), mm(40));

    private static Length mm(double millimetres) {
        return Length.ofMillimetres(millimetres);
    }

    private static TipSection under(DiameterProfile outside, ThicknessProfile finish) {
        return TipSection.of(outside, new Finish(finish, Reading.unknown("the maker")));
    }

    private static TipSection under(Length finish) {
        return under(NINE, ThicknessProfile.uniform(finish));
    }

    @Test
    void someIsLeftDownToTheLastNanometre() {
        assertThat(under(mm(0.05)).leastBare()).isEqualTo(mm(8.9));
        assertThat(under(mm(0.05)).leavesStructure()).isTrue();
        assertThat(under(mm(4.499_999)).leastBare()).isEqualTo(Length.ofNanometres(2));
        assertThat(under(mm(4.499_999)).leavesStructure()).isTrue();
        assertThat(under(mm(4.5)).leastBare()).isEqualTo(Length.ZERO);
        assertThat(under(mm(4.5)).leavesStructure()).isFalse();
        assertThat(under(mm(4.6)).leavesStructure()).isFalse();
    }

    /** Where the tip is narrow the finish is thin: 5 - 2 * 1 and 9 - 2 * 3 are both 3, and halfway 7 - 2 * 2 is too. */
    @Test
    void theNarrowestUnderTheThickestIsOnlyAskedWhereTheyMeet() {
        DiameterProfile wider = DiameterProfile.of(Station.of(Length.ZERO, mm(5)), Station.of(mm(40), mm(9)));
        ThicknessProfile thicker = new ThicknessProfile(
                List.of(new ThicknessProfile.Knot(Length.ZERO, mm(1)), new ThicknessProfile.Knot(mm(40), mm(3))));
        assertThat(under(wider, thicker).leastBare()).isEqualTo(mm(3));
        assertThat(under(wider, thicker).leavesStructure()).isTrue();
    }

    /** 9.00 by 9.02 mm stays out of round when .05 mm comes off all round. */
    @Test
    void outOfRoundStaysSoWithoutItsFinish() {
        Station flat = new Station(Length.ZERO, mm(9), mm(9.02));
        TipSection tip = under(DiameterProfile.of(flat, Station.of(mm(40), mm(9))), ThicknessProfile.uniform(mm(0.05)));
        assertThat(tip.round()).isFalse();
        assertThat(tip.stripped().stations().get(0)).isEqualTo(new Station(Length.ZERO, mm(8.9), mm(8.92)));
        assertThat(under(mm(0.05)).round()).isTrue();
        assertThat(under(mm(0.05)).stripped()).isEqualTo(DiameterProfile.cylinder(mm(8.9), mm(40)));
    }
}
