package lanewright.sheets.set;

import java.util.List;
import java.util.Set;
import lanewright.drainage.WaterReport;
import lanewright.ground.Ground;
import lanewright.lane.line.Alignment;
import lanewright.measure.Finding;
import lanewright.measure.UnitSystem;
import lanewright.planner.work.HeapPlace;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.figure.Land;
import lanewright.sheets.figure.LandDrawing;
import lanewright.sheets.figure.Legend;
import lanewright.sheets.figure.MapScale;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;
import lanewright.sheets.page.Type;
import lanewright.survey.Survey;

/** The land from above, with everything that the lane does to it. */
final class LandSheet {

    /**
     * Something from the plan that is put on the map: a wire, a well, a benchmark.
     *
     * @param role how it is drawn
     * @param words what stands beside it
     * @param x local eastings, m
     * @param y local northings, m
     * @param closed whether it is an outline
     */
    @SuppressWarnings("ArrayRecordComponent") // kept as given
    record Thing(Role role, String words, double[] x, double[] y, boolean closed) {}

    private final Survey survey;
    private final Ground ground;
    private final Beside beside;
    private final WaterReport water;
    private final UnitSystem units;
    private final Land land = new Land();

    private LandSheet(
            Survey survey, Ground ground, Beside beside, WaterReport water, UnitSystem units) {
        this.survey = survey;
        this.ground = ground;
        this.beside = beside;
        this.water = water;
        this.units = units;
    }

    /** The sheet. */
    static Sheet of(
            Survey survey,
            Ground ground,
            Beside beside,
            WaterReport water,
            List<HeapPlace> heaps,
            List<Thing> things,
            List<Finding> findings,
            UnitSystem units,
            String answer) {
        return new LandSheet(survey, ground, beside, water, units)
                .sheet(heaps, things, findings, answer);
    }

    private Sheet sheet(
            List<HeapPlace> heaps, List<Thing> things, List<Finding> findings, String answer) {
        Alignment line = beside.alignment();
        var lane = new LandLane(land, beside, units);
        lane.draw();
        heaps.forEach(lane::heap);
        Paper paper = Paper.of(units);
        Flow flow =
                new Flow(
                        land.isWide() ? paper.lying() : paper,
                        units,
                        "Plan",
                        "Where does the lane run?",
                        answer);
        double legend = 66 + LandWater.room(water);
        double height = flow.left() - legend - 8;
        MapScale scale = LandDrawing.scale(land, units, flow.width(), height);
        double[] seen = LandDrawing.seen(land, scale, flow.width(), height);
        var measured = new LandGround(land, survey, ground, units);
        double contourStep = measured.draw(scale, seen);
        new LandWater(land, line, water, units).draw();
        var named = new LandThings(land, line);
        things.forEach(thing -> named.thing(thing, seen));
        named.warnings(findings);
        String note = note(contourStep, land.hasShots());
        flow.figure(
                height + legend,
                (pen, box) -> {
                    var map = new Box(box.x(), box.y(), box.width(), height);
                    Set<Role> drawn = LandDrawing.draw(land, ground::heightAt, scale, pen, map);
                    List<Role> shown = SHOWN.stream().filter(drawn::contains).toList();
                    double top = map.bottom() + 5;
                    top += Legend.draw(pen, box.x(), top, box.width(), shown) + 9;
                    pen.paragraph(
                            Gauge.of(Gauge.Use.CONTOUR_STEP, note, contourStep * measured.metre()),
                            Type.lines(note, Type.NOTE, false, box.width()),
                            box.x(),
                            top,
                            Type.NOTE);
                });
        return flow.sheet();
    }

    private static final List<Role> SHOWN =
            List.of(
                    Role.LANE_EDGE,
                    Role.CENTRE,
                    Role.CUT,
                    Role.FILL,
                    Role.CATCH,
                    Role.LIMIT,
                    Role.HEAP,
                    Role.WATER,
                    Role.WATER_BEFORE,
                    Role.FLOW,
                    Role.PIPE,
                    Role.DIP,
                    Role.WATER_BAR,
                    Role.TURN_OUT,
                    Role.RELIEF_PIPE,
                    Role.OUTLET_PERMITTED,
                    Role.OUTLET_FORBIDDEN,
                    Role.OUTLET_TO_ASK,
                    Role.WIRE,
                    Role.BURIED,
                    Role.HAZARD,
                    Role.PROBE,
                    Role.BOUNDARY,
                    Role.LOOK);

    private String note(double contourStep, boolean dots) {
        return "Left and right are as you walk in from the road; a station is how far you have"
                + " walked. The scale holds when printed at full size on "
                + (units == UnitSystem.US ? "letter paper" : "A4")
                + (dots ? ". Small dots are the points that were measured" : "")
                + ". Contours every "
                + LandGround.contourWords(contourStep)
                + (units == UnitSystem.US ? " ft" : " m")
                + ", every fifth one heavy with its height, of the ground as it is."
                + (water.drainage().reliefs().isEmpty() ? "" : Told.RELIEF_SIGNS);
    }
}
