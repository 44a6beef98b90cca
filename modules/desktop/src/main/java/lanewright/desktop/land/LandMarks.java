package lanewright.desktop.land;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import lanewright.desktop.look.Type;
import lanewright.drainage.LandWater;
import lanewright.drainage.LaneDrainage;
import lanewright.drainage.Pool;
import lanewright.drainage.WaterReport;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.DitchEnd;
import lanewright.drainage.along.NamedOutlet;
import lanewright.drainage.along.Relief;
import lanewright.drainage.flow.FlowPath;
import lanewright.drainage.pond.Trace;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import lanewright.measure.Finding;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.run.Draft;
import lanewright.planner.run.Numbered;
import lanewright.planner.run.Outcome;
import lanewright.planner.work.Hazard;
import lanewright.planner.work.HeapPlace;
import lanewright.planner.work.Stake;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.figure.HazardLine;
import lanewright.sheets.figure.WaterSigns;
import lanewright.survey.Survey;
import org.jspecify.annotations.Nullable;

/** Puts the lane, its water and what must be minded on the board, in the roles of the sheets. */
final class LandMarks {

    private static final double FOOT = 0.3048;

    /** From line to line of words on a plate, px. */
    private static final double LEAD = 13;

    /** Least distance between two points whose same code is written beside both, px. */
    private static final double ALIKE_APART = 130;

    /** Where the sign of a finding is tried, px from its place: on it, then round about it. */
    private static final double[][] LOOKS = {
        {0, 0},
        {26, -14},
        {-26, -14},
        {26, 16},
        {-26, 16},
        {0, -30},
        {0, 32},
        {44, 0},
        {-44, 0},
        {48, -34},
        {-48, -34},
        {48, 36},
        {-48, 36}
    };

    private final View view;
    private final UnitSystem units;
    private final Clip clip;
    private final Pen pen = new Pen();
    private final List<Box> taken = new ArrayList<>();
    private final List<Sign> signs = new ArrayList<>();

    LandMarks(View view, UnitSystem units) {
        this.view = view;
        this.units = units;
        this.clip = new Clip(view.width(), view.height());
    }

    /**
     * The sign of a finding.
     *
     * @param box where it stands, px
     * @param finding what it warns of
     */
    record Sign(Box box, Finding finding) {}

    /** The signs of findings, where they were put. */
    List<Sign> signs() {
        return List.copyOf(signs);
    }

    List<Mark> marks() {
        return pen.marks();
    }

    /** Probe holes. */
    void probes(Survey survey) {
        survey.probes()
                .forEach(
                        probe -> {
                            double x = view.px(probe.x());
                            double y = view.py(probe.y());
                            pen.area(Role.PLATE, Outline.circle(x, y, 4, 12))
                                    .line(Role.BREAKLINE, Outline.circle(x, y, 4, 12));
                        });
    }

    /**
     * Codes of measured points, where there is room. One that many points carry is told once for
     * all; of the others, one is written where the same would crowd.
     */
    void codes(Survey survey, Shots shots) {
        String common = String.join(", ", shots.common());
        if (!common.isBlank()) {
            String words = "points without a word: " + common;
            double half = Face.of(false).width(words, Type.NOTE) / 2 + 6;
            plate(Role.NOTE, words, view.width() - half, view.height() - 8, false);
        }
        Map<String, List<double[]>> written = new HashMap<>();
        shots.seen(
                view,
                7,
                i -> {
                    String code = survey.code(i);
                    double x = view.px(survey.x(i));
                    double y = view.py(survey.y(i));
                    if (code.isBlank() || shots.isCommon(code)) {
                        return;
                    }
                    List<double[]> there = written.computeIfAbsent(code, each -> new ArrayList<>());
                    if (there.stream().noneMatch(at -> near(at, x, y))
                            && label(Role.NOTE, code, x, y, false)) {
                        there.add(new double[] {x, y});
                    }
                });
    }

    private static boolean near(double[] at, double x, double y) {
        return Math.hypot(at[0] - x, at[1] - y) < ALIKE_APART;
    }

