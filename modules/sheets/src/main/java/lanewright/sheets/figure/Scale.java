package lanewright.sheets.figure;

import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Outline;

/**
 * From metres to the page: a level axis to the right, heights up.
 *
 * @param x0 place on the page of {@code a0}, pt
 * @param y0 place on the page of {@code b0}, pt
 * @param a0 metres along at {@code x0}
 * @param b0 height at {@code y0}, m
 * @param across pt per metre along
 * @param up pt per metre of height
 */
public record Scale(double x0, double y0, double a0, double b0, double across, double up) {

    /** A scale whose lower left corner of {@code box} is {@code a0}, {@code b0}. */
    public static Scale in(Box box, double a0, double b0, double across, double up) {
        return new Scale(box.x(), box.bottom(), a0, b0, across, up);
    }

    /** Place on the page of a distance along, pt. */
    public double x(double a) {
        return x0 + (a - a0) * across;
    }

    /** Place on the page of a height, pt. */
    public double y(double b) {
        return y0 - (b - b0) * up;
    }

    Outline ring(Between.Ring ring) {
        double[] xy = new double[2 * ring.offsets().length];
        for (int i = 0; i < ring.offsets().length; i++) {
            xy[2 * i] = x(ring.offsets()[i]);
            xy[2 * i + 1] = y(ring.heights()[i]);
        }
        return Outline.closed(xy);
    }
}
