package lanewright.lane.section;

/**
 * What was done anew for one set of sections; what was kept from the set before is not counted.
 *
 * @param lines ground lines cut to stand or look at
 * @param glances ground lines cut in passing, where a change was closed in on
 * @param looks stations at which both sides were followed to the ground
 * @param sections sections measured
 */
public record SectionWork(int lines, int glances, int looks, int sections) {

    /** Nothing had to be done. */
    public static final SectionWork NONE = new SectionWork(0, 0, 0, 0);

    /** Both together. */
    public SectionWork and(SectionWork other) {
        return new SectionWork(
                lines + other.lines,
                glances + other.glances,
                looks + other.looks,
                sections + other.sections);
    }

    /** What came on top of {@code earlier}. */
    public SectionWork less(SectionWork earlier) {
        return new SectionWork(
                lines - earlier.lines,
                glances - earlier.glances,
                looks - earlier.looks,
                sections - earlier.sections);
    }
}
