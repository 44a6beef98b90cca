package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import lanewright.drainage.Crossing;
import lanewright.drainage.Overflow;
import lanewright.drainage.culvert.Apron;
import lanewright.drainage.culvert.BarrelShape;
import lanewright.drainage.culvert.Blocked;
import lanewright.drainage.culvert.Headwater;
import lanewright.drainage.culvert.Inlet;
import lanewright.drainage.culvert.PipeChoice;
import lanewright.drainage.storm.Sized;
import lanewright.drainage.storm.SizedRelief;
import lanewright.drainage.storm.StormReport;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import org.jspecify.annotations.Nullable;

/** What a storm brings to each pipe, and which pipe carries it, as rows. */
public final class StormListings {

    private static final double MINUTE = 60;

    private StormListings() {}

    /** How much water comes to each place where a pipe leads it under the lane. */
    public static Listing flows(@Nullable StormReport storm) {
        var rows = new ArrayList<List<Saying>>();
        for (Sized sized : all(storm)) {
            Crossing crossing = sized.crossing();
            rows.add(
                    List.of(
                            Listing.cell(crossing.name()),
                            Listing.cell(Quantity.station(crossing.line().crossing())),
                            WaterListings.land(crossing.drained(), crossing.isLeast()),
                            Listing.cell(Quantity.length(crossing.way().length())),
                            Listing.cell(Quantity.length(crossing.way().fall())),
                            Saying.of("{} min", Quantity.count(sized.time() / MINUTE)),
                            Listing.cell(Quantity.depth(sized.peak().runoff())),
                            Listing.cell(Quantity.flow(sized.peak().discharge()))));
        }
        return new Listing(
                "storm-flows",
                "How much water the storm brings",
                List.of(
                        Column.words("For"),
                        Column.of("Station", Kind.STATION),
                        Column.words("Land that drains here"),
                        Column.of("Longest way of water", Kind.LENGTH),
                        Column.of("Fall on it", Kind.LENGTH),
                        Column.words("Gathers in"),
                        Column.of("Runs off", Kind.DEPTH),
                        Column.of("Flow at its height", Kind.FLOW)),
                rows,
                0);
    }

    /** Which pipe carries it: the plan's own, or the least of each material with its neighbours. */
    public static Listing sizes(@Nullable StormReport storm) {
        var rows = new ArrayList<List<Saying>>();
        for (Sized sized : all(storm)) {
            if (sized.isDry()) {
                rows.add(plain(sized, "nothing runs off in this storm"));
                continue;
            }
            if (sized.allowed() <= 0) {
                rows.add(plain(sized, "no room for water below the lane's edge"));
                sized.raised().ifPresent(raised -> rows.add(raised(sized, raised)));
                continue;
            }
            if (sized.crossing().isGiven()) {
                rows.add(own(sized));
            }
            if (sized.raised().isPresent()) {
                rows.add(plain(sized, "as drawn no pipe has room under the lane and carries it"));
                rows.add(raised(sized, sized.raised().get()));
                continue;
            }
            for (PipeChoice choice : sized.choices()) {
                choices(sized, choice, rows);
            }
        }
        return new Listing(
                "pipe-sizes",
                "Which pipe carries it",
                List.of(
                        Column.words("For"),
                        Column.words("Pipe"),
                        Column.words("Room it needs"),
                        Column.of("Water may stand", Kind.LENGTH),
                        Column.of("Water stands, at the inlet", Kind.LENGTH),
                        Column.words("Decided at"),
                        Column.of("Leaves at", Kind.SPEED),
                        Column.words("Does it do?")),
                rows,
                0);
    }

