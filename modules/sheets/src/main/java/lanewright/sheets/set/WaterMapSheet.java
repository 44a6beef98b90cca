package lanewright.sheets.set;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import lanewright.drainage.WaterReport;
import lanewright.ground.Ground;
import lanewright.measure.UnitSystem;
import lanewright.planner.run.Outcome;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.figure.Land;
import lanewright.sheets.figure.LandDrawing;
import lanewright.sheets.figure.Legend;
import lanewright.sheets.figure.MapScale;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;
import lanewright.sheets.page.Type;

/** Two maps at one scale: where water sits and runs on the land as it is, and on what is built. */
final class WaterMapSheet {

    private static final double TITLE = 14;
    private static final double APART = 12;
    private static final double LEGEND = 52;

    private static final List<Role> SHOWN =
            List.of(
                    Role.LANE_EDGE,
                    Role.CENTRE,
                    Role.CUT,
                    Role.FILL,
                    Role.CATCH,
                    Role.LIMIT,
                    Role.WATER,
                    Role.FLOW,
                    Role.PIPE,
                    Role.DIP,
                    Role.WATER_BAR,
                    Role.TURN_OUT,
                    Role.RELIEF_PIPE,
                    Role.OUTLET_PERMITTED,
                    Role.OUTLET_FORBIDDEN,
                    Role.OUTLET_TO_ASK,
                    Role.BOUNDARY);

    private final Outcome outcome;
    private final Beside beside;
    private final UnitSystem units;

    private WaterMapSheet(Outcome outcome, Beside beside, UnitSystem units) {
        this.outcome = outcome;
        this.beside = beside;
        this.units = units;
    }

    /**
     * The sheet.
     *
     * @param answer what is said about water in a sentence
     */
    static Sheet of(Outcome outcome, Beside beside, UnitSystem units, String answer) {
        return new WaterMapSheet(outcome, beside, units).sheet(answer);
    }

    /** A map that is not yet drawn, and what stands over it. */
    private record Map(String title, Land land, LandGround measured, Ground surface) {}

    private Sheet sheet(String answer) {
        Map before = before();
        Map after = after();
        boolean stacked = after.land().isWide();
        Paper paper = Paper.of(units);
        Flow flow =
                new Flow(
                        stacked ? paper : paper.lying(),
                        units,
                        "Water before and after",
                        "Where does water go?",
                        answer);
        // On narrow paper the note takes a line more.
        double legend =
                LEGEND + LandWater.room(outcome.water()) + (stacked ? Type.NOTE * Type.LEAD : 0);
        double height = flow.left() - legend - 8;
        double mapWidth = stacked ? flow.width() : (flow.width() - APART) / 2;
        double mapHeight = (stacked ? (height - APART) / 2 : height) - TITLE;
        MapScale scale = LandDrawing.scale(after.land(), units, mapWidth, mapHeight);
        double[] seen = LandDrawing.seen(after.land(), scale, mapWidth, mapHeight);
        before.measured().draw(scale, seen);
        double step = after.measured().draw(scale, seen);
        String note =
                "Water stands as drawn when each low spot is full to where it runs over. Ways of"
                        + " water drain much land. Contours every "
                        + LandGround.contourWords(step)
                        + (units == UnitSystem.US ? " ft" : " m")
                        + ", of the ground as it is. What runs onto a neighbour's land or into a"
                        + " stream where it did not before needs the neighbour's word, or a permit.";
        flow.figure(
                height + legend,
                (pen, box) -> {
                    Set<Role> drawn = EnumSet.noneOf(Role.class);
                    drawn.addAll(draw(before, scale, pen, box.x(), box.y(), mapWidth, mapHeight));
                    double x = stacked ? box.x() : box.x() + mapWidth + APART;
                    double y = stacked ? box.y() + TITLE + mapHeight + APART : box.y();
                    drawn.addAll(draw(after, scale, pen, x, y, mapWidth, mapHeight));
                    List<Role> shown = SHOWN.stream().filter(drawn::contains).toList();
                    double top = box.y() + height + 5;
                    top += Legend.draw(pen, box.x(), top, box.width(), shown) + 9;
                    pen.paragraph(
                            Gauge.of(Gauge.Use.CONTOUR_STEP, note, step * after.measured().metre()),
                            Type.lines(note, Type.NOTE, false, box.width()),
                            box.x(),
                            top,
                            Type.NOTE);
                });
        return flow.sheet();
    }

    private Set<Role> draw(
            Map map, MapScale scale, Pen pen, double x, double y, double width, double height) {
        pen.bold(Role.TEXT, map.title(), x, y + Type.BODY, Type.BODY, Anchor.START);
        var box = new Box(x, y + TITLE, width, height);
        return LandDrawing.draw(map.land(), map.surface()::heightAt, scale, pen, box);
    }

    private Map before() {
        var land = new Land();
        var lane = new LandLane(land, beside, units);
        lane.line();
        water(land).before();
        return new Map(
                "Before: the land as it is, and the line of the lane",
                land,
                measured(land),
                outcome.ground());
    }

    private Map after() {
        var land = new Land();
        new LandLane(land, beside, units).draw();
        water(land).after();
        WaterReport water = outcome.water();
        boolean made = !water.made().isEmpty();
        return new Map(
                "After: the lane built"
                        + (water.pipes().isEmpty() ? "" : ", with the pipes of the plan")
                        + (made ? "; what the lane holds back is still to be led off" : ""),
                land,
                measured(land),
                outcome.finished());
    }

    private LandWater water(Land land) {
        return new LandWater(land, beside.alignment(), outcome.water(), units);
    }

    private LandGround measured(Land land) {
        return new LandGround(land, outcome.survey(), outcome.ground(), units);
    }
}
