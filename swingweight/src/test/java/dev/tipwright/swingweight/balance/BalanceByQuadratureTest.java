package dev.tipwright.swingweight.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.tipwright.core.club.Build;
import dev.tipwright.core.club.TipWork;
import dev.tipwright.core.part.Adhesive;
import dev.tipwright.core.part.Attachment;
import dev.tipwright.core.part.Counterweight;
import dev.tipwright.core.part.Extension;
import dev.tipwright.core.part.Ferrule;
import dev.tipwright.core.part.Finish;
import dev.tipwright.core.part.GripTape;
import dev.tipwright.core.part.HeadCentre;
import dev.tipwright.core.part.LineDensityProfile;
import dev.tipwright.core.part.OtherMass;
import dev.tipwright.core.part.Shaft;
import dev.tipwright.core.part.Shim;
import dev.tipwright.core.part.TipWeight;
import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.quantity.Density;
import dev.tipwright.core.quantity.Inertia;
import dev.tipwright.core.quantity.Length;
import dev.tipwright.swingweight.RandomClubs;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Test;

/**
 * Pins down mass, first moment and inertia of ten thousand clubs against Gauss-Legendre quadrature of a line density along the club,
 * with its point masses, all by Commons Math. The line density of an unweighed shaft is solved for from its mass and balance
 * point as two equations. What the tip work takes off is integrated from the three diameters, cut where they cross. Tolerance 1e-12 of
 * the sum of the absolute terms: sixteen digits less what a sum of some twenty terms loses.
 */
class BalanceByQuadratureTest {

    private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();

    @Test
    void tenThousandClubs() {
        RandomClubs clubs = new RandomClubs(20_250_101);
        for (int i = 0; i < 10_000; i++) {
            check(i, clubs.next());
        }
    }

    private static void check(int number, Build build) {
        Sums sums = new Sums();
        add(sums, build);
        Balance club = Balance.of(build);
        String as = "club " + number;
        assertThat(club.total().grams()).as(as).isCloseTo(sums.mass, within(1e-12 * sums.absoluteMass));
        assertThat(club.moment().gramMillimetres()).as(as).isCloseTo(sums.first, within(1e-12 * sums.absoluteFirst));
        double fulcrum = Length.ofInches(14).millimetres();
        assertThat(club.momentAbout(Length.ofInches(14)).gramMillimetres())
                .as(as)
                .isCloseTo(
                        sums.first - fulcrum * sums.mass,
                        within(1e-12 * (sums.absoluteFirst + fulcrum * sums.absoluteMass)));
        assertThat(club.inertiaAboutButt().gramSquareMillimetres())
                .as(as)
                .isCloseTo(sums.second, within(1e-12 * sums.absoluteSecond));
    }

    private static final class Sums {
        private double mass;
        private double first;
        private double second;
        private double absoluteMass;
        private double absoluteFirst;
        private double absoluteSecond;

        void point(double m, double x) {
            add(m, m * x, m * x * x);
        }

        void add(double m, double mx, double mxx) {
            mass += m;
            first += mx;
            second += mxx;
            absoluteMass += Math.abs(m);
            absoluteFirst += Math.abs(mx);
            absoluteSecond += Math.abs(mxx);
        }

        /** Mass spread from one place up the shaft to another, its tip at {@code tip} from the top of the grip. */
        void spread(UnivariateFunction density, double from, double to, double tip) {
            GaussIntegrator gauss = GAUSS.legendre(5, from, to);
            add(
                    gauss.integrate(density),
                    gauss.integrate(z -> density.value(z) * (tip - z)),
                    gauss.integrate(z -> density.value(z) * (tip - z) * (tip - z)));
        }
    }

    private static void add(Sums sums, Build build) {
        double insertion = build.work().seat().insertion().millimetres();
        double kept = build.parts().shaft().length().millimetres()
                - build.work().tipTrim().millimetres()
                - build.work().buttTrim().millimetres();
        double tip = build.parts().grip().cap().millimetres() + kept;
        for (Attachment attachment : build.work().attached()) {
            tip += attachment instanceof Extension extension ? extension.added().millimetres() : 0;
        }
        sums.point(
                build.parts().grip().mass().grams(),
                build.parts().grip().centre().millimetres());
        HeadCentre centre = build.parts().head().mass().centre().known().orElseThrow();
        double head = build.parts().head().mass().mass().grams();
        double along = tip - insertion + centre.along().millimetres();
        double off = centre.off().millimetres();
        Inertia own = build.parts().head().mass().inertia().known().orElseThrow();
        sums.add(head, head * along, head * (along * along + off * off) + own.gramSquareMillimetres());
        addShaft(sums, build, tip, kept);
        addRemoved(sums, build, tip);
        for (Attachment attachment : build.work().attached()) {
            sums.point(attachment.mass().grams(), place(attachment, tip, insertion));
        }
    }

    private static double place(Attachment attachment, double tip, double insertion) {
        double mouth = tip - insertion;
        if (attachment instanceof Ferrule ferrule) {
            return mouth - ferrule.centre().millimetres();
        } else if (attachment instanceof Adhesive) {
            return mouth + insertion / 2;
        } else if (attachment instanceof GripTape tape) {
            return tape.centre().millimetres();
        } else if (attachment instanceof TipWeight weight) {
            return tip - weight.centre().millimetres();
        } else if (attachment instanceof Counterweight counterweight) {
            return counterweight.depth().millimetres();
        } else if (attachment instanceof Extension extension) {
            return extension.centre().millimetres();
        } else if (attachment instanceof Shim shim) {
            return tip - shim.length().millimetres() / 2;
        }
        OtherMass other = (OtherMass) attachment;
        double up = other.place().offset().millimetres();
        return other.label().equals("plug") ? mouth + insertion / 2 - up : mouth - up;
    }

