package lanewright.sheets;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.section.Areas;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Part;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionLine;
import lanewright.lane.section.SideResult;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.CrossFall;
import lanewright.lane.shape.Ditch;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.Layer;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.TypicalSection;

/**
 * A lane with sections drawn by simple rules on smooth invented ground, good enough to be looked
 * at: the areas in it are plausible and not exact.
 */
public final class ToyLane {

    /** Length of the lane, m. */
    public static final double LENGTH = 208;

    private static final double TOPSOIL = 0.18;

    private ToyLane() {}

    /** Grade points. */
    public static List<VerticalPoint> points() {
        return List.of(
                new VerticalPoint(0, 125.7, 0),
                new VerticalPoint(36, 128.6, 18),
                new VerticalPoint(92, 127.1, 24),
                new VerticalPoint(134, 127.8, 18),
                new VerticalPoint(LENGTH, 133.4, 0));
    }

    /** The one shape. */
    public static TypicalSection typical() {
        var side = new SideShape(0.5, 3, new Ditch(DitchRule.WHERE_BELOW_GROUND, 0.3, 0.3), 2, 2);
        return new TypicalSection(
                3.66,
                CrossFall.CROWN,
                0.04,
                Bed.ON_TOP,
                List.of(
                        new Layer("surface", 0.05, 2),
                        new Layer("intermediate", 0.075, 1.5),
                        new Layer("base", 0.15, 1.5)),
                Double.NaN,
                side,
                side,
                true,
                0.1,
                false);
    }

    /** Ground height, m. */
    public static double ground(double station, double offset) {
        double s = station;
        return 126
                + 2.3 * Math.sin(s / 34)
                + s * 0.028
                - 1.9 * Math.exp(-(s - 96) * (s - 96) / 160)
                + 0.09 * offset
                + 0.12 * Math.sin(offset / 2.1 + s / 9);
    }

    private static double profile(double station) {
        List<VerticalPoint> points = points();
        for (int i = 1; i < points.size(); i++) {
            VerticalPoint a = points.get(i - 1);
            VerticalPoint b = points.get(i);
            if (station <= b.station()) {
                double part = (station - a.station()) / (b.station() - a.station());
                return a.height() + part * (b.height() - a.height());
            }
        }
        throw new IllegalArgumentException("past the end: " + station);
    }

    /** Sections every 7.62 m and at the end. */
    public static List<Section> sections() {
        var sections = new ArrayList<Section>();
        for (double station = 0; station < LENGTH; station += 7.62) {
            sections.add(section(station));
        }
        sections.add(section(LENGTH));
        return sections;
    }

    private static Section section(double station) {
        TypicalSection typical = typical();
        double height = profile(station);
        double half = typical.width() / 2;
        var left = side(station, height, typical, half, -1);
        var right = side(station, height, typical, half, 1);
        var ground = new Points();
        var stripped = new Points();
        for (double offset = -14; offset <= 14.001; offset += 1) {
            ground.add(offset, ground(station, offset));
        }
        double from = left.limit();
        double to = right.limit();
        stripped.add(from, ground(station, from));
        stripped.add(from, ground(station, from) - TOPSOIL);
        for (double offset = Math.ceil(from); offset < to; offset += 1) {
            stripped.add(offset, ground(station, offset) - TOPSOIL);
        }
        stripped.add(to, ground(station, to) - TOPSOIL);
        stripped.add(to, ground(station, to));
        var finished = new Points();
        var subgrade = new Points();
        outline(left, height, finished, subgrade, true, typical);
        finished.add(0, height);
        subgrade.add(0, height - typical.stoneThickness());
        outline(right, height, finished, subgrade, false, typical);
        double dig = ground(station, 0) - TOPSOIL - height + typical.stoneThickness();
        double wide = right.catchPoint().offset() - left.catchPoint().offset();
        var areas =
                new Areas(
                        new Part(wide * TOPSOIL, 0),
                        new Part(Math.max(0, dig) * wide * 0.6, 0),
                        new Part(Math.max(0, -dig) * wide * 0.6, 0),
                        Part.NONE,
                        new Part(0.4, 0),
                        Part.NONE,
                        List.of(new Part(0.19, 0), new Part(0.3, 0), new Part(0.64, 0)));
        return new Section(
                station,
                Section.Face.SINGLE,
                height,
                ground.line(),
                stripped.line(),
                subgrade.line(),
                finished.line(),
                null,
                left,
                right,
                areas,
                true);
    }

    private static void outline(
            SideResult side,
            double height,
            Points finished,
            Points subgrade,
            boolean inward,
            TypicalSection typical) {
        var top = new ArrayList<Corner>();
        var low = new ArrayList<Corner>();
        double depth = 0.1;
        top.add(side.edge());
        top.add(side.stoneLow());
        low.add(side.stoneLow());
        top.add(side.hinge());
        low.add(new Corner(side.hinge().offset(), side.hinge().height() - depth));
        if (side.ditchInner() != null) {
            top.add(side.ditchInner());
            top.add(side.ditchOuter());
            low.add(side.ditchInner());
            low.add(side.ditchOuter());
        }
        top.add(side.catchPoint());
        low.add(side.catchPoint());
        if (inward) {
            java.util.Collections.reverse(top);
            java.util.Collections.reverse(low);
        }
        top.forEach(corner -> finished.add(corner.offset(), corner.height()));
        low.forEach(corner -> subgrade.add(corner.offset(), corner.height()));
    }

    private static SideResult side(
            double station, double height, TypicalSection typical, double half, int sign) {
        double slope = typical.crossSlope();
        var edge = new Corner(sign * half, height - slope * half);
        double toe = half + 0.05 * 2 + 0.075 * 1.5 + 0.15 * 1.5;
        double low = height - slope * toe - typical.stoneThickness();
        var stoneLow = new Corner(sign * toe, low);
        var hinge = new Corner(sign * (toe + 0.5), low - slope * 0.5 + 0.1);
        double inner = Math.abs(hinge.offset()) + 0.9;
        double bottom = hinge.height() - 0.3;
        if (bottom < ground(station, sign * inner)) {
            double at = inner + 0.3;
            double z = bottom;
            while (z < ground(station, sign * at) && at < 13.9) {
                at += 0.01;
                z = bottom + (at - inner - 0.3) / 2;
            }
            return new SideResult(
                    SideResult.Kind.DITCH,
                    edge,
                    stoneLow,
                    hinge,
                    new Corner(sign * inner, bottom),
                    new Corner(sign * (inner + 0.3), bottom),
                    new Corner(sign * at, z),
                    sign * (at + 0.3));
        }
        double at = Math.abs(hinge.offset());
        double z = hinge.height();
        while (z > ground(station, sign * at) && at < 13.9) {
            at += 0.01;
            z = hinge.height() - (at - Math.abs(hinge.offset())) / 3;
        }
        return new SideResult(
                SideResult.Kind.FILL,
                edge,
                stoneLow,
                hinge,
                null,
                null,
                new Corner(sign * at, z),
                sign * (at + 0.3));
    }

    private static final class Points {
        private final List<double[]> points = new ArrayList<>();

        void add(double offset, double height) {
            points.add(new double[] {offset, height});
        }

        SectionLine line() {
            return SectionLine.of(
                    points.stream().mapToDouble(p -> p[0]).toArray(),
                    points.stream().mapToDouble(p -> p[1]).toArray());
        }
    }
}
