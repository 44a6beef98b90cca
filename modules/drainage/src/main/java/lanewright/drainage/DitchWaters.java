package lanewright.drainage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.LaneLine;
import lanewright.drainage.along.Side;
import lanewright.drainage.channel.ChannelShape;
import lanewright.drainage.flow.Cells;
import lanewright.drainage.flow.FlowGrid;
import lanewright.lane.line.Place;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.TypicalSection;
import org.jspecify.annotations.Nullable;

/**
 * What gathers in each ditch. Lane and slopes are measured on the sections, from where water parts
 * on the lane out to the catch point; the land beyond comes from the grid of flow, at the piece of
 * ditch whose slopes it first meets.
 */
final class DitchWaters {

    private final List<Section> sections;
    private final LaneLine line;
    private final FlowGrid flow;
    private final DoubleFunction<TypicalSection> typical;
    private final int[] places;
    private final List<Strip> strips = new ArrayList<>();

    /** A piece of a ditch with its land on the map, before water has come to it. */
    private record Strip(int ditch, DitchReach.Leg leg, Bounds a, Bounds b) {}

    /**
     * A section as its ditch sees it; offsets in m.
     *
     * @param section the section
     * @param inner where water parts on the lane, or the lane's edge where none of it drains here
     * @param edge edge of the travelled way on this side
     * @param outer the catch point
     * @param depth from the hinge to the bottom, m
     * @param bank from the outer ground to the bottom, m; NaN where there is none
     */
    private record Bounds(
            Section section, double inner, double edge, double outer, double depth, double bank) {}

    private DitchWaters(
            List<Section> sections,
            LaneLine line,
            FlowGrid flow,
            DoubleFunction<TypicalSection> typical) {
        this.sections = sections;
        this.line = line;
        this.flow = flow;
        this.typical = typical;
        places = new int[flow.cells().count()];
        Arrays.fill(places, -1);
    }

    /** Every ditch, in the order given. */
    static List<DitchWater> of(
            List<DitchReach> ditches,
            List<Section> sections,
            LaneLine line,
            FlowGrid flow,
            DoubleFunction<TypicalSection> typical) {
        return ditches.isEmpty()
                ? List.of()
                : new DitchWaters(sections, line, flow, typical).all(ditches);
    }

    private List<DitchWater> all(List<DitchReach> ditches) {
        int[] first = new int[ditches.size() + 1];
        for (int i = 0; i < ditches.size(); i++) {
            strips(i, ditches.get(i));
            first[i + 1] = strips.size();
        }
        List<FlowGrid.Gathered> gathered = flow.gathered(places, strips.size());
        List<DitchWater> all = new ArrayList<>();
        for (int i = 0; i < ditches.size(); i++) {
            DitchReach ditch = ditches.get(i);
            List<DitchWater.Piece> pieces = new ArrayList<>();
            for (int k = first[i]; k < first[i + 1]; k++) {
                pieces.add(piece(ditch, strips.get(k), gathered.get(k)));
            }
            all.add(new DitchWater(ditch, pieces, onward(i, ditch, first)));
        }
        return all;
    }

    private void strips(int number, DitchReach ditch) {
        for (DitchReach.Leg leg : ditch.legs()) {
            Bounds a = bounds(ditch, leg.from(), true);
            Bounds b = bounds(ditch, leg.to(), false);
            if (a == null || b == null) {
                throw new IllegalStateException("a ditch without sections at its own stations");
            }
            mark(
                    strips.size(),
                    new double[] {a.inner(), b.inner(), b.outer(), a.outer()},
                    a.section().station(),
                    b.section().station());
            strips.add(new Strip(number, leg, a, b));
        }
    }

    /**
     * The section of a ditch at a station: where two stand there, the last as a piece begins and
     * the first as it ends.
     */
    private @Nullable Bounds bounds(DitchReach ditch, double station, boolean begins) {
        Bounds found = null;
        for (int i = firstAt(station);
                i < sections.size() && sections.get(i).station() == station;
                i++) {
            Section section = sections.get(i);
            Corner bottom = ditch.side().of(section).ditchInner();
            if (bottom != null && (begins || found == null)) {
                found = bounds(ditch, section, bottom);
            }
        }
        return found;
    }

