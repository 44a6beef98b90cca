package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.culvert.Apron;
import lanewright.drainage.culvert.Headwater;
import lanewright.drainage.culvert.Inlet;
import lanewright.drainage.culvert.Load;
import lanewright.drainage.storm.Ford;
import lanewright.drainage.storm.Sized;
import lanewright.drainage.storm.StormReport;
import lanewright.earthwork.Soil;
import lanewright.lane.volume.State;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Price;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.planner.pipes.CostLine;
import lanewright.planner.pipes.PipeCover;
import lanewright.planner.pipes.PipeJob;
import lanewright.planner.pipes.PipeLength;
import org.jspecify.annotations.Nullable;

/** Pipes under the lane as things that are bought, dug in and built, as rows. */
public final class PipeListings {

    private static final String NO_PRICE = "no price given";

    private PipeListings() {}

    /** One row for each pipe: where and how it lies, and what it is. */
    public static Listing schedule(List<PipeJob> jobs) {
        var rows = new ArrayList<List<Saying>>();
        for (PipeJob job : jobs) {
            rows.add(
                    List.of(
                            name(job),
                            Listing.cell(Quantity.station(job.line().crossing())),
                            skew(job),
                            job.laid().name(),
                            ordered(job),
                            Listing.cell(ends(job)),
                            Listing.cell(Quantity.height(job.line().inlet().height())),
                            Listing.cell(Quantity.height(job.line().outlet().height())),
                            Listing.cell(Quantity.grade(job.line().grade())),
                            cover(job.finished()),
                            cover(job.building()),
                            water(job.headwater()),
                            apron(job),
                            money(job.money())));
        }
        return new Listing(
                "culvert-schedule",
                "Culvert schedule",
                List.of(
                        Column.words("Pipe"),
                        Column.of("Station", Kind.STATION),
                        Column.words("Skew"),
                        Column.words("Size and material"),
                        Column.words("Order"),
                        Column.words("Ends"),
                        Column.of("Inlet", Kind.HEIGHT),
                        Column.of("Outlet", Kind.HEIGHT),
                        Column.of("Fall", Kind.GRADE),
                        Column.words("Cover, finished"),
                        Column.words("While building"),
                        Column.words("Headwater, and where decided"),
                        Column.words("Apron"),
                        Column.of("Money", Kind.MONEY)),
                rows,
                0);
    }

    /** What is bought and done for each pipe, with money where the plan gives prices. */
    public static Listing work(List<PipeJob> jobs) {
        var rows = new ArrayList<List<Saying>>();
        double all = 0;
        for (PipeJob job : jobs) {
            for (CostLine line : job.lines()) {
                rows.add(
                        List.of(
                                name(job),
                                Listing.cell(line.what().words()),
                                line.what() == CostLine.What.BARREL
                                        ? joined(line.amount(), " of ", job.laid().each())
                                        : line.amount(),
                                price(line),
                                money(line.money())));
            }
            all += job.planned() ? job.priced() : 0;
        }
        boolean total = jobs.stream().anyMatch(job -> job.planned() && job.hasPrice());
        if (total) {
            boolean whole =
                    jobs.stream().filter(PipeJob::planned).noneMatch(j -> Double.isNaN(j.money()));
            rows.add(
                    List.of(
                            Listing.cell("all pipes of the plan"),
                            Listing.BLANK,
                            Listing.cell(whole ? "" : "without what has no price"),
                            Listing.BLANK,
                            Listing.cell(Quantity.money(all))));
        }
        return new Listing(
                "culvert-work",
                "What each pipe takes",
                List.of(
                        Column.words("Pipe"),
                        Column.words("What"),
                        Column.words("Amount"),
                        Column.words("Price"),
                        Column.of("Money", Kind.MONEY)),
                rows,
                total ? 1 : 0);
    }

    /** How the length to order comes about. */
    public static Listing lengths(List<PipeJob> jobs) {
        var rows = new ArrayList<List<Saying>>();
        for (PipeJob job : jobs) {
            PipeLength length = job.length();
            rows.add(
                    List.of(
                            name(job),
                            Listing.cell(job.ends().words()),
                            Listing.cell(Quantity.length(length.feet())),
                            beyond(length),
                            Listing.cell(Quantity.length(length.wanted())),
                            Listing.cell(Quantity.length(length.soldBy())),
                            Listing.cell(Quantity.length(length.ordered())),
                            Listing.cell(Quantity.length(length.waste())),
                            Listing.cell(Quantity.count(job.laid().count()))));
        }
        return new Listing(
                "culvert-lengths",
                "How long to order it",
                List.of(
                        Column.words("Pipe"),
                        Column.words("Its ends"),
                        Column.of("From foot to foot of the slopes", Kind.LENGTH),
                        Column.words("At its ends"),
                        Column.of("Together", Kind.LENGTH),
                        Column.of("Sold by", Kind.LENGTH),
                        Column.of("Order", Kind.LENGTH),
                        Column.of("Cut off", Kind.LENGTH),
                        Column.of("Pipes", Kind.COUNT)),
                rows,
                0);
    }

