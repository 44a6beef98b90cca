package lanewright.planner.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import lanewright.drainage.WaterOptions;
import lanewright.drainage.WaterReport;
import lanewright.drainage.pond.GivenPipe;
import lanewright.earthwork.EarthOptions;
import lanewright.earthwork.EarthworkReport;
import lanewright.earthwork.TopsoilBalance;
import lanewright.ground.Ground;
import lanewright.ground.GroundOptions;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.line.IntersectionPoint;
import lanewright.lane.line.Profile;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.section.SectionSet;
import lanewright.lane.section.Sections;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.CrossFall;
import lanewright.lane.shape.Ditch;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.Layer;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.TypicalSection;
import lanewright.lane.surface.BuiltSurface;
import lanewright.lane.surface.CompositeSurface;
import lanewright.lane.volume.LaneVolumes;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Progress;
import lanewright.planner.work.Hazard.Kind;
import lanewright.planner.work.Hazard.Spot;
import lanewright.survey.Boundary;
import lanewright.survey.Ring;
import lanewright.survey.Survey;
import lanewright.survey.SurveyBuilder;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class HeapPlacesTest {

    private static final double BEYOND = 1;
    private static final double ROOM = 8 * 0.3048;

    /** Two operations more than exact: sums of stations and offsets. */
    private static final double ROUNDING = 1e-9;

    /** A straight lane of 100 m along x over a plane, its middle half a metre up. */
    private static final class World {
        final Ground ground;
        final SectionSet set;
        final LaneVolumes volumes;
        final TopsoilBalance topsoil;
        final WaterReport water;
        final double turn;

        /**
         * A world.
         *
         * @param wide how far the survey reaches to both sides, m
         * @param east rise of the plane to the east
         * @param north rise of the plane to the north
         * @param turn 1, or -1 for the world in the mirror
         */
        World(double wide, double east, double north, double turn) {
            this.turn = turn;
            SurveyBuilder survey = Survey.builder();
            for (double x : new double[] {-60, 160}) {
                for (double y : new double[] {-wide, wide}) {
                    survey.point(x, turn * y, 100 + east * x + north * y);
                }
            }
            ground = Ground.of(survey.build(), GroundOptions.USUAL, Progress.NONE);
            try {
                SideShape side = new SideShape(0.5, 3, Ditch.NONE, 2, 2);
                var shape =
                        new TypicalSection(
                                4,
                                CrossFall.CROWN,
                                0.04,
                                Bed.ON_TOP,
                                List.of(new Layer("base", 0.2, 1)),
                                Double.NaN,
                                side,
                                side,
                                true,
                                0,
                                false);
                var points =
                        List.of(new IntersectionPoint(0, 0, 0), new IntersectionPoint(100, 0, 0));
                var profile =
                        Profile.of(
                                List.of(
                                        new VerticalPoint(0, 100.5, 0),
                                        new VerticalPoint(100, 100.5 + 100 * east, 0)));
                LaneDesign design =
                        LaneDesign.on(Alignment.of(points), profile)
                                .typical(shape)
                                .margin(0.5)
                                .interval(25)
                                .build();
                set = Sections.of(design, ground, ground.constant(0.15), null, Progress.NONE);
                volumes = LaneVolumes.of(set);
                topsoil = EarthworkReport.of(set, volumes, null, EarthOptions.USUAL).topsoil();
                BuiltSurface built = BuiltSurface.of(design, ground, Progress.NONE);
                Ground finished = CompositeSurface.of(built, Progress.NONE).ground();
                water =
                        WaterReport.of(
                                ground,
                                design,
                                set.sections(),
                                finished,
                                List.<GivenPipe>of(),
                                WaterOptions.USUAL,
                                Progress.NONE);
            } catch (DesignRefused e) {
                throw new AssertionError(e);
            }
        }

        HeapPlaces heaps(List<Hazard> hazards, Boundary boundary, double... chosen) {
            var places = new ArrayList<HeapLand.Chosen>();
            for (int i = 0; i < chosen.length; i += 2) {
                places.add(new HeapLand.Chosen("", chosen[i], turn * chosen[i + 1]));
            }
            return HeapPlaces.of(
                    set,
                    volumes.strip(),
                    topsoil,
                    new HeapLand(ground, boundary, water, hazards, List.of(), BEYOND, places));
        }

        Hazard hazard(Kind kind, double around, double away, double... xy) {
            var spots = new ArrayList<Spot>();
            for (int i = 0; i < xy.length; i += 2) {
                spots.add(new Spot(xy[i], turn * xy[i + 1]));
            }
            return new Hazard(kind, "it", spots, Double.NaN, around, away);
        }
    }

    private static final World LEVEL = new World(50, 0, 0, 1);

    private static List<String> codes(HeapPlaces heaps) {
        return heaps.findings().stream().map(Finding::code).toList();
    }

    private static Finding only(HeapPlaces heaps) {
        assertEquals(1, heaps.findings().size(), heaps.findings().toString());
        return heaps.findings().get(0);
    }

    private static Geometry outline(HeapPlace heap) {
        double[][] xy = heap.outline();
        int n = xy[0].length;
        Coordinate[] ring = new Coordinate[n + 1];
        for (int i = 0; i <= n; i++) {
            ring[i] = new Coordinate(xy[0][i % n], xy[1][i % n]);
        }
        return new GeometryFactory().createPolygon(ring);
    }

    /**
     * Fill on level ground: toe 2 + 0.2 / 0.96 from the middle, hinge 0.5 farther, 0.3 - 0.04 u up,
     * catch three times that farther, margin 0.5. The strip is as wide, 0.15 deep.
     */
    private static double limit() {
        double hinge = 2 + 0.2 / 0.96 + 0.5;
        return hinge + 3 * (0.3 - 0.04 * hinge) + 0.5;
    }

    @Test
    void onOpenLevelGroundEachHeapStandsBesideTheMiddleOfItsStretch() {
        HeapPlaces heaps = LEVEL.heaps(List.of(), null);
        // 100 m of lane are two stretches of at most 200 ft.
        assertEquals(2, heaps.heaps().size());
        double each = 50 * 2 * limit() * 0.15 * LEVEL.topsoil.heaped() / LEVEL.topsoil.strip();
        for (int i = 0; i < 2; i++) {
            HeapPlace heap = heaps.heaps().get(i);
            assertEquals(each, heap.form().volume(), ROUNDING * each);
            assertEquals(25 + 50 * i, heap.station(), ROUNDING);
            double half = heap.form().width() / 2;
            assertEquals(limit() + BEYOND + ROOM + half, Math.abs(heap.offset()), ROUNDING);
            assertEquals(heap.x(), heap.station(), ROUNDING);
            assertEquals(heap.y(), -heap.offset(), ROUNDING);
        }
        assertEquals(0, heaps.unplaced());
        assertEquals(List.of(), heaps.findings());
    }

    @Test
    void heapsHoldAllThatIsStripped() {
        World slope = new World(50, 0.03, -0.06, 1);
        double sum = 0;
        for (HeapPlace heap : slope.heaps(List.of(), null).heaps()) {
            sum += heap.form().volume();
        }
        assertEquals(slope.topsoil.heaped(), sum, ROUNDING * sum);
    }

    @Test
    void ofTwoPlacesEquallyFarTheOneOnHigherGroundIsTaken() {
        // So little rise that the limits of both sides are the same to far below a millimetre.
        for (double rise : new double[] {1e-9, -1e-9}) {
            HeapPlaces heaps = new World(50, 0, rise, 1).heaps(List.of(), null);
            assertEquals(Math.signum(rise), Math.signum(heaps.heaps().get(0).y()), "rise " + rise);
        }
    }

    @Test
    void aHeapOverADrainFieldIsFound() {
        Hazard field = LEVEL.hazard(Kind.DRAIN_FIELD, 0, 4.5, 20, 20, 80, 20, 80, 40, 20, 40);
        Finding inside = only(LEVEL.heaps(List.of(field), null, 50, 30));
        assertEquals("heap-on-drain-field", inside.code());
        assertEquals(Level.STOP, inside.level());
        HeapPlaces near = LEVEL.heaps(List.of(field), null, 50, 15);
        // 5 m off the field less half the heap's width: under 4.5 m, so that it is only too near.
        assertTrue(near.heaps().get(0).form().width() / 2 > 0.5);
        assertEquals("heap-on-drain-field", only(near).code());
        assertEquals(Level.LOOK, only(near).level());
    }

    @Test
    void aHeapUnderAWireIsFound() {
        Hazard wire = LEVEL.hazard(Kind.WIRE, 0, 0, -10, 25, 120, 25);
        Finding under = only(LEVEL.heaps(List.of(wire), null, 50, 25));
        assertEquals("heap-under-overhead-wire", under.code());
        assertEquals(Level.STOP, under.level());
        double half = LEVEL.heaps(List.of(), null, 50, 25).heaps().get(0).form().width() / 2;
        double clear = half + 10 * 0.3048 + ROOM;
        assertEquals(List.of(), codes(LEVEL.heaps(List.of(wire), null, 50, 25.01 + clear)));
        assertEquals(
                List.of("heap-under-overhead-wire"),
                codes(LEVEL.heaps(List.of(wire), null, 50, 24.99 + clear)));
    }

    @Test
    void aHeapOnABuriedLineOnTheWorkOrOffTheSurveyIsFound() {
        Hazard pipe = LEVEL.hazard(Kind.BURIED_PRIVATE, 0, 0, 50, -45, 50, 45);
        assertEquals(
                List.of("heap-on-buried-private-line"),
                codes(LEVEL.heaps(List.of(pipe), null, 50, 25)));
        Finding work = only(LEVEL.heaps(List.of(), null, 50, 3));
        assertEquals("heap-in-work", work.code());
        assertEquals(Level.STOP, work.level());
        assertEquals(List.of("heap-off-survey"), codes(LEVEL.heaps(List.of(), null, 50, 49)));
        assertEquals(List.of("heap-by-road"), codes(LEVEL.heaps(List.of(), null, -20, 20)));
        double[] x = {-60, 160, 160, -60};
        double[] y = {-20, -20, 40, 40};
        var own = new Boundary(new Ring(x, y));
        assertEquals(List.of(), codes(LEVEL.heaps(List.of(), own, 50, 30)));
        assertEquals(List.of("heap-off-survey"), codes(LEVEL.heaps(List.of(), own, 50, 39)));
        assertEquals(List.of("heap-off-survey"), codes(LEVEL.heaps(List.of(), own, 50, -25)));
    }

    @Test
    void proposedPlacesKeepTheirDistances() {
        List<Hazard> hazards =
                List.of(
                        LEVEL.hazard(Kind.DRAIN_FIELD, 0, 5, 15, 5, 45, 5, 45, 22, 15, 22),
                        LEVEL.hazard(Kind.WELL, 1, 12, 30, -14),
                        LEVEL.hazard(Kind.WIRE, 0, 0, 80, -50, 82, 50));
        HeapPlaces heaps = LEVEL.heaps(hazards, null);
        assertEquals(List.of(), heaps.findings());
        Geometry field = LandShapes.of(hazards.get(0));
        Geometry well = LandShapes.bare(hazards.get(1));
        Geometry wire = LandShapes.of(hazards.get(2));
        for (HeapPlace heap : heaps.heaps()) {
            Geometry outline = outline(heap);
            assertTrue(outline.distance(field) >= 5 - 1e-6);
            assertTrue(outline.distance(well) >= 13 - 1e-6);
            assertTrue(outline.distance(wire) >= 10 * 0.3048 + ROOM - 1e-6);
            assertTrue(
                    Arrays.stream(heap.outline()[1])
                            .allMatch(y -> Math.abs(y) >= limit() + BEYOND + ROOM - 1e-6));
            assertTrue(heap.why().pattern().contains("things to keep off"), heap.why().pattern());
        }
        Geometry first = outline(heaps.heaps().get(0));
        assertTrue(first.distance(outline(heaps.heaps().get(1))) >= ROOM - 1e-6);
    }

    @Test
    void aWorldInTheMirrorHasItsHeapsInTheMirror() {
        List<HeapPlaces> two = new ArrayList<>();
        for (double turn : new double[] {1, -1}) {
            World world = new World(50, 0.02, 0.05, turn);
            two.add(
                    world.heaps(
                            List.of(
                                    world.hazard(Kind.TREE, 3, 2, 24, 14),
                                    world.hazard(Kind.BURIED, 0, 0, 70, -50, 76, 50)),
                            null));
        }
        assertEquals(two.get(0).heaps().size(), two.get(1).heaps().size());
        assertFalse(two.get(0).heaps().isEmpty());
        for (int i = 0; i < two.get(0).heaps().size(); i++) {
            HeapPlace here = two.get(0).heaps().get(i);
            HeapPlace there = two.get(1).heaps().get(i);
            assertEquals(here.x(), there.x(), 1e-6);
            assertEquals(here.y(), -there.y(), 1e-6);
            assertEquals(here.form().volume(), there.form().volume(), 1e-6);
            assertEquals(here.why(), there.why());
        }
    }

    @Test
    void whereThereIsNoRoomItSaysSo() {
        HeapPlaces heaps = new World(8, 0, 0, 1).heaps(List.of(), null);
        assertEquals(List.of(), heaps.heaps());
        Finding none = only(heaps);
        assertEquals("heap-without-place", none.code());
        assertEquals(0, none.where().from(), ROUNDING);
        assertEquals(100, none.where().to(), ROUNDING);
        assertEquals(LEVEL.topsoil.heaped(), heaps.unplaced(), 1e-6);
        assertTrue(none.says().pattern().contains("edge of the survey"), none.says().pattern());
    }

    @Test
    void steepGroundIsRefused() {
        HeapPlaces heaps = new World(50, 0, 0.24, 1).heaps(List.of(), null);
        assertEquals(List.of(), heaps.heaps());
        assertTrue(only(heaps).says().pattern().contains("steep ground"));
    }

    @Test
    void whatTheOwnerChoseTakesTheTopsoilNearestToIt() {
        HeapPlaces heaps = LEVEL.heaps(List.of(), null, 25, 25, 75, -25, 50, 400);
        assertEquals(2, heaps.heaps().size());
        assertEquals(
                "0.0-50.0 50.0-100.0",
                heaps.heaps().stream()
                        .map(heap -> heap.from() + "-" + heap.to())
                        .collect(Collectors.joining(" ")));
        assertTrue(heaps.heaps().stream().allMatch(HeapPlace::chosen));
        assertEquals("heap-place-not-used", only(heaps).code());
        double sum = heaps.heaps().get(0).form().volume() + heaps.heaps().get(1).form().volume();
        assertEquals(LEVEL.topsoil.heaped(), sum, ROUNDING * sum);
    }
}