    /** The lane: what is dug and built up, its surface, edges and limits. */
    void lane(Draft draft) {
        Alignment line = draft.design().alignment();
        List<Section> sections = draft.sections().sections();
        sides(line, sections, Section::left);
        sides(line, sections, Section::right);
        double[] left = path(line, sections, s -> s.left().edge().offset());
        double[] right = path(line, sections, s -> s.right().edge().offset());
        area(Role.LANE, ringed(left, right));
        lines(Role.LANE_EDGE, left);
        lines(Role.LANE_EDGE, right);
        lines(Role.CATCH, path(line, sections, s -> caught(s.left())));
        lines(Role.CATCH, path(line, sections, s -> caught(s.right())));
        lines(Role.LIMIT, path(line, sections, s -> s.left().limit()));
        lines(Role.LIMIT, path(line, sections, s -> s.right().limit()));
        lines(Role.CENTRE, path(line, sections, s -> 0));
        stations(line, sections);
    }

    /** A lane that is only looked at: its two edges in the accent. */
    void ghost(Draft draft) {
        Alignment line = draft.design().alignment();
        List<Section> sections = draft.sections().sections();
        lines(Role.ACCENT, path(line, sections, s -> s.left().edge().offset()));
        lines(Role.ACCENT, path(line, sections, s -> s.right().edge().offset()));
    }

    private static double caught(SideResult side) {
        return side.catchPoint() == null ? side.limit() : side.catchPoint().offset();
    }

    private static Role role(SideResult side) {
        return side.kind() == SideResult.Kind.FILL ? Role.FILL : Role.CUT;
    }

    private void sides(
            Alignment line, List<Section> sections, Function<Section, SideResult> which) {
        int from = 0;
        for (int i = 1; i < sections.size(); i++) {
            boolean last = i == sections.size() - 1;
            if (last
                    || role(which.apply(sections.get(i)))
                            != role(which.apply(sections.get(from)))) {
                List<Section> run = sections.subList(from, i + 1);
                if (sections.get(i).station() > sections.get(from).station()) {
                    area(
                            role(which.apply(sections.get(from))),
                            ringed(
                                    path(line, run, s -> which.apply(s).edge().offset()),
                                    path(line, run, s -> caught(which.apply(s)))));
                }
                from = i;
            }
        }
    }

    /** Stations of a hundred feet or twenty metres, farther apart where they would crowd. */
    private void stations(Alignment line, List<Section> sections) {
        double step = units == UnitSystem.US ? 100 * FOOT : 20;
        while (step * view.scale() < 56) {
            step *= units == UnitSystem.US ? 5 : 2.5;
        }
        for (int k = 0; k * step <= line.length() + 1e-6; k++) {
            double at = Math.min(k * step, line.length());
            double half = 4;
            for (Section each : sections) {
                if (each.station() >= at - 1e-9) {
                    half = Math.max(Math.abs(each.left().limit()), Math.abs(each.right().limit()));
                    break;
                }
            }
            double ax = view.px(line.x(new Place(at, -half)));
            double ay = view.py(line.y(new Place(at, -half)));
            double bx = view.px(line.x(new Place(at, half)));
            double by = view.py(line.y(new Place(at, half)));
            if (!view.sees(line.x(at), line.y(at))) {
                continue;
            }
            pen.line(Role.TICK, ax, ay, bx, by);
            double away = 18 / Math.max(1, Math.hypot(bx - ax, by - ay));
            String words = Words.fine(Quantity.station(at), units);
            if (!plate(Role.TEXT, words, ax + (ax - bx) * away, ay + (ay - by) * away + 4, false)) {
                plate(Role.TEXT, words, bx + (bx - ax) * away, by + (by - ay) * away + 4, false);
            }
        }
    }

