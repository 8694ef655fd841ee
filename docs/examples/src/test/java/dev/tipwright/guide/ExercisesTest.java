package dev.tipwright.guide;

import static dev.tipwright.lessons.LessonParts.in;
import static org.assertj.core.api.Assertions.assertThat;

import com.ezylang.evalex.Expression;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.length.SixtyDegreePlane;
import dev.tipwright.core.mass.ProfileVolume;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Angle;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.trim.TipTrim;
import dev.tipwright.core.uncertainty.Budget;
import dev.tipwright.core.uncertainty.Input;
import dev.tipwright.core.uncertainty.Inputs;
import dev.tipwright.core.uncertainty.Measurand;
import dev.tipwright.fitcheck.insert.Clearance;
import dev.tipwright.fitcheck.insert.FirstContact;
import dev.tipwright.fitcheck.limits.Lean;
import dev.tipwright.fitcheck.limits.Sweep;
import dev.tipwright.fitcheck.other.ShimFit;
import dev.tipwright.fitcheck.taper.MaterialRemoval;
import dev.tipwright.fitcheck.taper.StagedTip;
import dev.tipwright.fitcheck.taper.TipSection;
import dev.tipwright.lessons.LessonParts;
import dev.tipwright.swingweight.aim.MassForTarget;
import dev.tipwright.swingweight.balance.Balance;
import dev.tipwright.swingweight.balance.BalancePart;
import dev.tipwright.swingweight.scale.SwingWeight;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every answer of the exercises, as it is printed, is what the library gives and what its hand check comes to. */
class ExercisesTest {

    private static final Path PAGE =
            Path.of("").toAbsolutePath().getParent().getParent().resolve("docs/guide/exercises.md");

    private static final Pattern ROW =
            Pattern.compile("(?m)^\\| ([0-9]+) \\| ([0-9.]+)( [a-z0-9]+)? \\| `([^`]+)` \\|$");

    private static final SwingWeightScale SCALE = SwingWeightScale.LETTERS_AT_14_INCHES;

    /** A row of the answers. */
    record Answer(int exercise, BigDecimal value, String unit, String byHand) {

        /** A value with as many places as are printed. */
        BigDecimal rounded(BigDecimal exact) {
            return exact.setScale(value.scale(), RoundingMode.HALF_EVEN);
        }

        @Override
        public String toString() {
            return "exercise " + exercise;
        }
    }

