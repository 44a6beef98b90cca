package lanewright.measure;

/**
 * Something that the answers rest on and that was not measured.
 *
 * @param name what is assumed, in a few words
 * @param value the value used
 * @param mark where it comes from
 * @param source the publication with edition and section, or the field of the plan
 */
public record Assumption(String name, Saying value, Mark mark, String source) {

    /** Where an assumption comes from. */
    public enum Mark {
        /** A published standard, handbook or table. */
        PUBLISHED,
        /** Common practice in the trade, no source. */
        COMMON_PRACTICE,
        /** The owner's own plan says so. */
        YOURS,
        /** A rule of this program, given with its reason. */
        RULE
    }
}
