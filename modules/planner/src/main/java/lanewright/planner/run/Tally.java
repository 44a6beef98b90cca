package lanewright.planner.run;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.section.SectionWork;

/** Writes down what is computed anew. May be read on another thread. */
final class Tally {

    private final List<String> stages = new ArrayList<>();
    private SectionWork sections = SectionWork.NONE;

    synchronized void begin() {
        stages.clear();
        sections = SectionWork.NONE;
    }

    synchronized void runs(String stage) {
        stages.add(stage);
    }

    synchronized void sections(SectionWork work) {
        sections = work;
    }

    synchronized Work work() {
        return new Work(stages, sections);
    }
}
