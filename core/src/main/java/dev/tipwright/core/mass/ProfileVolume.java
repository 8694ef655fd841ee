package dev.tipwright.core.mass;

import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Volume;
import java.util.ArrayList;
import java.util.List;

/**
 * The volume inside a diameter profile over its domain: what a bore holds, or what a solid of that outside would fill. Between two
 * stations it is the frustum {@code V = pi h (D^2 + D d + d^2) / 12}, exact for a straight taper; of an out-of-round reading the
 * mean diameter counts. A step adds nothing, and the volumes of the parts of a profile add up to that of the whole.
 *
 * <pre>{@code
 * DiameterProfile bore = DiameterProfile.cylinder(Length.parse("10 mm"), Length.parse("30 mm"));
 * new ProfileVolume(bore).volume().cubicMillimetres();   // = 2356.194490192345
 * }</pre>
 *
 * @param profile the profile; its domain is what counts
 */
public record ProfileVolume(DiameterProfile profile) {

    private static final Source FRUSTUM = Source.published("any text on solid geometry", "frustum of a cone");

    /**
     * Checks the value.
     *
     * @param profile the profile; its domain is what counts
     */
    public ProfileVolume {
        Require.given("profile", profile);
    }

    /**
     * The volume.
     *
     * @return the sum of the frusta, in doubles: good to about fifteen digits
     */
    public Volume volume() {
        return Volume.ofCubicMillimetres(line().solid().volume());
    }

    /**
     * How the volume came about: a line for each frustum, and their sum.
     *
     * @return the working
     */
    public Working working() {
        Polyline line = line();
        List<Working.Line> lines = new ArrayList<>();
        for (int i = 1; i < line.size(); i++) {
            if (line.at(i) > line.at(i - 1)) {
                lines.add(frustum("V" + (lines.size() + 1), line, i));
            }
        }
        List<Term> parts = lines.stream().map(Working.Line::result).toList();
        String sum = String.join(" + ", parts.stream().map(Term::symbol).toList());
        lines.add(new Working.Line(Term.of("V", "volume", volume()), sum, parts, FRUSTUM));
        return new Working("Volume of a profile", lines);
    }

    private static Working.Line frustum(String symbol, Polyline line, int end) {
        Length from = Length.ofMillimetres(line.at(end - 1));
        Length to = Length.ofMillimetres(line.at(end));
        Polyline alone = line.between(line.at(end - 1), line.at(end));
        return new Working.Line(
                Term.of(
                        symbol,
                        "volume from " + from + " to " + to,
                        Volume.ofCubicMillimetres(alone.solid().volume())),
                "pi * (y2 - y1) * (D1^2 + D1 * D2 + D2^2) / 12",
                List.of(
                        Term.number("y1", "where it starts, mm", from.millimetres()),
                        Term.number("y2", "where it ends, mm", to.millimetres()),
                        Term.number("D1", "diameter at its start, mm", line.value(end - 1)),
                        Term.number("D2", "diameter at its end, mm", line.value(end))),
                FRUSTUM);
    }

    private Polyline line() {
        return Polyline.of(profile, Polyline.Diameter.MEAN);
    }
}
