package lanewright.sheets.set;

import java.util.List;
import lanewright.measure.Assumption;
import lanewright.measure.Listing;
import lanewright.measure.UnitSystem;
import lanewright.planner.listing.FindingListings;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;
import org.jspecify.annotations.Nullable;

/** Every figure that was not measured, with its source. */
final class AssumptionsSheet {

    private AssumptionsSheet() {}

    static Sheet of(List<Assumption> assumptions, UnitSystem units, @Nullable Sheet before) {
        var flow =
                new Flow(
                        Paper.of(units),
                        units,
                        "Assumptions",
                        "What do the answers rest on?",
                        "These figures, which were not measured: each is yours, published, common"
                                + " practice or our choice.",
                        before);
        flow.para("Where you know better, tell whoever made this set; every figure in it follows.");
        for (FindingListings.Group group : FindingListings.Group.values()) {
            Listing some = FindingListings.assumptions(assumptions, group);
            if (!some.rows().isEmpty()) {
                flow.table(some);
            }
        }
        return flow.sheet();
    }
}
