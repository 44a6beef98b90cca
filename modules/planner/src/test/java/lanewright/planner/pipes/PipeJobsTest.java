package lanewright.planner.pipes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import lanewright.drainage.Crossing;
import lanewright.drainage.Overflow;
import lanewright.drainage.Pool;
import lanewright.drainage.along.Side;
import lanewright.drainage.culvert.Inlet;
import lanewright.drainage.storm.StormReport;
import lanewright.measure.Listing;
import lanewright.measure.Progress;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.PlanFile;
import lanewright.planner.listing.PipeListings;
import lanewright.planner.listing.StormListings;
import lanewright.planner.run.Outcome;
import lanewright.planner.run.Run;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The pipe of a sample as it is bought, dug in and built. */
class PipeJobsTest {

    private static final double FOOT = 0.3048;
    private static final double YARD3 = Math.pow(0.9144, 3);
    private static final Path AT = Path.of("..", "..", "sample-surveys", "marrow-fold");

    private static Run run;
    private static String text;
    private static Outcome outcome;
    private static PipeJob job;

    @BeforeAll
    static void plan() throws Exception {
        text = Files.readString(AT.resolve("plan-with-pipe.json"));
        run = new Run(AT);
        outcome = of(text);
        job = outcome.pipes().get(0);
    }

    private static Outcome of(String plan) throws Exception {
        byte[] bytes = plan.getBytes(StandardCharsets.UTF_8);
        return run.outcome(PlanFile.read("plan.json", bytes), Progress.NONE);
    }

    private static String all(Listing listing) {
        return listing.rows().stream()
                .flatMap(List::stream)
                .map(cell -> cell.in(UnitSystem.US))
                .collect(Collectors.joining(" | "));
    }

    private static CostLine line(CostLine.What what) {
        return job.of(what).orElseThrow();
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "bed, riprap, fabric and money of a pipe | HEC-14, 2006, section 10.2, apron classes,"
                    + " and plane geometry, worked by hand | derived")
    void whatIsBoughtIsPlaneGeometry() {
        // 31.6 ft from foot to foot and 6 in beyond each, up to an even number of feet.
        assertEquals(34, job.length().ordered() / FOOT, 1e-9);
        // 18 in of 2 2/3 by 1/2 in corrugations, 16 gauge: 19.128 in outside; 12 in of room beside.
        double width = (19.128 + 24) / 12;
        assertEquals(width, job.trench().width() / FOOT, 1e-6);
        double bed = width * 0.5 * 34;
        assertEquals(bed / 27, job.trench().bedding() / YARD3, bed / 27 * 1e-4);
        // Stone of 5 in: 4 D long, 3.5 D50 deep, 3 D wide at the pipe and 3 D + 2/3 L at the end.
        double area = 6 * (4.5 + 8.5) / 2;
        assertEquals(39, area, 1e-9);
        double rock = area * 17.5 / 12 / 27;
        String riprap = line(CostLine.What.RIPRAP).amount().in(UnitSystem.US);
        assertTrue(riprap.startsWith("2.1 yd³"), riprap);
        assertEquals(34 * 23.50, line(CostLine.What.BARREL).money(), 1e-6);
        assertEquals(bed / 27 * 3700 / 2000 * 24, line(CostLine.What.BEDDING).money(), 0.02);
        assertEquals(rock * 2900 / 2000 * 38, line(CostLine.What.RIPRAP).money(), 0.01);
        assertEquals(area / 9 * 1.80, line(CostLine.What.FABRIC).money(), 0.01);
        assertEquals(
                34 * 23.50
                        + bed / 27 * 3700 / 2000 * 24
                        + rock * 2900 / 2000 * 38
                        + area / 9 * 1.80,
                job.money(),
                0.05);
    }

    @Test
    void whereThePipeTakesNothingItsWaterGoesWhereThePoolRanOverWithoutIt() throws Exception {
        Outcome dammed =
                run.outcome(
                        PlanFile.read("plan.json", Files.readAllBytes(AT.resolve("plan.json"))),
                        Progress.NONE);
        Pool pool =
                dammed.water().after().stream()
                        .max(Comparator.comparingDouble(each -> each.spot().volume()))
                        .orElseThrow();
        Crossing crossing = outcome.water().crossings().get(0);
        Overflow way = crossing.overflow();
        assertEquals(pool.spill().way(), way.spill().way());
        // The pool is measured on triangles, the way out on cells; the lane is the same in both.
        double level = crossing.line().inlet().height() + way.depth();
        assertEquals(pool.spot().level(), level, 0.05);
        assertEquals(pool.spill().station(), way.spill().station(), 3);
    }

