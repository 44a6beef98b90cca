package lanewright.sheets.set;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import lanewright.lane.line.Alignment;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.listing.SectionListings;
import lanewright.planner.work.HeapPlace;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.figure.Land;

/** The lane, its limits, slopes and stations, and the heaps beside it, as they lie on the map. */
final class LandLane {

    /** Land shown beyond the limits of work, m: enough to see where water comes from. */
    private static final double AROUND = 12;

    /** How far beyond an end of the lane its name stands, m. */
    private static final double BEYOND = 1.5;

    private static final double FOOT = 0.3048;

    private final Land land;
    private final Beside beside;
    private final UnitSystem units;

    LandLane(Land land, Beside beside, UnitSystem units) {
        this.land = land;
        this.beside = beside;
        this.units = units;
    }

    void draw() {
        Beside.Path left = beside.all(section -> section.left().limit());
        Beside.Path right = beside.all(section -> section.right().limit());
        sides(Section::left);
        sides(Section::right);
        Beside.Path edgeLeft = beside.all(section -> section.left().edge().offset());
        Beside.Path edgeRight = beside.all(section -> section.right().edge().offset());
        Beside.Path surface = edgeLeft.ringWith(edgeRight);
        land.area(Role.LANE, surface.x(), surface.y());
        bed();
        line(Role.LANE_EDGE, edgeLeft);
        line(Role.LANE_EDGE, edgeRight);
        line(Role.CATCH, beside.all(section -> caught(section.left())));
        line(Role.CATCH, beside.all(section -> caught(section.right())));
        Beside.Path limits = left.ringWith(right);
        land.ring(Role.LIMIT, limits.x(), limits.y());
        line(Role.CENTRE, beside.all(section -> 0));
        reach(limits.x(), limits.y(), AROUND);
        stations();
    }

    /** Only its line and stations, on a map that reaches as far. */
    void line() {
        Beside.Path limits =
                beside.all(section -> section.left().limit())
                        .ringWith(beside.all(section -> section.right().limit()));
        line(Role.CENTRE, beside.all(section -> 0));
        reach(limits.x(), limits.y(), AROUND);
        stations();
    }

    void heap(HeapPlace heap) {
        double[][] outline = heap.outline();
        land.area(Role.HEAP, outline[0], outline[1]);
        land.ring(Role.HEAP, outline[0], outline[1]);
        land.label(
                "heap "
                        + heap.number()
                        + ": "
                        + Words.fine(Quantity.volume(heap.form().volume()), units)
                        + " loose",
                heap.x(),
                heap.y(),
                Role.TEXT,
                true,
                1);
        reach(outline[0], outline[1], 3);
    }

    private void reach(double[] x, double[] y, double around) {
        for (int i = 0; i < x.length; i++) {
            land.reach(
                    new double[] {x[i] - around, x[i] + around},
                    new double[] {y[i] - around, y[i] + around});
        }
    }

    private void line(Role role, Beside.Path path) {
        land.line(role, path.x(), path.y());
    }

    private static double caught(SideResult side) {
        return side.catchPoint() == null ? side.limit() : side.catchPoint().offset();
    }

    /** What each side is, from the stone out to where it meets the ground. */
    private void sides(Function<Section, SideResult> which) {
        List<Section> sections = beside.sections();
        int from = 0;
        for (int i = 1; i < sections.size(); i++) {
            boolean last = i == sections.size() - 1;
            if (last
                    || role(which.apply(sections.get(i)))
                            != role(which.apply(sections.get(from)))) {
                if (sections.get(i).station() > sections.get(from).station()) {
                    ToDoubleFunction<Section> inner = s -> which.apply(s).edge().offset();
                    Beside.Path ring =
                            beside.between(from, i, inner)
                                    .ringWith(beside.between(from, i, s -> caught(which.apply(s))));
                    land.area(role(which.apply(sections.get(from))), ring.x(), ring.y());
                }
                from = i;
            }
        }
    }

    /** Whether the bed of the lane is dug or built up, as its line goes. */
    private void bed() {
        List<Section> sections = beside.sections();
        int from = 0;
        for (int i = 1; i < sections.size(); i++) {
            Role role = bed(sections.get(from));
            if (i == sections.size() - 1 || bed(sections.get(i)) != role) {
                if (role != Role.LANE && sections.get(i).station() > sections.get(from).station()) {
                    Beside.Path ring =
                            beside.between(from, i, s -> s.left().edge().offset())
                                    .ringWith(
                                            beside.between(
                                                    from, i, s -> s.right().edge().offset()));
                    land.area(role, ring.x(), ring.y());
                }
                from = i;
            }
        }
    }

    private static Role bed(Section section) {
        double dig = SectionListings.digAtLine(section);
        if (Double.isNaN(dig)) {
            return Role.LANE;
        }
        return dig >= 0 ? Role.CUT : Role.FILL;
    }

    private static Role role(SideResult side) {
        return side.kind() == SideResult.Kind.FILL ? Role.FILL : Role.CUT;
    }

    private void stations() {
        Alignment line = beside.alignment();
        double step = units == UnitSystem.US ? 100 * FOOT : 20;
        while (line.length() / step > 24) {
            step *= units == UnitSystem.US ? 5 : 2.5;
        }
        for (int k = 0; k * step <= line.length() + 1e-6; k++) {
            double at = Math.min(k * step, line.length());
            if (at == 0 || line.length() - at > step / 3) {
                station(at);
            }
        }
        station(line.length());
        end("road", 0, -1);
        end("far end", line.length(), 1);
    }

    private void station(double at) {
        Alignment line = beside.alignment();
        Section near = nearest(at);
        double half = Math.max(Math.abs(near.left().limit()), Math.abs(near.right().limit()));
        land.station(
                line.x(at),
                line.y(at),
                StrictMath.atan2(line.directionY(at), line.directionX(at)),
                half,
                at,
                Words.fine(Quantity.station(at), units));
    }

    /** Names an end of the lane, a little way beyond it. */
    private void end(String words, double at, double ahead) {
        Alignment line = beside.alignment();
        land.label(
                words,
                line.x(at) + ahead * BEYOND * line.directionX(at),
                line.y(at) + ahead * BEYOND * line.directionY(at),
                Role.TEXT,
                true,
                0);
    }

    private Section nearest(double station) {
        Section best = beside.sections().get(0);
        for (Section section : beside.sections()) {
            if (Math.abs(section.station() - station) < Math.abs(best.station() - station)) {
                best = section;
            }
        }
        return best;
    }
}
