package lanewright.planner.work;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionSet;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.linearref.LengthIndexedLine;
import org.locationtech.jts.operation.distance.DistanceOp;

/**
 * Holds the work against the hazards of the land: loads under wires, digging over lines, work on
 * wells.
 */
public final class Hazards {

    /**
     * Distance that every part of a machine keeps from a wire of up to 50 kV, m: 10 ft (29 CFR
     * 1926.1408, table A, from memory). A wire of unknown voltage may need more.
     */
    static final double WIRE_CLEARANCE = 10 * 0.3048;

    /**
     * Cover that should stay over a buried line while machines run over it, m: 12 in, our choice.
     */
    static final double COVER = 12 * 0.0254;

    /** Steps along a line in which the digging over it is looked at, m. */
    private static final double STEP = 0.5;

    private static final String WIRE_RULE = "29 CFR 1926.1408, table A, up to 50 kV, from memory";
    private static final String OUR_RULE = "our choice";

    private final SectionSet set;
    private final Alignment line;
    private final double raisedBed;
    private @Nullable Geometry work;
    private @Nullable Geometry lane;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Saying> below = new ArrayList<>();

    private Hazards(SectionSet set, double raisedBed) {
        this.set = set;
        this.line = set.design().alignment();
        this.raisedBed = raisedBed;
    }

    /** Findings for every hazard that the work meets. */
    public List<Finding> findings() {
        return List.copyOf(findings);
    }

    /**
     * What whoever drives or tips stone must heed below each wire that hangs too low for a raised
     * bed: where, and how high truck and load may stand with the bed down.
     */
    public List<Saying> belowWires() {
        return List.copyOf(below);
    }

    /** The limits of work; asked for only where there is a hazard. */
    private Geometry work() {
        Geometry known = work;
        if (known == null) {
            known = LandShapes.limits(set);
            work = known;
        }
        return known;
    }

    private Geometry lane() {
        Geometry known = lane;
        if (known == null) {
            known =
                    LandShapes.band(
                            set, s -> s.left().hinge().offset(), s -> s.right().hinge().offset());
            lane = known;
        }
        return known;
    }

    /**
     * Holds every hazard against the work.
     *
     * @param set the sections of the lane
     * @param hazards what the owner knows of
     * @param raisedBed height of a truck's raised bed over the lane, m
     */
    public static Hazards of(SectionSet set, List<Hazard> hazards, double raisedBed) {
        Hazards check = new Hazards(set, raisedBed);
        if (set.sections().isEmpty()) {
            return check;
        }
        for (Hazard hazard : hazards) {
            if (hazard.kind() == Hazard.Kind.WIRE) {
                check.wire(hazard);
            } else if (hazard.kind().isBuried()) {
                check.buried(hazard);
            } else {
                check.keepOff(hazard);
            }
        }
        return check;
    }

    private void wire(Hazard hazard) {
        Geometry reach = LandShapes.of(hazard).buffer(WIRE_CLEARANCE).intersection(lane());
        double[] stretch = stretch(reach);
        if (stretch == null) {
            return;
        }
        double needed = raisedBed + WIRE_CLEARANCE;
        double lowest = lowestOver(hazard, stretch);
        if (lowest >= needed) {
            return;
        }
        boolean known = !Double.isNaN(lowest);
        Saying driving = driving(hazard, stretch, lowest);
        below.add(driving);
        findings.add(
                new Finding(
                        "load-under-wire",
                        Level.STOP,
                        Topic.ORDER,
                        Where.stretch(stretch[0], stretch[1]),
                        known
                                ? Saying.of(
                                        "A wire crosses: the "
                                                + named(hazard)
                                                + " hangs {} over the finished lane. A raised bed of {} "
                                                + (lowest <= raisedBed
                                                        ? "would hit it"
                                                        : "would come too near")
                                                + "; bed and safe distance need {}.",
                                        Quantity.length(lowest),
                                        Quantity.length(raisedBed),
                                        Quantity.length(needed))
                                : Saying.of(
                                        "A wire crosses: nobody has said how high the "
                                                + named(hazard)
                                                + " hangs over the lane. A raised bed and the safe"
                                                + " distance need {}.",
                                        Quantity.length(needed)),
                        known ? Quantity.length(lowest) : null,
                        Quantity.length(needed),
                        WIRE_RULE,
                        remedy(stretch, lowest)));
    }

