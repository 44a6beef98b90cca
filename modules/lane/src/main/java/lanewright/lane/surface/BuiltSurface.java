package lanewright.lane.surface;

import java.util.ArrayList;
import java.util.List;
import lanewright.ground.Ground;
import lanewright.lane.shape.LaneDesign;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Progress;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;

/**
 * The lane as built: finished surface and subgrade as triangles, from the alignment out to catch
 * lines that are found here, against the triangles of the ground, and nowhere else. Immutable.
 *
 * <p>Strings (alignment, edges, feet of stone, hinges, ditch bottoms, catch lines) run straight
 * from ray to ray; rays stand so close that they are within 1 mm of the true arc or parabola, and
 * within 1 mm in height of the ground along a catch line. A change of the kind of side is found to
 * 1 mm along the lane.
 *
 * <p>Not built: a side whose ground ends before it is met, beyond the hinge; nor a side that would
 * reach past the centre of its curve, which is a finding.
 */
public final class BuiltSurface {

    private final LaneDesign design;
    private final Ground ground;
    private final List<Ray> rays;
    private final List<Finding> findings;

    private BuiltSurface(LaneDesign design, Ground ground, List<Ray> rays, List<Finding> findings) {
        this.design = design;
        this.ground = ground;
        this.rays = List.copyOf(rays);
        this.findings = List.copyOf(findings);
    }

    /**
     * Builds the surface of a lane on a ground.
     *
     * @param design the lane
     * @param ground the ground as it is
     * @param progress told of the work, and asked whether to go on
     */
    public static BuiltSurface of(LaneDesign design, Ground ground, Progress progress) {
        progress.report(0, "shaping the built surface");
        List<Ray> rays = new RayMarch(design, ground, progress).march();
        progress.report(1, "built surface shaped");
        return new BuiltSurface(design, ground, rays, folds(rays));
    }

    private static List<Finding> folds(List<Ray> rays) {
        List<Finding> findings = new ArrayList<>();
        for (boolean right : new boolean[] {false, true}) {
            int from = -1;
            for (int i = 0; i <= rays.size(); i++) {
                boolean folded =
                        i < rays.size() && rays.get(i).flank(right).kind() == Flank.Kind.FOLDED;
                if (folded && from < 0) {
                    from = i;
                } else if (!folded && from >= 0) {
                    findings.add(fold(rays.get(from), rays.get(i - 1), right));
                    from = -1;
                }
            }
        }
        return findings;
    }

    private static Finding fold(Ray from, Ray to, boolean right) {
        return Finding.of(
                "side-folds",
                Level.STOP,
                Topic.LINE,
                Where.stretch(from.station(), to.station()),
                Saying.of(
                        "The "
                                + (right ? "right" : "left")
                                + " side from {} to {} reaches past the centre of the curve before"
                                + " it meets the ground; its earth is not in the true solid there.",
                        Quantity.station(from.station()),
                        Quantity.station(to.station())),
                Saying.plain("Give the curve a longer radius, or the side a steeper slope."));
    }

    /** The lane that was built. */
    public LaneDesign design() {
        return design;
    }

    /** The ground it was built on. */
    public Ground ground() {
        return ground;
    }

    /** What is wrong or worth a look. */
    public List<Finding> findings() {
        return findings;
    }

    List<Ray> rays() {
        return rays;
    }

    /** The finished surface. */
    public Skin finished() {
        return skin(true);
    }

    /** The earth as shaped. */
    public Skin subgrade() {
        return skin(false);
    }

    /**
     * A catch line, from ray to ray: x, y, z of each catch point, m. One line for each stretch of
     * rays that meet the ground.
     *
     * @param right which side
     */
    public List<double[]> catchLine(boolean right) {
        List<double[]> lines = new ArrayList<>();
        List<double[]> points = new ArrayList<>();
        for (Ray ray : rays) {
            Flank flank = ray.flank(right);
            if (flank.isClosed()) {
                double out = flank.catchOut();
                points.add(
                        new double[] {ray.x(right, out), ray.y(right, out), flank.catchHeight()});
            } else if (!points.isEmpty()) {
                lines.add(flat(points));
                points.clear();
            }
        }
        if (!points.isEmpty()) {
            lines.add(flat(points));
        }
        return lines;
    }

    private static double[] flat(List<double[]> points) {
        double[] flat = new double[3 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            System.arraycopy(points.get(i), 0, flat, 3 * i, 3);
        }
        return flat;
    }

    private Skin skin(boolean finished) {
        Skin.Builder skin = new Skin.Builder();
        Strips.visit(
                rays,
                new Strips.Visitor() {
                    @Override
                    public void piece(Ray a, Ray b, boolean right, int strip) {
                        addPiece(skin, a, b, right, strip, finished);
                    }

                    @Override
                    public void margin(Ray a, Ray b, boolean right) {
                        // the ground stays as it was beyond the catch point
                    }
                });
        return skin.build();
    }

    private static void addPiece(
            Skin.Builder skin, Ray a, Ray b, boolean right, int strip, boolean finished) {
        int aIn = vertex(skin, a, right, strip, false, finished);
        int bIn = vertex(skin, b, right, strip, false, finished);
        int aOut = vertex(skin, a, right, strip, true, finished);
        int bOut = vertex(skin, b, right, strip, true, finished);
        SurfacePart part = a.flank(right).part(strip);
        if (Strips.splitsOutward(a, b, right, strip)) {
            add(skin, aIn, aOut, bOut, right, part, width(a, right, strip));
            add(skin, aIn, bOut, bIn, right, part, width(b, right, strip));
        } else {
            add(skin, aIn, aOut, bIn, right, part, width(a, right, strip));
            add(skin, aOut, bOut, bIn, right, part, width(b, right, strip));
        }
    }

    private static double width(Ray ray, boolean right, int strip) {
        return ray.flank(right).out(strip + 1) - ray.flank(right).out(strip);
    }

    private static int vertex(
            Skin.Builder skin, Ray ray, boolean right, int strip, boolean outer, boolean finished) {
        Flank flank = ray.flank(right);
        double out = flank.out(outer ? strip + 1 : strip);
        double z = finished ? flank.finished(strip, outer) : flank.earth(strip, outer);
        return skin.vertex(ray.x(right, out), ray.y(right, out), z);
    }

    /** Adds a triangle that is counter-clockwise on the right side, unless it has no width. */
    private static void add(
            Skin.Builder skin, int a, int b, int c, boolean right, SurfacePart part, double width) {
        if (width > 0) {
            skin.triangle(a, right ? b : c, right ? c : b, part);
        }
    }
}
