package lanewright.sheets.set;

import java.util.List;
import lanewright.measure.Assumption;
import lanewright.measure.UnitSystem;
import lanewright.planner.listing.FindingListings;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;

/** Every figure that was not measured, with its source. */
final class AssumptionsSheet {

    private AssumptionsSheet() {}

    static Sheet of(List<Assumption> assumptions, UnitSystem units) {
        var flow =
                new Flow(
                        Paper.of(units),
                        units,
                        "Assumptions",
                        "What do the answers rest on?",
                        "These things, which were not measured: each is yours, published,"
                                + " common practice, or a rule of this program.");
        flow.para(
                "Change one in the plan where you know better; every figure in this set follows.");
        if (!assumptions.isEmpty()) {
            flow.table(FindingListings.assumptions(assumptions));
        }
        return flow.sheet();
    }
}
