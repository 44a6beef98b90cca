package lanewright.sheets.figure;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;

/** What the lines and areas of plan and profile mean. */
public final class Legend {

    private static final double NOTE = Type.NOTE;

    /** From row to row, pt. */
    public static final double ROW = NOTE * 1.6;

    private Legend() {}

    /**
     * A row of samples with their meaning, for below a drawing.
     *
     * @return height used, pt
     */
    public static double draw(Pen pen, double left, double top, double width, List<Role> roles) {
        Map<Role, String> meaning = meanings();
        double x = left;
        double y = top;
        for (Role role : roles) {
            String words = meaning.get(role);
            if (words == null) {
                continue;
            }
            double wide = 24 + Face.of(false).width(words, NOTE) + 12;
            if (x + wide > left + width) {
                x = left;
                y += ROW;
            }
            sample(pen, role, x, y);
            pen.words(Role.TEXT, words, x + 24, y + NOTE, NOTE, Anchor.START);
            x += wide;
        }
        return y + ROW - top;
    }

    /** What a line or an area means, in a few words; empty if there are none for it. */
    public static String meaning(Role role) {
        return meanings().getOrDefault(role, "");
    }

    /** A sample of a line or an area, 20 pt wide and as high as small words. */
    public static void sample(Pen pen, Role role, double x, double y) {
        double middle = y + NOTE * 0.6;
        Box area = new Box(x, y + 1, 20, NOTE);
        switch (role) {
            case CUT, FILL, WATER, TOPSOIL, HEAP, STONE_FINE, STONE_MIDDLE, STONE_COARSE, LANE ->
                    pen.fill(role, area).frame(Role.HAIRLINE, area);
            case WET_MOST, WET_NEXT, WET_DAMP -> pen.fill(role, area).frame(Role.HAIRLINE, area);
            case HAZARD -> pen.fill(role, area).frame(role, area);
            case LOOK -> pen.look(x + 10, middle, 9);
            case PIPE -> PipeSign.draw(pen, Outline.open(x + 1, middle, x + 19, middle));
            case BARREL -> {
                Outline bore = Outline.circle(x + 10, middle, 3.4, 16);
                pen.area(role, bore).line(role, bore);
            }
            case FLOW ->
                    pen.line(role, x, middle, x + 20, middle)
                            .area(
                                    role,
                                    Outline.closed(
                                            x + 15, middle, x + 8, middle - 3, x + 8, middle + 3));
            case DIP, WATER_BAR, TURN_OUT, RELIEF_PIPE ->
                    WaterSigns.along(pen, role, Outline.open(x + 2, middle, x + 12, middle));
            case OUTLET_PERMITTED, OUTLET_FORBIDDEN, OUTLET_TO_ASK ->
                    WaterSigns.outlet(pen, role, x + 10, middle);
            case WIRE, BURIED -> {
                pen.line(role, x, middle, x + 20, middle);
                if (role == Role.WIRE) {
                    HazardLine.cross(pen, x + 3, middle);
                    HazardLine.cross(pen, x + 17, middle);
                }
                var words =
                        new Mark.Words(
                                Role.TEXT,
                                HazardLine.letter(role),
                                x + 10,
                                y + NOTE,
                                NOTE,
                                true,
                                Anchor.MIDDLE,
                                0);
                pen.fill(Role.PLATE, Places.box(words)).add(words);
            }
            case SHOT -> pen.area(role, Outline.circle(x + 10, middle, 1, 8));
            case PROBE -> {
                Outline ring = Outline.circle(x + 10, middle, 2.6, 12);
                pen.area(role, ring).line(role, ring);
                pen.area(Role.TICK, Outline.circle(x + 10, middle, 0.9, 8));
            }
            default -> pen.line(role, x, middle, x + 20, middle);
        }
    }

    private static Map<Role, String> meanings() {
        Map<Role, String> meaning = new EnumMap<>(Role.class);
        meaning.put(Role.FINISHED, "finished lane");
        meaning.put(Role.GROUND_LINE, "ground as it is");
        meaning.put(Role.SUBGRADE, "earth as shaped");
        meaning.put(Role.DITCH_LEFT, "left ditch bottom");
        meaning.put(Role.DITCH_BOTH, "bottom of both ditches, equally high");
        meaning.put(Role.STRIPPED_LINE, "ground with topsoil off");
        meaning.put(Role.DITCH_RIGHT, "right ditch bottom");
        meaning.put(Role.CUT, "cut (dig)");
        meaning.put(Role.FILL, "fill (build up)");
        meaning.put(Role.HEAP, "heap of topsoil");
        meaning.put(Role.WATER, "standing water, depth written beside it");
        meaning.put(Role.WATER_BEFORE, "wet place before the lane");
        meaning.put(Role.FLOW, "way of water");
        meaning.put(Role.DIP, "rolling dip, proposed");
        meaning.put(Role.WATER_BAR, "water bar, proposed");
        meaning.put(Role.TURN_OUT, "turn-out, proposed");
        meaning.put(Role.RELIEF_PIPE, "relief culvert, proposed");
        meaning.put(Role.OUTLET_PERMITTED, "outlet of a ditch, permitted");
        meaning.put(Role.OUTLET_FORBIDDEN, "outlet of a ditch, not permitted");
        meaning.put(Role.OUTLET_TO_ASK, "outlet of a ditch, still to be asked for");
        meaning.put(Role.WET_MOST, "stays wet by its shape: the wettest tenth");
        meaning.put(Role.WET_NEXT, "the next tenth");
        meaning.put(Role.WET_DAMP, "the next fifth");
        meaning.put(Role.PIPE, "pipe");
        meaning.put(Role.BARREL, "pipe under the lane, its bottom at the heights written");
        meaning.put(Role.CENTRE, "lane's line");
        meaning.put(Role.LANE_EDGE, "edge of travelled way");
        meaning.put(Role.CATCH, "slope meets ground");
        meaning.put(Role.LIMIT, "limit of work");
        meaning.put(Role.BOUNDARY, "edge of survey");
        meaning.put(Role.HAZARD, "keep off");
        meaning.put(Role.WIRE, "overhead wire");
        meaning.put(Role.BURIED, "buried line");
        meaning.put(Role.PROBE, "probe hole");
        meaning.put(Role.SHOT, "measured point");
        meaning.put(Role.CONTOUR, "height line of the ground as it is");
        meaning.put(Role.LOOK, "danger or look here, with the finding's number");
        return meaning;
    }
}
