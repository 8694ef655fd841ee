package dev.tipwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlan;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Notation;
import dev.tipwright.examples.read.JobFolder;
import dev.tipwright.fitcheck.TipFit;
import dev.tipwright.fitcheck.other.ShimFit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every number of the two scenarios, and of three changes to the first, against an independent working, to the printed digit. */
class ExpectedNumbersTest {
    private static final String FIRST = "practice-set";
    private static final String SECOND = "wedges-and-wood";

    @TempDir
    private Path temp;

    @Test
    void thePracticeSet() throws IOException {
        assertThat(checked("practice-set.csv", Scenario.named(FIRST))).isEqualTo(120);
    }

    @Test
    void theTipWeightOfTheEight() throws IOException {
        assertThat(checked("practice-set-tip-weight.csv", Scenario.named(FIRST)))
                .isEqualTo(13);
    }

    /** Every diameter of one bore ten thousandths of an inch larger, chamfer too. */
    @Test
    void aWiderBore() throws IOException {
        Scenario wider = Scenario.named(FIRST)
                .copiedTo(temp)
                .cell(
                        "bores.csv",
                        "7",
                        "diameter",
                        before -> Notation.TEN_THOUSANDTHS
                                .print(Length.parse(before).plus(Length.parse(".010 in")))
                                .text());
        assertThat(checked("changed-bore.csv", wider)).isEqualTo(20);
    }

    /** One shaft without finish, its tip and wall as before. */
    @Test
    void aTipWithoutFinish() throws IOException {
        Scenario bare = Scenario.named(FIRST).copiedTo(temp).cell("shafts.csv", "S1", "finish", "0 in");
        assertThat(checked("changed-finish.csv", bare)).isEqualTo(20);
    }

    /** One shaft an inch shorter, too short for its club. */
    @Test
    void aShorterShaft() throws IOException {
        Scenario shorter = Scenario.named(FIRST).copiedTo(temp).cell("shafts.csv", "S2", "raw length", "35 17/32 in");
        assertThat(checked("changed-length.csv", shorter)).isEqualTo(24);
    }

    @Test
    void theWedgesAndTheWood() throws IOException {
        assertThat(checked("wedges-and-wood.csv", Scenario.named(SECOND))).isEqualTo(79);
    }

    /**
     * The thickest shim that a tip takes has the wall expected where it is tightest: from a stock of that wall and one a micrometre
     * thicker the library takes the first, and leaves the wanted clearance there.
     */
    @Test
    void theShimsOfTheWedges() throws IOException {
        List<Expected> walls = Expected.in("wedges-and-wood.csv").stream()
                .filter(row -> row.quantity().startsWith("shim wall"))
                .toList();
        JobPlan plan = Scenario.named(SECOND).plan();
        for (ClubPlan club : plan.clubs()) {
            double tightest = walls.stream()
                    .filter(row -> row.club().equals(club.label()))
                    .mapToDouble(row -> Double.parseDouble(row.value()))
                    .min()
                    .orElseThrow();
            TipFit fit = club.report(TipFit.class);
            // The expected walls are given to a billionth of an inch; a nanometre is forty.
            Length wall = Length.ofNanometres((long) (tightest * 25.4e6 - 1));
            ShimFit shim = ShimFit.of(
                    fit.tip().stripped(),
                    fit.bore(),
                    fit.insertion(),
                    fit.clearance(),
                    fit.clearance(),
                    List.of(wall, wall.plus(Length.ofMicrometres(1))));
            assertThat(shim.wall()).as("club %s", club.label()).contains(wall);
            assertThat(shim.least().minus(fit.clearance()).nanometres())
                    .as("club %s", club.label())
                    .isBetween(0L, 4L);
        }
    }

    @Test
    void aQuantityThatIsNotKnownIsAnError() {
        Expected unknown = new Expected("here", "colour of the ferrule", "1", "6", "1", 0);
        assertThatThrownBy(() -> numbers(Scenario.named(FIRST), "6").check(unknown))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("colour of the ferrule");
    }

    @Test
    void aNumberThatIsOffByAUnitOfItsLastDigitIsAnError() {
        PlannedNumbers six = numbers(Scenario.named(FIRST), "6");
        six.check(new Expected("here", "total mass", "g", "6", "396.48", 2));
        for (String wrong : List.of("396.47", "396.49")) {
            Expected off = new Expected("here", "total mass", "g", "6", wrong, 2);
            assertThatThrownBy(() -> six.check(off)).isInstanceOf(AssertionError.class);
        }
    }

    private static int checked(String table, Scenario scenario) throws IOException {
        return checked(Expected.in(table), scenario);
    }

    private static int checked(List<Expected> rows, Scenario scenario) {
        JobPlan plan = scenario.plan();
        List<TipWeight> stock = stock(scenario);
        SoftAssertions all = new SoftAssertions();
        for (Expected row : rows) {
            all.check(() -> PlannedNumbers.of(plan.club(row.club()), stock).check(row));
        }
        all.assertAll();
        return rows.size();
    }

    private static PlannedNumbers numbers(Scenario scenario, String club) {
        return PlannedNumbers.of(scenario.plan().club(club), stock(scenario));
    }

    private static List<TipWeight> stock(Scenario scenario) {
        return JobFolder.read(scenario.folder()).job().orElseThrow().tipWeights();
    }
}
