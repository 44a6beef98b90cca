package lanewright.lane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lanewright.ground.Ground;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.Stretch;
import lanewright.measure.Progress;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The true solid in worlds whose volumes are known from plain geometry. */
class TrueSolidTest {

    /** Sums of some thousand products of doubles. */
    private static final double ROUNDING = 1e-9;

    private static void closes(LaneDesign design, Ground ground, double topsoil) {
        BuiltSurface built = BuiltSurface.of(design, ground, Progress.NONE);
        TrueSolid solid = TrueSolid.of(built, ground.constant(topsoil), null, Progress.NONE);
        Skin finished = built.finished();
        Overlay net = new Overlay(ground, ground.constant(0), null);
        net.under(SurfacePart.FILL_SLOPE, false);
        for (int t = 0; t < finished.triangleCount(); t++) {
            for (int k = 0; k < 3; k++) {
                int v = finished.corner(t, k);
                net.corner(k, finished.x(v), finished.y(v), finished.z(v), finished.z(v));
            }
            net.add();
        }
        double right =
                solid.stone() + solid.fill() + solid.topsoilBack() - solid.cut() - solid.strip();
        assertEquals(net.fill - net.cut, right, ROUNDING * solid.disturbed());
        assertEquals(0, solid.uncovered(), 1e-6);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "True solid of a fill on level ground, area w h + s h² + k w²/4 (EW-E11) | plain"
                    + " geometry, crowned level section | derived")
    void fillOnLevelGroundIsSectionTimesLength() throws DesignRefused {
        Ground ground = World.grid(-40, -10, 40, 110, 7, (x, y) -> 100);
        double w = 5;
        double k = 0.04;
        double s = 2;
        double h = 1.3; // height at the edge
        Alignment line = World.line(0, 0, 0, 0, 100, 0);
        double top = 100 + h + k * w / 2;
        TrueSolid solid =
                World.solid(
                        World.lane(
                                line,
                                World.grade(0, top, 0, 100, top, 0),
                                World.bare(w, k, World.plain(0, s))),
                        ground,
                        0);
        double area = w * h + s * h * h + k * w * w / 4;
        assertEquals(area * 100, solid.fill(), ROUNDING * area * 100);
        assertEquals(0, solid.cut());
        assertEquals((w + 2 * s * h) * 100, solid.disturbed(), 1e-6);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "True solid of an arc over a plane against Pappus, area times the path of its centroid |"
                    + " Pappus's theorem; plain geometry | derived")
    void laneOnAnArcFollowsPappus() throws DesignRefused {
        // one-sided cut into level ground: a vertical-sided bench is not possible, so a level fill
        // whose section is symmetric has its centroid on the alignment
        Ground ground = World.grid(-60, -60, 120, 120, 9, (x, y) -> 10);
        Alignment line = World.line(0, 0, 0, 0, 60, 50, 60, 60, 0);
        double h = 1;
        double w = 4;
        double s = 2;
        TrueSolid solid =
                World.solid(
                        World.lane(
                                line,
                                World.grade(0, 10 + h, 0, line.length(), 10 + h, 0),
                                World.bare(w, 0, World.plain(0, s))),
                        ground,
                        0);
        double volume = (w * h + s * h * h) * line.length();
        assertEquals(volume, solid.fill(), 2e-4 * volume);
    }

    @Test
    void partsAddUpOnRoughGround() throws DesignRefused {
        Ground ground =
                World.grid(
                        -60,
                        -20,
                        90,
                        140,
                        3,
                        (x, y) ->
                                20
                                        + 0.06 * y
                                        + 1.2 * Math.sin(x / 7)
                                        + 0.9 * Math.cos(y / 11 + x / 30));
        Alignment line = World.line(0, 0, 0, 5, 50, 40, 40, 110, 0);
        var left = World.ditched(0.6, 2.5, 0.5, 0.4);
        var right = World.ditched(0.6, 2.5, 0.4, 0);
        for (Bed bed : Bed.values()) {
            LaneDesign design =
                    LaneDesign.on(line, World.grade(0, 20, 0, 50, 23, 30, line.length(), 26.5, 0))
                            .typical(
                                    List.of(
                                            new Stretch<>(
                                                    0,
                                                    line.length(),
                                                    World.stoned(bed, left, right))))
                            .margin(0.7)
                            .build();
            closes(design, ground, 0.2);
        }
    }

    @Test
    void jumpsOfTheShapeLoseNothing() throws DesignRefused {
        Ground ground = World.grid(-40, -10, 40, 110, 7, (x, y) -> 100 + 0.1 * x);
        Alignment line = World.line(0, 0, 0, 0, 100, 0);
        var narrow = World.bare(3, 0, World.plain(0, 1e-3));
        var wide = World.bare(6, 0, World.plain(0, 1e-3));
        LaneDesign design =
                LaneDesign.on(line, World.grade(0, 102, 0, 100, 102, 0))
                        .typical(
                                List.of(new Stretch<>(0, 40, narrow), new Stretch<>(40, 100, wide)))
                        .build();
        TrueSolid solid = World.solid(design, ground, 0);
        double volume = 2 * (3 * 40 + 6 * 60);
        assertTrue(Math.abs(solid.fill() - volume) < 2e-3 * volume, "fill " + solid.fill());
    }
}
