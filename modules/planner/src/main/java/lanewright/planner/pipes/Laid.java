package lanewright.planner.pipes;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.culvert.Barrel;
import lanewright.drainage.culvert.Circle;
import lanewright.drainage.culvert.Material;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;

/**
 * Pipes side by side, all alike, as they lie in one trench.
 *
 * @param barrel each
 * @param count how many
 * @param stated whether the plan says what they are made of; else corrugated metal is taken
 */
public record Laid(Barrel barrel, int count, boolean stated) {

    /** Pipes side by side stand at least so far apart, m: a foot. Common practice. */
    private static final double APART = 0.3048;

    /** Checks the count. */
    public Laid {
        if (count < 1) {
            throw new IllegalArgumentException("there is at least one pipe, was " + count);
        }
    }

    /** What each is made of. */
    public Material material() {
        return barrel.material();
    }

    /** Clear width of each, m. */
    public double span() {
        return barrel.inside().span();
    }

    /** Clear height of each, m. */
    public double rise() {
        return barrel.inside().rise();
    }

    /** Whether each is round. */
    public boolean isRound() {
        return barrel.inside() instanceof Circle;
    }

    /** Width of each with its walls, m. */
    public double outsideWidth() {
        return span() + 2 * barrel.wall();
    }

    /** Height of each with its walls, m. */
    public double outsideHeight() {
        return rise() + 2 * barrel.wall();
    }

    /** Room between two of them, m: half an outside width, and a foot at least. */
    public double between() {
        return Math.max(APART, outsideWidth() / 2);
    }

    /** Width of all of them with the room between them, m. */
    public double across() {
        return count * outsideWidth() + (count - 1) * between();
    }

    /**
     * Area of all of them, walls included, below a height over the underside, m². A pipe-arch is
     * taken as an ellipse of its width and height.
     */
    public double below(double height) {
        double part = Math.max(0, Math.min(1, height / outsideHeight()));
        double segment =
                StrictMath.acos(1 - 2 * part) / 4
                        - (1 - 2 * part) * Math.sqrt(Math.max(0, part - part * part)) / 2;
        return count * outsideWidth() * outsideHeight() * segment;
    }

    /** How many, how large and of what, such as {@code 2 of 18 in concrete}. */
    public Saying name() {
        Saying one = each();
        return count == 1 ? one : new Saying(count + " of " + one.pattern(), one.quantities());
    }

    /** How large one of them is and of what, such as {@code 18 in concrete}. */
    public Saying each() {
        List<Quantity> quantities = new ArrayList<>();
        quantities.add(Quantity.depth(span()));
        String pattern = "{}";
        if (!isRound()) {
            pattern += " by {} pipe-arch of";
            quantities.add(Quantity.depth(rise()));
        }
        return new Saying(pattern + " " + material().words(), quantities);
    }
}
