package lanewright.planner.run;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.Crossing;
import lanewright.drainage.WaterReport;
import lanewright.drainage.along.Descents;
import lanewright.drainage.storm.Ford;
import lanewright.drainage.storm.Sized;
import lanewright.drainage.storm.SizedRelief;
import lanewright.drainage.storm.StormReport;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.planner.listing.StormListings;
import org.jspecify.annotations.Nullable;

/** What deserves a look where pipes lead water under the lane. */
final class StormFindings {

    /** A pipe wider than this, or of more land than {@link #LAND}, wants a licensed design, m. */
    private static final double WIDE = 36 * 0.0254;

    /** m²: 50 acres. Our choice, as the width: beyond what an owner should answer for. */
    private static final double LAND = 50 * 4046.8564224;

    private static final String SOURCE = "FHWA, HDS-5, Hydraulic Design of Highway Culverts, 2001";

    private StormFindings() {}

    /**
     * Findings at every crossing, or that the rain is not given.
     *
     * @param storm null if something of it is still to be said
     * @param missing what that is, in words
     */
    static List<Finding> of(@Nullable StormReport storm, List<String> missing, WaterReport water) {
        if (storm == null && water.crossings().isEmpty()) {
            return List.of();
        }
        if (storm == null) {
            return List.of(
                    Finding.of(
                            "rain-not-given",
                            Level.NOTE,
                            Topic.WATER,
                            Where.ANYWHERE,
                            Saying.plain(
                                    "How wide the pipes must be is not worked out: your plan does"
                                            + " not say "
                                            + String.join(", nor ", missing)
                                            + "."),
                            Saying.plain(
                                    "The rain of 24 hours that comes one year in 25 stands in the"
                                            + " published table for your place, the soil's group on"
                                            + " a soil map. Who does not know the group is on the"
                                            + " safe side with d, which sheds most water.")));
        }
        List<Finding> findings = new ArrayList<>();
        for (Sized sized : storm.sized()) {
            if (!sized.isDry()) {
                small(sized, findings);
                licensed(sized, findings);
                sized.ford().ifPresent(ford -> ford(sized, ford, findings));
            }
        }
        reliefs(storm, findings);
        findings.addAll(DitchFindings.of(storm, water.drainage()));
        return findings;
    }

    /**
     * Findings of the water without the rules of thumb for steep ditches, where a storm says what
     * holds.
     */
    static List<Finding> unlessSized(List<Finding> findings, @Nullable StormReport storm) {
        return storm == null
                ? findings
                : findings.stream()
                        .filter(
                                each ->
                                        !each.code().equals("ditch-wants-lining")
                                                && !each.code().equals("ditch-wants-checks"))
                        .toList();
    }

    private static Where where(Sized sized) {
        return Where.station(sized.crossing().line().crossing());
    }

    private static void small(Sized sized, List<Finding> findings) {
        Crossing crossing = sized.crossing();
        if (crossing.isGiven() && !sized.isEnough()) {
            findings.add(
                    new Finding(
                            "pipe-too-small",
                            crossing.toLay() ? Level.STOP : Level.LOOK,
                            Topic.WATER,
                            where(sized),
                            Saying.of(
                                    "The pipe at {} is too small for the storm of your plan: {}"
                                            + " come, and it carries {} before water stands too"
                                            + " near the lane's edge.",
                                    Quantity.station(crossing.line().crossing()),
                                    Quantity.flow(sized.peak().discharge()),
                                    Quantity.flow(sized.carries())),
                            Quantity.flow(sized.carries()),
                            Quantity.flow(sized.peak().discharge()),
                            SOURCE,
                            sized.least()
                                    .map(
                                            option ->
                                                    around(
                                                            "Lay ",
                                                            StormListings.name(option),
                                                            " in its place."))
                                    .orElse(raise(sized))));
        } else if (!crossing.isGiven() && sized.least().isEmpty()) {
            findings.add(
                    Finding.of(
                            "no-pipe-carries",
                            Level.LOOK,
                            Topic.WATER,
                            where(sized),
                            Saying.of(
                                    "At {} no pipe that is sold has room under the lane and carries"
                                            + " the storm of your plan, {}.",
                                    Quantity.station(crossing.line().crossing()),
                                    Quantity.flow(sized.peak().discharge())),
                            raise(sized)));
        } else if (!crossing.isGiven()) {
            findings.add(
                    Finding.of(
                            "pipe-size",
                            Level.NOTE,
                            Topic.WATER,
                            where(sized),
                            brings(sized),
                            Saying.plain(
                                    "Order it no smaller. Smaller and larger ones, and what happens"
                                            + " with the inlet blocked, stand on the water"
                                            + " sheet.")));
        }
    }

    private static Saying brings(Sized sized) {
        Saying names = StormListings.leasts(sized);
        List<Quantity> quantities = new ArrayList<>();
        quantities.add(Quantity.station(sized.crossing().line().crossing()));
        quantities.add(Quantity.flow(sized.peak().discharge()));
        quantities.addAll(names.quantities());
        return new Saying(
                "At {} the storm of your plan brings {}; the least pipe that carries it: "
                        + names.pattern()
                        + ".",
                quantities);
    }

