package lanewright.drainage;

import java.util.List;
import lanewright.drainage.pond.GivenPipe;
import lanewright.ground.Ground;
import lanewright.lane.section.Section;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.surface.CompositeSurface;
import lanewright.measure.Progress;

/**
 * Where water goes on one lane after another over one ground. What hangs on the ground alone is
 * kept, and of the finished surface only what the lane changed is looked at anew where that can be
 * told apart. The reports are the same to the last bit as those of {@link WaterReport#of}. Used by
 * one thread at a time; it takes others to help.
 */
public final class KeptWater {

    private final BareGround bare = new BareGround();

    /**
     * Follows the water.
     *
     * @param ground the ground as it is
     * @param design the lane
     * @param sections its sections, in station order, at least one
     * @param finished the land as it will be
     * @param pipes pipes that are there already and stay
     * @param options what the owner chose
     * @param progress told of the work, and asked whether to go on
     * @throws IllegalArgumentException if there are no sections
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    public WaterReport of(
            Ground ground,
            LaneDesign design,
            List<Section> sections,
            CompositeSurface finished,
            List<GivenPipe> pipes,
            WaterOptions options,
            Progress progress) {
        return WaterReport.of(
                ground,
                design,
                sections,
                finished.ground(),
                finished::unchanged,
                pipes,
                options,
                bare,
                progress);
    }
}
