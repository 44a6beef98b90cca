package lanewright.drainage.along;

import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;

/** A side of the lane, looking up-station. */
public enum Side {
    /** Negative offsets. */
    LEFT("left"),
    /** Positive offsets. */
    RIGHT("right");

    private final String word;

    Side(String word) {
        this.word = word;
    }

    /** The side in words. */
    public String word() {
        return word;
    }

    /** This side of a section. */
    public SideResult of(Section section) {
        return this == LEFT ? section.left() : section.right();
    }

    /** The side that an offset lies on; zero counts as right. */
    public static Side at(double offset) {
        return offset < 0 ? LEFT : RIGHT;
    }

    /** The side across the lane. */
    public Side across() {
        return this == LEFT ? RIGHT : LEFT;
    }
}
