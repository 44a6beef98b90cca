package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
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

/**
 * The cross-sections: each shape once at its true proportions and with all its measures, then the
 * sections along the lane, all at one scale, with areas and the places where they meet the ground.
 */
public final class SectionSheet {

    private static final double GAP = 16;
    private static final double LINE = Type.NOTE * Type.LEAD;
    private static final double HEAD = 4;
    private static final double FOOT = LINE + 4;
    private static final double STRETCH = 2;

    /** Ground shown beyond the limits of work, m. */
    private static final double BESIDE = 0.6;

    /** Areas and heights nearer than this are the same, m² and m. */
    private static final double SAME = 1e-3;

    /** Ground shown beyond the slopes of a section with its measures, m. */
    private static final double CLOSE = 0.3;

    /** Part of the sections that stand two in a row. */
    private static final double MOST = 0.93;

    /** If the widest is wider than most by less than this, it stands in a row with another too. */
    private static final double LITTLE = 1.3;

    /** No section is drawn higher than this, pt. */
    private static final double TALLEST = 230;

    /** Words above and below a section with its measures, pt. */
    private static final double MEASURES = 54;

    /** Water that ends so near a section is shown in it if it reaches its height, m. */
    private static final double NEAR = 0.5;

    /** At least so wide is the room for the words of a section, pt. */
    private static final double WORDS = 250;

    private final List<Section> sections;
    private final DoubleFunction<TypicalSection> typical;
    private final double interval;
    private final List<ProfileDrawing.Pool> pools;
    private final UnitSystem units;
    private double across;
    private double stretch = STRETCH;

    private SectionSheet(
            List<Section> sections,
            DoubleFunction<TypicalSection> typical,
            double interval,
            List<ProfileDrawing.Pool> pools,
            UnitSystem units) {
        this.sections = sections;
        this.typical = typical;
        this.interval = interval;
        this.pools = pools;
        this.units = units;
    }

    /**
     * The sheet.
     *
     * @param sections in station order
     * @param typical the shape that holds at a station, m
     * @param interval between sections that the plan asks for, m
     * @param pools water that stands with the lane built
     * @param shapes the shapes as rows
     * @param answer what the sheet opens with
     */
    public static Sheet of(
            List<Section> sections,
            DoubleFunction<TypicalSection> typical,
            double interval,
            List<ProfileDrawing.Pool> pools,
            Listing shapes,
            UnitSystem units,
            String answer) {
        return new SectionSheet(sections, typical, interval, pools, units).sheet(shapes, answer);
    }

    private Sheet sheet(Listing shapes, String answer) {
        var flow = new Flow(Paper.of(units), units, "Cross-sections", "How is it shaped?", answer);
        double wide = (flow.width() - GAP) / 2;
        List<Section> drawn = drawn();
        fit(drawn, wide, flow.width());
        flow.table(shapes);
        for (Section section : usual()) {
            detail(flow, section);
        }
        flow.head("Sections along the lane");
        String says =
                "At the road, every "
                        + Quantity.length(interval).in(units)
                        + ", and where a side changes; looking up-station, away from the road, with"
                        + " left on the left. Heights drawn "
                        + Words.fixed(stretch, 0)
                        + " times as large as widths. Thick line: finished lane. Dashed line under"
                        + " the stone: earth as shaped. The filled areas are named in the drawing"
                        + " above. Below each: how far out from the lane's line the slopes meet the"
                        + " ground and at what height, and the finished height at the line, in "
                        + Words.unit(Kind.HEIGHT, units)
                        + ".";
        flow.drawn(Gauge.of(Gauge.Use.STRETCH, says, stretch)).gap(4);
        int i = 0;
        while (i < drawn.size()) {
            boolean pair =
                    i + 1 < drawn.size()
                            && isNarrow(drawn.get(i), wide)
                            && isNarrow(drawn.get(i + 1), wide);
            row(flow, drawn.subList(i, i + (pair ? 2 : 1)), wide);
            i += pair ? 2 : 1;
        }
        return flow.sheet();
    }

