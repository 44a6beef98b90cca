package lanewright.drainage;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.LaneLine;
import lanewright.drainage.along.Side;
import lanewright.drainage.pond.GivenPipe;
import lanewright.drainage.pond.PlacedPipe;
import lanewright.lane.line.Place;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;

/** What the plan's pipes and the road end say about the lane, besides its wet places. */
final class PlaceFindings {

    private PlaceFindings() {}

    /** Pipes that let nothing through. */
    static List<Finding> pipes(List<PipeCourse> pipes, LaneLine line, WetWords words) {
        List<Finding> findings = new ArrayList<>();
        for (PipeCourse course : pipes) {
            GivenPipe pipe = course.pipe();
            switch (course.state()) {
                case OPEN -> {
                    // Water passes; its pool, if any is left, is listed.
                }
                case INLET_OUTSIDE ->
                        findings.add(
                                pipe(
                                        "pipe-off-survey",
                                        pipe,
                                        true,
                                        "The inlet of the "
                                                + pipe.called()
                                                + " lies outside the survey, so it was left out.",
                                        "Check its coordinates, or survey the ground around it."));
                case INLET_COVERED ->
                        findings.add(
                                pipe(
                                        "pipe-covered",
                                        pipe,
                                        true,
                                        "The inlet of the "
                                                + pipe.called()
                                                + " lies deeper under the finished surface than"
                                                + " the pipe is wide: no water is taken to pass.",
                                        "Check its heights, or lengthen the pipe past the foot of"
                                                + " the slope."));
                case OUTLET_COVERED ->
                        findings.add(
                                pipe(
                                        "pipe-covered",
                                        pipe,
                                        false,
                                        "The outlet of the "
                                                + pipe.called()
                                                + " lies deeper under the finished surface than"
                                                + " the pipe is wide: no water is taken to pass.",
                                        "Check its heights, or lengthen the pipe past the foot of"
                                                + " the slope."));
            }
            CulvertLine under = course.under();
            if (under == null && course.state() != PlacedPipe.State.INLET_OUTSIDE) {
                findings.add(offTheLane(pipe, line));
            } else if (under != null && pipe.toLay() && !words.fits(under)) {
                findings.add(doesNotFit(pipe, under, words));
            }
        }
        return findings;
    }

    /** A pipe that does not pass under the lane. */
    private static Finding offTheLane(GivenPipe pipe, LaneLine line) {
        Place in = line.place(pipe.inletX(), pipe.inletY());
        Place out = line.place(pipe.outletX(), pipe.outletY());
        String lies =
                in == null || out == null
                        ? "it reaches past an end of the lane"
                        : "both its ends lie on the "
                                + Side.at(in.offset()).word()
                                + " of the lane";
        return Finding.of(
                "pipe-off-lane",
                pipe.toLay() ? Level.LOOK : Level.NOTE,
                Topic.WATER,
                Where.map(
                        (pipe.inletX() + pipe.outletX()) / 2, (pipe.inletY() + pipe.outletY()) / 2),
                Saying.plain(
                        "The " + pipe.called() + " does not pass under the lane: " + lies + "."),
                Saying.plain(
                        pipe.toLay()
                                ? "Take it out of the plan, or put its ends where water must pass"
                                        + " under the lane. Until then it is not among the pipes to"
                                        + " buy."
                                : "Nothing to do if it serves other ground. If it should serve the"
                                        + " lane, check the coordinates of its ends."));
    }

    private static Finding doesNotFit(GivenPipe pipe, CulvertLine under, WetWords words) {
        Saying why =
                under.falls()
                        ? words.lacks(under)
                        : Saying.of(
                                "its outlet, at {}, is no lower than its inlet, at {}",
                                Quantity.height(pipe.outletInvert()),
                                Quantity.height(pipe.inletInvert()));
        List<Quantity> quantities = new ArrayList<>();
        quantities.add(Quantity.station(under.station()));
        quantities.addAll(why.quantities());
        return Finding.of(
                "pipe-does-not-fit",
                Level.LOOK,
                Topic.WATER,
                Where.station(under.station()).at(pipe.inletX(), pipe.inletY()),
                new Saying(
                        "The "
                                + pipe.called()
                                + " does not fit under the lane as drawn, at {}: "
                                + why.pattern()
                                + ".",
                        quantities),
                Saying.plain(
                        "Take it out of the plan and see which pipe the lane takes now, or change"
                                + " its ends or the grade over it. Do not buy it so."));
    }

