package lanewright.drainage.culvert;

import java.util.Arrays;
import java.util.Objects;
import lanewright.drainage.channel.Check;
import lanewright.drainage.channel.Rising;
import org.jspecify.annotations.Nullable;

/**
 * A pipe-arch: wider than high, with a flattened bottom.
 *
 * <p>Makers give span, rise and area; the arcs between differ from maker to maker. Ours has exactly
 * these three: it is widest at a third of its rise, half an ellipse above, and below it half of
 * {@code |x/a|^p + |y/b|^p = 1} with the exponent that gives the area. Its outline is a line of
 * {@value #PIECES} straight pieces a side for each half.
 */
public final class PipeArch implements BarrelShape {

    private static final int PIECES = 240;

    /** Height of the widest place over the rise; makers' tables have 0.29 to 0.36. Our choice. */
    private static final double WIDEST = 1.0 / 3;

    /** Exponents beyond these are no pipe-arch: sides caving in, or a box below. */
    private static final double LEAST_EXPONENT = 1.05;

    private static final double MOST_EXPONENT = 12;

    private final double span;
    private final double rise;
    private final double exponent;
    private final double[] heights;
    private final double[] halves;
    private final double[] areas;
    private final double[] walls;
    private final double risingTo;

    private PipeArch(double span, double rise, double exponent) {
        this.span = span;
        this.rise = rise;
        this.exponent = exponent;
        int count = 2 * PIECES + 1;
        heights = new double[count];
        halves = new double[count];
        double widest = rise * WIDEST;
        for (int i = 0; i <= PIECES; i++) {
            double turn = Math.PI / 2 * i / PIECES;
            heights[i] = widest * (1 - Math.pow(Math.cos(turn), 2 / exponent));
            halves[i] = span / 2 * Math.pow(Math.sin(turn), 2 / exponent);
            heights[PIECES + i] = widest + (rise - widest) * Math.sin(turn);
            halves[PIECES + i] = span / 2 * Math.cos(turn);
        }
        heights[count - 1] = rise;
        halves[count - 1] = 0;
        areas = new double[count];
        walls = new double[count];
        for (int i = 1; i < count; i++) {
            double up = heights[i] - heights[i - 1];
            areas[i] = areas[i - 1] + up * (halves[i] + halves[i - 1]);
            walls[i] = walls[i - 1] + 2 * Math.hypot(up, halves[i] - halves[i - 1]);
        }
        int most = 1;
        for (int i = 2; i < count; i++) {
            if (conveyance(i) > conveyance(most)) {
                most = i;
            }
        }
        risingTo = heights[most];
    }

    private double conveyance(int i) {
        return areas[i] * Math.pow(areas[i] / walls[i], 2.0 / 3);
    }

    /**
     * A pipe-arch of three sold figures.
     *
     * @param span width inside, m
     * @param rise height inside, m
     * @param area inside, m²
     * @throws IllegalArgumentException if the three do not go together
     */
    public static PipeArch of(double span, double rise, double area) {
        Check.positive("span of a pipe-arch, m,", span);
        Check.positive("rise of a pipe-arch, m,", rise);
        Check.positive("area of a pipe-arch, m²,", area);
        double least = new PipeArch(span, rise, LEAST_EXPONENT).fullArea();
        double most = new PipeArch(span, rise, MOST_EXPONENT).fullArea();
        if (area < least || area > most) {
            throw new IllegalArgumentException(
                    "a pipe-arch of "
                            + span
                            + " by "
                            + rise
                            + " m has between "
                            + least
                            + " and "
                            + most
                            + " m², was "
                            + area
                            + "; look the three up in one row of the maker's table");
        }
        double more =
                Rising.where(
                        over -> new PipeArch(span, rise, LEAST_EXPONENT + over).fullArea(),
                        area,
                        MOST_EXPONENT - LEAST_EXPONENT);
        return new PipeArch(span, rise, LEAST_EXPONENT + more);
    }

    /** Index of the outline's corner at or below a height. */
    private int below(double height) {
        int found = Arrays.binarySearch(heights, height);
        int index = found >= 0 ? found : -found - 2;
        return Math.max(0, Math.min(heights.length - 2, index));
    }

    private double half(int i, double height) {
        double up = heights[i + 1] - heights[i];
        if (up <= 0) {
            return halves[i + 1];
        }
        return halves[i] + (halves[i + 1] - halves[i]) * (height - heights[i]) / up;
    }

    @Override
    public double area(double depth) {
        double height = part(depth) * rise;
        int i = below(height);
        return areas[i] + (height - heights[i]) * (halves[i] + half(i, height));
    }

    @Override
    public double wettedPerimeter(double depth) {
        double height = part(depth) * rise;
        int i = below(height);
        return walls[i] + 2 * Math.hypot(height - heights[i], half(i, height) - halves[i]);
    }

    @Override
    public double topWidth(double depth) {
        double height = part(depth) * rise;
        return 2 * half(below(height), height);
    }

    @Override
    public double risingTo() {
        return risingTo;
    }

    @Override
    public double rise() {
        return rise;
    }

    @Override
    public double span() {
        return span;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof PipeArch arch
                && Double.compare(span, arch.span) == 0
                && Double.compare(rise, arch.rise) == 0
                && Double.compare(exponent, arch.exponent) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(span, rise, exponent);
    }

    @Override
    public String toString() {
        return "PipeArch[span=" + span + ", rise=" + rise + ", area=" + fullArea() + "]";
    }
}
