package lanewright.drainage.along;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import lanewright.lane.line.Place;
import lanewright.lane.section.Areas;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Part;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionLine;
import lanewright.lane.section.SideResult;
import lanewright.measure.Assumption.Mark;
import org.jspecify.annotations.Nullable;

/**
 * A lane straight along the x axis for tests, drawn by hand: a crown, a shoulder, a foreslope, a V
 * ditch where the ground is higher than its bottom, and a slope up or down to the ground.
 *
 * @param length m
 * @param ground height of the ground
 * @param profile height of the lane by station
 * @param width travelled width, m
 * @param crown cross slope
 * @param foreslope run over rise
 * @param ditch depth of the ditch, m, zero for none
 */
public record StraightLane(
        double length,
        DoubleBinaryOperator ground,
        DoubleUnaryOperator profile,
        double width,
        double crown,
        double foreslope,
        double ditch)
        implements LaneLine {

    private static final double SHOULDER = 0.5;
    private static final double STONE = 0.2;

    /** The published limits, by hand. */
    public static final Limits LIMITS =
            new Limits(
                    limit(0.03),
                    limit(0.07),
                    limit(0.005),
                    limit(0.02),
                    limit(0.08),
                    limit(0.15),
                    limit(0.15),
                    limit(0.6096),
                    limit(1.8288),
                    limit(18502),
                    limit(0.08),
                    limit(0.01),
                    limit(0.12),
                    limit(0.05));

    private static Limit limit(double value) {
        return new Limit(value, "a source", Mark.PUBLISHED);
    }

    @Override
    public double x(Place place) {
        return place.station();
    }

    @Override
    public double y(Place place) {
        return -place.offset();
    }

    @Override
    public @Nullable Place place(double x, double y) {
        return x < 0 || x > length ? null : new Place(x, -y);
    }

    /** Grade by difference over a centimetre. */
    public double grade(double station) {
        double from = Math.max(0, station - 0.005);
        return (profile.applyAsDouble(from + 0.01) - profile.applyAsDouble(from)) / 0.01;
    }

    /** Sections every {@code interval}. */
    public List<Section> sections(double interval) {
        List<Section> sections = new ArrayList<>();
        int count = (int) Math.round(length / interval);
        for (int i = 0; i <= count; i++) {
            sections.add(section(i * interval));
        }
        return sections;
    }

    /** The section at a station. */
    public Section section(double station) {
        var empty = SectionLine.of(new double[0], new double[0]);
        return new Section(
                station,
                Section.Face.SINGLE,
                profile.applyAsDouble(station),
                empty,
                empty,
                empty,
                empty,
                null,
                side(station, -1),
                side(station, 1),
                new Areas(
                        Part.NONE, Part.NONE, Part.NONE, Part.NONE, Part.NONE, Part.NONE,
                        List.of()),
                true);
    }

    private SideResult side(double station, int sign) {
        double top = profile.applyAsDouble(station);
        Corner edge = new Corner(sign * width / 2, top - crown * width / 2);
        Corner low = new Corner(edge.offset(), edge.height() - STONE);
        double out = width / 2 + SHOULDER;
        double hingeHeight = top - crown * out;
        Corner hinge = new Corner(sign * out, hingeHeight);
        double bottomOut = out + ditch * foreslope;
        double bottom = hingeHeight - ditch;
        if (ditch > 0 && bottom < ground(station, sign * bottomOut)) {
            Corner foot = new Corner(sign * bottomOut, bottom);
            Corner met = meet(station, sign, bottomOut, bottom, 0.5);
            return new SideResult(
                    SideResult.Kind.DITCH, edge, low, hinge, foot, foot, met, met.offset());
        }
        boolean cut = hingeHeight < ground(station, sign * out);
        Corner met = meet(station, sign, out, hingeHeight, cut ? 0.5 : -1 / foreslope);
        return new SideResult(
                cut ? SideResult.Kind.CUT : SideResult.Kind.FILL,
                edge,
                low,
                hinge,
                null,
                null,
                met,
                met.offset());
    }

    /** Where a slope from a corner outward meets the ground, by steps and then halving. */
    private Corner meet(double station, int sign, double out, double height, double rise) {
        double step = 0.05;
        double near = out;
        double side = Math.signum(height - ground(station, sign * out));
        double far = out;
        for (int i = 0; i < 2000; i++) {
            far = near + step;
            double above = height + (far - out) * rise - ground(station, sign * far);
            if (Math.signum(above) != side) {
                break;
            }
            near = far;
        }
        for (int i = 0; i < 60; i++) {
            double middle = (near + far) / 2;
            double above = height + (middle - out) * rise - ground(station, sign * middle);
            if (Math.signum(above) == side) {
                near = middle;
            } else {
                far = middle;
            }
        }
        return new Corner(sign * far, height + (far - out) * rise);
    }

    private double ground(double station, double offset) {
        return ground.applyAsDouble(station, -offset);
    }

    /** Height of the finished surface anywhere; each station's sides are worked out once. */
    public DoubleBinaryOperator finished() {
        Map<Double, SideResult> left = new HashMap<>();
        Map<Double, SideResult> right = new HashMap<>();
        return (x, y) ->
                x < 0 || x > length
                        ? ground.applyAsDouble(x, y)
                        : finished(
                                x,
                                y,
                                y > 0
                                        ? left.computeIfAbsent(x, at -> side(at, -1))
                                        : right.computeIfAbsent(x, at -> side(at, 1)));
    }

    private double finished(double x, double y, SideResult side) {
        double outside = ground.applyAsDouble(x, y);
        double top = profile.applyAsDouble(x);
        double out = Math.abs(y);
        Corner met = side.catchPoint();
        if (met == null || out >= Math.abs(met.offset())) {
            return outside;
        }
        double shoulder = width / 2 + SHOULDER;
        if (out <= shoulder) {
            return top - crown * out;
        }
        Corner foot = side.ditchInner();
        if (foot != null && out <= Math.abs(foot.offset())) {
            return side.hinge().height() - (out - shoulder) / foreslope;
        }
        Corner start = foot == null ? side.hinge() : foot;
        double share =
                (out - Math.abs(start.offset()))
                        / (Math.abs(met.offset()) - Math.abs(start.offset()));
        return start.height() + share * (met.height() - start.height());
    }
}
