package lanewright.drainage.storm;

import java.util.List;
import java.util.Optional;
import lanewright.drainage.Crossing;
import lanewright.drainage.channel.Check;
import lanewright.drainage.channel.Imperial;
import lanewright.drainage.culvert.Overtopping;

/**
 * A dip of rock over which water crosses the lane, where no pipe has room under it.
 *
 * <p>The lane comes down to the ground where water arrives, is level over the ford's bottom, and
 * rises again to both sides no steeper than {@link #APPROACH}. Water crosses it as a broad weir
 * (FHWA HDS-5, 2001, chapter III). The rock is sized by the speed of the water, {@code D50 = 0.0126
 * V²} in feet (FHWA HEC-14, 2006, appendix D, after Berry), lies twice as thick as that and a foot
 * at least, and ends downhill in a sill of the same rock, as deep again.
 *
 * @param down how much the lane comes down from where it is drawn, m
 * @param bottom width of its level bottom along the lane, m
 * @param approach grade of the lane down to it, rise over run
 * @param depth of still water over the bottom in the storm, m
 * @param speed of the water on it, m/s
 * @param stone median stone, m
 * @param thickness of the rock, m
 * @param length of rock across the lane, along the water, m
 * @param area of rock, m²
 * @param volume of rock with its sill, as laid, m³
 */
public record Ford(
        double down,
        double bottom,
        double approach,
        double depth,
        double speed,
        double stone,
        double thickness,
        double length,
        double area,
        double volume) {

    /** Lanes go down to a ford no steeper than this (common practice, from memory). */
    public static final double APPROACH = 0.10;

    /**
     * A lane is raised for a pipe by no more than this before a ford is offered too, m: a foot. Our
     * choice.
     */
    public static final double HIGH = Imperial.FOOT;

    /**
     * Moving water this deep knocks people off their feet, m: 6 in (US National Weather Service).
     */
    public static final double KNOCKS = 6 * Imperial.INCH;

    /** Moving water this deep floats a car, m: 12 in (US National Weather Service). */
    public static final double FLOATS = 12 * Imperial.INCH;

    /** Who says so. */
    public static final String SAFETY =
            "US National Weather Service, hydrology and flood safety: 6 in of moving water knocks a"
                    + " person off their feet, 12 in floats a car";

    /**
     * From more land than this water runs too often, and for too long, m²: 50 acres. Our choice.
     */
    private static final double LAND = 50 * 4046.8564224;

    /** The lane comes down no more than this, m: deeper, its approaches become a road cut. */
    private static final double DEEPEST = 1.5;

    private static final double LEAST_ROCK = Imperial.FOOT;

    /** Bottoms that are tried, m. */
    private static final List<Double> BOTTOMS = List.of(3.0, 4.5, 6.0, 9.0, 12.0);

    /**
     * The ford at a crossing: the narrowest bottom on which water stays under {@link #KNOCKS}, or
     * else the widest; empty where water runs from too much land or the lane lies too high.
     *
     * @param crossing where the lane is to be crossed
     * @param discharge of the storm, m³/s, over zero
     */
    static Optional<Ford> at(Crossing crossing, double discharge) {
        Check.positive("discharge, m³/s,", discharge);
        double down = height(crossing);
        if (crossing.drained() > LAND || !(down >= 0 && down <= DEEPEST)) {
            return Optional.empty();
        }
        Ford ford = null;
        for (double bottom : BOTTOMS) {
            if (ford == null || ford.depth() > KNOCKS) {
                ford = of(down, bottom, crossing.line().length(), discharge);
            }
        }
        return Optional.ofNullable(ford);
    }

    /** Height of the lane's line over the inlet's invert where the pipe crosses it, m. */
    private static double height(Crossing crossing) {
        List<Double> stations = crossing.crestStations();
        double at = crossing.line().crossing();
        for (int i = 1; i < stations.size(); i++) {
            double a = stations.get(i - 1);
            double b = stations.get(i);
            if (at >= a && at <= b) {
                double low = crossing.crestHeights().get(i - 1);
                return low + (at - a) / (b - a) * (crossing.crestHeights().get(i) - low);
            }
        }
        return Double.NaN;
    }

    /**
     * A ford of given measures.
     *
     * @param down how much the lane comes down, m, zero or more
     * @param bottom width of its level bottom, m, over zero
     * @param length of rock across the lane, m, over zero
     * @param discharge m³/s, over zero
     */
    static Ford of(double down, double bottom, double length, double discharge) {
        // A foot of side slope is always there: water stands between the approaches.
        double rise = Math.max(down, FLOATS);
        double run = rise / APPROACH;
        var crest =
                new Overtopping(
                        List.of(0.0, run, run + bottom, 2 * run + bottom),
                        List.of(rise, 0.0, 0.0, rise),
                        Overtopping.gravel(0.15));
        double depth = crest.level(discharge);
        double speed = crest.speed(depth);
        double feet = speed / Imperial.FOOT;
        double stone = 0.0126 * feet * feet * Imperial.FOOT;
        double thickness = Math.max(LEAST_ROCK, 2 * stone);
        double wide = bottom + 2 * depth / APPROACH;
        double area = wide * length;
        // The sill is as wide along the water as it is deep, and that is once more the thickness.
        double volume = area * thickness + wide * thickness * thickness;
        return new Ford(
                down, bottom, APPROACH, depth, speed, stone, thickness, length, area, volume);
    }
}
