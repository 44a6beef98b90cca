package lanewright.sheets.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.sheets.drawing.Mark;
import org.junit.jupiter.api.Test;

class FlowTest {

    private static final Paper PAPER = new Paper(600, 500);

    private static Flow flow(Sheet before) {
        return new Flow(PAPER, UnitSystem.METRIC, "Made up", "Made up", "", before);
    }

    private static Listing listing(String title, int rows, int totals) {
        var cells = new ArrayList<List<Saying>>();
        for (int i = 0; i < rows; i++) {
            cells.add(List.of(Listing.cell("row"), Listing.cell(Quantity.length(100 + i))));
        }
        return new Listing(
                "made-up",
                title,
                List.of(Listing.Column.words("What"), Listing.Column.of("How long", Kind.LENGTH)),
                cells,
                totals);
    }

    private static List<String> words(List<Mark> page) {
        return page.stream()
                .filter(Mark.Words.class::isInstance)
                .map(mark -> ((Mark.Words) mark).text())
                .toList();
    }

    private static double base(List<Mark> page, String text) {
        return page.stream()
                .filter(mark -> mark instanceof Mark.Words words && words.text().equals(text))
                .mapToDouble(mark -> ((Mark.Words) mark).y())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aSheetBeginsOnTheLastPageBeforeItIfMuchOfThatIsFree() {
        Sheet little = flow(null).table(listing("Little", 4, 0)).sheet();
        Sheet after = flow(little).sheet();
        assertTrue(after.joins());
        assertEquals(1, Sheet.count(List.of(little, after)));
        List<Sheet.Page> pages = Sheet.finished(List.of(little, after), "plan", "", "caution");
        assertEquals(1, pages.size());
        assertEquals(List.of("Made up", "Made up"), pages.get(0).begins());

        Sheet much = flow(null).gap(300).para("down here").sheet();
        assertFalse(flow(much).sheet().joins());
        // Other paper cannot share a page.
        assertFalse(
                new Flow(new Paper(500, 600), UnitSystem.METRIC, "Across", "Across", "", little)
                        .sheet()
                        .joins());
    }

    @Test
    void aHeadGoesToTheNextPageWithTheTableBelowIt() {
        // Room for head and note, but not for the first rows as well.
        Sheet sheet =
                flow(null).gap(290).head("The head", "A note.", listing("A table", 6, 0)).sheet();
        assertEquals(2, sheet.pages().size());
        assertFalse(words(sheet.pages().get(0)).contains("The head"));
        assertTrue(words(sheet.pages().get(1)).contains("The head"));
        assertTrue(words(sheet.pages().get(1)).contains("A table"));
    }

    @Test
    void narrowTablesStandSideBySide() {
        Sheet sheet =
                flow(null).tables(List.of(listing("One", 6, 0), listing("Two", 2, 0))).sheet();
        List<Mark> page = sheet.pages().get(0);
        assertEquals(base(page, "One"), base(page, "Two"));
        Sheet.Page drawn = Sheet.finished(List.of(sheet), "plan", "", "caution").get(0);
        assertEquals(List.of(), LayoutCheck.of(drawn.drawing()));
    }

    @Test
    void aSumIsNotLeftAloneOnAPage() {
        // Twenty rows and their sum do not fit; two rows go along with the sum.
        for (double gap = 60; gap < 160; gap += 3) {
            Sheet sheet = flow(null).gap(gap).table(listing("Summed", 21, 1)).sheet();
            if (sheet.pages().size() > 1) {
                List<String> next = words(sheet.pages().get(1));
                assertTrue(next.contains("118.00"), "gap " + gap + ": " + next);
            }
        }
    }
}