    /**
     * The sections that are drawn: both ends, every interval, and where a side becomes another
     * kind. One that stands twice at a station is drawn twice only if the two differ.
     */
    private List<Section> drawn() {
        var drawn = new ArrayList<Section>();
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            boolean ends = i == 0 || i == sections.size() - 1;
            boolean round = Math.abs(Math.IEEEremainder(section.station(), interval)) < 1e-6;
            boolean jump = section.face() != Section.Face.SINGLE;
            boolean changed =
                    !drawn.isEmpty() && !kinds(section).equals(kinds(drawn.get(drawn.size() - 1)));
            boolean again =
                    section.face() == Section.Face.AFTER && isAlike(section, other(section));
            if (!again && (ends || round || jump || changed)) {
                drawn.add(section);
            }
        }
        return drawn;
    }

    private static String kinds(Section section) {
        return "left "
                + SectionListings.kind(section.left())
                + ", right "
                + SectionListings.kind(section.right());
    }

    /** Whether two sections at one station would make the same picture. */
    private static boolean isAlike(Section a, Section b) {
        return Math.abs(a.areas().cut().area() - b.areas().cut().area()) < SAME
                && Math.abs(a.areas().fill().area() - b.areas().fill().area()) < SAME
                && Math.abs(a.profileHeight() - b.profileHeight()) < SAME;
    }

    /** The other section at the same station; the section itself if it stands alone. */
    private Section other(Section section) {
        int at = sections.indexOf(section);
        return switch (section.face()) {
            case SINGLE -> section;
            case BEFORE -> at + 1 < sections.size() ? sections.get(at + 1) : section;
            case AFTER -> at > 0 ? sections.get(at - 1) : section;
        };
    }

    /** What becomes different from one section to the other at its station. */
    private static String change(Section before, Section after) {
        String left = change("left", before.left(), after.left());
        String right = change("right", before.right(), after.right());
        if (left.isEmpty() && right.isEmpty()) {
            return "the shape changes";
        }
        return left.isEmpty() || right.isEmpty() ? left + right : left + " and " + right;
    }

    private static String change(String side, SideResult before, SideResult after) {
        if (before.kind() == after.kind()) {
            return "";
        }
        if (before.kind() == SideResult.Kind.DITCH) {
            return "the " + side + " ditch ends";
        }
        if (after.kind() == SideResult.Kind.DITCH) {
            return "the " + side + " ditch begins";
        }
        return "the "
                + side
                + " side goes from "
                + SectionListings.kind(before)
                + " to "
                + SectionListings.kind(after);
    }

    /** For each shape the section whose area of earth moved is in the middle of all. */
    private List<Section> usual() {
        var shapes = new ArrayList<TypicalSection>();
        var usual = new ArrayList<Section>();
        for (Section section : sections) {
            TypicalSection shape = typical.apply(section.station());
            if (!shapes.contains(shape)) {
                shapes.add(shape);
            }
        }
        for (TypicalSection shape : shapes) {
            List<Section> ordered =
                    sections.stream()
                            .filter(s -> typical.apply(s.station()).equals(shape))
                            .sorted(
                                    Comparator.comparingDouble(
                                            s -> s.areas().cut().area() + s.areas().fill().area()))
                            .toList();
            usual.add(ordered.get(ordered.size() / 2));
        }
        return usual;
    }

    /** One section at its true proportions, as wide as the page, with its measures. */
    private void detail(Flow flow, Section section) {
        var extent = SectionDrawing.Extent.of(section, CLOSE);
        double large = Math.min(flow.width() / extent.width(), TALLEST / extent.tall());
        double tall = extent.tall() * large + 2 * MEASURES;
        TypicalSection shape = typical.apply(section.station());
        flow.figure(
                tall + 36,
                (pen, box) -> {
                    pen.bold(
                            Role.TEXT,
                            "True to scale, with its measures: the lane at "
                                    + Words.fine(Quantity.station(section.station()), units),
                            box.x(),
                            box.y() + Type.NOTE,
                            Type.NOTE,
                            Anchor.START);
                    var frame = new Box(box.x(), box.y() + 14, box.width(), tall);
                    double spare = frame.width() / large - extent.width();
                    Scale scale =
                            Scale.in(
                                    frame,
                                    extent.left() - spare / 2,
                                    extent.low() - MEASURES / large,
                                    large,
                                    large);
                    Map<Role, Between.Ring> areas =
                            SectionDrawing.draw(section, shape, at(section), scale, pen, frame);
                    pen.frame(Role.FRAME, frame);
                    new Measures(section, shape, units, scale, frame).draw(pen, areas);
                    legend(pen, shape, areas, box.x(), frame.bottom() + 4, box.width());
                });
    }

    private void legend(
            Pen pen,
            TypicalSection shape,
            Map<Role, Between.Ring> areas,
            double left,
            double top,
            double width) {
        var entries = new ArrayList<Map.Entry<Role, String>>();
        int count = shape.layers().size();
        for (int i = 0; i < count; i++) {
            Layer layer = shape.layers().get(i);
            entries.add(
                    Map.entry(
                            SectionDrawing.role(i, count),
                            Quantity.depth(layer.thickness()).in(units) + " " + layer.role()));
        }
        Measures.NAMES.forEach(
                (role, words) -> {
                    if (areas.containsKey(role) || ANYWHERE.contains(role)) {
                        entries.add(Map.entry(role, words));
                    }
                });
        double x = left;
        double y = top;
        for (Map.Entry<Role, String> entry : entries) {
            double wide = 24 + Face.of(false).width(entry.getValue(), Type.NOTE) + 11;
            if (x + wide > left + width) {
                x = left;
                y += LINE;
            }
            Box sample = new Box(x, y, 20, Type.NOTE);
            pen.fill(entry.getKey(), sample).frame(Role.HAIRLINE, sample);
            pen.words(
                    Role.TEXT,
                    entry.getValue(),
                    x + 24,
                    y + Type.NOTE - 1,
                    Type.NOTE,
                    Anchor.START);
            x += wide;
        }
    }

    /** Areas that some section will show, whatever the enlarged one does. */
    private static final List<Role> ANYWHERE =
            List.of(Role.CUT, Role.FILL, Role.TOPSOIL, Role.TOPSOIL_BACK);

    private List<ProfileDrawing.Pool> at(Section section) {
        return pools.stream()
                .filter(
                        pool ->
                                section.station() >= pool.from() - NEAR
                                        && section.station() <= pool.to() + NEAR)
                .toList();
    }

    private void row(Flow flow, List<Section> row, double column) {
        double head = 0;
        double tall = 0;
        for (Section section : row) {
            head = Math.max(head, HEAD + head(section).size() * LINE);
            tall = Math.max(tall, height(section));
        }
        double top = head;
        double wide = row.size() == 1 && !isNarrow(row.get(0), column) ? flow.width() : column;
        flow.figure(
                head + tall + FOOT,
                (pen, box) -> {
                    for (int k = 0; k < row.size(); k++) {
                        double x = box.x() + k * (column + GAP);
                        one(pen, row.get(k), new Box(x, box.y(), wide, box.height()), top);
                    }
                });
    }

    private boolean isNarrow(Section section, double column) {
        return SectionDrawing.Extent.of(section, BESIDE).width() * across <= column + 1e-6;
    }

    /**
     * One scale for all: as large as lets most sections stand two in a row, and the widest alone in
     * one.
     */
    private void fit(List<Section> drawn, double column, double whole) {
        double[] widths =
                drawn.stream()
                        .mapToDouble(s -> SectionDrawing.Extent.of(s, BESIDE).width())
                        .sorted()
                        .toArray();
        double widest = widths[widths.length - 1];
        double most = widths[(int) (widths.length * MOST)];
        if (widest < most * LITTLE) {
            most = widest;
        }
        across = Math.min(column / most, whole / widest);
        double tallest = 0.1;
        for (Section section : drawn) {
            tallest = Math.max(tallest, SectionDrawing.Extent.of(section, BESIDE).tall());
        }
        if (tallest * across * STRETCH > TALLEST) {
            stretch = 1;
            across = Math.min(across, TALLEST / tallest);
        }
    }

    private double height(Section section) {
        return SectionDrawing.Extent.of(section, BESIDE).tall() * across * stretch + 14;
    }

    private void one(Pen pen, Section section, Box box, double head) {
        List<String> lines = head(section);
        for (int i = 0; i < lines.size(); i++) {
            boolean bold = i == 0;
            pen.words(
                    Role.TEXT,
                    Type.cut(lines.get(i), Type.NOTE, bold, box.width()),
                    box.x(),
                    box.y() + Type.NOTE + i * LINE,
                    Type.NOTE,
                    bold,
                    Anchor.START,
                    0);
        }
        var extent = SectionDrawing.Extent.of(section, BESIDE);
        double wide = Math.min(box.width(), extent.width() * across);
        double up = across * stretch;
        var frame = new Box(box.x(), box.y() + head, wide, height(section));
        Scale scale = Scale.in(frame, extent.left(), extent.low() - 7 / up, across, up);
        SectionDrawing.draw(
                section, typical.apply(section.station()), at(section), scale, pen, frame);
        double x = scale.x(0);
        pen.line(Role.TICK, x, frame.y(), x, frame.y() + 4);
        pen.line(Role.TICK, x, frame.bottom() - 4, x, frame.bottom());
        pen.frame(Role.FRAME, frame);
        foot(pen, section, box, frame);
    }

    /** Where it meets the ground at both ends, and the finished height between them. */
    private void foot(Pen pen, Section section, Box box, Box frame) {
        double base = frame.bottom() + Type.NOTE + 2;
        double right = Math.max(frame.right(), box.x() + Math.min(box.width(), WORDS));
        String left = end("left", section.left());
        String line = "line " + Words.number(Quantity.height(section.profileHeight()), units);
        String end = end("right", section.right());
        double from = box.x() + Face.of(false).width(left, Type.NOTE);
        double to = right - Face.of(false).width(end, Type.NOTE);
        pen.words(Role.TEXT, left, box.x(), base, Type.NOTE, Anchor.START);
        pen.words(Role.TEXT, end, right, base, Type.NOTE, Anchor.END);
        double half = Face.of(true).width(line, Type.NOTE) / 2;
        if (to - from > 2 * half + 8) {
            pen.bold(Role.TEXT, line, (from + to) / 2, base, Type.NOTE, Anchor.MIDDLE);
        }
    }

    /** What stands over a section. */
    private List<String> head(Section section) {
        var lines = new ArrayList<String>();
        lines.add(station(section));
        lines.add(dig(section));
        lines.add(areas(section));
        for (ProfileDrawing.Pool pool : at(section)) {
            lines.add("water can stand to " + Quantity.height(pool.level()).in(units) + " here");
        }
        return lines;
    }

    /** The station, and for one of two at a station what holds on its side of it. */
    private String station(Section section) {
        String at = Words.fine(Quantity.station(section.station()), units);
        Section other = other(section);
        return switch (section.face()) {
            case SINGLE -> at;
            case BEFORE ->
                    at
                            + (isAlike(section, other) ? ", where " : ", just before ")
                            + change(section, other);
            case AFTER -> at + ", just after " + change(other, section);
        };
    }

    private String dig(Section section) {
        double dig = SectionListings.digAtLine(section);
        if (Double.isNaN(dig)) {
            return "";
        }
        Quantity by = Quantity.length(Math.abs(dig));
        boolean strip = typical.apply(section.station()).strip();
        return (strip ? "at the line, topsoil off: " : "at the line: ")
                + (dig >= 0 ? "dig " : "fill ")
                + Words.fine(by, units)
                + " to the underside of the stone";
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

    private String end(String side, SideResult result) {
        @Nullable Corner corner = result.catchPoint();
        if (corner == null) {
            return side + ": survey ends first";
        }
        return side
                + " "
                + Words.number(Quantity.offset(Math.abs(corner.offset())), units)
                + " at "
                + Words.number(Quantity.height(corner.height()), units);
    }
}