    @Test
    void theTableOfBlockedInletsSaysOverWhichGroundWaterGoes() {
        Crossing lane = outcome.water().crossings().get(0);
        var ground = new Pool.Spill(Pool.SpillWay.BESIDE, 60.96, Side.LEFT);
        var crossing =
                new Crossing(
                        lane.name(),
                        lane.line(),
                        lane.diameter(),
                        lane.material(),
                        lane.toLay(),
                        lane.raise(),
                        lane.drained(),
                        lane.isLeast(),
                        lane.way(),
                        lane.crestStations(),
                        lane.crestHeights(),
                        lane.tailwater(),
                        lane.ends(),
                        new Overflow(0.9, ground));
        StormReport storm = StormReport.of(outcome.storm().asked(), List.of(crossing), List.of());
        String told = all(StormListings.blocked(storm));
        // 0.9 m is 2.95 ft, 60.96 m is 200 ft.
        assertTrue(told.contains("wholly blocked | 3 ft | 0 ft³/s"), told);
        assertTrue(told.contains("on over the ground on the left at 2+00"), told);
        assertFalse(told.contains("over the lane"), told);
    }

    @Test
    void withoutAPriceTheQuantityStandsAndNoMoneyIsSaid() throws Exception {
        Outcome bare =
                of(
                        text.replaceAll("(?s)\"pipeWork\": \\{.*?\\},\\s*\"rain\"", "\"rain\"")
                                .replace("\"material\": \"metal\",", ""));
        PipeJob other = bare.pipes().get(0);
        assertTrue(Double.isNaN(other.money()));
        assertFalse(other.hasPrice());
        assertTrue(all(PipeListings.work(bare.pipes())).contains("no price given"));
        assertEquals(job.trench(), other.trench());
        assertFalse(other.laid().stated());
    }

    @Test
    void whileTrucksBuildThereIsTooLittleOverItAndTheRemedyIsSaid() {
        assertFalse(job.finished().isThin());
        assertTrue(job.building().isThin());
        String remedy =
                outcome.findings().stream()
                        .filter(finding -> finding.code().equals("pipe-cover-building"))
                        .map(finding -> finding.remedy().in(UnitSystem.US))
                        .findFirst()
                        .orElseThrow();
        assertTrue(remedy.contains("packed earth over it"), remedy);
    }

    @Test
    void theOrderOfWorkAndTheListOfNeedsHaveIt() {
        String ways =
                outcome.order().stream()
                        .filter(step -> step.name().equals("water-ways"))
                        .flatMap(step -> step.amounts().stream())
                        .map(each -> each.in(UnitSystem.US))
                        .collect(Collectors.joining(" | "));
        assertTrue(ways.contains("draw pipe, riprap at the outlet"), ways);
        String also =
                PipeListings.also(outcome.pipes(), " dollars").stream()
                        .flatMap(List::stream)
                        .map(cell -> cell.in(UnitSystem.US))
                        .collect(Collectors.joining(" | "));
        assertTrue(also.contains("Filter fabric under the riprap"), also);
        assertTrue(also.contains("799.00 dollars"), also);
        String stone =
                outcome.answers().stream()
                        .map(answer -> answer.says().in(UnitSystem.US))
                        .filter(says -> says.contains("Besides, a pipe"))
                        .findFirst()
                        .orElse("");
        assertTrue(stone.endsWith("with stone: 1,023.34 dollars."), stone);
    }

