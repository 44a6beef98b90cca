package lanewright.survey;

import java.util.List;

/**
 * How far the survey is to be believed: inside the outer ring and outside every hole.
 *
 * @param outer the outside, local metres
 * @param holes places inside it that were not measured (a pond, a building), local metres
 */
public record Boundary(Ring outer, List<Ring> holes) {

    /** Copies the holes. */
    public Boundary {
        holes = List.copyOf(holes);
    }

    /** A boundary without holes. */
    public Boundary(Ring outer) {
        this(outer, List.of());
    }

    /** True if a place is inside the outer ring and in no hole. */
    public boolean contains(double x, double y) {
        return outer.contains(x, y) && holes.stream().noneMatch(hole -> hole.contains(x, y));
    }

    /** The same boundary moved, m. */
    public Boundary moved(double east, double north) {
        return new Boundary(
                outer.moved(east, north),
                holes.stream().map(hole -> hole.moved(east, north)).toList());
    }
}
