package lanewright.lane.section;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import lanewright.ground.Ground;
import lanewright.ground.GroundLine;
import lanewright.ground.LineCutter;
import lanewright.ground.VertexField;
import lanewright.lane.line.Alignment;
import org.jspecify.annotations.Nullable;

/**
 * Lines cut through the ground across an alignment, kept as long as it does not move: a new grade
 * or shape reads them again without another walk over the triangles. For one thread.
 *
 * <p>Costs about 3 kB a station at shots every metre and 60 m of width.
 */
public final class GroundLines implements GroundSource {

    /** Lines kept at most; then all are let go. Our choice: about 100 MB at the cost above. */
    private static final int MOST = 30_000;

    /** A line that comes this near to the reach was read to it, m. */
    private static final double ROUNDING = 1e-9;

    private final Alignment alignment;
    private final VertexField topsoil;
    private final @Nullable VertexField bearing;
    private final LineCutter cutter;
    private final Map<Key, GroundAcross> kept = new HashMap<>();

    /**
     * A longer line would do for a shorter one, but not to the last bit: offsets are counted from
     * its start.
     */
    private record Key(double station, boolean before, double reach) {}

    /**
     * Lines across {@code alignment}.
     *
     * @param topsoil depth of topsoil on {@code ground}, m
     * @param bearing depth to bearing soil on {@code ground}, m, or null if known nowhere
     */
    public GroundLines(
            Alignment alignment,
            Ground ground,
            VertexField topsoil,
            @Nullable VertexField bearing) {
        this.alignment = alignment;
        this.topsoil = topsoil;
        this.bearing = bearing;
        this.cutter = ground.cutter();
    }

    @Override
    public GroundAcross across(double station, boolean before, double reach) {
        Key key = new Key(station, before, reach);
        GroundAcross known = kept.get(key);
        if (known == null) {
            if (kept.size() >= MOST) {
                kept.clear();
            }
            known = cut(station, before, reach);
            kept.put(key, known);
        }
        return known;
    }

    @Override
    public GroundAcross glance(double station, boolean before, double reach) {
        GroundAcross known = kept.get(new Key(station, before, reach));
        return known == null ? cut(station, before, reach) : known;
    }

    private GroundAcross cut(double station, boolean before, double reach) {
        double x = alignment.x(station);
        double y = alignment.y(station);
        double dx = before ? alignment.directionXBefore(station) : alignment.directionX(station);
        double dy = before ? alignment.directionYBefore(station) : alignment.directionY(station);
        GroundLine line =
                cutter.cut(x - reach * dy, y + reach * dx, x + reach * dy, y - reach * dx);
        int first = 0;
        for (int i = 0; i < line.size(); i++) {
            if (line.gapAfter(i) || i == line.size() - 1) {
                if (line.distance(first) <= reach && line.distance(i) >= reach) {
                    return read(line, first, i, reach);
                }
                first = i + 1;
            }
        }
        return GroundAcross.of(new double[0], new double[0]);
    }

    private GroundAcross read(GroundLine line, int first, int last, double reach) {
        int n = last - first + 1;
        double[] offsets = new double[n];
        double[] heights = new double[n];
        double[] soil = new double[n];
        double[] bears = new double[n];
        Arrays.fill(bears, Double.NaN);
        for (int i = 0; i < n; i++) {
            offsets[i] = line.distance(first + i) - reach;
            heights[i] = line.z(first + i);
            soil[i] = Math.max(0, topsoil.along(line, first + i));
            if (bearing != null) {
                bears[i] = bearing.along(line, first + i);
            }
        }
        boolean endsLeft = offsets[0] > -reach + ROUNDING;
        boolean endsRight = offsets[n - 1] < reach - ROUNDING;
        return GroundAcross.of(offsets, heights, soil, bears, endsLeft, endsRight);
    }
}
