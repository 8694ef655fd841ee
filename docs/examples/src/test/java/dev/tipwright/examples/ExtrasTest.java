package dev.tipwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import dev.tipwright.core.grip.GripFit;
import dev.tipwright.core.length.CutToLength;
import dev.tipwright.core.match.MatchCode;
import dev.tipwright.core.orient.Orientation;
import dev.tipwright.core.plan.ClubPlan;
import dev.tipwright.core.plan.JobPlan;
import dev.tipwright.core.plan.Operation;
import dev.tipwright.core.quantity.Units;
import dev.tipwright.swingweight.ClubBalance;
import dev.tipwright.swingweight.SwingWeightCost;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What not every job asks for: grips sized, shafts turned, shafts shared out, lengths by the plane. */
class ExtrasTest {

    @TempDir
    private Path temp;

    private Scenario practice() throws IOException {
        return Scenario.named("practice-set").copiedTo(temp);
    }

    private static String settings(String job, String... lines) {
        return job + String.join("\n", lines) + "\n";
    }

    /**
     * Club 6: the shaft M1 is .601 in at its butt, 39 in up, and .3735 in at the end of its parallel tip, 8 in up; 2 1/8 in come
     * off. So the butt is .601 - .2275 * 2.125 / 31 = .58541 in wide, .60541 in with two layers of .005 in, and the grip, moulded
     * for .580 in, is .02541 in wider than its 1.030 in.
     */
    @Test
    void aGripIsSized() throws IOException {
        JobPlan plan = practice()
                .edited(
                        "grips.csv",
                        grips -> grips.replaceAll("(?m)(.)$", "$1,.580 in,1.030 in")
                                .replaceFirst(".580 in,1.030 in", "core,outside"))
                .edited("job.csv", job -> settings(job, "tape layers,2 layers,", "tape thickness,.005 in,"))
                .plan();
        GripFit fit = plan.club("6").report(GripFit.class);
        assertThat(fit.butt().inches()).isCloseTo(0.585405, offset(5e-6));
        assertThat(fit.taped().inches()).isCloseTo(0.605405, offset(5e-6));
        assertThat(fit.outside().orElseThrow().inches()).isCloseTo(1.055405, offset(5e-6));
        assertThat(said(plan.club("6")))
                .containsSubsequence(
                        "Caliper the cut butt: about 0.5854 in is expected. If it reads otherwise, change the layers of tape.",
                        "Tape in layers: 2, no further than 10.375 in (10 3/8) down from the butt; the butt then reads about"
                                + " 0.6054 in.",
                        "Put on tape and grip, the cap hard against the butt: it adds 0.125 in (1/8).");
    }

    @Test
    void aLeftHandedClubIsTurnedTheOtherWay() throws IOException {
        JobPlan plan = practice()
                .cell("heads.csv", "7", "hand", hand -> "left")
                .edited("job.csv", job -> settings(job, "orientation mark,the seam,", "orientation turn,90 deg,"))
                .plan();
        assertThat(plan.club("6").report(Orientation.class).turn().degrees()).isEqualTo(90);
        assertThat(said(plan.club("6"))).anyMatch(line -> line.contains("90.00 deg clockwise of the target"));
        assertThat(said(plan.club("7"))).anyMatch(line -> line.contains("90.00 deg anticlockwise of the target"));
    }

    /**
     * Each of the 3! ways to give the middle blanks to their heads and of the 3! for the short ones is planned by itself; none
     * costs less than the one that was found.
     */
    @Test
    void shaftsChangePlacesWithinTheirBlank() throws IOException {
        Scenario asTheyCome = practice();
        double before = cost(asTheyCome.plan());
        double least = Double.POSITIVE_INFINITY;
        for (List<String> mid : orders("M1", "M2", "M3")) {
            for (List<String> low : orders("S1", "S2", "S3")) {
                List<String> shafts = Stream.concat(mid.stream(), low.stream()).toList();
                least = Math.min(least, cost(paired(shafts).plan()));
            }
        }
        JobPlan shared = asTheyCome
                .edited("job.csv", job -> settings(job, "shafts to heads,by swing weight,"))
                .plan();
        assertThat(cost(shared)).isEqualTo(least).isLessThan(before);
        assertThat(shared.clubs())
                .filteredOn(club -> club.findings().stream().anyMatch(f -> f.code() == MatchCode.TAKES_ANOTHER))
                .isNotEmpty()
                .allSatisfy(
                        club -> assertThat(club.after().parts().shaft().blank().label())
                                .isEqualTo(club.label().matches("[678]") ? "mid" : "short"));
        assertThat(shared.clubs())
                .flatExtracting(ClubPlan::findings)
                .filteredOn(finding -> finding.code() == MatchCode.BETTER)
                .hasSize(1);
    }

    private Scenario paired(List<String> shafts) throws IOException {
        Path copy = java.nio.file.Files.createTempDirectory(temp.getParent(), "pairs");
        Scenario scenario = Scenario.named("practice-set").copiedTo(copy);
        List<String> clubs = List.of("6", "7", "8", "9", "pitching", "gap");
        List<String> usual = List.of("M1", "M2", "M3", "S1", "S2", "S3");
        return shafts.equals(usual)
                ? scenario
                : scenario.edited("clubs.csv", text -> {
                    String edited = text;
                    for (int i = 0; i < clubs.size(); i++) {
                        edited = edited.replaceFirst(
                                "(?m)^(" + clubs.get(i) + ",[^,]+),[^,]+,", "$1," + shafts.get(i) + ",");
                    }
                    return edited;
                });
    }

    private static List<List<String>> orders(String a, String b, String c) {
        return List.of(
                List.of(a, b, c),
                List.of(a, c, b),
                List.of(b, a, c),
                List.of(b, c, a),
                List.of(c, a, b),
                List.of(c, b, a));
    }

    private static double cost(JobPlan plan) {
        return plan.clubs().stream()
                .mapToDouble(club -> SwingWeightCost.WITHOUT_TIP_WEIGHT.of(club).orElseThrow())
                .sum();
    }

    /**
     * With a lie of 61.5 degrees, half a hosel of .26 in as the height of its axis and a sole taken as flat under it, a club of
     * 37 1/2 in by the plane is .26 cot 60 = .15011 in longer along its axis.
     */
    @Test
    void aLengthByThePlane() throws IOException {
        JobPlan plan = practice()
                .cell("clubs.csv", "6", "length measured", "by the 60 degree plane")
                .plan();
        double axis = Scenario.named("practice-set")
                .plan()
                .club("6")
                .report(CutToLength.class)
                .cutLength()
                .inches();
        double plane = plan.club("6").report(CutToLength.class).cutLength().inches();
        double hosel = plan.club("6").before().parts().head().hosel().outside().inches();
        assertThat(plane - axis).isCloseTo(hosel / 2 / Math.sqrt(3), offset(1.0 / 64));
        assertThat(plan.club("6").report(ClubBalance.class).reads().points())
                .isGreaterThan(Scenario.named("practice-set")
                        .plan()
                        .club("6")
                        .report(ClubBalance.class)
                        .reads()
                        .points());
    }

    private static List<String> said(ClubPlan club) {
        return club.operations().stream()
                .map((Operation operation) -> operation.text(Units.INCH))
                .toList();
    }
}
