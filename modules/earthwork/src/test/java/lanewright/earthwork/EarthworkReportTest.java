package lanewright.earthwork;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
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
import lanewright.lane.shape.Stretch;
import lanewright.lane.shape.TypicalSection;
import lanewright.lane.surface.BuiltSurface;
import lanewright.lane.surface.TrueSolid;
import lanewright.lane.volume.LaneVolumes;
import lanewright.lane.volume.Running;
import lanewright.lane.volume.State;
import lanewright.measure.Progress;
import lanewright.survey.Survey;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class EarthworkReportTest {

    private static Running ramp(String name, double[] station, double[] area) {
        return Running.of(
                name,
                State.BANK,
                station,
                area,
                new double[station.length],
                new double[station.length - 1]);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Waste and borrow between balance points by interpolation along the running sums (EW-M1)"
                    + " | SURVY2 202 lecture notes, ch. 4B, example 1 | read")
    void wasteAndBorrow() {
        Running cut = ramp("cut", new double[] {2440, 2740}, new double[] {50, 0});
        Running fill = ramp("fill", new double[] {2740, 3040}, new double[] {0, 70});
        double waste = cut.correctedAt(2498.03);
        assertEquals(2620.92, waste, 0.05);
        double borrow = fill.corrected() - fill.correctedAt(2948.03);
        assertEquals(5451.06, borrow, 0.05);
    }

    @Test
    void massDiagramRisesInCutAndFallsInFill() {
        double[] station = {0, 100, 200};
        Running cut = ramp("cut", station, new double[] {10, 0, 0});
        Running fill = ramp("fill", station, new double[] {0, 0, 9});
        Running none = ramp("edge", station, new double[] {0, 0, 0});
        Soil earth = Soil.published("common earth");
        MassDiagram mass = MassDiagram.of(cut, fill, none, earth);
        assertEquals(500, mass.ordinate(1), 1e-9);
        assertEquals(500 - 450 / 0.9, mass.ordinate(2), 1e-9);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Average haul is the area of the mass curve over its greatest ordinate |"
                    + " ncertpoint.com, What is free haul and overhaul, 2022 | read")
    void averageHaulIsAreaOverGreatestOrdinate() {
        // a triangle 200 m long: half its base; the dip behind it makes a balance point at 200
        double[] station = {0, 100, 200, 300};
        Soil rock = Soil.published("blasted rock");
        Running cut =
                Running.of(
                        "cut",
                        State.BANK,
                        station,
                        new double[] {10, 10, 0, 0},
                        new double[4],
                        new double[3]);
        Running fill =
                Running.of(
                        "fill",
                        State.COMPACTED,
                        station,
                        new double[] {0, 0, 0, 0},
                        new double[4],
                        new double[3]);
        Running none = ramp("edge", station, new double[4]);
        assertTrue(Double.isNaN(MassDiagram.of(cut, fill, none, rock).averageHaul()));

        double[] pairs = {0, 100, 100, 200, 200, 210};
        Running dug = ramp("cut", pairs, new double[] {13, 13, 0, 0, 0, 0});
        Running filled = ramp("fill", pairs, new double[] {0, 0, 16.9, 16.9, 16.9, 16.9});
        Running no = ramp("edge", pairs, new double[6]);
        MassDiagram mass = MassDiagram.of(dug, filled, no, rock);
        assertEquals(List.of(200.0), mass.balancePoints().stream().map(Math::rint).toList());
        assertEquals(100, mass.averageHaul(), 1e-6);
    }

    private static Ground ground(DoubleBinaryOperator height) {
        int n = 31;
        double[] x = new double[n * n];
        double[] y = new double[n * n];
        double[] z = new double[n * n];
        for (int i = 0; i < n * n; i++) {
            boolean inside = i % n > 0 && i % n < n - 1 && i / n > 0 && i / n < n - 1;
            x[i] = -60 + 6 * (i % n) + (inside ? Math.sin(i) : 0);
            y[i] = -30 + 6 * (i / n) + (inside ? Math.cos(2.0 * i) : 0);
            z[i] = height.applyAsDouble(x[i], y[i]);
        }
        return Ground.of(
                Survey.builder().points(x, y, z).build(), GroundOptions.WHOLE_HULL, Progress.NONE);
    }

    private static EarthworkReport report(Ground ground, double bearing, double interval)
            throws DesignRefused {
        Alignment line =
                Alignment.of(
                        List.of(
                                new IntersectionPoint(0, 0, 0),
                                new IntersectionPoint(10, 50, 40),
                                new IntersectionPoint(60, 90, 0)));
        double length = line.length();
        Profile grade =
                Profile.of(
                        List.of(
                                new VerticalPoint(0, 10.2, 0),
                                new VerticalPoint(50, 12.2, 30),
                                new VerticalPoint(length, 13.4, 0)));
        SideShape side = new SideShape(0.6, 3, Ditch.NONE, 2, 2);
        TypicalSection shape =
                new TypicalSection(
                        4,
                        CrossFall.CROWN,
                        0.04,
                        Bed.ON_TOP,
                        List.of(new Layer("surface", 0.1, 1.5), new Layer("base", 0.2, 1.5)),
                        Double.NaN,
                        side,
                        side,
                        true,
                        0.1,
                        false);
        LaneDesign design =
                LaneDesign.on(line, grade)
                        .typical(List.of(new Stretch<>(0, length, shape)))
                        .interval(interval)
                        .margin(0.5)
                        .build();
        var topsoil = ground.constant(0.15);
        var bears = ground.constant(bearing);
        SectionSet sections = Sections.of(design, ground, topsoil, bears, Progress.NONE);
        TrueSolid solid =
                TrueSolid.of(
                        BuiltSurface.of(design, ground, Progress.NONE),
                        topsoil,
                        bears,
                        Progress.NONE);
        return EarthworkReport.of(sections, LaneVolumes.of(sections), solid, EarthOptions.USUAL);
    }

    @Test
    void sectionsAndTrueSolidComeTogether() throws DesignRefused {
        Ground ground =
                ground((x, y) -> 10 + 0.04 * y + 0.6 * Math.sin(x / 11) + 0.5 * Math.cos(y / 9));
        EarthworkReport coarse = report(ground, 0.3, 20);
        EarthworkReport fine = report(ground, 0.3, 0.5);
        for (Comparison row : fine.volumes()) {
            double whole = Math.max(1, row.solid());
            assertEquals(row.solid(), row.corrected(), 2e-3 * whole, row.name());
            Comparison before = coarse.volume(row.name());
            assertNotNull(before);
            assertTrue(Math.abs(row.more()) <= Math.abs(before.more()) + 1e-3 * whole, row.name());
        }
        assertTrue(
                coarse.findings().stream().anyMatch(f -> f.code().equals("sections-against-solid")),
                "twenty metres apart must be explained");
        assertTrue(
                fine.findings().stream().noneMatch(f -> f.code().equals("sections-against-solid")),
                "half a metre apart needs no word");
    }

    @Test
    void topsoilAndSoftEarthNeverBalanceFill() throws DesignRefused {
        Ground ground = ground((x, y) -> 10 + 0.02 * y);
        EarthworkReport firm = report(ground, 0.1, 10);
        EarthworkReport soft = report(ground, 0.6, 10);
        assertEquals(firm.balance(), soft.balance());
        assertEquals(0, firm.unfit().bank());
        assertTrue(soft.unfit().bank() > 10);
        assertTrue(soft.findings().stream().anyMatch(f -> f.code().equals("soft-below")));
        assertTrue(soft.topsoil().heaps().count() > 0);
        assertTrue(soft.topsoil().heaps().height() <= 2);
        assertEquals(2, soft.topsoil().run()); // 32° would be steeper than 2:1
        assertTrue(soft.deepestFill() > 0.3 && soft.lifts() >= 3);
        assertTrue(soft.balance().over() < 0, "a lane on fill brings earth in");
    }
}
