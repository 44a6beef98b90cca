package lanewright.drainage.runoff;

/** The flow at its height, by whatever method. */
public interface Peak {

    /** m³/s, zero or more. */
    double discharge();

    /** Depth that runs off, m. */
    double runoff();
}
