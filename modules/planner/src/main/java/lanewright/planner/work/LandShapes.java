package lanewright.planner.work;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** The work and the hazards as shapes on the map, local metres. */
final class LandShapes {

    /** Makes all shapes of this package. */
    static final GeometryFactory FACTORY = new GeometryFactory();

    private LandShapes() {}

    /** The land inside the limits of work. */
    static Geometry limits(SectionSet set) {
        return band(set, s -> s.left().limit(), s -> s.right().limit());
    }

    /** The land between two offsets that are read out of each section, m. */
    static Geometry band(
            SectionSet set, ToDoubleFunction<Section> left, ToDoubleFunction<Section> right) {
        Alignment line = set.design().alignment();
        List<Geometry> pieces = new ArrayList<>();
        List<Section> sections = set.sections();
        for (int i = 1; i < sections.size(); i++) {
            Section a = sections.get(i - 1);
            Section b = sections.get(i);
            if (b.station() > a.station()) {
                Coordinate[] corners = {
                    at(line, a, left.applyAsDouble(a)),
                    at(line, a, right.applyAsDouble(a)),
                    at(line, b, right.applyAsDouble(b)),
                    at(line, b, left.applyAsDouble(b))
                };
                pieces.add(FACTORY.createMultiPointFromCoords(corners).convexHull());
            }
        }
        return FACTORY.createGeometryCollection(pieces.toArray(Geometry[]::new)).buffer(0);
    }

    private static Coordinate at(Alignment line, Section section, double offset) {
        Place place = new Place(section.station(), offset);
        return new Coordinate(line.x(place), line.y(place));
    }

    /** A hazard with its radius: a line, an outline or a round place. */
    static Geometry of(Hazard hazard) {
        Geometry bare = bare(hazard);
        return hazard.points().size() == 1 && hazard.around() > 0
                ? bare.buffer(hazard.around())
                : bare;
    }

    /** A hazard without its radius: a line, an outline or a point. */
    static Geometry bare(Hazard hazard) {
        Coordinate[] points =
                hazard.points().stream()
                        .map(p -> new Coordinate(p.x(), p.y()))
                        .toArray(Coordinate[]::new);
        if (points.length == 1) {
            return FACTORY.createPoint(points[0]);
        }
        boolean isLine = hazard.kind() == Hazard.Kind.WIRE || hazard.kind().isBuried();
        if (isLine || points.length == 2) {
            return FACTORY.createLineString(points);
        }
        Coordinate[] ring = new Coordinate[points.length + 1];
        System.arraycopy(points, 0, ring, 0, points.length);
        ring[points.length] = points[0];
        return FACTORY.createPolygon(ring).buffer(0);
    }
}
