package lanewright.drainage;

import java.util.List;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.culvert.Inlet;
import lanewright.drainage.culvert.Material;
import lanewright.drainage.flow.FlowGrid;
import org.jspecify.annotations.Nullable;

/**
 * A place where water is led under the lane by a pipe: one of the plan, or one that a wet place
 * wants.
 *
 * @param name of the pipe or of the place
 * @param line how the pipe lies, once all is done that the place wants first
 * @param diameter clear width of a pipe of the plan, m; NaN where none is chosen yet
 * @param material what it is made of, or null if nobody has said
 * @param toLay whether it is still to be laid
 * @param raise how much the lane is raised for it first, m
 * @param drained land whose water comes to it, m²
 * @param isLeast whether more land may drain to it from beyond the survey
 * @param way the longest way of that water
 * @param crestStations stations along the lane on both sides of it, m
 * @param crestHeights height of the lane's line there above the inlet's invert, m
 * @param tailwater water over the bottom of its outlet
 * @param ends how the ends of its pipe are made
 * @param overflow the lowest way besides the pipe that water before it has; null where none is
 *     known
 */
public record Crossing(
        String name,
        CulvertLine line,
        double diameter,
        @Nullable Material material,
        boolean toLay,
        double raise,
        double drained,
        boolean isLeast,
        FlowGrid.Way way,
        List<Double> crestStations,
        List<Double> crestHeights,
        Tailwater tailwater,
        Inlet.End ends,
        @Nullable Overflow overflow) {

    /** A crossing by a pipe whose ends stick out, with no way for water besides it. */
    public Crossing(
            String name,
            CulvertLine line,
            double diameter,
            @Nullable Material material,
            boolean toLay,
            double raise,
            double drained,
            boolean isLeast,
            FlowGrid.Way way,
            List<Double> crestStations,
            List<Double> crestHeights,
            Tailwater tailwater) {
        this(
                name,
                line,
                diameter,
                material,
                toLay,
                raise,
                drained,
                isLeast,
                way,
                crestStations,
                crestHeights,
                tailwater,
                Inlet.End.PROJECTING,
                null);
    }

    /**
     * Water over the bottom of an outlet in the storm, before the water of its own ditch is known.
     *
     * @param from who says so, or where it stands
     * @param depth over the outlet's invert, m; NaN where nobody has said and no pool stands there
     */
    public record Tailwater(From from, double depth) {
        /** Nobody has said and no pool stands there. */
        public static final Tailwater FREE = new Tailwater(From.NOWHERE, Double.NaN);

        /** Where it is known from. */
        public enum From {
            /** The plan. */
            OWNER,
            /** A pool into which the outlet runs, filled to where it runs over. */
            POOL,
            /** A ditch into which it runs. */
            DITCH,
            /** It runs out freely. */
            NOWHERE
        }
    }

    /** Copies the lists. */
    public Crossing {
        crestStations = List.copyOf(crestStations);
        crestHeights = List.copyOf(crestHeights);
    }

    /** Whether the plan says how wide its pipe is. */
    public boolean isGiven() {
        return !Double.isNaN(diameter);
    }
}
