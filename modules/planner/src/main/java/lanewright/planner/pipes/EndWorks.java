package lanewright.planner.pipes;

import java.util.Optional;
import lanewright.drainage.channel.ChannelShape;
import lanewright.measure.Assumption;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;

/**
 * What is built at the ends of a pipe besides the pipe: the basin in which a relief culvert begins,
 * the dam in the ditch below it, the headwalls.
 *
 * @param basin empty where the pipe begins at the bottom of the ditch, or in none
 * @param dam empty for anything but a relief culvert, or if its ditch is not known
 * @param walls empty without headwalls
 */
public record EndWorks(Optional<Basin> basin, Optional<Dam> dam, Optional<Walls> walls) {

    private static final double INCH = 0.0254;

    private static final double FOOT = 0.3048;

    /** Nothing. */
    public static final EndWorks NONE =
            new EndWorks(Optional.empty(), Optional.empty(), Optional.empty());

    /** Stone in all of it as laid, m³. */
    public double stone() {
        return basin.map(Basin::stone).orElse(0.0) + dam.map(Dam::stone).orElse(0.0);
    }

    /**
     * A pit with a square bottom and sides of 1 : 1, laid out with stone.
     *
     * @param deep how much deeper than the bottom of the ditch, m
     * @param bottom side of its bottom, m
     * @param dug bank volume, the room of its stone in it, m³
     * @param stone as laid, m³
     */
    public record Basin(double deep, double bottom, double dug, double stone) {

        /** The least side of its bottom, m: three feet. Common practice. */
        private static final double LEAST = 3 * FOOT;

        /** Room beside the pipes on each side, m: a foot. Common practice. */
        private static final double BESIDE = FOOT;

        /** Thickness of its stone, m: six inches. Common practice. */
        private static final double THICK = 6 * INCH;

        /**
         * The basin of a pipe.
         *
         * @param deep how much deeper than the bottom of the ditch, m, over zero
         */
        static Basin of(double deep, Laid laid) {
            double bottom = Math.max(LEAST, laid.across() + 2 * BESIDE);
            double top = bottom + 2 * deep;
            double room = deep / 3 * (bottom * bottom + top * top + bottom * top);
            double sides = 4 * (bottom + top) / 2 * deep * Math.sqrt(2);
            double stone = (bottom * bottom + sides) * THICK;
            return new Basin(deep, bottom, room + stone, stone);
        }
    }

    /**
     * A dam of stone across the ditch just below the inlet.
     *
     * @param high as high as the ditch is deep, m
     * @param stone as laid, m³
     */
    public record Dam(double high, double stone) {

        /** Its crest along the ditch, m: a foot. Common practice. */
        private static final double CREST = FOOT;

        /** Run over rise of both its faces. Common practice. */
        private static final double FACE = 2;

        /** The dam that fills a ditch of one shape up to a height. */
        static Dam of(double high, ChannelShape ditch) {
            double faces =
                    ditch.bottom() * high * high / 2
                            + (ditch.left() + ditch.right()) / 6 * high * high * high;
            return new Dam(high, CREST * ditch.area(high) + 2 * FACE * faces);
        }
    }

    /**
     * Two headwalls of concrete, each on a footing of its own length.
     *
     * @param high over the bottom of the pipe, m
     * @param length of each, m
     * @param concrete of both with their footings, m³
     * @param dug for both footings, bank volume, m³
     */
    public record Walls(double high, double length, double concrete, double dug) {

        /** The slope turns around a wall's ends at so many across to one up. Common practice. */
        private static final double TURN = 1.5;

        /** Thickness of the wall, m: eight inches. Common practice. */
        private static final double THICK = 8 * INCH;

        /** Width and depth of the footing, m: two feet by one. Common practice. */
        private static final double WIDE = 2 * FOOT;

        private static final double DEEP = FOOT;

        /** The headwalls of a pipe, so high over the bottom of its bore. */
        static Walls of(double high, Laid laid) {
            double length = laid.across() + 2 * TURN * high;
            double footings = 2 * length * WIDE * DEEP;
            double through = laid.below(Math.min(high, laid.outsideHeight()));
            double walls = 2 * (length * high - through) * THICK;
            return new Walls(high, length, walls + footings, footings);
        }
    }

    /** What the quantities rest on. */
    static Assumption assumption() {
        return new Assumption(
                "what is built at the ends of pipes",
                Saying.of(
                        "basin of a relief culvert: bottom {} square at least, sides 1:1, {} of"
                                + " stone; dam in its ditch: of stone, as high as the ditch is"
                                + " deep, {} long on top, faces 2:1; headwalls: concrete {} thick,"
                                + " so long that the slope turns around them at 1.5:1, on footings"
                                + " {} wide and {} deep; where frost goes deeper, or the ground is"
                                + " soft, they take more",
                        Quantity.length(Basin.LEAST),
                        Quantity.depth(Basin.THICK),
                        Quantity.length(Dam.CREST),
                        Quantity.depth(Walls.THICK),
                        Quantity.length(Walls.WIDE),
                        Quantity.length(Walls.DEEP)),
                Assumption.Mark.COMMON_PRACTICE,
                "common practice, no source");
    }
}
