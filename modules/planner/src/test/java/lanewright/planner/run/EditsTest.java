package lanewright.planner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionWork;
import lanewright.measure.Kind;
import lanewright.measure.Price;
import lanewright.measure.Progress;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.EarthPart;
import lanewright.planner.document.GradePart;
import lanewright.planner.document.LinePart;
import lanewright.planner.document.Plan;
import lanewright.planner.document.PlanException;
import lanewright.planner.document.PlanFile;
import lanewright.planner.document.ShapePart;
import lanewright.planner.document.Spot;
import lanewright.planner.document.StonePart;
import lanewright.survey.SurveyException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * One plan edited a thousand times, each answer against one that begins anew. Both begin with the
 * same survey and ground, which no edit here touches.
 */
@Execution(ExecutionMode.CONCURRENT)
class EditsTest {

    /** Edits and undos on each ground; a thousand take minutes. */
    private static final int EDITS = Integer.getInteger("lanewright.edits", 100);

    /** So many edits lie between two whole outcomes that are compared. */
    private static final int WHOLE = 50;

    private static final Path SAMPLES = Path.of("..", "..", "sample-surveys");

    @Test
    void editsAndUndosOfTheFirstSampleAreAnsweredAsIfFromTheStart() throws Exception {
        Path folder = SAMPLES.resolve("marrow-fold");
        compare(folder, start(folder, Files.readString(folder.resolve("plan.json"))), 1);
    }

    @Test
    void editsAndUndosOfTheSecondSampleAreAnsweredAsIfFromTheStart() throws Exception {
        Path folder = SAMPLES.resolve("wickle-bank");
        compare(folder, start(folder, Files.readString(folder.resolve("plan.json"))), 2);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Edits of a lane over lidar points, each as from the start, to the last bit"
                    + " | laspy simple.las; our own full run | read")
    void editsAndUndosOnLidarAreAnsweredAsIfFromTheStart() throws Exception {
        Path folder = Path.of("src", "test", "resources", "open-data");
        String plan =
                """
                {
                  "version": 1, "name": "Lane over lidar", "units": "us",
                  "survey": { "files": [ { "path": "lidar-sample.csv", "holds": "points", "unit": "ft" } ] },
                  "line": { "points": [
                    { "east": "636400 ft", "north": "850700 ft" },
                    { "east": "637100 ft", "north": "851500 ft", "radius": "250 ft" },
                    { "east": "637900 ft", "north": "851300 ft" } ] },
                  "grade": { "steepest": "20 %" },
                  "shapes": [ { "name": "lane", "layers": [
                    { "role": "surface", "thickness": "3 in" }, { "role": "base", "thickness": "6 in" } ] } ],
                  "along": [ { "from": "start", "to": "end", "shape": "lane" } ],
                  "stone": { "payload": "16 tons", "materials": [
                    { "role": "surface", "kind": "crushed surfacing, top course", "price": "25 per ton" },
                    { "role": "base", "kind": "crushed surfacing, base course" } ] },
                  "earth": { "topsoil": "6 in" }
                }
                """;
        compare(folder, start(folder, plan), 3);
    }

    /**
     * A plan with its first grade laid, and a stretch in the middle that has a shape of its own.
     */
    private static PlanFile start(Path folder, String text) throws Exception {
        PlanFile read = PlanFile.read("plan.json", text.getBytes(StandardCharsets.UTF_8));
        Draft laid = new Run(folder).draft(read, Progress.NONE);
        Plan plan = laid.plan();
        ShapePart lane = plan.shapes().get(0);
        ShapePart middle = Shapes.named(lane, "middle");
        double third = laid.design().length() / 3;
        double from = Math.rint(third);
        double to = Math.rint(2 * third);
        return read.with(
                plan.shaped(
                        List.of(lane, middle),
                        List.of(
                                new ShapePart.Along(0, from, lane.name()),
                                new ShapePart.Along(from, to, "middle"),
                                new ShapePart.Along(to, Double.POSITIVE_INFINITY, lane.name())),
                        plan.ditchBottoms()));
    }

