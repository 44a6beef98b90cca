package lanewright.drainage;

import java.util.List;
import lanewright.drainage.along.Descents;
import lanewright.drainage.along.DitchEnd;
import lanewright.drainage.along.FallAdvice;
import lanewright.drainage.along.Relief;
import lanewright.drainage.along.Side;
import org.jspecify.annotations.Nullable;

/**
 * The lane's own drainage: where its ditches end, what relieves lane and ditches, where water goes
 * down the lane and where it comes across, and how the lane had better fall.
 *
 * @param ends ends of ditches with the outlets that the owner has named for them
 * @param reliefs proposals to lead water off, along each way from its top down
 * @param down ways down the lane that are longer than a published table allows
 * @param across wet places where water of the land must get from one side of the lane to the other,
 *     and no pipe of the plan takes it, in station order
 * @param falls how the lane had better fall across, in station order
 * @param road where water that falls to the public road would be caught
 */
public record LaneDrainage(
        List<DitchEnd> ends,
        List<Relief> reliefs,
        List<Descents.Descent> down,
        List<WetPlace> across,
        List<FallAdvice> falls,
        RoadCatch road) {

    /** Copies the lists. */
    public LaneDrainage {
        ends = List.copyOf(ends);
        reliefs = List.copyOf(reliefs);
        down = List.copyOf(down);
        across = List.copyOf(across);
        falls = List.copyOf(falls);
    }

    /**
     * Water on its way to the public road.
     *
     * @param lane gravel of the lane that falls to the road, m²; zero if it falls away
     * @param station the nearest place before the road from which water can be led out to lower
     *     ground, m; NaN if there is none
     * @param side the side of that ground, or null without one
     */
    public record RoadCatch(double lane, double station, @Nullable Side side) {}
}