    private Saying remedy(double[] stretch, double lowest) {
        List<Quantity> quantities = new ArrayList<>();
        quantities.add(Quantity.station(stretch[0]));
        quantities.add(Quantity.station(stretch[1]));
        Saying down = bedDown(lowest);
        quantities.addAll(down.quantities());
        return new Saying(
                "Raise no bed from {} to {}: tip before it or past it and push the stone in with a blade or loader. Driving below: "
                        + down.pattern()
                        + ". Ask the wire's owner about its height and voltage before any truck or digger passes below it, and to have it raised, buried or switched off.",
                quantities);
    }

    private Saying driving(Hazard hazard, double[] stretch, double lowest) {
        List<Quantity> quantities = new ArrayList<>();
        quantities.add(Quantity.station(stretch[0]));
        quantities.add(Quantity.station(stretch[1]));
        Saying down = bedDown(lowest);
        quantities.addAll(down.quantities());
        return new Saying(
                named(hazard).replace("{", "(").replace("}", ")")
                        + ", {} to {}: raise no bed there; driving below, "
                        + down.pattern(),
                quantities);
    }

    /** How high what passes below may stand, the safe distance kept. */
    private static Saying bedDown(double lowest) {
        double clear = lowest - WIRE_CLEARANCE;
        return Double.isNaN(lowest)
                ? Saying.plain("nothing passes until its owner has said how high it hangs")
                : clear > 0
                        ? Saying.of(
                                "with the bed down, truck and load may stand no higher than {}, which keeps {} from the wire",
                                Quantity.length(clear),
                                Quantity.length(WIRE_CLEARANCE))
                        : Saying.plain("nothing passes until it is raised or switched off");
    }

    /** Height of a wire over the finished lane where the lane rises most over the ground, m. */
    private double lowestOver(Hazard hazard, double[] stretch) {
        if (Double.isNaN(hazard.level())) {
            return Double.NaN;
        }
        double rise = 0;
        for (Section section : set.sections()) {
            boolean near =
                    section.station() >= stretch[0] - set.design().interval()
                            && section.station() <= stretch[1] + set.design().interval();
            if (near) {
                double ground = section.ground().at(0);
                if (!Double.isNaN(ground)) {
                    rise = Math.max(rise, section.profileHeight() - ground);
                }
            }
        }
        return hazard.level() - rise;
    }

    private void buried(Hazard hazard) {
        Geometry inside = LandShapes.of(hazard).intersection(work());
        if (inside.isEmpty()) {
            return;
        }
        double deepest = 0;
        Place worst = null;
        for (int i = 0; i < inside.getNumGeometries(); i++) {
            Geometry piece = inside.getGeometryN(i);
            if (piece.getLength() == 0) {
                continue;
            }
            var indexed = new LengthIndexedLine(piece);
            for (double s = 0; s <= piece.getLength() + STEP; s += STEP) {
                Coordinate spot = indexed.extractPoint(Math.min(s, piece.getLength()));
                Place place = line.place(spot.x, spot.y);
                if (place != null) {
                    double dig = digging(place);
                    if (worst == null || dig > deepest) {
                        deepest = Math.max(deepest, dig);
                        worst = place;
                    }
                }
            }
        }
        if (worst != null) {
            findings.add(overLine(hazard, worst, deepest));
        }
    }

    /** How deep the plan digs at a place, m below the ground as it is. */
    private double digging(Place place) {
        Section section = set.nearest(place.station());
        double ground = section.ground().at(place.offset());
        double subgrade = section.subgrade().at(place.offset());
        double stripped = section.stripped().at(place.offset());
        double low =
                Double.isNaN(subgrade)
                        ? stripped
                        : Math.min(subgrade, Double.isNaN(stripped) ? subgrade : stripped);
        return Double.isNaN(low) || Double.isNaN(ground) ? 0 : Math.max(0, ground - low);
    }

