package lanewright.planner.pipes;

import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.culvert.Barrel;
import lanewright.drainage.culvert.Inlet;
import lanewright.drainage.culvert.Load;
import lanewright.drainage.culvert.Material;
import lanewright.drainage.culvert.Size;

/** The pipe that is taken where nothing tells how much water it must carry. */
public final class UsualPipe {

    /** Widths of the table and of the shop are the same if they differ by less than this part. */
    private static final double SAME = 0.03;

    private UsualPipe() {}

    /**
     * The widest round pipe up to the usual one that leaves the earth over it that traffic asks
     * for; the smallest that is sold if none does. Of corrugated metal, until somebody says else.
     *
     * @param usual clear width, m
     */
    public static Barrel under(CulvertLine pipe, double usual) {
        Barrel widest = null;
        for (Size size : Size.sold(Material.METAL)) {
            boolean round = size.shape() == Inlet.Shape.ROUND;
            boolean fits =
                    size.barrel().inside().span() <= usual * (1 + SAME)
                            && size.room(Load.ROAD) <= pipe.room();
            if (round && (widest == null || fits)) {
                widest = size.barrel();
            }
        }
        return widest == null ? Size.round(Material.METAL, usual) : widest;
    }
}