    /**
     * Water that sits, where it runs, and pipes.
     *
     * @param all whether hollows of the land that the lane leaves alone are told too, where water
     *     is led off, where ditches end, and the largest ways out over the boundary
     * @param step of the plan's rain after which it is told what stands, from 0; -1 for none
     */
    void water(Outcome outcome, boolean all, int step) {
        for (Pool pool : outcome.water().gone()) {
            for (Trace ring : pool.spot().outline()) {
                lines(Role.WATER_BEFORE, closed(traced(ring)));
            }
        }
        for (FlowPath path : outcome.water().pathsAfter()) {
            flow(traced(path.line()));
        }
        for (Pool pool : outcome.water().after()) {
            for (Trace ring : pool.spot().outline()) {
                area(Role.WATER, traced(ring));
                lines(Role.WATER, closed(traced(ring)));
            }
        }
        for (var placed : outcome.water().pipes()) {
            var pipe = placed.pipe();
            pen.line(
                    Role.PIPE,
                    view.px(pipe.inletX()),
                    view.py(pipe.inletY()),
                    view.px(pipe.outletX()),
                    view.py(pipe.outletY()));
        }
        LaneDrainage drainage = outcome.water().drainage();
        List<Relief> reliefs =
                drainage.reliefs().stream()
                        .filter(relief -> all && relief.device() != Relief.Device.NONE)
                        .toList();
        List<DitchEnd> ends = all ? drainage.ends() : List.of();
        Alignment line = outcome.design().alignment();
        reliefs.forEach(relief -> sign(relief, line));
        ends.forEach(this::sign);
        for (WetPlace place : outcome.water().places()) {
            String depth =
                    place.pool() == null
                            ? ""
                            : ": " + Words.of(Quantity.depth(place.depth()), units) + " deep";
            label(
                    Role.WATER_TEXT,
                    with(place.name() + depth, after(outcome.water(), place.pool(), step)),
                    view.px(place.x()),
                    view.py(place.y()),
                    true);
        }
        reliefs.forEach(relief -> words(relief, line));
        ends.forEach(this::words);
        if (all) {
            for (LandWater.WayOut out : outcome.water().land().waysOut()) {
                label(Role.WATER_TEXT, out.name(), view.px(out.x()), view.py(out.y()), true);
            }
        }
        for (Pool pool : outcome.water().after()) {
            if (all
                    && outcome.water().places().stream()
                            .noneMatch(place -> pool.equals(place.pool()))) {
                plate(
                        Role.WATER_TEXT,
                        with(
                                Words.of(Quantity.depth(pool.spot().depth()), units) + " deep",
                                after(outcome.water(), pool, step)),
                        view.px(pool.spot().x()),
                        view.py(pool.spot().y()) + 4,
                        true);
            }
        }
    }

    /** What stands in a hollow after a step of the rain, in words; empty if that is not known. */
    private String after(WaterReport water, @Nullable Pool pool, int step) {
        int at = pool == null ? -1 : water.after().indexOf(pool);
        if (at < 0 || step < 0 || at >= water.land().spots().size()) {
            return "";
        }
        double stands = water.land().spots().get(at).depths().get(step);
        String name = water.land().steps().get(step).name();
        return stands > 0
                ? Words.of(Quantity.depth(stands), units) + " after " + name
                : "dry after " + name;
    }

    private static List<String> with(String words, String below) {
        return below.isEmpty() ? List.of(words) : List.of(words, below);
    }

    /** A proposal to lead water off. */
    private void sign(Relief relief, Alignment line) {
        Place from = WaterSigns.from(relief);
        Place to = WaterSigns.to(relief);
        if (view.sees(line.x(to), line.y(to))) {
            WaterSigns.along(
                    pen,
                    WaterSigns.role(relief.device()),
                    Outline.open(
                            view.px(line.x(from)),
                            view.py(line.y(from)),
                            view.px(line.x(to)),
                            view.py(line.y(to))));
        }
    }

    /** Its letters and its station, or the letters alone. */
    private void words(Relief relief, Alignment line) {
        Place to = WaterSigns.to(relief);
        double x = view.px(line.x(to));
        double y = view.py(line.y(to));
        String sign = relief.sign();
        String station = Words.fine(Quantity.station(relief.station()), units);
        if (!label(Role.WATER_TEXT, sign + " " + station, x + 3, y, false)) {
            label(Role.WATER_TEXT, sign, x + 3, y, false);
        }
        keepFree(new Box(x - 6, y - 6, 12, 12));
    }

    /** Where a ditch lets its water out. */
    private void sign(DitchEnd end) {
        if (view.sees(end.outlet().x(), end.outlet().y())) {
            double x = view.px(end.outlet().x());
            double y = view.py(end.outlet().y());
            WaterSigns.outlet(pen, WaterSigns.role(end), x, y);
        }
    }

    /** What its owner calls the place. */
    private void words(DitchEnd end) {
        double x = view.px(end.outlet().x());
        double y = view.py(end.outlet().y());
        NamedOutlet named = end.named();
        if (named != null) {
            label(Role.WATER_TEXT, named.name(), x + 3, y, false);
        }
        keepFree(new Box(x - 5, y - 5, 10, 10));
    }

    /** Heaps of topsoil, with their volume. */
    void heaps(List<HeapPlace> heaps) {
        for (HeapPlace heap : heaps) {
            double[][] outline = heap.outline();
            double[] xy = new double[2 * outline[0].length];
            for (int i = 0; i < outline[0].length; i++) {
                xy[2 * i] = view.px(outline[0][i]);
                xy[2 * i + 1] = view.py(outline[1][i]);
            }
            area(Role.HEAP, xy);
            lines(Role.HEAP, closed(xy));
        }
        for (HeapPlace heap : heaps) {
            heapWords(heap);
        }
    }

