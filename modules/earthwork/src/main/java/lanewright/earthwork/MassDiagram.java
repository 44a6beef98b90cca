package lanewright.earthwork;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.volume.Running;
import lanewright.lane.volume.State;

/**
 * Running sum of cut less what fill takes, both in bank measure, along the lane: rising where there
 * is more cut, falling where there is more fill. Immutable.
 */
public final class MassDiagram {

    private final double[] station;
    private final double[] ordinate;

    private MassDiagram(double[] station, double[] ordinate) {
        this.station = station;
        this.ordinate = ordinate;
    }

    /**
     * The diagram of a lane, curves corrected.
     *
     * @param cut bank
     * @param fill compacted
     * @param edgeRefill the part of fill that is not earth to be found, compacted
     * @param soil what is cut and what fill is made of
     */
    public static MassDiagram of(Running cut, Running fill, Running edgeRefill, Soil soil) {
        double[] station = new double[cut.size()];
        double[] ordinate = new double[cut.size()];
        for (int i = 0; i < station.length; i++) {
            station[i] = cut.station(i);
            double filled = fill.correctedTo(i) - edgeRefill.correctedTo(i);
            ordinate[i] = cut.correctedTo(i) - soil.convert(filled, State.COMPACTED, State.BANK);
        }
        return new MassDiagram(station, ordinate);
    }

    /** Number of points. */
    public int size() {
        return station.length;
    }

    /** Station of point {@code i}, m. */
    public double station(int i) {
        return station[i];
    }

    /** Ordinate of point {@code i}, bank m³. */
    public double ordinate(int i) {
        return ordinate[i];
    }

    /** Stations between the ends at which cut so far equals fill so far, in order, m. */
    public List<Double> balancePoints() {
        List<Double> found = new ArrayList<>();
        for (int i = 1; i < station.length; i++) {
            double a = ordinate[i - 1];
            double b = ordinate[i];
            if ((a < 0 && b > 0) || (a > 0 && b < 0)) {
                found.add(station[i - 1] + (station[i] - station[i - 1]) * (a / (a - b)));
            } else if (b == 0 && a != 0 && i < station.length - 1) {
                found.add(station[i]);
            }
        }
        return found;
    }

    /**
     * Mean distance that earth is moved along the lane between the first and last of its balance
     * points (ends of the lane included): the area under the diagram over its rises there. What is
     * hauled away or brought in is not in it.
     *
     * @return m, or NaN if nothing balances
     */
    public double averageHaul() {
        double area = 0;
        double moved = 0;
        List<Double> points = new ArrayList<>(balancePoints());
        if (station.length == 0 || points.isEmpty()) {
            return Double.NaN;
        }
        points.add(0, station[0]);
        for (int p = 1; p < points.size(); p++) {
            double top = 0;
            double from = points.get(p - 1);
            double to = points.get(p);
            for (int i = 1; i < station.length; i++) {
                double a = Math.max(station[i - 1], from);
                double b = Math.min(station[i], to);
                if (a < b) {
                    double va = at(i, a);
                    double vb = at(i, b);
                    area += (b - a) * Math.abs(va + vb) / 2;
                    top = Math.max(top, Math.max(Math.abs(va), Math.abs(vb)));
                }
            }
            moved += top;
        }
        return moved > 0 ? area / moved : Double.NaN;
    }

    private double at(int i, double s) {
        double part = (s - station[i - 1]) / (station[i] - station[i - 1]);
        return ordinate[i - 1] + part * (ordinate[i] - ordinate[i - 1]);
    }
}
