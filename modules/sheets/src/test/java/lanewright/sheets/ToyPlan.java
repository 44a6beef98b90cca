package lanewright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import lanewright.drainage.Cure;
import lanewright.drainage.Inflow;
import lanewright.drainage.LandWater;
import lanewright.drainage.LaneDrainage;
import lanewright.drainage.PipeCourse;
import lanewright.drainage.Pool;
import lanewright.drainage.RoadEnd;
import lanewright.drainage.WaterReport;
import lanewright.drainage.WetGround;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.Descents;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.Relief;
import lanewright.drainage.along.Sags;
import lanewright.drainage.along.Side;
import lanewright.drainage.flow.FlowPath;
import lanewright.drainage.pond.GivenPipe;
import lanewright.drainage.pond.LowSpot;
import lanewright.drainage.pond.PlacedPipe;
import lanewright.drainage.pond.Trace;
import lanewright.ground.Ground;
import lanewright.ground.GroundOptions;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.line.IntersectionPoint;
import lanewright.lane.line.Place;
import lanewright.lane.line.Profile;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionSet;
import lanewright.lane.section.Sections;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.CrossFall;
import lanewright.lane.shape.Ditch;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.Layer;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.TypicalSection;
import lanewright.lane.volume.LaneVolumes;
import lanewright.lane.volume.Running;
import lanewright.measure.Assumption;
import lanewright.measure.Finding;
import lanewright.measure.Progress;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.stone.LayerStone;
import lanewright.stone.StoneReport;
import lanewright.stone.Supply;
import lanewright.survey.Survey;

/**
 * A whole lane on smooth invented ground, with real sections, volumes and stone, and with water put
 * in by hand: enough of everything that every sheet has something to show.
 */
public final class ToyPlan {

    /** The survey. */
    public final Survey survey;

    /** Its ground. */
    public final Ground ground;

    /** The lane. */
    public final LaneDesign design;

    /** Its sections. */
    public final SectionSet sections;

    /** Its volumes. */
    public final LaneVolumes volumes;

    /** Its stone. */
    public final StoneReport stone;

    /** Its water. */
    public final WaterReport water;

    /** Works everything out. */
    public ToyPlan() throws DesignRefused {
        survey = survey();
        ground = Ground.of(survey, GroundOptions.USUAL, Progress.NONE);
        design = design();
        sections = Sections.of(design, ground, ground.constant(0.18), null, Progress.NONE);
        volumes = LaneVolumes.of(sections);
        stone = stone();
        water = water();
    }

    private static double height(double x, double y) {
        return 125
                + 0.03 * x
                + 2.2 * Math.sin(x / 37)
                + 1.4 * Math.cos(y / 29)
                - 1.5 * Math.exp(-((x - 98) * (x - 98) + (y - 42) * (y - 42)) / 220);
    }

    private static Survey survey() {
        var random = new SplittableRandom(7);
        var builder = Survey.builder().origin(5000, 2000);
        for (int i = 0; i < 1500; i++) {
            double x = random.nextDouble(-30, 240);
            double y = random.nextDouble(-40, 120);
            builder.point(5000 + x, 2000 + y, height(x, y));
        }
        return builder.build();
    }

    private static LaneDesign design() throws DesignRefused {
        Alignment line =
                Alignment.of(
                        List.of(
                                new IntersectionPoint(2, 4, 0),
                                new IntersectionPoint(78, 52, 40),
                                new IntersectionPoint(140, 40, 45),
                                new IntersectionPoint(205, 74, 0)));
        double end = line.length();
        Profile profile =
                Profile.of(
                        List.of(
                                new VerticalPoint(0, 126.2, 0),
                                new VerticalPoint(46, 129.3, 18),
                                new VerticalPoint(112, 127.9, 24),
                                new VerticalPoint(162, 129.6, 18),
                                new VerticalPoint(end, 133.2, 0)));
        var side = new SideShape(0.5, 3, new Ditch(DitchRule.WHERE_BELOW_GROUND, 0.3, 0.3), 2, 2);
        var typical =
                new TypicalSection(
                        3.66,
                        CrossFall.CROWN,
                        0.04,
                        Bed.ON_TOP,
                        List.of(
                                new Layer("surface", 0.05, 2),
                                new Layer("intermediate", 0.075, 1.5),
                                new Layer("base", 0.15, 1.5)),
                        Double.NaN,
                        side,
                        side,
                        true,
                        0.1,
                        false);
        return LaneDesign.on(line, profile).typical(typical).margin(0.3).interval(7.62).build();
    }

