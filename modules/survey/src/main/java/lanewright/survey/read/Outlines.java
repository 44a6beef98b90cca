package lanewright.survey.read;

import lanewright.survey.Boundary;
import lanewright.survey.Ring;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** Whether an outline can be the edge of a piece of land. */
final class Outlines {

    private static final GeometryFactory SHAPES = new GeometryFactory();

    private Outlines() {}

    /** What is wrong with an outline, to end a sentence that begins with its name; else empty. */
    static String trouble(Boundary boundary) {
        LinearRing[] holes =
                boundary.holes().stream().map(Outlines::shape).toArray(LinearRing[]::new);
        var valid = new IsValidOp(SHAPES.createPolygon(shape(boundary.outer()), holes));
        TopologyValidationError error = valid.getValidationError();
        if (error == null) {
            return "";
        }
        return switch (error.getErrorType()) {
            case TopologyValidationError.SELF_INTERSECTION,
                    TopologyValidationError.RING_SELF_INTERSECTION ->
                    "crosses or touches itself";
            case TopologyValidationError.HOLE_OUTSIDE_SHELL -> "has a hole outside its outer ring";
            case TopologyValidationError.NESTED_HOLES -> "has a hole inside a hole";
            case TopologyValidationError.TOO_FEW_POINTS -> "has a ring without an inside";
            default -> "does not enclose one piece of land";
        };
    }

    private static LinearRing shape(Ring ring) {
        Coordinate[] corners = new Coordinate[ring.size() + 1];
        for (int k = 0; k < ring.size(); k++) {
            corners[k] = new Coordinate(ring.x(k), ring.y(k));
        }
        corners[ring.size()] = corners[0].copy();
        return SHAPES.createLinearRing(corners);
    }
}
