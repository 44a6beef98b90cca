package lanewright.survey.read;

/** What a survey file holds. */
public enum Holds {
    /** Measured points with heights, in delimited text or GeoJSON. */
    POINTS,
    /** Lines along which the ground bends, in GeoJSON with heights. */
    BREAKLINES,
    /** Lines of one height each, in GeoJSON. */
    CONTOURS,
    /** The outline of what was measured, a polygon in GeoJSON. */
    BOUNDARY,
    /** Points, breaklines, contours and boundary together, told apart by a property, in GeoJSON. */
    MIXED,
    /** Probe holes, in delimited text. */
    PROBES,
    /** An elevation grid, GeoTIFF or ASCII grid. */
    GRID
}
