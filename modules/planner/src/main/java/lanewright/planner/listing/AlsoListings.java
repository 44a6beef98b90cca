package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lanewright.earthwork.EarthworkReport;
import lanewright.measure.Finding;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.planner.work.WorkStep;

/** What this plan needs besides the stone of its layers, and what no order of stone holds. */
public final class AlsoListings {

    /** Findings that ask for something to be bought or built, and what that is. */
    private static final Map<String, String> ASKED = asked();

    private AlsoListings() {}

    private static Map<String, String> asked() {
        var asked = new LinkedHashMap<String, String>();
        asked.put("ditch-wants-checks", "Stone check dams or thick grass in ditches");
        asked.put("ditch-wants-lining", "Stone lining of ditches");
        asked.put("water-down-ditch", "More turn-outs of ditches, or pipes across");
        asked.put("water-down-lane", "Dips across the lane");
        return asked;
    }

    /**
     * The rows; none if nothing else is needed.
     *
     * @param findings that may ask for something
     * @param order the steps of the work, which may lay fabric
     * @param earth the earth, in which soft soil may be refilled
     */
    public static Listing of(List<Finding> findings, List<WorkStep> order, EarthworkReport earth) {
        var rows = new ArrayList<List<Saying>>();
        for (WorkStep step : order) {
            if (step.name().equals("fabric")) {
                rows.add(
                        List.of(
                                Listing.cell("Fabric"),
                                WorkListings.joined(step.amounts()),
                                Listing.cell("all along")));
            }
        }
        if (earth.refill().bank() > 0) {
            rows.add(
                    List.of(
                            Listing.cell("Fit earth or stone where soft soil is dug out"),
                            Saying.of(
                                    "{} packed, {} loose",
                                    Quantity.volume(earth.refill().compacted()),
                                    Quantity.volume(earth.refill().loose())),
                            Listing.cell("see the table of depths")));
        }
        for (Map.Entry<String, String> asked : ASKED.entrySet()) {
            rows.addAll(rows(findings, asked.getKey(), asked.getValue()));
        }
        return new Listing(
                "also-needed",
                "Also needed, and not in the stone to order",
                List.of(Column.words("What"), Column.words("How much"), Column.words("Where")),
                rows,
                0);
    }

    private static List<List<Saying>> rows(List<Finding> findings, String code, String what) {
        var places = new ArrayList<Saying>();
        double length = 0;
        for (Finding finding : findings) {
            Double from = finding.where().from();
            Double to = finding.where().to();
            if (finding.code().equals(code)) {
                Saying place = FindingListings.place(finding.where());
                if (!places.contains(place)) {
                    places.add(place);
                }
                length += from == null || to == null ? 0 : Math.abs(to - from);
            }
        }
        if (places.isEmpty()) {
            return List.of();
        }
        var pattern = new StringBuilder();
        var quantities = new ArrayList<Quantity>();
        for (Saying place : places) {
            pattern.append(pattern.isEmpty() ? "" : "; ").append(place.pattern());
            quantities.addAll(place.quantities());
        }
        return List.of(
                List.of(
                        Listing.cell(what),
                        length > 0
                                ? Saying.of("along {} in all", Quantity.length(length))
                                : Listing.cell("see the findings"),
                        new Saying(pattern.toString(), quantities)));
    }
}
