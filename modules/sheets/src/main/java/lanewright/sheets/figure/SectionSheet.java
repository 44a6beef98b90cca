package lanewright.sheets.figure;

import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import lanewright.lane.shape.Layer;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.listing.SectionListings;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Gauge;
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

    /** Part of the sections that stand two in a row. */
    private static final double MOST = 0.93;

    /** No section is drawn higher than this, pt. */
    private static final double TALLEST = 230;

    private final List<Section> sections;
    private final DoubleFunction<TypicalSection> typical;
    private final UnitSystem units;
    private double across;
    private double stretch = STRETCH;

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
     * @param shapes the shapes as rows
     * @param answer what the sheet opens with
     */
    public static Sheet of(
            List<Section> sections,
            DoubleFunction<TypicalSection> typical,
            Listing shapes,
            UnitSystem units,
            String answer) {
        return new SectionSheet(sections, typical, units).sheet(shapes, answer);
    }

    private Sheet sheet(Listing shapes, String answer) {
        var flow = new Flow(Paper.of(units), units, "Cross-sections", "How is it shaped?", answer);
        double wide = (flow.width() - GAP) / 2;
        fit(wide, flow.width());
        flow.table(shapes);
        detail(flow);
        flow.head("Every section");
        String drawn =
                "Looking up-station, heights drawn "
                        + Words.fixed(stretch, 0)
                        + " times as large as widths. Thick line: finished lane. Dashed: earth as"
                        + " shaped. Lines: cut, dots: fill, short dashes: topsoil taken off, round"
                        + " marks: stone. Below each: where it meets the ground left and right"
                        + " (offset, height), and the finished height at the lane's line, in "
                        + Words.unit(Kind.HEIGHT, units)
                        + ".";
        flow.drawn(Gauge.of(Gauge.Use.STRETCH, drawn, stretch)).gap(4);
        int i = 0;
        while (i < sections.size()) {
            boolean pair =
                    i + 1 < sections.size()
                            && isNarrow(sections.get(i), wide)
                            && isNarrow(sections.get(i + 1), wide);
            row(flow, sections.subList(i, i + (pair ? 2 : 1)), wide);
            i += pair ? 2 : 1;
        }
        return flow.sheet();
    }

    /** One section drawn as large as the page is wide, with the names of what lies in it. */
    private void detail(Flow flow) {
        Section section = usual();
        var extent = SectionDrawing.Extent.of(section, BESIDE);
        double half = half(section);
        double large = flow.width() / 2 / half;
        double up = large * Math.min(STRETCH, TALLEST / ((extent.high() - extent.low()) * large));
        double tall = (extent.high() - extent.low()) * up + 24;
        TypicalSection shape = typical.apply(section.station());
        flow.figure(
                tall + 36,
                (pen, box) -> {
                    String says =
                            "One section enlarged: "
                                    + SectionListings.station(section).in(units)
                                    + ", heights drawn "
                                    + Words.fixed(up / large, 1)
                                    + " times as large as widths";
                    pen.gauge(
                            new Gauge(
                                    Gauge.Use.STRETCH,
                                    says,
                                    List.of(section.station(), up / large)),
                            box.x(),
                            box.y() + Type.NOTE,
                            Type.NOTE,
                            true,
                            Anchor.START);
                    var frame = new Box(box.x(), box.y() + 14, box.width(), tall);
                    Scale scale = Scale.in(frame, -half, extent.low() - 12 / up, large, up);
                    SectionDrawing.draw(section, shape, scale, pen, frame);
                    pen.frame(Role.HAIRLINE, frame);
                    legend(pen, shape, box.x(), frame.bottom() + 4);
                });
    }

    private void legend(Pen pen, TypicalSection shape, double left, double top) {
        double x = left;
        int count = shape.layers().size();
        for (int i = 0; i < count; i++) {
            Layer layer = shape.layers().get(i);
            String words =
                    Words.fine(Quantity.depth(layer.thickness()), units) + " " + layer.role();
            x = entry(pen, SectionDrawing.role(i, count), words, x, top);
        }
        x = entry(pen, Role.CUT, "cut", x, top);
        x = entry(pen, Role.FILL, "fill", x, top);
        x = entry(pen, Role.TOPSOIL, "topsoil off", x, top);
        entry(pen, Role.TOPSOIL_BACK, "topsoil back", x, top);
    }

    private static double entry(Pen pen, Role role, String words, double x, double top) {
        Box sample = new Box(x, top, 20, Type.NOTE);
        pen.fill(role, sample).frame(Role.HAIRLINE, sample);
        pen.words(Role.TEXT, words, x + 24, top + Type.NOTE - 1, Type.NOTE, Anchor.START);
        return x + 24 + Face.of(false).width(words, Type.NOTE) + 11;
    }

    /** The section whose area of earth moved is in the middle of all. */
    private Section usual() {
        List<Section> ordered =
                sections.stream()
                        .sorted(
                                Comparator.comparingDouble(
                                        s -> s.areas().cut().area() + s.areas().fill().area()))
                        .toList();
        return ordered.get(ordered.size() / 2);
    }

    private void row(Flow flow, List<Section> row, double column) {
        double tall = 0;
        for (Section section : row) {
            tall = Math.max(tall, HEAD + FOOT + height(section));
        }
        double wide = row.size() == 1 && !isNarrow(row.get(0), column) ? flow.width() : column;
        flow.figure(
                tall,
                (pen, box) -> {
                    for (int k = 0; k < row.size(); k++) {
                        double x = box.x() + k * (column + GAP);
                        one(pen, row.get(k), new Box(x, box.y(), wide, box.height()));
                    }
                });
    }

    private boolean isNarrow(Section section, double column) {
        return 2 * half(section) * across <= column;
    }

    private static double half(Section section) {
        var extent = SectionDrawing.Extent.of(section, BESIDE);
        return Math.max(Math.abs(extent.left()), Math.abs(extent.right()));
    }

    /**
     * One scale for all: as large as lets most sections stand two in a row, and the widest alone in
     * one.
     */
    private void fit(double column, double whole) {
        double[] halves = sections.stream().mapToDouble(SectionSheet::half).sorted().toArray();
        double most = halves[(int) (halves.length * MOST)];
        across = Math.min(column / 2 / most, whole / 2 / halves[halves.length - 1]);
        double tallest = 0.1;
        for (Section section : sections) {
            var extent = SectionDrawing.Extent.of(section, BESIDE);
            tallest = Math.max(tallest, extent.high() - extent.low());
        }
        if (tallest * across * STRETCH > TALLEST) {
            stretch = 1;
            across = Math.min(across, TALLEST / tallest);
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
        Scale scale =
                Scale.in(frame, -frame.width() / 2 / across, extent.low() - spare / 2, across, up);
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
        double dig = SectionListings.digAtLine(section);
        if (Double.isNaN(dig)) {
            return "";
        }
        Quantity by = Quantity.length(Math.abs(dig));
        return (dig >= 0 ? "dig " : "build up ") + Words.fine(by, units) + " at the line";
    }

    private String areas(Section section) {
        return "cut "
                + Words.fine(Quantity.area(section.areas().cut().area()), units)
                + " · fill "
                + Words.fine(Quantity.area(section.areas().fill().area()), units)
                + " · topsoil "
                + Words.fine(Quantity.area(section.areas().strip().area()), units)
                + " · stone "
                + Words.fine(Quantity.area(SectionListings.stone(section.areas())), units);
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
