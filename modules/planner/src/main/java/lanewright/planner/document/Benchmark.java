package lanewright.planner.document;

/**
 * A point whose height is known and that will not move.
 *
 * @param name what it is, so that it is found again
 * @param spot where it lies
 * @param height m above the datum
 */
public record Benchmark(String name, Spot spot, double height) {
    /** Checks the name and the height. */
    public Benchmark {
        if (name.isBlank() || !Double.isFinite(height)) {
            throw new IllegalArgumentException("a benchmark needs a name and a height");
        }
    }
}