    /** A heap's number and volume: on it, else beside it, else its number alone. */
    private void heapWords(HeapPlace heap) {
        double x = view.px(heap.x());
        double y = view.py(heap.y());
        if (!view.sees(heap.x(), heap.y())) {
            return;
        }
        String number = "topsoil " + heap.number();
        String whole =
                number + ": " + Words.of(Quantity.volume(heap.form().volume()), units) + " loose";
        double out = heap.reach() * view.scale() + 12;
        for (String words : List.of(whole, number)) {
            double half = Face.of(false).width(words, Type.NOTE) / 2 + 3;
            if (plate(Role.TEXT, words, x, y + 4, false)) {
                return;
            }
            for (double away = out; away < out + 80; away += 13) {
                double[][] tries = {
                    {0, -away},
                    {0, away},
                    {half, -away},
                    {-half, -away},
                    {half, away},
                    {-half, away}
                };
                for (double[] by : tries) {
                    if (plate(Role.TEXT, words, x + by[0], y + by[1] + 4, false)) {
                        pen.line(Role.TICK, x, y, x + by[0], y + by[1] + (by[1] < 0 ? 8 : -8));
                        return;
                    }
                }
            }
        }
    }

    private void flow(double[] xy) {
        lines(Role.FLOW, xy);
        int n = xy.length / 2;
        if (n < 2) {
            return;
        }
        int i = n / 2;
        double dx = xy[2 * i] - xy[2 * i - 2];
        double dy = xy[2 * i + 1] - xy[2 * i - 1];
        double length = Math.hypot(dx, dy);
        if (length > 0) {
            double ux = dx / length * 8;
            double uy = dy / length * 8;
            double x = xy[2 * i];
            double y = xy[2 * i + 1];
            area(
                    Role.FLOW,
                    new double[] {
                        x,
                        y,
                        x - ux - uy * 0.45,
                        y - uy + ux * 0.45,
                        x - ux + uy * 0.45,
                        y - uy - ux * 0.45
                    });
        }
    }

    /** What can hurt. */
    void hazards(List<Hazard> hazards) {
        for (Hazard hazard : hazards) {
            double[] xy = new double[2 * hazard.points().size()];
            for (int i = 0; i < hazard.points().size(); i++) {
                xy[2 * i] = view.px(hazard.points().get(i).x());
                xy[2 * i + 1] = view.py(hazard.points().get(i).y());
            }
            Role role =
                    hazard.kind() == Hazard.Kind.WIRE
                            ? Role.WIRE
                            : hazard.kind().isBuried() ? Role.BURIED : Role.HAZARD;
            if (xy.length == 2) {
                double radius = Math.max(5, hazard.around() * view.scale());
                pen.line(Role.HAZARD, Outline.circle(xy[0], xy[1], radius, 24));
            } else if (HazardLine.isLettered(role)) {
                clip.line(xy).stream()
                        .filter(run -> run.length >= 4)
                        .forEach(run -> lettered(role, run));
            } else {
                lines(role, closed(xy));
            }
            int middle = xy.length / 4 * 2;
            label(Role.TEXT, hazard.name(), xy[middle], xy[middle + 1], false);
        }
    }

    /** A wire or a buried line. */
    private void lettered(Role role, double[] run) {
        pen.line(role, run);
        Outline line = Outline.open(run);
        HazardLine.crosses(pen, role, line);
        HazardLine.letters(
                line, (x, y) -> plate(Role.TEXT, HazardLine.letter(role), x, y + 3, true));
    }

    /** Offset stakes. */
    void stakes(List<Stake> stakes) {
        for (Stake stake : stakes) {
            double x = view.px(stake.x());
            double y = view.py(stake.y());
            pen.line(Role.TICK, x - 3, y, x + 3, y).line(Role.TICK, x, y - 3, x, y + 3);
        }
    }

    /** A triangle with its number at each finding that has a place and asks for a look. */
    void looks(List<Finding> findings, Alignment line) {
        List<Finding> numbered = Numbered.of(findings);
        for (int i = 0; i < numbered.size(); i++) {
            double[] at = LandPlaces.of(numbered.get(i).where(), line);
            if (at != null && view.sees(at[0], at[1])) {
                Box plate = look(view.px(at[0]), view.py(at[1]), Words.fixed(i + 1, 0));
                if (plate != null) {
                    signs.add(new Sign(plate, numbered.get(i)));
                }
            }
        }
    }

