package dev.tipwright.evidence;

import java.util.List;

/** The independent general-purpose libraries that tests of the modules hold a headline function against, beside the tables. */
final class References {

    private static final String MATH = "org.apache.commons.math3";
    private static final String NUMBERS = "org.apache.commons.numbers";
    private static final String STATISTICS = "org.apache.commons.statistics";

    private static final String QUADRATURE = "Commons Math: Gauss quadrature";

    private References() {}

    static List<Reference> of(Headline headline) {
        return switch (headline) {
            case PROFILE_VOLUME ->
                List.of(core("Hipparchus: Gauss quadrature", "org.hipparchus", "mass/ProfileVolumeProperties"));
            case SHAFT_MASS -> List.of(core(QUADRATURE, MATH, "mass/ShaftCutProperties"));
            case FREQUENCY -> frequency();
            case BUDGET ->
                List.of(core("Commons Statistics: Student's t", STATISTICS, "uncertainty/CoverageFactorTest"));
            case MONTE_CARLO ->
                List.of(core("Commons Statistics: distributions", STATISTICS, "uncertainty/MonteCarloShapesTest"));
            case FIRST_CONTACT -> List.of(fit("Commons Numbers: exact fractions", NUMBERS, "insert/EverySegmentPair"));
            case CLEARANCE -> List.of(fit("Commons Numbers: exact fractions", NUMBERS, "insert/ClearanceTest"));
            case LEAN -> List.of(fit("Commons Math: linear programming", MATH, "limits/LeanTest"));
            case CLASS_OF_FIT -> List.of(fit("Commons Math: normal distribution", MATH, "limits/Iso286Test"));
            case MATERIAL_REMOVAL -> List.of(fit(QUADRATURE, MATH, "taper/PointByPoint"));
            case STAGE_TABLE -> List.of(fit("Commons Math: exact fractions", MATH, "taper/StagedTipExactTest"));
            case SELECTIVE_ASSEMBLY ->
                List.of(fit("JGraphT: pairings of least cost", "org.jgrapht", "set/SelectiveAssemblyTest"));
            case SHAFT_MATCHING ->
                List.of(core("JGraphT: pairings of least cost", "org.jgrapht", "match/ShaftMatcherReferenceTest"));
            case BALANCE, INERTIA -> List.of(swing(QUADRATURE, "balance/BalanceByQuadratureTest"));
            case TARGET_SOLVE -> List.of(swing("Commons Math: Brent's optimiser", "aim/SolvesTest"));
            default -> List.of();
        };
    }

    private static List<Reference> frequency() {
        return List.of(
                core("EJML: eigenvalues of finite elements", "org.ejml", "internal/beam/FiniteElements"),
                core("EJML: eigenvalues of an integral equation", "org.ejml", "internal/beam/GreensFunction"),
                core(
                        "Commons Math: roots of the characteristic equation",
                        MATH,
                        "internal/beam/CantileverReferenceTest"));
    }

    private static Reference core(String library, String root, String test) {
        return new Reference(library, root, "core/src/test/java/dev/tipwright/core/" + test + ".java");
    }

    private static Reference fit(String library, String root, String test) {
        return new Reference(library, root, "fit-check/src/test/java/dev/tipwright/fitcheck/" + test + ".java");
    }

    private static Reference swing(String library, String test) {
        return new Reference(library, MATH, "swingweight/src/test/java/dev/tipwright/swingweight/" + test + ".java");
    }
}
