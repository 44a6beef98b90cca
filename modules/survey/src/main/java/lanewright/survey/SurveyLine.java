package lanewright.survey;

import java.util.Arrays;

/**
 * A measured line through points of the survey: the ground is a straight edge between each two
 * points that follow each other.
 */
public final class SurveyLine {

    /** What a line says about the ground. */
    public enum Kind {
        /** The ground changes its slope here: an edge, a ditch bottom, a bank. */
        BREAKLINE,
        /** All points of the line are at one height. */
        CONTOUR
    }

    private final Kind kind;
    private final String code;
    private final int[] points;

    /**
     * A line through points of a survey.
     *
     * @param kind what it says
     * @param code the code that made it, or a name; may be empty
     * @param points numbers of its points in the survey, in order, two or more, no two neighbours
     *     the same; a closed line ends with the number that it begins with
     */
    public SurveyLine(Kind kind, String code, int... points) {
        if (points.length < 2) {
            throw new IllegalArgumentException("a line needs two points, had " + points.length);
        }
        for (int k = 1; k < points.length; k++) {
            if (points[k] == points[k - 1]) {
                throw new IllegalArgumentException(
                        "line goes from point " + points[k] + " to itself");
            }
        }
        this.kind = kind;
        this.code = code;
        this.points = points.clone();
    }

    /** What the line says about the ground. */
    public Kind kind() {
        return kind;
    }

    /** The code that made it, or a name; may be empty. */
    public String code() {
        return code;
    }

    /** How many points the line runs through; a closed line counts its first point twice. */
    public int size() {
        return points.length;
    }

    /** Number in the survey of the {@code k}-th point, from 0. */
    public int point(int k) {
        return points[k];
    }

    /** Numbers of all its points, a copy. */
    public int[] points() {
        return points.clone();
    }

    /** True if the line ends where it begins. */
    public boolean closed() {
        return points[0] == points[points.length - 1];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SurveyLine line
                && kind == line.kind
                && code.equals(line.code)
                && Arrays.equals(points, line.points);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * kind.hashCode() + code.hashCode()) + Arrays.hashCode(points);
    }

    @Override
    public String toString() {
        return kind + " " + code + " " + Arrays.toString(points);
    }
}