    private static PipeJob ends(String ends, String more) throws Exception {
        return of(text.replace(
                                "\"state\": \"to lay\",",
                                "\"state\": \"to lay\", \"ends\": \"" + ends + "\",")
                        .replace("\"axle\": \"10 tons\",", "\"axle\": \"10 tons\"," + more))
                .pipes()
                .get(0);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "headwater of a pipe cut to the slope or in headwalls | FHWA HDS-5, 2001, inlet"
                    + " control, charts 2 scale 1 and 2, Ke of table 12 and friction 29 n² L / R^1.33"
                    + " of the shorter barrel, worked anew | read")
    void theEndsOfAPipeChangeTheWaterBeforeIt() throws Exception {
        PipeJob mitred = ends("mitred", "");
        PipeJob walled = ends("headwall", "");
        assertEquals(Inlet.End.PROJECTING, job.ends(), "said by nobody");
        double cfs = job.sized().peak().discharge() / Math.pow(FOOT, 3);
        double full = Math.PI * 1.5 * 1.5 / 4;
        double per = cfs / (full * Math.sqrt(1.5));
        // Below 3.5 water at the inlet is not submerged: critical head and K (Q / A D^0.5)^M.
        assertTrue(per < 3.5, "Q / A D^0.5 is " + per);
        double slope = job.line().grade();
        double critical = criticalHead(cfs, 1.5);
        double mitredFeet = critical + 1.5 * (0.0210 * Math.pow(per, 1.33) + 0.7 * slope);
        double walledFeet = critical + 1.5 * (0.0078 * Math.pow(per, 2.00) - 0.5 * slope);
        assertEquals(mitredFeet, mitred.headwater().byInlet() / FOOT, 0.002);
        assertEquals(walledFeet, walled.headwater().byInlet() / FOOT, 0.002);
        // Outlet control: losses at the entrance are Ke of the velocity head.
        double head = Math.pow(cfs / full, 2) / (2 * 32.174);
        assertEquals(
                (0.9 - 0.7) * head,
                (job.headwater().byOutlet().head() - mitred.headwater().byOutlet().head()) / FOOT,
                1e-3);
        // Between headwalls the barrel is shorter: 29 n² L / R^1.33 of that head less.
        double shorter = -(walled.length().atInlet() + walled.length().atOutlet()) / FOOT;
        double friction = 29 * 0.024 * 0.024 * shorter / Math.pow(1.5 / 4, 1.33);
        assertEquals(
                (0.9 - 0.5 + friction) * head,
                (job.headwater().byOutlet().head() - walled.headwater().byOutlet().head()) / FOOT,
                1e-3);
    }

    /** Specific head of critical flow in a pipe, feet, by bisection. */
    private static double criticalHead(double cfs, double d) {
        double low = 1e-6;
        double high = d - 1e-9;
        double area = 0;
        for (int i = 0; i < 200; i++) {
            double y = (low + high) / 2;
            double angle = 2 * Math.acos(1 - 2 * y / d);
            area = d * d / 8 * (angle - Math.sin(angle));
            double top = 2 * Math.sqrt(y * (d - y));
            if (cfs * cfs * top > 32.174 * area * area * area) {
                low = y;
            } else {
                high = y;
            }
        }
        return low + cfs * cfs / (area * area * 2 * 32.174);
    }

    @Test
    void theEndsOfAPipeChangeItsLengthAndWhatIsBought() throws Exception {
        PipeJob mitred = ends("mitred", "");
        assertEquals(mitred.line().length(), mitred.length().wanted(), 1e-12);
        assertEquals(32, mitred.length().ordered() / FOOT, 1e-9, "31.6 ft from foot to foot");
        assertEquals(32 - mitred.line().length() / FOOT, mitred.length().waste() / FOOT, 1e-9);
        assertEquals(0, mitred.length().after(), 1e-12);
        assertTrue(mitred.trench().bedding() < job.trench().bedding());
        PipeJob unpaid = ends("headwall", "");
        assertTrue(Double.isNaN(unpaid.money()), "a headwall without a price");
        PipeJob paid = ends("headwall", "\"headwallPrice\": \"450.00 per piece\",");
        assertEquals(900, paid.of(CostLine.What.ENDS).orElseThrow().money(), 1e-9);
        assertEquals(1.5 + 1, paid.wall() / FOOT, 1e-9);
        // Slopes of 3:1 come down to the top of a wall 2.5 ft high 7.5 ft inside their feet; the
        // pipe lies a little askew and falls, so a little more and less than that.
        assertEquals(-7.5, paid.length().atInlet() / FOOT, 0.8);
        assertEquals(-7.5, paid.length().atOutlet() / FOOT, 0.8);
        assertTrue(paid.length().ordered() < mitred.length().ordered());
        assertEquals(0, paid.length().after() - paid.length().atOutlet(), 1e-12);
        assertTrue(all(PipeListings.schedule(List.of(paid))).contains("headwalls"));
    }

    private static Outcome sideHill() throws Exception {
        Path at = Path.of("..", "..", "sample-surveys", "wickle-bank");
        String plan =
                Files.readString(at.resolve("plan.json"))
                        .replace(
                                "\"water\": {",
                                "\"water\": { \"pipeWork\": { \"soldBy\": \"1 m\", \"prices\": ["
                                        + " { \"size\": \"12 in\", \"price\": \"30.00 per m\" } ] },");
        byte[] bytes = plan.getBytes(StandardCharsets.UTF_8);
        return new Run(at).outcome(PlanFile.read("plan.json", bytes), Progress.NONE);
    }