    /** Which pipe each relief culvert that is proposed takes. */
    public static Listing reliefs(@Nullable StormReport storm) {
        var rows = new ArrayList<List<Saying>>();
        for (SizedRelief each : storm == null ? List.<SizedRelief>of() : storm.reliefs()) {
            Sized sized = each.sized();
            PipeChoice.Option least = sized.least().orElse(null);
            rows.add(
                    List.of(
                            Listing.cell(each.relief().sign()),
                            Listing.cell(Quantity.station(each.relief().station())),
                            WaterListings.land(
                                    sized.crossing().drained(), sized.crossing().isLeast()),
                            Saying.of("{} min", Quantity.count(sized.time() / MINUTE)),
                            Listing.cell(Quantity.flow(sized.peak().discharge())),
                            sized.allowed() > 0
                                    ? Saying.of(
                                            "{}, "
                                                    + (each.isBrimful()
                                                            ? "ditch full"
                                                            : "by the lane"),
                                            Quantity.length(sized.allowed()))
                                    : Listing.cell("no room"),
                            least == null
                                    ? Listing.BLANK
                                    : Listing.cell(Quantity.length(least.headwater().depth())),
                            leasts(sized),
                            each.basin() > 0
                                    ? Listing.cell(Quantity.depth(each.basin()))
                                    : Listing.cell("none"),
                            Listing.cell(
                                    each.intoDitch()
                                            ? "into the ditch across"
                                            : "onto the ground")));
        }
        return new Listing(
                "relief-sizes",
                "Which pipe each relief culvert takes",
                List.of(
                        Column.words("Sign"),
                        Column.of("Station", Kind.STATION),
                        Column.words("Land that drains here"),
                        Column.words("Gathers in"),
                        Column.of("Flow at its height", Kind.FLOW),
                        Column.words("Water may stand"),
                        Column.of("Water stands, at the inlet", Kind.LENGTH),
                        Column.words("The least pipe that carries it"),
                        Column.words("Basin below the ditch"),
                        Column.words("Runs out")),
                rows,
                0);
    }

    /** The least pipe of each material, or that none does, in a few words. */
    public static Saying leasts(Sized sized) {
        if (sized.isDry()) {
            return Listing.cell("nothing runs off in this storm");
        }
        if (sized.choices().isEmpty()) {
            return Listing.cell("no room or fall for one");
        }
        List<Saying> names =
                sized.choices().stream()
                        .flatMap(choice -> choice.chosen().stream())
                        .map(StormListings::name)
                        .toList();
        if (names.isEmpty()) {
            return Listing.cell("none that is sold");
        }
        List<Quantity> quantities = new ArrayList<>();
        names.forEach(name -> quantities.addAll(name.quantities()));
        return new Saying(
                names.stream().map(Saying::pattern).collect(Collectors.joining(", or ")),
                quantities);
    }

    /** The same storm with the inlet half and wholly blocked, and stone at the outlet. */
    public static Listing blocked(@Nullable StormReport storm) {
        var rows = new ArrayList<List<Saying>>();
        for (Sized sized : all(storm)) {
            for (Blocked blocked : sized.blocked()) {
                rows.add(
                        List.of(
                                Listing.cell(sized.crossing().name()),
                                Listing.cell(blocked.share().words()),
                                Listing.cell(Quantity.length(blocked.headwater())),
                                Listing.cell(Quantity.flow(blocked.through())),
                                Listing.cell(Quantity.flow(blocked.over())),
                                goes(sized.crossing(), blocked)));
            }
        }
        return new Listing(
                "pipe-blocked",
                "The storm with the inlet clear, and with leaves and ice in it",
                List.of(
                        Column.words("For"),
                        Column.words("Inlet"),
                        Column.of("Water stands, at the inlet", Kind.LENGTH),
                        Column.of("Through the pipe", Kind.FLOW),
                        Column.of("Not through it", Kind.FLOW),
                        Column.words("Where that goes")),
                rows,
                0);
    }

    private static Saying goes(Crossing crossing, Blocked blocked) {
        Overflow other = crossing.overflow();
        if (blocked.elsewhere() && other != null) {
            return other.spill().words();
        }
        return blocked.overDepth() > 0
                ? Saying.of(
                        "over the lane at {}, {} deep, {} fast",
                        Quantity.station(blocked.overAt()),
                        Quantity.depth(blocked.overDepth()),
                        Quantity.speed(blocked.overSpeed()))
                : Listing.cell("nowhere");
    }

    /** Stone at the outlets. */
    public static Listing aprons(@Nullable StormReport storm) {
        var rows = new ArrayList<List<Saying>>();
        for (Sized sized : all(storm)) {
            Apron apron = sized.apron().orElse(null);
            if (apron == null) {
                continue;
            }
            Apron.Bed bed = apron.bed().orElse(null);
            rows.add(
                    List.of(
                            Listing.cell(sized.crossing().name()),
                            bed == null
                                    ? Listing.cell("larger than any apron takes: ask an engineer")
                                    : Saying.of("{} on average", Quantity.depth(bed.stone())),
                            bed == null ? Listing.BLANK : length(bed.length()),
                            bed == null ? Listing.BLANK : length(bed.startWidth()),
                            bed == null ? Listing.BLANK : length(bed.endWidth()),
                            bed == null
                                    ? Listing.BLANK
                                    : Listing.cell(Quantity.depth(bed.depth()))));
        }
        return new Listing(
                "pipe-aprons",
                "Stone below the outlets, so that they do not wash out",
                List.of(
                        Column.words("For"),
                        Column.words("Stone"),
                        Column.of("Length", Kind.LENGTH),
                        Column.of("Width at the pipe", Kind.LENGTH),
                        Column.of("Width at the end", Kind.LENGTH),
                        Column.of("Depth", Kind.DEPTH)),
                rows,
                0);
    }

