package lanewright.planner.document;

import java.util.List;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.CrossFall;
import lanewright.lane.shape.DitchRule;

/**
 * A shape that the lane is given across, by name.
 *
 * @param name how stretches call it
 * @param width travelled width at the top of the stone, m
 * @param fall which way it falls
 * @param crossSlope rise over run of the travelled way
 * @param bed how the stone sits
 * @param layers stone, from the top down; may be empty
 * @param subgradeFall cross slope of the subgrade under the stone; NaN for parallel
 * @param left the left side, looking up-station
 * @param right the right side
 * @param strip whether topsoil is stripped first
 * @param topsoilBack topsoil put back on slopes, m
 * @param topsoilInDitch whether it is put back in ditch bottoms too
 */
public record ShapePart(
        String name,
        double width,
        CrossFall fall,
        double crossSlope,
        Bed bed,
        List<Layer> layers,
        double subgradeFall,
        Side left,
        Side right,
        boolean strip,
        double topsoilBack,
        boolean topsoilInDitch) {
    /** Copies the list and checks the ranges. */
    public ShapePart {
        layers = List.copyOf(layers);
        if (name.isBlank()) {
            throw new IllegalArgumentException("a shape needs a name");
        }
        if (!(width >= 1.5 && width <= 30)) {
            throw new IllegalArgumentException("the width must be 1.5 to 30 m (5 to 98 ft)");
        }
        if (!(crossSlope >= 0 && crossSlope <= 0.25)) {
            throw new IllegalArgumentException("the cross slope must be 0 to 25 %");
        }
        if (!(topsoilBack >= 0 && topsoilBack <= 1)) {
            throw new IllegalArgumentException("topsoil put back must be 0 to 1 m thick");
        }
    }

    /**
     * A layer of stone.
     *
     * @param role the plain role that names it, such as {@code base}
     * @param thickness compacted, m
     * @param edgeSlope run over rise of its edges where stone lies on top
     * @param width width of its top, m; NaN to begin where the layer above ends
     */
    public record Layer(String role, double thickness, double edgeSlope, double width) {
        /** Checks the ranges. */
        public Layer {
            if (role.isBlank()) {
                throw new IllegalArgumentException("a layer needs a role, such as base");
            }
            if (!(thickness > 0 && thickness <= 2)) {
                throw new IllegalArgumentException("a layer is over 0 and at most 2 m thick");
            }
            if (!(edgeSlope >= 0 && edgeSlope <= 10)) {
                throw new IllegalArgumentException("edges slope 0:1 to 10:1");
            }
        }
    }

    /**
     * One side.
     *
     * @param shoulder width, m
     * @param foreslope run over rise
     * @param ditch when a ditch is dug
     * @param ditchDepth depth below the hinge, m
     * @param ditchBottom width of its flat bottom, m, zero for a V
     * @param backslope run over rise
     * @param cutSlope run over rise where there is no ditch
     */
    public record Side(
            double shoulder,
            double foreslope,
            DitchRule ditch,
            double ditchDepth,
            double ditchBottom,
            double backslope,
            double cutSlope) {
        /** Checks the ranges. */
        public Side {
            if (!(shoulder >= 0 && shoulder <= 10)) {
                throw new IllegalArgumentException("a shoulder is 0 to 10 m wide");
            }
            for (double slope : new double[] {foreslope, backslope, cutSlope}) {
                if (!(slope >= 0.25 && slope <= 20)) {
                    throw new IllegalArgumentException("side slopes must be 0.25:1 to 20:1");
                }
            }
            if (!(ditchDepth > 0 && ditchDepth <= 3) || !(ditchBottom >= 0 && ditchBottom <= 10)) {
                throw new IllegalArgumentException(
                        "a ditch is over 0 and at most 3 m deep, its bottom 0 to 10 m wide");
            }
        }
    }

    /**
     * Where a shape holds.
     *
     * @param from station, m
     * @param to station, m; positive infinity for the end of the lane
     * @param shape name of the shape
     */
    public record Along(double from, double to, String shape) {
        /** Checks the order. */
        public Along {
            if (!(from >= 0 && from < to)) {
                throw new IllegalArgumentException("a stretch runs forward from 0 or more");
            }
        }
    }

    /**
     * A ditch bottom with a grade of its own.
     *
     * @param side which side, looking up-station
     * @param from station, m
     * @param to station, m; positive infinity for the end of the lane
     * @param fromHeight height of the bottom at {@code from}, m
     * @param toHeight height of the bottom at {@code to}, m
     */
    public record OwnDitch(Hand side, double from, double to, double fromHeight, double toHeight) {
        /** Checks the order and that heights are finite. */
        public OwnDitch {
            if (!(from >= 0 && from < to)
                    || !Double.isFinite(fromHeight)
                    || !Double.isFinite(toHeight)) {
                throw new IllegalArgumentException(
                        "a stretch runs forward from 0 or more, between finite heights");
            }
        }
    }

    /** A side, looking up-station. */
    public enum Hand {
        /** Left. */
        LEFT,
        /** Right. */
        RIGHT
    }
}