    /** A triangle and its number on a plate, as near to its place as there is room. */
    private @Nullable Box look(double x, double y, String number) {
        double wide = 19 + Face.of(true).width(number, Type.NOTE);
        for (double[] by : LOOKS) {
            Box plate = new Box(x + by[0] - wide / 2, y + by[1] - 8, wide, 16);
            if (isFree(plate)) {
                taken.add(plate);
                if (Math.hypot(by[0], by[1]) > 12) {
                    pen.line(Role.TICK, x, y, x + by[0], y + by[1]);
                }
                pen.fill(Role.PLATE, plate);
                pen.look(plate.x() + 8, plate.y() + 8, 12);
                pen.bold(
                        Role.TEXT, number, plate.x() + 16, plate.y() + 12, Type.NOTE, Anchor.START);
                return plate;
            }
        }
        return null;
    }

    /** The one place marker: a line right across and a ring, white-rimmed. */
    void marker(Draft draft, double station) {
        Alignment line = draft.design().alignment();
        double at = Math.max(0, Math.min(line.length(), station));
        Section near = draft.sections().nearest(at);
        double out = 1.35;
        Place left = new Place(at, near.left().limit() * out);
        Place right = new Place(at, near.right().limit() * out);
        double ax = view.px(line.x(left));
        double ay = view.py(line.y(left));
        double bx = view.px(line.x(right));
        double by = view.py(line.y(right));
        pen.line(Role.PLATE_LINE, ax, ay, bx, by).line(Role.PLACE, ax, ay, bx, by);
        double x = view.px(line.x(at));
        double y = view.py(line.y(at));
        pen.area(Role.MARKER, Outline.circle(x, y, 6, 24))
                .line(Role.PLACE, Outline.circle(x, y, 6, 24));
    }

    /** A ring about a place that was asked for. */
    void ring(double east, double north) {
        Outline ring = Outline.circle(view.px(east), view.py(north), 17, 36);
        pen.line(Role.PLATE_LINE, ring).line(Role.ACCENT, ring);
    }

    /** Scale bar and north, kept free of words. */
    void furniture() {
        double metre = units == UnitSystem.US ? FOOT : 1;
        double wanted = 130 / view.scale() / metre;
        double power = Math.pow(10, Math.floor(Math.log10(wanted)));
        double length = wanted / power >= 5 ? 5 * power : wanted / power >= 2 ? 2 * power : power;
        double bar = length * metre * view.scale();
        double left = 22;
        double base = view.height() - 20;
        Box plate = new Box(left - 10, base - 22, bar + 70, 32);
        pen.fill(Role.PLATE, plate).frame(Role.HAIRLINE, plate);
        pen.line(Role.TICK, left, base, left + bar, base);
        for (int i = 0; i <= 2; i++) {
            pen.line(Role.TICK, left + bar * i / 2, base - 5, left + bar * i / 2, base);
        }
        String unit = units == UnitSystem.US ? " ft" : " m";
        pen.words(Role.TEXT, "0", left, base - 8, Type.NOTE, Anchor.MIDDLE);
        pen.words(
                Role.TEXT,
                Words.fixed(length, length < 1 ? 2 : 0) + unit,
                left + bar,
                base - 8,
                Type.NOTE,
                Anchor.MIDDLE);
        double x = view.width() - 22;
        double y = 26;
        Box north = new Box(x - 13, y - 18, 26, 54);
        pen.fill(Role.PLATE, north).frame(Role.HAIRLINE, north);
        pen.line(Role.TICK, x, y, x, y + 16);
        pen.area(Role.TICK, Outline.closed(x, y - 12, x + 5, y + 2, x - 5, y + 2));
        pen.bold(Role.TEXT, "N", x, y + 30, Type.NOTE, Anchor.MIDDLE);
    }

    /** Keeps a part of the board free of words. */
    void keepFree(Box box) {
        taken.add(box);
    }

    /** A round or square handle that can be dragged. */
    void handle(double east, double north, boolean square, boolean chosen) {
        double x = view.px(east);
        double y = view.py(north);
        double r = chosen ? 7 : 5.5;
        Outline shape =
                square ? Outline.box(x - r, y - r, 2 * r, 2 * r) : Outline.circle(x, y, r, 20);
        pen.area(Role.MARKER, shape).line(chosen ? Role.ACCENT : Role.PLACE, shape);
    }

