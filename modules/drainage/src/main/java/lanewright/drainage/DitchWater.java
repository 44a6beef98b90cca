package lanewright.drainage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.Side;
import lanewright.drainage.channel.ChannelShape;
import lanewright.drainage.flow.FlowGrid;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.TypicalSection;

/**
 * A ditch as a channel, with the most land that drains through it anywhere.
 *
 * @param ditch the ditch
 * @param drained land whose water runs through it where that is most, m²
 * @param isLeast whether more land may drain to it from beyond the survey
 * @param way the longest way of that water
 * @param shape of the ditch across
 * @param depth of the ditch, m
 * @param flattest its flattest grade, rise over run, over zero; NaN if none of it falls
 * @param steepest its steepest grade, rise over run, over zero; NaN if none of it falls
 */
public record DitchWater(
        DitchReach ditch,
        double drained,
        boolean isLeast,
        FlowGrid.Way way,
        ChannelShape shape,
        double depth,
        double flattest,
        double steepest) {

    /** Flatter than this water stands, rise over run: the rounding of heights, nothing else. */
    private static final double LEVEL = 1e-6;

    /** Every ditch, in the order given. */
    static List<DitchWater> of(
            List<DitchReach> ditches, FlowGrid flow, DoubleFunction<TypicalSection> typical) {
        int[] in = new int[flow.cells().count()];
        Arrays.fill(in, -1);
        int[] most = new int[ditches.size()];
        for (int i = 0; i < most.length; i++) {
            most[i] = -1;
            for (DitchReach.Point point : ditches.get(i).points()) {
                int cell = flow.cells().at(point.x(), point.y());
                boolean land = cell >= 0 && !Double.isNaN(flow.height(cell));
                if (land && (most[i] < 0 || flow.drained(cell) > flow.drained(most[i]))) {
                    most[i] = cell;
                }
            }
            if (most[i] >= 0) {
                in[most[i]] = i;
            }
        }
        List<FlowGrid.Way> ways = ditches.isEmpty() ? List.of() : flow.farthest(in, ditches.size());
        List<DitchWater> all = new ArrayList<>();
        for (int i = 0; i < most.length; i++) {
            if (most[i] >= 0 && in[most[i]] == i) {
                all.add(
                        of(
                                ditches.get(i),
                                flow.drained(most[i]),
                                flow.reachesRim(most[i]),
                                ways.get(i),
                                typical));
            }
        }
        return all;
    }

    private static DitchWater of(
            DitchReach ditch,
            double drained,
            boolean isLeast,
            FlowGrid.Way way,
            DoubleFunction<TypicalSection> typical) {
        double flattest = Double.NaN;
        double steepest = Double.NaN;
        for (DitchReach.Leg leg : ditch.legs()) {
            double grade = Math.abs(leg.grade());
            if (grade > LEVEL) {
                flattest = grade < flattest || Double.isNaN(flattest) ? grade : flattest;
                steepest = grade > steepest || Double.isNaN(steepest) ? grade : steepest;
            }
        }
        TypicalSection section = typical.apply((ditch.from() + ditch.to()) / 2);
        SideShape side = ditch.side() == Side.LEFT ? section.left() : section.right();
        var shape = new ChannelShape(side.ditch().bottom(), side.foreslope(), side.backslope());
        return new DitchWater(
                ditch, drained, isLeast, way, shape, side.ditch().depth(), flattest, steepest);
    }
}
