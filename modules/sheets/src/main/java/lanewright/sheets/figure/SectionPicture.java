package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionLine;
import lanewright.lane.section.SideResult;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Kind;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.listing.SectionListings;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;
import org.jspecify.annotations.Nullable;

/** One section along the lane: its station, the drawing with its lines named, and its figures. */
final class SectionPicture {

    private static final double NOTE = Type.NOTE;
    private static final double HEAD = NOTE * Type.LEAD + 1;

    /** Height of the words above and below the drawing, pt. */
    static final double WORDS = HEAD + 2 * Cells.HEIGHT + 3;

    /** Room for names above what is drawn, and below it, pt. */
    private static final double OVER = 18;

    private static final double UNDER = 17;

    /** Height of the drawing beyond what is drawn, pt. */
    static final double ROOM = OVER + UNDER;

    /** At least so wide is the room for the figures of a section, pt. */
    private static final double FIGURES = 240;

    /** How far a name may stand from what it names, pt. */
    private static final double FARTHEST = 60;

    /** How near it may stand, pt. */
    private static final double FROM_LINE = 5;

    /** The same from water so shallow that the name would be all that is seen, pt. */
    private static final double FROM_SMALL = 20;

    /**
     * A scale for all sections.
     *
     * @param across pt per metre of width
     * @param up pt per metre of height
     */
    record Size(double across, double up) {}

    private final SectionChoice choice;
    private final DoubleFunction<TypicalSection> typical;
    private final Function<Section, Extent> extent;
    private final Function<Section, AtSection> at;
    private final UnitSystem units;

    SectionPicture(
            SectionChoice choice,
            DoubleFunction<TypicalSection> typical,
            Function<Section, Extent> extent,
            Function<Section, AtSection> at,
            UnitSystem units) {
        this.choice = choice;
        this.typical = typical;
        this.extent = extent;
        this.at = at;
        this.units = units;
    }

    /** Draws a section and its figures. */
    void draw(Pen pen, Section section, Box box, Size size) {
        pen.bold(Role.TEXT, station(section), box.x(), box.y() + NOTE, NOTE, Anchor.START);
        Extent whole = extent.apply(section);
        AtSection here = at.apply(section);
        double wide = Math.min(box.width(), whole.width() * size.across());
        double tall = whole.tall() * size.up() + ROOM;
        var frame = new Box(box.x(), box.y() + HEAD, wide, tall);
        Scale scale =
                Scale.in(
                        frame,
                        whole.left(),
                        whole.low() - UNDER / size.up(),
                        size.across(),
                        size.up());
        Map<Role, Between.Ring> areas =
                SectionDrawing.draw(
                        section, typical.apply(section.station()), here, scale, pen, frame);
        names(pen, section, here, areas, scale, frame);
        double x = scale.x(0);
        pen.line(Role.TICK, x, frame.y(), x, frame.y() + 4);
        pen.line(Role.TICK, x, frame.bottom() - 4, x, frame.bottom());
        pen.frame(Role.FRAME, frame);
        double under = Math.max(wide, Math.min(box.width(), FIGURES));
        var cells = new Box(box.x(), frame.bottom() + 3, under, Cells.HEIGHT);
        Cells.draw(pen, ends(section), cells);
        Cells.draw(pen, areas(section, here), cells.moved(0, Cells.HEIGHT));
    }

    /** The names of lines and of the areas that have room for them. */
    private void names(
            Pen pen,
            Section section,
            AtSection here,
            Map<Role, Between.Ring> areas,
            Scale scale,
            Box frame) {
        var places = new Places(frame.inset(1.5));
        var inside = new Pen();
        var lines = new ArrayList<LineNames.Named>();
        double left = section.left().stoneLow().offset();
        double right = section.right().stoneLow().offset();
        named(lines, "earth as shaped", Clipped.of(section.subgrade(), left, right), scale);
        if (typical.apply(section.station()).strip()) {
            named(
                    lines,
                    "topsoil off",
                    Clipped.of(section.stripped(), section.left().limit(), section.right().limit()),
                    scale);
        }
        named(lines, "ground", section.ground(), scale);
        named(lines, "finished", section.finished(), scale);
        named(lines, "road ditch", here.ditch(), scale);
        for (LineNames.Named line : lines) {
            line.pieces().forEach(places::keepOff);
        }
        for (PipeUnder pipe : here.pipes()) {
            pipe(inside, pipe, places, scale);
        }
        for (StandingWater pool : here.pools()) {
            water(inside, pool, areas.get(Role.WATER), places, scale, frame);
        }
        LineNames.draw(inside, places, lines, frame, FARTHEST);
        for (Role role : List.of(Role.CUT, Role.FILL)) {
            Between.Ring ring = areas.get(role);
            if (ring != null && !isWet(ring.inside(), here)) {
                area(inside, Measures.NAMES.getOrDefault(role, ""), ring, places, scale);
            }
        }
        pen.framed(frame, inside);
    }

