package lanewright.sheets.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.SplittableRandom;
import lanewright.sheets.drawing.Outline;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class TrimTest {

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** A ring around a place, as far from it as the dice say. */
    private static double[] star(SplittableRandom dice, double least, double most) {
        int corners = 5 + dice.nextInt(20);
        double[] xy = new double[2 * corners];
        for (int i = 0; i < corners; i++) {
            double turn = 2 * Math.PI * i / corners;
            double far = least + dice.nextDouble() * (most - least);
            xy[2 * i] = 50 + far * Math.cos(turn);
            xy[2 * i + 1] = 40 + far * Math.sin(turn);
        }
        return xy;
    }

    private static Coordinate[] ring(double[] xy) {
        Coordinate[] ring = new Coordinate[xy.length / 2 + 1];
        for (int i = 0; i < ring.length; i++) {
            int k = 2 * i % xy.length;
            ring[i] = new Coordinate(xy[k], xy[k + 1]);
        }
        return ring;
    }

    private static double length(List<Outline> pieces) {
        return pieces.stream().mapToDouble(p -> Math.hypot(p.x(1) - p.x(0), p.y(1) - p.y(0))).sum();
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "lines of a pattern cut at an area with a hole, 2,000 random ones | JTS 1.20, intersection |"
                    + " derived")
    void linesAreCutWhereTheAreaEnds() {
        SplittableRandom dice = new SplittableRandom(31);
        for (int i = 0; i < 2000; i++) {
            double[] outer = star(dice, 20, 40);
            double[] hole = star(dice, 5, 15);
            Geometry area =
                    GEOMETRY.createPolygon(
                            GEOMETRY.createLinearRing(ring(outer)),
                            new org.locationtech.jts.geom.LinearRing[] {
                                GEOMETRY.createLinearRing(ring(hole))
                            });
            double ax = dice.nextDouble() * 100;
            double ay = dice.nextDouble() * 80;
            double bx = dice.nextDouble() * 100;
            double by = dice.nextDouble() * 80;
            Geometry line =
                    GEOMETRY.createLineString(
                            new Coordinate[] {new Coordinate(ax, ay), new Coordinate(bx, by)});
            assertEquals(
                    area.intersection(line).getLength(),
                    length(
                            Trim.within(
                                    List.of(Outline.closed(outer), Outline.closed(hole)),
                                    List.of(Outline.open(ax, ay, bx, by)))),
                    1e-9);
        }
    }

    @Test
    void aLineThroughCornersOfTheAreaIsCutThere() {
        Outline diamond = Outline.closed(10, 0, 20, 10, 10, 20, 0, 10);
        assertEquals(
                20, length(Trim.within(List.of(diamond), List.of(Outline.open(-5, 10, 30, 10)))));
        assertEquals(
                20, length(Trim.within(List.of(diamond), List.of(Outline.open(10, -9, 10, 33)))));
        assertEquals(
                0, length(Trim.within(List.of(diamond), List.of(Outline.open(20, -9, 20, 33)))));
    }

    @Test
    void aPieceInsideStaysAndOneOutsideGoes() {
        Outline box = Outline.box(0, 0, 10, 10);
        Outline stone = Outline.circle(5, 5, 2, 6);
        assertEquals(6, Trim.within(List.of(box), List.of(stone)).size());
        assertEquals(12, length(Trim.within(List.of(box), List.of(stone))), 1e-12);
        assertEquals(List.of(), Trim.within(List.of(box), List.of(stone.moved(20, 0))));
    }
}
