package lanewright.drainage;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.pond.ExistingPipe;
import lanewright.drainage.pond.PlacedPipe;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;

/** What existing pipes and the road end say about the lane, besides its wet places. */
final class PlaceFindings {

    private PlaceFindings() {}

    /** Existing pipes that let nothing through. */
    static List<Finding> pipes(List<PlacedPipe> pipes) {
        List<Finding> findings = new ArrayList<>();
        for (PlacedPipe placed : pipes) {
            ExistingPipe pipe = placed.pipe();
            switch (placed.state()) {
                case OPEN -> {
                    // Water passes; its pool, if any is left, is listed.
                }
                case INLET_OUTSIDE ->
                        findings.add(
                                pipe(
                                        "pipe-off-survey",
                                        pipe,
                                        true,
                                        "The inlet of the existing pipe \""
                                                + pipe.name()
                                                + "\" lies outside the survey, so it was left out.",
                                        "Check its coordinates, or survey the ground around it."));
                case INLET_COVERED ->
                        findings.add(
                                pipe(
                                        "pipe-covered",
                                        pipe,
                                        true,
                                        "The inlet of the existing pipe \""
                                                + pipe.name()
                                                + "\" lies deeper under the finished surface than"
                                                + " the pipe is wide: no water is taken to pass.",
                                        "Check its heights, or lengthen the pipe past the foot of"
                                                + " the slope."));
                case OUTLET_COVERED ->
                        findings.add(
                                pipe(
                                        "pipe-covered",
                                        pipe,
                                        false,
                                        "The outlet of the existing pipe \""
                                                + pipe.name()
                                                + "\" lies deeper under the finished surface than"
                                                + " the pipe is wide: no water is taken to pass.",
                                        "Check its heights, or lengthen the pipe past the foot of"
                                                + " the slope."));
            }
        }
        return findings;
    }

    private static Finding pipe(
            String code, ExistingPipe pipe, boolean inlet, String says, String remedy) {
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
        if (ditch == null) {
            findings.add(notFound(end));
        } else if (!ditch.pipe().isEmpty()) { // one without a pipe is in the list of wet places
            findings.add(
                    Finding.of(
                            "road-ditch-piped",
                            Level.NOTE,
                            Topic.WATER,
                            Where.station(ditch.station()).at(ditch.x(), ditch.y()),
                            Saying.of(
                                    "The road's own ditch, {} deep at {}, passes under the lane in"
                                            + " the existing pipe \""
                                            + ditch.pipe().replace("{}", "")
                                            + "\".",
                                    Quantity.depth(ditch.depth()),
                                    Quantity.station(ditch.station())),
                            Saying.plain("See that the pipe is whole and open.")));
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
