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

    private static final Map<String, List<BenchInput>> USES = Map.of(
            "bore diameter", List.of(BenchInput.BORE_DIAMETER),
            "how far a pin goes in", List.of(BenchInput.BORE_DEPTH),
            "tip diameter", List.of(BenchInput.TIP_DIAMETER, BenchInput.FINISHED_TIP),
            "finish", List.of(BenchInput.FINISH),
            "wall", List.of(BenchInput.WALL),
            "length", List.of(BenchInput.RAW_LENGTH, BenchInput.CUTS),
            "mouth to ground", List.of(BenchInput.MOUTH_TO_GROUND),
            "mass", List.of(BenchInput.MASS),
            "balance point of a shaft", List.of(BenchInput.BALANCE_POINT),
            "centre of mass of a head", List.of(BenchInput.HEAD_CENTRE));

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

    /** The unit of an instrument as the library counts. */
    static String unit(Instrument instrument) {
        return instrument instanceof Instrument.OfMass ? "g" : "mm";
    }

    /** Whether the uncertainty is one that the library takes. */
    static boolean sensible(Instrument instrument) {
        return uncertainty(instrument) == 0 || uncertainty(instrument) >= Tool.LEAST;
    }

    private static double uncertainty(Instrument instrument) {
        return instrument instanceof Instrument.OfMass scale
                ? scale.uncertainty().grams()
                : ((Instrument.OfLength) instrument).uncertainty().millimetres();
    }

    private static dev.tipwright.core.uncertainty.Instrument supplied(Instrument instrument) {
        return dev.tipwright.core.uncertainty.Instrument.ofStandard(
                instrument.label(), unit(instrument), uncertainty(instrument), 0);
    }
}
