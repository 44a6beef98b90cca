package lanewright.planner.run;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.volume.Running;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Row;
import lanewright.measure.Saying;
import lanewright.measure.Tables;
import lanewright.measure.Where;
import lanewright.planner.document.Plan;
import lanewright.planner.document.ShapePart;

/**
 * Stone that is thinner in all than a published guide has it for loaded trucks, from the table
 * {@code stone-depth}. How strong the soil is nobody measured: where it is told to be too soft it
 * is taken as weak, elsewhere as middling.
 */
final class StoneDepth {

    /** What a depth in other units may be less by rounding, m. */
    private static final double ROUNDING = 0.001;

    private static final double INCH = 0.0254;
    private static final String FEW = "at most 5 a day";

    /** While a lane is built more than five loads come in a day. Common practice, no source. */
    private static final String MORE = "5 to 10 a day";

    private final List<Finding> found = new ArrayList<>();
    private final double length;
    private final Running undercut;

    private StoneDepth(double length, Running undercut) {
        this.length = length;
        this.undercut = undercut;
    }

    /**
     * What is thin.
     *
     * @param plan which says how thick the layers are
     * @param length of the lane, m
     * @param undercut soil under the lane that is too soft
     */
    static List<Finding> of(Plan plan, double length, Running undercut) {
        var depth = new StoneDepth(length, undercut);
        for (ShapePart.Along along : plan.along()) {
            double stone = 0;
            for (ShapePart.Layer layer : plan.shape(along.shape()).layers()) {
                stone += layer.thickness();
            }
            if (stone > 0) {
                depth.look(along, stone);
            }
        }
        return depth.found;
    }

    private void look(ShapePart.Along along, double stone) {
        double to = Math.min(along.to(), length);
        Row few = row("middling", FEW);
        if (along.from() >= to) {
            return;
        }
        if (thin(stone, few)) {
            found.add(
                    finding(
                            "stone-thin",
                            along.from(),
                            to,
                            stone,
                            few,
                            Saying.of(
                                    "From {} to {} the stone is {} deep in all. A guide for gravel"
                                            + " roads has {} for at most 5 loaded trucks a day on"
                                            + " soil of middling strength, and {} on weak soil.",
                                    Quantity.station(along.from()),
                                    Quantity.station(to),
                                    Quantity.depth(stone),
                                    depth(few),
                                    depth(row("weak", FEW)))));
        }
        Row more = row("weak", MORE);
        if (!thin(stone, more)) {
            return;
        }
        int first = -1;
        for (int i = 0; i <= undercut.size(); i++) {
            boolean soft = i < undercut.size() && undercut.area(i) > 0;
            if (soft && first < 0) {
                first = i;
            } else if (!soft && first >= 0) {
                double a = Math.max(along.from(), undercut.station(Math.max(0, first - 1)));
                double b = Math.min(to, undercut.station(Math.min(undercut.size() - 1, i)));
                if (a < b) {
                    found.add(soft(a, b, stone, more));
                }
                first = -1;
            }
        }
    }

    private static Finding soft(double from, double to, double stone, Row more) {
        return finding(
                "stone-thin-on-soft",
                from,
                to,
                stone,
                more,
                Saying.of(
                        "From {} to {} the soil is told to be too soft, and the stone over it is {}"
                                + " deep in all. A guide for gravel roads has {} on weak soil for 5"
                                + " to 10 loaded trucks a day, as come while a lane is built, and {}"
                                + " for fewer.",
                        Quantity.station(from),
                        Quantity.station(to),
                        Quantity.depth(stone),
                        depth(more),
                        depth(row("weak", FEW))));
    }

    private static Finding finding(
            String code, double from, double to, double stone, Row guide, Saying says) {
        return new Finding(
                code,
                Level.LOOK,
                Topic.STONE,
                Where.stretch(from, to),
                says,
                Quantity.depth(stone),
                depth(guide),
                guide.citation(),
                Saying.plain(
                        "Make a layer thicker, or dig out to firm soil, pack the refill and let a"
                                + " loaded truck drive over it before stone is laid. What is known"
                                + " of the soil where you are goes before this guide."));
    }

    private static boolean thin(double stone, Row guide) {
        return stone < depth(guide).value() - ROUNDING;
    }

    private static Quantity depth(Row guide) {
        return Quantity.depth(guide.number("depth_in") * INCH);
    }

    private static Row row(String soil, String trucks) {
        for (Row row : Tables.read("stone-depth").rows()) {
            if (row.text("soil").equals(soil) && row.text("loaded_trucks").equals(trucks)) {
                return row;
            }
        }
        throw new IllegalStateException("no depth of stone on " + soil + " soil for " + trucks);
    }
}
