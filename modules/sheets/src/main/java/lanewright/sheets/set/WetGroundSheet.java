package lanewright.sheets.set;

import java.util.List;
import java.util.Set;
import lanewright.drainage.WetGround;
import lanewright.measure.Listing;
import lanewright.measure.UnitSystem;
import lanewright.planner.listing.StandingListings;
import lanewright.planner.run.Outcome;
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

/** Where the ground as it is stays wet by its shape, on a map in few tones. */
final class WetGroundSheet {

    private static final double LEGEND = 40;

    /** Room of the table below, pt. */
    private static final double TABLE = 124;

    private static final List<Role> SHOWN =
            List.of(
                    Role.WET_MOST,
                    Role.WET_NEXT,
                    Role.WET_DAMP,
                    Role.WATER,
                    Role.FLOW,
                    Role.CENTRE,
                    Role.PIPE,
                    Role.BOUNDARY);

    private WetGroundSheet() {}

    /** The sheet. */
    static Sheet of(Outcome outcome, Beside beside, UnitSystem units) {
        WetGround.Squares wet = outcome.water().wet().squares();
        var land = new Land();
        for (WetGround.Step step : WetGround.Step.values()) {
            land.squares(
                    role(step),
                    wet.cells().west(),
                    wet.cells().south(),
                    wet.cells().size(),
                    wet.cells().columns(),
                    wet.cells().rows(),
                    square -> wet.step(square) == step);
        }
        new LandLane(land, beside, units).line();
        new LandWater(land, beside.alignment(), outcome.water(), units).asItIs();
        var measured = new LandGround(land, outcome.survey(), outcome.ground(), units);
        Paper paper = Paper.of(units);
        Flow flow =
                new Flow(
                        land.isWide() ? paper.lying() : paper,
                        units,
                        "Wet ground",
                        "Where does the ground stay wet?",
                        "By the shape of the land alone, and not measured: soil, springs, drains"
                                + " and what grows decide as much. Go and look after a wet week.");
        double height = flow.left() - LEGEND - TABLE - 8;
        MapScale scale = LandDrawing.scale(land, units, flow.width(), height);
        double step = measured.draw(scale, LandDrawing.seen(land, scale, flow.width(), height));
        String note =
                "The land as it is, before anything is built. Contours every "
                        + LandGround.contourWords(step)
                        + (units == UnitSystem.US ? " ft." : " m.");
        flow.figure(
                height + LEGEND,
                (pen, box) -> {
                    var map = new Box(box.x(), box.y(), box.width(), height);
                    Set<Role> drawn =
                            LandDrawing.draw(land, outcome.ground()::heightAt, scale, pen, map);
                    List<Role> shown = SHOWN.stream().filter(drawn::contains).toList();
                    double top = map.bottom() + 5;
                    top += Legend.draw(pen, box.x(), top, box.width(), shown) + 9;
                    pen.paragraph(
                            Gauge.of(Gauge.Use.CONTOUR_STEP, note, step * measured.metre()),
                            Type.lines(note, Type.NOTE, false, box.width()),
                            box.x(),
                            top,
                            Type.NOTE);
                });
        Listing table = StandingListings.wet(outcome.water());
        if (!table.rows().isEmpty()) {
            flow.table(
                    table,
                    "The topographic wetness index, ln(a / tan b): a the land that drains out"
                            + " of a square for each metre of its side, b its mean fall. High where"
                            + " much land drains and little falls. Ranked within this survey, so"
                            + " some ground is always the wettest, however dry. Source: "
                            + WetGround.SOURCE
                            + ".");
        }
        return flow.sheet();
    }

    /** How ground of a step is drawn. */
    static Role role(WetGround.Step step) {
        return switch (step) {
            case WETTEST -> Role.WET_MOST;
            case NEXT -> Role.WET_NEXT;
            case DAMP -> Role.WET_DAMP;
        };
    }
}
