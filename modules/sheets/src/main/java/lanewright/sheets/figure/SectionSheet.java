package lanewright.sheets.figure;

import java.util.List;
import java.util.function.DoubleFunction;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Kind;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.listing.SectionListings;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;
import lanewright.sheets.page.Type;
import org.jspecify.annotations.Nullable;

/** Every cross-section, two in a row, all at one scale, with areas and catch points in figures. */
public final class SectionSheet {

    private static final double GAP = 16;
    private static final double HEAD = 2 * Type.NOTE * Type.LEAD + 4;
    private static final double FOOT = Type.NOTE * Type.LEAD + 4;
    private static final double STRETCH = 2;

    /** Ground shown beyond the limits of work, m. */
    private static final double BESIDE = 0.6;

    /** No section is drawn higher than this, pt. */
    private static final double TALLEST = 190;

    private final List<Section> sections;
    private final DoubleFunction<TypicalSection> typical;
    private final UnitSystem units;
    private double across;
    private double stretch = STRETCH;
    private double left;

    private SectionSheet(
            List<Section> sections, DoubleFunction<TypicalSection> typical, UnitSystem units) {
        this.sections = sections;
        this.typical = typical;
        this.units = units;
    }

    /**
     * The sheet.
     *
     * @param sections in station order
     * @param typical the shape that holds at a station, m
     * @param answer what the sheet opens with
     */
    public static Sheet of(
            List<Section> sections,
            DoubleFunction<TypicalSection> typical,
            UnitSystem units,
            String answer) {
        return new SectionSheet(sections, typical, units).sheet(answer);
    }

    private Sheet sheet(String answer) {
        var flow = new Flow(Paper.of(units), units, "Cross-sections", "How is it shaped?", answer);
        double wide = (flow.width() - GAP) / 2;
        fit(wide);
        flow.note(
                "Looking up-station, heights drawn "
                        + Words.fixed(stretch, 0)
                        + " times as large as widths. Thick line: finished lane. Dashed: earth as"
                        + " shaped. Lines: cut, dots: fill, short dashes: topsoil taken off, round"
                        + " marks: stone. Below each: where it meets the ground left and right"
                        + " (offset, height), and the finished height at the lane's line, in "
                        + Words.unit(Kind.HEIGHT, units)
                        + ".");
        for (int i = 0; i < sections.size(); i += 2) {
            List<Section> row = sections.subList(i, Math.min(i + 2, sections.size()));
            double tall = HEAD + FOOT;
            for (Section section : row) {
                tall = Math.max(tall, HEAD + FOOT + height(section));
            }
            flow.figure(
                    tall,
                    (pen, box) -> {
                        for (int k = 0; k < row.size(); k++) {
                            one(
                                    pen,
                                    row.get(k),
                                    new Box(
                                            box.x() + k * (wide + GAP),
                                            box.y(),
                                            wide,
                                            box.height()));
                        }
                    });
        }
        return flow.sheet();
    }

    private void fit(double wide) {
        double right = Double.NEGATIVE_INFINITY;
        left = Double.POSITIVE_INFINITY;
        double tallest = 0.1;
        for (Section section : sections) {
            var extent = SectionDrawing.Extent.of(section, BESIDE);
            left = Math.min(left, extent.left());
            right = Math.max(right, extent.right());
            tallest = Math.max(tallest, extent.high() - extent.low());
        }
        double half = Math.max(Math.abs(left), Math.abs(right));
        left = -half;
        across = wide / (2 * half);
        if (tallest * across * STRETCH > TALLEST) {
            stretch = 1;
            across = Math.min(across, TALLEST / tallest);
            left = -wide / 2 / across;
        }
    }

    private double height(Section section) {
        var extent = SectionDrawing.Extent.of(section, BESIDE);
        return (extent.high() - extent.low()) * across * stretch + 14;
    }

    private void one(Pen pen, Section section, Box box) {
        double base = box.y() + Type.NOTE;
        String station = SectionListings.station(section).in(units);
        pen.bold(Role.TEXT, station, box.x(), base, Type.NOTE, Anchor.START);
        pen.words(Role.TEXT, dig(section), box.right(), base, Type.NOTE, Anchor.END);
        pen.words(
                Role.NOTE,
                Type.cut(areas(section), Type.NOTE, false, box.width()),
                box.x(),
                base + Type.NOTE * Type.LEAD,
                Type.NOTE,
                Anchor.START);
        var frame = new Box(box.x(), box.y() + HEAD, box.width(), box.height() - HEAD - FOOT);
        var extent = SectionDrawing.Extent.of(section, BESIDE);
        double up = across * stretch;
        double spare = frame.height() / up - (extent.high() - extent.low());
        Scale scale = Scale.in(frame, left, extent.low() - spare / 2, across, up);
        SectionDrawing.draw(section, typical.apply(section.station()), scale, pen, frame);
        pen.line(Role.GRID, scale.x(0), frame.y(), scale.x(0), frame.bottom());
        pen.frame(Role.HAIRLINE, frame);
        double foot = frame.bottom() + Type.NOTE + 2;
        pen.words(Role.NOTE, end(section.left()), box.x(), foot, Type.NOTE, Anchor.START);
        pen.words(
                Role.TEXT,
                Words.number(Quantity.height(section.profileHeight()), units),
                scale.x(0),
                foot,
                Type.NOTE,
                Anchor.MIDDLE);
        pen.words(Role.NOTE, end(section.right()), box.right(), foot, Type.NOTE, Anchor.END);
    }

    private String dig(Section section) {
        double dig = section.stripped().at(0) - section.subgrade().at(0);
        if (Double.isNaN(dig)) {
            return "";
        }
        Quantity by = Quantity.length(Math.abs(dig));
        return (dig >= 0 ? "dig " : "build up ") + by.in(units) + " at the line";
    }

    private String areas(Section section) {
        return "cut "
                + Quantity.area(section.areas().cut().area()).in(units)
                + " · fill "
                + Quantity.area(section.areas().fill().area()).in(units)
                + " · topsoil "
                + Quantity.area(section.areas().strip().area()).in(units)
                + " · stone "
                + Quantity.area(SectionListings.stone(section.areas())).in(units);
    }

    private String end(SideResult side) {
        @Nullable Corner corner = side.catchPoint();
        if (corner == null) {
            return "no catch point";
        }
        return Words.number(Quantity.offset(corner.offset()), units)
                + ", "
                + Words.number(Quantity.height(corner.height()), units);
    }
}
