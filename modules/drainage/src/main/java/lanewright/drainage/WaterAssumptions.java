package lanewright.drainage;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.along.DitchEnd;
import lanewright.drainage.along.Limit;
import lanewright.drainage.along.Limits;
import lanewright.measure.Assumption;
import lanewright.measure.Assumption.Mark;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;

/** What the answers about water rest on. */
final class WaterAssumptions {

    private static final String OURS = "our choice";

    private WaterAssumptions() {}

    static List<Assumption> of(
            WaterOptions options, WaterTables tables, double cell, double wanted) {
        List<Assumption> all = new ArrayList<>();
        all.add(
                rule(
                        "Rim of the survey",
                        Saying.plain(
                                "Water that reaches the rim of the survey, or of a hole in it, is"
                                        + " taken to leave; a low spot that spills there is at least"
                                        + " that deep.")));
        all.add(
                rule(
                        "Low spots",
                        Saying.of(
                                "Listed from {} deep and {} wide, smaller ones counted; measured"
                                        + " full to where they spill, with no soaking away and no"
                                        + " evaporation.",
                                Quantity.depth(options.listed().depth()),
                                Quantity.area(options.listed().area()))));
        String grown = cell > wanted * (1 + 1e-9) ? ", grown so that there are not too many" : "";
        all.add(
                rule(
                        "Ways of water",
                        Saying.of(
                                "Shown and flagged where at least {} of surveyed land drains"
                                        + " through them; followed over cells {} wide"
                                        + grown
                                        + ", ditches and ridges with their exact heights.",
                                Quantity.land(options.flowArea()),
                                Quantity.length(cell))));
        all.add(
                rule(
                        "Pipes under the lane",
                        Saying.plain(
                                "Length only, from foreslope to foreslope along an invert at the"
                                        + " low ground or the ditch bottom. Square to the lane, or"
                                        + " slanted by at most 45° where only that gives it"
                                        + " fall.")));
        all.add(
                rule(
                        "Lane raised for a pipe",
                        Saying.of(
                                "In steps of {}, by at most {}, and where that bends the grade by"
                                        + " no more than {} towards the nearer end.",
                                Quantity.depth(Cures.STEP),
                                Quantity.length(Cures.MOST_RAISE),
                                Quantity.grade(Cures.MOST_BEND))));
        all.add(
                switch (options.soil()) {
                    case FIRM -> soil("Firm: coarse rock, gravel, some clay.", Mark.YOURS);
                    case WASHES -> soil("Washes easily: silt or fine sand.", Mark.YOURS);
                    case NOT_KNOWN ->
                            soil(
                                    "Not stated; taken as one that washes easily, to be safe.",
                                    Mark.RULE);
                });
        Limits limits = tables.limits();
        all.add(grade("Least cross slope of stone", limits.crossLeast()));
        all.add(grade("Greatest cross slope of stone", limits.crossMost()));
        all.add(grade("Least grade of a ditch", limits.ditchLeast()));
        all.add(grade("Ditch grade that wants check dams", limits.ditchChecked()));
        all.add(grade("Ditch grade that wants a lining", limits.ditchLined()));
        all.add(depth("Ditch bottom below the stone", limits.belowStone()));
        all.add(depth("Lane's edge above the ground", limits.edgeAbove()));
        all.add(depth("Room for a pipe under the lane's edge", limits.pipeRoom()));
        all.add(grade("Greatest grade of a lane that falls outward", limits.outslopeMost()));
        all.add(grade("Outward fall over the lane's grade, at least", limits.outslopeOver()));
        all.add(grade("Greatest grade for a dip across the lane", limits.dipMost()));
        all.add(grade("Fall of the ground across that makes a side slope", limits.slopeAcross()));
        all.add(
                rule(
                        "Outlets",
                        Saying.of(
                                "An end of a ditch takes the nearest outlet that your plan names"
                                        + " within {}.",
                                Quantity.length(DitchEnd.REACH))));
        all.add(
                new Assumption(
                        "Wet ground",
                        Saying.of(
                                "By the topographic wetness index, of squares at least {} wide, and"
                                        + " ranked within the survey: by the shape of the land"
                                        + " alone. Soil, springs and drains are not known.",
                                Quantity.length(WetGround.LEAST_SIDE)),
                        Mark.PUBLISHED,
                        WetGround.SOURCE));
        all.add(
                new Assumption(
                        "Spacing of bars across the lane, and of gaps in berms",
                        Saying.plain(
                                "By grade; a grade between two rows of the table takes the steeper"
                                        + " row."),
                        Mark.PUBLISHED,
                        tables.waterBars().rows().get(0).source()));
        all.add(
                new Assumption(
                        "Spacing of drains across the lane",
                        Saying.plain(
                                "By grade; a grade between two rows of the table takes the steeper"
                                        + " row."),
                        Mark.PUBLISHED,
                        tables.crossDrains().rows().get(0).source()));
        return all;
    }

    private static Assumption rule(String name, Saying value) {
        return new Assumption(name, value, Mark.RULE, OURS);
    }

    private static Assumption soil(String words, Mark mark) {
        return new Assumption(
                "Soil that water runs over",
                Saying.plain(words),
                mark,
                mark == Mark.YOURS ? "your plan" : OURS);
    }

    private static Assumption grade(String name, Limit limit) {
        return new Assumption(
                name, Saying.of("{}", Quantity.grade(limit.value())), limit.mark(), limit.source());
    }

    private static Assumption depth(String name, Limit limit) {
        return new Assumption(
                name,
                Saying.of("{~}", Quantity.depth(limit.value())),
                limit.mark(),
                limit.source());
    }
}
