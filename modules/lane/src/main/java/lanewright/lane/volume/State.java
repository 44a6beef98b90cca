package lanewright.lane.volume;

/** What state a volume is measured in. */
public enum State {
    /** As it lies in the ground, undisturbed. */
    BANK,
    /** In place as built: fill and stone compacted, topsoil spread. */
    COMPACTED,
    /** Dug up, heaped or on a truck. */
    LOOSE
}