    private static void compare(Path folder, PlanFile first, int seed) throws Exception {
        var run = new Run(folder);
        assertTrue(SameBits.doubles(run.draft(first, Progress.NONE)) > 10_000, "what is compared");
        var edits = new Edits(first, seed);
        int refused = 0;
        for (int i = 1; i <= EDITS; i++) {
            PlanFile next = edits.next();
            String what = "edit " + i + ", " + edits.kind;
            Run fresh = run.beside();
            Object ours = drafted(run, next);
            Object theirs = drafted(fresh, next);
            assertNull(SameBits.difference(ours, theirs), what);
            if (ours instanceof Draft our && theirs instanceof Draft their) {
                if (i % WHOLE == 0) {
                    assertNull(
                            SameBits.difference(
                                    run.settled(our, Progress.NONE),
                                    fresh.settled(their, Progress.NONE)),
                            () -> what + ", the whole outcome");
                }
            } else {
                refused++;
                edits.takeBack = true;
            }
        }
        assertTrue(refused > 0, "some edits are refused");
        assertTrue(refused < EDITS / 4, refused + " edits were refused");
        assertEquals(Edits.KINDS, edits.done, "kinds of edit that were made");
    }

    /** The draft, or the findings for which it is refused. */
    private static Object drafted(Run run, PlanFile file) throws SurveyException, PlanException {
        try {
            return run.draft(file, Progress.NONE);
        } catch (DesignRefused e) {
            return e.findings();
        }
    }

    @Test
    void aPriceEditComputesNoGeometry() throws Exception {
        Path folder = SAMPLES.resolve("marrow-fold");
        PlanFile first = start(folder, Files.readString(folder.resolve("plan.json")));
        var run = new Run(folder);
        run.outcome(first, Progress.NONE);
        Plan plan = first.plan();
        StonePart stone = plan.stone();
        PlanFile dearer = first.with(plan.with(Edits.priced(stone, 31.5, plan.units())));
        run.outcome(dearer, Progress.NONE);
        assertEquals(new Work(List.of("stone"), SectionWork.NONE), run.drafting());
        assertEquals(List.of(), run.settling().stages());
    }

    @Test
    void aRaisedVerticalPointCutsNoGroundLineAndLeavesFarSectionsAlone() throws Exception {
        Path folder = SAMPLES.resolve("marrow-fold");
        PlanFile first = start(folder, Files.readString(folder.resolve("plan.json")));
        var run = new Run(folder);
        Draft was = run.draft(first, Progress.NONE);
        int whole = run.drafting().sections().looks();
        List<GradePart.Point> points = new ArrayList<>(first.plan().grade().points());
        GradePart.Point point = points.get(1);
        points.set(1, new GradePart.Point(point.station(), point.height() + 0.2, point.curve()));
        PlanFile raised =
                first.with(first.plan().with(first.plan().grade().laid(points, List.of())));
        Draft is = run.draft(raised, Progress.NONE);
        SectionWork work = run.drafting().sections();
        assertEquals(0, work.lines(), "ground lines cut to stand or look at");
        assertTrue(work.sections() > 0);
        assertTrue(work.looks() < whole, work.looks() + " looks of " + whole);
        double end = points.size() == 3 ? Double.POSITIVE_INFINITY : points.get(2).station() + 30;
        Set<Section> before = these(was);
        for (Section section : is.sections().sections()) {
            if (section.station() > end) {
                assertTrue(
                        before.contains(section),
                        () -> "the section at " + section.station() + " is kept");
            }
        }
    }

    /** The very sections of a draft: one that is only equal is not among them. */
    private static Set<Section> these(Draft draft) {
        Set<Section> these = Collections.newSetFromMap(new IdentityHashMap<>());
        these.addAll(draft.sections().sections());
        return these;
    }

