package lanewright.ground;

import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;

/**
 * Finds triangles that are flat because all their corners lie on contours of one height. Between
 * contours that is not ground but a want of shots: hilltops, hollows, ridges and draws come out cut
 * off. They are told, not mended.
 */
final class Flats {

    /** Worth a word above this share of the ground. Our choice. */
    private static final double SHARE = 0.02;

    private Flats() {}

    static void tell(Mesh mesh, List<Finding> findings) {
        double flat = 0;
        double all = 0;
        double largest = 0;
        int where = 0;
        int count = 0;
        for (int t = 0; t < mesh.solid; t++) {
            double area = mesh.twiceArea(t) / 2;
            all += area;
            double z = mesh.z[mesh.corner[3 * t]];
            if (mesh.z[mesh.corner[3 * t + 1]] == z && mesh.z[mesh.corner[3 * t + 2]] == z) {
                flat += area;
                count++;
                if (area > largest) {
                    largest = area;
                    where = t;
                }
            }
        }
        if (flat > SHARE * all) {
            findings.add(
                    new Finding(
                            "contour-flats",
                            Level.LOOK,
                            Topic.GROUND,
                            Where.map(mesh.middleX(where), mesh.middleY(where)),
                            Saying.of(
                                    "{} of the ground, {} triangles, is flat only because all three corners lie on contours of one height; the largest is here",
                                    Quantity.share(flat / all),
                                    Quantity.count(count)),
                            Quantity.share(flat / all),
                            Quantity.share(SHARE),
                            "our choice",
                            Saying.plain(
                                    "Add spot heights on hilltops, in hollows and along ridges and draws; low spots there are not to be trusted")));
        }
    }
}