    private static Finding pipe(
            String code, GivenPipe pipe, boolean inlet, String says, String remedy) {
        return Finding.of(
                code,
                Level.LOOK,
                Topic.WATER,
                inlet
                        ? Where.map(pipe.inletX(), pipe.inletY())
                        : Where.map(pipe.outletX(), pipe.outletY()),
                Saying.plain(says),
                Saying.plain(remedy));
    }

    /**
     * The road's own ditch, found or asked about, and lane that falls to the road or to its far
     * end.
     *
     * @param width travelled width at the road, m
     * @param length of the lane, m
     */
    static List<Finding> roadEnd(RoadEnd end, double width, double length) {
        List<Finding> findings = new ArrayList<>();
        RoadEnd.RoadDitch ditch = end.ditch();
        GivenPipe through = ditch == null ? null : ditch.pipe();
        if (ditch == null) {
            findings.add(notFound(end));
        } else if (through != null) { // one without a pipe is in the list of wet places
            findings.add(
                    Finding.of(
                            "road-ditch-piped",
                            Level.NOTE,
                            Topic.WATER,
                            Where.station(ditch.station()).at(ditch.x(), ditch.y()),
                            Saying.of(
                                    "The road's own ditch, {} deep at {}, passes under the lane in"
                                            + " the "
                                            + through.called()
                                            + ".",
                                    Quantity.depth(ditch.depth()),
                                    Quantity.station(ditch.station())),
                            Saying.plain(
                                    through.toLay()
                                            ? "Lay it as the road's owner allows: ask for the permit"
                                                    + " and for the pipe to be used."
                                            : "See that the pipe is whole and open.")));
        }
        if (end.fallingToRoad() > 0) {
            findings.add(
                    Finding.of(
                            "lane-falls-to-road",
                            Level.LOOK,
                            Topic.WATER,
                            Where.stretch(0, end.fallingToRoad()),
                            Saying.of(
                                    "The lane falls towards the public road over its first {}, {}"
                                            + " of stone.",
                                    Quantity.length(end.fallingToRoad()),
                                    Quantity.area(end.fallingToRoad() * width)),
                            Saying.plain(
                                    "No lane water may run onto the road. Build the first stretch so"
                                            + " that it falls away from the road. Where it cannot,"
                                            + " lead the water off sideways to lower ground before"
                                            + " it gets there, by a dip across the lane. The road's"
                                            + " owner decides.")));
        }
        if (end.fallingToEnd() > 0) {
            findings.add(
                    Finding.of(
                            "lane-falls-to-far-end",
                            Level.NOTE,
                            Topic.WATER,
                            Where.stretch(length - end.fallingToEnd(), length),
                            Saying.of(
                                    "The lane falls towards its far end over its last {}.",
                                    Quantity.length(end.fallingToEnd())),
                            Saying.plain(
                                    "Let it end in a rise or a dip that turns the water off before"
                                            + " it reaches a building or a yard.")));
        }
        return findings;
    }

    private static Finding notFound(RoadEnd end) {
        Saying says =
                Double.isNaN(end.searchedFrom())
                        ? Saying.plain(
                                "The ground at the road is not surveyed, so the road's own ditch"
                                        + " could not be looked for.")
                        : Saying.of(
                                "No ditch of the road was found in the ground from {} before the"
                                        + " lane's start to {} after it.",
                                Quantity.length(Math.max(0, -end.searchedFrom())),
                                Quantity.length(Math.max(0, end.searchedTo())));
        return Finding.of(
                "road-ditch-not-found",
                Level.LOOK,
                Topic.WATER,
                Where.station(0),
                says,
                Saying.plain(
                        "Look: does the road have a ditch here? If it does, survey it; its water"
                                + " must pass under the lane, by a pipe that the road's owner"
                                + " allows."));
    }
}
