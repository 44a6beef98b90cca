package lanewright.desktop.land;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import lanewright.desktop.look.Type;
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
import lanewright.planner.work.Hazard;
import lanewright.planner.work.Stake;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.figure.HazardLine;
import lanewright.survey.Survey;

/** Puts the lane, its water and what must be minded on the board, in the roles of the sheets. */
final class LandMarks {

    private static final double FOOT = 0.3048;

    /** Least distance between two points whose same code is written beside both, px. */
    private static final double ALIKE_APART = 130;

    /** Findings nearer to each other than this share a sign, px. */
    private static final double TOGETHER = 14;

    /** Most findings that share a sign. */
    private static final int MOST_TOGETHER = 6;

    /** Between two numbers of one sign, px. */
    private static final double BETWEEN = 7;

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
    private final Plates plates;
    private final List<Sign> signs = new ArrayList<>();

    LandMarks(Plates plates, View view, UnitSystem units) {
        this.plates = plates;
        this.view = view;
        this.units = units;
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

    /** Probe holes. */
    void probes(Survey survey) {
        survey.probes()
                .forEach(
                        probe -> {
                            double x = view.px(probe.x());
                            double y = view.py(probe.y());
                            plates.shapes()
                                    .area(Role.PROBE, Outline.circle(x, y, 4, 12))
                                    .line(Role.PROBE, Outline.circle(x, y, 4, 12))
                                    .area(Role.TICK, Outline.circle(x, y, 1.3, 8));
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
            plates.plate(Role.NOTE, words, view.width() - half, view.height() - 8, false);
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
                            && plates.note(Role.NOTE, code, x, y)) {
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
        plates.area(Role.LANE, ringed(left, right));
        plates.lines(Role.LANE_EDGE, left);
        plates.lines(Role.LANE_EDGE, right);
        plates.lines(Role.CATCH, path(line, sections, s -> caught(s.left())));
        plates.lines(Role.CATCH, path(line, sections, s -> caught(s.right())));
        plates.lines(Role.LIMIT, path(line, sections, s -> s.left().limit()));
        plates.lines(Role.LIMIT, path(line, sections, s -> s.right().limit()));
        plates.lines(Role.CENTRE, path(line, sections, s -> 0));
        plates.keepOff(left);
        plates.keepOff(right);
    }

    /** A lane that is only looked at: its two edges in the accent. */
    void ghost(Draft draft) {
        Alignment line = draft.design().alignment();
        List<Section> sections = draft.sections().sections();
        plates.lines(Role.ACCENT, path(line, sections, s -> s.left().edge().offset()));
        plates.lines(Role.ACCENT, path(line, sections, s -> s.right().edge().offset()));
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
                    plates.area(
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
    void stations(Draft draft) {
        Alignment line = draft.design().alignment();
        List<Section> sections = draft.sections().sections();
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
            plates.shapes().line(Role.TICK, ax, ay, bx, by);
            double away = 18 / Math.max(1, Math.hypot(bx - ax, by - ay));
            String words = Words.fine(Quantity.station(at), units);
            if (plates.plate(
                            Role.TEXT,
                            words,
                            ax + (ax - bx) * away,
                            ay + (ay - by) * away + 4,
                            false)
                    == null) {
                plates.plate(
                        Role.TEXT, words, bx + (bx - ax) * away, by + (by - ay) * away + 4, false);
            }
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
                plates.shapes().line(Role.HAZARD, Outline.circle(xy[0], xy[1], radius, 24));
            } else if (HazardLine.isLettered(role)) {
                plates.seen(xy).stream()
                        .filter(run -> run.length >= 4)
                        .forEach(run -> lettered(role, run));
            } else {
                plates.lines(role, Plates.closed(xy));
            }
            int middle = xy.length / 4 * 2;
            plates.label(Role.TEXT, hazard.name(), xy[middle], xy[middle + 1], false);
        }
    }

    /** A wire or a buried line. */
    private void lettered(Role role, double[] run) {
        plates.shapes().line(role, run);
        Outline line = Outline.open(run);
        HazardLine.crosses(plates.shapes(), role, line);
        HazardLine.letters(
                line, (x, y) -> plates.plate(Role.TEXT, HazardLine.letter(role), x, y + 3, true));
    }

    /** Offset stakes. */
    void stakes(List<Stake> stakes) {
        for (Stake stake : stakes) {
            double x = view.px(stake.x());
            double y = view.py(stake.y());
            plates.shapes().line(Role.TICK, x - 3, y, x + 3, y).line(Role.TICK, x, y - 3, x, y + 3);
        }
    }

    /**
     * A triangle at each finding that has a place and asks for a look, with its number; findings at
     * one place share a triangle, and each opens by its own number.
     */
    void looks(List<Finding> findings, Alignment line) {
        List<Finding> numbered = Numbered.of(findings);
        List<Together> groups = new ArrayList<>();
        for (int i = 0; i < numbered.size(); i++) {
            double[] at = LandPlaces.of(numbered.get(i).where(), line);
            if (at == null || !view.sees(at[0], at[1])) {
                continue;
            }
            double x = view.px(at[0]);
            double y = view.py(at[1]);
            Together with =
                    groups.stream()
                            .filter(each -> each.takes(x, y))
                            .findFirst()
                            .orElseGet(
                                    () -> {
                                        var made = new Together(x, y, new ArrayList<>());
                                        groups.add(made);
                                        return made;
                                    });
            with.numbers().add(i + 1);
        }
        groups.forEach(each -> look(each, numbered));
    }

    /** Findings so near to each other that one triangle stands for all. */
    private record Together(double x, double y, List<Integer> numbers) {
        boolean takes(double otherX, double otherY) {
            return numbers.size() < MOST_TOGETHER && Math.hypot(otherX - x, otherY - y) < TOGETHER;
        }
    }

    /** A triangle and its numbers on a plate, as near to its place as there is room. */
    private void look(Together group, List<Finding> numbered) {
        List<String> words = group.numbers().stream().map(each -> Words.fixed(each, 0)).toList();
        Face face = Face.of(true);
        double wide =
                19
                        + words.stream().mapToDouble(each -> face.width(each, Type.NOTE)).sum()
                        + BETWEEN * (words.size() - 1);
        for (double[] by : LOOKS) {
            double middle = group.x() + by[0] * Math.max(1, wide / 38);
            Box plate = new Box(middle - wide / 2, group.y() + by[1] - 8, wide, 16);
            if (!plates.isFree(plate)) {
                continue;
            }
            plates.keepFree(plate);
            if (Math.hypot(by[0], by[1]) > 12) {
                plates.shapes().line(Role.TICK, group.x(), group.y(), middle, group.y() + by[1]);
            }
            plates.words().fill(Role.PLATE, plate).look(plate.x() + 8, plate.y() + 8, 12);
            double from = plate.x();
            double x = from + 16;
            for (int i = 0; i < words.size(); i++) {
                double end = x + face.width(words.get(i), Type.NOTE);
                plates.words()
                        .bold(Role.TEXT, words.get(i), x, plate.y() + 12, Type.NOTE, Anchor.START);
                double to = i == words.size() - 1 ? plate.right() : end + BETWEEN / 2;
                Finding finding = numbered.get(group.numbers().get(i) - 1);
                signs.add(new Sign(new Box(from, plate.y(), to - from, 16), finding));
                from = to;
                x = end + BETWEEN;
            }
            return;
        }
    }

    /** Keeps words off the place marker's ring. */
    void keepMarkerFree(Draft draft, double station) {
        Alignment line = draft.design().alignment();
        double at = Math.max(0, Math.min(line.length(), station));
        plates.keepFree(new Box(view.px(line.x(at)) - 8, view.py(line.y(at)) - 8, 16, 16));
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
        plates.top().line(Role.PLATE_LINE, ax, ay, bx, by).line(Role.PLACE, ax, ay, bx, by);
        double x = view.px(line.x(at));
        double y = view.py(line.y(at));
        plates.top()
                .area(Role.MARKER, Outline.circle(x, y, 6, 24))
                .line(Role.PLACE, Outline.circle(x, y, 6, 24));
    }

    /** A ring about a place that was asked for. */
    void ring(double east, double north) {
        Outline ring = Outline.circle(view.px(east), view.py(north), 17, 36);
        plates.top().line(Role.PLATE_LINE, ring).line(Role.ACCENT, ring);
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
        plates.top().fill(Role.PLATE, plate).frame(Role.HAIRLINE, plate);
        plates.top().line(Role.TICK, left, base, left + bar, base);
        for (int i = 0; i <= 2; i++) {
            plates.top().line(Role.TICK, left + bar * i / 2, base - 5, left + bar * i / 2, base);
        }
        String unit = units == UnitSystem.US ? " ft" : " m";
        plates.top().words(Role.TEXT, "0", left, base - 8, Type.NOTE, Anchor.MIDDLE);
        plates.top()
                .words(
                        Role.TEXT,
                        Words.fixed(length, length < 1 ? 2 : 0) + unit,
                        left + bar,
                        base - 8,
                        Type.NOTE,
                        Anchor.MIDDLE);
        double x = view.width() - 22;
        double y = 26;
        Box north = new Box(x - 13, y - 18, 26, 54);
        plates.top().fill(Role.PLATE, north).frame(Role.HAIRLINE, north);
        plates.top().line(Role.TICK, x, y, x, y + 16);
        plates.top().area(Role.TICK, Outline.closed(x, y - 12, x + 5, y + 2, x - 5, y + 2));
        plates.top().bold(Role.TEXT, "N", x, y + 30, Type.NOTE, Anchor.MIDDLE);
    }

    /** A round or square handle that can be dragged. */
    void handle(double east, double north, boolean square, boolean chosen) {
        double x = view.px(east);
        double y = view.py(north);
        double r = chosen ? 7 : 5.5;
        Outline shape =
                square ? Outline.box(x - r, y - r, 2 * r, 2 * r) : Outline.circle(x, y, r, 20);
        plates.top().area(Role.MARKER, shape).line(chosen ? Role.ACCENT : Role.PLACE, shape);
    }

    /** A line that is being measured or drawn, with its length. */
    void tape(List<double[]> corners, String words) {
        double[] xy = new double[2 * corners.size()];
        for (int i = 0; i < corners.size(); i++) {
            xy[2 * i] = view.px(corners.get(i)[0]);
            xy[2 * i + 1] = view.py(corners.get(i)[1]);
        }
        if (corners.size() > 1) {
            plates.top().line(Role.PLATE_LINE, xy).line(Role.ACCENT, xy);
        }
        for (int i = 0; i < corners.size(); i++) {
            Outline dot = Outline.circle(xy[2 * i], xy[2 * i + 1], 4, 16);
            plates.top().area(Role.MARKER, dot).line(Role.ACCENT, dot);
        }
        if (!words.isBlank()) {
            int last = 2 * corners.size() - 2;
            plates.plate(Role.TEXT, words, xy[last] + 40, xy[last + 1] - 12, true);
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

    private static double[] ringed(double[] there, double[] back) {
        double[] ring = java.util.Arrays.copyOf(there, there.length + back.length);
        for (int i = 0; i < back.length; i += 2) {
            ring[there.length + i] = back[back.length - 2 - i];
            ring[there.length + i + 1] = back[back.length - 1 - i];
        }
        return ring;
    }
}
