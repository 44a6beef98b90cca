package lanewright.sheets.set;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lanewright.measure.Listing;
import lanewright.measure.UnitSystem;
import lanewright.planner.listing.FindingListings;
import lanewright.planner.pipes.PipeStake;
import lanewright.planner.run.DrawnSheet;
import lanewright.planner.run.Outcome;
import lanewright.planner.run.OutcomeJson;
import lanewright.sheets.drawing.Drawing;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.folder.CsvTable;
import lanewright.sheets.folder.GeoJson;
import lanewright.sheets.folder.PlanFolder.Entry;
import lanewright.sheets.paint.PdfBook;
import lanewright.sheets.paint.SvgPicture;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;

/** Every file that a plan comes to, ready for its folder. */
public final class PlanFiles {

    /** A printer's point, 1/72 inch, m. */
    private static final double POINT = 0.0254 / 72;

    private PlanFiles() {}

    /** Loads the fonts, which takes a while the first time; for a thread that has time. */
    public static void ready() {
        Face.of(false);
        Face.of(true);
    }

    /**
     * The outcome as JSON, the sheets as one PDF, the tables as CSV, the map layers as GeoJSON,
     * plan and profile as SVG.
     *
     * @throws SurveyException if the survey's frame cannot bring a place to longitude and latitude
     */
    public static List<Entry> of(Outcome outcome) throws SurveyException {
        UnitSystem units = outcome.plan().units();
        List<PdfBook.Leaf> pages = PlanSet.of(outcome);
        var files = new ArrayList<Entry>();
        files.add(Entry.bytes("outcome.json", OutcomeJson.of(outcome, drawn(pages))));
        files.add(new Entry("sheets.pdf", out -> PdfBook.write(outcome.plan().name(), pages, out)));
        for (PdfBook.Leaf page : pages) {
            if (page.name().equals("Plan") || page.name().equals("Profile")) {
                String name = page.name().equals("Plan") ? "plan" : "profile";
                String title = outcome.plan().name() + ": " + name;
                files.add(
                        new Entry(
                                "pictures/" + name + ".svg",
                                out -> out.write(utf8(SvgPicture.of(title, page.drawing())))));
            }
        }
        for (Listing listing : OutcomeJson.listings(outcome)) {
            if (!listing.rows().isEmpty()) {
                files.add(
                        Entry.text(
                                "tables/" + listing.name() + ".csv", CsvTable.of(listing, units)));
            }
        }
        files.add(
                Entry.text(
                        "tables/findings.csv",
                        CsvTable.of(FindingListings.findings(outcome.findings()), units)));
        files.add(
                Entry.text(
                        "tables/assumptions.csv",
                        CsvTable.of(FindingListings.assumptions(outcome.assumptions()), units)));
        files.addAll(maps(outcome));
        return files;
    }

    /** What the pages say about how they are drawn. */
    private static List<DrawnSheet> drawn(List<PdfBook.Leaf> pages) {
        var sheets = new ArrayList<DrawnSheet>();
        String name = "";
        for (PdfBook.Leaf page : pages) {
            name = page.name().isEmpty() ? name : page.name();
            var said = new ArrayList<DrawnSheet.Said>();
            for (Gauge gauge : page.drawing().gauges()) {
                String what = gauge.use().name().toLowerCase(Locale.ROOT).replace('_', ' ');
                said.add(new DrawnSheet.Said(what, gauge.words(), gauge.values()));
            }
            Drawing drawing = page.drawing();
            sheets.add(
                    new DrawnSheet(
                            sheets.size() + 1,
                            name,
                            drawing.width() * POINT,
                            drawing.height() * POINT,
                            said));
        }
        return sheets;
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static List<Entry> maps(Outcome outcome) throws SurveyException {
        Survey survey = outcome.survey();
        var beside = new Beside(outcome.design().alignment(), outcome.sections().sections());
        return List.of(
                map("lane", survey, MapLayers.lane(beside)),
                map("limits", survey, MapLayers.limits(beside)),
                map("catch-lines", survey, MapLayers.catchLines(beside)),
                map("wet-places", survey, MapLayers.wetPlaces(outcome.water())),
                map("low-spots", survey, MapLayers.lowSpots(outcome.water())),
                map("heaps", survey, MapLayers.heaps(outcome.heaps())),
                map(
                        "stakes",
                        survey,
                        MapLayers.stakes(
                                outcome.stakes(),
                                PipeStake.of(
                                        outcome.design().alignment(),
                                        outcome.ground(),
                                        outcome.pipes()))));
    }

    private static Entry map(String name, Survey survey, List<GeoJson.Feature> features)
            throws SurveyException {
        return Entry.bytes("maps/" + name + ".geojson", GeoJson.of(survey, features));
    }
}
