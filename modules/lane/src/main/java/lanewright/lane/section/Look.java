package lanewright.lane.section;

/**
 * What kinds of side a station has, and where they catch.
 *
 * @param left kind of the left side
 * @param right kind of the right side
 * @param leftCatch how far out the left side ends, m
 * @param rightCatch how far out the right side ends, m
 */
record Look(SideResult.Kind left, SideResult.Kind right, double leftCatch, double rightCatch) {

    /** What a cutter followed last. */
    static Look of(SectionCutter cutter) {
        return new Look(
                cutter.left().kind(),
                cutter.right().kind(),
                cutter.left().catchOut(),
                cutter.right().catchOut());
    }

    boolean sameKinds(Look other) {
        return left == other.left && right == other.right;
    }

    /** How far the catch points of two looks lie apart, m. */
    double parted(Look other) {
        return Math.max(
                Math.abs(leftCatch - other.leftCatch), Math.abs(rightCatch - other.rightCatch));
    }
}