    @Test
    void aDitchEditOnOneStretchLeavesOtherStationsUntouched() throws Exception {
        Path folder = SAMPLES.resolve("marrow-fold");
        PlanFile first = start(folder, Files.readString(folder.resolve("plan.json")));
        var run = new Run(folder);
        Draft was = run.draft(first, Progress.NONE);
        Plan plan = first.plan();
        ShapePart.Along stretch = plan.along().get(1);
        ShapePart middle = Shapes.ditch(plan.shapes().get(1), 0.7);
        PlanFile deeper =
                first.with(
                        plan.shaped(
                                List.of(plan.shapes().get(0), middle),
                                plan.along(),
                                plan.ditchBottoms()));
        Draft is = run.draft(deeper, Progress.NONE);
        Set<Section> before = these(was);
        int inside = 0;
        int outside = 0;
        for (Section section : is.sections().sections()) {
            boolean kept = before.contains(section);
            if (section.station() < stretch.from() - 1e-6
                    || section.station() > stretch.to() + 10) {
                assertTrue(kept, () -> "the section at " + section.station() + " is kept");
                outside++;
            } else if (section.station() > stretch.from() + 1e-6
                    && section.station() < stretch.to() - 1e-6) {
                assertFalse(kept);
                inside++;
            }
        }
        assertTrue(inside > 3 && outside > 10, inside + " inside, " + outside + " outside");
        assertEquals(0, run.drafting().sections().lines());
        assertSame(was.topsoil(), is.topsoil());
    }

    /** One shape with something else about it. */
    private static final class Shapes {

        static ShapePart named(ShapePart s, String name) {
            return made(s, name, s.width(), s.crossSlope(), s.layers(), s.left());
        }

        static ShapePart width(ShapePart s, double width) {
            return made(s, s.name(), width, s.crossSlope(), s.layers(), s.left());
        }

        static ShapePart crossSlope(ShapePart s, double slope) {
            return made(s, s.name(), s.width(), slope, s.layers(), s.left());
        }

        static ShapePart layer(ShapePart s, double thickness) {
            List<ShapePart.Layer> layers = new ArrayList<>(s.layers());
            ShapePart.Layer top = layers.get(0);
            layers.set(0, new ShapePart.Layer(top.role(), thickness, top.edgeSlope(), top.width()));
            return made(s, s.name(), s.width(), s.crossSlope(), layers, s.left());
        }

        static ShapePart ditch(ShapePart s, double depth) {
            ShapePart.Side left = s.left();
            var deeper =
                    new ShapePart.Side(
                            left.shoulder(),
                            left.foreslope(),
                            left.ditch(),
                            depth,
                            left.ditchBottom(),
                            left.backslope(),
                            left.cutSlope());
            return made(s, s.name(), s.width(), s.crossSlope(), s.layers(), deeper);
        }

        private static ShapePart made(
                ShapePart s,
                String name,
                double width,
                double slope,
                List<ShapePart.Layer> layers,
                ShapePart.Side left) {
            return new ShapePart(
                    name,
                    width,
                    s.fall(),
                    slope,
                    s.bed(),
                    layers,
                    s.subgradeFall(),
                    left,
                    s.right(),
                    s.strip(),
                    s.topsoilBack(),
                    s.topsoilInDitch());
        }
    }

    /** Edits a plan at random, and takes edits back. */
    private static final class Edits {

        /** How many kinds of edit there are. */
        static final long KINDS = 14;

        private final SplittableRandom random;
        private final List<PlanFile> past = new ArrayList<>();
        private final Set<String> kinds = new TreeSet<>();
        private PlanFile now;
        private String kind = "";
        private long done;

        /** Whether the next is to take back the last, as one does when it is refused. */
        private boolean takeBack;

        Edits(PlanFile first, int seed) {
            this.random = new SplittableRandom(seed);
            this.now = first;
        }

