package lanewright.drainage.culvert;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Every sold size over slopes, tailwaters and flows: curves rise, and water is kept. */
class SweepTest {

    private static final double[] SLOPES = {0, 0.002, 0.01, 0.03, 0.1};
    private static final double[] TAILWATERS = {0, 0.3, 1.2};

    @Test
    void headwaterRisesWithFlowForEverySoldSize() {
        for (Material material : Material.values()) {
            for (Size size : Size.sold(material)) {
                Inlet inlet = Inlet.of(size.barrel(), Inlet.End.PROJECTING);
                for (double slope : SLOPES) {
                    for (double tailwater : TAILWATERS) {
                        Culvert culvert = new Culvert(size.barrel(), inlet, 10, slope, 1);
                        rises(size.name() + " " + material, culvert, tailwater);
                    }
                }
            }
        }
    }

    private static void rises(String name, Culvert culvert, double tailwater) {
        Performance curve = new Performance(culvert, tailwater);
        double last = curve.depth(0);
        for (double flow = 0.001; flow < 12; flow *= 1.5) {
            double depth = curve.depth(flow);
            String where =
                    name + ", slope " + culvert.slope() + ", tail " + tailwater + ", " + flow;
            assertTrue(depth >= last - 1e-4, where + ": " + last + " then " + depth);
            assertTrue(Double.isFinite(depth), where);
            last = depth;
        }
    }

    @Test
    void waterThroughAndOverIsTheStormForEverySoldSize() {
        Overtopping crest = new Overtopping(List.of(0.0, 12.0, 30.0), List.of(2.6, 2.3, 2.8), 1.5);
        for (Material material : Material.values()) {
            for (Size size : Size.sold(material)) {
                Inlet inlet = Inlet.of(size.barrel(), Inlet.End.HEADWALL);
                for (double slope : SLOPES) {
                    Culvert culvert = new Culvert(size.barrel(), inlet, 10, slope, 1);
                    for (double storm = 0.05; storm < 20; storm *= 6) {
                        double last = -1;
                        for (Blocked.Share share : Blocked.Share.values()) {
                            Blocked found =
                                    Blocked.of(
                                            culvert,
                                            0.2,
                                            crest,
                                            Double.POSITIVE_INFINITY,
                                            storm,
                                            share);
                            assertEquals(storm, found.through() + found.over(), 1e-9);
                            assertEquals(crest.discharge(found.headwater()), found.over(), 1e-6);
                            assertTrue(found.over() >= last - 1e-9, size + " " + found);
                            last = found.over();
                        }
                    }
                }
            }
        }
    }
}
