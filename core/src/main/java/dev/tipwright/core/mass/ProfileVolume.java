package dev.tipwright.core.mass;

import dev.tipwright.core.evidence.Source;
import dev.tipwright.core.evidence.Term;
import dev.tipwright.core.evidence.Working;
import dev.tipwright.core.internal.arg.Require;
import dev.tipwright.core.internal.shape.Polyline;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Volume;
import java.util.ArrayList;
import java.util.List;

/** The volume inside a diameter profile: one frustum, {@code pi h (D^2 + D d + d^2) / 12}, between each two stations. */
public final class ProfileVolume {

    private static final Source FRUSTUM =
            Source.published("any text on solid geometry", "volume of a frustum of a cone");

    private ProfileVolume() {}

    /**
     * The volume over the domain of a profile, by its mean diameters.
     *
     * @param profile the profile
     * @return its volume
     */
    public static Volume of(DiameterProfile profile) {
        Require.given("profile", profile);
        return Volume.ofCubicMillimetres(
                Polyline.of(profile, Polyline.Diameter.MEAN).solid().volume());
    }

    /**
     * How the volume comes about: a line for each frustum, then their sum.
     *
     * @param profile the profile
     * @return the working
     */
    public static Working working(DiameterProfile profile) {
        Require.given("profile", profile);
        List<Working.Line> lines = new ArrayList<>();
        List<Term> parts = new ArrayList<>();
        StringBuilder sum = new StringBuilder();
        Polyline line = Polyline.of(profile, Polyline.Diameter.MEAN);
        for (int i = 1; i < line.size(); i++) {
            if (line.at(i) > line.at(i - 1)) {
                String name = "V" + (parts.size() + 1);
                Term part = frustum(name, line, i, lines);
                sum.append(parts.isEmpty() ? name : " + " + name);
                parts.add(part);
            }
        }
        lines.add(new Working.Line(Term.of("V", "volume", of(profile)), sum.toString(), parts, FRUSTUM));
        return new Working("Volume of a profile", lines);
    }

    private static Term frustum(String name, Polyline line, int end, List<Working.Line> lines) {
        Station low = station(line, end - 1);
        Station high = station(line, end);
        Term part = Term.of(name, "volume up to the station at " + high.at(), of(DiameterProfile.of(low, high)));
        lines.add(new Working.Line(
                part,
                "PI * h * (D^2 + D * d + d^2) / 12 * c3",
                List.of(
                        Term.fine("h", "length of the frustum", high.at().minus(low.at())),
                        Term.fine("D", "diameter at one end", low.mean()),
                        Term.fine("d", "diameter at the other", high.mean()),
                        Term.volumeFactor()),
                FRUSTUM));
        return part;
    }

    private static Station station(Polyline line, int knot) {
        return Station.of(Length.ofMillimetres(line.at(knot)), Length.ofMillimetres(line.value(knot)));
    }
}
