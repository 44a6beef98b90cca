package lanewright.planner.document;

import java.util.List;

/**
 * What is known and asked about water.
 *
 * @param pipes pipes that are there already
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

    /**
     * A pipe that is there already.
     *
     * @param name how the owner calls it
     * @param inlet where it takes water in
     * @param outlet where it lets water out
     * @param diameter clear width, m
     */
    public record Pipe(String name, Mouth inlet, Mouth outlet, double diameter) {
        /** Checks the diameter. */
        public Pipe {
            if (!(diameter > 0 && diameter <= 5)) {
                throw new IllegalArgumentException("a pipe is over 0 and at most 5 m wide");
            }
        }
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
