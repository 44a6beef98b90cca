package lanewright.drainage.along;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.pond.GivenPipe;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import org.jspecify.annotations.Nullable;

/**
 * An end of a ditch, where its water leaves the lane, and the place that the owner has named for
 * it. Where a pipe takes the water, it leaves at the pipe's outlet.
 *
 * @param ditch number of the ditch
 * @param side the side that the ditch lies on
 * @param outlet the ditch's low point
 * @param named the nearest place that the owner has named within {@link #REACH}, or null
 */
public record DitchEnd(
        int ditch, Side side, DitchReach.Outlet outlet, @Nullable NamedOutlet named) {

    /** A named place this near to an end is meant for it, m: 50 ft. Our choice. */
    public static final double REACH = 15.24;

    /** So many stations are named in one sentence. */
    private static final int NAMED = 8;

    /** Whether a place is named for it, and water may be led there. */
    public boolean isPermitted() {
        return named != null && named.permitted() == NamedOutlet.Permitted.YES;
    }

    /** The ends of all ditches; dead ends and those that want a pipe first are none. */
    public static List<DitchEnd> of(
            List<DitchReach> ditches, List<GivenPipe> pipes, List<NamedOutlet> named) {
        List<DitchEnd> ends = new ArrayList<>();
        for (int i = 0; i < ditches.size(); i++) {
            for (DitchReach.Outlet outlet : ditches.get(i).outlets()) {
                switch (outlet.kind()) {
                    case DAYLIGHT, ROAD, FAR_END, PIPE, PIPE_TO_LAY ->
                            ends.add(
                                    new DitchEnd(
                                            i,
                                            ditches.get(i).side(),
                                            outlet,
                                            nearest(ditches.get(i).side(), outlet, pipes, named)));
                    case CROSSING, DEAD_END -> {
                        // Its water does not leave, which is told of by itself.
                    }
                }
            }
        }
        return ends;
    }

    private static @Nullable NamedOutlet nearest(
            Side side, DitchReach.Outlet end, List<GivenPipe> pipes, List<NamedOutlet> named) {
        GivenPipe through = null;
        if (end.kind() == DitchReach.Kind.PIPE || end.kind() == DitchReach.Kind.PIPE_TO_LAY) {
            for (GivenPipe pipe : pipes) {
                if (Math.hypot(pipe.inletX() - end.x(), pipe.inletY() - end.y())
                        <= Ditches.PIPE_REACH) {
                    through = pipe;
                }
            }
        }
        NamedOutlet nearest = null;
        double least = REACH;
        for (NamedOutlet each : named) {
            double distance = each.distance(side, end.station(), end.x(), end.y());
            if (through != null) {
                distance =
                        Math.min(
                                distance,
                                each.distance(
                                        side.across(),
                                        end.station(),
                                        through.outletX(),
                                        through.outletY()));
            }
            if (distance <= least) {
                least = distance;
                nearest = each;
            }
        }
        return nearest;
    }

    /**
     * Ends without a named place, and named places that are not marked as permitted.
     *
     * @param named what the owner has named
     */
    public static List<Finding> check(List<DitchEnd> ends, List<NamedOutlet> named) {
        List<Finding> findings = new ArrayList<>();
        List<DitchEnd> nameless = ends.stream().filter(end -> end.named() == null).toList();
        if (named.isEmpty() && nameless.size() > 1) {
            findings.add(allNameless(nameless));
        } else {
            nameless.forEach(end -> findings.add(nameless(end)));
        }
        for (NamedOutlet place : named) {
            if (Double.isNaN(place.station()) && Double.isNaN(place.x() + place.y())) {
                findings.add(placeless(place));
                continue;
            }
            List<DitchEnd> led = ends.stream().filter(end -> place.equals(end.named())).toList();
            if (!led.isEmpty() && place.permitted() != NamedOutlet.Permitted.YES) {
                findings.add(notPermitted(place, led));
            } else if (led.isEmpty()) {
                findings.add(unused(place));
            }
        }
        return findings;
    }

    private Where where() {
        return Where.station(outlet.station()).at(outlet.x(), outlet.y());
    }

    private static Finding nameless(DitchEnd end) {
        return Finding.of(
                "outlet-not-named",
                Level.LOOK,
                Topic.WATER,
                end.where(),
                Saying.of(
                        "No outlet is named where the water of the "
                                + end.side().word()
                                + " ditch leaves it, at {}.",
                        Quantity.station(end.outlet().station())),
                name());
    }

    private static Saying name() {
        return Saying.plain(
                "Go there and see whose land its water runs to. Name the place in the plan, under"
                        + " water and outlets, and write whether water may be led there: the"
                        + " neighbor below, the road's owner, and who answers for streams and"
                        + " wetlands have a say.");
    }

    private static Finding allNameless(List<DitchEnd> ends) {
        var pattern = new StringBuilder("{} ends of ditches have no named outlet: at ");
        List<Quantity> quantities = new ArrayList<>();
        quantities.add(Quantity.count(ends.size()));
        for (int i = 0; i < Math.min(NAMED, ends.size()); i++) {
            pattern.append(i == 0 ? "" : ", ").append("{} ").append(ends.get(i).side().word());
            quantities.add(Quantity.station(ends.get(i).outlet().station()));
        }
        pattern.append(ends.size() > NAMED ? " and so on." : ".");
        return Finding.of(
                "outlet-not-named",
                Level.LOOK,
                Topic.WATER,
                ends.get(0).where(),
                new Saying(pattern.toString(), quantities),
                Saying.plain(
                        "Go to each and see whose land its water runs to. Name them in the plan,"
                                + " under water and outlets, and write whether water may be led"
                                + " there: the neighbor below, the road's owner, and who answers"
                                + " for streams and wetlands have a say."));
    }

    private static Finding notPermitted(NamedOutlet place, List<DitchEnd> led) {
        boolean no = place.permitted() == NamedOutlet.Permitted.NO;
        return Finding.of(
                "outlet-not-permitted",
                Level.LOOK,
                Topic.WATER,
                led.get(0).where(),
                Saying.of(
                        no
                                ? "Water may not be led to the outlet "
                                        + place.name()
                                        + ", and the "
                                        + led.get(0).side().word()
                                        + " ditch ends there, at {}."
                                : "The outlet "
                                        + place.name()
                                        + " is not marked as permitted, and the "
                                        + led.get(0).side().word()
                                        + " ditch ends there, at {}.",
                        Quantity.station(led.get(0).outlet().station())),
                Saying.plain(
                        no
                                ? "Lead the ditch elsewhere: to another outlet, or under the lane."
                                : "Ask before anything is dug: the neighbor below, the road's"
                                        + " owner, and who answers for streams and wetlands. Then"
                                        + " mark it. Water that ran there before may still run"
                                        + " there; gathered in a ditch it is another matter, and"
                                        + " local law decides."));
    }

    private static Finding unused(NamedOutlet place) {
        Where where =
                Double.isNaN(place.station())
                        ? Where.map(place.x(), place.y())
                        : Where.station(place.station());
        return Finding.of(
                "outlet-not-reached",
                Level.NOTE,
                Topic.WATER,
                where,
                Saying.of(
                        "No ditch ends within {} of the outlet " + place.name() + ".",
                        Quantity.length(REACH)),
                Saying.plain(
                        "Check its place and its side; or leave it for the turn-outs that are"
                                + " proposed."));
    }

    private static Finding placeless(NamedOutlet place) {
        return Finding.of(
                "outlet-without-place",
                Level.LOOK,
                Topic.WATER,
                Where.ANYWHERE,
                Saying.plain("The plan does not say where the outlet " + place.name() + " is."),
                Saying.plain(
                        "Give its station, and its side, or its east and north; until then it"
                                + " serves no ditch."));
    }
}
