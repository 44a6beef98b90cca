package lanewright.planner.work;

import lanewright.earthwork.Heap;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;

/**
 * Where one heap of topsoil stands. Its ridge runs straight, along the lane; its ends are as flat
 * as its sides, so that on the map it is a band of its width about its ridge, with round ends.
 *
 * @param number counted from 1, in the order of the stretches
 * @param name what the owner calls the place, empty if the program proposes it
 * @param from station where the stretch begins whose topsoil it takes, m
 * @param to station where that stretch ends, m
 * @param form its volume, loose, and its size
 * @param station of its middle, m; NaN if it lies past an end of the lane
 * @param offset of its middle, m, positive right; NaN if it lies past an end of the lane
 * @param x local easting of its middle, m
 * @param y local northing of its middle, m
 * @param alongX east part of the direction of its ridge, of 1
 * @param alongY north part of the direction of its ridge, of 1
 * @param chosen whether the owner chose the place
 * @param why why it stands here
 */
public record HeapPlace(
        int number,
        String name,
        double from,
        double to,
        Heap form,
        double station,
        double offset,
        double x,
        double y,
        double alongX,
        double alongY,
        boolean chosen,
        Saying why) {

    /** Corners of each round end of the outline. */
    private static final int ROUND = 12;

    /** Half the length of its ridge, m; zero for a round heap. */
    public double halfRidge() {
        return (form.length() - form.width()) / 2;
    }

    /** Half its width, m: how far it reaches from its ridge. */
    public double reach() {
        return form.width() / 2;
    }

    /** Where it stands, in words. */
    public Saying place() {
        if (Double.isNaN(station)) {
            return Saying.plain(name.isBlank() ? "past the end of the lane" : name);
        }
        String side = offset < 0 ? "{} left of {}" : "{} right of {}";
        return Saying.of(side, Quantity.offset(Math.abs(offset)), Quantity.station(station));
    }

    /**
     * Its outline on the map.
     *
     * @return local eastings, then local northings, counter-clockwise, the first corner not
     *     repeated, m
     */
    public double[][] outline() {
        int n = 2 * (ROUND + 1);
        double[][] xy = new double[2][n];
        for (int i = 0; i < n; i++) {
            boolean ahead = i <= ROUND;
            int k = ahead ? i : i - ROUND - 1;
            double turn = Math.PI * k / ROUND - Math.PI / 2 + (ahead ? 0 : Math.PI);
            double forward = (ahead ? halfRidge() : -halfRidge()) + reach() * StrictMath.cos(turn);
            double aside = reach() * StrictMath.sin(turn);
            xy[0][i] = x + forward * alongX - aside * alongY;
            xy[1][i] = y + forward * alongY + aside * alongX;
        }
        return xy;
    }
}