    private int firstAt(double station) {
        int low = 0;
        int high = sections.size();
        while (low < high) {
            int middle = (low + high) / 2;
            if (sections.get(middle).station() < station) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static Bounds bounds(DitchReach ditch, Section section, Corner inner) {
        SideResult here = ditch.side().of(section);
        SideResult there = ditch.side().across().of(section);
        double top = section.profileHeight();
        boolean drainsHere = top > here.edge().height();
        boolean allOfIt = drainsHere && top < there.edge().height();
        Corner outer = here.ditchOuter() == null ? inner : here.ditchOuter();
        double bottom = Math.min(inner.height(), outer.height());
        Corner ground = here.catchPoint();
        boolean end = section.station() == ditch.from() || section.station() == ditch.to();
        return new Bounds(
                section,
                allOfIt ? there.edge().offset() : drainsHere ? 0 : here.edge().offset(),
                here.edge().offset(),
                ground == null ? here.limit() : ground.offset(),
                here.hinge().height() - bottom,
                ground == null || end ? Double.NaN : ground.height() - bottom);
    }

    /** Gives the cells of a four-sided patch of land to a strip, unless another has them. */
    private void mark(int number, double[] offsets, double from, double to) {
        double[] stations = {from, to, to, from};
        double[] x = new double[4];
        double[] y = new double[4];
        for (int i = 0; i < 4; i++) {
            var place = new Place(stations[i], offsets[i]);
            x[i] = line.x(place);
            y[i] = line.y(place);
        }
        Cells cells = flow.cells();
        int west = column(Arrays.stream(x).min().orElseThrow());
        int east = column(Arrays.stream(x).max().orElseThrow());
        int south = row(Arrays.stream(y).min().orElseThrow());
        int north = row(Arrays.stream(y).max().orElseThrow());
        for (int r = Math.max(0, south); r <= Math.min(cells.rows() - 1, north); r++) {
            for (int c = Math.max(0, west); c <= Math.min(cells.columns() - 1, east); c++) {
                int cell = r * cells.columns() + c;
                if (places[cell] < 0 && holds(x, y, cells.x(cell), cells.y(cell))) {
                    places[cell] = number;
                }
            }
        }
    }

    private int column(double x) {
        return (int) Math.floor((x - flow.cells().west()) / flow.cells().size());
    }

    private int row(double y) {
        return (int) Math.floor((y - flow.cells().south()) / flow.cells().size());
    }

    /** Whether a point lies in a polygon: a ray from it crosses the rim an odd number of times. */
    private static boolean holds(double[] x, double[] y, double px, double py) {
        boolean inside = false;
        int before = x.length - 1;
        for (int i = 0; i < x.length; i++) {
            if ((y[i] > py) != (y[before] > py)
                    && px < (x[before] - x[i]) * (py - y[i]) / (y[before] - y[i]) + x[i]) {
                inside = !inside;
            }
            before = i;
        }
        return inside;
    }

    private DitchWater.Piece piece(DitchReach ditch, Strip strip, FlowGrid.Gathered gathered) {
        Bounds a = strip.a();
        Bounds b = strip.b();
        TypicalSection shape = typical.apply((strip.leg().from() + strip.leg().to()) / 2);
        SideShape side = ditch.side() == Side.LEFT ? shape.left() : shape.right();
        return new DitchWater.Piece(
                strip.leg().from(),
                strip.leg().to(),
                strip.leg().length(),
                strip.leg().grade(),
                patch(a, b, a.inner(), b.inner(), a.edge(), b.edge()),
                patch(a, b, a.edge(), b.edge(), a.outer(), b.outer()),
                gathered.area(),
                gathered.isLeast(),
                gathered.way(),
                new ChannelShape(side.ditch().bottom(), side.foreslope(), side.backslope()),
                Math.min(a.depth(), b.depth()),
                least(a.bank(), b.bank()));
    }

    private static double least(double a, double b) {
        return Double.isNaN(a) ? b : Double.isNaN(b) ? a : Math.min(a, b);
    }

    /** Area of the land between two offsets at one section and two at the next, m². */
    private double patch(
            Bounds a, Bounds b, double innerA, double innerB, double outerA, double outerB) {
        double[] offsets = {innerA, innerB, outerB, outerA};
        double sum = 0;
        double beforeX = 0;
        double beforeY = 0;
        for (int i = 0; i <= 4; i++) {
            Section section = i % 4 == 1 || i % 4 == 2 ? b.section() : a.section();
            var place = new Place(section.station(), offsets[i % 4]);
            double x = line.x(place);
            double y = line.y(place);
            sum += i == 0 ? 0 : beforeX * y - x * beforeY;
            beforeX = x;
            beforeY = y;
        }
        return Math.abs(sum) / 2;
    }

    /** Where water of each low point comes into a ditch again. */
    private List<DitchWater.Onward> onward(int number, DitchReach ditch, int[] first) {
        List<DitchWater.Onward> onward = new ArrayList<>();
        for (int i = 0; i < ditch.outlets().size(); i++) {
            DitchReach.Outlet outlet = ditch.outlets().get(i);
            int cell = flow.cells().at(outlet.x(), outlet.y());
            while (cell >= 0 && (places[cell] < 0 || strips.get(places[cell]).ditch() == number)) {
                cell = flow.next(cell); // leaving is -1
            }
            if (cell >= 0) {
                int into = strips.get(places[cell]).ditch();
                onward.add(new DitchWater.Onward(i, into, places[cell] - first[into]));
            }
        }
        return onward;
    }
}
