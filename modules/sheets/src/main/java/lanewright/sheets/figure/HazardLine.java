package lanewright.sheets.figure;

import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;

/** How wires and buried lines read without colour: crosses along a wire, letters along both. */
public final class HazardLine {

    private static final double FIRST_CROSS = 7;
    private static final double CROSSES_APART = 14;
    private static final double LETTERS_APART = 42;
    private static final double ARM = 2.2;

    private HazardLine() {}

    /** A place on the page. */
    @FunctionalInterface
    public interface At {
        /** Does something there. */
        void place(double x, double y);
    }

    /** Whether lines of a role are lettered: {@link Role#WIRE} and {@link Role#BURIED}. */
    public static boolean isLettered(Role role) {
        return role == Role.WIRE || role == Role.BURIED;
    }

    /** The letter that stands on a line of that role. */
    public static String letter(Role role) {
        return role == Role.WIRE ? "W" : "B";
    }

    /** Draws the crosses along a wire; nothing along another line. */
    public static void crosses(Pen pen, Role role, Outline line) {
        if (role == Role.WIRE) {
            along(line, FIRST_CROSS, CROSSES_APART, (x, y) -> cross(pen, x, y));
        }
    }

    /** Where letters stand along a line. */
    public static void letters(Outline line, At at) {
        along(line, CROSSES_APART, LETTERS_APART, at);
    }

    static void cross(Pen pen, double x, double y) {
        pen.line(Role.WIRE, x - ARM, y - ARM, x + ARM, y + ARM);
        pen.line(Role.WIRE, x - ARM, y + ARM, x + ARM, y - ARM);
    }

    /** Places along a line, the first after some length and then at equal distances, pt. */
    private static void along(Outline line, double first, double step, At at) {
        double next = first;
        double gone = 0;
        for (int i = 1; i < line.size(); i++) {
            double dx = line.x(i) - line.x(i - 1);
            double dy = line.y(i) - line.y(i - 1);
            double length = Math.hypot(dx, dy);
            while (length > 0 && next <= gone + length) {
                double part = (next - gone) / length;
                at.place(line.x(i - 1) + part * dx, line.y(i - 1) + part * dy);
                next += step;
            }
            gone += length;
        }
    }
}
