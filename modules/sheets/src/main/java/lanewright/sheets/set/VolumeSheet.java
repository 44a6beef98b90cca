package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.List;
import lanewright.earthwork.EarthworkReport;
import lanewright.lane.section.Section;
import lanewright.lane.volume.LaneVolumes;
import lanewright.measure.Finding;
import lanewright.measure.Listing;
import lanewright.measure.UnitSystem;
import lanewright.planner.listing.DigListings;
import lanewright.planner.listing.EarthListings;
import lanewright.planner.listing.SectionListings;
import lanewright.planner.listing.VolumeListings;
import lanewright.planner.pipes.PipeJob;
import lanewright.planner.work.HeapPlaces;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;
import org.jspecify.annotations.Nullable;

/** How much topsoil and dirt: the whole first, then section by section with running totals. */
final class VolumeSheet {

    private VolumeSheet() {}

    static Sheet of(
            EarthworkReport earth,
            HeapPlaces places,
            LaneVolumes volumes,
            List<Section> sections,
            boolean atLeast,
            List<PipeJob> pipes,
            UnitSystem units,
            String answer,
            @Nullable Sheet before) {
        var flow =
                new Flow(
                        Paper.of(units),
                        units,
                        "Volumes",
                        "How much topsoil and dirt?",
                        answer,
                        before);
        var findings = new ArrayList<Finding>(earth.findings());
        findings.addAll(places.findings());
        for (Finding finding : findings) {
            if (finding.level() != Finding.Level.NOTE) {
                Told.brief(flow, finding, units);
            }
        }
        Listing balance = EarthListings.balance(earth, atLeast, pipes);
        flow.table(
                balance,
                "Fill is balanced by the published change of volume of the soil named in the plan:"
                        + " what is dug swells on the truck and packs down in the fill. Topsoil and"
                        + " soft soil never make fill."
                        + (has(flow, balance, "Truckloads")
                                ? " Truckloads are those of the truck that the plan names, filled"
                                        + " to its weight."
                                : "")
                        + (pipes.stream().anyMatch(job -> job.planned() && job.fits())
                                ? " Pipe trenches are dug from the stripped ground, or from the"
                                        + " subgrade where that lies lower, so what they dig is in"
                                        + " no other line."
                                : ""));
        Listing depths = DigListings.stretches(sections, volumes);
        flow.table(
                depths,
                "Strip from limit to limit: from the far edge of the slopes on one side, with the"
                        + " margin of the plan, to that on the other."
                        + (has(flow, depths, "Dig out soft soil, up to")
                                ? " Soft soil is dug out under stone and shoulders, so much below"
                                        + " the earth as cut or stripped."
                                : "")
                        + (atLeast
                                ? " A probe hole ended in topsoil: these depths and amounts are"
                                        + " at least so much."
                                : ""));
        Listing heapPlaces = EarthListings.heapPlaces(places);
        if (!heapPlaces.rows().isEmpty()) {
            flow.table(
                    heapPlaces,
                    EarthListings.HEAPS_ARE_LOOSE
                            + " Each heap lies along the lane, its ends as flat as its"
                            + " sides, outside stakes and limits. Look at every place before the"
                            + " first load: the survey does not know gates, wet ground, or lines"
                            + " that nobody named.");
        }
        Listing heaps = EarthListings.heaps(earth);
        if (!heaps.rows().isEmpty()) {
            flow.table(heaps);
        }
        Listing areas = SectionListings.areas(sections);
        flow.table(
                areas,
                "Strip and put back: topsoil. Fill with edge: fill and edge refill together.");
        flow.table(
                VolumeListings.running(volumes),
                has(flow, areas, "Edge refill")
                        ? "Fill in these two tables holds the edge refill, which only closes the edge of a cut"
                                + " and is never ordered or balanced; everywhere else it is left out."
                        : "");
        flow.table(
                EarthListings.volumes(earth),
                "Used in this set: the mean area of two sections times the distance between them,"
                        + " carried along its own middle where the lane bends. Beside it the same"
                        + " without bends; with what runs out to nothing counted as a point; and the"
                        + " lane built of triangles on the triangles of the ground, without any"
                        + " section. That they agree is the check.");
        return flow.sheet();
    }

    /** Whether a column is shown, so that a note may speak of it. */
    private static boolean has(Flow flow, Listing listing, String head) {
        return flow.heads(listing).contains(head);
    }
}
