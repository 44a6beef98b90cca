package lanewright.sheets.set;

import java.util.List;
import java.util.stream.Stream;
import lanewright.drainage.WaterReport;
import lanewright.drainage.WetPlace;
import lanewright.drainage.storm.Ford;
import lanewright.drainage.storm.StormReport;
import lanewright.measure.Finding;
import lanewright.measure.Listing;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.listing.DitchListings;
import lanewright.planner.listing.LaneDrainageListings;
import lanewright.planner.listing.StandingListings;
import lanewright.planner.listing.StormListings;
import lanewright.planner.listing.WaterListings;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;
import org.jspecify.annotations.Nullable;

/** Where water sits, where it comes in and where each ditch sends it. */
final class WaterSheet {

    private WaterSheet() {}

    static Sheet of(
            WaterReport water,
            @Nullable StormReport storm,
            List<String> missing,
            Listing fords,
            UnitSystem units,
            String answer,
            @Nullable Sheet before) {
        var flow =
                new Flow(
                        Paper.of(units).lying(),
                        units,
                        "Water",
                        "Where does water go?",
                        answer,
                        before);
        table(flow, WaterListings.places(water));
        if (water.places().stream().anyMatch(place -> place.pool() != null)) {
            flow.note(
                    "Depth, area and water: filled up to where it runs over, measured on the"
                            + " surveyed ground and the lane as built. "
                            + small(water, units));
        }
        table(flow, WaterListings.pipes(water));
        if (!WaterListings.pipes(water).rows().isEmpty()) {
            flow.note(
                    "Straight, and square to the lane unless it says slanted, from the ground at"
                            + " its inlet to the ground at its outlet. Buy none that does not fit."
                            + (storm == null
                                    ? " How wide it must be is not worked out, for the plan does"
                                            + " not say "
                                            + String.join(", nor ", missing)
                                            + ". Say that, or ask a"
                                            + " person licensed or named to size pipes where you"
                                            + " build, with the land that drains to it."
                                    : ""));
        }
        table(flow, LaneDrainageListings.downAndAcross(water));
        Listing reliefs = LaneDrainageListings.reliefs(water);
        table(flow, reliefs);
        if (!reliefs.rows().isEmpty()) {
            flow.note(
                    "Proposals, from the top of each way down; signs stand on the plan and the"
                            + " profile. At most apart: "
                            + water.drainage().reliefs().get(0).source()
                            + ". A dip is driven through, a bar stops cars. What leaves the lane"
                            + " comes to somebody's land: lead it onto ground that bears it, and"
                            + " ask first.");
        }
        if (storm != null) {
            storm(flow, storm, fords, units);
        }
        table(flow, LaneDrainageListings.ends(water));
        Listing falls = LaneDrainageListings.falls(water);
        table(flow, falls);
        if (!falls.rows().isEmpty()) {
            flow.note(
                    "Outward only on firm soil and on grades that such a fall can exceed; inward"
                            + " elsewhere on a side slope. The rule and its source stand among the"
                            + " assumptions.");
        }
        for (WetPlace place : water.places()) {
            entry(flow, place.finding(), units);
        }
        for (Finding finding : water.findings()) {
            boolean told =
                    water.places().stream().anyMatch(place -> place.finding().equals(finding));
            if (!told && finding.level() != Finding.Level.NOTE) {
                entry(flow, finding, units);
            }
        }
        standing(flow, water, storm);
        Listing down = WaterListings.descents(water);
        flow.tables(
                Stream.of(
                                WaterListings.pools(water),
                                WaterListings.gone(water),
                                WaterListings.inflows(water),
                                WaterListings.sags(water),
                                WaterListings.ditches(water),
                                down)
                        .filter(listing -> !listing.rows().isEmpty())
                        .toList());
        if (!down.rows().isEmpty()) {
            flow.note(
                    "Lead it off every: the distance that a published table allows between drains"
                            + " on such grades; where it is led off: places that keep to it, from"
                            + " the top down. "
                            + water.descents().get(0).source()
                            + ".");
        }
        return flow.sheet();
    }

