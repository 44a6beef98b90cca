package lanewright.planner.run;

import java.util.List;
import lanewright.lane.section.SectionWork;

/**
 * What was computed anew after an edit; what was kept is not in it.
 *
 * @param stages the stages that ran, by what they make, in the order in which they began
 * @param sections what was done inside the stages that cut sections
 */
public record Work(List<String> stages, SectionWork sections) {

    /** Copies the list. */
    public Work {
        stages = List.copyOf(stages);
    }
}
