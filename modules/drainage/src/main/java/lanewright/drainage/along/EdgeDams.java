package lanewright.drainage.along;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;

/**
 * Does anything along the edge keep the lane's water on it: a shoulder that stands higher than the
 * edge it should shed over, or a berm that the owner tells of?
 */
public final class EdgeDams {

    /** Heights are built to this, m. */
    private static final double BUILT = 0.01;

    private EdgeDams() {}

    /**
     * What keeps water on the lane.
     *
     * @param slopes cross slopes at the sections, as many
     * @param bars spacing of gaps, as of water bars
     * @param erosive whether the soil washes easily
     */
    public static List<Finding> check(
            List<Section> sections,
            List<CrossSlopes.CrossSlope> slopes,
            CrossSlopes.GradeAt grades,
            List<Berm> berms,
            Spacing bars,
            boolean erosive) {
        List<Finding> findings = new ArrayList<>();
        for (Side side : Side.values()) {
            for (Run run :
                    Run.of(
                            sections.size(),
                            i ->
                                    sheds(slopes.get(i), side)
                                            && above(sections.get(i), side) > BUILT)) {
                double most = 0;
                for (int i = run.first(); i <= run.last(); i++) {
                    most = Math.max(most, above(sections.get(i), side));
                }
                findings.add(
                        Finding.of(
                                "shoulder-holds-water",
                                Level.LOOK,
                                Topic.WATER,
                                Where.stretch(
                                        run.from(i -> sections.get(i).station()),
                                        run.to(i -> sections.get(i).station(), sections.size())),
                                Saying.of(
                                        "The "
                                                + side.word()
                                                + " shoulder stands {} higher than the edge of the"
                                                + " stone: the lane's water cannot get off.",
                                        Quantity.depth(most)),
                                Saying.plain(
                                        "Let the shoulder fall away from the stone, or cut gaps"
                                                + " through it at every low place.")));
            }
        }
        for (Berm berm : berms) {
            berm(berm, sections, slopes, grades, bars, erosive, findings);
        }
        return findings;
    }

    private static boolean sheds(CrossSlopes.CrossSlope slope, Side side) {
        return (side == Side.LEFT ? slope.left() : slope.right()) > 0;
    }

    private static double above(Section section, Side side) {
        SideResult at = side.of(section);
        return at.hinge().height() - at.edge().height();
    }

    private static void berm(
            Berm berm,
            List<Section> sections,
            List<CrossSlopes.CrossSlope> slopes,
            CrossSlopes.GradeAt grades,
            Spacing bars,
            boolean erosive,
            List<Finding> findings) {
        double last = sections.get(sections.size() - 1).station();
        double from = Math.max(0, berm.from());
        double to = Math.min(last, berm.to());
        if (!(to > from)) {
            findings.add(
                    Finding.of(
                            "berm-off-lane",
                            Level.NOTE,
                            Topic.WATER,
                            Where.ANYWHERE,
                            Saying.of(
                                    "The berm that the plan tells of from {} lies past the end of"
                                            + " the lane.",
                                    Quantity.station(berm.from())),
                            Saying.plain("Check its stations.")));
            return;
        }
        boolean sheds = false;
        double steepest = 0;
        for (int i = 0; i < sections.size(); i++) {
            double at = sections.get(i).station();
            if (at >= from && at <= to) {
                sheds |= sheds(slopes.get(i), berm.side());
                steepest = Math.max(steepest, Math.abs(grades.at(at)));
            }
        }
        Spacing.Row row = bars.row(steepest);
        double apart = erosive ? row.erosive() : row.lowErosion();
        findings.add(
                new Finding(
                        "berm-holds-water",
                        sheds ? Level.LOOK : Level.NOTE,
                        Topic.WATER,
                        Where.stretch(from, to),
                        Saying.of(
                                "A berm {} high stands along the "
                                        + berm.side().word()
                                        + " edge over {}"
                                        + (sheds
                                                ? ": the lane's water cannot get off there and runs"
                                                        + " down along it."
                                                : "; the lane sheds to the other side there."),
                                Quantity.depth(berm.height()),
                                Quantity.length(to - from)),
                        Quantity.length(to - from),
                        sheds ? Quantity.length(apart) : null,
                        row.source(),
                        sheds
                                ? Saying.of(
                                        "Grade it back onto the lane. Where it must stay, cut a gap"
                                                + " through it at every low place and at least every"
                                                + " {}, each onto ground that bears water.",
                                        Quantity.length(apart))
                                : Saying.plain(
                                        "Grade it back onto the lane when you next grade: it grows"
                                                + " until it holds water.")));
    }
}
