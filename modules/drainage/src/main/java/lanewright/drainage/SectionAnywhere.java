package lanewright.drainage;

import java.util.List;
import lanewright.ground.Ground;
import lanewright.lane.section.GroundAcross;
import lanewright.lane.section.GroundLines;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionCutter;
import lanewright.lane.shape.LaneDesign;
import org.jspecify.annotations.Nullable;

/** Cuts a section where none stands, so that a pipe is as long as the lane is wide just there. */
final class SectionAnywhere {

    /** The ground is read this much farther out than the nearest section needed, m. Our choice. */
    private static final double ROOM = 20;

    private final LaneDesign design;
    private final Ground ground;
    private final List<Section> sections;
    private @Nullable GroundLines lines;

    SectionAnywhere(LaneDesign design, Ground ground, List<Section> sections) {
        this.design = design;
        this.ground = ground;
        this.sections = sections;
    }

    /** The section at a station; the nearest one where it does not meet the ground. */
    Section at(double station) {
        Section nearest = sections.get(0);
        for (Section section : sections) {
            if (Math.abs(section.station() - station) < Math.abs(nearest.station() - station)) {
                nearest = section;
            }
        }
        double reach = ROOM + Math.max(nearest.right().limit(), -nearest.left().limit());
        GroundAcross across = lines().glance(station, false, reach);
        Section section =
                new SectionCutter(design.at(station))
                        .cut(
                                station,
                                Section.Face.SINGLE,
                                design.at(station),
                                design.margin(),
                                across);
        return section.complete() ? section : nearest;
    }

    private GroundLines lines() {
        GroundLines made = lines;
        if (made == null) {
            // Topsoil changes volumes, not where the lane meets the ground.
            made = new GroundLines(design.alignment(), ground, ground.constant(0), null);
            lines = made;
        }
        return made;
    }
}
