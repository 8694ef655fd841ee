package dev.tipwright.examples.read;

import dev.tipwright.core.profile.Bore;
import dev.tipwright.core.profile.BoreEnd;
import dev.tipwright.core.profile.GaugePin;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The bore of one head from its lines: a chamfer if there is one, then pins, or readings of a bore gauge. */
final class BoreReader {
    private static final String CHAMFER = "chamfer";
    private static final String PIN = "pin";
    private static final String GAUGE = "bore gauge";

    private final List<Row> lines;
    private final Optional<Length> hosel;
    private final List<Station> stations = new ArrayList<>();
    private final List<String> tools = new ArrayList<>();
    private boolean sound = true;

    /**
     * @param lines the lines of one head
     * @param hosel its outside, if that could be read
     */
    BoreReader(List<Row> lines, Optional<Length> hosel) {
        this.lines = lines;
        this.hosel = hosel;
    }

    Optional<Bore> bore(BoreEnd end) {
        lines.forEach(this::read);
        if (!sound) {
            return Optional.empty();
        }
        Row last = lines.get(lines.size() - 1);
        last.require(stations.size() > 1, "head", "a head with two readings or more");
        last.require(!tools.get(tools.size() - 1).equals(CHAMFER), "read with", "pin or bore gauge at the bottom");
        int chamfer = tools.lastIndexOf(CHAMFER) + 1;
        return last.make(() -> tools.contains(PIN)
                ? Bore.ofPins(stations.subList(0, chamfer), pins(chamfer), end)
                : Bore.ofReadings(stations, end));
    }

    private List<GaugePin> pins(int from) {
        return stations.subList(from, stations.size()).stream()
                .map(station -> new GaugePin(station.least(), station.at()))
                .toList();
    }

    private void read(Row line) {
        Length depth = line.read("depth", Limits.BORE_DEPTH);
        Length diameter = line.read("diameter", Limits.BORE_DIAMETER);
        String tool = line.choice("read with", List.of(CHAMFER, PIN, GAUGE));
        line.require(
                hosel.isEmpty() || diameter.lessThan(hosel.get()), "diameter", "less than the outside of the hosel");
        if (sound) {
            inOrder(line, depth, diameter, tool);
        }
        sound = sound && line.sound();
        if (line.sound()) {
            stations.add(Station.of(depth, diameter));
            tools.add(tool);
        }
    }

    /** How a line goes with those before it; not asked once one of them has a problem. */
    private void inOrder(Row line, Length depth, Length diameter, String tool) {
        int count = stations.size();
        if (count == 0) {
            line.require(depth.equals(Length.ZERO), "depth", "0 in, the hosel mouth, in the first line of a head");
            return;
        }
        Station before = stations.get(count - 1);
        String toolBefore = tools.get(count - 1);
        line.require(!depth.lessThan(before.at()), "depth", "no less than in the line before: from the mouth down");
        line.require(
                count == 1 || depth.moreThan(stations.get(count - 2).at()),
                "depth",
                "at most two readings at one depth");
        line.require(
                tool.equals(toolBefore) || toolBefore.equals(CHAMFER),
                "read with",
                toolBefore + ", as in the line before");
        line.require(
                !tool.equals(PIN) || !toolBefore.equals(PIN) || !diameter.moreThan(before.least()),
                "diameter",
                "no wider than the pin before, since it goes in further");
    }
}
