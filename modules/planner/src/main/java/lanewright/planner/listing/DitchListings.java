package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lanewright.drainage.along.Side;
import lanewright.drainage.channel.Lining;
import lanewright.drainage.storm.SizedDitch;
import lanewright.drainage.storm.SizedReach;
import lanewright.drainage.storm.SizedRelief;
import lanewright.drainage.storm.StormReport;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import org.jspecify.annotations.Nullable;

/** The storm in the ditches, reach by reach, as rows. */
public final class DitchListings {

    private static final double MINUTE = 60;

    private DitchListings() {}

    /** How much water gathers in each reach, and from where. */
    public static Listing gathering(@Nullable StormReport storm) {
        var rows = new ArrayList<List<Saying>>();
        for (SizedDitch ditch : all(storm)) {
            for (SizedReach reach : ditch.reaches()) {
                rows.add(
                        List.of(
                                Listing.cell(ditch.water().ditch().side().word()),
                                Listing.cell(Quantity.station(reach.top())),
                                Listing.cell(Quantity.station(reach.foot())),
                                Listing.cell(Quantity.area(reach.lane())),
                                Listing.cell(Quantity.area(reach.slopes())),
                                WaterListings.land(reach.land(), reach.isLeast()),
                                WaterListings.land(reach.drained(), reach.isLeast()),
                                Saying.of("{} min", Quantity.count(reach.time() / MINUTE)),
                                Saying.of("{}", Quantity.flow(reach.flow()))));
            }
        }
        return new Listing(
                "ditch-gathering",
                "How much water gathers in the ditches, reach by reach",
                List.of(
                        Column.words("Side"),
                        Column.of("From", Kind.STATION),
                        Column.of("Down to", Kind.STATION),
                        Column.of("Lane", Kind.AREA),
                        Column.of("Its slopes", Kind.AREA),
                        Column.words("Land beside"),
                        Column.words("All, at its foot"),
                        Column.words("Gathers in"),
                        Column.words("Flow at its foot")),
                rows,
                0);
    }

    /** How water runs in each reach, and what holds it. */
    public static Listing reaches(@Nullable StormReport storm) {
        var rows = new ArrayList<List<Saying>>();
        for (SizedDitch ditch : all(storm)) {
            for (SizedReach reach : ditch.reaches()) {
                Lining.Flow steep = reach.steep().orElse(null);
                boolean falls = !Double.isNaN(reach.steepest());
                rows.add(
                        List.of(
                                Listing.cell(ditch.water().ditch().side().word()),
                                Listing.cell(Quantity.station(reach.top())),
                                Listing.cell(Quantity.station(reach.foot())),
                                Saying.of("{}", Quantity.flow(reach.flow())),
                                falls
                                        ? Listing.cell(Quantity.grade(reach.steepest()))
                                        : Listing.BLANK,
                                steep == null
                                        ? Listing.BLANK
                                        : Listing.cell(Quantity.depth(reach.deep())),
                                steep == null
                                        ? Listing.BLANK
                                        : Listing.cell(Quantity.depth(reach.left())),
                                steep == null
                                        ? Listing.BLANK
                                        : Listing.cell(Quantity.speed(steep.velocity())),
                                steep == null
                                        ? Listing.BLANK
                                        : Listing.cell(Quantity.shear(steep.shear())),
                                holds(reach),
                                steep == null ? Listing.BLANK : bears(steep.lining()),
                                dams(reach)));
            }
        }
        return new Listing(
                "ditch-flows",
                "The storm in the ditches, and what holds it",
                List.of(
                        Column.words("Side"),
                        Column.of("From", Kind.STATION),
                        Column.of("Down to", Kind.STATION),
                        Column.words("Flow"),
                        Column.of("Falls", Kind.GRADE),
                        Column.of("Deep", Kind.DEPTH),
                        Column.of("Left to the lane", Kind.DEPTH),
                        Column.of("Speed", Kind.SPEED),
                        Column.of("Drag", Kind.SHEAR),
                        Column.words("Bottom that holds"),
                        Column.words("It bears"),
                        Column.words("Or check dams")),
                rows,
                0);
    }

