package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.List;
import lanewright.earthwork.EarthworkReport;
import lanewright.lane.section.Section;
import lanewright.lane.volume.LaneVolumes;
import lanewright.measure.Finding;
import lanewright.measure.Listing;
import lanewright.measure.UnitSystem;
import lanewright.planner.listing.EarthListings;
import lanewright.planner.listing.SectionListings;
import lanewright.planner.listing.VolumeListings;
import lanewright.planner.work.HeapPlaces;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;

/** How much topsoil and dirt: the whole first, then section by section with running totals. */
final class VolumeSheet {

    private VolumeSheet() {}

    static Sheet of(
            EarthworkReport earth,
            HeapPlaces places,
            LaneVolumes volumes,
            List<Section> sections,
            UnitSystem units,
            String answer) {
        var flow =
                new Flow(Paper.of(units), units, "Volumes", "How much topsoil and dirt?", answer);
        var findings = new ArrayList<Finding>(earth.findings());
        findings.addAll(places.findings());
        for (Finding finding : findings) {
            if (finding.level() != Finding.Level.NOTE) {
                flow.entry(Flow.Sign.LOOK, finding.says().in(units), finding.remedy().in(units));
            }
        }
        flow.table(EarthListings.balance(earth));
        flow.note(
                "Balanced as it lies (bank), by the published change of volume of the soil named in"
                        + " the plan. Topsoil, edge refill and soil that does not bear never make"
                        + " fill.");
        Listing heapPlaces = EarthListings.heapPlaces(places);
        if (!heapPlaces.rows().isEmpty()) {
            flow.table(heapPlaces);
            flow.note(
                    "Stripped topsoil, loose. Each heap lies along the lane, its ends as flat as its"
                            + " sides, outside stakes and limits. Look at every place before the"
                            + " first load: the survey does not know gates, wet ground, or lines"
                            + " that nobody named.");
        }
        Listing heaps = EarthListings.heaps(earth);
        if (!heaps.rows().isEmpty()) {
            flow.table(heaps);
        }
        flow.table(EarthListings.volumes(earth));
        flow.note(
                "End areas: the mean of two sections times the distance between them; the figure"
                        + " used carries each area along its own centroid where the lane bends."
                        + " True solid: the same lane built up of triangles on the triangles of the"
                        + " ground, without any section. Edge refill only closes the edge of a cut:"
                        + " it is part of fill here, and is never ordered or balanced.");
        flow.table(SectionListings.areas(sections));
        flow.table(VolumeListings.running(volumes));
        return flow.sheet();
    }
}