    private static void pipe(Pen pen, PipeUnder pipe, Places places, Scale scale) {
        double x1 = scale.x(pipe.inlet().offset());
        double x2 = scale.x(pipe.outlet().offset());
        double top = scale.y(pipe.high()) - pipe.tall(scale.up());
        places.keepOff(
                new Box(Math.min(x1, x2), top, Math.abs(x2 - x1), scale.y(pipe.low()) - top));
        double part = 0.5;
        double x = x1 + part * (x2 - x1);
        double y =
                scale.y(
                        pipe.inlet().height()
                                + part * (pipe.outlet().height() - pipe.inlet().height()));
        if (!places.name(pen, pipe.words(), x, y, 1, FARTHEST)) {
            places.put(pen, Role.TEXT, pipe.words(), x, y, NOTE, false, FARTHEST * 2);
        }
    }

    private static void water(
            Pen pen,
            StandingWater pool,
            Between.@Nullable Ring drawn,
            Places places,
            Scale scale,
            Box frame) {
        double from = Math.max(frame.x(), scale.x(pool.leftmost()));
        double to = Math.min(frame.right(), scale.x(pool.rightmost()));
        double y = scale.y(pool.level());
        boolean small = drawn == null || drawn.tall() * scale.up() < NOTE;
        if (from < to && frame.holds((from + to) / 2, y)) {
            double nearest = small ? FROM_SMALL : FROM_LINE;
            places.name(pen, "water", (from + to) / 2, y, -1, nearest, FARTHEST);
        }
    }

    /** Whether a place, offset and height, lies in standing water. */
    private static boolean isWet(double[] place, AtSection here) {
        return here.pools().stream()
                .anyMatch(
                        pool ->
                                place[0] >= pool.leftmost()
                                        && place[0] <= pool.rightmost()
                                        && place[1] <= pool.level());
    }

    /** Words in an area, if it is thick enough for them. */
    private static void area(Pen pen, String text, Between.Ring ring, Places places, Scale scale) {
        double[] inside = ring.inside();
        var words =
                new Mark.Words(
                        Role.TEXT,
                        text,
                        scale.x(inside[0]),
                        scale.y(inside[1]) + NOTE * 0.28,
                        NOTE,
                        false,
                        Anchor.MIDDLE,
                        0);
        if (places.take(words)) {
            Places.plate(pen, words);
            pen.add(words);
        }
    }

    private static void named(
            List<LineNames.Named> lines, String words, @Nullable SectionLine line, Scale scale) {
        if (line != null && line.size() > 1) {
            var path = new Outline.Builder();
            for (int i = 0; i < line.size(); i++) {
                path.to(scale.x(line.offset(i)), scale.y(line.height(i)));
            }
            lines.add(new LineNames.Named(words, List.of(path.open())));
        }
    }

    private boolean standsForBoth(Section section) {
        return section.face() == Section.Face.BEFORE
                && SectionChoice.isAlike(section, choice.other(section));
    }

    private String station(Section section) {
        String at = Words.fine(Quantity.station(section.station()), units);
        return switch (section.face()) {
            case SINGLE -> at;
            case BEFORE -> standsForBoth(section) ? at : at + " before";
            case AFTER -> at + " after";
        };
    }

    /** Where it meets the ground at both ends, and the finished height between them. */
    private List<Cells.Cell> ends(Section section) {
        Section other = choice.other(section);
        var cells = new ArrayList<Cells.Cell>();
        side(cells, "left", section, section.left(), other.left());
        cells.add(
                new Cells.Cell(
                        "line", Words.number(Quantity.height(section.profileHeight()), units)));
        side(cells, "right", section, section.right(), other.right());
        return cells;
    }

    private void side(
            List<Cells.Cell> cells,
            String name,
            Section section,
            SideResult side,
            SideResult other) {
        boolean changes = standsForBoth(section) && side.kind() != other.kind();
        String kind = SectionListings.kind(side);
        cells.add(new Cells.Cell(name, changes ? kind + "/" + SectionListings.kind(other) : kind));
        Corner end = side.catchPoint();
        cells.add(
                new Cells.Cell(
                        "out",
                        end == null
                                ? "not known"
                                : Words.number(Quantity.offset(Math.abs(end.offset())), units)));
        if (end != null) {
            cells.add(new Cells.Cell("height", Words.number(Quantity.height(end.height()), units)));
        }
    }

    private List<Cells.Cell> areas(Section section, AtSection here) {
        var cells = new ArrayList<Cells.Cell>();
        double dig = SectionListings.digAtLine(section);
        if (!Double.isNaN(dig)) {
            cells.add(
                    new Cells.Cell(
                            dig >= 0 ? "dig" : "build up",
                            Words.number(Quantity.length(Math.abs(dig)), units)));
        }
        cells.add(area("cut", section.areas().cut().area()));
        cells.add(area("fill", section.areas().fill().area()));
        cells.add(area("topsoil", section.areas().strip().area()));
        cells.add(area("stone", SectionListings.stone(section.areas())));
        String unit = " " + Words.unit(Kind.HEIGHT, units);
        List<String> levels =
                here.pools().stream()
                        .map(pool -> Quantity.height(pool.level()).in(units).replace(unit, ""))
                        .distinct()
                        .toList();
        if (!levels.isEmpty()) {
            cells.add(new Cells.Cell("water to", String.join(" / ", levels)));
        }
        return cells;
    }

    private Cells.Cell area(String head, double area) {
        return new Cells.Cell(head, Words.number(Quantity.area(area), units));
    }
}
