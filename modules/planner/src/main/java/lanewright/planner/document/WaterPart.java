package lanewright.planner.document;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.culvert.Material;
import lanewright.drainage.runoff.Cover;
import lanewright.drainage.runoff.GraphicalPeak;
import lanewright.drainage.storm.StormAsked;
import org.jspecify.annotations.Nullable;

/**
 * What is known and asked about water.
 *
 * @param pipes pipes that are there already, and pipes that are to be laid
 * @param flowArea land that must drain through a way of water for it to be flagged, m²
 * @param spotDepth a low spot less deep is counted, not listed, m
 * @param spotArea a smaller low spot is counted, not listed, m²
 * @param rain the storm that pipes are to carry, and rain in steps
 * @param soaksIn how fast the ground takes standing water in, m/s; NaN if not known
 * @param pipeWork how pipes are dug in, and what that costs
 */
public record WaterPart(
        List<Pipe> pipes,
        double flowArea,
        double spotDepth,
        double spotArea,
        Rain rain,
        double soaksIn,
        PipeWorkPart pipeWork) {
    /** Clean gravel takes in less than this, m/s: 2 m an hour. */
    private static final double FASTEST = 2.0 / 3600;

    /** Copies the list and checks the ranges. */
    public WaterPart {
        pipes = List.copyOf(pipes);
        for (int i = 0; i < pipes.size(); i++) {
            for (int k = 0; k < i; k++) {
                if (isNamedAlike(pipes.get(i), pipes.get(k))) {
                    throw new IllegalArgumentException(
                            "two pipes are called \""
                                    + pipes.get(i).name()
                                    + "\", and stakes and sheets tell them apart by their names");
                }
            }
        }
        if (!(flowArea >= 10 && flowArea <= 1e7)) {
            throw new IllegalArgumentException(
                    "the area must be 110 ft² to 2,400 acres (10 m² to 10 km²)");
        }
        if (!(spotDepth >= 0 && spotDepth <= 2) || !(spotArea >= 0 && spotArea <= 10_000)) {
            throw new IllegalArgumentException(
                    "low spots are left out below 0 to 6.5 ft (2 m) of depth and 0 to 2.4 acres"
                            + " (10,000 m²)");
        }
        if (soaksIn < 0 || soaksIn > FASTEST) {
            throw new IllegalArgumentException(
                    "the ground takes in 0 to 2 m of water an hour; leave it out if you do not know");
        }
    }

    /** The schema is made with one pipe several times over, which no plan that is read has. */
    @SuppressWarnings("ReferenceEquality")
    private static boolean isNamedAlike(Pipe one, Pipe other) {
        return one != other && one.name().equals(other.name());
    }

    /** The same with other pipes. */
    public WaterPart with(List<Pipe> other) {
        return new WaterPart(other, flowArea, spotDepth, spotArea, rain, soaksIn, pipeWork);
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
     * @param material what it is made of
     * @param tailwater depth of water that stands above its outlet's bottom in the storm, m; NaN if
     *     the owner does not say
     */
    public record Pipe(
            String name,
            Mouth inlet,
            Mouth outlet,
            double diameter,
            PipeState state,
            PipeMaterial material,
            double tailwater) {
        /** A pipe of which its owner says no more. */
        public Pipe(String name, Mouth inlet, Mouth outlet, double diameter, PipeState state) {
            this(name, inlet, outlet, diameter, state, PipeMaterial.NOT_KNOWN, Double.NaN);
        }

        /** Checks the diameter and the tailwater. */
        public Pipe {
            if (tailwater < 0 || tailwater > 10) {
                throw new IllegalArgumentException(
                        "water stands 0 to 10 m deep over an outlet's bottom");
            }
            if (!(diameter > 0 && diameter <= 5)) {
                throw new IllegalArgumentException("a pipe is over 0 and at most 16 ft (5 m) wide");
            }
        }
    }

    /**
     * The storm that pipes are to carry, and the land it falls on. Nothing is worked out before
     * depth, land and soil are all given.
     *
     * @param day rain of 24 hours, m; NaN if not given
     * @param years how often it comes, one year in so many; zero if not given
     * @param type how its rain falls over the day
     * @param land what grows or lies on the land; empty if not given
     * @param soil how readily its soil takes water
     * @param steps rain in steps, to see what stands in hollows after each; needs nothing else
     */
    public record Rain(
            double day,
            double years,
            StormType type,
            String land,
            SoilGroup soil,
            List<Step> steps) {
        /** No storm. */
        public static final Rain NONE =
                new Rain(Double.NaN, 0, StormType.TYPE_II, "", SoilGroup.NOT_KNOWN, List.of());

        /** Copies the list, and checks the ranges and the name of the land. */
        public Rain {
            steps = List.copyOf(steps);
            if (day <= 0 || day > 2) {
                throw new IllegalArgumentException(
                        "rain of a day is over 0 and at most 78 in (2 m)");
            }
            if (years < 0 || years > 1000) {
                throw new IllegalArgumentException(
                        "a storm comes one year in 1 to 1,000; leave it out if you do not know");
            }
            if (!land.isEmpty() && !Cover.names().contains(land)) {
                throw new IllegalArgumentException(
                        "\""
                                + land
                                + "\" is no land of the table. There are: "
                                + String.join("; ", Cover.names()));
            }
        }

        /**
         * The storm, or null as long as something of it is not given.
         *
         * @param washes how easily the soil of the ditches washes: the more easily, the slower the
         *     published water that it bears
         */
        public @Nullable StormAsked asked(EarthPart.Washes washes) {
            if (Double.isNaN(day) || land.isEmpty() || soil == SoilGroup.NOT_KNOWN) {
                return null;
            }
            return new StormAsked(
                    day,
                    years,
                    GraphicalPeak.Storm.valueOf(type.name().substring("TYPE_".length())),
                    new Cover(land, lanewright.drainage.runoff.SoilGroup.valueOf(soil.name())),
                    switch (washes) {
                        case LITTLE -> "firm loam";
                        case EASILY -> "sandy loam";
                        case NOT_KNOWN -> "silt loam";
                    });
        }
    }

    /**
     * A stretch of even rain, or of none.
     *
     * @param name how the owner calls it
     * @param rain how much falls in all, m
     * @param hours how long it takes, h
     */
    public record Step(String name, double rain, double hours) {
        /** Checks the ranges. */
        public Step {
            if (!(rain >= 0 && rain <= 2)) {
                throw new IllegalArgumentException("the rain of a step is 0 to 2 m");
            }
            if (!(hours > 0 && hours <= 1000)) {
                throw new IllegalArgumentException("a step of rain takes over 0 to 1,000 hours");
            }
        }
    }

    /** How rain falls over a day, by region. */
    public enum StormType {
        /** Mild, Pacific. */
        TYPE_IA,
        /** Pacific with wet winters. */
        TYPE_I,
        /** Most of the inland: the sharpest. */
        TYPE_II,
        /** Coasts with tropical storms. */
        TYPE_III
    }

    /** How readily soil takes water. */
    public enum SoilGroup {
        /** Nobody has looked it up. */
        NOT_KNOWN,
        /** Deep sand and gravel. */
        A,
        /** Sandy loam and the like. */
        B,
        /** Finer, or with a tight layer. */
        C,
        /** Clay, or water near the surface. */
        D
    }

    /** What a pipe is made of. */
    public enum PipeMaterial {
        /** Nobody has said. */
        NOT_KNOWN,
        /** Corrugated steel or aluminium. */
        METAL,
        /** Corrugated plastic with a smooth inside. */
        PLASTIC,
        /** Concrete. */
        CONCRETE;

        /** The same where water is worked out, or null if it is not known. */
        public @Nullable Material known() {
            return switch (this) {
                case NOT_KNOWN -> null;
                case METAL -> Material.METAL;
                case PLASTIC -> Material.PLASTIC;
                case CONCRETE -> Material.CONCRETE;
            };
        }

        /** The word for a material. */
        public static PipeMaterial of(Material material) {
            return switch (material) {
                case METAL -> METAL;
                case PLASTIC -> PLASTIC;
                case CONCRETE -> CONCRETE;
            };
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
