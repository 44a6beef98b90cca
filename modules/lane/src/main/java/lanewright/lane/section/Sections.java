package lanewright.lane.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import lanewright.ground.Ground;
import lanewright.ground.VertexField;
import lanewright.lane.shape.LaneDesign;
import lanewright.measure.Progress;
import org.jspecify.annotations.Nullable;

/**
 * Stands sections along a lane: at zero and the end, at every multiple of the interval, at every
 * join of tangent, arc and parabola, at every limit of a stretch, and wherever a side changes
 * between cut, ditch and fill or its catch point jumps.
 *
 * <p>Changes are looked for every {@value #LOOK} m and then closed in on; one that comes and goes
 * again between two looks is not seen.
 */
public final class Sections {

    /** Distance between looks for a change of kind, m. Our choice: shorter than a machine. */
    static final double LOOK = 0.5;

    /**
     * A change is closed in on to this, m. A millimetre would do on the ground; this little keeps
     * volumes the same to one part in 10⁹ whichever way the lane is walked.
     */
    static final double FOUND = 1e-9;

    /** Stations nearer than this are one, m: room for rounding only. */
    static final double SAME_STATION = 1e-6;

    /** Read at least this far past the lane's width at first, m; more wherever a side needs it. */
    private static final double FIRST_REACH = 12;

    /** Reaches are this long, m, or twice, four times …: so that kept ground lines fit again. */
    private static final double LEAST_REACH = 16;

    private Sections() {}

    /**
     * The sections of a lane on a ground.
     *
     * @param topsoil depth of topsoil, m
     * @param bearing depth to soil that bears, m, or null if known nowhere
     */
    public static SectionSet of(
            LaneDesign design,
            Ground ground,
            VertexField topsoil,
            @Nullable VertexField bearing,
            Progress progress) {
        return new KeptSections().of(design, ground, topsoil, bearing, progress);
    }

    /**
     * The sections of a lane on ground that is already cut.
     *
     * @param source ground lines across the design's alignment
     */
    public static SectionSet of(LaneDesign design, GroundSource source, Progress progress) {
        var walk = new PieceWalk(design, source, reach(design));
        List<Stop> stops = stops(design);
        List<Section> sections = new ArrayList<>();
        Piece last = null;
        for (int i = 0; i < stops.size(); i++) {
            progress.check();
            progress.report(stops.get(i).station() / design.length(), "Cutting sections");
            last = walk.piece(i == 0 ? null : stops.get(i - 1), last, stops.get(i));
            sections.addAll(last.sections());
        }
        return set(design, sections);
    }

    /**
     * The section at any one station, cut as all others are.
     *
     * @param topsoil depth of topsoil, m
     * @param bearing depth to soil that bears, m, or null if known nowhere
     * @param station m along the alignment, between zero and its length
     */
    public static Section at(
            LaneDesign design,
            Ground ground,
            VertexField topsoil,
            @Nullable VertexField bearing,
            double station) {
        var lines = new GroundLines(design.alignment(), ground, topsoil, bearing);
        return new PieceWalk(design, lines, reach(design)).single(station);
    }

    static SectionSet set(LaneDesign design, List<Section> sections) {
        return new SectionSet(design, sections, new SectionCheck(design, sections).findings());
    }

    /** How far the ground is read on each side at first, m. */
    static double reach(LaneDesign design) {
        double needed = design.at(0).typical().width() + FIRST_REACH;
        double reach = LEAST_REACH;
        while (reach < needed) {
            reach *= 2;
        }
        return reach;
    }

    /** All stations known beforehand, each with whether the section may jump there. */
    static List<Stop> stops(LaneDesign design) {
        NavigableMap<Double, Boolean> stations = new TreeMap<>();
        double length = design.length();
        put(stations, 0, false);
        put(stations, length, false);
        for (double s : design.alignment().kinks()) {
            put(stations, s, true);
        }
        for (double s : design.jumps()) {
            put(stations, s, true);
        }
        for (double s : design.joins()) {
            put(stations, s, false);
        }
        int count = (int) Math.floor(length / design.interval());
        for (int i = 1; i <= count; i++) {
            put(stations, i * design.interval(), false);
        }
        List<Stop> stops = new ArrayList<>(stations.size());
        for (Map.Entry<Double, Boolean> entry : stations.entrySet()) {
            stops.add(new Stop(entry.getKey(), entry.getValue()));
        }
        return stops;
    }

    private static void put(NavigableMap<Double, Boolean> stations, double s, boolean jump) {
        Double below = stations.floorKey(s);
        Double above = stations.ceilingKey(s);
        if (below != null && s - below < SAME_STATION) {
            stations.merge(below, jump, Boolean::logicalOr);
        } else if (above != null && above - s < SAME_STATION) {
            stations.merge(above, jump, Boolean::logicalOr);
        } else {
            stations.put(s, jump);
        }
    }
}
