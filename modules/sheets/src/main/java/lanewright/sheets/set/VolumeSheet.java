package lanewright.sheets.set;

import java.util.List;
import lanewright.lane.section.Section;
import lanewright.lane.volume.LaneVolumes;
import lanewright.measure.Listing;
import lanewright.measure.UnitSystem;
import lanewright.planner.listing.SectionListings;
import lanewright.planner.listing.VolumeListings;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;

/** How much topsoil and dirt: the whole first, then section by section with running totals. */
final class VolumeSheet {

    private VolumeSheet() {}

    /**
     * The sheet.
     *
     * @param balance what the earth comes to: states, balance, heaps; may be empty
     */
    static Sheet of(
            LaneVolumes volumes,
            List<Section> sections,
            List<Listing> balance,
            UnitSystem units,
            String answer) {
        var flow =
                new Flow(Paper.of(units), units, "Volumes", "How much topsoil and dirt?", answer);
        balance.forEach(flow::table);
        flow.table(VolumeListings.totals(volumes));
        flow.note(
                "Cut and topsoil strip are measured as they lie, fill and stone compacted in place."
                        + " Edge refill closes the edge of a cut: it is part of fill here and never"
                        + " ordered or balanced. Average end area counts half of a box where a"
                        + " quantity runs out to nothing; a pyramid would fill a third.");
        flow.table(SectionListings.areas(sections));
        flow.table(VolumeListings.running(volumes));
        return flow.sheet();
    }
}
