package dev.tipwright.core.quantity;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.BinaryOperator;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;

/** A derived quantity as seen by a law that holds for all of them. */
record Kind<Q extends Comparable<Q>>(
        Class<Q> type,
        Q zero,
        String argument,
        DoubleFunction<Q> of,
        ToDoubleFunction<Q> value,
        Function<String, Q> parse,
        BinaryOperator<Q> plus,
        BinaryOperator<Q> minus,
        BiFunction<Q, Double, Q> scaledBy,
        ToDoubleBiFunction<Q, Q> ratioTo) {

    static List<Kind<?>> all() {
        return List.of(
                new Kind<>(
                        Angle.class,
                        Angle.ZERO,
                        "degrees",
                        Angle::ofDegrees,
                        Angle::degrees,
                        Angle::parse,
                        Angle::plus,
                        Angle::minus,
                        Angle::scaledBy,
                        Angle::ratioTo),
                new Kind<>(
                        Area.class,
                        Area.ZERO,
                        "squareMillimetres",
                        Area::ofSquareMillimetres,
                        Area::squareMillimetres,
                        Area::parse,
                        Area::plus,
                        Area::minus,
                        Area::scaledBy,
                        Area::ratioTo),
                new Kind<>(
                        Volume.class,
                        Volume.ZERO,
                        "cubicMillimetres",
                        Volume::ofCubicMillimetres,
                        Volume::cubicMillimetres,
                        Volume::parse,
                        Volume::plus,
                        Volume::minus,
                        Volume::scaledBy,
                        Volume::ratioTo),
                new Kind<>(
                        Density.class,
                        Density.ZERO,
                        "gramsPerCubicCentimetre",
                        Density::ofGramsPerCubicCentimetre,
                        Density::gramsPerCubicCentimetre,
                        Density::parse,
                        Density::plus,
                        Density::minus,
                        Density::scaledBy,
                        Density::ratioTo),
                new Kind<>(
                        LineDensity.class,
                        LineDensity.ZERO,
                        "gramsPerMillimetre",
                        LineDensity::ofGramsPerMillimetre,
                        LineDensity::gramsPerMillimetre,
                        LineDensity::parse,
                        LineDensity::plus,
                        LineDensity::minus,
                        LineDensity::scaledBy,
                        LineDensity::ratioTo),
                new Kind<>(
                        FirstMoment.class,
                        FirstMoment.ZERO,
                        "gramMillimetres",
                        FirstMoment::ofGramMillimetres,
                        FirstMoment::gramMillimetres,
                        FirstMoment::parse,
                        FirstMoment::plus,
                        FirstMoment::minus,
                        FirstMoment::scaledBy,
                        FirstMoment::ratioTo),
                new Kind<>(
                        Inertia.class,
                        Inertia.ZERO,
                        "kilogramSquareCentimetres",
                        Inertia::ofKilogramSquareCentimetres,
                        Inertia::kilogramSquareCentimetres,
                        Inertia::parse,
                        Inertia::plus,
                        Inertia::minus,
                        Inertia::scaledBy,
                        Inertia::ratioTo),
                new Kind<>(
                        Frequency.class,
                        Frequency.ZERO,
                        "perMinute",
                        Frequency::ofPerMinute,
                        Frequency::perMinute,
                        Frequency::parse,
                        Frequency::plus,
                        Frequency::minus,
                        Frequency::scaledBy,
                        Frequency::ratioTo),
                new Kind<>(
                        Stress.class,
                        Stress.ZERO,
                        "megapascals",
                        Stress::ofMegapascals,
                        Stress::megapascals,
                        Stress::parse,
                        Stress::plus,
                        Stress::minus,
                        Stress::scaledBy,
                        Stress::ratioTo),
                new Kind<>(
                        Force.class,
                        Force.ZERO,
                        "newtons",
                        Force::ofNewtons,
                        Force::newtons,
                        Force::parse,
                        Force::plus,
                        Force::minus,
                        Force::scaledBy,
                        Force::ratioTo),
                new Kind<>(
                        Torque.class,
                        Torque.ZERO,
                        "newtonMetres",
                        Torque::ofNewtonMetres,
                        Torque::newtonMetres,
                        Torque::parse,
                        Torque::plus,
                        Torque::minus,
                        Torque::scaledBy,
                        Torque::ratioTo),
                new Kind<>(
                        Speed.class,
                        Speed.ZERO,
                        "metresPerSecond",
                        Speed::ofMetresPerSecond,
                        Speed::metresPerSecond,
                        Speed::parse,
                        Speed::plus,
                        Speed::minus,
                        Speed::scaledBy,
                        Speed::ratioTo),
                new Kind<>(
                        BendingStiffness.class,
                        BendingStiffness.ZERO,
                        "newtonSquareMetres",
                        BendingStiffness::ofNewtonSquareMetres,
                        BendingStiffness::newtonSquareMetres,
                        BendingStiffness::parse,
                        BendingStiffness::plus,
                        BendingStiffness::minus,
                        BendingStiffness::scaledBy,
                        BendingStiffness::ratioTo));
    }

    @Override
    public String toString() {
        return type.getSimpleName();
    }
}
