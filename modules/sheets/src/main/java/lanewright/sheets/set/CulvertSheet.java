package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.List;
import lanewright.earthwork.Soil;
import lanewright.measure.Listing;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.PipeWorkPart;
import lanewright.planner.listing.PipeListings;
import lanewright.planner.pipes.PipeJob;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.figure.HeadwaterDrawing;
import lanewright.sheets.figure.PipeDrawing;
import lanewright.sheets.figure.TrenchDrawing;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;
import lanewright.sheets.page.Type;

/** Each pipe under the lane as it is bought, dug in and built. */
final class CulvertSheet {

    /** Height of a trench drawn across, pt. */
    private static final double ACROSS = 214;

    /** Height of the drawing of water over what comes, pt. */
    private static final double STANDS = 190;

    private CulvertSheet() {}

    /**
     * The sheet.
     *
     * @param jobs one at least
     * @param work how pipes are dug in
     * @param soil how earth grows when dug and shrinks when packed
     */
    static Sheet of(
            List<PipeJob> jobs, PipeWorkPart work, Soil soil, String currency, UnitSystem units) {
        var flow =
                new Flow(
                        Paper.of(units).lying(),
                        units,
                        "Culverts",
                        "How is each pipe bought, dug in and built?",
                        answer(jobs, units));
        flow.table(
                PipeListings.schedule(jobs),
                "Order: from foot to foot of the slopes with what sticks out, or from wall to wall,"
                        + " up to a length that is sold. Inlet, outlet: the invert at the foot of"
                        + " each slope; the stakes sheet has each end. Cover: over the top of the"
                        + " pipe at the lowest wheel track, and what it needs there.");
        for (PipeJob job : drawn(jobs)) {
            draw(flow, job, work, units);
        }
        long reliefs = reliefs(jobs);
        if (reliefs > 1) {
            flow.note(
                    "Of "
                            + reliefs
                            + " relief culverts the longest is drawn: the others lie alike, as the"
                            + " schedule has them.");
        }
        boolean later = jobs.stream().anyMatch(job -> !job.first().isNothing());
        flow.table(
                PipeListings.work(jobs),
                money(jobs, currency)
                        + (later
                                ? " A pipe that is offered once the lane is higher or the ground"
                                        + " deeper is told as it lies then; what the raising and"
                                        + " the digging take is not in it."
                                : ""));
        flow.table(PipeListings.others(jobs));
        flow.table(PipeListings.lengths(jobs));
        flow.table(
                PipeListings.covers(jobs),
                "On the subgrade, before the stone is on, the load is that of the heaviest axle"
                        + " that the plan names.");
        Listing earth = PipeListings.earth(jobs, soil);
        if (!earth.rows().isEmpty()) {
            boolean dug = jobs.stream().anyMatch(job -> job.planned() && job.trench().isDug());
            flow.table(
                    earth,
                    dug
                            ? "Dug below the lane's own cut and put back below its own fill, so in"
                                    + " neither. Upright walls; sloped ones dig more."
                            : "The lane's fill is told without this: it takes so much less.");
        }
        flow.note(
                "Before a pipe goes into a stream or a wetland ask for the permit, and ask your"
                        + " county. Send no more water to a neighbour, and none faster, without"
                        + " speaking with them. A lane that holds water back is a dam: ask whether"
                        + " your state's rules for dams reach it. Nobody stands in a trench that"
                        + " may cave.");
        return flow.sheet();
    }

    private static long reliefs(List<PipeJob> jobs) {
        return jobs.stream().filter(job -> job.need() == PipeJob.Need.RELIEF).count();
    }

    /** Every pipe but the relief culverts, and the longest of those. */
    private static List<PipeJob> drawn(List<PipeJob> jobs) {
        PipeJob longest = null;
        List<PipeJob> drawn = new ArrayList<>();
        for (PipeJob job : jobs) {
            if (job.need() != PipeJob.Need.RELIEF) {
                drawn.add(job);
            } else if (longest == null || job.line().length() > longest.line().length()) {
                longest = job;
            }
        }
        if (longest != null) {
            drawn.add(longest);
        }
        return drawn;
    }

