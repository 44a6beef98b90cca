package lanewright.sheets;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Drawing;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;

/** A sheet with every role, every kind of block and a table over several pages. */
public final class Swatches {

    private Swatches() {}

    /** Its pages. */
    public static List<Drawing> pages(UnitSystem units) {
        var flow =
                new Flow(
                        Paper.of(units),
                        units,
                        "Swatches",
                        "How does each role look?",
                        "Each has a colour and a pattern or a line of its own, from "
                                + Quantity.station(12).in(units)
                                + " to "
                                + Quantity.station(320).in(units)
                                + ".");
        flow.entry(Flow.Sign.LOOK, "Sits 1.4 ft deep at 3+10: needs a pipe", "Put it there.");
        flow.entry(Flow.Sign.BOX, "Mark the buried lines", "A ½ ° ± — … × ² ³ and Ωß.");
        flow.figure(10 + 24 * ((Role.values().length + 3) / 4), Swatches::roles);
        flow.head("A long table");
        flow.table(listing(70));
        return Sheet.finished(
                        List.of(flow.sheet()), "Marrow Fold lane", "", "Local rules come first.")
                .stream()
                .map(Sheet.Page::drawing)
                .toList();
    }

    private static void roles(Pen pen, Box box) {
        pen.frame(Role.FRAME, box);
        int at = 0;
        for (Role role : Role.values()) {
            double x = box.x() + 8 + (at % 4) * (box.width() - 8) / 4;
            double y = box.y() + 6 + (at / 4) * 24;
            pen.area(role, Outline.box(x, y, 40, 20));
            pen.line(role, x + 4, y + 20, x + 20, y + 2, x + 38, y + 16);
            pen.words(
                    Role.NOTE,
                    role.name().toLowerCase(java.util.Locale.ROOT),
                    x + 44,
                    y + 14,
                    6,
                    Anchor.START);
            at++;
        }
        var inside = new Pen();
        inside.area(Role.WATER, Outline.circle(box.right() - 30, box.bottom() - 10, 40, 40));
        pen.framed(box, inside);
        pen.words(
                Role.TEXT,
                "turned words",
                box.right() - 40,
                box.bottom() - 60,
                9,
                true,
                Anchor.START,
                -40);
    }

    /** Rows of quantities. */
    public static Listing listing(int rows) {
        var cells = new ArrayList<List<Saying>>();
        for (int i = 0; i < rows; i++) {
            cells.add(
                    List.of(
                            Listing.cell(Quantity.station(i * 7.62)),
                            Listing.cell(Quantity.area(i * 0.31)),
                            Listing.cell(Quantity.volume(i * i * 0.73)),
                            Listing.cell(
                                    "left side, " + i + " in all, with a longer note to break"),
                            i % 3 == 0 ? Listing.BLANK : Listing.cell(Quantity.depth(0.1 + i))));
        }
        cells.add(
                List.of(
                        Listing.cell("whole"),
                        Listing.BLANK,
                        Listing.cell(Quantity.volume(1234567)),
                        Listing.BLANK,
                        Listing.BLANK));
        return new Listing(
                "swatches",
                "Rows",
                List.of(
                        Listing.Column.words("Station"),
                        Listing.Column.of("Cut", Kind.AREA),
                        Listing.Column.of("Running total of cut", Kind.VOLUME),
                        Listing.Column.words("Note"),
                        Listing.Column.of("Depth", Kind.DEPTH)),
                cells,
                1);
    }
}
