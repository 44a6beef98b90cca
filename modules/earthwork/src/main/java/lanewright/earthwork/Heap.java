package lanewright.earthwork;

import lanewright.measure.Assumption;
import lanewright.measure.Quantity;
import lanewright.measure.Row;
import lanewright.measure.Saying;
import lanewright.measure.Tables;

/**
 * Heaps of loose earth, all alike: round ones, or one long one with a triangular section.
 *
 * <p>A cone of diameter D and height h holds {@code π D² h / 12}; a long heap of base B, height H
 * and length L holds {@code B H L / 2}, with {@code B = √(4 V / (L tan R))} and {@code H = B tan R
 * / 2}, R being the angle of its sides (S. W. Nunnally, Construction Methods and Management,
 * chapter 2; from memory, and plain geometry). The ends of a long heap slope too and hold a little
 * more, which is left out.
 *
 * @param count how many, zero if there is nothing to heap
 * @param volume of each, loose m³
 * @param height of each, m
 * @param width of the base, m; the diameter of a round heap
 * @param length of the base, m; the diameter of a round heap
 */
public record Heap(int count, double volume, double height, double width, double length) {

    /** No heap. */
    public static final Heap NONE = new Heap(0, 0, 0, 0, 0);

    /**
     * Round heaps, as few as the greatest height allows.
     *
     * @param loose volume to be heaped, loose m³, zero or more
     * @param run run over rise of their sides, over zero
     * @param highest greatest height, m, over zero
     */
    public static Heap round(double loose, double run, double highest) {
        check(loose, run, highest);
        if (loose == 0) {
            return NONE;
        }
        double most = coneVolume(2 * run * highest, highest);
        int count = (int) Math.ceil(loose / most - 1e-9);
        double each = loose / count;
        double height = StrictMath.cbrt(3 * each / (Math.PI * run * run));
        return new Heap(count, each, height, 2 * run * height, 2 * run * height);
    }

    /**
     * One long heap as high as allowed.
     *
     * @param loose volume to be heaped, loose m³, zero or more
     * @param run run over rise of its sides, over zero
     * @param height its height, m, over zero
     */
    public static Heap row(double loose, double run, double height) {
        check(loose, run, height);
        double width = 2 * run * height;
        return loose == 0 ? NONE : new Heap(1, loose, height, width, loose / (width * height / 2));
    }

    /**
     * One long heap of a given length.
     *
     * @param loose volume to be heaped, loose m³, zero or more
     * @param run run over rise of its sides, over zero
     * @param length its length, m, over zero
     */
    public static Heap along(double loose, double run, double length) {
        check(loose, run, length);
        double width = Math.sqrt(4 * loose * run / length);
        return loose == 0 ? NONE : new Heap(1, loose, width / (2 * run), width, length);
    }

    /**
     * One heap as high as allowed, its ends as flat as its sides: a ridge of length r with half a
     * cone at each end, {@code V = R H² r + π R² H³ / 3} with R the run over rise of its sides
     * (plain geometry). What is less than the cone makes one lower cone.
     *
     * @param loose volume to be heaped, loose m³, zero or more
     * @param run run over rise of its sides and ends, over zero
     * @param highest greatest height, m, over zero
     */
    public static Heap ridge(double loose, double run, double highest) {
        check(loose, run, highest);
        double width = 2 * run * highest;
        double cone = coneVolume(width, highest);
        if (loose <= cone) {
            return round(loose, run, highest);
        }
        double ridge = (loose - cone) / (run * highest * highest);
        return new Heap(1, loose, highest, width, ridge + width);
    }

    /**
     * Volume of a cone, m³.
     *
     * @param diameter of its base, m
     * @param height m
     */
    public static double coneVolume(double diameter, double height) {
        return Math.PI * diameter * diameter * height / 12;
    }

    /**
     * Run over rise of a slope at an angle.
     *
     * @param degrees from level, over 0 and under 90
     */
    public static double run(double degrees) {
        if (!(degrees > 0 && degrees < 90)) {
            throw new IllegalArgumentException("angle must be 0 to 90°, was " + degrees);
        }
        return 1 / StrictMath.tan(StrictMath.toRadians(degrees));
    }

    /**
     * Angle at which a material of the published table comes to rest, the flatter end of its range.
     *
     * @param material a name in the table of angles of repose
     * @return the angle and its source
     * @throws IllegalArgumentException if there is no such material; names the nearest
     */
    public static Repose repose(String material) {
        Row row = Tables.read("angle-of-repose").row("material", material);
        double degrees = row.number("degrees_low");
        return new Repose(
                degrees,
                row.assumption(
                        "angle of repose, " + material, Saying.of("{}", Quantity.angle(degrees))));
    }

    /**
     * An angle of repose.
     *
     * @param degrees from level
     * @param from its source
     */
    public record Repose(double degrees, Assumption from) {}

    private static void check(double loose, double run, double size) {
        if (!(loose >= 0 && run > 0 && size > 0) || Double.isInfinite(loose)) {
            throw new IllegalArgumentException(
                    "heap must have a volume of 0 or more, a slope and a size, were "
                            + loose
                            + ", "
                            + run
                            + ", "
                            + size);
        }
    }
}
