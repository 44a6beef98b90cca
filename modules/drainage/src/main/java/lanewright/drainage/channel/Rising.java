package lanewright.drainage.channel;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;

/** Where a figure that rises with another reaches a wanted value. */
public final class Rising {

    /** Relative and absolute accuracy: a nanometre of depth is far below anything measured. */
    private static final double RELATIVE = 1e-13;

    private static final double ABSOLUTE = 1e-12;

    private static final int MOST_STEPS = 500;

    /** Over this nothing on a lane is asked for; a search that gets there has a broken question. */
    private static final double FARTHEST = 1e9;

    private Rising() {}

    /**
     * The {@code x} from zero on at which {@code rising} is {@code wanted}.
     *
     * @param rising never falls; its value at zero is at most {@code wanted}
     * @param most greatest {@code x}, or infinite
     * @return the place; {@code most} where the wanted value is not reached before by a rounding
     *     error only
     * @throws IllegalArgumentException if it is not reached
     */
    public static double where(DoubleUnaryOperator rising, double wanted, double most) {
        if (rising.applyAsDouble(0) >= wanted) {
            return 0;
        }
        double high = Double.isInfinite(most) ? 1 : most;
        while (rising.applyAsDouble(high) < wanted) {
            if (!Double.isInfinite(most)) {
                if (rising.applyAsDouble(high) >= wanted * (1 - 1e-9)) {
                    return high;
                }
                throw new IllegalArgumentException(
                        "nothing up to " + most + " reaches " + wanted + "; ask for less");
            }
            high *= 2;
            if (high > FARTHEST) {
                throw new IllegalArgumentException(
                        "nothing reaches " + wanted + "; look for a figure far out of range");
            }
        }
        return new BracketingNthOrderBrentSolver(RELATIVE, ABSOLUTE, 5)
                .solve(
                        MOST_STEPS,
                        x -> rising.applyAsDouble(x) - wanted,
                        0,
                        high,
                        AllowedSolution.ANY_SIDE);
    }
}
