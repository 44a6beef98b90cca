package lanewright.drainage.pond;

import lanewright.drainage.culvert.Inlet;
import lanewright.drainage.culvert.Material;
import org.jspecify.annotations.Nullable;

/**
 * A pipe that the plan gives: one that is there already, or one that is to be laid with the lane.
 * One that is to be laid lets water through once the lane is built, and not before.
 *
 * @param name how the owner calls it
 * @param inletX local easting of its inlet, m
 * @param inletY local northing of its inlet, m
 * @param inletInvert height of the bottom of its bore at the inlet, m
 * @param outletX local easting of its outlet, m
 * @param outletY local northing of its outlet, m
 * @param outletInvert height of the bottom of its bore at the outlet, m
 * @param diameter clear width, m, over zero
 * @param toLay whether it is still to be laid
 * @param material what it is made of, or null if nobody has said
 * @param tailwater depth of water over the bottom of its outlet in the storm, m; NaN if nobody has
 *     said
 * @param ends how its ends are made
 */
public record GivenPipe(
        String name,
        double inletX,
        double inletY,
        double inletInvert,
        double outletX,
        double outletY,
        double outletInvert,
        double diameter,
        boolean toLay,
        @Nullable Material material,
        double tailwater,
        Inlet.End ends) {
    /** Checks that the figures are finite and the diameter is over zero. */
    public GivenPipe {
        double sum = inletX + inletY + inletInvert + outletX + outletY + outletInvert;
        if (!Double.isFinite(sum) || !(diameter > 0 && diameter <= 10)) {
            throw new IllegalArgumentException(
                    "pipe "
                            + name
                            + " must have finite ends and a diameter over 0 and at most 10 m");
        }
    }

    /**
     * A pipe whose ends stick out, and of which nobody says what it is made of or how deep water
     * stands below it.
     */
    public GivenPipe(
            String name,
            double inletX,
            double inletY,
            double inletInvert,
            double outletX,
            double outletY,
            double outletInvert,
            double diameter,
            boolean toLay) {
        this(
                name,
                inletX,
                inletY,
                inletInvert,
                outletX,
                outletY,
                outletInvert,
                diameter,
                toLay,
                null,
                Double.NaN,
                Inlet.End.PROJECTING);
    }

    /** A pipe that is there already. */
    public static GivenPipe there(
            String name,
            double inletX,
            double inletY,
            double inletInvert,
            double outletX,
            double outletY,
            double outletInvert,
            double diameter) {
        return new GivenPipe(
                name, inletX, inletY, inletInvert, outletX, outletY, outletInvert, diameter, false);
    }

    /** The same pipe, still to be laid. */
    public GivenPipe laidLater() {
        return new GivenPipe(
                name,
                inletX,
                inletY,
                inletInvert,
                outletX,
                outletY,
                outletInvert,
                diameter,
                true,
                material,
                tailwater,
                ends);
    }

    /** Length along its bore, m. */
    public double length() {
        return Math.hypot(
                Math.hypot(outletX - inletX, outletY - inletY), outletInvert - inletInvert);
    }

    /** What it is, with its name, to follow "the"; fit for a pattern of words. */
    public String called() {
        String plain = name.replace("{", "(").replace("}", ")");
        return (toLay ? "new" : "existing") + " pipe \"" + plain + "\"";
    }
}