    /** Cover over each pipe at the lowest place under the travelled way, and what it needs. */
    public static Listing covers(List<PipeJob> jobs) {
        var rows = new ArrayList<List<Saying>>();
        for (PipeJob job : jobs) {
            for (PipeCover cover : List.of(job.finished(), job.building())) {
                if (Double.isNaN(cover.least())) {
                    continue;
                }
                rows.add(
                        List.of(
                                name(job),
                                Listing.cell(
                                        cover.load() == Load.ROAD
                                                ? "finished"
                                                : "on the subgrade, before the stone"),
                                Listing.cell(
                                        cover.load() == Load.ROAD
                                                ? "road traffic"
                                                : cover.load().words()),
                                Listing.cell(Quantity.depth(cover.least())),
                                Double.isNaN(cover.needed())
                                        ? Listing.BLANK
                                        : Listing.cell(Quantity.depth(cover.needed())),
                                does(cover),
                                Listing.cell(cover.source())));
            }
        }
        return new Listing(
                "culvert-cover",
                "Cover over the pipe, at the lowest wheel track",
                List.of(
                        Column.words("Pipe"),
                        Column.words("When"),
                        Column.words("Load"),
                        Column.of("There is", Kind.DEPTH),
                        Column.of("It needs", Kind.DEPTH),
                        Column.words("Does it do?"),
                        Column.words("Who says so")),
                rows,
                0);
    }

    private static Saying does(PipeCover cover) {
        if (!cover.isThin()) {
            return Listing.cell("yes");
        }
        return Double.isNaN(cover.needed())
                ? Listing.cell("not known: ask its maker")
                : Saying.of("{} short", Quantity.depth(cover.lacking()));
    }

    /** The next smaller and the next larger pipe in the same place. */
    public static Listing others(List<PipeJob> jobs) {
        var rows = new ArrayList<List<Saying>>();
        for (PipeJob job : jobs) {
            job.others().stream()
                    .filter(other -> !other.larger())
                    .forEach(other -> rows.add(other(job, other)));
            rows.add(
                    List.of(
                            name(job),
                            joined(job.laid().name(), ", ", Saying.plain("this one")),
                            water(job.headwater()),
                            own(job),
                            money(job.money())));
            job.others().stream()
                    .filter(PipeJob.Other::larger)
                    .forEach(other -> rows.add(other(job, other)));
        }
        return new Listing(
                "culvert-alternatives",
                "One size smaller and one size larger",
                List.of(
                        Column.words("Pipe"),
                        Column.words("Size and material"),
                        Column.words("Headwater, and where decided"),
                        Column.words("Does it do?"),
                        Column.of("Money, all of it", Kind.MONEY)),
                rows,
                0);
    }

    private static Saying own(PipeJob job) {
        if (!job.fits() || job.finished().isThin()) {
            return Listing.cell(
                    job.first().isNothing() ? "does not fit as drawn" : "too little cover");
        }
        Headwater water = job.headwater();
        if (water == null || job.sized() == null) {
            return Listing.cell("fits");
        }
        return water.depth() <= job.allowed()
                ? Listing.cell("fits, carries the storm")
                : Saying.of(
                        "fits, but water would stand {} too high",
                        Quantity.depth(water.depth() - job.allowed()));
    }

    private static List<Saying> other(PipeJob job, PipeJob.Other other) {
        return List.of(
                name(job),
                other.laid().name(),
                water(other.headwater()),
                other.says(),
                money(other.money()));
    }