    /** The relief culverts that some pipe serves, all in one finding. */
    private static void reliefs(StormReport storm, List<Finding> findings) {
        List<SizedRelief> wet =
                storm.reliefs().stream().filter(each -> !each.sized().isDry()).toList();
        List<Quantity> quantities = new ArrayList<>();
        List<String> parts = new ArrayList<>();
        double first = Double.POSITIVE_INFINITY;
        double last = Double.NEGATIVE_INFINITY;
        for (SizedRelief each : wet) {
            if (!each.relief().fits() || each.sized().least().isEmpty()) {
                continue;
            }
            Saying name = StormListings.leasts(each.sized());
            quantities.add(Quantity.station(each.relief().station()));
            quantities.add(Quantity.flow(each.sized().peak().discharge()));
            quantities.addAll(name.quantities());
            String basin = "";
            if (each.basin() > 0) {
                basin = ", out of a basin {} deeper than the ditch";
                quantities.add(Quantity.depth(each.basin()));
            }
            parts.add(each.relief().sign() + " at {}: {}, " + name.pattern() + basin);
            first = Math.min(first, each.relief().station());
            last = Math.max(last, each.relief().station());
        }
        if (!parts.isEmpty()) {
            findings.add(
                    Finding.of(
                            "relief-size",
                            Level.NOTE,
                            Topic.WATER,
                            Where.stretch(first, last),
                            new Saying(
                                    "What the storm of your plan brings to each relief culvert"
                                            + " that is proposed, and the least pipe that carries"
                                            + " it: "
                                            + String.join("; ", parts)
                                            + ".",
                                    quantities),
                            Saying.plain(
                                    "Lay none smaller. Dam the ditch just below each inlet with"
                                            + " packed earth or stone as high as it is deep, or"
                                            + " the water runs past. What leaves comes to"
                                            + " somebody's land: ask first.")));
        }
        for (SizedRelief each : wet) {
            if (each.relief().fits() && each.sized().least().isEmpty()) {
                findings.add(
                        Finding.of(
                                "relief-none-carries",
                                Level.LOOK,
                                Topic.WATER,
                                Where.station(each.relief().station()),
                                Saying.of(
                                        "No pipe that is sold carries the storm of your plan, {},"
                                                + " out of the "
                                                + (each.relief().way() == Descents.Way.LEFT_DITCH
                                                        ? "left"
                                                        : "right")
                                                + " ditch at {}: water may stand {} deep there.",
                                        Quantity.flow(each.sized().peak().discharge()),
                                        Quantity.station(each.relief().station()),
                                        Quantity.depth(Math.max(0, each.sized().allowed()))),
                                Saying.plain(
                                        "Make the ditch deeper there, relieve it farther up, or"
                                                + " line it and lead the water on.")));
            }
        }
    }

    /** By how much to raise the lane, and for which pipe. */
    private static Saying raise(Sized sized) {
        Sized.Raised raised = sized.raised().orElse(null);
        if (raised == null) {
            return Saying.plain("Lead part of the water elsewhere, or build a ford or a bridge.");
        }
        Saying name = StormListings.name(raised.option());
        List<Quantity> quantities = new ArrayList<>();
        quantities.add(Quantity.depth(sized.crossing().raise() + raised.by()));
        quantities.addAll(name.quantities());
        return new Saying(
                "Raise the lane there by {}: then "
                        + name.pattern()
                        + " carries it. Or build a ford or a bridge.",
                quantities);
    }

    private static void ford(Sized sized, Ford ford, List<Finding> findings) {
        boolean floats = ford.depth() >= Ford.FLOATS;
        findings.add(
                new Finding(
                        "ford-instead",
                        floats ? Level.LOOK : Level.NOTE,
                        Topic.WATER,
                        where(sized),
                        Saying.of(
                                "Instead of a pipe the lane at {} may cross the water as a ford of"
                                        + " rock: {} lower than drawn, {} of level bottom, approaches"
                                        + " of {}; in the storm of your plan water stands {} deep on it"
                                        + " and runs {} fast.",
                                Quantity.station(sized.crossing().line().crossing()),
                                Quantity.length(ford.down()),
                                Quantity.length(ford.bottom()),
                                Quantity.grade(ford.approach()),
                                Quantity.depth(ford.depth()),
                                Quantity.speed(ford.speed())),
                        Quantity.depth(ford.depth()),
                        Quantity.depth(floats ? Ford.FLOATS : Ford.KNOCKS),
                        Ford.SAFETY,
                        Saying.of(
                                "Only where water runs in storms and not all year, on firm bottom,"
                                        + " with {} of rock {} on average, {} thick, and a sill of it"
                                        + " at the lower edge. Never drive or walk through moving"
                                        + " water: {~} knocks people off their feet, {~} floats a car."
                                        + " Set a depth post, and have another way out for an"
                                        + " emergency. A ford in a stream or wetland needs a permit.",
                                Quantity.volume(ford.volume()),
                                Quantity.depth(ford.stone()),
                                Quantity.depth(ford.thickness()),
                                Quantity.depth(Ford.KNOCKS),
                                Quantity.depth(Ford.FLOATS))));
    }

    private static Saying around(String before, Saying name, String after) {
        return new Saying(before + name.pattern() + after, name.quantities());
    }

    private static void licensed(Sized sized, List<Finding> findings) {
        Crossing crossing = sized.crossing();
        double wide =
                crossing.isGiven()
                        ? crossing.diameter()
                        : sized.least()
                                .map(option -> option.size().barrel().inside().span())
                                .orElse(0.0);
        boolean many = !crossing.isGiven() && sized.least().map(o -> o.barrels() > 1).orElse(false);
        if (wide > WIDE || many || crossing.drained() > LAND) {
            findings.add(
                    Finding.of(
                            "pipe-wants-a-design",
                            Level.LOOK,
                            Topic.WATER,
                            where(sized),
                            Saying.of(
                                    "The crossing at {} is larger than an owner should answer for:"
                                            + " {} of land drain to it.",
                                    Quantity.station(crossing.line().crossing()),
                                    Quantity.land(crossing.drained())),
                            Saying.plain(
                                    "Have it designed by a licensed engineer, and ask whether a"
                                            + " permit is needed before anything is dug.")));
        }
    }
}
