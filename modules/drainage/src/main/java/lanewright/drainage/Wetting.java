package lanewright.drainage;

import java.util.List;
import lanewright.drainage.hollows.RainStep;
import lanewright.survey.Boundary;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of standing water and of the land's boundary.
 *
 * @param steps rain, step by step; empty if none is given
 * @param soaks how fast the ground takes water in, m/s; NaN if not known
 * @param heightError standard deviation of one surveyed height, m; NaN if not known
 * @param boundary how far the owner's land reaches, or null if nobody said
 */
public record Wetting(
        List<RainStep> steps, double soaks, double heightError, @Nullable Boundary boundary) {

    /** No rain, nothing known. */
    public static final Wetting NONE = new Wetting(List.of(), Double.NaN, Double.NaN, null);

    /** Copies the list and checks the ranges. */
    public Wetting {
        steps = List.copyOf(steps);
        if (soaks < 0 || heightError < 0 || Double.isInfinite(soaks + heightError)) {
            throw new IllegalArgumentException(
                    "must be zero or more: soaks in "
                            + soaks
                            + " m/s, error "
                            + heightError
                            + " m");
        }
    }
}
