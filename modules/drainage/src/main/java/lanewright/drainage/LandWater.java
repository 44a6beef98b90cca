package lanewright.drainage;

import java.util.List;
import lanewright.drainage.flow.FlowGrid;
import lanewright.drainage.hollows.RainStep;
import org.jspecify.annotations.Nullable;

/**
 * Water that stands in the hollows of the land and water that crosses the owner's boundary, found
 * on the grid of cells. Pipes that let water through join the cells of their ends.
 *
 * @param spots one for each low spot of the report's {@code after}, in its order
 * @param steps the rain that fell, step by step
 * @param soaks how fast the ground takes water in, m/s; NaN if not known, and then none was taken
 * @param isOwn whether the border is the owner's own boundary; otherwise it is the survey's edge
 * @param before what crosses the border on the ground as it is
 * @param after the same with the lane built
 * @param waysOut the largest ways out over the border, before or after, largest first
 */
public record LandWater(
        List<InSpot> spots,
        List<RainStep> steps,
        double soaks,
        boolean isOwn,
        Border before,
        Border after,
        List<WayOut> waysOut) {

    /** Copies the lists. */
    public LandWater {
        spots = List.copyOf(spots);
        steps = List.copyOf(steps);
        waysOut = List.copyOf(waysOut);
    }

    /** Nothing known of any low spot. */
    public static final LandWater NONE =
            new LandWater(
                    List.of(), List.of(), Double.NaN, false, Border.NONE, Border.NONE, List.of());

    /**
     * What stands in a low spot.
     *
     * @param inside how many hollows worth listing join in it, one inside another, before it is
     *     full; zero if it is a single one
     * @param deep how many lie inside one another at most, itself counted, one or more
     * @param holds how likely it is that water stands here at all, given the survey's error of a
     *     height; NaN if that is not known
     * @param runsOver how much even rain fills it to its spill if nothing soaks in, m; NaN if cells
     *     do not show it, or a pipe keeps it from filling
     * @param depths of water over its deepest place after each step of the rain, m
     * @param stands how long water stands there after the last step, s; NaN if nobody said how fast
     *     the ground takes it in
     */
    public record InSpot(
            int inside,
            int deep,
            double holds,
            double runsOver,
            List<Double> depths,
            double stands) {
        /** Copies the list. */
        public InSpot {
            depths = List.copyOf(depths);
        }
    }

    /**
     * What crosses a border, as the land whose water does.
     *
     * @param enters land outside whose water comes in, m²; land that was surveyed
     * @param leaves land whose water goes out, that of the land outside that came in included, m²
     * @param ways how many ways that drain enough to be shown go out
     * @param x local easting of the way out that drains most, m; NaN without any
     * @param y local northing of it, m
     * @param most land that drains there, m²
     * @param isLeast whether more land may drain there from beyond the survey
     * @param way the longest way of water to it
     * @param exits the ways out that drain most, largest first; not all of them
     */
    public record Border(
            double enters,
            double leaves,
            int ways,
            double x,
            double y,
            double most,
            boolean isLeast,
            FlowGrid.Way way,
            List<Exit> exits) {
        /** Copies the list. */
        public Border {
            exits = List.copyOf(exits);
        }

        /** Nothing crosses. */
        static final Border NONE =
                new Border(0, 0, 0, Double.NaN, Double.NaN, 0, false, FlowGrid.Way.NONE, List.of());
    }

    /**
     * A place where water crosses a border outward.
     *
     * @param x local easting, m
     * @param y local northing, m
     * @param drained land that drains there, m²
     * @param isLeast whether more land may drain there from beyond the survey
     * @param way the longest way of water to it
     */
    public record Exit(double x, double y, double drained, boolean isLeast, FlowGrid.Way way) {}

    /**
     * A way out, before and after.
     *
     * @param name by which maps and tables call it, such as {@code B2}
     * @param x local easting, m
     * @param y local northing, m
     * @param station nearest station of the lane, m; NaN past its ends
     * @param offset from the lane's line, m, positive right; NaN past its ends
     * @param before on the ground as it is; null if nothing worth telling goes out near there
     * @param after with the lane built; null likewise
     */
    public record WayOut(
            String name,
            double x,
            double y,
            double station,
            double offset,
            @Nullable Exit before,
            @Nullable Exit after) {}
}
