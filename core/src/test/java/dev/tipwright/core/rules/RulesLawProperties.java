package dev.tipwright.core.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.tipwright.core.TradeBench;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.Seat;
import dev.tipwright.core.club.Stop;
import dev.tipwright.core.evidence.Finding;
import dev.tipwright.core.quantity.Length;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Laws of holding a club against limits, in whole millimetres so that a counterexample can be read. */
class RulesLawProperties {

    private static Length mm(int millimetres) {
        return Length.ofMillimetres(millimetres);
    }

    /** A club with a shaft so long, seated 30 mm deep, under a neck so high. */
    private static Build club(int shaft, int neck) {
        Build build = TradeBench.club("6", "S", "mid");
        Build measured = build.withParts(build.parts()
                .withShaft(build.parts()
                        .shaft()
                        .withMass(build.parts().shaft().mass().withBalance(mm(shaft / 2)))
                        .withLength(mm(shaft)))
                .withHead(build.parts()
                        .head()
                        .withGeometry(build.parts().head().geometry().withMouthToGround(mm(neck)))));
        return measured.withWork(measured.work().withSeat(new Seat(mm(30), Stop.BORE_BOTTOM)));
    }

    private static List<String> codes(Build build, ClubLimits limits, int uncertainty) {
        List<Finding> findings = RulesCheck.of(build, limits, mm(uncertainty));
        return TradeBench.codes(findings);
    }

    /** What is passed for sure is passed without any doubt too, and a doubt adds no other finding than that it is near. */
    @Property
    void aDoubtOnlyTurnsWhatIsSureIntoNear(
            @ForAll @IntRange(min = 250, max = 1300) int shaft,
            @ForAll @IntRange(min = 40, max = 200) int neck,
            @ForAll @IntRange(min = 0, max = 30) int uncertainty) {
        List<String> sure = codes(club(shaft, neck), ClubLimits.EQUIPMENT_RULES, 0);
        List<String> doubted = codes(club(shaft, neck), ClubLimits.EQUIPMENT_RULES, uncertainty);
        assertThat(doubted.stream().filter(code -> !code.equals("TOO_NEAR"))).isSubsetOf(sure);
        int passed = (int) sure.stream().filter(RulesLawProperties::passed).count();
        int left = (int) doubted.stream()
                .filter(code -> passed(code) || code.equals("TOO_NEAR"))
                .count();
        assertThat(left).isGreaterThanOrEqualTo(passed);
    }

    private static boolean passed(String code) {
        return !code.equals("WITHIN_LIMITS") && !code.equals("NOT_CHECKED");
    }

    @Property
    void whatIsWithinTheLocalRuleIsWithinTheRules(
            @ForAll @IntRange(min = 250, max = 1300) int shaft, @ForAll @IntRange(min = 40, max = 200) int neck) {
        Build club = club(shaft, neck);
        if (codes(club, ClubLimits.WITH_LOCAL_RULE_G10, 0).contains("WITHIN_LIMITS")) {
            assertThat(codes(club, ClubLimits.EQUIPMENT_RULES, 0)).contains("WITHIN_LIMITS");
        }
    }

    @Property
    void aLongerShaftNeverMendsAClubThatIsTooLong(
            @ForAll @IntRange(min = 250, max = 1300) int shaft, @ForAll @IntRange(min = 0, max = 50) int more) {
        if (codes(club(shaft, 60), ClubLimits.EQUIPMENT_RULES, 0).contains("TOO_LONG")) {
            assertThat(codes(club(shaft + more, 60), ClubLimits.EQUIPMENT_RULES, 0))
                    .contains("TOO_LONG");
        }
    }
}