    @Test
    void aReliefCulvertIsOfferedWithItsMoneyAndNotBought() throws Exception {
        Outcome side = sideHill();
        List<PipeJob> reliefs =
                side.pipes().stream().filter(each -> each.need() == PipeJob.Need.RELIEF).toList();
        assertFalse(reliefs.isEmpty());
        for (PipeJob each : reliefs) {
            assertFalse(each.planned());
            assertFalse(each.finished().isThin(), each.name());
            assertTrue(each.headwater().depth() <= each.sized().allowed(), each.name());
            CostLine barrel = each.of(CostLine.What.BARREL).orElseThrow();
            double metres = Math.ceil(each.line().length() + 2 * each.length().atInlet());
            assertEquals(30 * each.laid().count() * metres, barrel.money(), 1e-6);
        }
        assertTrue(
                PipeListings.also(side.pipes(), " dollars").isEmpty(), "a proposal is not bought");
        List<List<String>> ends = ReliefWorkTest.ends(side);
        for (PipeJob each : reliefs) {
            assertEquals(
                    2, ends.stream().filter(row -> row.get(0).startsWith(each.name())).count());
        }
        assertTrue(
                side.findings().stream().anyMatch(each -> each.code().equals("relief-size")),
                "and says its sizes");
        assertEquals(
                side.storm().reliefs().size(), StormListings.reliefs(side.storm()).rows().size());
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "a pipe that is offered once the lane is raised lies under the raised lane from foot to"
                    + " foot | plane geometry of two foreslopes moved up | derived")
    void aPipeThatFitsOnceTheLaneIsRaisedIsMeasuredThere() throws Exception {
        Outcome side = sideHill();
        List<PipeJob> raised =
                side.pipes().stream().filter(each -> each.first().raise() > 0).toList();
        assertFalse(raised.isEmpty());
        for (PipeJob each : raised) {
            double raise = each.first().raise();
            PipeWay now =
                    PipeWay.of(
                            side.sections(),
                            side.ground(),
                            side.topsoil(),
                            each.line(),
                            0,
                            each.length().after());
            for (PipeWay.Stand stand : each.way().stands()) {
                for (PipeWay.Stand old : now.stands()) {
                    if (old.along() == stand.along() && old.driven()) {
                        assertEquals(old.finished() + raise, stand.finished(), 1e-9);
                        assertEquals(old.subgrade() + raise, stand.subgrade(), 1e-9);
                    }
                }
                if (Math.abs(stand.along()) < 1e-9) {
                    // The raised slope comes down to the bottom of the inlet, in a ditch perhaps to
                    // the foot of its other bank.
                    double over = stand.finished() - each.line().inlet().height();
                    assertTrue(over > -0.01 && over < 0.1, each.name() + ": " + over);
                }
            }
            assertFalse(each.planned());
            assertFalse(each.finished().isThin(), each.name());
            assertTrue(each.headwater().depth() <= each.allowed(), each.name());
            assertTrue(each.of(CostLine.What.BEDDING).isPresent());
            String told = all(PipeListings.schedule(List.of(each)));
            assertTrue(told.contains("offered once the lane is"), told);
            assertTrue(
                    ReliefWorkTest.ends(side).stream()
                            .filter(row -> row.get(0).startsWith(each.name() + ", "))
                            .allMatch(row -> row.get(1).startsWith("offered, once the lane is")));
        }
        assertTrue(
                PipeListings.also(side.pipes(), " dollars").isEmpty(), "nothing of it is bought");
    }

    @Test
    void theOwnersTailwaterBacksWaterUp() throws Exception {
        Outcome deep =
                of(
                        text.replace(
                                "\"state\": \"to lay\",",
                                "\"state\": \"to lay\", \"tailwater\": \"20 in\","));
        PipeJob other = deep.pipes().get(0);
        assertEquals(Crossing.Tailwater.From.OWNER, other.sized().tailwater().from());
        assertEquals(20 * 0.0254, other.sized().tail(), 1e-9);
        assertTrue(other.headwater().depth() > job.headwater().depth());
    }

    @Test
    void waterBelowItsInletStaysAndIsToldAsAPond() throws Exception {
        Outcome high = of(text.replace("\"invert\": \"402.95 ft\"", "\"invert\": \"403.45 ft\""));
        var place =
                high.water().places().stream()
                        .filter(each -> each.name().equals("W2"))
                        .findFirst()
                        .orElseThrow();
        assertEquals(0.5, place.depth() / FOOT, 0.02);
        assertTrue(place.volume() > 0 && place.isServed());
    }
}
