package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionLine;
import lanewright.lane.section.SideResult;

/** Lowest and highest height that the drawing must show, and its outermost offsets, m. */
record Extent(double left, double right, double low, double high) {

    /**
     * What a section takes.
     *
     * @param beside ground shown beyond the limits of work, m
     * @param at what else is there
     */
    static Extent of(Section section, double beside, AtSection at) {
        double left = outer(section.left()) - beside;
        double right = outer(section.right()) + beside;
        for (PipeUnder pipe : at.pipes()) {
            left = Math.min(left, Math.min(pipe.inlet().offset(), pipe.outlet().offset()));
            right = Math.max(right, Math.max(pipe.inlet().offset(), pipe.outlet().offset()));
        }
        SectionLine ground = section.ground();
        if (ground.size() > 1) {
            // Where the ground is known no farther, nothing is left empty beside it.
            left = Math.max(left, Math.min(ground.offset(0), section.left().hinge().offset()));
            right =
                    Math.min(
                            right,
                            Math.max(
                                    ground.offset(ground.size() - 1),
                                    section.right().hinge().offset()));
        }
        var heights = new ArrayList<Double>();
        for (SectionLine line :
                List.of(ground, section.stripped(), section.subgrade(), section.finished())) {
            gather(heights, line, left, right);
        }
        SectionLine bearing = section.bearing();
        if (bearing != null && section.areas().undercut().area() > 0) {
            gather(
                    heights,
                    bearing,
                    section.left().hinge().offset(),
                    section.right().hinge().offset());
        }
        heights.add(section.profileHeight());
        at.pipes().forEach(pipe -> heights.add(pipe.low()));
        SectionLine ditch = at.ditch();
        if (ditch != null) {
            gather(heights, ditch, left, right);
        }
        double low = heights.stream().mapToDouble(Double::doubleValue).min().orElse(0);
        double high = heights.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        return new Extent(left, right, low, high);
    }

    private static void gather(List<Double> heights, SectionLine line, double left, double right) {
        for (int i = 0; i < line.size(); i++) {
            if (line.offset(i) >= left && line.offset(i) <= right) {
                heights.add(line.height(i));
            }
        }
        for (double offset : new double[] {left, right}) {
            double height = line.at(offset);
            if (Double.isFinite(height)) {
                heights.add(height);
            }
        }
    }

    double width() {
        return right - left;
    }

    double tall() {
        return high - low;
    }

    private static double outer(SideResult side) {
        Corner end = side.catchPoint();
        if (end == null) {
            end = side.ditchOuter() == null ? side.hinge() : side.ditchOuter();
        }
        double limit = side.limit();
        return Math.abs(limit) > Math.abs(end.offset()) && side.catchPoint() != null
                ? limit
                : end.offset();
    }
}
