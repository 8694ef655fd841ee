package dev.tipwright.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/** Runs every benchmark once and writes the page of results, with the machine they are true of. */
public final class Results {

    private static final String BYTES = "gc.alloc.rate.norm";

    /** A heap that is all in memory beforehand: else the first seconds of a benchmark are spent fetching its pages. */
    private static final String[] TOUCHED_HEAP = {"-Xms512m", "-Xmx512m", "-XX:+AlwaysPreTouch"};

    /** By class and method, and by parameters after a blank where there are any. */
    private final TreeMap<String, RunResult> results = new TreeMap<>();

    private Results() {}

    /**
     * Runs and writes.
     *
     * @param args the file to write
     * @throws RunnerException if a benchmark fails
     * @throws IOException if the file cannot be written
     */
    public static void main(String[] args) throws RunnerException, IOException {
        Results page = new Results();
        page.add(new Runner(new OptionsBuilder()
                        .include("dev\\.tipwright\\..*")
                        .addProfiler(GCProfiler.class)
                        .forks(2)
                        .jvmArgs(TOUCHED_HEAP)
                        .warmupIterations(3)
                        .warmupTime(TimeValue.seconds(1))
                        .measurementIterations(3)
                        .measurementTime(TimeValue.seconds(1))
                        .build())
                .run());
        Files.writeString(Path.of(args[0]), page.text());
    }

    private void add(Collection<RunResult> runs) {
        for (RunResult run : runs) {
            String benchmark = run.getParams().getBenchmark().replaceAll(".*\\.(\\w+\\.\\w+)$", "$1");
            String parameters = run.getParams().getParamsKeys().stream()
                    .sorted()
                    .map(key -> " " + key + "=" + run.getParams().getParam(key))
                    .collect(Collectors.joining());
            results.put(benchmark + parameters, run);
        }
    }

    private String text() throws IOException {
        List<String> lines = new ArrayList<>();
        lines.add("# Results");
        lines.add("");
        lines.add("Written by `Results` on " + LocalDate.now(ZoneOffset.UTC)
                + "; [README.md](README.md) says how, and what the numbers mean.");
        lines.add("");
        lines.add("- " + processor());
        lines.add("- " + System.getProperty("java.vm.name") + " " + Runtime.version() + ", "
                + System.getProperty("os.name") + " " + System.getProperty("os.arch"));
        lines.add("");
        lines.add("## Against the targets");
        lines.add("");
        lines.add("| what | measured | target | |");
        lines.add("|---|---|---|---|");
        targets(lines);
        lines.add("");
        lines.add("## Everything");
        lines.add("");
        lines.add("| benchmark | mean | error (99.9 %) | unit | bytes a call |");
        lines.add("|---|---|---|---|---|");
        results.forEach((name, run) -> lines.add(String.format(
                Locale.ROOT,
                "| %s | %s | %s | %s | %.0f |",
                name,
                digits(run.getPrimaryResult().getScore()),
                digits(run.getPrimaryResult().getScoreError()),
                run.getPrimaryResult().getScoreUnit(),
                bytes(name))));
        return String.join("\n", lines) + "\n";
    }

    private void targets(List<String> lines) {
        atMost(
                lines,
                "swing weight of a whole build / raw doubles",
                ratio("SwingWeightBenchmark.library", "SwingWeightBenchmark.rawDoubles"),
                1.3,
                "");
        told(
                lines,
                "a sum of four moments in a generic units library / here",
                ratio("SwingWeightBenchmark.fourTermsGeneric", "SwingWeightBenchmark.fourTerms"));
        atMost(lines, "first contact, 3 x 3 stations", score("JobBenchmark.firstContact"), 60, " ns");
        atMost(lines, "its memory", bytes("JobBenchmark.firstContact"), 128, " B");
        atMost(lines, "plan of one club", score("JobBenchmark.plan") / 1000, 3, " us");
        atMost(lines, "its memory", bytes("JobBenchmark.plan"), 6000, " B");
        atLeast(
                lines,
                "dense eigen-solution / frequency",
                ratio("FrequencyBenchmark.denseEigenSolution", "FrequencyBenchmark.library"),
                20);
        atLeast(
                lines,
                "graph library / matching 14 clubs",
                ratio("MatchingBenchmark.graphLibrary", "MatchingBenchmark.library"),
                3);
        atLeast(
                lines,
                "catalogue search, one thread / two",
                ratio("SearchBenchmark.search heads=200 threads=1", "SearchBenchmark.search heads=200 threads=2"),
                1.8);
        atMost(lines, "first-order budget of a swing weight", score("UncertaintyBenchmark.firstOrder"), 100, " us");
        atMost(
                lines,
                "a million trials of a swing weight, two threads",
                score("UncertaintyBenchmark.millionTrials") / 1e6,
                1,
                " s");
    }

    private static void atMost(List<String> lines, String what, double measured, double most, String unit) {
        row(lines, what, digits(measured) + unit, "at most " + digits(most) + unit, measured <= most);
    }

    private static void atLeast(List<String> lines, String what, double measured, double least) {
        row(lines, what, digits(measured), "at least " + digits(least), measured >= least);
    }

    private static void told(List<String> lines, String what, double measured) {
        lines.add("| " + what + " | " + digits(measured) + " | | |");
    }

    private static void row(List<String> lines, String what, String measured, String target, boolean met) {
        lines.add("| " + what + " | " + measured + " | " + target + " | " + (met ? "met" : "**missed**") + " |");
    }

    private double ratio(String over, String under) {
        return score(over) / score(under);
    }

    private double score(String name) {
        return result(name).getPrimaryResult().getScore();
    }

    private double bytes(String name) {
        Result<?> bytes = result(name).getSecondaryResults().get(BYTES);
        return bytes == null ? Double.NaN : bytes.getScore();
    }

    private RunResult result(String name) {
        RunResult result = results.get(name);
        if (result == null) {
            throw new IllegalStateException("no result of " + name + " among " + results.keySet());
        }
        return result;
    }

    private static String digits(double value) {
        double size = Math.abs(value);
        return String.format(Locale.ROOT, size >= 100 ? "%.0f" : size >= 10 ? "%.1f" : "%.2f", value);
    }

    private static String processor() throws IOException {
        Path file = Path.of("/proc/cpuinfo");
        String name = Files.exists(file)
                ? Files.readAllLines(file).stream()
                        .filter(line -> line.startsWith("model name"))
                        .map(line -> line.replaceAll(".*:\\s*", ""))
                        .findFirst()
                        .orElse("unknown processor")
                : "unknown processor";
        return name + ", " + Runtime.getRuntime().availableProcessors() + " processors";
    }
}