    private Finding overLine(Hazard hazard, Place place, double deepest) {
        boolean known = !Double.isNaN(hazard.level());
        double left = hazard.level() - deepest;
        boolean thin = !known || left < COVER;
        String who =
                hazard.kind() == Hazard.Kind.BURIED_PUBLIC
                        ? "Have the public marking service mark it, then dig by hand to find it, all the way across the work"
                        : "Public marking leaves private lines out: find and mark it yourself all across the work, then dig by hand";
        return new Finding(
                "digging-over-line",
                thin ? Level.STOP : Level.LOOK,
                Topic.ORDER,
                Where.beside(place.station(), place.offset()),
                known
                        ? Saying.of(
                                "The work crosses the "
                                        + named(hazard)
                                        + ", {} deep. At the worst place digging goes {} down and leaves {} of cover.",
                                Quantity.depth(hazard.level()),
                                Quantity.depth(deepest),
                                Quantity.depth(left))
                        : Saying.of(
                                "The work crosses the "
                                        + named(hazard)
                                        + ", at a depth that nobody has said. At the worst place digging goes {} down.",
                                Quantity.depth(deepest)),
                known ? Quantity.depth(left) : null,
                Quantity.depth(COVER),
                OUR_RULE,
                Saying.plain(
                        who
                                + (thin
                                        ? ". Have the grade raised there, or the line laid deeper; until then no truck drives over it."
                                        : ".")));
    }

    private void keepOff(Hazard hazard) {
        Geometry shape = LandShapes.of(hazard);
        double apart = shape.distance(work());
        boolean meets = shape.intersects(work());
        if (!meets && apart >= hazard.away()) {
            return;
        }
        Coordinate middle =
                meets
                        ? shape.intersection(work()).getInteriorPoint().getCoordinate()
                        : DistanceOp.nearestPoints(shape, work())[0];
        Place place = line.place(middle.x, middle.y);
        Where where =
                (place == null ? Where.ANYWHERE : Where.beside(place.station(), place.offset()))
                        .at(middle.x, middle.y);
        findings.add(
                new Finding(
                        "work-on-" + hazard.kind().words().replace(' ', '-'),
                        meets ? Level.STOP : Level.LOOK,
                        Topic.LINE,
                        where,
                        meets
                                ? Saying.plain("The work runs over the " + named(hazard) + ".")
                                : Saying.of(
                                        "The work comes within {} of the "
                                                + named(hazard)
                                                + ", {} too near.",
                                        Quantity.length(apart),
                                        Quantity.length(hazard.away() - apart)),
                        Quantity.length(meets ? 0 : apart),
                        Quantity.length(hazard.away()),
                        "your plan",
                        Saying.plain(remedy(hazard.kind()))));
    }

    /** The owner's name for it, with what it is where the name does not say so. */
    static String named(Hazard hazard) {
        String kind = hazard.kind().words();
        String lastWord = kind.substring(kind.lastIndexOf(' ') + 1);
        return hazard.name().contains(lastWord) ? hazard.name() : hazard.name() + " (" + kind + ")";
    }

    private static String remedy(Hazard.Kind kind) {
        return switch (kind) {
            case WETLAND ->
                    "Move the lane, or ask for the permits that work in water and wetland needs before anything else.";
            case DRAIN_FIELD, TANK ->
                    "Move the work away by at least what is missing. No wheel, cut, fill or heap belongs on a drain field or tank: fence it off first.";
            case WELL ->
                    "Move the work away by at least what is missing; your health department says how far work and drainage must stay from a well.";
            case TREE -> "Move the limits out from under the branches, or give the tree up.";
            default -> "Move the lane or the limits of work away by at least what is missing.";
        };
    }

    /** First and last station that a shape reaches, m; null if it does not lie beside the lane. */
    private double @Nullable [] stretch(Geometry shape) {
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (Coordinate corner : shape.getCoordinates()) {
            Place place = line.place(corner.x, corner.y);
            if (place != null) {
                from = Math.min(from, place.station());
                to = Math.max(to, place.station());
            }
        }
        return from <= to ? new double[] {from, to} : null;
    }
}
