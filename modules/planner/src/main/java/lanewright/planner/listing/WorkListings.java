package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.planner.work.Caution;
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
                            joined(step.amounts()),
                            joined(step.lookFor()),
                            joined(step.waitsFor()),
                            joined(step.canHurt())));
        }
        return new Listing(
                "order-of-work",
                "Order of work",
                List.of(
                        Column.of("Step", Kind.COUNT),
                        Column.words("What"),
                        Column.words("How much"),
                        Column.words("Before going on"),
                        Column.words("Waits for"),
                        Column.words("What can hurt")),
                rows,
                0);
    }

    /** Several sayings as one, a full stop between them. */
    public static Saying joined(List<Saying> sayings) {
        var pattern = new StringBuilder();
        var quantities = new ArrayList<Quantity>();
        for (Saying saying : sayings) {
            pattern.append(pattern.isEmpty() ? "" : ". ").append(saying.pattern());
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

    private static Saying height(double value) {
        return Double.isNaN(value) ? Listing.BLANK : Listing.cell(Quantity.height(value));
    }

    private static Saying offset(double value) {
        return Double.isNaN(value) ? Listing.BLANK : Listing.cell(Quantity.offset(value));
    }
}
