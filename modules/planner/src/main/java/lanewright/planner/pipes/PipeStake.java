package lanewright.planner.pipes;

import java.util.List;
import lanewright.drainage.along.CulvertLine;
import lanewright.ground.Ground;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;

/**
 * A stake at an end of a pipe: where its barrel begins or ends as it will lie, with what goes on
 * beyond the foot of the slope, or at the face of its headwall.
 *
 * @param job the pipe
 * @param inlet whether it is the upper end; else the lower
 * @param station m along the alignment
 * @param offset from the alignment, m, over zero on the right, looking up-station
 * @param x local easting, m
 * @param y local northing, m
 * @param invert height of the bottom of the bore there, m above the datum
 * @param ground height of the ground as it is there, m; NaN where it is not known
 */
public record PipeStake(
        PipeJob job,
        boolean inlet,
        double station,
        double offset,
        double x,
        double y,
        double invert,
        double ground) {

    /** How high the invert lies over the ground as it is, m; negative below it. */
    public double up() {
        return invert - ground;
    }

    /** The stakes of every pipe that fits, its inlet before its outlet. */
    public static List<PipeStake> of(Alignment line, Ground ground, List<PipeJob> jobs) {
        return jobs.stream()
                .filter(PipeJob::fits)
                .flatMap(
                        job ->
                                List.of(at(line, ground, job, true), at(line, ground, job, false))
                                        .stream())
                .toList();
    }

    private static PipeStake at(Alignment line, Ground ground, PipeJob job, boolean inlet) {
        CulvertLine under = job.line();
        double plan = job.way().plan();
        double slant = job.way().slant();
        double along =
                inlet ? -job.length().atInlet() / slant : plan + job.length().after() / slant;
        double share = along / plan;
        var from = new Place(under.station(), under.inlet().offset());
        var to = new Place(under.outletStation(), under.outlet().offset());
        // The pipe is straight also where the lane bends.
        double x = line.x(from) + share * (line.x(to) - line.x(from));
        double y = line.y(from) + share * (line.y(to) - line.y(from));
        return new PipeStake(
                job,
                inlet,
                under.station() + share * (under.outletStation() - under.station()),
                from.offset() + share * (to.offset() - from.offset()),
                x,
                y,
                job.way().invert(along),
                ground.heightAt(x, y));
    }
}
