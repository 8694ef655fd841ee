package dev.tipwright.examples.read;

import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.core.quantity.Mass;
import dev.tipwright.core.trim.TrimChart;
import dev.tipwright.core.uncertainty.BenchInput;
import dev.tipwright.fitcheck.FitTarget;
import dev.tipwright.swingweight.scale.SwingWeightScale;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The folder of a job as it was read: either the job, or everything that is wrong with the input; never half of one.
 *
 * @param job the job; empty if the input has any problem
 * @param problems everything that is wrong, file by file from top to bottom
 * @param warnings what is unusual and may be right
 */
public record JobFolder(Optional<Job> job, List<Problem> problems, List<Problem> warnings) {

    private static final String UNCERTAINTY = "standard uncertainty";

    private static final Comparator<Problem> FROM_TOP_TO_BOTTOM =
            Comparator.comparing(JobFolder::place).thenComparing(Problem::line);

    /**
     * Puts problems and warnings in order.
     *
     * @param job the job; empty if the input has any problem
     * @param problems everything that is wrong
     * @param warnings what is unusual and may be right
     */
    public JobFolder {
        problems = problems.stream().sorted(FROM_TOP_TO_BOTTOM).toList();
        warnings = warnings.stream().sorted(FROM_TOP_TO_BOTTOM).toList();
    }

    /**
     * Reads a folder.
     *
     * @param folder with the files that its README describes
     * @return the job, or what is wrong
     */
    public static JobFolder read(Path folder) {
        Problems problems = new Problems();
        Optional<Job> job = Optional.empty();
        if (Files.isDirectory(folder)) {
            job = job(folder, problems);
        } else {
            problems.add(new Problem(folder.toString(), 0, "", "no such folder", "a folder with the files of a job"));
        }
        return new JobFolder(problems.none() ? job : Optional.empty(), problems.problems(), problems.warnings());
    }

    private static int place(Problem problem) {
        return (int) Arrays.stream(Table.values())
                .takeWhile(table -> !table.file().equals(problem.file()))
                .count();
    }

    private static Optional<Job> job(Path folder, Problems problems) {
        Settings settings = Settings.read(folder, problems);
        Length kerf = settings.kerf();
        FitTarget fit = settings.fit();
        Optional<SwingWeightScale> scale = settings.scale();
        Job.Extras extras = new Job.Extras(
                settings.orientation(),
                settings.tapeLayers(),
                settings.sharesShafts(),
                settings.weightsInOneTip(),
                settings.timing());
        PartsShelves parts = new PartsShelves(folder, problems);
        Clubs clubs = new Clubs(parts, settings.attached(), scale.orElse(SwingWeightScale.LETTERS_AT_14_INCHES));
        clubs.read(Sheet.read(folder, Table.CLUBS, problems));
        List<TrimChart> charts = charts(Sheet.read(folder, Table.CHART, problems), parts);
        List<TipWeight> tipWeights = tipWeights(Sheet.read(folder, Table.TIP_WEIGHTS, problems));
        List<Instrument> instruments = instruments(Sheet.read(folder, Table.INSTRUMENTS, problems));
        return problems.none()
                ? Optional.of(new Job(
                        new ClubSet(clubs.builds()),
                        charts,
                        kerf,
                        fit,
                        clubs.lengths(),
                        clubs.swingWeights(),
                        tipWeights,
                        instruments,
                        extras))
                : Optional.empty();
    }

    /** A chart for each height that the shaft makers' charts assume, in the order in which they come. */
    private static List<TrimChart> charts(Sheet sheet, PartsShelves parts) {
        Map<Length, List<TrimChart.Row>> byHeight = new LinkedHashMap<>();
        Set<List<String>> seen = new HashSet<>();
        for (Row row : sheet.rows()) {
            String club = row.label("club");
            String blank = row.label("blank");
            parts.blanks().take(row, "blank");
            Length trim = row.read("tip trim", Limits.TIP_TRIM);
            Length height = row.read("bore bottom to ground", Limits.CHART_HEIGHT);
            row.require(seen.add(List.of(club, blank)), "club", "each club on each blank once");
            row.make(() -> new TrimChart.Row(club, blank, trim))
                    .ifPresent(made -> byHeight.computeIfAbsent(height, any -> new ArrayList<>())
                            .add(made));
        }
        return byHeight.entrySet().stream()
                .map(chart -> new TrimChart(chart.getValue(), chart.getKey()))
                .toList();
    }

    private static List<TipWeight> tipWeights(Sheet sheet) {
        Shelf<TipWeight> shelf = new Shelf<>(sheet);
        for (Row row : sheet.rows()) {
            String label = row.label("tip weight");
            Mass mass = row.read("mass", Limits.TIP_WEIGHT);
            Length stem = row.read("stem diameter", Limits.STEM);
            Length flange = row.read("flange thickness", Limits.FLANGE);
            Length centre = row.read("centre above tip end", Limits.WEIGHT_CENTRE);
            shelf.put(row, "tip weight", row.make(() -> new TipWeight(label, mass, stem, flange, centre)));
        }
        return shelf.all();
    }

    private static List<Instrument> instruments(Sheet sheet) {
        Shelf<Instrument> shelf = new Shelf<>(sheet);
        Set<BenchInput> taken = new HashSet<>();
        for (Row row : sheet.rows()) {
            Optional<Instrument> instrument = instrument(row, row.label("instrument"), row.label("measures"));
            instrument.ifPresent(one -> uses(row, one, taken));
            shelf.put(row, "instrument", row.sound() ? instrument : Optional.empty());
        }
        return shelf.all();
    }

    private static void uses(Row row, Instrument instrument, Set<BenchInput> taken) {
        row.require(Bench.unknown(instrument.measures()).isEmpty(), "measures", "of " + Bench.known());
        for (BenchInput use : Bench.uses(instrument)) {
            row.require(use.unit().equals(instrument.unit()), UNCERTAINTY, "one in " + use.unit());
            row.require(taken.add(use), "measures", "each thing measured with one instrument");
        }
        row.require(Bench.sensible(instrument), UNCERTAINTY, "0, or at least 0.0001 " + instrument.unit());
    }

    /** Ruler, scale, protractor and timer are told apart by the unit of their uncertainty. */
    private static Optional<Instrument> instrument(Row row, String label, String measures) {
        if (row.holds(UNCERTAINTY, Limits.MASS_UNCERTAINTY)) {
            double grams = row.read(UNCERTAINTY, Limits.MASS_UNCERTAINTY).grams();
            return row.make(() -> new Instrument(label, measures, grams, "g"));
        }
        if (row.holds(UNCERTAINTY, Limits.ANGLE_UNCERTAINTY)) {
            double degrees = row.read(UNCERTAINTY, Limits.ANGLE_UNCERTAINTY).degrees();
            return row.make(() -> new Instrument(label, measures, degrees, "deg"));
        }
        if (row.holds(UNCERTAINTY, Limits.FREQUENCY_UNCERTAINTY)) {
            double perMinute =
                    row.read(UNCERTAINTY, Limits.FREQUENCY_UNCERTAINTY).perMinute();
            return row.make(() -> new Instrument(label, measures, perMinute, "/min"));
        }
        double millimetres = row.read(UNCERTAINTY, Limits.LENGTH_UNCERTAINTY).millimetres();
        return row.make(() -> new Instrument(label, measures, millimetres, "mm"));
    }
}