        /** The plan after one more edit, or after one less. */
        PlanFile next() throws PlanException {
            if (!past.isEmpty() && (takeBack || random.nextInt(10) < 3)) {
                int back = takeBack ? 1 : Math.min(past.size(), 1 + random.nextInt(3));
                takeBack = false;
                for (int i = 0; i < back; i++) {
                    now = past.remove(past.size() - 1);
                }
                kind = "undo of " + back;
                return now;
            }
            Plan edited = edit(now.plan());
            kinds.add(kind);
            done = kinds.size();
            past.add(now);
            now = now.with(edited);
            return now;
        }

        private double about(double value, double by) {
            return value + by * (2 * random.nextDouble() - 1);
        }

        private Plan edit(Plan plan) {
            return switch (random.nextInt((int) KINDS)) {
                case 0 -> cornerMoved(plan);
                case 1 -> radius(plan);
                case 2 -> raised(plan);
                case 3 -> pushed(plan);
                case 4 -> curve(plan);
                case 5 -> {
                    kind = "ditch depth on one stretch";
                    yield middle(plan, s -> Shapes.ditch(s, 0.2 + random.nextDouble()));
                }
                case 6 -> {
                    kind = "layer thickness";
                    yield all(plan, s -> Shapes.layer(s, 0.04 + 0.2 * random.nextDouble()));
                }
                case 7 -> {
                    kind = "width";
                    yield all(plan, s -> Shapes.width(s, 2.5 + 3 * random.nextDouble()));
                }
                case 8 -> {
                    kind = "cross slope";
                    yield all(plan, s -> Shapes.crossSlope(s, 0.06 * random.nextDouble()));
                }
                case 9 -> {
                    kind = "price";
                    yield plan.with(priced(plan.stone(), 10 + random.nextInt(30), plan.units()));
                }
                case 10 -> {
                    kind = "payload";
                    yield plan.with(
                            new StonePart(
                                    plan.stone().loss(),
                                    5000 + random.nextInt(15_000),
                                    plan.stone().raisedBed(),
                                    plan.stone().materials(),
                                    plan.stone().fabric()));
                }
                case 11 -> topsoil(plan);
                case 12 -> ownBottom(plan);
                default -> {
                    kind = "width on one stretch";
                    yield middle(plan, s -> Shapes.width(s, 2.5 + 3 * random.nextDouble()));
                }
            };
        }

        private Plan cornerMoved(Plan plan) {
            kind = "intersection point";
            List<LinePart.Point> points = new ArrayList<>(plan.line().points());
            int i = random.nextInt(points.size());
            LinePart.Point point = points.get(i);
            Spot spot = point.spot();
            points.set(
                    i,
                    new LinePart.Point(
                            point.name(),
                            new Spot(about(spot.across(), 3), about(spot.up(), 3), spot.degrees()),
                            point.radius()));
            return plan.with(new LinePart(points));
        }

        private Plan radius(Plan plan) {
            kind = "radius";
            List<LinePart.Point> points = new ArrayList<>(plan.line().points());
            int i = 1 + random.nextInt(points.size() - 2);
            double radius = random.nextInt(8) == 0 ? 0 : 20 + 60 * random.nextDouble();
            LinePart.Point point = points.get(i);
            points.set(i, new LinePart.Point(point.name(), point.spot(), radius));
            return plan.with(new LinePart(points));
        }

        private Plan raised(Plan plan) {
            kind = "height of a vertical point";
            int i = random.nextInt(plan.grade().points().size());
            GradePart.Point at = plan.grade().points().get(i);
            return grade(plan, i, at.station(), about(at.height(), 0.6), at.curve());
        }

        private Plan pushed(Plan plan) {
            kind = "station of a vertical point";
            int i = inner(plan);
            GradePart.Point at = plan.grade().points().get(i);
            double station = i == 0 ? at.station() : Math.max(0, about(at.station(), 8));
            return grade(plan, i, station, at.height(), at.curve());
        }