    private static Saying length(double metres) {
        return Listing.cell(Quantity.length(metres));
    }

    private static List<Sized> all(@Nullable StormReport storm) {
        return storm == null ? List.of() : storm.sized();
    }

    private static List<Saying> plain(Sized sized, String says) {
        return List.of(
                Listing.cell(sized.crossing().name()),
                Listing.BLANK,
                Listing.BLANK,
                Listing.BLANK,
                Listing.BLANK,
                Listing.BLANK,
                Listing.BLANK,
                Listing.cell(says));
    }

    private static List<Saying> own(Sized sized) {
        Headwater water = sized.given().orElseThrow();
        return row(
                sized,
                Saying.of(
                        "{} wide, as your plan has it",
                        Quantity.depth(sized.crossing().diameter())),
                Listing.BLANK,
                water,
                sized.isEnough()
                        ? Listing.cell("carries it")
                        : Saying.of("too small: it carries {}", Quantity.flow(sized.carries())));
    }

    private static void choices(Sized sized, PipeChoice choice, List<List<Saying>> rows) {
        if (choice.chosen().isEmpty()) {
            rows.add(
                    plain(
                            sized,
                            "no "
                                    + choice.material().words()
                                    + " pipe has room under the lane and carries it"));
            return;
        }
        choice.smaller().ifPresent(each -> rows.add(option(sized, each, "the next smaller")));
        choice.chosen().ifPresent(each -> rows.add(option(sized, each, "")));
        choice.larger().ifPresent(each -> rows.add(option(sized, each, "the next larger")));
    }

    private static List<Saying> raised(Sized sized, Sized.Raised raised) {
        double more = sized.crossing().raise() + raised.by();
        Headwater water = raised.option().headwater();
        return List.of(
                Listing.cell(sized.crossing().name()),
                name(raised.option()),
                Saying.of("{}", Quantity.length(raised.option().room())),
                length(sized.allowed() + raised.by()),
                length(water.depth()),
                decided(water),
                Listing.cell(Quantity.speed(water.outletVelocity())),
                Saying.of("carries it once the lane is {} higher", Quantity.depth(more)));
    }

    private static Saying decided(Headwater water) {
        return Listing.cell(
                (water.control() == Headwater.Control.INLET ? "inlet" : "outlet")
                        + (water.doubtful() ? ", roughly" : ""));
    }

    private static List<Saying> option(Sized sized, PipeChoice.Option option, String beside) {
        String says =
                !option.fits()
                        ? "no room under the lane"
                        : !option.carries()
                                ? "too small"
                                : beside.isEmpty()
                                        ? sized.crossing().isLeast()
                                                ? "carries what is known to come, which may be"
                                                        + " less than all: the least that does"
                                                : "carries it: the least that does"
                                        : "carries it";
        return row(
                sized,
                name(option, beside.isEmpty() ? "" : ", " + beside),
                Saying.of("{}", Quantity.length(option.room())),
                option.headwater(),
                Listing.cell(says));
    }

    /** How many, how large and of what, such as {@code 2 of 18 in smooth-lined plastic}. */
    public static Saying name(PipeChoice.Option option) {
        return name(option, "");
    }

    private static Saying name(PipeChoice.Option option, String after) {
        BarrelShape inside = option.size().barrel().inside();
        String count = option.barrels() == 1 ? "" : option.barrels() + " of ";
        String what = " " + option.size().barrel().material().words() + after;
        return option.size().shape() == Inlet.Shape.ROUND
                ? Saying.of(count + "{}" + what, Quantity.depth(inside.span()))
                : Saying.of(
                        count + "{} by {} pipe-arch of" + what,
                        Quantity.depth(inside.span()),
                        Quantity.depth(inside.rise()));
    }

    private static List<Saying> row(
            Sized sized, Saying pipe, Saying room, Headwater water, Saying says) {
        return List.of(
                Listing.cell(sized.crossing().name()),
                pipe,
                room,
                Listing.cell(Quantity.length(sized.allowed())),
                Listing.cell(Quantity.length(water.depth())),
                decided(water),
                Listing.cell(Quantity.speed(water.outletVelocity())),
                says);
    }
}
