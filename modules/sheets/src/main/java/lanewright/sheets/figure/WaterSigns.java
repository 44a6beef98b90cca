package lanewright.sheets.figure;

import java.util.EnumSet;
import java.util.Set;
import lanewright.drainage.along.DitchEnd;
import lanewright.drainage.along.NamedOutlet;
import lanewright.drainage.along.Relief;
import lanewright.drainage.along.Side;
import lanewright.lane.line.Place;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;

/**
 * What leads water off the lane and where ditches let it out, seen from above, as signs that keep
 * their size at every scale. Each has a shape of its own, so that none is known by colour alone:
 * two lines for a dip, a thick one for a bar, walls for a pipe, one line from a dot for a turn-out,
 * all with an arrow at the end that water leaves by; a ring for an outlet.
 */
public final class WaterSigns {

    /** How far a proposal to lead water off reaches to either side, m: about a ditch's offset. */
    private static final double OUT = 4;

    private static final double HEAD = 6;

    private static final double RING = 4.4;

    private static final Set<Role> LINES =
            EnumSet.of(Role.DIP, Role.WATER_BAR, Role.TURN_OUT, Role.RELIEF_PIPE);

    private WaterSigns() {}

    /** Whether a role is drawn as a sign along a line, by {@link #along}. */
    public static boolean isAlong(Role role) {
        return LINES.contains(role);
    }

    /** The role of a device that leads water off; what has no device has none to draw. */
    public static Role role(Relief.Device device) {
        return switch (device) {
            case ROLLING_DIP -> Role.DIP;
            case WATER_BAR -> Role.WATER_BAR;
            case TURN_OUT -> Role.TURN_OUT;
            case RELIEF_PIPE -> Role.RELIEF_PIPE;
            case NONE -> throw new IllegalArgumentException("nothing is built there");
        };
    }

    /** The role of the end of a ditch: whether water may be led there. */
    public static Role role(DitchEnd end) {
        NamedOutlet named = end.named();
        if (named == null) {
            return Role.OUTLET_TO_ASK;
        }
        return switch (named.permitted()) {
            case YES -> Role.OUTLET_PERMITTED;
            case NO -> Role.OUTLET_FORBIDDEN;
            case NOT_KNOWN -> Role.OUTLET_TO_ASK;
        };
    }

    /** Where the sign of a proposal begins. */
    public static Place from(Relief relief) {
        return new Place(
                relief.station(),
                switch (relief.way()) {
                    case LANE -> -out(relief);
                    case LEFT_DITCH -> -OUT;
                    case RIGHT_DITCH -> OUT;
                });
    }

    /** Where it leads the water to. */
    public static Place to(Relief relief) {
        double far = relief.device() == Relief.Device.TURN_OUT ? 2 : 1;
        return new Place(relief.station(), far * out(relief));
    }

    private static double out(Relief relief) {
        return relief.side() == Side.LEFT ? -OUT : OUT;
    }

    /** Draws a sign along a line, the way that its water goes. */
    public static void along(Pen pen, Role role, Outline line) {
        double ax = line.x(0);
        double ay = line.y(0);
        double bx = line.x(line.size() - 1);
        double by = line.y(line.size() - 1);
        double length = Math.max(1e-9, Math.hypot(bx - ax, by - ay));
        double ux = (bx - ax) / length;
        double uy = (by - ay) / length;
        if (role == Role.DIP) {
            double nx = -uy * 2.4;
            double ny = ux * 2.4;
            pen.line(role, ax + nx, ay + ny, bx + nx, by + ny)
                    .line(role, ax - nx, ay - ny, bx - nx, by - ny);
        } else if (role == Role.RELIEF_PIPE) {
            PipeSign.draw(pen, line);
        } else {
            pen.line(role, line);
        }
        if (role == Role.TURN_OUT) {
            pen.area(role, Outline.circle(ax, ay, 2.6, 12));
        }
        double tip = HEAD + 2;
        pen.area(
                role,
                Outline.closed(
                        bx + ux * tip,
                        by + uy * tip,
                        bx + ux * 2 - uy * HEAD * 0.55,
                        by + uy * 2 + ux * HEAD * 0.55,
                        bx + ux * 2 + uy * HEAD * 0.55,
                        by + uy * 2 - ux * HEAD * 0.55));
    }

    /** Whether a role is the sign of an outlet, drawn by {@link #outlet}. */
    public static boolean isOutlet(Role role) {
        return role == Role.OUTLET_PERMITTED
                || role == Role.OUTLET_FORBIDDEN
                || role == Role.OUTLET_TO_ASK;
    }

    /** Draws the sign of an outlet: a ring with a dot, a cross or a half in it. */
    public static void outlet(Pen pen, Role role, double x, double y) {
        Outline ring = Outline.circle(x, y, RING, 20);
        pen.area(Role.PLATE, ring);
        if (role == Role.OUTLET_PERMITTED) {
            pen.area(role, Outline.circle(x, y, 2.2, 12));
        } else if (role == Role.OUTLET_FORBIDDEN) {
            double d = RING * Math.sqrt(0.5);
            pen.line(role, x - d, y - d, x + d, y + d).line(role, x - d, y + d, x + d, y - d);
        } else {
            pen.area(role, lowerHalf(x, y));
        }
        pen.line(role, ring);
    }

    private static Outline lowerHalf(double x, double y) {
        int steps = 12;
        double[] xy = new double[2 * (steps + 1)];
        for (int i = 0; i <= steps; i++) {
            double turn = Math.PI * i / steps;
            xy[2 * i] = x + RING * StrictMath.cos(turn);
            xy[2 * i + 1] = y + RING * StrictMath.sin(turn);
        }
        return Outline.closed(xy);
    }
}
