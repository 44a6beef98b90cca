package lanewright.desktop.lane;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lanewright.drainage.Pool;
import lanewright.drainage.pond.Trace;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionLine;
import lanewright.planner.run.Outcome;
import lanewright.sheets.figure.StandingWater;

/**
 * Water that stands in a section: piece by piece, only where its surface lies over the finished
 * line or the ground beyond it, and only the pieces that the pool itself covers on the map. A ditch
 * that lies as low on the other side of the lane stays dry.
 */
final class WaterAcross {

    /** Water that ends so near a section is shown in it, m. */
    private static final double NEAR = 0.5;

    /** Places across a piece of water that are looked up on the map. */
    private static final int LOOKS = 16;

    /** Water shallower than this is none, m. */
    private static final double HAIR = 1e-3;

    private WaterAcross() {}

    /** The pieces of water in a section, pool after pool, from left to right. */
    static List<StandingWater> of(Section section, Alignment line, Outcome outcome) {
        List<StandingWater> pieces = new ArrayList<>();
        SectionLine top = top(section);
        for (Pool pool : outcome.water().after()) {
            Pool.Beside beside = pool.beside();
            if (beside == null
                    || section.station() < beside.from() - NEAR
                    || section.station() > beside.to() + NEAR) {
                continue;
            }
            double level = pool.spot().level();
            // A pool that is full to a crest stands on this side of it alone.
            for (double[] found : under(top, level - HAIR)) {
                double[] piece = {
                    Math.max(found[0], beside.leftmost() - NEAR),
                    Math.min(found[1], beside.rightmost() + NEAR)
                };
                if (piece[0] < piece[1]
                        && covers(pool.spot().outline(), line, section.station(), piece)) {
                    pieces.add(
                            new StandingWater(
                                    beside.from(),
                                    beside.to(),
                                    piece[0],
                                    piece[1],
                                    pool.spot().bottom(),
                                    level,
                                    ""));
                }
            }
        }
        return pieces;
    }

    /**
     * Stretches of a line that lie under a level.
     *
     * @return offsets where each begins and ends, m
     */
    static List<double[]> under(SectionLine top, double level) {
        List<double[]> pieces = new ArrayList<>();
        double begun = Double.NaN;
        for (int i = 0; i < top.size(); i++) {
            boolean wet = top.height(i) < level;
            boolean was = i > 0 && top.height(i - 1) < level;
            if (wet && !was) {
                begun = i == 0 ? top.offset(0) : meets(top, i, level);
            } else if (!wet && was) {
                pieces.add(new double[] {begun, meets(top, i, level)});
            }
            if (wet && i == top.size() - 1) {
                pieces.add(new double[] {begun, top.offset(i)});
            }
        }
        return pieces;
    }

    /** Where the line from one point to the next, {@code i}, meets a level between them. */
    private static double meets(SectionLine top, int i, double level) {
        double part = (level - top.height(i - 1)) / (top.height(i) - top.height(i - 1));
        return top.offset(i - 1) + part * (top.offset(i) - top.offset(i - 1));
    }

    /** Whether a pool lies over a piece of a section, or a step before or after it. */
    private static boolean covers(
            List<Trace> outline, Alignment line, double station, double[] piece) {
        for (double along : new double[] {0, -NEAR, NEAR}) {
            double at = Math.max(0, Math.min(line.length(), station + along));
            for (int k = 0; k < LOOKS; k++) {
                double offset = piece[0] + (piece[1] - piece[0]) * (k + 0.5) / LOOKS;
                Place place = new Place(at, offset);
                if (holds(outline, line.x(place), line.y(place))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether a place lies within rings, islands left out. */
    private static boolean holds(List<Trace> rings, double x, double y) {
        boolean inside = false;
        for (Trace ring : rings) {
            for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
                if ((ring.y(i) > y) != (ring.y(j) > y)
                        && x
                                < ring.x(i)
                                        + (y - ring.y(i))
                                                / (ring.y(j) - ring.y(i))
                                                * (ring.x(j) - ring.x(i))) {
                    inside = !inside;
                }
            }
        }
        return inside;
    }

    /** The finished line, and the ground beyond it. */
    private static SectionLine top(Section section) {
        SectionLine finished = section.finished();
        SectionLine ground = section.ground();
        if (finished.size() < 2) {
            return ground;
        }
        double from = finished.offset(0);
        double to = finished.offset(finished.size() - 1);
        double[] offsets = new double[finished.size() + ground.size()];
        double[] heights = new double[offsets.length];
        int n = 0;
        for (int i = 0; i < ground.size() && ground.offset(i) < from; i++) {
            offsets[n] = ground.offset(i);
            heights[n++] = ground.height(i);
        }
        for (int i = 0; i < finished.size(); i++) {
            offsets[n] = finished.offset(i);
            heights[n++] = finished.height(i);
        }
        for (int i = 0; i < ground.size(); i++) {
            if (ground.offset(i) > to) {
                offsets[n] = ground.offset(i);
                heights[n++] = ground.height(i);
            }
        }
        return SectionLine.of(Arrays.copyOf(offsets, n), Arrays.copyOf(heights, n));
    }
}