    /**
     * Fords of rock where no pipe does, with what their rock weighs and costs.
     *
     * @param storm null if the plan does not say how much it rains
     * @param density of the rock as laid, kg/m³
     * @param price of it, or null
     */
    public static Listing fords(
            @Nullable StormReport storm, double density, @Nullable Price price) {
        var rows = new ArrayList<List<Saying>>();
        for (Sized sized : storm == null ? List.<Sized>of() : storm.sized()) {
            Ford ford = sized.ford().orElse(null);
            if (ford == null || sized.isDry()) {
                continue;
            }
            double mass = ford.volume() * density;
            double paid = price != null && price.kind() == Kind.VOLUME ? ford.volume() : mass;
            rows.add(
                    List.of(
                            Listing.cell(sized.crossing().name()),
                            Listing.cell(Quantity.station(sized.crossing().line().crossing())),
                            Listing.cell(Quantity.length(ford.down())),
                            Listing.cell(Quantity.length(ford.bottom())),
                            Listing.cell(Quantity.grade(ford.approach())),
                            Listing.cell(Quantity.depth(ford.depth())),
                            Listing.cell(Quantity.speed(ford.speed())),
                            Saying.of(
                                    "{} on average, {} thick, {} along the water",
                                    Quantity.depth(ford.stone()),
                                    Quantity.depth(ford.thickness()),
                                    Quantity.length(ford.length())),
                            Listing.cell(Quantity.volume(ford.volume())),
                            Listing.cell(Quantity.mass(mass)),
                            money(price == null ? Double.NaN : price.of(paid))));
        }
        return new Listing(
                "fords",
                "A ford of rock instead",
                List.of(
                        Column.words("For"),
                        Column.of("Station", Kind.STATION),
                        Column.of("Lane lower by", Kind.LENGTH),
                        Column.of("Level bottom", Kind.LENGTH),
                        Column.of("Approaches", Kind.GRADE),
                        Column.of("Water on it", Kind.DEPTH),
                        Column.of("Runs", Kind.SPEED),
                        Column.words("Rock"),
                        Column.of("As laid", Kind.VOLUME),
                        Column.of("Weight", Kind.MASS),
                        Column.of("Rock costs", Kind.MONEY)),
                rows,
                0);
    }

    /**
     * Earth of the trenches of the pipes of the plan, besides the balance of the lane.
     *
     * @param soil how it grows when dug and shrinks when packed
     */
    public static Listing earth(List<PipeJob> jobs, Soil soil) {
        var rows = new ArrayList<List<Saying>>();
        for (PipeJob job : jobs) {
            if (job.planned()) {
                double back = soil.convert(job.trench().back(), State.COMPACTED, State.BANK);
                double over = job.trench().dug() - back;
                rows.add(
                        List.of(
                                name(job),
                                Listing.cell(Quantity.volume(job.trench().dug())),
                                Listing.cell(Quantity.volume(job.trench().back())),
                                Listing.cell(Quantity.volume(back)),
                                Listing.cell(Quantity.volume(over)),
                                Listing.cell(
                                        Quantity.volume(
                                                soil.convert(over, State.BANK, State.LOOSE))),
                                Listing.cell(Quantity.volume(job.trench().displaced()))));
            }
        }
        return new Listing(
                "culvert-earth",
                "Earth of pipe trenches, besides the balance",
                List.of(
                        Column.words("Pipe"),
                        Column.of("Dug (bank)", Kind.VOLUME),
                        Column.of("Put back, packed", Kind.VOLUME),
                        Column.of("That takes (bank)", Kind.VOLUME),
                        Column.of("Left over (bank)", Kind.VOLUME),
                        Column.of("Left over, loose", Kind.VOLUME),
                        Column.of("Fill it takes the place of", Kind.VOLUME)),
                rows,
                0);
    }

    /**
     * What is bought for the pipes of the plan, for the list beside the order of stone.
     *
     * @param money what stands after an amount of money
     */
    public static List<List<Saying>> also(List<PipeJob> jobs, String money) {
        var rows = new ArrayList<List<Saying>>();
        for (PipeJob job : jobs) {
            if (!job.planned() || !job.fits()) {
                continue;
            }
            for (CostLine line : job.lines()) {
                if (!line.isPaid() || line.isDigging()) {
                    continue;
                }
                Saying amount =
                        line.what() == CostLine.What.BARREL
                                ? joined(line.amount(), " of ", job.laid().each())
                                : line.amount();
                Quantity at = Quantity.station(job.line().crossing());
                rows.add(
                        List.of(
                                Listing.cell(sold(line.what())),
                                Listing.cell(at),
                                Listing.BLANK,
                                Listing.cell("across"),
                                Double.isNaN(line.money())
                                        ? amount
                                        : joined(
                                                amount,
                                                ", ",
                                                Saying.of(
                                                        "{}" + money.replace("{}", "{ }"),
                                                        Quantity.money(line.money())))));
            }
        }
        return rows;
    }

