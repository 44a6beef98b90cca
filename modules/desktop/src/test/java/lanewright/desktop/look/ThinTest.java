package lanewright.desktop.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import lanewright.sheets.drawing.Outline;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

class ThinTest {

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private static List<Coordinate> thinned(Outline line, double near) {
        List<Coordinate> kept = new ArrayList<>();
        new Thin(near).follow(line, (x, y) -> kept.add(new Coordinate(x, y)));
        return kept;
    }

    private static LineString line(List<Coordinate> corners) {
        return GEOMETRY.createLineString(corners.toArray(Coordinate[]::new));
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "no corner left out lies farther from the thinned line than it may, 1,000 random lines"
                    + " | JTS 1.20, discrete Hausdorff distance | derived")
    void noCornerThatIsLeftOutIsFarFromTheLine() {
        SplittableRandom dice = new SplittableRandom(7);
        for (int n = 0; n < 1000; n++) {
            int corners = 2 + dice.nextInt(200);
            double rough = dice.nextDouble() * dice.nextDouble();
            double[] xy = new double[2 * corners];
            List<Coordinate> all = new ArrayList<>();
            double way = 0;
            for (int i = 0; i < corners; i++) {
                way += (dice.nextDouble() - 0.5) * rough * 6;
                double step = dice.nextInt(8) == 0 ? 0 : dice.nextDouble() * 3;
                xy[2 * i] = (i == 0 ? 0 : xy[2 * i - 2]) + step * Math.cos(way);
                xy[2 * i + 1] = (i == 0 ? 0 : xy[2 * i - 1]) + step * Math.sin(way);
                all.add(new Coordinate(xy[2 * i], xy[2 * i + 1]));
            }
            List<Coordinate> kept = thinned(Outline.open(xy), 0.15);
            assertEquals(all.get(0), kept.get(0));
            assertEquals(all.get(corners - 1), kept.get(kept.size() - 1));
            double off = DiscreteHausdorffDistance.distance(line(kept), line(all));
            assertTrue(off <= 0.1501, "line " + n + " is off by " + off);
        }
    }

    @Test
    void aStraightLineKeepsItsEnds() {
        double[] xy = new double[400];
        for (int i = 0; i < 200; i++) {
            xy[2 * i] = 3 * i;
            xy[2 * i + 1] = 0.5 * i;
        }
        assertEquals(2, thinned(Outline.open(xy), 0.15).size());
    }

    @Test
    void aLineThatTurnsBackKeepsWhereItTurns() {
        List<Coordinate> kept = thinned(Outline.open(0, 0, 10, 0, 20, 0, 5, 0), 0.15);
        assertEquals(
                List.of(new Coordinate(0, 0), new Coordinate(20, 0), new Coordinate(5, 0)), kept);
    }
}
