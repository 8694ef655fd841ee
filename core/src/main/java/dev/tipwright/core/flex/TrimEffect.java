package dev.tipwright.core.flex;

import dev.tipwright.core.club.Work;
import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.quantity.Frequency;
import dev.tipwright.core.quantity.Length;
import java.util.List;

/**
 * What a further cut does to the frequency of a club: off the tip, off the butt, or off the tip instead of the butt. The clamp holds
 * the same length each time, so the first two leave the same length to bend: the first takes it from the soft end, the second from the
 * stiff one.
 *
 * @param club the club as planned
 * @param cut how much would come off; above zero, leaving some shaft to bend
 */
public record TrimEffect(ClubFrequency club, Length cut) {

    /**
     * Checks the values.
     *
     * @param club the club as planned
     * @param cut how much would come off; above zero, leaving some shaft to bend
     */
    public TrimEffect {
        Require.given("club", club);
        Require.positive("cut", cut);
        Require.that(cut.lessThan(club.beam()), "cut", "must leave some of the " + club.beam() + " that bend", cut);
    }

    /**
     * Frequency when the cut is made at the tip: the club is shorter by it.
     *
     * @return cycles a minute
     */
    public Frequency offTip() {
        Work work = club.build().work();
        return frequency(work.withTipTrim(work.tipTrim().plus(cut)));
    }

    /**
     * Frequency when the cut is made at the butt: the club is shorter by it.
     *
     * @return cycles a minute
     */
    public Frequency offButt() {
        Work work = club.build().work();
        return frequency(work.withButtTrim(work.buttTrim().plus(cut)));
    }

    private Frequency frequency(Work work) {
        return new ClubFrequency(club.build().withWork(work), club.bend(), club.clamp()).frequency();
    }

    /**
     * How the frequencies came about.
     *
     * @return rise by each cut
     */
    public Working working() {
        Term now = Term.of("f", "frequency", club.frequency());
        Term tip = Term.of("f_T", "with the cut off the tip", offTip());
        Term butt = Term.of("f_U", "with the cut off the butt", offButt());
        Source source = Source.assumption("both clubs clamped alike");
        return new Working(
                "Effect of a cut",
                List.of(
                        new Working.Line(
                                Term.of("d_T", "rise by the tip cut", offTip().minus(club.frequency())),
                                "f_T - f",
                                List.of(tip, now),
                                source),
                        new Working.Line(
                                Term.of("d_U", "rise by the butt cut", offButt().minus(club.frequency())),
                                "f_U - f",
                                List.of(butt, now),
                                source)));
    }
}
