package dev.tipwright.bits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The same jobs give the same bits: compiled by either compiler or interpreted, on the newest JDK that is there, and on many threads.
 * {@code -Dbits.jobs=10000} tries ten thousand.
 */
class SameBitsTest {

    private static final Path FOLDER = Path.of("scenarios", "practice-set");
    private static final int JOBS = Integer.getInteger("bits.jobs", 300);
    private static final String HERE = new PlanBits(FOLDER).digest(JOBS, false);

    /** All flags that change how a program is run and none that changes what it is to give. */
    @ParameterizedTest
    @ValueSource(strings = {"-XX:TieredStopAtLevel=1", "-XX:-TieredCompilation", "-Xint"})
    void howeverItIsCompiled(String flag) throws IOException, InterruptedException {
        assertThat(elsewhere(Path.of(System.getProperty("java.home")), flag)).isEqualTo(HERE);
    }

    /** With one JDK there is nothing to compare with; where the environment asks for another, its absence is a failure. */
    @Test
    void onTheNewestJdkThatIsThere() throws IOException, InterruptedException {
        Optional<Path> newest = newestJdk();
        if (!"required".equals(System.getenv("TIPWRIGHT_NEWEST_JDK"))) {
            assumeTrue(newest.isPresent(), "no JDK newer than this one beside it");
        }
        assertThat(newest).as("a JDK newer than this one beside it").isPresent();
        assertThat(elsewhere(newest.get(), "-Xshare:auto")).isEqualTo(HERE);
    }

    @Test
    void onManyThreadsAtOnce() {
        assertThat(new PlanBits(FOLDER).digest(JOBS, true)).isEqualTo(HERE);
    }

    /** A job more is another number, and so is the same job with one reading off by a nanometre. */
    @Test
    void otherJobsGiveOtherBits() {
        PlanBits bits = new PlanBits(FOLDER);
        assertThat(bits.digest(2, false)).isNotEqualTo(bits.digest(1, false));
        assertThat(bits.plan(1)).isNotEqualTo(bits.plan(7)).isEqualTo(bits.plan(1));
    }

    private static String elsewhere(Path jdk, String flag) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                jdk.resolve("bin/java").toString(),
                flag,
                "-cp",
                System.getProperty("java.class.path"),
                PlanBits.class.getName(),
                FOLDER.toString(),
                Integer.toString(JOBS)));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        return said.strip();
    }

    /** The JDKs of a machine lie beside each other, in folders whose names hold their number. */
    private static Optional<Path> newestJdk() throws IOException {
        Path home = Path.of(System.getProperty("java.home")).toRealPath();
        try (Stream<Path> beside = Files.list(home.getParent())) {
            return beside.filter(Files::isDirectory)
                    .filter(jdk -> Files.isExecutable(jdk.resolve("bin/java")))
                    .filter(jdk -> feature(jdk) > Runtime.version().feature())
                    .max(Comparator.comparingInt(SameBitsTest::feature));
        }
    }

    private static int feature(Path jdk) {
        try (Stream<String> lines = Files.lines(jdk.resolve("release"))) {
            return lines.filter(line -> line.startsWith("JAVA_VERSION="))
                    .map(line -> line.replaceAll("[^0-9.]", "").split("\\.", -1)[0])
                    .mapToInt(Integer::parseInt)
                    .findFirst()
                    .orElse(0);
        } catch (IOException e) {
            return 0;
        }
    }
}
