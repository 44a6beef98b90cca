package lanewright.sheets.figure;

import lanewright.lane.section.Corner;

/**
 * A pipe that passes under the lane.
 *
 * @param words what stands beside it
 * @param station where it crosses the lane's line, m
 * @param inlet offset of the end that water enters, and height of the bottom of its bore there, m
 * @param outlet the same of the other end
 * @param bore clear width, m; NaN where it is still to be sized
 */
public record PipeUnder(String words, double station, Corner inlet, Corner outlet, double bore) {

    /** The higher of the heights of its bottom at both ends, m. */
    double high() {
        return Math.max(inlet.height(), outlet.height());
    }

    /** The lower of them, m. */
    double low() {
        return Math.min(inlet.height(), outlet.height());
    }

    /** How tall its bore is drawn, pt: to scale, but so that it can be seen. */
    double tall(double up) {
        return Double.isNaN(bore) ? UNSIZED : Math.max(LEAST, bore * up);
    }

    /** Height of a bore that is still to be sized, pt. */
    private static final double UNSIZED = 6;

    /** Least height of a bore, pt. */
    private static final double LEAST = 4;
}
