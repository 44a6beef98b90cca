package lanewright.drainage.runoff;

import lanewright.drainage.channel.Check;
import lanewright.measure.Row;
import lanewright.measure.Tables;
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

    /**
     * Soil of a texture, by the means of the table {@code green-ampt-soils}.
     *
     * @param texture as in the table, such as {@code silt loam}
     * @param filled part of its pores that holds water already, 0 to under 1
     * @throws IllegalArgumentException if the texture is in no row, with the nearest
     */
    public static GreenAmpt of(String texture, double filled) {
        if (!(filled >= 0 && filled < 1)) {
            throw new IllegalArgumentException(
                    "pores are filled to a part from 0 to under 1, was "
                            + filled
                            + "; soil that is full takes water at its conductivity");
        }
        Row row = Tables.read("green-ampt-soils").row("texture", texture);
        return new GreenAmpt(
                row.number("conductivity_cm_per_h") / 100 / 3600,
                row.number("suction_cm") / 100,
                row.number("effective_porosity") * (1 - filled));
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

    /**
     * The deepest open pool that is gone in time, m.
     *
     * @param rate of soaking, m/s, over zero
     * @param time s, over zero
     */
    public static double deepest(double rate, double time) {
        return Check.positive("rate of soaking, m/s,", rate) * Check.positive("time, s,", time);
    }

    /** Time that a pool stands which only soaks away, s: its depth over a steady rate. */
    public static double stands(double depth, double rate) {
        return Check.notNegative("depth of a pool, m,", depth)
                / Check.positive("rate of soaking, m/s,", rate);
    }
}
