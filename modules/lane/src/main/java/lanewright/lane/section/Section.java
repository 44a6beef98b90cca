package lanewright.lane.section;

import org.jspecify.annotations.Nullable;

/**
 * A cross-section of ground and lane at one station, looking up-station. A pure function of the
 * ground line, the profile height and the typical section at its station.
 *
 * @param station m along the alignment
 * @param face which side of a jump it stands on
 * @param profileHeight finished height at the alignment, m
 * @param ground the ground as it is, as far as it is known and needed
 * @param stripped ground less topsoil, between the limits of work; equal to the ground where
 *     nothing is stripped
 * @param subgrade the earth as shaped, catch point to catch point
 * @param finished the finished surface, catch point to catch point
 * @param bearing the line of soil that bears, or null where none is known
 * @param left the left side
 * @param right the right side
 * @param areas the areas
 * @param complete false if a side has no catch point; then no volume is made up on that side
 */
public record Section(
        double station,
        Face face,
        double profileHeight,
        SectionLine ground,
        SectionLine stripped,
        SectionLine subgrade,
        SectionLine finished,
        @Nullable SectionLine bearing,
        SideResult left,
        SideResult right,
        Areas areas,
        boolean complete) {

    /** Which side of a jump a section stands on. */
    public enum Face {
        /** There is one section at this station. */
        SINGLE,
        /** What holds just before the station. */
        BEFORE,
        /** What holds just after the station. */
        AFTER
    }

    /** The same section on another face. */
    Section facing(Face other) {
        return new Section(
                station,
                other,
                profileHeight,
                ground,
                stripped,
                subgrade,
                finished,
                bearing,
                left,
                right,
                areas,
                complete);
    }
}
