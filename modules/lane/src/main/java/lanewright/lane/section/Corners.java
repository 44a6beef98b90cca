package lanewright.lane.section;

import java.util.Arrays;

/** A growing line of corners, used again for every section. */
final class Corners {

    double[] out = new double[64];
    double[] height = new double[64];
    int size;

    void clear() {
        size = 0;
    }

    void add(double at, double z) {
        if (size == out.length) {
            out = Arrays.copyOf(out, 2 * size);
            height = Arrays.copyOf(height, 2 * size);
        }
        out[size] = at;
        height[size++] = z;
    }

    /** Adds a corner unless it is the last one over again. */
    void addNew(double at, double z) {
        if (size == 0 || out[size - 1] != at || height[size - 1] != z) {
            add(at, z);
        }
    }

    double lastOut() {
        return out[size - 1];
    }

    double lastHeight() {
        return height[size - 1];
    }

    /**
     * One line from the far end of {@code left} through the alignment to the far end of {@code
     * right}; both begin at the alignment with the same height, which stands in it once.
     */
    static SectionLine join(Corners left, Corners right) {
        int skip = left.size > 0 && right.size > 0 ? 1 : 0;
        int n = left.size + right.size - skip;
        double[] offsets = new double[n];
        double[] heights = new double[n];
        for (int i = 0; i < left.size; i++) {
            offsets[left.size - 1 - i] = 0 - left.out[i];
            heights[left.size - 1 - i] = left.height[i];
        }
        for (int i = skip; i < right.size; i++) {
            offsets[left.size + i - skip] = right.out[i];
            heights[left.size + i - skip] = right.height[i];
        }
        return SectionLine.owning(offsets, heights);
    }
}
