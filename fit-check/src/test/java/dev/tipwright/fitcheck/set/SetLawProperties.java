package dev.tipwright.fitcheck.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.fitcheck.taper.TipSection;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Laws of pairing tips with bores, in whole micrometres so that a counterexample can be read. */
class SetLawProperties {

    private static final Length DEPTH = Length.ofMillimetres(30);

    private static List<LabelledTip> tips(List<Integer> wide) {
        List<LabelledTip> tips = new ArrayList<>();
        for (int micrometres : wide) {
            DiameterProfile outside =
                    DiameterProfile.cylinder(Length.ofMicrometres(micrometres), Length.ofMillimetres(200));
            tips.add(new LabelledTip("tip " + tips.size(), TipSection.of(outside, Finish.NONE)));
        }
        return tips;
    }

    /** Each narrows by a tenth of a millimetre. */
    private static List<LabelledBore> bores(List<Integer> bottoms) {
        List<LabelledBore> bores = new ArrayList<>();
        for (int micrometres : bottoms) {
            Bore bore = Bore.ofTwoDiameters(
                    Length.ofMicrometres(micrometres + 100), Length.ofMicrometres(micrometres), DEPTH, BoreEnd.FLAT);
            bores.add(new LabelledBore("bore " + bores.size(), bore, DEPTH));
        }
        return bores;
    }

    private static SelectiveAssembly best(List<LabelledTip> tips, List<LabelledBore> bores, AssemblyAim aim) {
        return SelectiveAssembly.of(tips, bores, Length.ofMicrometres(100), Reading.unknown("nobody"), aim);
    }

    @Property(tries = 200)
    void oneMoreTipInTheBoxNeverAsksForMoreToComeOff(
            @ForAll @Size(3) List<@IntRange(min = 8900, max = 9500) Integer> tips,
            @ForAll @Size(3) List<@IntRange(min = 9000, max = 9300) Integer> bores,
            @ForAll @IntRange(min = 8900, max = 9500) int another) {
        List<Integer> more = new ArrayList<>(tips);
        more.add(another);
        double before = best(tips(tips), bores(bores), AssemblyAim.LEAST_MATERIAL)
                .structure()
                .cubicMillimetres();
        double after = best(tips(more), bores(bores), AssemblyAim.LEAST_MATERIAL)
                .structure()
                .cubicMillimetres();
        // Costs are compared in steps of a millionth of a cubic millimetre, three of them.
        assertThat(after).isLessThanOrEqualTo(before + 3e-6);
    }

    @Property(tries = 200)
    void theOrderInWhichTheyAreGivenMakesNoDifference(
            @ForAll @Size(4) List<@IntRange(min = 8900, max = 9500) Integer> tips,
            @ForAll @Size(3) List<@IntRange(min = 9000, max = 9300) Integer> bores,
            @ForAll AssemblyAim aim,
            @ForAll long seed) {
        List<LabelledTip> shuffledTips = new ArrayList<>(tips(tips));
        List<LabelledBore> shuffledBores = new ArrayList<>(bores(bores));
        Collections.shuffle(shuffledTips, new Random(seed));
        Collections.shuffle(shuffledBores, new Random(~seed));
        assertThat(best(shuffledTips, shuffledBores, aim)).isEqualTo(best(tips(tips), bores(bores), aim));
    }

    @Property(tries = 200)
    void noSwapOfTwoTipsIsBetter(
            @ForAll @Size(3) List<@IntRange(min = 8900, max = 9500) Integer> tips,
            @ForAll @Size(3) List<@IntRange(min = 9000, max = 9300) Integer> bores) {
        SelectiveAssembly all = best(tips(tips), bores(bores), AssemblyAim.LEAST_MATERIAL);
        assertThat(all.pairs()).hasSize(3);
        double least = Double.MAX_VALUE;
        for (int[] order : new int[][] {{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}}) {
            double sum = 0;
            for (int i = 0; i < 3; i++) {
                List<LabelledTip> tip = tips(List.of(tips.get(i)));
                List<LabelledBore> bore = bores(List.of(bores.get(order[i])));
                sum += best(tip, bore, AssemblyAim.LEAST_MATERIAL).structure().cubicMillimetres();
            }
            least = Math.min(least, sum);
        }
        assertThat(all.structure().cubicMillimetres()).isCloseTo(least, within(3e-6));
    }
}
