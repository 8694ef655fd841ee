package dev.tipwright.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What holds for every class that is published. */
final class Rules {

    static final String CORE = "dev.tipwright.core..";
    static final String FIT_CHECK = "dev.tipwright.fitcheck..";
    static final String SWINGWEIGHT = "dev.tipwright.swingweight..";

    static final ArchRule CORE_KNOWS_NO_FIT_CHECK = noArrow(CORE, FIT_CHECK);
    static final ArchRule CORE_KNOWS_NO_SWINGWEIGHT = noArrow(CORE, SWINGWEIGHT);
    static final ArchRule FIT_CHECK_KNOWS_NO_SWINGWEIGHT = noArrow(FIT_CHECK, SWINGWEIGHT);
    static final ArchRule SWINGWEIGHT_KNOWS_NO_FIT_CHECK = noArrow(SWINGWEIGHT, FIT_CHECK);

    static final ArchRule NOTHING_BUT_THE_JDK = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java.lang", "java.lang.invoke", "java.math", "java.util..", CORE, FIT_CHECK, SWINGWEIGHT);

    static final ArchRule NO_CYCLES =
            slices().matching("dev.tipwright.(**)").should().beFreeOfCycles();

    static final ArchRule NO_CONSOLE = never("use the console", calls(System.class, "out", "err", "in", "console"));

    static final ArchRule NO_LOGGING = never(
            "log", of("java\\.util\\.logging\\..*|java\\.lang\\.System\\$Logger.*"), calls(System.class, "getLogger"));

    static final ArchRule NO_CLOCK = never(
            "look at a clock",
            calls(System.class, "currentTimeMillis", "nanoTime"),
            of("java\\.time\\..*|java\\.util\\.(Date|Calendar|Timer).*"));

    static final ArchRule NO_ENVIRONMENT = never(
            "look at its environment or end it",
            calls(System.class, "getProperty", "getProperties", "getenv", "exit", "lineSeparator"),
            of("java\\.lang\\.Runtime"));

    static final ArchRule NO_DEFAULT_LOCALE = never(
            "depend on the default locale",
            calls(Locale.class, "getDefault"),
            calls(String.class, "format", "formatted", "toLowerCase", "toUpperCase")
                    .and(access -> parameters(access).stream().noneMatch(type -> type.isEquivalentTo(Locale.class))),
            of("java\\.text\\..*|java\\.util\\.(Formatter|Scanner)"));

    static final ArchRule NO_UNSEEDED_RANDOM = never(
            "draw numbers that cannot be drawn again",
            calls(Math.class, "random"),
            calls(StrictMath.class, "random"),
            calls(Random.class, "<init>").and(access -> parameters(access).isEmpty()),
            calls(UUID.class, "randomUUID"),
            of("java\\.util\\.concurrent\\.ThreadLocalRandom|java\\.security\\..*|java\\.util\\.SplittableRandom"));

    static final ArchRule NO_REFLECTION = never(
            "use reflection or load services",
            of("java\\.lang\\.reflect\\..*|java\\.util\\.ServiceLoader|java\\.lang\\.ClassLoader"),
            of("java\\.lang\\.Class")
                    .butNot(calls(Class.class, "isInstance", "cast", "getSimpleName", "desiredAssertionStatus")));

    static final ArchRule NO_THREADS = never(
            "start a thread or keep something for one",
            of("java\\.util\\.concurrent\\.(Executors|ForkJoin.*|CompletableFuture|ThreadPool.*|Scheduled.*)"),
            of("java\\.lang\\.(Thread|ThreadLocal)").butNot(calls(Thread.class, "currentThread", "interrupt")));

    static final ArchRule NO_PARALLEL_STREAMS = never(
            "share out a stream among threads", access -> named(access, "parallel", "parallelStream", "parallelSort"));

    /** {@code sin} and its like may differ in the last bit from one machine to the next; those of {@code StrictMath} may not. */
    static final ArchRule SAME_BITS = never(
            "use a function whose last bit is the machine's",
            calls(Math.class, "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh"),
            calls(Math.class, "exp", "expm1", "log", "log10", "log1p", "pow", "cbrt", "hypot"));

