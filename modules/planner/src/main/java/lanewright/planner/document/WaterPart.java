package lanewright.planner.document;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.culvert.Inlet;
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
 * @param rain the storm that pipes and ditches are to carry, and rain in steps
 * @param soaksIn how fast the ground takes standing water in, m/s; NaN if not known
 * @param pipeWork how pipes are dug in, and what that costs
 * @param outlets places to which the owner leads water
 * @param berms windrows that graders have left along the edges of the lane
 */
public record WaterPart(
        List<Pipe> pipes,
        double flowArea,
        double spotDepth,
        double spotArea,
        Rain rain,
        double soaksIn,
        PipeWorkPart pipeWork,
        List<Outlet> outlets,
        List<Berm> berms) {
    /** Clean gravel takes in less than this, m/s: 2 m an hour. */
    private static final double FASTEST = 2.0 / 3600;

    /** Copies the list and checks the ranges. */
    public WaterPart {
        pipes = List.copyOf(pipes);
        outlets = List.copyOf(outlets);
        berms = List.copyOf(berms);
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
        return new WaterPart(
                other, flowArea, spotDepth, spotArea, rain, soaksIn, pipeWork, outlets, berms);
    }

    /** The same with other steps of rain. */
    public WaterPart raining(List<Step> steps) {
        Rain other =
                new Rain(
                        rain.day(),
                        rain.years(),
                        rain.type(),
                        rain.land(),
                        rain.soil(),
                        steps,
                        rain.periods(),
                        rain.table(),
                        rain.lands());
        return new WaterPart(
                pipes, flowArea, spotDepth, spotArea, other, soaksIn, pipeWork, outlets, berms);
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
     * @param ends how its ends are made
     */
    public record Pipe(
            String name,
            Mouth inlet,
            Mouth outlet,
            double diameter,
            PipeState state,
            PipeMaterial material,
            double tailwater,
            PipeEnds ends) {
        /** A pipe of which its owner says no more. */
        public Pipe(String name, Mouth inlet, Mouth outlet, double diameter, PipeState state) {
            this(
                    name,
                    inlet,
                    outlet,
                    diameter,
                    state,
                    PipeMaterial.NOT_KNOWN,
                    Double.NaN,
                    PipeEnds.PROJECTING);
        }

        /** Checks the diameter, the tailwater and that its ends can be worked out. */
        public Pipe {
            if (tailwater < 0 || tailwater > 10) {
                throw new IllegalArgumentException(
                        "water stands 0 to 10 m deep over an outlet's bottom");
            }
            if (!(diameter > 0 && diameter <= 5)) {
                throw new IllegalArgumentException("a pipe is over 0 and at most 16 ft (5 m) wide");
            }
            if (ends == PipeEnds.MITRED && material == PipeMaterial.CONCRETE) {
                throw new IllegalArgumentException(
                        "no published figures say how water enters a concrete pipe that is cut to"
                                + " the slope; write headwall or projecting");
            }
        }
    }

    /** How the ends of a pipe are made. */
    public enum PipeEnds {
        /** They stick out of the fill. */
        PROJECTING,
        /** They are cut to the slope. */
        MITRED,
        /** They stand in upright walls. */
        HEADWALL;

        /** The same where water is worked out. */
        public Inlet.End known() {
            return switch (this) {
                case PROJECTING -> Inlet.End.PROJECTING;
                case MITRED -> Inlet.End.MITRED;
                case HEADWALL -> Inlet.End.HEADWALL;
            };
        }
    }

    /**
     * A place to which water is led: at a station, or on the map.
     *
     * @param name how the owner calls it
     * @param station m; NaN if it is given on the map
     * @param side the side of the lane it lies on, or null for either
     * @param spot where it lies, or null if it is given by its station
     * @param permitted whether water may be led there
     */
    public record Outlet(
            String name,
            double station,
            ShapePart.@Nullable Hand side,
            @Nullable Spot spot,
            Permitted permitted) {
        /** Checks that there are not two places. */
        public Outlet {
            if (spot != null && !Double.isNaN(station)) {
                throw new IllegalArgumentException(
                        "an outlet lies at a station or at a place on the map; give one of the two");
            }
        }
    }

    /** Whether those who have a say have agreed. */
    public enum Permitted {
        /** Nobody has said. */
        NOT_KNOWN,
        /** They have agreed. */
        YES,
        /** They have not. */
        NO
    }

    /**
     * A windrow along an edge of the lane.
     *
     * @param from station where it begins, m
     * @param to station where it ends, m; infinite for the end of the lane
     * @param side along which edge
     * @param height above the edge, m
     */
    public record Berm(double from, double to, ShapePart.Hand side, double height) {
        /** Checks the ranges. */
        public Berm {
            if (!(to > from)) {
                throw new IllegalArgumentException("a berm ends after it begins");
            }
            if (!(height > 0 && height <= 2)) {
                throw new IllegalArgumentException("a berm is over 0 and at most 2 m high");
            }
        }
    }

    /**
     * The storm that pipes and ditches are to carry, and the land it falls on. Nothing is worked
     * out before a rain, land and soil are all given. The rain is either the depth of a day or a
     * table of shorter ones.
     *
     * @param day rain of 24 hours, m; NaN if not given
     * @param years how often it comes, one year in so many; zero if not given
     * @param type how its rain falls over the day
     * @param land what grows or lies on the land; empty if not given
     * @param soil how readily its soil takes water
     * @param steps rain in steps, to see what stands in hollows after each; needs nothing else
     * @param periods the columns of the table: one year in so many, as the owner writes them
     * @param table its rows; empty for none
     * @param lands several kinds of land in place of one; empty for one
     */
    public record Rain(
            double day,
            double years,
            StormType type,
            String land,
            SoilGroup soil,
            List<Step> steps,
            List<String> periods,
            List<RainRow> table,
            List<LandShare> lands) {
        /** No storm. */
        public static final Rain NONE =
                new Rain(
                        Double.NaN,
                        0,
                        StormType.TYPE_II,
                        "",
                        SoilGroup.NOT_KNOWN,
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of());

        /** Copies the list, and checks the ranges and the name of the land. */
        public Rain {
            steps = List.copyOf(steps);
            periods = List.copyOf(periods);
            table = List.copyOf(table);
            lands = List.copyOf(lands);
            if (day <= 0 || day > 2) {
                throw new IllegalArgumentException(
                        "rain of a day is over 0 and at most 78 in (2 m)");
            }
            if (years < 0 || years > 1000) {
                throw new IllegalArgumentException(
                        "a storm comes one year in 1 to 1,000; leave it out if you do not know");
            }
            if (!land.isEmpty()) {
                known(land);
            }
            if (!table.isEmpty() && !Double.isNaN(day)) {
                throw new IllegalArgumentException(
                        "the rain is given twice; give the depth of a day or a table, not both");
            }
            if (!lands.isEmpty() && !(land.isEmpty() && soil == SoilGroup.NOT_KNOWN)) {
                throw new IllegalArgumentException(
                        "the land is given twice; give land and soil, or lands, not both");
            }
            RainTable.check(periods, table, years);
            LandShare.check(lands);
        }

        /** What of the storm is still to be said, in the owner's words; empty if nothing is. */
        public List<String> missing() {
            List<String> missing = new ArrayList<>();
            if (Double.isNaN(day) && table.isEmpty()) {
                missing.add("how much it rains");
            }
            if (lands.isEmpty() && land.isEmpty()) {
                missing.add("what grows on the land");
            }
            if (lands.isEmpty() && soil == SoilGroup.NOT_KNOWN) {
                missing.add("the group of its soil");
            }
            return missing;
        }

        /**
         * The storm, or null as long as something of it is not given.
         *
         * @param washes how easily the soil of the ditches washes: the more easily, the slower the
         *     published water that it bears
         */
        public @Nullable StormAsked asked(EarthPart.Washes washes) {
            if (!missing().isEmpty()) {
                return null;
            }
            return new StormAsked(
                    day,
                    years,
                    GraphicalPeak.Storm.valueOf(type.name().substring("TYPE_".length())),
                    lands.isEmpty()
                            ? List.of(new StormAsked.Land(cover(land, soil), 1))
                            : lands.stream()
                                    .map(
                                            each ->
                                                    new StormAsked.Land(
                                                            cover(each.land(), each.soil()),
                                                            each.share()))
                                    .toList(),
                    switch (washes) {
                        case LITTLE -> "firm loam";
                        case EASILY -> "sandy loam";
                        case NOT_KNOWN -> "silt loam";
                    },
                    RainTable.of(periods, table, years));
        }

        private static Cover cover(String land, SoilGroup soil) {
            return new Cover(land, lanewright.drainage.runoff.SoilGroup.valueOf(soil.name()));
        }
    }

    /** Refuses a land that is in no row of the table of curve numbers. */
    private static void known(String land) {
        if (!Cover.names().contains(land)) {
            throw new IllegalArgumentException(
                    "\""
                            + land
                            + "\" is no land of the table. There are: "
                            + String.join("; ", Cover.names()));
        }
    }

    /**
     * A row of the owner's table of rain, as written.
     *
     * @param lasts how long it rains, such as {@code 10 min}
     * @param rain for each period the depth that falls, such as {@code 0.8 in}, or how hard it
     *     rains, such as {@code 4.8 in/h}
     */
    public record RainRow(String lasts, List<String> rain) {
        /** Copies the list. */
        public RainRow {
            rain = List.copyOf(rain);
        }
    }

    /**
     * Part of the land.
     *
     * @param land what grows or lies on it
     * @param soil how readily its soil takes water
     * @param share part of all land, over 0 and at most 1
     */
    public record LandShare(String land, SoilGroup soil, double share) {
        /** Shares written in whole percent, as thirds are, make one to this. */
        private static final double WHOLE = 0.011;

        private static void check(List<LandShare> lands) {
            double sum = lands.stream().mapToDouble(LandShare::share).sum();
            for (LandShare each : lands) {
                known(each.land());
                if (each.soil() == SoilGroup.NOT_KNOWN) {
                    throw new IllegalArgumentException(
                            "the soil of " + each.land() + " is not known; it is a, b, c or d");
                }
                if (!(each.share() > 0 && each.share() <= 1)) {
                    throw new IllegalArgumentException(
                            "the share of " + each.land() + " is over 0 and at most 100 %");
                }
            }
            if (!lands.isEmpty() && Math.abs(sum - 1) > WHOLE) {
                throw new IllegalArgumentException(
                        "the shares of the land make "
                                + BigDecimal.valueOf(Math.round(1000 * sum), 1)
                                        .stripTrailingZeros()
                                        .toPlainString()
                                + " %; they must make 100 %");
            }
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