    private static void storm(Flow flow, StormReport storm, Listing fords, UnitSystem units) {
        table(flow, StormListings.flows(storm));
        table(flow, StormListings.sizes(storm));
        Listing blocked = StormListings.blocked(storm);
        if (storm.sized().isEmpty() && storm.ditches().isEmpty()) {
            return;
        }
        flow.note(
                "The storm of the plan: "
                        + storm.asked().words().in(units)
                        + ". Water may stand up to "
                        + Words.of(Quantity.depth(StormReport.FREEBOARD), units)
                        + " below the lane's edge. Pipes stick out of the fill unless your plan makes their"
                        + " ends otherwise, and run out freely;"
                        + " where water below the lane backs up into the outlet they carry less."
                        + " Before a pipe goes into a stream or a wetland ask for the permit, and"
                        + " speak with the neighbour below; have large ones designed by a licensed"
                        + " engineer.");
        table(flow, fords);
        if (!fords.rows().isEmpty()) {
            flow.note(
                    "Only where water runs in storms, on firm bottom, with a sill of the same rock"
                            + " at the lower edge. Never drive or walk through moving water: "
                            + Words.of(Quantity.depth(Ford.KNOCKS), units)
                            + " knocks people off their feet, "
                            + Words.of(Quantity.depth(Ford.FLOATS), units)
                            + " floats a car ("
                            + Ford.SAFETY.substring(0, Ford.SAFETY.indexOf(','))
                            + ").");
        }
        table(flow, blocked);
        if (!blocked.rows().isEmpty()) {
            flow.note(
                    "Keep inlets clear. Where water goes over the lane it washes out the downhill"
                            + " edge first: lay stone there.");
        }
        table(flow, StormListings.aprons(storm));
        Listing reliefs = StormListings.reliefs(storm);
        table(flow, reliefs);
        if (!reliefs.rows().isEmpty()) {
            flow.note(
                    "Each takes what gathers in the ditch below the proposal above it, and what"
                            + " others lead into that ditch; leave one out, and the next takes its"
                            + " water too. Onto the ground: there is no ditch across, or the pipe"
                            + " comes out lower than its bottom; have stone there. Water may stand to the brim"
                            + " of the ditch, dammed just below the inlet with packed earth or"
                            + " stone as high as it is deep, and no nearer to the lane's edge than"
                            + " other pipes. Their trench, stone and money stand on the culverts"
                            + " sheet.");
        }
        table(flow, DitchListings.gathering(storm));
        Listing ditches = DitchListings.reaches(storm);
        table(flow, ditches);
        if (!ditches.rows().isEmpty()) {
            flow.note(
                    "Each reach carries all that drains through its foot: half of a crowned lane,"
                            + " or all or none of one that falls one way, its slopes, and the land"
                            + " beside. Deep: where it is flattest; speed and drag: where it is"
                            + " steepest. Grass by how high it stands: class B 11 to 24 in, C 6 to"
                            + " 10 in, D 2 to 6 in, E shorter (1 in is 25 mm). Until it stands,"
                            + " nets and straw hold the seed. Check dams are of stone, lowest in"
                            + " the middle; between them the bare soil holds.");
        }
        Listing relieved = DitchListings.relieved(storm);
        table(flow, relieved);
        if (!relieved.rows().isEmpty()) {
            flow.note(
                    "The other tables have the ditches with no relief culvert and no turn-out built;"
                            + " this one with all of them that can be. Build the ditch that takes"
                            + " more before the pipe.");
        }
    }

    private static void standing(Flow flow, WaterReport water, @Nullable StormReport storm) {
        Listing nests = StandingListings.nests(water);
        table(flow, nests);
        if (!nests.rows().isEmpty()) {
            flow.note(
                    "How likely: from the depth and from how far the survey's heights may be off,"
                            + " each by itself; under nine in ten it may be no hollow at all: look"
                            + " after a rain. Runs over after: even rain of which nothing soaks"
                            + " in.");
        }
        Listing rain = StandingListings.rain(water);
        table(flow, rain);
        if (!rain.rows().isEmpty()) {
            flow.note(
                    "Rain falls evenly and runs to its hollow at once; the ground takes water in at"
                            + " one rate everywhere and never tires; before the first step all is"
                            + " dry. Wet ground takes in less: water then stands deeper and"
                            + " longer.");
        }
        Listing border = StandingListings.border(water, storm);
        table(flow, border);
        Listing ways = StandingListings.waysOut(water, storm);
        table(flow, ways);
        if (!border.rows().isEmpty()) {
            flow.note(
                    (ways.rows().isEmpty()
                                    ? ""
                                    : "B1 and so on stand on the maps of water before and after, as far as those reach. ")
                            + "Only land that was surveyed counts. Water that you send to a neighbour where"
                            + " none or less went before may break the law: ask before you build.");
        }
    }

    private static void entry(Flow flow, Finding finding, UnitSystem units) {
        if (finding.level() == Finding.Level.NOTE) {
            flow.entry(
                    Flow.Sign.DOT,
                    Told.what(finding, units),
                    Told.sentence(finding.remedy().in(units)));
        } else {
            Told.brief(flow, finding, units);
        }
    }

    /** How many hollows are not listed, in a sentence. */
    private static String small(WaterReport water, UnitSystem units) {
        int before = water.smallBefore();
        int after = water.smallAfter();
        return before == 0 && after == 0
                ? "There are no smaller hollows."
                : "Smaller hollows, not listed: "
                        + Quantity.count(before).in(units)
                        + " in the land as it is, "
                        + Quantity.count(after).in(units)
                        + " once the lane is built.";
    }

    private static void table(Flow flow, Listing listing) {
        if (!listing.rows().isEmpty()) {
            flow.table(listing);
        }
    }
}
