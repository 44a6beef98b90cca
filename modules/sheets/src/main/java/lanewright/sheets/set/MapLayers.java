package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lanewright.drainage.Pool;
import lanewright.drainage.WaterReport;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.Side;
import lanewright.drainage.pond.Trace;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.planner.pipes.PipeStake;
import lanewright.planner.work.HeapPlace;
import lanewright.planner.work.HeapPlaces;
import lanewright.planner.work.LaneMark;
import lanewright.planner.work.LoadMark;
import lanewright.planner.work.Stake;
import lanewright.planner.work.Stakes;
import lanewright.sheets.folder.GeoJson;
import lanewright.sheets.folder.GeoJson.Feature;
import org.jspecify.annotations.Nullable;

/** The lane and what belongs to it as layers for other maps. Lengths in metres, areas in m². */
final class MapLayers {

    private MapLayers() {}

    /** The lane's line and the edges of its travelled way. */
    static List<Feature> lane(Beside beside) {
        return List.of(
                line(beside.all(section -> 0), "lane's line"),
                line(beside.all(section -> section.left().edge().offset()), "left edge"),
                line(beside.all(section -> section.right().edge().offset()), "right edge"));
    }

    private static Feature line(Beside.Path path, String what) {
        return Feature.line(path.x(), path.y(), Map.of("what", what));
    }

    /** The land inside the limits of work. */
    static List<Feature> limits(Beside beside) {
        Beside.Path ring =
                beside.all(section -> section.left().limit())
                        .ringWith(beside.all(section -> section.right().limit()));
        return List.of(
                new Feature(
                        GeoJson.Shape.AREA,
                        List.<double[][]>of(new double[][] {ring.x(), ring.y()}),
                        Map.of("what", "limits of work")));
    }

    /** Where the slopes meet the ground; broken where a side does not. */
    static List<Feature> catchLines(Beside beside) {
        var features = new ArrayList<Feature>();
        for (boolean right : new boolean[] {false, true}) {
            List<Section> sections = beside.sections();
            int from = 0;
            for (int i = 0; i <= sections.size(); i++) {
                boolean ends = i == sections.size() || side(sections.get(i), right) == null;
                if (ends) {
                    if (i - from > 1) {
                        Beside.Path path =
                                beside.between(from, i - 1, section -> meeting(section, right));
                        features.add(line(path, right ? "right catch line" : "left catch line"));
                    }
                    from = i + 1;
                }
            }
        }
        return features;
    }

    private static @Nullable Corner side(Section section, boolean right) {
        return right ? section.right().catchPoint() : section.left().catchPoint();
    }

    private static double meeting(Section section, boolean right) {
        var corner = side(section, right);
        if (corner == null) {
            throw new IllegalArgumentException("no catch point at " + section.station());
        }
        return corner.offset();
    }

    /** Every wet place as a point, by the name that the sheets call it. */
    static List<Feature> wetPlaces(WaterReport water) {
        var features = new ArrayList<Feature>();
        for (WetPlace place : water.places()) {
            Map<String, Object> says = new TreeMap<>();
            says.put("name", place.name());
            says.put("kind", place.kind().words());
            Side side = place.side();
            says.put("side", side == null ? "" : side.word());
            says.put("station", place.station());
            says.put("from", place.from());
            says.put("to", place.to());
            says.put("depth", place.depth());
            says.put("area", place.area());
            says.put("volume", place.volume());
            says.put("drained", place.drained());
            says.put("runsOverLane", place.runsOverLane());
            features.add(Feature.point(place.x(), place.y(), says));
        }
        return features;
    }

    /** Low spots with the lane built, and those that the lane does away with. */
    static List<Feature> lowSpots(WaterReport water) {
        var features = new ArrayList<Feature>();
        water.after().forEach(pool -> pool(features, pool, name(water, pool)));
        water.gone().forEach(pool -> pool(features, pool, ""));
        return features;
    }

    /** The name of the wet place that a low spot makes, or empty. */
    private static String name(WaterReport water, Pool pool) {
        for (WetPlace place : water.places()) {
            if (pool.equals(place.pool())) {
                return place.name();
            }
        }
        return "";
    }