    private StoneReport stone() {
        var layers = new ArrayList<LayerStone>();
        List<Layer> typical = design.typical().get(0).value().layers();
        for (int i = volumes.stone().size() - 1; i >= 0; i--) {
            Running running = volumes.stone().get(i);
            var supply =
                    new Supply(
                            running.name(),
                            2000,
                            assumption("in-place weight of " + running.name() + " stone"),
                            1.25,
                            assumption("loose depth of " + running.name() + " stone"),
                            0.08,
                            14_500,
                            i == 0 ? 0.031 : 0.024,
                            i == 0 ? 45_000 : Double.NaN,
                            null);
            layers.add(LayerStone.of(supply, typical.get(i).thickness(), running));
        }
        return StoneReport.of(layers);
    }

    private static Assumption assumption(String name) {
        return new Assumption(
                name,
                Saying.of("{}", Quantity.density(2000)),
                Assumption.Mark.PUBLISHED,
                "A handbook of gravel roads, 2nd edition, table 3, which is a long name");
    }

    private WaterReport water() {
        Alignment line = design.alignment();
        Pool made = pool(line, 108, -9, 7, 4.5, Pool.Fate.NEW, true);
        Pool other = pool(line, 60, 18, 5, 3, Pool.Fate.AS_BEFORE, false);
        Pool gone = pool(line, 112, 1, 5, 4, Pool.Fate.GONE, false);
        double x = line.x(new Place(108, -9));
        double y = line.y(new Place(108, -9));
        var path =
                new FlowPath(
                        new Trace(
                                new double[] {x - 30, x - 18, x - 8, x},
                                new double[] {y + 38, y + 25, y + 12, y},
                                false),
                        2000,
                        9000);
        var pipe =
                GivenPipe.there(
                        "old pipe",
                        line.x(new Place(4, -5)),
                        line.y(new Place(4, -5)),
                        125.5,
                        line.x(new Place(4, 5)),
                        line.y(new Place(4, 5)),
                        125.4,
                        0.3);
        var ditch =
                new DitchReach(
                        Side.LEFT,
                        List.of(
                                new DitchReach.Point(30, 0, 0, 127, 0.1),
                                new DitchReach.Point(60, 30, 0, 126.4, 0.1)),
                        List.of(new DitchReach.Outlet(60, 30, 0, 126.4, DitchReach.Kind.DEAD_END)));
        return new WaterReport(
                List.of(gone),
                List.of(made, other),
                List.of(gone),
                3,
                5,
                List.of(path),
                List.of(path),
                List.of(new Inflow(108, Side.LEFT, x, y, 9000, true)),
                List.of(ditch),
                List.of(),
                List.of(),
                List.of(
                        new Sags.Sag(
                                112,
                                List.of(Sags.WayOut.values()).get(0),
                                List.of(Sags.WayOut.values()).get(1))),
                List.of(
                        new Descents.Descent(
                                Descents.Way.LANE,
                                190,
                                120,
                                70,
                                4.9,
                                60,
                                12,
                                "A table, 1998",
                                List.of(155.0),
                                List.of(155.0),
                                "A table, 1998",
                                0.08,
                                Descents.Across.CROWN)),
                new RoadEnd(null, 0, 20, 0, 0),
                List.of(place(made)),
                List.of(
                        new PipeCourse(
                                pipe,
                                PlacedPipe.State.INLET_OUTSIDE,
                                new CulvertLine(
                                        4,
                                        4,
                                        Side.LEFT,
                                        new Corner(-5, 125.5),
                                        new Corner(5, 125.4),
                                        10,
                                        1),
                                Saying.plain("fits"))),
                List.of(),
                List.of(),
                LandWater.NONE,
                new LaneDrainage(
                        List.of(),
                        List.of(
                                new Relief(
                                        Relief.Device.ROLLING_DIP,
                                        Descents.Way.LANE,
                                        155,
                                        Side.RIGHT,
                                        0.07,
                                        60,
                                        Saying.plain("the lane falls there"),
                                        "A table, 1998")),
                        List.of(),
                        List.of(place(made)),
                        List.of(),
                        new LaneDrainage.RoadCatch(0, Double.NaN, null)),
                WetGround.NONE,
                0.5,
                findings(),
                List.of());
    }

