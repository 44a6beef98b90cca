package lanewright.planner.run;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.planner.pipes.PipeCover;
import lanewright.planner.pipes.PipeJob;
import lanewright.planner.pipes.PipeWay;

/** What deserves a look where a pipe is dug in. */
final class PipeFindings {

    /** Deeper than this a trench is shored or sloped, m: five feet. */
    static final double SHORED = 5 * 0.3048;

    /** From this depth on there is a way out of it, m: four feet. */
    static final double WAY_OUT = 4 * 0.3048;

    private static final String TRENCHES = "29 CFR 1926.651 and 652";

    /** A wall that stands no farther off than this stands where the plan has the end, m: a foot. */
    private static final double MOVED = 0.3048;

    private PipeFindings() {}

    static List<Finding> of(List<PipeJob> jobs) {
        List<Finding> findings = new ArrayList<>();
        for (PipeJob job : jobs) {
            finished(job, findings);
            building(job, findings);
            ends(job, findings);
            nearer(job, findings);
            trench(job, findings);
        }
        return findings;
    }

    private static Where where(PipeJob job) {
        return Where.station(job.line().crossing());
    }

    private static String called(PipeJob job) {
        return job.planned() ? "the pipe of your plan" : "the pipe that is offered";
    }

    private static void finished(PipeJob job, List<Finding> findings) {
        PipeCover cover = job.finished();
        if (!job.planned() || !job.fits() || !cover.isThin()) {
            return;
        }
        if (Double.isNaN(cover.needed())) {
            findings.add(
                    Finding.of(
                            "pipe-cover-not-published",
                            Level.LOOK,
                            Topic.WATER,
                            where(job),
                            Saying.of(
                                    "At {} "
                                            + called(job)
                                            + " is {} wide, and no least cover is"
                                            + " published for that.",
                                    Quantity.station(job.line().crossing()),
                                    Quantity.depth(job.laid().span())),
                            Saying.plain("Ask its maker, or take a smaller pipe.")));
            return;
        }
        findings.add(
                new Finding(
                        "pipe-cover-thin",
                        Level.LOOK,
                        Topic.WATER,
                        where(job),
                        Saying.of(
                                "At {} the finished lane has {} over "
                                        + called(job)
                                        + ", and traffic asks for {}.",
                                Quantity.station(job.line().crossing()),
                                Quantity.depth(cover.least()),
                                Quantity.depth(cover.needed())),
                        Quantity.depth(cover.least()),
                        Quantity.depth(cover.needed()),
                        cover.source(),
                        Saying.of(
                                "Raise the lane there by {}, lay the pipe lower, or take a smaller"
                                        + " one or a pipe-arch.",
                                Quantity.depth(cover.lacking()))));
    }

    private static void building(PipeJob job, List<Finding> findings) {
        PipeCover cover = job.building();
        // The schedule says it of every pipe; here it is said of those that can be laid as drawn.
        if (!job.fits()
                || job.need() == PipeJob.Need.RELIEF
                || !job.first().isNothing()
                || !cover.isThin()
                || Double.isNaN(cover.needed())) {
            return;
        }
        findings.add(
                new Finding(
                        "pipe-cover-building",
                        job.planned() ? Level.LOOK : Level.NOTE,
                        Topic.ORDER,
                        where(job),
                        Saying.of(
                                "While the lane is built only {} lie over "
                                        + called(job)
                                        + " at {}; under a loaded truck it needs {}.",
                                Quantity.depth(Math.max(0, cover.least())),
                                Quantity.station(job.line().crossing()),
                                Quantity.depth(cover.needed())),
                        Quantity.depth(Math.max(0, cover.least())),
                        Quantity.depth(cover.needed()),
                        cover.source(),
                        remedy(job)));
    }

    /** Stone first if that is enough, else a mound for as long as trucks cross. */
    private static Saying remedy(PipeJob job) {
        double lacking = job.building().lacking();
        double stone = job.finished().least() - job.building().least();
        return stone >= lacking
                ? Saying.of(
                        "Bring the stone over the pipe first, spread from its near side, before"
                                + " any loaded truck crosses; or mound {} of packed earth over it"
                                + " as long as trucks cross.",
                        Quantity.depth(lacking))
                : Saying.of(
                        "Mound {} of packed earth over it, ramped to both sides, as long as trucks"
                                + " cross, and take it off again: the lane's own stone alone does"
                                + " not make it up. Or let no loaded truck cross.",
                        Quantity.depth(lacking));
    }