        private Plan curve(Plan plan) {
            kind = "length of a vertical curve";
            int i = inner(plan);
            GradePart.Point at = plan.grade().points().get(i);
            return grade(plan, i, at.station(), at.height(), 40 * random.nextDouble());
        }

        private int inner(Plan plan) {
            int points = plan.grade().points().size();
            return points < 3 ? 0 : 1 + random.nextInt(points - 2);
        }

        private static Plan grade(Plan plan, int i, double station, double height, double curve) {
            List<GradePart.Point> points = new ArrayList<>(plan.grade().points());
            points.set(i, new GradePart.Point(station, height, curve));
            return plan.with(plan.grade().laid(points, plan.grade().reasons()));
        }

        private static Plan middle(Plan plan, UnaryOperator<ShapePart> edit) {
            return shaped(plan, 1, edit);
        }

        private static Plan shaped(Plan plan, int i, UnaryOperator<ShapePart> edit) {
            List<ShapePart> shapes = new ArrayList<>(plan.shapes());
            shapes.set(i, edit.apply(shapes.get(i)));
            return plan.shaped(shapes, plan.along(), plan.ditchBottoms());
        }

        private static Plan all(Plan plan, UnaryOperator<ShapePart> edit) {
            return shaped(plan, 0, edit);
        }

        /** A ditch bottom of its own over part of the middle, or none any more. */
        private Plan ownBottom(Plan plan) {
            kind = "ditch bottom of its own";
            if (!plan.ditchBottoms().isEmpty() && random.nextInt(4) == 0) {
                return plan.shaped(plan.shapes(), plan.along(), List.of());
            }
            ShapePart.Along stretch = plan.along().get(1);
            double length = stretch.to() - stretch.from();
            double from = stretch.from() + length * 0.3 * random.nextDouble();
            double to = stretch.to() - length * 0.3 * random.nextDouble();
            return plan.shaped(
                    plan.shapes(),
                    plan.along(),
                    List.of(
                            new ShapePart.OwnDitch(
                                    random.nextBoolean()
                                            ? ShapePart.Hand.LEFT
                                            : ShapePart.Hand.RIGHT,
                                    from,
                                    to,
                                    lane(plan, from) - 0.4 - 0.5 * random.nextDouble(),
                                    lane(plan, to) - 0.4 - 0.5 * random.nextDouble())));
        }

        /** About how high the lane is at a station, m. */
        private static double lane(Plan plan, double station) {
            List<GradePart.Point> points = plan.grade().points();
            for (int i = 1; i < points.size(); i++) {
                GradePart.Point a = points.get(i - 1);
                GradePart.Point b = points.get(i);
                if (station <= b.station() && b.station() > a.station()) {
                    double share = (station - a.station()) / (b.station() - a.station());
                    return a.height() + share * (b.height() - a.height());
                }
            }
            return points.get(points.size() - 1).height();
        }

        private Plan topsoil(Plan plan) {
            kind = "depth of topsoil";
            EarthPart earth = plan.earth();
            return plan.with(
                    new EarthPart(
                            EarthPart.Depth.EVERYWHERE,
                            0.3 * random.nextDouble(),
                            earth.bearing(),
                            earth.bearingDepth(),
                            earth.soil(),
                            earth.washes(),
                            earth.lift()));
        }

        static StonePart priced(StonePart stone, double price, UnitSystem units) {
            List<StonePart.Material> materials = new ArrayList<>(stone.materials());
            StonePart.Material first = materials.get(0);
            materials.set(
                    0,
                    new StonePart.Material(
                            first.role(),
                            first.density(),
                            first.kind(),
                            first.loose(),
                            first.gradation(),
                            new Price(
                                    price,
                                    units == UnitSystem.US ? "ton" : "t",
                                    Kind.MASS,
                                    units == UnitSystem.US ? 907.18474 : 1000),
                            first.inHand()));
            return new StonePart(
                    stone.loss(), stone.payload(), stone.raisedBed(), materials, stone.fabric());
        }
    }
}
