package dev.tipwright.architecture;

import com.tngtech.archunit.lang.ArchRule;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;

/** What the rules are for: each of these breaks one, and a rule that lets it pass is worth nothing. */
final class Faults {

    private Faults() {}

    /** A rule and a class that breaks it. */
    record Fault(ArchRule rule, Class<?> breaker) {}

    static List<Fault> all() {
        return List.of(
                new Fault(Rules.NOTHING_BUT_THE_JDK, Rules.class),
                new Fault(Rules.NO_CONSOLE, Prints.class),
                new Fault(Rules.NO_LOGGING, Logs.class),
                new Fault(Rules.NO_CLOCK, LooksAtTheClock.class),
                new Fault(Rules.NO_CLOCK, AsksForNow.class),
                new Fault(Rules.NO_ENVIRONMENT, AsksForAProperty.class),
                new Fault(Rules.NO_ENVIRONMENT, AsksTheRuntime.class),
                new Fault(Rules.NO_DEFAULT_LOCALE, Formats.class),
                new Fault(Rules.NO_DEFAULT_LOCALE, Lowers.class),
                new Fault(Rules.NO_UNSEEDED_RANDOM, Draws.class),
                new Fault(Rules.NO_UNSEEDED_RANDOM, MakesAName.class),
                new Fault(Rules.NO_REFLECTION, Reflects.class),
                new Fault(Rules.NO_REFLECTION, LoadsServices.class),
                new Fault(Rules.NO_THREADS, StartsThreads.class),
                new Fault(Rules.NO_PARALLEL_STREAMS, SharesOut.class),
                new Fault(Rules.SAME_BITS, TakesTheSine.class),
                new Fault(Rules.NO_MUTABLE_STATICS, Remembers.class),
                new Fault(Rules.NO_MUTABLE_STATICS, LendsAnArray.class),
                new Fault(Rules.NO_MUTABLE_STATICS, KeepsAMap.class),
                new Fault(Rules.NO_HASH_ORDER, WalksAMap.class),
                new Fault(Rules.NO_HASH_ORDER, WalksASet.class),
                new Fault(Rules.NO_HASH_ORDER, Collects.class));
    }

    static final class Prints {
        void print() {
            System.out.println("done");
        }
    }

    static final class Logs {
        System.Logger logger() {
            return System.getLogger("here");
        }
    }

    static final class LooksAtTheClock {
        long now() {
            return System.nanoTime();
        }
    }

    static final class AsksForNow {
        Instant now() {
            return Instant.now();
        }
    }

    static final class AsksForAProperty {
        String name() {
            return System.getProperty("user.name");
        }
    }

    static final class AsksTheRuntime {
        int cores() {
            return Runtime.getRuntime().availableProcessors();
        }
    }

    static final class Formats {
        @SuppressWarnings("DefaultLocale")
        String number(double x) {
            return String.format("%.1f", x);
        }
    }

    static final class Lowers {
        @SuppressWarnings("StringCaseLocaleUsage")
        String lower(String text) {
            return text.toLowerCase();
        }
    }

    static final class Draws {
        double draw() {
            return new Random().nextDouble();
        }
    }

    static final class MakesAName {
        UUID name() {
            return UUID.randomUUID();
        }
    }

    static final class Reflects {
        Class<?> find() throws ClassNotFoundException {
            return Class.forName("java.lang.String");
        }
    }

    static final class LoadsServices {
        ServiceLoader<Runnable> load() {
            return ServiceLoader.load(Runnable.class);
        }
    }

    static final class StartsThreads {
        void start() {
            Executors.newCachedThreadPool().shutdown();
        }
    }

    static final class SharesOut {
        long count(Collection<String> all) {
            return all.parallelStream().count();
        }
    }

    static final class TakesTheSine {
        double sine(double x) {
            return Math.sin(x);
        }
    }

    static final class Remembers {
        static int count;
    }

    static final class LendsAnArray {
        @SuppressWarnings("MutablePublicArray")
        static final double[] VALUES = {1, 2};
    }

    static final class KeepsAMap {
        static final Map<String, String> KEPT = new HashMap<>();
    }

    static final class WalksAMap {
        List<String> walk(Map<String, String> map) {
            return map.keySet().stream().toList();
        }
    }

    static final class WalksASet {
        int walk(List<String> all) {
            int sum = 0;
            for (String one : new HashSet<>(all)) {
                sum += one.length();
            }
            return sum;
        }
    }

    static final class Collects {
        Set<String> all(List<String> list) {
            return list.stream().collect(Collectors.toSet());
        }
    }
}