    private Pool pool(
            Alignment line,
            double station,
            double offset,
            double rx,
            double ry,
            Pool.Fate fate,
            boolean culvert) {
        double x = line.x(new Place(station, offset));
        double y = line.y(new Place(station, offset));
        double[] ringX = new double[32];
        double[] ringY = new double[32];
        for (int i = 0; i < 32; i++) {
            ringX[i] = x + rx * Math.cos(i * Math.PI / 16);
            ringY[i] = y + ry * Math.sin(i * Math.PI / 16);
        }
        double bottom = height(x, y);
        var spot =
                new LowSpot(
                        x,
                        y,
                        bottom,
                        bottom + 0.43,
                        x + rx,
                        y,
                        !culvert,
                        -1,
                        Math.PI * rx * ry,
                        12.3,
                        List.of(),
                        List.of(new Trace(ringX, ringY, true)));
        var beside =
                new Pool.Beside(
                        station,
                        offset,
                        station - rx,
                        station + rx,
                        offset - ry,
                        offset + ry,
                        culvert,
                        Pool.Zone.GROUND);
        Section at = sections.nearest(station);
        return new Pool(
                spot,
                fate,
                9100,
                true,
                0,
                beside,
                new Pool.Spill(Pool.SpillWay.LANE, station, Side.LEFT),
                culvert ? CulvertLine.under(at, Side.LEFT, bottom, 3, 3) : null,
                culvert ? CulvertLine.under(at, Side.LEFT, bottom, 3, 3) : null);
    }

    private static WetPlace place(Pool pool) {
        Pool.Beside beside = pool.beside();
        return new WetPlace(
                1,
                WetPlace.Kind.DAMMED,
                beside.side(),
                beside.station(),
                beside.from(),
                beside.to(),
                pool.spot().x(),
                pool.spot().y(),
                pool.spot().depth(),
                pool,
                pool.drained(),
                true,
                pool.culvert(),
                Saying.plain("fits"),
                findings().get(0),
                new Cure(
                        Cure.Kind.PIPE,
                        pool.culvert(),
                        0,
                        0,
                        Saying.of("a pipe at {}", Quantity.station(beside.station()))));
    }

    /** Findings of every level. */
    public static List<Finding> findings() {
        return List.of(
                new Finding(
                        "low-spot-made",
                        Finding.Level.LOOK,
                        Finding.Topic.WATER,
                        Where.beside(108, -9),
                        Saying.of(
                                "The lane dams a hollow: water sits {} deep before it spills",
                                Quantity.length(0.43)),
                        Quantity.length(0.43),
                        Quantity.length(0.05),
                        "A guide to low-volume roads, 2003, section 7.1",
                        Saying.of(
                                "Lay a pipe at {}, {} long; its size is not worked out here",
                                Quantity.station(108),
                                Quantity.length(10.4))),
                Finding.of(
                        "ditch-dead-end",
                        Finding.Level.STOP,
                        Finding.Topic.WATER,
                        Where.stretch(30, 60),
                        Saying.of("The left ditch has nowhere to go at {}", Quantity.station(60)),
                        Saying.plain("Lead it out to lower ground, or take it under the lane")),
                Finding.of(
                        "stone-no-price",
                        Finding.Level.NOTE,
                        Finding.Topic.STONE,
                        Where.ANYWHERE,
                        Saying.plain("No price for the base stone, so no money"),
                        Saying.plain("Ask your quarry for a delivered price")));
    }
}
