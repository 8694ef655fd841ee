package dev.tipwright.examples.read;

import dev.tipwright.core.uncertainty.BenchInput;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.BenchUncertainty.Tool;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the words of the column "measures" mean for the uncertainty of a club. */
final class Bench {

    private static final Map<String, List<BenchInput>> USES = Map.ofEntries(
            Map.entry("bore diameter", List.of(BenchInput.BORE_DIAMETER)),
            Map.entry("how far a pin goes in", List.of(BenchInput.BORE_DEPTH)),
            Map.entry("tip diameter", List.of(BenchInput.TIP_DIAMETER, BenchInput.FINISHED_TIP)),
            Map.entry("finish", List.of(BenchInput.FINISH)),
            Map.entry("wall", List.of(BenchInput.WALL)),
            Map.entry("length", List.of(BenchInput.RAW_LENGTH, BenchInput.CUTS)),
            Map.entry("mouth to ground", List.of(BenchInput.MOUTH_TO_GROUND)),
            Map.entry("lie", List.of(BenchInput.LIE)),
            Map.entry("hosel outside", List.of(BenchInput.HOSEL_OUTSIDE)),
            Map.entry("sole", List.of(BenchInput.SOLE)),
            Map.entry("mass", List.of(BenchInput.MASS)),
            Map.entry("balance point of a shaft", List.of(BenchInput.BALANCE_POINT)),
            Map.entry("centre of mass of a head", List.of(BenchInput.HEAD_CENTRE)),
            Map.entry("frequency", List.of(BenchInput.TIMED_FREQUENCY)),
            Map.entry("clamp", List.of(BenchInput.TIMED_CLAMP)));

    private Bench() {}

    /** The phrases of such a cell: one, or several as in "tip diameter, finish and wall". */
    private static String[] phrases(String measures) {
        return measures.strip().split(" *, *| +and +");
    }

    /** The first phrase that means nothing here. */
    static Optional<String> unknown(String measures) {
        for (String phrase : phrases(measures)) {
            if (!USES.containsKey(phrase)) {
                return Optional.of(phrase);
            }
        }
        return Optional.empty();
    }

    /** The words that are known, for people to choose from. */
    static String known() {
        return String.join(", ", USES.keySet().stream().sorted().toList());
    }

    /** The instruments as the library takes them; empty if there is none. Each reading has its own error. */
    static Optional<BenchUncertainty> of(List<Instrument> instruments) {
        List<Tool> tools = new ArrayList<>();
        for (Instrument instrument : instruments) {
            tools.add(new Tool(supplied(instrument), uses(instrument)));
        }
        return tools.isEmpty() ? Optional.empty() : Optional.of(new BenchUncertainty(tools));
    }

    /** What an instrument is used for, by the phrases that are known. */
    static List<BenchInput> uses(Instrument instrument) {
        List<BenchInput> uses = new ArrayList<>();
        for (String phrase : phrases(instrument.measures())) {
            uses.addAll(USES.getOrDefault(phrase, List.of()));
        }
        return uses;
    }

    /** Whether the uncertainty is one that the library takes. */
    static boolean sensible(Instrument instrument) {
        return instrument.uncertainty() == 0 || instrument.uncertainty() >= Tool.LEAST;
    }

    private static dev.tipwright.core.uncertainty.Instrument supplied(Instrument instrument) {
        return dev.tipwright.core.uncertainty.Instrument.ofStandard(
                instrument.label(), instrument.unit(), instrument.uncertainty(), 0);
    }
}