    static final ArchRule NO_MUTABLE_STATICS = fields().that()
            .areStatic()
            .and()
            .doNotHaveModifier(JavaModifier.SYNTHETIC)
            .should(notChange());

    /** Sets and maps ordered by hash are for asking only: their order differs from one run to the next. */
    static final ArchRule NO_HASH_ORDER = never(
            "walk through a collection in the order of hashes",
            of("java\\.util\\.(HashMap|HashSet|Set|Map|concurrent\\.ConcurrentHashMap)")
                    .and(Rules::walks),
            calls(Set.class, "of", "copyOf"),
            calls(Map.class, "of", "copyOf", "ofEntries"),
            calls(Collectors.class, "toSet", "toUnmodifiableSet", "toMap", "toUnmodifiableMap", "groupingBy"));

    static final List<ArchRule> ALL = List.of(
            CORE_KNOWS_NO_FIT_CHECK,
            CORE_KNOWS_NO_SWINGWEIGHT,
            FIT_CHECK_KNOWS_NO_SWINGWEIGHT,
            SWINGWEIGHT_KNOWS_NO_FIT_CHECK,
            NOTHING_BUT_THE_JDK,
            NO_CYCLES,
            NO_CONSOLE,
            NO_LOGGING,
            NO_CLOCK,
            NO_ENVIRONMENT,
            NO_DEFAULT_LOCALE,
            NO_UNSEEDED_RANDOM,
            NO_REFLECTION,
            NO_THREADS,
            NO_PARALLEL_STREAMS,
            SAME_BITS,
            NO_MUTABLE_STATICS,
            NO_HASH_ORDER);

    private Rules() {}

    /** A use of something that is not allowed. */
    @FunctionalInterface
    private interface Use {

        boolean in(JavaAccess<?> access);

        default Use and(Use other) {
            return access -> in(access) && other.in(access);
        }

        default Use butNot(Use other) {
            return access -> in(access) && !other.in(access);
        }
    }

    static ArchRule noArrow(String from, String to) {
        return noClasses()
                .that()
                .resideInAPackage(from)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(to);
    }

    private static ArchRule never(String what, Use... does) {
        List<Use> any = List.of(does);
        return classes().should(new ArchCondition<>("never " + what) {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                Stream.concat(item.getAccessesFromSelf().stream(), item.getMethodReferencesFromSelf().stream())
                        .filter(access -> any.stream().anyMatch(one -> one.in(access)))
                        .forEach(access -> events.add(SimpleConditionEvent.violated(item, access.getDescription())));
            }
        });
    }

    /** An access to some members of a type. */
    private static Use calls(Class<?> type, String... names) {
        return access -> access.getTargetOwner().isEquivalentTo(type) && named(access, names);
    }

    /** Any access to types of some names. */
    private static Use of(String names) {
        return access -> access.getTargetOwner().getFullName().matches(names);
    }

    private static boolean named(JavaAccess<?> access, String... names) {
        return List.of(names).contains(access.getTarget().getName());
    }

    private static List<JavaClass> parameters(JavaAccess<?> access) {
        return access.getTarget() instanceof AccessTarget.CodeUnitAccessTarget unit
                ? unit.getRawParameterTypes()
                : List.of();
    }

    private static boolean walks(JavaAccess<?> access) {
        return named(access, "iterator", "stream", "forEach", "keySet", "entrySet", "values", "toArray", "spliterator");
    }

    /** Final, and neither a collection that can be changed nor an array that anybody else can reach. */
    private static ArchCondition<JavaField> notChange() {
        DescribedPredicate<JavaClass> changeable =
                JavaClass.Predicates.assignableTo(Collection.class).or(JavaClass.Predicates.assignableTo(Map.class));
        return new ArchCondition<>("be final, of a type that does not change, and arrays private") {
            @Override
            public void check(JavaField field, ConditionEvents events) {
                boolean list = field.getRawType().isEquivalentTo(List.class);
                boolean fixed = field.getModifiers().contains(JavaModifier.FINAL)
                        && (list || !changeable.test(field.getRawType()))
                        && (!field.getRawType().isArray()
                                || field.getModifiers().contains(JavaModifier.PRIVATE));
                if (!fixed) {
                    events.add(SimpleConditionEvent.violated(field, field.getDescription()));
                }
            }
        };
    }
}
