package lanewright.lane.shape;

import java.util.Arrays;
import java.util.List;

/**
 * One side of the lane from the alignment out to the hinge, where the foreslope begins: finished
 * surface, subgrade and stone, before any ground is met. Distances are outward from the alignment,
 * heights relative to the finished surface at the alignment, both m. The two sides are built by the
 * same arithmetic, so a mirrored lane is mirrored to the last bit. Immutable.
 *
 * <p>On top: the top plane of the first layer falls from the alignment; each layer's edge runs down
 * and out from the end of its top until it meets the plane below. Layers are parallel to the
 * travelled way; only the lowest one takes up a fall of the subgrade's own. Beyond the toe of the
 * lowest layer the subgrade runs on, in its own fall, as the shoulder.
 *
 * <p>Boxed: the stone ends at the edge of the travelled way, straight down; the shoulder runs on in
 * the plane of the travelled way.
 */
public final class HalfShape {

    /** Feet and tops of layers may overlap by this much through rounding, m. */
    private static final double ROUNDING = 1e-9;

    /** Corner of the finished surface at the edge of the travelled way. */
    private static final int EDGE = 1;

    private final double[] finishedOut;
    private final double[] finishedRise;
    private final double[] subgradeOut;
    private final double[] subgradeRise;
    private final double stoneOut;
    private final double stoneRise;
    private final double[] layerArea;
    private final double[] layerMoment;
    private final double[] tops;
    private final double[] feet;
    private final int badLayer;

    private HalfShape(Drawing d) {
        finishedOut = Arrays.copyOf(d.finishedOut, d.finished);
        finishedRise = Arrays.copyOf(d.finishedRise, d.finished);
        subgradeOut = Arrays.copyOf(d.subgradeOut, d.subgrade);
        subgradeRise = Arrays.copyOf(d.subgradeRise, d.subgrade);
        stoneOut = d.stoneOut;
        stoneRise = d.stoneRise;
        layerArea = d.layerArea;
        layerMoment = d.layerMoment;
        tops = d.tops;
        feet = d.feet;
        badLayer = d.badLayer;
    }

    /**
     * The left or right half of a lane.
     *
     * @param lane what the lane is at its station
     * @param right true for the right half
     */
    public static HalfShape of(LaneAt lane, boolean right) {
        return right
                ? of(lane.typical(), lane.typical().right(), lane.rightFall(), lane.rightUnder())
                : of(lane.typical(), lane.typical().left(), lane.leftFall(), lane.leftUnder());
    }

    /**
     * A half with given falls.
     *
     * @param typical the typical section
     * @param side its shape on this side
     * @param fall outward fall of the travelled way, rise over run
     * @param under outward fall of the subgrade under the stone, rise over run
     */
    public static HalfShape of(TypicalSection typical, SideShape side, double fall, double under) {
        return new HalfShape(new Drawing(typical, side, fall, under));
    }

    /** Number of corners of the finished surface, the alignment first, the hinge last. */
    public int finishedSize() {
        return finishedOut.length;
    }

    /** Distance out of corner {@code i} of the finished surface, never decreasing. */
    public double finishedOut(int i) {
        return finishedOut[i];
    }

    /** Height of corner {@code i} of the finished surface over the alignment's. */
    public double finishedRise(int i) {
        return finishedRise[i];
    }

    /** Number of corners of the subgrade, the alignment first, the hinge last. */
    public int subgradeSize() {
        return subgradeOut.length;
    }

    /** Distance out of corner {@code i} of the subgrade, never decreasing. */
    public double subgradeOut(int i) {
        return subgradeOut[i];
    }

    /** Height of corner {@code i} of the subgrade over the finished surface at the alignment. */
    public double subgradeRise(int i) {
        return subgradeRise[i];
    }

    /** Distance out of the edge of the travelled way. */
    public double edgeOut() {
        return finishedOut[EDGE];
    }

    /** Height of the edge of the travelled way. */
    public double edgeRise() {
        return finishedRise[EDGE];
    }

    /** Distance out of the outer end of the stone's underside. */
    public double stoneOut() {
        return stoneOut;
    }

    /** Height of the outer end of the stone's underside. */
    public double stoneRise() {
        return stoneRise;
    }

    /** Distance out of the hinge. */
    public double hingeOut() {
        return finishedOut[finishedOut.length - 1];
    }

    /** Height of the hinge. */
    public double hingeRise() {
        return finishedRise[finishedRise.length - 1];
    }

    /** Area of layer {@code i} on this side, m². */
    public double layerArea(int i) {
        return layerArea[i];
    }

    /** Area of layer {@code i} times its centroid's distance out, m³. */
    public double layerMoment(int i) {
        return layerMoment[i];
    }

    /** Distance out of the end of the top of layer {@code i}. */
    public double layerTop(int i) {
        return tops[i];
    }

