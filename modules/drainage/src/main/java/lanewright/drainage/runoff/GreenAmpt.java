package lanewright.drainage.runoff;

import lanewright.drainage.channel.Check;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Water soaking into soil below a pool, {@code F = K t + ψΔθ ln(1 + F / ψΔθ)} (Green and Ampt,
 * 1911; Chow, Maidment and Mays, Applied Hydrology, 1988, section 4.3).
 *
 * @param conductivity K, m/s, over zero
 * @param suction ψ at the wetting front, m, over zero
 * @param deficit Δθ, part of the soil that is still to be filled, over 0 and at most 1
 */
public record GreenAmpt(double conductivity, double suction, double deficit) {

    /**
     * @throws IllegalArgumentException if a figure is out of range
     */
    public GreenAmpt {
        Check.positive("conductivity of soil, m/s,", conductivity);
        Check.positive("suction of soil, m,", suction);
        if (!(deficit > 0 && deficit <= 1)) {
            throw new IllegalArgumentException(
                    "the part of soil to be filled is over 0 and at most 1, was "
                            + deficit
                            + "; soil that is full takes water at its conductivity");
        }
    }

    /** Depth that has soaked in after a time, m. */
    public double soaked(double time) {
        if (Check.notNegative("time, s,", time) == 0) {
            return 0;
        }
        double scale = suction * deficit;
        double steady = conductivity * time;
        // It is more than by conductivity alone, and less than that with as much again as a root.
        double most = steady + 2 * scale + Math.sqrt(2 * scale * steady) + 1e-9;
        return new BrentSolver(1e-14, 1e-16)
                .solve(
                        200,
                        depth -> depth - steady - scale * Math.log1p(depth / scale),
                        steady,
                        2 * most + 10 * steady);
    }

    /** How fast it soaks in after a time, m/s. */
    public double rate(double time) {
        double depth = soaked(Check.positive("time, s,", time));
        return conductivity * (suction * deficit / depth + 1);
    }

    /** Time that a pool stands which only soaks away, s: its depth over a steady rate. */
    public static double stands(double depth, double rate) {
        return Check.notNegative("depth of a pool, m,", depth)
                / Check.positive("rate of soaking, m/s,", rate);
    }
}
