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
 * or shape reads them again without another walk over the triangles. Where one alignment follows
 * another, lines are taken over from before its first place that has moved. For one thread.
 *
 * <p>Costs about 3 kB a station at shots every metre and 60 m of width, half of that where only
 * heights were asked for.
 */
public final class GroundLines implements GroundSource {

    /** Lines kept at most; then all are let go. Our choice: about 100 MB at the cost above. */
    private static final int MOST = 30_000;

    /** A line that comes this near to the reach was read to it, m. */
    private static final double ROUNDING = 1e-9;

    private final Alignment alignment;
    private final Ground ground;
    private final VertexField topsoil;
    private final @Nullable VertexField bearing;
    private final LineCutter cutter;

    /** Lines that others may read at the same time; only {@link #take} adds to them. */
    private final Map<Key, GroundAcross> shared;

    /** Lines across the alignment before this one; they are not kept longer than it takes. */
    private @Nullable GroundLines former;

    private final Map<Key, GroundAcross> own = new HashMap<>();
    private int cut;
    private int glanced;

    /**
     * A longer line would do for a shorter one, but not to the last bit: offsets are counted from
     * its start.
     */
    private record Key(double station, boolean before, double reach, boolean heights) {}

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
        this(alignment, ground, topsoil, bearing, new HashMap<>(), null);
    }

    private GroundLines(
            Alignment alignment,
            Ground ground,
            VertexField topsoil,
            @Nullable VertexField bearing,
            Map<Key, GroundAcross> shared,
            @Nullable GroundLines former) {
        this.alignment = alignment;
        this.ground = ground;
        this.topsoil = topsoil;
        this.bearing = bearing;
        this.cutter = ground.cutter();
        this.shared = shared;
        this.former = former;
    }

    /** Lines across another alignment of the same ground. */
    GroundLines moved(Alignment to) {
        return new GroundLines(to, ground, topsoil, bearing, new HashMap<>(), this);
    }

    /**
     * Lines that read what is kept here and keep to themselves what they cut: for another thread,
     * as long as nothing is asked of these themselves.
     */
    GroundLines helper() {
        return new GroundLines(alignment, ground, topsoil, bearing, shared, former);
    }

    /** Keeps what a helper has cut, and lets go of what was there before. */
    void take(GroundLines helper) {
        former = null;
        if (shared.size() + helper.own.size() > MOST) {
            shared.clear();
        }
        if (helper.own.size() <= MOST) {
            shared.putAll(helper.own);
        }
    }

    /** Lines cut so far. */
    SectionWork work() {
        return new SectionWork(cut, glanced, 0, 0);
    }

    @Override
    public GroundAcross across(double station, boolean before, double reach) {
        return kept(new Key(station, before, reach, false));
    }

    @Override
    public GroundAcross heights(double station, boolean before, double reach) {
        GroundAcross whole = known(new Key(station, before, reach, false));
        return whole == null ? kept(new Key(station, before, reach, true)) : whole;
    }

    @Override
    public GroundAcross glance(double station, boolean before, double reach) {
        return glance(new Key(station, before, reach, false));
    }

    @Override
    public GroundAcross glanceHeights(double station, boolean before, double reach) {
        return glance(new Key(station, before, reach, true));
    }

    private @Nullable GroundAcross known(Key key) {
        GroundAcross known = shared.get(key);
        return known == null ? own.get(key) : known;
    }

    private GroundAcross kept(Key key) {
        GroundAcross known = known(key);
        if (known == null) {
            if (own.size() >= MOST) {
                own.clear();
            }
            known = former(key);
            if (known == null) {
                known = cut(key);
                cut++;
            }
            own.put(key, known);
        }
        return known;
    }

    private GroundAcross glance(Key key) {
        GroundAcross known = known(key);
        if (known == null) {
            known = former(key);
        }
        if (known == null) {
            known = cut(key);
            glanced++;
        }
        return known;
    }

    /** What was cut before the alignment moved, if it has not moved here. */
    private @Nullable GroundAcross former(Key key) {
        GroundLines before = former;
        if (before == null) {
            return null;
        }
        GroundAcross known = before.shared.get(key);
        return known != null && across(key).equals(before.across(key)) ? known : null;
    }

    /** Where a line runs: a place on it, and the way along the alignment there. */
    private record Across(double x, double y, double dx, double dy) {}

    private Across across(Key key) {
        double station = key.station;
        return new Across(
                alignment.x(station),
                alignment.y(station),
                key.before ? alignment.directionXBefore(station) : alignment.directionX(station),
                key.before ? alignment.directionYBefore(station) : alignment.directionY(station));
    }

    private GroundAcross cut(Key key) {
        double reach = key.reach;
        Across across = across(key);
        double x = across.x;
        double y = across.y;
        double dx = across.dx;
        double dy = across.dy;
        GroundLine line =
                cutter.cut(x - reach * dy, y + reach * dx, x + reach * dy, y - reach * dx);
        int first = 0;
        for (int i = 0; i < line.size(); i++) {
            if (line.gapAfter(i) || i == line.size() - 1) {
                if (line.distance(first) <= reach && line.distance(i) >= reach) {
                    return read(line, first, i, key);
                }
                first = i + 1;
            }
        }
        return GroundAcross.of(new double[0], new double[0]);
    }

    private GroundAcross read(GroundLine line, int first, int last, Key key) {
        int n = last - first + 1;
        double reach = key.reach;
        double[] offsets = new double[n];
        double[] heights = new double[n];
        for (int i = 0; i < n; i++) {
            offsets[i] = line.distance(first + i) - reach;
            heights[i] = line.z(first + i);
        }
        boolean endsLeft = offsets[0] > -reach + ROUNDING;
        boolean endsRight = offsets[n - 1] < reach - ROUNDING;
        if (key.heights) {
            return GroundAcross.heights(offsets, heights, endsLeft, endsRight);
        }
        double[] soil = new double[n];
        double[] bears = new double[n];
        Arrays.fill(bears, Double.NaN);
        for (int i = 0; i < n; i++) {
            soil[i] = Math.max(0, topsoil.along(line, first + i));
            if (bearing != null) {
                bears[i] = bearing.along(line, first + i);
            }
        }
        return GroundAcross.of(offsets, heights, soil, bears, endsLeft, endsRight);
    }
}
