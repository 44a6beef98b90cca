package lanewright.planner.document;

/**
 * What is known of the soil.
 *
 * @param topsoil where the depth of topsoil comes from
 * @param topsoilDepth depth of topsoil everywhere, m; NaN when it comes from probes
 * @param bearing where the depth to soil that bears comes from
 * @param bearingDepth depth to it everywhere, m; NaN when it comes from probes or is not known
 * @param soil name of a row of the table of volume change: what is cut and what fill is made of
 * @param washes how easily the soil washes away
 * @param lift thickness of a compacted lift of fill, m
 */
public record EarthPart(
        Depth topsoil,
        double topsoilDepth,
        Depth bearing,
        double bearingDepth,
        String soil,
        Washes washes,
        double lift) {
    /** Checks the ranges. */
    public EarthPart {
        check(topsoil, topsoilDepth, "topsoil");
        check(bearing, bearingDepth, "bearing soil");
        if (!(lift > 0 && lift <= 1)) {
            throw new IllegalArgumentException("a lift is over 0 and at most 1 m thick");
        }
    }

    private static void check(Depth where, double depth, String what) {
        boolean given = depth >= 0 && depth <= 5;
        if (where == Depth.EVERYWHERE ? !given : !Double.isNaN(depth)) {
            throw new IllegalArgumentException("the depth of " + what + " must be 0 to 5 m");
        }
    }

    /** Where a depth comes from. */
    public enum Depth {
        /** The same everywhere. */
        EVERYWHERE,
        /** From probe holes. */
        FROM_PROBES,
        /** Nobody has looked. */
        NOT_KNOWN
    }

    /** How easily the soil washes. */
    public enum Washes {
        /** Coarse rock, gravel, some clay. */
        LITTLE,
        /** Silt, fine sand and other fine, friable soil. */
        EASILY,
        /** Nobody has said. */
        NOT_KNOWN
    }
}