    private static void addShaft(Sums sums, Build build, double tip, double kept) {
        Shaft shaft = build.parts().shaft();
        double trim = build.work().tipTrim().millimetres();
        double length = shaft.length().millimetres();
        if (shaft.mass().along().known().isEmpty()) {
            double m = shaft.mass().mass().grams();
            double[] line = new LUDecomposition(new Array2DRowRealMatrix(new double[][] {
                        {length, length * length / 2}, {length * length / 2, length * length * length / 3}
                    }))
                    .getSolver()
                    .solve(new ArrayRealVector(
                            new double[] {m, m * shaft.mass().balance().millimetres()}))
                    .toArray();
            sums.spread(z -> line[0] + line[1] * (z + trim), 0, kept, tip);
            return;
        }
        List<LineDensityProfile.Knot> knots =
                shaft.mass().along().known().orElseThrow().knots();
        for (int i = 1; i < knots.size(); i++) {
            double[] at = {
                knots.get(i - 1).at().millimetres(), knots.get(i).at().millimetres()
            };
            double[] mu = {
                knots.get(i - 1).density().gramsPerMillimetre(),
                knots.get(i).density().gramsPerMillimetre()
            };
            UnivariateFunction line = new LinearInterpolator().interpolate(at, mu);
            double from = Math.max(at[0] - trim, 0);
            double to = Math.min(at[1] - trim, kept);
            if (from < to) {
                sums.spread(z -> line.value(Math.min(Math.max(z + trim, at[0]), at[1])), from, to, tip);
            }
        }
    }

    private static void addRemoved(Sums sums, Build build, double tip) {
        TipWork work = build.work().tip();
        double trim = build.work().tipTrim().millimetres();
        Finish finish = build.parts().shaft().section().finish().known().orElseThrow();
        Wall wall = build.parts().shaft().section().wall().known().orElseThrow();
        double thickness = finish.thickness().at(Length.ZERO).millimetres();
        UnivariateFunction raw = line(build.parts().shaft().section().outside().stations());
        UnivariateFunction outside = z -> raw.value(z + trim);
        UnivariateFunction bare = z -> outside.value(z) - 2 * thickness;
        double stripped = work.stripped().millimetres();
        double worked = work.finished().isEmpty()
                ? 0
                : work.finished().get(work.finished().size() - 1).at().millimetres();
        UnivariateFunction shape = work.finished().isEmpty() ? z -> 1e3 : line(work.finished());
        TreeSet<Double> cuts = new TreeSet<>(List.of(0.0, stripped, worked));
        work.finished().forEach(at -> cuts.add(at.at().millimetres()));
        build.parts()
                .shaft()
                .section()
                .outside()
                .stations()
                .forEach(at -> cuts.add(at.at().millimetres() - trim));
        List<Double> within = new ArrayList<>(cuts.subSet(0.0, true, Math.max(stripped, worked), true));
        for (int i = 1; i < within.size(); i++) {
            double from = within.get(i - 1);
            double to = within.get(i);
            double middle = (from + to) / 2;
            UnivariateFunction down = middle < worked ? shape : z -> 1e3;
            UnivariateFunction start = middle < stripped ? bare : outside;
            UnivariateFunction after = z -> Math.min(start.value(z), down.value(z));
            for (double[] piece : cutWhereTheyCross(from, to, down, bare, outside)) {
                spreadRing(
                        sums,
                        outside,
                        z -> Math.max(after.value(z), bare.value(z)),
                        finish.density().known().orElseThrow(),
                        piece,
                        tip);
                spreadRing(
                        sums,
                        bare,
                        z -> Math.min(after.value(z), bare.value(z)),
                        wall.density().known().orElseThrow(),
                        piece,
                        tip);
            }
        }
    }

    private static void spreadRing(
            Sums sums, UnivariateFunction over, UnivariateFunction under, Density density, double[] piece, double tip) {
        double grams = density.gramsPerCubicCentimetre() / 1000 * Math.PI / 4;
        sums.spread(
                z -> -grams * (over.value(z) - under.value(z)) * (over.value(z) + under.value(z)),
                piece[0],
                piece[1],
                tip);
    }

    private static List<double[]> cutWhereTheyCross(
            double from, double to, UnivariateFunction down, UnivariateFunction... others) {
        TreeSet<Double> cuts = new TreeSet<>(List.of(from, to));
        for (UnivariateFunction other : others) {
            double atFrom = down.value(from) - other.value(from);
            double atTo = down.value(to) - other.value(to);
            if (atFrom * atTo < 0) {
                cuts.add(from + (to - from) * atFrom / (atFrom - atTo));
            }
        }
        List<double[]> pieces = new ArrayList<>();
        for (Double cut = cuts.first(); cuts.higher(cut) != null; cut = cuts.higher(cut)) {
            pieces.add(new double[] {cut, cuts.higher(cut)});
        }
        return pieces;
    }

    /** Straight between stations, and on beyond the last so that a quadrature point on the edge has a value. */
    private static UnivariateFunction line(List<Station> stations) {
        double[] at = stations.stream().mapToDouble(s -> s.at().millimetres()).toArray();
        double[] d = stations.stream().mapToDouble(s -> s.mean().millimetres()).toArray();
        UnivariateFunction inside = new LinearInterpolator().interpolate(at, d);
        return z -> inside.value(Math.min(Math.max(z, at[0]), at[at.length - 1]));
    }
}
