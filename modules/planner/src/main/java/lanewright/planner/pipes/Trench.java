package lanewright.planner.pipes;

import java.util.List;

/**
 * The trench of a pipe, with upright walls, measured along the barrel.
 *
 * <p>It is dug from the stripped ground, or from the subgrade where that lies lower: what is dug
 * above it is the lane's own cut, and what is built up over it is the lane's own fill, so neither
 * is counted twice. What of pipe and bed lies above the trench and below the subgrade takes the
 * place of fill.
 *
 * @param width from wall to wall, m
 * @param dug bank volume, m³
 * @param deepest greatest depth, m
 * @param bedding packed volume of the bed, m³
 * @param barrel volume of the pipe, walls included, within the trench, m³
 * @param back packed volume of earth that fills the rest of the trench, m³
 * @param displaced packed volume of the lane's fill whose place pipe and bed take, m³
 */
public record Trench(
        double width,
        double dug,
        double deepest,
        double bedding,
        double barrel,
        double back,
        double displaced) {

    /** Less than this is no trench, m³: a few shovels. */
    private static final double NOTHING = 0.05;

    /** Between two corners volumes are added in slices no thicker than this, m. */
    private static final double SLICE = 0.02;

    /** Whether anything is dug. */
    public boolean isDug() {
        return dug > NOTHING;
    }

    /**
     * The trench of a pipe.
     *
     * @param room beside the pipes on each side, m
     * @param bed packed thickness of the bed under them, m
     */
    public static Trench of(PipeWay way, Laid laid, double room, double bed) {
        double width = laid.across() + 2 * room;
        double dug = 0;
        double deepest = 0;
        double bedding = 0;
        double barrel = 0;
        double back = 0;
        double displaced = 0;
        List<PipeWay.Stand> stands = way.stands();
        for (PipeWay.Stand stand : stands) {
            double under = way.invert(stand.along()) - laid.barrel().wall();
            double top = Math.min(stand.stripped(), stand.subgrade());
            deepest = Math.max(deepest, top - under + bed);
        }
        for (int i = 1; i < stands.size(); i++) {
            PipeWay.Stand a = stands.get(i - 1);
            PipeWay.Stand b = stands.get(i);
            double span = b.along() - a.along();
            int slices = Math.max(1, (int) Math.ceil(span / SLICE));
            double thick = span / slices * way.slant();
            for (int k = 0; k < slices; k++) {
                double share = (k + 0.5) / slices;
                double under = way.invert(a.along() + share * span) - laid.barrel().wall();
                double subgrade = mix(a.subgrade(), b.subgrade(), share);
                double top = Math.min(mix(a.stripped(), b.stripped(), share), subgrade);
                double depth = Math.max(0, top - under + bed);
                double bedIn = width * Math.min(bed, depth);
                double pipeIn = laid.below(top - under);
                double bedUnder = width * Math.min(bed, Math.max(0, subgrade - under + bed));
                dug += thick * width * depth;
                bedding += thick * width * bed;
                barrel += thick * pipeIn;
                back += thick * (width * depth - bedIn - pipeIn);
                displaced +=
                        thick
                                * (Math.max(0, laid.below(subgrade - under) - pipeIn)
                                        + Math.max(0, bedUnder - bedIn));
            }
        }
        return new Trench(width, dug, deepest, bedding, barrel, back, displaced);
    }

    private static double mix(double a, double b, double share) {
        return a + share * (b - a);
    }
}
