package dev.tipwright.bits;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.ClubSet;
import dev.tipwright.core.plan.JobPlan;
import dev.tipwright.core.uncertainty.BenchUncertainty;
import dev.tipwright.core.uncertainty.BuildInput;
import dev.tipwright.examples.Plans;
import dev.tipwright.examples.read.Job;
import dev.tipwright.examples.read.JobFolder;
import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Random jobs, and one number for all the bits of their plans: every long, every double, every text that a plan holds, in the order of
 * its fields. The jobs are the clubs of the practice set with every reading off by up to three standard uncertainties of its
 * instrument.
 */
final class PlanBits {

    /** Far enough that bores bind elsewhere, near enough that clubs can still be built. */
    private static final double FARTHEST = 3;

    private final Job practice;
    private final BenchUncertainty bench;

    PlanBits(Path folder) {
        practice = JobFolder.read(folder).job().orElseThrow();
        bench = practice.bench().orElseThrow();
    }

    /** Prints the digest of so many jobs: {@code PlanBits FOLDER JOBS}. */
    public static void main(String[] args) {
        PlanBits bits = new PlanBits(Path.of(args[0]));
        System.out.println(bits.digest(Integer.parseInt(args[1]), false));
    }

    /** One digest over the digests of all jobs, in their order; on one thread or on all. */
    String digest(int jobs, boolean parallel) {
        IntStream seeds = IntStream.range(0, jobs);
        List<byte[]> each =
                (parallel ? seeds.parallel() : seeds).mapToObj(this::bits).toList();
        MessageDigest all = sha();
        each.forEach(all::update);
        return HexFormat.of().formatHex(all.digest());
    }

    private byte[] bits(int seed) {
        MessageDigest digest = sha();
        add(plan(seed), digest);
        return digest.digest();
    }

    /** The generator's sequence is part of its contract, so every Java virtual machine makes the same job of a seed. */
    JobPlan plan(int seed) {
        Random random = new Random(seed);
        List<Build> builds = new ArrayList<>();
        Build build =
                practice.clubs().builds().get(seed % practice.clubs().builds().size());
        for (BuildInput input : bench.inputs(build)) {
            double off = (2 * random.nextDouble() - 1) * FARTHEST;
            build = input.nudge().by(build, off * input.input().standardUncertainty());
        }
        builds.add(build);
        return Plans.of(new Job(
                new ClubSet(builds),
                practice.charts(),
                practice.kerf(),
                practice.fit(),
                practice.lengths(),
                practice.swingWeights(),
                practice.tipWeights(),
                List.of(),
                practice.extras()));
    }

    private static MessageDigest sha() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void add(Object value, MessageDigest digest) {
        if (value == null) {
            digest.update((byte) 0);
        } else if (value instanceof Optional<?> optional) {
            add(optional.orElse(null), digest);
        } else if (value instanceof Iterable<?> several) {
            several.forEach(one -> add(one, digest));
        } else if (value instanceof Double number) {
            digest.update(ByteBuffer.allocate(Double.BYTES).putDouble(number).array());
        } else if (value instanceof Number number) {
            digest.update(
                    ByteBuffer.allocate(Long.BYTES).putLong(number.longValue()).array());
        } else if (value instanceof Enum<?> || value instanceof Boolean || value instanceof CharSequence) {
            digest.update(value.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8));
        } else if (value.getClass().isArray()) {
            for (int i = 0; i < Array.getLength(value); i++) {
                add(Array.get(value, i), digest);
            }
        } else if (!value.getClass().isHidden()) {
            fields(value, digest);
        }
    }

    private static void fields(Object value, MessageDigest digest) {
        for (Class<?> type = value.getClass(); type != Object.class; type = type.getSuperclass()) {
            for (Field field : type.getDeclaredFields()) {
                if (!Modifier.isStatic(field.getModifiers())) {
                    try {
                        field.setAccessible(true);
                        add(field.get(value), digest);
                    } catch (IllegalAccessException e) {
                        throw new IllegalStateException(e);
                    }
                }
            }
        }
    }
}