    private static void pool(List<Feature> features, Pool pool, String name) {
        var rings = new ArrayList<double[][]>();
        for (Trace trace : pool.spot().outline()) {
            double[] x = new double[trace.size()];
            double[] y = new double[trace.size()];
            for (int i = 0; i < x.length; i++) {
                x[i] = trace.x(i);
                y[i] = trace.y(i);
            }
            rings.add(new double[][] {x, y});
        }
        if (rings.isEmpty()) {
            return;
        }
        Map<String, Object> says = new TreeMap<>();
        says.put("what", pool.fate().words());
        says.put("wetPlace", name);
        says.put("depth", pool.spot().depth());
        says.put("area", pool.spot().area());
        says.put("volume", pool.spot().volume());
        says.put("level", pool.spot().level());
        says.put("drained", pool.drained());
        says.put("openAtSurveyEdge", pool.spot().atRim());
        features.add(new Feature(GeoJson.Shape.AREA, rings, says));
    }

    /** Where the topsoil is heaped. */
    static List<Feature> heaps(HeapPlaces places) {
        var features = new ArrayList<Feature>();
        for (HeapPlace heap : places.heaps()) {
            Map<String, Object> says = new TreeMap<>();
            says.put("what", "heap of topsoil");
            says.put("number", heap.number());
            says.put("name", heap.name());
            says.put("chosen", heap.chosen());
            says.put("volume", heap.form().volume());
            says.put("highest", heap.form().height());
            says.put("station", heap.station());
            says.put("offset", heap.offset());
            says.put("from", heap.from());
            says.put("to", heap.to());
            features.add(
                    new Feature(GeoJson.Shape.AREA, List.<double[][]>of(heap.outline()), says));
        }
        return features;
    }

    /**
     * The offset stakes, the stakes on the lane, the load marks and the ends of pipes, by {@code
     * kind}.
     */
    static List<Feature> stakes(Stakes stakes, List<PipeStake> pipes) {
        var features = new ArrayList<Feature>();
        for (PipeStake stake : pipes) {
            Map<String, Object> says = new TreeMap<>();
            says.put("kind", stake.inlet() ? "pipe inlet" : "pipe outlet");
            says.put("pipe", stake.job().name());
            says.put("inPlan", stake.job().planned());
            says.put("raiseFirst", stake.job().first().raise());
            says.put("digFirst", stake.job().first().dig());
            says.put("station", stake.station());
            says.put("offset", stake.offset());
            says.put("invert", stake.invert());
            says.put("invertAbove", stake.up());
            features.add(Feature.point(stake.x(), stake.y(), says));
        }
        for (Stake stake : stakes.stakes()) {
            Map<String, Object> says = new TreeMap<>();
            says.put("kind", "offset stake");
            says.put("station", stake.station());
            says.put("offset", stake.right() ? stake.offset() : -stake.offset());
            says.put("height", stake.height());
            says.put("toCatch", stake.toCatch());
            says.put("toHinge", stake.toHinge());
            says.put("hingeAbove", stake.hingeUp());
            says.put("toDitch", stake.toDitch());
            says.put("ditchAbove", stake.ditchUp());
            says.put("lineAbove", stake.centreUp());
            features.add(Feature.point(stake.x(), stake.y(), says));
        }
        for (LaneMark mark : stakes.marks()) {
            Map<String, Object> says = new TreeMap<>();
            says.put("kind", mark.kind().words());
            says.put("station", mark.station());
            says.put("offset", mark.offset());
            says.put("height", mark.ground());
            says.put("finished", mark.finished());
            says.put("finishedAbove", mark.up());
            features.add(Feature.point(mark.x(), mark.y(), says));
        }
        for (LoadMark mark : stakes.loads()) {
            Map<String, Object> says = new TreeMap<>();
            says.put("kind", "load mark");
            says.put("layer", mark.layer());
            says.put("stops", mark.stops());
            says.put("starts", mark.starts());
            says.put("station", mark.station());
            says.put("offset", mark.offset());
            features.add(Feature.point(mark.x(), mark.y(), says));
        }
        return features;
    }
}