    private static String answer(List<PipeJob> jobs, UnitSystem units) {
        PipeJob first =
                jobs.stream()
                        .filter(job -> job.first().isNothing())
                        .findFirst()
                        .orElse(jobs.get(0));
        long planned = jobs.stream().filter(PipeJob::planned).count();
        String what =
                planned == 0
                        ? "None is in the plan yet; offered is "
                        : planned == 1
                                ? "One is in the plan: "
                                : planned + " are in the plan; first, ";
        return what
                + (first.laid().count() == 1 ? "" : first.laid().count() + " of ")
                + Quantity.length(first.length().ordered()).in(units)
                + " of "
                + first.laid().each().in(units)
                + " at "
                + Quantity.station(first.line().crossing()).in(units)
                + (first.planned() ? "" : once(first, units))
                + ".";
    }

    private static String once(PipeJob job, UnitSystem units) {
        return job.first().isNothing() ? "" : ", once " + job.first().words().in(units);
    }

    private static String money(List<PipeJob> jobs, String currency) {
        boolean priced = jobs.stream().anyMatch(PipeJob::hasPrice);
        return priced
                ? "Money in "
                        + (currency.isBlank() ? "your currency" : currency)
                        + ", at the prices of your plan and no other."
                : "No cost is shown, since the plan holds no price for pipes.";
    }

    private static void draw(Flow flow, PipeJob job, PipeWorkPart work, UnitSystem units) {
        var along = new PipeDrawing(job, work.bedding(), units);
        double stretch = along.stretch(flow.width());
        String at = " at " + Quantity.station(job.line().crossing()).in(units);
        String title =
                (job.planned() ? "" : "Offered: ")
                        + job.name()
                        + (job.name().endsWith(at) ? "" : "," + at)
                        + once(job, units);
        String says =
                "Cut along the barrel, seen from the side "
                        + (job.line().isSlanted() ? "of a slanted pipe" : "of the higher stations")
                        + ", water from the left. "
                        + (stretch > 1
                                ? "Heights are drawn "
                                        + (int) stretch
                                        + " times larger than lengths."
                                : "True to scale: heights and lengths 1 : 1.");
        double tall = along.height(flow.width());
        flow.head(title, "", tall + 30);
        flow.drawn(Gauge.of(Gauge.Use.STRETCH, says, stretch)).gap(3);
        flow.figure(tall, along::draw);
        var stands = new HeadwaterDrawing(job, units);
        if (stands.isThere()) {
            flow.gap(6);
            flow.need(STANDS + 30);
            flow.figure(
                    STANDS,
                    (pen, box) -> {
                        pen.bold(
                                Role.TEXT,
                                "How deep water stands before it, over how much comes",
                                box.x(),
                                box.y() + Type.NOTE,
                                Type.NOTE,
                                Anchor.START);
                        stands.draw(
                                pen,
                                new Box(box.x(), box.y() + 13, box.width(), box.height() - 13));
                    });
        }
        var across = new TrenchDrawing(job, work.bedding(), work.sideRoom(), units);
        if (!across.isThere()) {
            return;
        }
        flow.gap(6);
        flow.need(ACROSS + 30);
        flow.figure(
                ACROSS,
                (pen, box) -> {
                    double wide = Math.min(380, box.width() * 0.54);
                    pen.bold(
                            Role.TEXT,
                            "The same cut square across under the middle of the lane, true to scale",
                            box.x(),
                            box.y() + Type.NOTE,
                            Type.NOTE,
                            Anchor.START);
                    across.draw(pen, new Box(box.x(), box.y() + 13, wide, box.height() - 13));
                    steps(pen, box.x() + wide + 14, box.y() + 13, box.right());
                });
    }

    /** How it is built, beside the trench. */
    private static void steps(Pen pen, double left, double top, double right) {
        double y = top + Type.BODY;
        pen.bold(Role.TEXT, "How it goes in", left, y, Type.BODY, Anchor.START);
        for (int i = 0; i < STEPS.size(); i++) {
            y += Type.NOTE * 0.7;
            for (String line :
                    Type.lines((i + 1) + ". " + STEPS.get(i), Type.NOTE, false, right - left)) {
                y += Type.NOTE * Type.LEAD;
                pen.words(Role.TEXT, line, left, y, Type.NOTE, Anchor.START);
            }
        }
    }

    private static final List<String> STEPS =
            List.of(
                    "Dry weather, buried lines marked, outlet free: dig from the low end up.",
                    "Firm bottom, stone bed to grade; dig a dent for each bell or band.",
                    "Lay from the outlet up, bells uphill, joints tight.",
                    "Fill and tamp in thin lifts on both sides at once, first under the haunches;"
                            + " no stones against the pipe, no machine over it yet.",
                    "No loaded truck crosses before the cover that is needed is on.",
                    "Fabric and riprap at the outlet before the first rain; seed the slopes.");
}
