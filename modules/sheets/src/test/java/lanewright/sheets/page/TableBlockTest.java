package lanewright.sheets.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Pen;
import org.junit.jupiter.api.Test;

class TableBlockTest {

    private static final Saying NONE = Listing.BLANK;

    private static Saying metres(double value) {
        return Listing.cell(Quantity.length(value));
    }

    private static Saying volume(double value) {
        return Listing.cell(Quantity.volume(value));
    }

    @Test
    void aColumnThatIsLeftOutTakesItsHeadAlong() {
        var listing =
                new Listing(
                        "made-up",
                        "Made up",
                        List.of(
                                Column.words("Side"),
                                Column.of("Blank", Kind.LENGTH),
                                Column.of("Near", Kind.LENGTH),
                                Column.words("Never said"),
                                Column.of("Nothing", Kind.VOLUME),
                                Column.of("Far", Kind.LENGTH),
                                Column.of("Some", Kind.VOLUME)),
                        List.of(
                                List.of(
                                        Listing.cell("left"),
                                        NONE,
                                        metres(2),
                                        NONE,
                                        volume(0.0),
                                        metres(7.25),
                                        volume(0)),
                                List.of(
                                        Listing.cell("right"),
                                        NONE,
                                        metres(3),
                                        NONE,
                                        volume(0.04),
                                        NONE,
                                        volume(12))),
                        0);
        assertEquals(
                List.of("Side left right", "Near m 2.00 3.00", "Far m 7.25", "Some m³ 0.0 12.0"),
                read(new TableBlock(listing, UnitSystem.METRIC, 500)));
    }

    /** What stands below one another, read down each column, from left to right. */
    private static List<String> read(TableBlock block) {
        var pen = new Pen();
        block.drawHead(pen, 0, 0);
        double y = block.headHeight();
        for (int row = 0; row < block.rows(); row++) {
            block.drawRow(pen, row, 0, y);
            y += block.rowHeight(row);
        }
        Map<Double, String> columns = new TreeMap<>();
        for (Mark mark : pen.marks()) {
            if (mark instanceof Mark.Words words) {
                // An eighth of a point tells a column from the next and not from itself.
                double x = Math.rint(words.x() * 8) + (words.anchor() == Anchor.END ? 0 : 0.5);
                columns.merge(x, words.text(), (above, below) -> above + " " + below);
            }
        }
        return List.copyOf(columns.values());
    }
}
