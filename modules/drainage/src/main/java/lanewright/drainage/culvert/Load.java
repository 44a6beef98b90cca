package lanewright.drainage.culvert;

import lanewright.drainage.channel.Imperial;

/** What goes over a pipe. */
public enum Load {
    /** Cars and road trucks over the finished lane. */
    ROAD("road", 0),
    /** Machines with an axle up to 50,000 lb while the lane is built. */
    AXLE_50("axle to 50 kip", 50_000),
    /** Machines with an axle of 50,000 to 75,000 lb. */
    AXLE_75("axle to 75 kip", 75_000),
    /** Machines with an axle of 75,000 to 110,000 lb. */
    AXLE_110("axle to 110 kip", 110_000),
    /** Machines with an axle of 110,000 to 150,000 lb. */
    AXLE_150("axle to 150 kip", 150_000);

    private final String words;
    private final double axle;

    Load(String words, double pounds) {
        this.words = words;
        this.axle = pounds * Imperial.POUND;
    }

    /** As it stands in the table. */
    public String words() {
        return words;
    }

    /** The heaviest axle of this load, N; 0 for the road. */
    public double heaviest() {
        return axle;
    }

    /**
     * The load of a machine while the lane is built.
     *
     * @param axle load of its heaviest axle, N
     * @throws IllegalArgumentException if it is not over zero, or heavier than any published
     */
    public static Load building(double axle) {
        for (Load load : values()) {
            if (axle > 0 && axle <= load.axle) {
                return load;
            }
        }
        throw new IllegalArgumentException(
                "an axle must carry over 0 and at most "
                        + AXLE_150.axle
                        + " N, was "
                        + axle
                        + "; keep heavier machines off the pipe");
    }
}
