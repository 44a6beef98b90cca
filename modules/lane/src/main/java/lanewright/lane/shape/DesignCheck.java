package lanewright.lane.shape;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.line.Arc;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.line.Profile;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;

/** Refuses a design that cannot be built as it is drawn, and says why. */
final class DesignCheck {

    /** Stretches may part or overlap by this much through rounding of stations, m. */
    private static final double SAME_STATION = 0.005;

    /** Added to a width that is proposed, m, so that it still fits when written to a tenth. */
    private static final double SPARE = 0.05;

    private final LaneDesign design;
    private final List<Finding> findings = new ArrayList<>();

    private DesignCheck(LaneDesign design) {
        this.design = design;
    }

    static void check(LaneDesign design) throws DesignRefused {
        DesignCheck check = new DesignCheck(design);
        check.grade();
        check.cover();
        check.bottoms(design.leftBottoms(), "left");
        check.bottoms(design.rightBottoms(), "right");
        if (check.findings.isEmpty()) {
            check.curves();
            check.stone();
        }
        if (!check.findings.isEmpty()) {
            throw new DesignRefused(check.findings);
        }
    }

    private void grade() {
        Profile profile = design.profile();
        if (profile.from() > Profile.END || profile.to() < design.length() - Profile.END) {
            findings.add(
                    new Finding(
                            "grade-too-short",
                            Level.STOP,
                            Topic.GRADE,
                            Where.stretch(0, design.length()),
                            Saying.of(
                                    "The grade runs from {} to {}, but the lane from {} to {}.",
                                    Quantity.station(profile.from()),
                                    Quantity.station(profile.to()),
                                    Quantity.station(0),
                                    Quantity.station(design.length())),
                            Quantity.length(profile.to()),
                            Quantity.length(design.length()),
                            "your plan",
                            Saying.of(
                                    "Put the first grade point at {} and the last at {}.",
                                    Quantity.station(0),
                                    Quantity.station(design.length()))));
        }
    }

    private void cover() {
        double at = 0;
        for (Stretch<TypicalSection> stretch : design.typical()) {
            if (Math.abs(stretch.from() - at) > SAME_STATION) {
                gap(at, stretch.from());
            }
            at = stretch.to();
        }
        if (Math.abs(at - design.length()) > SAME_STATION) {
            gap(at, design.length());
        }
    }

    private void gap(double a, double b) {
        findings.add(
                Finding.of(
                        "shape-gap",
                        Level.STOP,
                        Topic.SHAPE,
                        Where.stretch(Math.min(a, b), Math.max(a, b)),
                        Saying.of(
                                a < b
                                        ? "No shape is given for the lane from {} to {}."
                                        : "Two shapes are given for the lane from {} to {}, or one"
                                                + " that runs past its end.",
                                Quantity.station(Math.min(a, b)),
                                Quantity.station(Math.max(a, b))),
                        Saying.plain(
                                "Let each stretch begin where the one before it ends, from the"
                                        + " start of the lane to its end.")));
    }

    private void bottoms(List<Stretch<DitchBottom>> stretches, String side) {
        double at = Double.NEGATIVE_INFINITY;
        for (Stretch<DitchBottom> stretch : stretches) {
            if (stretch.from() < at) {
                findings.add(
                        Finding.of(
                                "ditch-bottoms-overlap",
                                Level.STOP,
                                Topic.SHAPE,
                                Where.stretch(stretch.from(), at),
                                Saying.of(
                                        "Two bottoms are given for the "
                                                + side
                                                + " ditch from {} to {}.",
                                        Quantity.station(stretch.from()),
                                        Quantity.station(at)),
                                Saying.plain("Let one end where the next begins.")));
            }
            at = stretch.to();
        }
    }

    private void curves() {
        for (Arc arc : design.alignment().arcs()) {
            for (Stretch<TypicalSection> stretch : design.typical()) {
                double half = stretch.value().width() / 2;
                if (stretch.from() < arc.to() && stretch.to() > arc.from() && arc.radius() < half) {
                    findings.add(
                            new Finding(
                                    "curve-inside-lane",
                                    Level.STOP,
                                    Topic.LINE,
                                    Where.stretch(arc.from(), arc.to()),
                                    Saying.of(
                                            "The curve at {} has a radius of {}, less than half"
                                                    + " the lane's width: its inner edge would"
                                                    + " fold over.",
                                            Quantity.station(arc.from()),
                                            Quantity.length(arc.radius())),
                                    Quantity.length(arc.radius()),
                                    Quantity.length(half),
                                    "the geometry of a curve: no source needed",
                                    Saying.of(
                                            "Give it a radius well over {}.",
                                            Quantity.length(half))));
                }
            }
        }
    }

