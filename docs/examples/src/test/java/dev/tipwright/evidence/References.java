package dev.tipwright.evidence;

import java.util.List;
import java.util.Map;

/** The independent general-purpose libraries that tests of the modules hold a headline function against, beside the tables. */
final class References {

    private static final String MATH = "org.apache.commons.math3";

    private static final Map<Headline, List<Reference>> ALL = Map.ofEntries(
            Map.entry(
                    Headline.PROFILE_VOLUME,
                    List.of(core("Hipparchus: Gauss quadrature", "org.hipparchus", "mass/ProfileVolumeProperties"))),
            Map.entry(
                    Headline.SHAFT_MASS,
                    List.of(core("Commons Math: Gauss quadrature", MATH, "mass/ShaftCutProperties"))),
            Map.entry(
                    Headline.FREQUENCY,
                    List.of(
                            core("EJML: eigenvalues of finite elements", "org.ejml", "internal/beam/FiniteElements"),
                            core(
                                    "EJML: eigenvalues of an integral equation",
                                    "org.ejml",
                                    "internal/beam/GreensFunction"),
                            core(
                                    "Commons Math: roots of the characteristic equation",
                                    MATH,
                                    "internal/beam/CantileverReferenceTest"))));

    private References() {}

    static List<Reference> of(Headline headline) {
        return ALL.getOrDefault(headline, List.of());
    }

    private static Reference core(String library, String root, String test) {
        return new Reference(library, root, "core/src/test/java/dev/tipwright/core/" + test + ".java");
    }
}
