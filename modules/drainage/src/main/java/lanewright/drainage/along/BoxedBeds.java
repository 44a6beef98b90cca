package lanewright.drainage.along;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;

/**
 * Does water get out from under boxed stone? It does where the box opens straight onto a slope that
 * goes on down below its underside, to a ditch or to lower ground. A soil shoulder shuts it in.
 */
public final class BoxedBeds {

    private BoxedBeds() {}

    /**
     * Stretches where a boxed bed reaches neither a ditch nor a lower side.
     *
     * @param typical the typical section by station
     */
    public static List<Finding> check(
            List<Section> sections, DoubleFunction<TypicalSection> typical) {
        List<Finding> findings = new ArrayList<>();
        for (Run run :
                Run.of(
                        sections.size(),
                        i -> {
                            Section section = sections.get(i);
                            TypicalSection shape = typical.apply(section.station());
                            return shape.bed() == Bed.BOXED
                                    && !shape.layers().isEmpty()
                                    && !opens(shape.left(), section.left())
                                    && !opens(shape.right(), section.right());
                        })) {
            double from = run.from(i -> sections.get(i).station());
            double to = run.to(i -> sections.get(i).station(), sections.size());
            findings.add(
                    Finding.of(
                            "bed-holds-water",
                            Level.LOOK,
                            Topic.WATER,
                            Where.stretch(from, to),
                            Saying.of(
                                    "Over {} the stone lies in a box whose underside reaches"
                                            + " neither a ditch nor lower ground: water will sit"
                                            + " in it.",
                                    Quantity.length(to - from)),
                            Saying.plain(
                                    "Cut stone-filled drains from the underside of the box through"
                                            + " the shoulder to the ditch or the low side, at every low"
                                            + " point and at intervals between, or set the stone on"
                                            + " top.")));
        }
        return findings;
    }

    private static boolean opens(SideShape shape, SideResult side) {
        if (shape.shoulder() > 0) {
            return false;
        }
        double underside = side.stoneLow().height();
        Corner ditch = side.ditchInner();
        if (ditch != null) {
            return ditch.height() < underside;
        }
        Corner ground = side.catchPoint();
        return ground != null && ground.height() < underside;
    }
}
