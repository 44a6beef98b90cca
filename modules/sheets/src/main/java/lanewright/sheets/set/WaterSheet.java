package lanewright.sheets.set;

import java.util.List;
import lanewright.drainage.WaterReport;
import lanewright.measure.Finding;
import lanewright.measure.Listing;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.planner.listing.WaterListings;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;

/** Where water sits, where it comes in and where each ditch sends it. */
final class WaterSheet {

    private WaterSheet() {}

    static Sheet of(WaterReport water, UnitSystem units, String answer) {
        var flow = new Flow(Paper.of(units), units, "Water", "Where does water go?", answer);
        List<Finding> look =
                water.findings().stream().filter(f -> f.level() != Finding.Level.NOTE).toList();
        for (Finding finding : look) {
            Told.brief(flow, finding, units);
        }
        table(flow, WaterListings.pools(water));
        flow.note(
                "Full to where it spills, measured on the surveyed ground and the lane's built"
                        + " surface. Too shallow or too small to list: "
                        + Quantity.count(water.smallBefore()).in(units)
                        + " before, "
                        + Quantity.count(water.smallAfter()).in(units)
                        + " with the lane. The size of a pipe is not worked out here: ask whoever"
                        + " sizes pipes where you build, with the land that drains to it.");
        table(flow, WaterListings.gone(water));
        table(flow, WaterListings.inflows(water));
        table(flow, WaterListings.ditches(water));
        table(flow, WaterListings.sags(water));
        table(flow, WaterListings.descents(water));
        return flow.sheet();
    }

    private static void table(Flow flow, Listing listing) {
        if (!listing.rows().isEmpty()) {
            flow.table(listing);
        }
    }
}