    /** Tries the shape at the ends and the middle of every stretch and every transition. */
    private void stone() {
        List<Double> stations = new ArrayList<>();
        stations.add(0.0);
        for (double s : design.joins()) {
            stations.add(s);
        }
        for (double s : design.jumps()) {
            stations.add(s);
        }
        stations.add(design.length());
        stations.sort(Double::compare);
        for (Stretch<TypicalSection> stretch : design.typical()) {
            int before = findings.size();
            widths(stretch);
            for (double s : stations) {
                if (findings.size() == before && stretch.holds(s)) {
                    LaneAt lane = s >= stretch.to() ? design.atBefore(s) : design.at(s);
                    fits(stretch, lane, false);
                    if (findings.size() == before) {
                        fits(stretch, lane, true);
                    }
                }
            }
        }
    }

    private void widths(Stretch<TypicalSection> stretch) {
        TypicalSection shape = stretch.value();
        List<Layer> layers = shape.layers();
        for (int i = 0; i < layers.size(); i++) {
            double width = layers.get(i).width();
            boolean free = i > 0 && shape.bed() == Bed.ON_TOP;
            if (free || Double.isNaN(width) || width == shape.width()) {
                continue;
            }
            boolean over = shape.bed() == Bed.BOXED && width > shape.width();
            findings.add(
                    new Finding(
                            over ? "earth-over-stone" : "layer-width",
                            Level.STOP,
                            Topic.SHAPE,
                            Where.stretch(stretch.from(), stretch.to()),
                            Saying.of(
                                    over
                                            ? "The boxed "
                                                    + role(layers, i)
                                                    + " is {} wide, wider than the lane: its"
                                                    + " shoulder would put earth over stone."
                                            : "The "
                                                    + role(layers, i)
                                                    + " is {} wide, but here it must be as wide as"
                                                    + " the lane.",
                                    Quantity.length(width)),
                            Quantity.length(width),
                            Quantity.length(shape.width()),
                            "your plan",
                            Saying.of(
                                    "Leave its width out, or make it {}.",
                                    Quantity.length(shape.width()))));
        }
    }

    private static String role(List<Layer> layers, int i) {
        return layers.get(i).role().replace("{}", "{ }") + " layer";
    }

    private void fits(Stretch<TypicalSection> stretch, LaneAt lane, boolean right) {
        HalfShape half = HalfShape.of(lane, right);
        int bad = half.badLayer();
        if (bad < 0) {
            return;
        }
        List<Layer> layers = stretch.value().layers();
        String side = right ? "right" : "left";
        Where where = Where.stretch(stretch.from(), stretch.to());
        if (bad + 1 < layers.size() && half.layerTop(bad + 1) < half.layerFoot(bad)) {
            findings.add(
                    new Finding(
                            "layer-does-not-fit",
                            Level.STOP,
                            Topic.SHAPE,
                            where,
                            Saying.of(
                                    "On the "
                                            + side
                                            + " the foot of the "
                                            + role(layers, bad)
                                            + " comes down {} from the middle, but the "
                                            + role(layers, bad + 1)
                                            + " below it reaches only {}.",
                                    Quantity.length(half.layerFoot(bad)),
                                    Quantity.length(half.layerTop(bad + 1))),
                            Quantity.length(half.layerFoot(bad)),
                            Quantity.length(half.layerTop(bad + 1)),
                            "your plan",
                            Saying.of(
                                    "Make the "
                                            + role(layers, bad + 1)
                                            + " at least {} wide at its top, or leave its width"
                                            + " out.",
                                    Quantity.length(2 * half.layerFoot(bad) + SPARE))));
            return;
        }
        findings.add(
                Finding.of(
                        "layer-runs-out",
                        Level.STOP,
                        Topic.SHAPE,
                        where,
                        Saying.plain(
                                "On the "
                                        + side
                                        + " the "
                                        + role(layers, bad)
                                        + " never reaches the subgrade: its edge is as flat as what"
                                        + " lies below, or the subgrade cuts through it."),
                        Saying.plain(
                                "Make its edge steeper, or give the subgrade at least the fall of"
                                        + " the lane.")));
    }
}