    private static String page() {
        try {
            return Files.readString(PAGE);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Stream<Answer> answers() {
        return ROW.matcher(page())
                .results()
                .map(row -> new Answer(
                        Integer.parseInt(row.group(1)),
                        new BigDecimal(row.group(2)),
                        row.group(3) == null ? "" : row.group(3).strip(),
                        row.group(4)));
    }

    @ParameterizedTest
    @MethodSource("answers")
    void isWhatTheLibraryGives(Answer answer) {
        // Twelve digits: the rest is rounding of doubles, and must not decide at a half.
        BigDecimal worked = new BigDecimal(work(answer.exercise(), answer.unit())).round(new MathContext(12));
        assertThat(answer.rounded(worked)).isEqualTo(answer.value());
    }

    @ParameterizedTest
    @MethodSource("answers")
    void isWhatTheHandCheckComesTo(Answer answer) throws Exception {
        BigDecimal byHand = new Expression(answer.byHand()).evaluate().getNumberValue();
        assertThat(answer.rounded(byHand.round(new MathContext(12)))).isEqualTo(answer.value());
    }

    @Test
    void everyExerciseHasItsAnswer() {
        List<Integer> asked = Pattern.compile("(?m)^\\*\\*([0-9]+)\\.\\*\\*")
                .matcher(page())
                .results()
                .map(found -> Integer.valueOf(found.group(1)))
                .toList();
        assertThat(answers().map(Answer::exercise)).isEqualTo(asked).hasSize(17);
    }

    private static double work(int exercise, String unit) {
        return switch (exercise + " " + unit) {
            case "1 mm" -> in("36 7/16").millimetres();
            case "2 mm3" -> new ProfileVolume(finished()).volume().cubicMillimetres();
            case "3 in" ->
                FirstContact.of(cylinder(".3605"), bore()).insertion().inches();
            case "4 in" ->
                new StagedTip(cylinder(".3685"), finished(), bore(), bore().depth())
                        .stage(in(".008"))
                        .perThousandth()
                        .inches();
            case "5 thousandths" ->
                Clearance.of(cylinder(".352"), bore(), bore().depth()).mean().thousandths();
            case "6 thousandths" -> removal().stockAtEnd().thousandths();
            case "7 thousandths" -> removal().structureAtEnd().thousandths();
            case "8 in" -> removal().leastWall().orElseThrow().inches();
            case "9 " -> removal().leastStiffness().orElseThrow();
            case "10 degrees" ->
                Lean.of(cylinder(".365"), parallel(".370"), in("1 1/4")).angle().degrees();
            case "11 in" ->
                Sweep.at(cylinder(".365"), parallel(".370"), in("1 1/4"), in("34"))
                        .inches();
            case "12 thousandths" ->
                ShimFit.of(
                                cylinder(".355"),
                                parallel(".3705"),
                                in("1 1/4"),
                                in(".004"),
                                in(".006"),
                                List.of(in(".003"), in(".005"), in(".007")))
                        .least()
                        .thousandths();
            case "13 in" ->
                new TipTrim(in("1 1/2"), in("1 5/32"), in("1 1/4"), in("1"), in("1"), in("1/16"))
                        .trim()
                        .inches();
            case "14 mm" ->
                new SixtyDegreePlane(
                                Angle.ofDegrees(60),
                                Length.parse("6.7 mm"),
                                Length.parse("25 mm"),
                                Length.parse("200 mm"))
                        .length(Length.parse("940 mm"))
                        .millimetres();
            case "15 " -> lumps().on(SCALE).points();
            case "16 oz" ->
                MassForTarget.at(lumps(), SCALE, new SwingWeight(40), in("37"))
                        .orElseThrow()
                        .ounces();
            case "17 g" ->
                Budget.of(Measurand.of("sum", "g", weighed(), masses -> masses[0] + masses[1] + masses[2]))
                        .standardUncertainty();
            default -> throw new IllegalArgumentException("no exercise " + exercise + " with an answer in " + unit);
        };
    }

    private static Bore bore() {
        return LessonParts.taperedBore();
    }

    private static Bore parallel(String wide) {
        return Bore.ofTwoDiameters(in(wide), in(wide), in("1 1/4"), BoreEnd.FLAT);
    }

    private static DiameterProfile cylinder(String wide) {
        return DiameterProfile.cylinder(in(wide), in("8"));
    }

    private static DiameterProfile finished() {
        return DiameterProfile.of(Station.of(Length.ZERO, in(".351")), Station.of(in("1 1/4"), in(".359")));
    }

    private static MaterialRemoval removal() {
        Finish finish = Finish.NONE.withThickness(ThicknessProfile.uniform(in(".003")));
        Wall wall = new Wall(ThicknessProfile.uniform(in(".0905")), Reading.unknown("not asked"));
        TipSection tip = TipSection.of(cylinder(".3745"), finish).withWall(Reading.measured(wall));
        return MaterialRemoval.of(tip, bore(), bore().depth(), in(".004"));
    }

    private static Balance lumps() {
        return new Balance(List.of(
                BalancePart.at("grip", Mass.parse("2 oz"), in("4")),
                BalancePart.at("shaft", Mass.parse("3 oz"), in("18")),
                BalancePart.at("head", Mass.parse("10.2 oz"), in("37"))));
    }

    private static Inputs weighed() {
        return Inputs.of(
                Input.ofStandard("head", "g", 262, 0.1),
                Input.ofStandard("shaft", "g", 84, 0.1),
                Input.ofStandard("grip", "g", 50, 0.1));
    }
}
