package lanewright.lane.section;

import java.util.List;
import lanewright.lane.shape.LaneDesign;
import lanewright.measure.Finding;

/**
 * The sections of a lane.
 *
 * @param design the lane
 * @param sections in station order; where the section jumps, two at one station, first what holds
 *     just before it and then what holds just after. Between those two there is no volume
 * @param findings what is wrong or worth a look
 */
public record SectionSet(LaneDesign design, List<Section> sections, List<Finding> findings) {
    /** Copies the lists and checks the order. */
    public SectionSet {
        sections = List.copyOf(sections);
        findings = List.copyOf(findings);
        for (int i = 1; i < sections.size(); i++) {
            if (sections.get(i).station() < sections.get(i - 1).station()) {
                throw new IllegalArgumentException(
                        "sections are out of order at " + sections.get(i).station());
            }
        }
    }

    /** True if every side of every section meets the ground. */
    public boolean isComplete() {
        return sections.stream().allMatch(Section::complete);
    }

    /**
     * The section nearest to a station; of two at one station, the later.
     *
     * @throws IllegalArgumentException if there are no sections
     */
    public Section nearest(double station) {
        if (sections.isEmpty()) {
            throw new IllegalArgumentException("there are no sections");
        }
        Section best = sections.get(0);
        for (Section section : sections) {
            if (Math.abs(section.station() - station) <= Math.abs(best.station() - station)) {
                best = section;
            }
        }
        return best;
    }
}
