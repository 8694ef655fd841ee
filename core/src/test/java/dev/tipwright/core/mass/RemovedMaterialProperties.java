package dev.tipwright.core.mass;

import static dev.tipwright.core.Bench.len;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.Bench;
import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.evidence.Reading;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.ShaftSection;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Length;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/** What comes off a tapered tip with an uneven finish, against the quadrature of Commons Math of the definition. */
class RemovedMaterialProperties {

    private static final double STRUCTURE = 1.6;
    private static final double FINISH = 1.2;

    private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();

    /** Diameters at either end in micrometres over 8 to 10 mm, finish 20 to 80 um, lengths in mm; trim in mm. */
    record Tip(int d0, int d1, int p0, int p1, int f0, int f1, int stripped, int worked, int trim) {

        DiameterProfile outside() {
            return DiameterProfile.of(
                    Station.of(Length.ZERO, Length.ofMicrometres(8000 + d0)),
                    Station.of(len("80 mm"), Length.ofMicrometres(8000 + d1)));
        }

        ThicknessProfile finish() {
            return new ThicknessProfile(List.of(
                    new ThicknessProfile.Knot(len("10 mm"), Length.ofMicrometres(p0)),
                    new ThicknessProfile.Knot(len("60 mm"), Length.ofMicrometres(p1))));
        }

        Build build() {
            Build club = Bench.club("7");
            ShaftSection section = new ShaftSection(
                    outside(),
                    len("15 mm"),
                    Reading.measured(new Wall(
                            ThicknessProfile.uniform(len("1.5 mm")),
                            Reading.measured(Density.ofGramsPerCubicCentimetre(STRUCTURE)))),
                    Reading.measured(
                            new Finish(finish(), Reading.measured(Density.ofGramsPerCubicCentimetre(FINISH)))));
            TipWork work = new TipWork(
                    Length.ofMillimetres(stripped),
                    List.of(
                            Station.of(Length.ZERO, Length.ofMicrometres(8000 + f0)),
                            Station.of(Length.ofMillimetres(worked), Length.ofMicrometres(8000 + f1))));
            return Bench.withShaft(club, club.parts().shaft().withSection(section))
                    .withWork(club.work().withTip(work).withTipTrim(Length.ofMillimetres(trim)));
        }

        double d(double z) {
            return 8 + (d0 + (d1 - d0) * (z + trim) / 80) / 1000;
        }

        double bare(double z) {
            double place = Math.min(Math.max(z + trim, 10), 60);
            return d(z) - 2 * (p0 + (p1 - p0) * (place - 10) / 50) / 1000;
        }

        double after(double z) {
            double start = z < stripped ? bare(z) : d(z);
            double f = 8 + (f0 + (f1 - f0) * z / worked) / 1000;
            return z < worked ? Math.min(start, f) : start;
        }
    }

    @Provide
    Arbitrary<Tip> tips() {
        Arbitrary<Integer> um = Arbitraries.integers().between(0, 2000);
        Arbitrary<Integer> finish = Arbitraries.integers().between(20, 80);
        return Combinators.combine(
                        um,
                        um,
                        finish,
                        finish,
                        um,
                        um,
                        Arbitraries.integers().between(0, 50),
                        Arbitraries.integers().between(1, 50))
                .flatAs((d0, d1, p0, p1, f0, f1, stripped, worked) -> Arbitraries.integers()
                        .between(0, 25)
                        .map(trim -> new Tip(d0, d1, p0, p1, f0, f1, stripped, worked, trim)));
    }

    @Property(tries = 300)
    void isTheIntegralOfTheRings(@ForAll("tips") Tip tip) {
        RemovedMaterial off = RemovedMaterial.of(tip.build());
        double structure = integral(tip, z -> squares(tip.bare(z), Math.min(tip.after(z), tip.bare(z))));
        double finish = integral(tip, z -> squares(tip.d(z), Math.max(tip.after(z), tip.bare(z))));
        DoubleUnaryOperator grams = z -> (STRUCTURE * squares(tip.bare(z), Math.min(tip.after(z), tip.bare(z)))
                        + FINISH * squares(tip.d(z), Math.max(tip.after(z), tip.bare(z))))
                / 1000;
        // The two slopes that cross inside a sixteenth differ by .04 at most, so the ring pi / 2 D times the difference
        // bends by
        // .6 mm2 a mm, and over a span of h the quadrature misses less than .6 h^2 / 8 = 3e-4 mm3; moments with 50 mm.
        assertThat(off.structure().cubicMillimetres()).isCloseTo(structure, within(1e-3));
        assertThat(off.finish().cubicMillimetres()).isCloseTo(finish, within(1e-3));
        assertThat(off.mass().grams()).isCloseTo(integral(tip, grams), within(1e-6));
        assertThat(off.momentAboutTip().gramMillimetres())
                .isCloseTo(integral(tip, z -> z * grams.applyAsDouble(z)), within(5e-5));
        assertThat(off.inertiaAboutTip().gramSquareMillimetres())
                .isCloseTo(integral(tip, z -> z * z * grams.applyAsDouble(z)), within(2.5e-3));
    }

    private static double squares(double outer, double inner) {
        return Math.PI / 4 * (outer * outer - inner * inner);
    }

    /** All knots lie at whole millimetres; each in sixteenths, so that a crossing of surfaces in between spoils little. */
    private static double integral(Tip tip, DoubleUnaryOperator function) {
        double sum = 0;
        for (int z = 0; z < 16 * Math.max(tip.stripped(), tip.worked()); z++) {
            sum += GAUSS.legendre(5, z / 16.0, (z + 1) / 16.0).integrate(function::applyAsDouble);
        }
        return sum;
    }

    @Property
    void takesMoreTheMoreIsWorkedDown(@ForAll("tips") Tip tip) {
        Build build = tip.build();
        TipWork work = build.work().tip();
        TipWork deeper = work.withFinished(work.finished().stream()
                .map(station -> station.widenedBy(len("-10 um")))
                .toList());
        RemovedMaterial off = RemovedMaterial.of(build);
        RemovedMaterial more = RemovedMaterial.of(build.withWork(build.work().withTip(deeper)));
        // Differences of solids of 4000 mm3 keep 1e-11 mm3.
        assertThat(more.structure().cubicMillimetres())
                .isGreaterThan(off.structure().cubicMillimetres() - 1e-10);
        assertThat(more.volume().cubicMillimetres()).isGreaterThan(off.volume().cubicMillimetres() - 1e-10);
        assertThat(off.structure().cubicMillimetres()).isGreaterThan(-1e-10);
        assertThat(off.finish().cubicMillimetres()).isGreaterThan(-1e-10);
    }
}
