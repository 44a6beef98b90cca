package lanewright.sheets.figure;

import java.util.Arrays;
import lanewright.lane.section.SectionLine;
import org.jspecify.annotations.Nullable;

/** Parts of lines across the lane. */
final class Clipped {

    private Clipped() {}

    /** A line from one offset to another, m, as far as it reaches; null if it reaches nowhere. */
    static @Nullable SectionLine of(SectionLine line, double from, double to) {
        if (line.size() < 2) {
            return null;
        }
        double begin = Math.max(from, line.offset(0));
        double end = Math.min(to, line.offset(line.size() - 1));
        if (!(begin < end)) {
            return null;
        }
        double[] offsets = new double[line.size() + 2];
        double[] heights = new double[line.size() + 2];
        offsets[0] = begin;
        heights[0] = line.at(begin);
        int count = 1;
        for (int i = 0; i < line.size(); i++) {
            if (line.offset(i) > begin && line.offset(i) < end) {
                offsets[count] = line.offset(i);
                heights[count++] = line.height(i);
            }
        }
        offsets[count] = end;
        heights[count++] = line.at(end);
        return SectionLine.of(Arrays.copyOf(offsets, count), Arrays.copyOf(heights, count));
    }
}
