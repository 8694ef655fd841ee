package dev.tipwright.fitcheck.taper;

import dev.tipwright.core.part.Wall;
import dev.tipwright.core.profile.DiameterProfile;
import dev.tipwright.core.profile.Station;
import dev.tipwright.core.profile.ThicknessProfile;
import dev.tipwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The work on a tip from its definition, one place at a time: {@code f(z) = min(d(z) - 2 p(z), least D down to i - z, less w)}. Volumes
 * by the Gauss quadrature of Commons Math over pieces without a corner; the corners are found by halving. Millimetres.
 */
final class PointByPoint {

    private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendre(4);
    private static final int HALVINGS = 60;

    private final Sections.Job job;
    private final double insertion;

    PointByPoint(Sections.Job job) {
        this.job = job;
        this.insertion = job.insertion().millimetres();
    }

    double mean(double z) {
        return diameter(job.tip().outside(), z, station -> (mm(station.least()) + mm(station.greatest())) / 2);
    }

    double finish(double z) {
        return thickness(job.tip().finish().thickness(), z + mm(job.tip().trimmed()));
    }

    double bare(double z) {
        return mean(z) - 2 * finish(z);
    }

    double inside(double z) {
        Wall wall = job.tip().wall().known().orElseThrow();
        return mean(z) - 2 * thickness(wall.thickness(), z + mm(job.tip().trimmed()));
    }

    /** The widest a tip may be here to go all the way in with the wanted clearance. */
    double room(double z) {
        return Math.min(here(z), passed(z)) - mm(job.clearance());
    }

    private double here(double z) {
        return leastOf(job.bore().profile(), insertion - z);
    }

    /** The least reading on the way to here. */
    private double passed(double z) {
        double least = leastOf(job.bore().profile(), 0);
        for (Station station : job.bore().profile().stations()) {
            boolean passed = mm(station.at()) > 0 && mm(station.at()) < insertion - z;
            least = passed ? Math.min(least, mm(station.least())) : least;
        }
        return least;
    }

    private static double leastOf(DiameterProfile bore, double depth) {
        return diameter(bore, depth, station -> mm(station.least()));
    }

    double widestBare(double z) {
        return diameter(job.tip().outside(), z, station -> mm(station.greatest())) - 2 * finish(z);
    }

    double finished(double z) {
        return Math.min(widestBare(z), room(z));
    }

    double worked(double z) {
        return Math.min(bare(z), finished(z));
    }

    double finishVolume() {
        return integral(z -> Math.PI / 4 * (mean(z) - bare(z)) * (mean(z) + bare(z)));
    }

    double structureVolume() {
        return integral(z -> Math.PI / 4 * (bare(z) - worked(z)) * (bare(z) + worked(z)));
    }

    /** Places where something has a station, from 0 to the insertion. */
    SortedSet<Double> places() {
        SortedSet<Double> places = new TreeSet<>(List.of(0.0, insertion));
        DiameterProfile outside = job.tip().outside();
        outside.stations().forEach(s -> places.add(mm(s.at()) - mm(outside.from())));
        job.bore().profile().stations().forEach(s -> places.add(insertion - mm(s.at())));
        Wall wall = job.tip().wall().known().orElseThrow();
        for (ThicknessProfile thickness : List.of(job.tip().finish().thickness(), wall.thickness())) {
            thickness.knots().forEach(k -> places.add(mm(k.at()) - mm(job.tip().trimmed())));
        }
        places.removeIf(place -> place < 0 || place > insertion);
        return places;
    }

    private double integral(DoubleUnaryOperator f) {
        List<Double> ends = new ArrayList<>(places());
        ends = split(ends, z -> here(z) - passed(z));
        ends = split(ends, z -> widestBare(z) - room(z));
        ends = split(ends, z -> bare(z) - room(z));
        double sum = 0;
        for (int i = 1; i < ends.size(); i++) {
            sum += gauss(f, ends.get(i - 1), ends.get(i));
        }
        return sum;
    }

    /** Adds the place in each piece where the sign of a straight line changes, by halving. A hair inside, for steps at its ends. */
    private static List<Double> split(List<Double> ends, DoubleUnaryOperator line) {
        List<Double> more = new ArrayList<>(ends.subList(0, 1));
        for (int i = 1; i < ends.size(); i++) {
            double hair = 1e-12 * (ends.get(i) - ends.get(i - 1));
            double low = ends.get(i - 1) + hair;
            double high = ends.get(i) - hair;
            boolean below = line.applyAsDouble(low) < 0;
            if (below != line.applyAsDouble(high) < 0) {
                for (int k = 0; k < HALVINGS; k++) {
                    double middle = (low + high) / 2;
                    boolean same = below == line.applyAsDouble(middle) < 0;
                    low = same ? middle : low;
                    high = same ? high : middle;
                }
                more.add(low);
            }
            more.add(ends.get(i));
        }
        return more;
    }

    private static double gauss(DoubleUnaryOperator f, double a, double b) {
        double sum = 0;
        for (int i = 0; i < GAUSS.getNumberOfPoints(); i++) {
            sum += GAUSS.getWeight(i) * f.applyAsDouble((a + b) / 2 + (b - a) / 2 * GAUSS.getPoint(i));
        }
        return sum * (b - a) / 2;
    }

    private static double diameter(DiameterProfile profile, double place, ToDoubleFunction<Station> of) {
        double at = place + mm(profile.from());
        List<Station> stations = profile.stations();
        int i = 1;
        while (i < stations.size() - 1 && mm(stations.get(i).at()) <= at) {
            i++;
        }
        Station low = stations.get(i - 1);
        Station high = stations.get(i);
        double span = mm(high.at()) - mm(low.at());
        double part = span == 0 ? 0 : (at - mm(low.at())) / span;
        return of.applyAsDouble(low) + part * (of.applyAsDouble(high) - of.applyAsDouble(low));
    }

    private static double thickness(ThicknessProfile profile, double place) {
        List<ThicknessProfile.Knot> knots = profile.knots();
        if (place <= mm(knots.get(0).at())) {
            return mm(knots.get(0).thickness());
        }
        for (int i = 1; i < knots.size(); i++) {
            double low = mm(knots.get(i - 1).at());
            double high = mm(knots.get(i).at());
            if (place <= high) {
                double a = mm(knots.get(i - 1).thickness());
                return a + (place - low) / (high - low) * (mm(knots.get(i).thickness()) - a);
            }
        }
        return mm(knots.get(knots.size() - 1).thickness());
    }

    private static double mm(Length length) {
        return length.nanometres() / 1e6;
    }
}
