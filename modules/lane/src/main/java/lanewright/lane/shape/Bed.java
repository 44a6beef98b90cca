package lanewright.lane.shape;

/** How the stone sits on the earth. */
public enum Bed {
    /** Each layer's edges slope down and out onto what is below. */
    ON_TOP,
    /** The layers' sides are vertical and soil shoulders stand level with the finished surface. */
    BOXED
}