    /** Distance out of the foot of layer {@code i}. */
    public double layerFoot(int i) {
        return feet[i];
    }

    /** The first layer whose foot cannot stand on what is below or that has no height; else -1. */
    int badLayer() {
        return badLayer;
    }

    /** Draws the half; lives for one call. */
    private static final class Drawing {
        private final double fall;
        private final double under;
        private final double total;
        private final double[] finishedOut;
        private final double[] finishedRise;
        private final double[] subgradeOut = new double[4];
        private final double[] subgradeRise = new double[4];
        private final double[] layerArea;
        private final double[] layerMoment;
        private final double[] tops;
        private final double[] feet;
        private int finished;
        private int subgrade;
        private double stoneOut;
        private double stoneRise;
        private int badLayer = -1;

        Drawing(TypicalSection typical, SideShape side, double fall, double under) {
            int layers = typical.layers().size();
            this.fall = fall;
            this.under = layers == 0 ? fall : under;
            total = typical.stoneThickness();
            finishedOut = new double[2 * layers + 4];
            finishedRise = new double[2 * layers + 4];
            layerArea = new double[layers];
            layerMoment = new double[layers];
            tops = new double[layers];
            feet = new double[layers];
            double half = typical.width() / 2;
            finish(0, 0);
            finish(half, -fall * half);
            earth(0, -total);
            if (typical.bed() == Bed.ON_TOP) {
                onTop(typical.layers(), half, side.shoulder());
            } else {
                boxed(typical.layers(), half, side.shoulder());
            }
        }

        private void onTop(List<Layer> layers, double half, double shoulder) {
            double below = half;
            double above = 0;
            for (int i = 0; i < layers.size(); i++) {
                Layer layer = layers.get(i);
                boolean lowest = i == layers.size() - 1;
                double top = i == 0 || Double.isNaN(layer.width()) ? below : layer.width() / 2;
                if (top < below - ROUNDING) {
                    bad(i - 1);
                }
                if (top > below) {
                    finish(top, -above - fall * top);
                }
                double fallBelow = lowest ? under : fall;
                double depth = above + layer.thickness();
                double thick = (depth + fallBelow * top) - (above + fall * top);
                double run = 1 - fallBelow * layer.edgeSlope();
                if (!(thick > ROUNDING && run > ROUNDING)) {
                    bad(i);
                }
                double foot = top + thick * layer.edgeSlope() / run;
                finish(foot, -depth - fallBelow * foot);
                stone(i, top, foot, above, depth, fallBelow);
                below = foot;
                above = depth;
            }
            stoneOut = below;
            stoneRise = finishedRise[finished - 1];
            if (shoulder > 0) {
                finish(below + shoulder, -total - under * (below + shoulder));
            }
            earth(finishedOut[finished - 1], finishedRise[finished - 1]);
        }

        private void boxed(List<Layer> layers, double half, double shoulder) {
            double above = 0;
            for (int i = 0; i < layers.size(); i++) {
                boolean lowest = i == layers.size() - 1;
                double fallBelow = lowest ? under : fall;
                double depth = above + layers.get(i).thickness();
                if (!(depth + fallBelow * half > above + fall * half + ROUNDING)) {
                    bad(i);
                }
                stone(i, half, half, above, depth, fallBelow);
                above = depth;
            }
            stoneOut = half;
            stoneRise = -total - under * half;
            if (!layers.isEmpty()) {
                earth(stoneOut, stoneRise);
                earth(half, -fall * half);
            }
            if (shoulder > 0) {
                finish(half + shoulder, -fall * (half + shoulder));
            }
            if (shoulder > 0 || layers.isEmpty()) {
                earth(finishedOut[finished - 1], finishedRise[finished - 1]);
            }
        }

        private void bad(int layer) {
            if (badLayer < 0) {
                badLayer = layer;
            }
        }

        private void finish(double out, double rise) {
            finishedOut[finished] = out;
            finishedRise[finished++] = rise;
        }

        private void earth(double out, double rise) {
            subgradeOut[subgrade] = out;
            subgradeRise[subgrade++] = rise;
        }

        /**
         * Area and moment of a layer: a box of its thickness at the alignment and the wedges that
         * its bottom's fall and its edge add, each exact.
         */
        private void stone(
                int i, double top, double foot, double above, double depth, double fallBelow) {
            double thickIn = depth - above;
            double thickOut = thickIn + (fallBelow - fall) * top;
            double edge = foot - top;
            tops[i] = top;
            feet[i] = foot;
            layerArea[i] = (thickIn + thickOut) / 2 * top + thickOut * edge / 2;
            layerMoment[i] =
                    top * top * (thickIn / 6 + thickOut / 3)
                            + thickOut * edge / 2 * (top + edge / 3);
        }
    }
}
