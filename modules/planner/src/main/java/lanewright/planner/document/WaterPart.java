package lanewright.planner.document;

import java.util.ArrayList;
import java.util.List;

/**
 * What is known and asked about water.
 *
 * @param pipes pipes that are there already, and pipes that are to be laid
 * @param flowArea land that must drain through a way of water for it to be flagged, m²
 * @param spotDepth a low spot less deep is counted, not listed, m
 * @param spotArea a smaller low spot is counted, not listed, m²
 */
public record WaterPart(List<Pipe> pipes, double flowArea, double spotDepth, double spotArea) {
    /** Copies the list and checks the ranges. */
    public WaterPart {
        pipes = List.copyOf(pipes);
        if (!(flowArea >= 10 && flowArea <= 1e7)) {
            throw new IllegalArgumentException("the area must be 10 m² to 10 km²");
        }
        if (!(spotDepth >= 0 && spotDepth <= 2) || !(spotArea >= 0 && spotArea <= 10_000)) {
            throw new IllegalArgumentException(
                    "low spots are left out below 0 to 2 m of depth and 0 to 10,000 m²");
        }
    }

    /** The same with other pipes. */
    public WaterPart with(List<Pipe> other) {
        return new WaterPart(other, flowArea, spotDepth, spotArea);
    }

    /** The same without one of its pipes, counted from zero. */
    public WaterPart without(int pipe) {
        List<Pipe> rest = new ArrayList<>(pipes);
        rest.remove(pipe);
        return with(rest);
    }

    /**
     * A pipe that is there already, or one that is to be laid with the lane.
     *
     * @param name how the owner calls it
     * @param inlet where it takes water in
     * @param outlet where it lets water out
     * @param diameter clear width, m
     * @param state whether it is there or to be laid
     */
    public record Pipe(String name, Mouth inlet, Mouth outlet, double diameter, PipeState state) {
        /** Checks the diameter. */
        public Pipe {
            if (!(diameter > 0 && diameter <= 5)) {
                throw new IllegalArgumentException("a pipe is over 0 and at most 5 m wide");
            }
        }
    }

    /** Whether a pipe is in the ground. */
    public enum PipeState {
        /** It is there already. */
        THERE,
        /** It is to be bought and laid; water goes through it once the lane is built. */
        TO_LAY
    }

    /**
     * An end of a pipe.
     *
     * @param spot where it lies
     * @param invert height of the bottom of its bore, m above the datum
     */
    public record Mouth(Spot spot, double invert) {
        /** Checks that the height is finite. */
        public Mouth {
            if (!Double.isFinite(invert)) {
                throw new IllegalArgumentException("the height must be finite");
            }
        }
    }
}
