package dev.tipwright.architecture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import dev.tipwright.architecture.Faults.Fault;
import dev.tipwright.architecture.ring.egg.Egg;
import dev.tipwright.architecture.ring.hen.Hen;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The published classes keep every rule, and there are classes to keep them. */
class ArchitectureTest {

    static List<ArchRule> rules() {
        return Rules.ALL;
    }

    @ParameterizedTest
    @MethodSource("rules")
    void everyPublishedClassKeepsTheRule(ArchRule rule) {
        rule.check(Published.CLASSES);
    }

    /** An importer that finds nothing finds no fault either. */
    @Test
    void theThreeModulesAreThere() {
        assertThat(Published.CLASSES.stream()
                        .map(type -> type.getPackageName().replaceAll("^dev\\.tipwright\\.(\\w+).*", "$1"))
                        .distinct()
                        .sorted())
                .containsExactly("core", "fitcheck", "swingweight");
        assertThat(Published.CLASSES).hasSizeGreaterThan(400);
    }

    static List<Fault> faults() {
        return Faults.all();
    }

    @ParameterizedTest
    @MethodSource("faults")
    void aRuleFindsWhatBreaksIt(Fault fault) {
        JavaClasses breaker = new ClassFileImporter().importClasses(fault.breaker());
        assertThatExceptionOfType(AssertionError.class)
                .isThrownBy(() -> fault.rule().check(breaker));
    }

    @Test
    void aCycleOfPackagesIsFound() {
        JavaClasses ring = new ClassFileImporter().importPackagesOf(Hen.class, Egg.class);
        assertThatExceptionOfType(AssertionError.class).isThrownBy(() -> Rules.NO_CYCLES.check(ring));
    }

    /** The arrows that do exist, forbidden for once. */
    @Test
    void anArrowIsFound() {
        for (String leaf : List.of(Rules.FIT_CHECK, Rules.SWINGWEIGHT)) {
            ArchRule wrong = Rules.noArrow(leaf, Rules.CORE);
            assertThatExceptionOfType(AssertionError.class).isThrownBy(() -> wrong.check(Published.CLASSES));
        }
    }

    @Test
    void everyOtherRuleHasAFaultToFind() {
        List<ArchRule> seen = Faults.all().stream().map(Fault::rule).toList();
        assertThat(Rules.ALL.stream().filter(rule -> !seen.contains(rule)))
                .containsExactly(
                        Rules.CORE_KNOWS_NO_FIT_CHECK,
                        Rules.CORE_KNOWS_NO_SWINGWEIGHT,
                        Rules.FIT_CHECK_KNOWS_NO_SWINGWEIGHT,
                        Rules.SWINGWEIGHT_KNOWS_NO_FIT_CHECK,
                        Rules.NO_CYCLES);
    }
}
