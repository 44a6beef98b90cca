package lanewright.lane.section;

import java.util.List;
import lanewright.lane.shape.LaneAt;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.TypicalSection;
import org.jspecify.annotations.Nullable;

/**
 * The sections from one stop, itself left out, to the next, and what they were made from: the lane
 * at every station that was looked at. Where to look next depends on nothing but what was seen
 * before, so on the same ground lines another lane that is equal at all these stations has the same
 * piece to the last bit.
 *
 * @param from the stop before, m; NaN if there is none
 * @param stop the stop at its end
 * @param lanes the lane wherever it was looked at
 * @param sections the sections
 * @param end what holds just after the stop
 * @param work what it took to make
 */
record Piece(
        double from,
        Stop stop,
        List<Seen> lanes,
        List<Section> sections,
        Look end,
        SectionWork work) {

    /** Copies the lists. */
    Piece {
        lanes = List.copyOf(lanes);
        sections = List.copyOf(sections);
    }

    /**
     * The lane at a station.
     *
     * @param station m along the alignment
     * @param before whether just before it
     * @param lane what the lane is there
     */
    record Seen(double station, boolean before, LaneAt lane) {}

    /** True if it begins and ends at these stops, and a design is the same lane all over it. */
    boolean fits(double start, Stop asked, LaneDesign design) {
        if (Double.compare(from, start) != 0 || !stop.equals(asked)) {
            return false;
        }
        TypicalSection ours = null;
        TypicalSection theirs = null;
        for (Seen seen : lanes) {
            LaneAt was = seen.lane;
            LaneAt is = seen.before ? design.atBefore(seen.station) : design.at(seen.station);
            if (!areThese(was.typical(), ours, is.typical(), theirs)) {
                if (!was.typical().equals(is.typical())) {
                    return false;
                }
                ours = was.typical();
                theirs = is.typical();
            }
            if (!sameNumbers(was, is)) {
                return false;
            }
        }
        return true;
    }

    /** True if two shapes are the very ones that were compared last. */
    @SuppressWarnings("ReferenceEquality") // only to compare less often
    private static boolean areThese(
            TypicalSection was,
            @Nullable TypicalSection ours,
            TypicalSection is,
            @Nullable TypicalSection theirs) {
        return was == ours && is == theirs;
    }

    private static boolean sameNumbers(LaneAt a, LaneAt b) {
        return Double.compare(a.height(), b.height()) == 0
                && Double.compare(a.leftFall(), b.leftFall()) == 0
                && Double.compare(a.rightFall(), b.rightFall()) == 0
                && Double.compare(a.leftUnder(), b.leftUnder()) == 0
                && Double.compare(a.rightUnder(), b.rightUnder()) == 0
                && Double.compare(a.leftBottom(), b.leftBottom()) == 0
                && Double.compare(a.rightBottom(), b.rightBottom()) == 0;
    }

    /** The piece that ends at a stop, in pieces ordered by station; null if none does. */
    static @Nullable Piece endingAt(Piece[] pieces, Stop stop) {
        int low = 0;
        int high = pieces.length - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            int order = Double.compare(pieces[middle].stop.station(), stop.station());
            if (order == 0) {
                return pieces[middle];
            }
            if (order < 0) {
                low = middle + 1;
            } else {
                high = middle - 1;
            }
        }
        return null;
    }
}