    private static String sold(CostLine.What what) {
        return switch (what) {
            case BARREL -> "Pipe";
            case BEDDING -> "Stone under the pipe";
            case RIPRAP -> "Riprap below the pipe";
            case FABRIC -> "Filter fabric under the riprap";
            case ENDS -> "Headwalls of the pipe";
            case BASIN_STONE -> "Stone in the basin of the pipe";
            case DAM -> "Stone of the dam below the pipe's inlet";
            case TRENCH, FOOTINGS, BASIN, BACKFILL -> what.words();
        };
    }

    /** What is dug and laid for one pipe, a line each, for the steps of the work. */
    public static List<Saying> steps(PipeJob job) {
        List<Saying> steps = new ArrayList<>();
        for (CostLine line : job.lines()) {
            if (line.what() != CostLine.What.ENDS || job.ends() != Inlet.End.PROJECTING) {
                steps.add(
                        joined(
                                Saying.plain(plain(job.name()) + ", " + line.what().words() + ": "),
                                "",
                                line.what() == CostLine.What.BARREL
                                        ? joined(line.amount(), " of ", job.laid().each())
                                        : line.amount()));
            }
        }
        return steps;
    }

    private static String plain(String name) {
        return name.replace("{", "(").replace("}", ")");
    }

    private static Saying name(PipeJob job) {
        String name = plain(job.name()) + (job.planned() ? "" : ", offered");
        Saying first = job.first().words();
        return job.first().isNothing()
                ? Listing.cell(name)
                : new Saying(name + " once " + first.pattern(), first.quantities());
    }

    private static Saying beyond(PipeLength length) {
        if (length.atInlet() == 0 && length.atOutlet() == 0) {
            return Listing.cell("at the foot");
        }
        return length.atInlet() > 0
                ? Saying.of("{} beyond each foot", Quantity.length(length.atInlet()))
                : Saying.of(
                        "inlet {} inside the foot, outlet {}",
                        Quantity.length(-length.atInlet()),
                        Quantity.length(-length.atOutlet()));
    }

    private static String ends(PipeJob job) {
        return switch (job.ends()) {
            case PROJECTING -> "stick out";
            case MITRED -> "cut to the slope";
            case HEADWALL -> "headwalls";
            case END_SECTION, OTHER -> job.ends().words();
        };
    }

    private static Saying skew(PipeJob job) {
        return job.line().isSlanted()
                ? Saying.of("to {}", Quantity.station(job.line().outletStation()))
                : Listing.cell("square");
    }

    private static Saying ordered(PipeJob job) {
        return job.laid().count() == 1
                ? Saying.of("{}", Quantity.length(job.length().ordered()))
                : Saying.of(
                        "{} of {}",
                        Quantity.count(job.laid().count()),
                        Quantity.length(job.length().ordered()));
    }

    private static Saying cover(PipeCover cover) {
        if (Double.isNaN(cover.least())) {
            return Listing.BLANK;
        }
        return Double.isNaN(cover.needed())
                ? Saying.of("{}", Quantity.depth(cover.least()))
                : Saying.of(
                        cover.isThin() ? "{}, short: needs {}" : "{}, needs {}",
                        Quantity.depth(cover.least()),
                        Quantity.depth(cover.needed()));
    }

    private static Saying water(@Nullable Headwater water) {
        return water == null
                ? Listing.BLANK
                : Saying.of(
                        "{}, "
                                + (water.control() == Headwater.Control.INLET ? "inlet" : "outlet")
                                + (water.doubtful() ? ", roughly" : ""),
                        Quantity.length(water.depth()));
    }

    private static Saying apron(PipeJob job) {
        Apron.Bed bed = job.apron().orElse(null);
        if (bed == null) {
            return Listing.cell(job.headwater() == null ? "" : "ask an engineer");
        }
        return Saying.of(
                "{} stone, {}", Quantity.depth(bed.stone()), Quantity.length(bed.length()));
    }

    private static Saying price(CostLine line) {
        Price price = line.price();
        if (!line.isPaid()) {
            return Listing.BLANK;
        }
        return Listing.cell(price == null ? NO_PRICE : price.inWords(""));
    }

    private static Saying money(double amount) {
        return Double.isNaN(amount) || amount == 0
                ? Listing.BLANK
                : Listing.cell(Quantity.money(amount));
    }

    private static Saying joined(Saying first, String between, Saying second) {
        var quantities = new ArrayList<>(first.quantities());
        quantities.addAll(second.quantities());
        return new Saying(first.pattern() + between + second.pattern(), quantities);
    }
}