    /** A line that is being measured or drawn, with its length. */
    void tape(List<double[]> corners, String words) {
        double[] xy = new double[2 * corners.size()];
        for (int i = 0; i < corners.size(); i++) {
            xy[2 * i] = view.px(corners.get(i)[0]);
            xy[2 * i + 1] = view.py(corners.get(i)[1]);
        }
        if (corners.size() > 1) {
            pen.line(Role.PLATE_LINE, xy).line(Role.ACCENT, xy);
        }
        for (int i = 0; i < corners.size(); i++) {
            Outline dot = Outline.circle(xy[2 * i], xy[2 * i + 1], 4, 16);
            pen.area(Role.MARKER, dot).line(Role.ACCENT, dot);
        }
        if (!words.isBlank()) {
            int last = 2 * corners.size() - 2;
            plate(Role.TEXT, words, xy[last] + 40, xy[last + 1] - 12, true);
        }
    }

    private double[] path(
            Alignment line, List<Section> sections, ToDoubleFunction<Section> offset) {
        double[] xy = new double[2 * sections.size()];
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            Place place = new Place(section.station(), offset.applyAsDouble(section));
            xy[2 * i] = view.px(line.x(place));
            xy[2 * i + 1] = view.py(line.y(place));
        }
        return xy;
    }

    private double[] traced(Trace trace) {
        double[] xy = new double[2 * trace.size()];
        for (int i = 0; i < trace.size(); i++) {
            xy[2 * i] = view.px(trace.x(i));
            xy[2 * i + 1] = view.py(trace.y(i));
        }
        return xy;
    }

    private static double[] closed(double[] xy) {
        double[] round = java.util.Arrays.copyOf(xy, xy.length + 2);
        round[xy.length] = xy[0];
        round[xy.length + 1] = xy[1];
        return round;
    }

    private static double[] ringed(double[] there, double[] back) {
        double[] ring = java.util.Arrays.copyOf(there, there.length + back.length);
        for (int i = 0; i < back.length; i += 2) {
            ring[there.length + i] = back[back.length - 2 - i];
            ring[there.length + i + 1] = back[back.length - 1 - i];
        }
        return ring;
    }

    private void area(Role role, double[] xy) {
        double[] seen = clip.ring(xy);
        if (seen.length > 0) {
            pen.area(role, Outline.closed(seen));
        }
    }

    private void lines(Role role, double[] xy) {
        for (double[] run : clip.line(xy)) {
            pen.line(role, run);
        }
    }

    private boolean label(Role role, String words, double x, double y, boolean bold) {
        return label(role, List.of(words), x, y, bold);
    }

    /** Lines of words beside a place, if there is room. */
    private boolean label(Role role, List<String> lines, double x, double y, boolean bold) {
        double half = wide(lines, bold) / 2 + 6;
        double up = -5 - LEAD * (lines.size() - 1);
        double[][] tries = {{half, up}, {-half, up}, {half, 13}, {-half, 13}};
        for (double[] by : tries) {
            if (plate(role, lines, x + by[0], y + by[1], bold)) {
                return true;
            }
        }
        return false;
    }

    private static double wide(List<String> lines, boolean bold) {
        return lines.stream()
                .mapToDouble(line -> Face.of(bold).width(line, Type.NOTE))
                .max()
                .orElse(0);
    }

    private boolean plate(Role role, String words, double x, double y, boolean bold) {
        return plate(role, List.of(words), x, y, bold);
    }

    /** Lines of words on a plate, the first in the middle of a place, if there is room. */
    private boolean plate(Role role, List<String> lines, double x, double y, boolean bold) {
        double half = wide(lines, bold) / 2 + 3;
        Box box = new Box(x - half, y - 11, 2 * half, 15 + LEAD * (lines.size() - 1));
        if (lines.get(0).isBlank() || !isFree(box)) {
            return false;
        }
        taken.add(box);
        pen.fill(Role.PLATE, box);
        for (int i = 0; i < lines.size(); i++) {
            double base = y + LEAD * i;
            pen.words(role, lines.get(i), x, base, Type.NOTE, bold, Anchor.MIDDLE, 0);
        }
        return true;
    }

    /** Whether a part of the board lies wholly on it and nothing was written there. */
    private boolean isFree(Box box) {
        if (box.x() < 2
                || box.right() > view.width() - 2
                || box.y() < 2
                || box.bottom() > view.height() - 2) {
            return false;
        }
        for (Box other : taken) {
            if (box.x() < other.right()
                    && other.x() < box.right()
                    && box.y() < other.bottom()
                    && other.y() < box.bottom()) {
                return false;
            }
        }
        return true;
    }
}