    /**
     * The reaches that carry more with every proposal built, of each ditch that a relief culvert
     * comes out in.
     */
    public static Listing relieved(@Nullable StormReport storm) {
        var rows = new ArrayList<List<Saying>>();
        if (storm != null) {
            relieved(storm, rows);
        }
        return new Listing(
                "ditch-flows-relieved",
                "Reaches that carry more with all proposals built, for relief culverts come out in them",
                List.of(
                        Column.words("Side"),
                        Column.of("From", Kind.STATION),
                        Column.of("Down to", Kind.STATION),
                        Column.words("Comes in"),
                        Column.words("All, at its foot"),
                        Column.words("Gathers in"),
                        Column.words("Flow at its foot"),
                        Column.of("Deep", Kind.DEPTH),
                        Column.of("Left to the lane", Kind.DEPTH),
                        Column.of("Speed", Kind.SPEED),
                        Column.words("Bottom that holds"),
                        Column.words("Or check dams")),
                rows,
                0);
    }

    private static void relieved(StormReport storm, List<List<Saying>> rows) {
        for (SizedDitch ditch : storm.receiving()) {
            Side side = ditch.water().ditch().side();
            for (SizedReach reach : ditch.reaches()) {
                if (!storm.carriesMore(ditch, reach)) {
                    continue;
                }
                Lining.Flow steep = reach.steep().orElse(null);
                rows.add(
                        List.of(
                                Listing.cell(side.word()),
                                Listing.cell(Quantity.station(reach.top())),
                                Listing.cell(Quantity.station(reach.foot())),
                                Listing.cell(comes(storm, ditch, reach)),
                                WaterListings.land(reach.drained(), reach.isLeast()),
                                Saying.of("{} min", Quantity.count(reach.time() / MINUTE)),
                                Saying.of("{}", Quantity.flow(reach.flow())),
                                steep == null
                                        ? Listing.BLANK
                                        : Listing.cell(Quantity.depth(reach.deep())),
                                steep == null
                                        ? Listing.BLANK
                                        : Listing.cell(Quantity.depth(reach.left())),
                                steep == null
                                        ? Listing.BLANK
                                        : Listing.cell(Quantity.speed(steep.velocity())),
                                holds(reach),
                                dams(reach)));
            }
        }
    }

    /** The signs of the relief culverts that come out in a reach. */
    private static String comes(StormReport storm, SizedDitch ditch, SizedReach reach) {
        List<String> signs = new ArrayList<>();
        for (SizedRelief each : storm.reliefs()) {
            if (each.comesOutIn(ditch, reach)) {
                signs.add(each.relief().sign());
            }
        }
        return String.join(", ", signs);
    }

    private static Saying holds(SizedReach reach) {
        if (!reach.runs()) {
            return Listing.cell(reach.flow() > 0 ? "level: water stands" : "nothing runs off");
        }
        return Listing.cell(
                reach.steep()
                        .map(flow -> name(flow.lining()))
                        .orElse("none published: ask an engineer"));
    }

    /** What a ditch is lined with, in words. */
    public static String name(Lining lining) {
        return lining.kind() == Lining.Kind.SOIL ? "the bare soil" : lining.name();
    }

    private static Saying bears(Lining lining) {
        OptionalDouble speed = lining.velocity();
        OptionalDouble shear = lining.shear();
        if (speed.isPresent() && shear.isPresent()) {
            return Saying.of(
                    "{}, {}",
                    Quantity.speed(speed.getAsDouble()),
                    Quantity.shear(shear.getAsDouble()));
        }
        return speed.isPresent()
                ? Saying.of("{}", Quantity.speed(speed.getAsDouble()))
                : shear.isPresent()
                        ? Saying.of("{}", Quantity.shear(shear.getAsDouble()))
                        : Listing.BLANK;
    }

    private static Saying dams(SizedReach reach) {
        return reach.dams()
                .map(
                        dams ->
                                Saying.of(
                                        "{} high, every {}",
                                        Quantity.depth(dams.height()),
                                        Quantity.length(dams.spacing().spacing())))
                .orElse(Listing.BLANK);
    }

    private static List<SizedDitch> all(@Nullable StormReport storm) {
        return storm == null ? List.of() : storm.ditches();
    }
}
