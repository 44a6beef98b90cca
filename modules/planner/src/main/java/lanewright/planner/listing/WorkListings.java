package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.planner.work.Caution;
import lanewright.planner.work.LaneMark;
import lanewright.planner.work.LoadMark;
import lanewright.planner.work.Stake;
import lanewright.planner.work.Stakes;
import lanewright.planner.work.WorkStep;

/** The order of work, its cautions and the stakes as rows. */
public final class WorkListings {

    private WorkListings() {}

    /** The steps, first to last. */
    public static Listing order(List<WorkStep> steps) {
        var rows = new ArrayList<List<Saying>>();
        for (int i = 0; i < steps.size(); i++) {
            WorkStep step = steps.get(i);
            rows.add(
                    List.of(
                            Listing.cell(Quantity.count(i + 1)),
                            Listing.cell(step.title()),
                            joined(step.amounts(), ". "),
                            joined(step.lookFor()),
                            joined(step.waitsFor()),
                            joined(step.canHurt(), ". ")));
        }
        return new Listing(
                "order-of-work",
                "Order of work",
                List.of(
                        Column.of("Step", Kind.COUNT),
                        Column.words("What"),
                        Column.words("How much"),
                        Column.words("Go on only when"),
                        Column.words("Wait for"),
                        Column.words("Danger")),
                rows,
                0);
    }

    /** Several sayings as one, a semicolon between them. */
    public static Saying joined(List<Saying> sayings) {
        return joined(sayings, "; ");
    }

    /** Several sayings as one, with something between them. */
    public static Saying joined(List<Saying> sayings, String between) {
        var pattern = new StringBuilder();
        var quantities = new ArrayList<Quantity>();
        for (Saying saying : sayings) {
            pattern.append(pattern.isEmpty() ? "" : between).append(saying.pattern());
            quantities.addAll(saying.quantities());
        }
        return new Saying(pattern.toString(), quantities);
    }

    /** The usual cautions that apply. */
    public static Listing cautions(List<Caution> cautions) {
        var rows = new ArrayList<List<Saying>>();
        for (Caution caution : cautions) {
            rows.add(List.of(caution.says(), Listing.cell(caution.source())));
        }
        return new Listing(
                "cautions",
                "Cautions",
                List.of(Column.words("What to mind"), Column.words("Source")),
                rows,
                0);
    }

    /** The offset stakes, left before right at each station. */
    public static Listing stakes(Stakes stakes) {
        var rows = new ArrayList<List<Saying>>();
        for (Stake stake : stakes.stakes()) {
            rows.add(
                    List.of(
                            Listing.cell(Quantity.station(stake.station())),
                            Listing.cell(stake.right() ? "right" : "left"),
                            Listing.cell(Quantity.offset(stake.offset())),
                            height(stake.height()),
                            Listing.cell(Quantity.offset(stake.toCatch())),
                            Listing.cell(Quantity.offset(stake.toHinge())),
                            height(stake.hingeUp()),
                            offset(stake.toDitch()),
                            height(stake.ditchUp()),
                            height(stake.centreUp()),
                            height(stake.rodHinge()),
                            height(stake.rodDitch()),
                            height(stake.rodCentre())));
        }
        return new Listing(
                "stakes",
                "Offset stakes",
                List.of(
                        Column.of("Station", Kind.STATION),
                        Column.words("Side"),
                        Column.of("Stake from line", Kind.OFFSET),
                        Column.of("Ground at stake", Kind.HEIGHT),
                        Column.of("In to catch", Kind.OFFSET),
                        Column.of("In to hinge", Kind.OFFSET),
                        Column.of("Hinge above stake", Kind.HEIGHT),
                        Column.of("In to ditch", Kind.OFFSET),
                        Column.of("Ditch above stake", Kind.HEIGHT),
                        Column.of("Line above stake", Kind.HEIGHT),
                        Column.of("Rod at hinge", Kind.HEIGHT),
                        Column.of("Rod at ditch", Kind.HEIGHT),
                        Column.of("Rod at line", Kind.HEIGHT)),
                rows,
                0);
    }

    /** The stakes on the lane, a row for its line and both edges at each station. */
    public static Listing laneStakes(Stakes stakes) {
        var rows = new ArrayList<List<Saying>>();
        List<LaneMark> marks = stakes.marks();
        for (int i = 0; i + 2 < marks.size(); i += 3) {
            LaneMark line = marks.get(i);
            LaneMark left = marks.get(i + 1);
            LaneMark right = marks.get(i + 2);
            rows.add(
                    List.of(
                            Listing.cell(Quantity.station(line.station())),
                            height(line.finished()),
                            height(line.up()),
                            Listing.cell(Quantity.offset(Math.abs(left.offset()))),
                            height(left.finished()),
                            height(left.up()),
                            Listing.cell(Quantity.offset(Math.abs(right.offset()))),
                            height(right.finished()),
                            height(right.up()),
                            height(line.rod()),
                            height(left.rod()),
                            height(right.rod())));
        }
        return new Listing(
                "lane-stakes",
                "Stakes on the lane: its line and the edges of the travelled way",
                List.of(
                        Column.of("Station", Kind.STATION),
                        Column.of("Line finished", Kind.HEIGHT),
                        Column.of("Line above ground", Kind.HEIGHT),
                        Column.of("Left edge from line", Kind.OFFSET),
                        Column.of("Left edge finished", Kind.HEIGHT),
                        Column.of("Left edge above ground", Kind.HEIGHT),
                        Column.of("Right edge from line", Kind.OFFSET),
                        Column.of("Right edge finished", Kind.HEIGHT),
                        Column.of("Right edge above ground", Kind.HEIGHT),
                        Column.of("Rod at line", Kind.HEIGHT),
                        Column.of("Rod at left edge", Kind.HEIGHT),
                        Column.of("Rod at right edge", Kind.HEIGHT)),
                rows,
                0);
    }

    /** The marks where loads start and stop, layer by layer. */
    public static Listing loadMarks(Stakes stakes) {
        var rows = new ArrayList<List<Saying>>();
        for (LoadMark mark : stakes.loads()) {
            rows.add(
                    List.of(
                            Listing.cell(mark.layer()),
                            Listing.cell(Quantity.station(mark.station())),
                            number(mark.stops()),
                            number(mark.starts()),
                            Listing.cell(Quantity.offset(mark.offset()))));
        }
        return new Listing(
                "load-marks",
                "Load marks",
                List.of(
                        Column.words("Layer"),
                        Column.of("Station", Kind.STATION),
                        Column.of("Load that stops here", Kind.COUNT),
                        Column.of("Load that starts here", Kind.COUNT),
                        Column.of("Mark right of line", Kind.OFFSET)),
                rows,
                0);
    }

    private static Saying number(int load) {
        return load == 0 ? Listing.BLANK : Listing.cell(Quantity.count(load));
    }

    private static Saying height(double value) {
        return Double.isNaN(value) ? Listing.BLANK : Listing.cell(Quantity.height(value));
    }

    private static Saying offset(double value) {
        return Double.isNaN(value) ? Listing.BLANK : Listing.cell(Quantity.offset(value));
    }
}
