package lanewright.drainage;

import java.util.List;
import java.util.function.DoubleFunction;
import lanewright.drainage.along.CrossSlopes.GradeAt;
import lanewright.drainage.along.LaneLine;
import lanewright.lane.section.Section;
import lanewright.lane.shape.TypicalSection;

/**
 * What water needs to know of the lane.
 *
 * @param line where it runs
 * @param sections in station order
 * @param grades grade by station, rise over run
 * @param lows stations of the profile's low points, its ends left out, m
 * @param typical typical section by station
 * @param sectionAt the section at any station
 */
record Lane(
        LaneLine line,
        List<Section> sections,
        GradeAt grades,
        List<Double> lows,
        DoubleFunction<TypicalSection> typical,
        DoubleFunction<Section> sectionAt) {
    Lane {
        sections = List.copyOf(sections);
        lows = List.copyOf(lows);
    }
}
