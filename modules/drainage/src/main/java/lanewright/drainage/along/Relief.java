package lanewright.drainage.along;

import java.util.List;
import lanewright.measure.Saying;
import org.jspecify.annotations.Nullable;

/**
 * A proposal to lead water off the lane or out of a ditch where it has run as far as a published
 * table allows.
 *
 * @param device what to build
 * @param way what the water runs in up to there
 * @param station m
 * @param side the side that the water is led to, or null where that was not found
 * @param grade of the way there, rise over run, never negative
 * @param spacing distance that the table allows on the grades of the whole way, m
 * @param why why this and not another
 * @param source who published the distance, with edition
 * @param number which of the relief culverts it is, from 1; 0 for anything else
 * @param pipe how a relief culvert lies: the highest that has room under the lane as drawn, or, if
 *     none has, the one from the bottom of the ditch; null for anything else
 * @param fits whether that pipe falls enough and has room
 * @param bottom height of the ditch's bottom at it, m; NaN for anything but a relief culvert
 * @param pipes the pipes that fall enough, from one that begins at the bottom of the ditch to ones
 *     that begin in ever deeper basins
 */
public record Relief(
        Device device,
        Descents.Way way,
        double station,
        @Nullable Side side,
        double grade,
        double spacing,
        Saying why,
        String source,
        int number,
        @Nullable CulvertLine pipe,
        boolean fits,
        double bottom,
        List<CulvertLine> pipes) {

    /** Copies the list. */
    public Relief {
        pipes = List.copyOf(pipes);
    }

    /** Anything but a pipe. */
    public Relief(
            Device device,
            Descents.Way way,
            double station,
            @Nullable Side side,
            double grade,
            double spacing,
            Saying why,
            String source) {
        this(
                device,
                way,
                station,
                side,
                grade,
                spacing,
                why,
                source,
                0,
                null,
                false,
                Double.NaN,
                List.of());
    }

    /** What leads water off. */
    public enum Device {
        /** A long flat dip across the lane, that is driven through. */
        ROLLING_DIP("rolling dip", "RD"),
        /** A bar of earth across a steep lane. */
        WATER_BAR("water bar", "WB"),
        /** A ditch that leads out over lower ground. */
        TURN_OUT("turn-out", "TO"),
        /** A pipe from the ditch to the other side. */
        RELIEF_PIPE("relief culvert", "RC"),
        /** There is no lower ground on either side. */
        NONE("no way out found", "–");

        private final String words;
        private final String sign;

        Device(String words, String sign) {
            this.words = words;
            this.sign = sign;
        }

        /** In words. */
        public String words() {
            return words;
        }

        /** Short, for drawings. */
        public String sign() {
            return sign;
        }
    }

    /** Short, for drawings and tables; pipes are numbered, such as {@code RC2}. */
    public String sign() {
        return device.sign() + (number > 0 ? number : "");
    }

    /** What it is called among the pipes, such as {@code relief culvert RC2}. */
    public String name() {
        return device.words() + " " + sign();
    }

    /** Whether water that comes down a ditch to it goes no farther down that ditch. */
    public boolean takesDitch() {
        return device == Device.TURN_OUT || device == Device.RELIEF_PIPE;
    }

    /** How many of a device there are. */
    public static long count(List<Relief> reliefs, Device device) {
        return reliefs.stream().filter(each -> each.device() == device).count();
    }
}
