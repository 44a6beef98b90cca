package lanewright.planner.pipes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.channel.ChannelShape;
import lanewright.drainage.culvert.Barrel;
import lanewright.drainage.culvert.Circle;
import lanewright.drainage.culvert.Material;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What is built at the ends of a pipe, and where its barrel ends. */
class EndWorksTest {

    private static final double FOOT = 0.3048;

    /** A metre wide outside. */
    private static final Laid ROUND =
            new Laid(new Barrel(Material.CONCRETE, new Circle(0.9), 0.012, 0.05), 1, true);

    @Test
    @Tag("outside")
    @DisplayName(
            "a catch basin: a pit with sides of 1:1 and six inches of stone on them | prismoid by"
                    + " its integral, worked by hand | derived")
    void aBasinIsATruncatedPyramid() {
        EndWorks.Basin basin = EndWorks.Basin.of(0.3, ROUND);
        // A metre of pipe and a foot on each side; b²d + 2bd² + 4/3 d³ of room.
        assertEquals(1.6096, basin.bottom(), 1e-9);
        double room = 0.777243 + 0.289728 + 0.036;
        // Bottom, and four sides 1.9096 wide on average and 0.424264 up the slope.
        double stone = (2.590812 + 4 * 0.810175) * 0.1524;
        assertEquals(stone, basin.stone(), 1e-5);
        assertEquals(room + stone, basin.dug(), 1e-5);
        assertEquals(3 * FOOT, EndWorks.Basin.of(0.1, small()).bottom(), 1e-9, "three feet least");
    }

    private static Laid small() {
        return new Laid(new Barrel(Material.CONCRETE, new Circle(0.2), 0.012, 0.02), 1, true);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "a dam across a ditch, a foot on top and faces of 2:1 | its crest and twice two times"
                    + " the integral of the ditch's area over its depth, worked by hand | derived")
    void aDamFillsTheDitchWithItsFaces() {
        EndWorks.Dam dam = EndWorks.Dam.of(0.4, new ChannelShape(0.3, 2, 1.5));
        double crest = 0.3048 * (0.3 * 0.4 + 1.75 * 0.16);
        double faces = 4 * (0.3 * 0.16 / 2 + 1.75 * 0.064 / 3);
        assertEquals(crest + faces, dam.stone(), 1e-12);
        assertEquals(0.367253, dam.stone(), 1e-6);
    }

    @Test
    @Tag("outside")
    @DisplayName("two headwalls on their footings | boxes less a cylinder, by hand | derived")
    void headwallsAreBoxesWithAPipeThrough() {
        // 2 ft over a bore of 1.5 ft; 19 in outside; the slope turns around 3 ft at each end.
        Laid laid =
                new Laid(
                        new Barrel(Material.METAL, new Circle(1.5 * FOOT), 0.024, 0.5 / 12 * FOOT),
                        1,
                        true);
        EndWorks.Walls walls = EndWorks.Walls.of(2 * FOOT, laid);
        double length = 19.0 / 12 + 6;
        assertEquals(length, walls.length() / FOOT, 1e-9);
        double footings = 2 * length * 2 * 1;
        double through = Math.PI / 4 * 19 * 19 / 144;
        double wall = 2 * (length * 2 - through) * 8 / 12;
        assertEquals(footings, walls.dug() / Math.pow(FOOT, 3), 1e-9);
        assertEquals(footings + wall, walls.concrete() / Math.pow(FOOT, 3), 1e-9);
    }

    /** A lane 4 m wide, 2 m over the inlet, foreslopes of 3:1, a barrel that falls 2 %. */
    private static PipeWay fill() {
        double plan = (2 + 10 / 3.0) / (1 / 3.0 - 0.02);
        List<PipeWay.Stand> stands = new ArrayList<>();
        double[][] corners = {{0, 100}, {6, 102}, {10, 102}, {plan, 100 - 0.02 * plan}};
        for (int i = 0; i < corners.length; i++) {
            double height = corners[i][1];
            boolean driven = i == 1 || i == 2;
            stands.add(
                    new PipeWay.Stand(
                            corners[i][0], 50, 0, height, height, height, height, driven));
        }
        return new PipeWay(stands, plan, 100, 0.02);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "a barrel between headwalls ends where each foreslope meets the top of its wall |"
                    + " crossing of two straight lines, worked by hand | derived")
    void headwallsShortenTheBarrel() {
        PipeWay way = fill();
        double slant = Math.sqrt(1 + 0.02 * 0.02);
        double feet = way.plan() * slant;
        PipeLength length = PipeLength.walled(feet, way, 2.5 * FOOT, FOOT);
        // Going in from the inlet the slope rises 1/3 and the invert falls 0.02: they part faster.
        double in = 0.762 / (1 / 3.0 + 0.02);
        double out = 0.762 / (1 / 3.0 - 0.02);
        assertEquals(2.156604, in, 1e-6);
        assertEquals(2.431915, out, 1e-6);
        assertEquals(-in * slant, length.atInlet(), 1e-9);
        assertEquals(-out * slant, length.atOutlet(), 1e-9);
        // 17.021 m from foot to foot: 12.433 m between the walls, 40.79 ft, 41 ft to order.
        assertEquals((17.021277 - in - out) * slant, length.wanted(), 1e-5);
        assertEquals(length.wanted(), length.walls(), 1e-12);
        assertEquals(41, length.ordered() / FOOT, 1e-9);
        assertEquals(41 * FOOT - length.wanted(), length.waste(), 1e-9);
    }

    @Test
    void aWallThatWouldStandUnderTheLaneStandsAtTheFoot() {
        PipeLength length = PipeLength.walled(17, fill(), 2.3, FOOT);
        assertEquals(0, length.atInlet(), 0);
        assertEquals(17, length.wanted(), 0);
    }
}
