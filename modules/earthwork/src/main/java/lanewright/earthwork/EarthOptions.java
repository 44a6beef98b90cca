package lanewright.earthwork;

/**
 * What the earth figures rest on besides the lane.
 *
 * @param soil name in the table of volume change of what is cut and what fill is made of
 * @param topsoil name in that table of the topsoil
 * @param heaped name in the table of angles of repose of the heaped topsoil
 * @param heapRun topsoil heaps are no steeper than this, run over rise, over zero
 * @param heapHeight nor higher than this, m, over zero
 * @param lift thickness of a compacted lift of fill, m, over zero
 * @param payload what one truck carries, kg, or NaN if not known
 */
public record EarthOptions(
        String soil,
        String topsoil,
        String heaped,
        double heapRun,
        double heapHeight,
        double lift,
        double payload) {

    /**
     * Where a plan says nothing: common earth, heaps no steeper than 2:1 and no higher than 2 m so
     * that the soil stays alive and a tractor can get at it, 150 mm lifts; all common practice.
     * Taken as 6.5 ft, a hair lower, so that in feet too no height reads as more than the limit.
     */
    public static final EarthOptions USUAL =
            new EarthOptions(
                    "common earth",
                    "common earth",
                    "common earth, dry",
                    2,
                    6.5 * 0.3048,
                    0.15,
                    Double.NaN);

    /** Checks the ranges. */
    public EarthOptions {
        if (!(heapRun > 0 && heapHeight > 0 && lift > 0)) {
            throw new IllegalArgumentException(
                    "heap slope, heap height and lift must be over 0, were "
                            + heapRun
                            + ", "
                            + heapHeight
                            + ", "
                            + lift);
        }
        if (payload <= 0) {
            throw new IllegalArgumentException("payload must be over 0, was " + payload);
        }
    }

    /** The same with another soil, lift and truck. */
    public EarthOptions with(String otherSoil, double otherLift, double otherPayload) {
        return new EarthOptions(
                otherSoil, topsoil, heaped, heapRun, heapHeight, otherLift, otherPayload);
    }
}