    /** A mouth that lies in the slope and not at its foot. */
    private static void ends(PipeJob job, List<Finding> findings) {
        if (!job.planned() || !job.fits()) {
            return;
        }
        double in = over(job, 0);
        double out = over(job, job.way().plan());
        boolean inlet = in >= out;
        double most = Math.max(in, out);
        // An end that is covered whole is told of where the water is followed.
        // A headwall holds the slope back.
        if (job.wall() == 0 && most > job.laid().rise() / 4 && most <= job.laid().rise()) {
            findings.add(
                    new Finding(
                            "pipe-end-in-slope",
                            Level.LOOK,
                            Topic.WATER,
                            where(job),
                            Saying.of(
                                    "The "
                                            + (inlet ? "inlet" : "outlet")
                                            + " of "
                                            + called(job)
                                            + " at {} lies inside the slope: the finished ground"
                                            + " stands {} over its bottom there.",
                                    Quantity.station(job.line().crossing()),
                                    Quantity.depth(most)),
                            Quantity.depth(most),
                            null,
                            "",
                            Saying.plain(
                                    "Lay that end farther out, to where the slope comes down to the"
                                            + " bottom of the pipe, or build a headwall.")));
        }
    }

    /** Headwalls that stand elsewhere than the plan has the ends of the pipe. */
    private static void nearer(PipeJob job, List<Finding> findings) {
        double in = -job.length().atInlet();
        double out = -job.length().atOutlet();
        if (!job.planned() || !job.fits() || Math.max(in, out) < MOVED) {
            return;
        }
        findings.add(
                Finding.of(
                        "headwall-nearer",
                        Level.NOTE,
                        Topic.WATER,
                        where(job),
                        Saying.of(
                                "The headwalls of the pipe at {}, {} high over its bottom, stand"
                                        + " where the slopes come down to their tops: {} nearer to"
                                        + " the lane than the inlet in your plan, and {} nearer"
                                        + " than its outlet. The pipe is ordered so.",
                                Quantity.station(job.line().crossing()),
                                Quantity.length(job.wall()),
                                Quantity.length(in),
                                Quantity.length(out)),
                        Saying.plain(
                                "Dig the slope away before each wall down to the bottom of the"
                                        + " pipe. Stakes are set for the ends in your plan: move"
                                        + " those ends there if you want stakes at the walls.")));
    }

    private static double over(PipeJob job, double along) {
        double nearest = Double.POSITIVE_INFINITY;
        double over = 0;
        for (PipeWay.Stand stand : job.way().stands()) {
            double apart = Math.abs(stand.along() - along);
            if (apart < nearest) {
                nearest = apart;
                over = stand.finished() - job.way().invert(stand.along());
            }
        }
        return over;
    }

    private static void trench(PipeJob job, List<Finding> findings) {
        double deep = job.trench().deepest();
        if (!job.planned() || !job.fits() || deep < WAY_OUT) {
            return;
        }
        boolean shored = deep >= SHORED;
        findings.add(
                new Finding(
                        "pipe-trench-deep",
                        Level.LOOK,
                        Topic.ORDER,
                        where(job),
                        Saying.of(
                                "The trench of " + called(job) + " at {} is up to {} deep.",
                                Quantity.station(job.line().crossing()),
                                Quantity.length(deep)),
                        Quantity.length(deep),
                        Quantity.length(shored ? SHORED : WAY_OUT),
                        TRENCHES,
                        shored
                                ? Saying.of(
                                        "Nobody stands in it without a box, shores or sloped sides;"
                                                + " it takes a person who knows the soil to choose"
                                                + " them. Sloped sides dig far more than is counted"
                                                + " here. A way out within {~}, what was dug {~}"
                                                + " back from the edge.",
                                        Quantity.length(25 * 0.3048),
                                        Quantity.length(2 * 0.3048))
                                : Saying.of(
                                        "A ladder or ramp within {~} of whoever stands in it; a"
                                                + " box or sloped sides too where the soil may"
                                                + " cave.",
                                        Quantity.length(25 * 0.3048))));
    }
}
