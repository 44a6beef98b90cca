package lanewright.sheets.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An upright box on the page, pt, x right, y down.
 *
 * @param x left side
 * @param y top
 * @param width zero or more
 * @param height zero or more
 */
public record Box(double x, double y, double width, double height) {
    /** Checks the ranges. */
    public Box {
        if (!(width >= 0) || !(height >= 0) || !Double.isFinite(x + y + width + height)) {
            throw new IllegalArgumentException(
                    "box must be finite and not negative, was "
                            + width
                            + " x "
                            + height
                            + " at "
                            + x
                            + ", "
                            + y);
        }
    }

    /**
     * The smallest box around lines.
     *
     * @param lines one at least
     */
    public static Box around(List<Outline> lines) {
        double left = Double.POSITIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (Outline line : lines) {
            for (int i = 0; i < line.size(); i++) {
                left = Math.min(left, line.x(i));
                right = Math.max(right, line.x(i));
                top = Math.min(top, line.y(i));
                bottom = Math.max(bottom, line.y(i));
            }
        }
        return new Box(left, top, right - left, bottom - top);
    }

    /** Right side. */
    public double right() {
        return x + width;
    }

    /** Bottom. */
    public double bottom() {
        return y + height;
    }

    /** Middle across. */
    public double middle() {
        return x + width / 2;
    }

    /** The box made smaller on all sides. */
    public Box inset(double by) {
        return new Box(x + by, y + by, Math.max(0, width - 2 * by), Math.max(0, height - 2 * by));
    }

    /** The same box moved. */
    public Box moved(double dx, double dy) {
        return new Box(x + dx, y + dy, width, height);
    }

    /** What lies in both boxes; null if nothing does. */
    public @Nullable Box within(Box other) {
        double left = Math.max(x, other.x);
        double top = Math.max(y, other.y);
        double wide = Math.min(right(), other.right()) - left;
        double tall = Math.min(bottom(), other.bottom()) - top;
        return wide >= 0 && tall >= 0 ? new Box(left, top, wide, tall) : null;
    }

    /** True if the point lies in it, sides included. */
    public boolean holds(double px, double py) {
        return px >= x && px <= right() && py >= y && py <= bottom();
    }
}
