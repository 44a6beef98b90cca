package lanewright.desktop.session;

/**
 * A row of what the card of water tells, place by place.
 *
 * @param group which rows
 * @param number of the row in its group, from 0
 */
public record WaterRow(Group group, int number) {

    /** Rows of one kind. */
    public enum Group {
        /** Where water stands with the lane built. */
        HOLLOWS("hollow-nests"),
        /** Water down the lane and across it. */
        DOWN_AND_ACROSS("down-and-across"),
        /** Where to lead water off. */
        RELIEFS("reliefs"),
        /** Where the ditches end. */
        DITCH_ENDS("ditch-ends"),
        /** What crosses the boundary, before and after. */
        BOUNDARY("boundary-water"),
        /** Where most of it crosses. */
        WAYS_OUT("boundary-ways-out");

        private final String id;

        Group(String id) {
            this.id = id;
        }

        /** Short and stable. */
        public String id() {
            return id;
        }
    }
}
