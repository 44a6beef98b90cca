package lanewright.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.survey.Probe;

/**
 * A depth below the ground, known at probe holes and weighted by inverse distance squared between
 * them (D. Shepard, A two-dimensional interpolation function for irregularly-spaced data, ACM
 * National Conference 1968, with exponent 2): always between the least and the greatest depth that
 * was met, so never negative.
 *
 * <p>A hole that only says "more than" is a lower bound: where the other holes already give more
 * there it says nothing new and is left out; where they give less, its bound is used and a finding
 * says so.
 *
 * <p>Topsoil is stripped everywhere, so beyond the reach of the holes its depth is still given, as
 * the guess that it is. Earth that does not bear is dug out only where it was met, so beyond their
 * reach the depth to bearing soil is not known.
 */
public final class DepthField {

    /**
     * Further from any hole than this the depth is a guess, m. Our choice: about what one field
     * differs by.
     */
    public static final double REACH = 30;

    /** A vertex this near to a hole takes its depth, m. */
    private static final double AT_HOLE = 0.002;

    private final VertexField field;
    private final List<Probe> holes;
    private final List<Finding> findings;

    private DepthField(VertexField field, List<Probe> holes, List<Finding> findings) {
        this.field = field;
        this.holes = List.copyOf(holes);
        this.findings = List.copyOf(findings);
    }

    /**
     * Topsoil depth from probe holes.
     *
     * @throws IllegalArgumentException if no hole says anything of topsoil
     */
    public static DepthField topsoil(Ground ground, List<Probe> probes) {
        DepthField made =
                of(
                        ground,
                        probes,
                        Probe::topsoil,
                        Probe::topsoilAtLeast,
                        "topsoil",
                        Double.POSITIVE_INFINITY);
        if (made.holes.isEmpty()) {
            throw new IllegalArgumentException("no probe hole says how deep the topsoil is");
        }
        return made;
    }

    /**
     * Depth to soil that bears from probe holes; not known (NaN) at vertices farther than {@link
     * #REACH} from every hole that says.
     */
    public static DepthField bearing(Ground ground, List<Probe> probes) {
        return of(ground, probes, Probe::bearing, Probe::bearingAtLeast, "bearing", REACH);
    }

    private static DepthField of(
            Ground ground,
            List<Probe> probes,
            ToDoubleFunction<Probe> depth,
            Predicate<Probe> atLeast,
            String what,
            double reach) {
        List<Probe> exact = new ArrayList<>();
        List<Probe> bounds = new ArrayList<>();
        for (Probe probe : probes) {
            if (!Double.isNaN(depth.applyAsDouble(probe))) {
                (atLeast.test(probe) ? bounds : exact).add(probe);
            }
        }
        List<Finding> findings = new ArrayList<>();
        List<Probe> used = new ArrayList<>(exact);
        for (Probe bound : bounds) {
            double others = exact.isEmpty() ? 0 : weighted(exact, depth, bound.x(), bound.y());
            double least = depth.applyAsDouble(bound);
            if (others < least) {
                used.add(bound);
            }
            findings.add(atLeastFinding(bound, what, least, others < least));
        }
        double[] values = new double[ground.vertexCount()];
        for (int v = 0; v < values.length; v++) {
            double x = ground.x(v);
            double y = ground.y(v);
            boolean known = !used.isEmpty() && nearest(used, x, y) <= reach;
            values[v] = known ? weighted(used, depth, x, y) : Double.NaN;
        }
        return new DepthField(ground.field(values), used, findings);
    }

    private static Finding atLeastFinding(Probe probe, String what, double least, boolean used) {
        return new Finding(
                used ? what + "-at-least" : "hole-not-through",
                used ? Level.LOOK : Level.NOTE,
                Topic.GROUND,
                Where.map(probe.x(), probe.y()),
                Saying.of(
                        "Hole "
                                + probe.name()
                                + (what.equals("topsoil")
                                        ? " ended in topsoil, {} down: "
                                        : " met no soil firm enough to bear, down to {}: ")
                                + (used
                                        ? "that depth is used there, and the truth is more."
                                        : "the holes round it say that it goes deeper, and those"
                                                + " are used."),
                        Quantity.depth(least)),
                null,
                null,
                "",
                Saying.plain(
                        used
                                ? "Dig deeper at that hole before ordering: until then every amount"
                                        + " that rests on it is at least so much."
                                : "Nothing to do, unless you want to be surer."));
    }

    private static double weighted(
            List<Probe> probes, ToDoubleFunction<Probe> depth, double x, double y) {
        double weights = 0;
        double sum = 0;
        for (Probe probe : probes) {
            double dx = probe.x() - x;
            double dy = probe.y() - y;
            double squared = dx * dx + dy * dy;
            if (squared <= AT_HOLE * AT_HOLE) {
                return depth.applyAsDouble(probe);
            }
            weights += 1 / squared;
            sum += depth.applyAsDouble(probe) / squared;
        }
        return sum / weights;
    }

    /** The depth at the ground's vertices, m, linear on its triangles. */
    public VertexField field() {
        return field;
    }

    /** The holes that it rests on. */
    public List<Probe> holes() {
        return holes;
    }

    /** Distance to the nearest hole that it rests on, m; infinite without any. */
    public double nearestHole(double x, double y) {
        return nearest(holes, x, y);
    }

    private static double nearest(List<Probe> holes, double x, double y) {
        double nearest = Double.POSITIVE_INFINITY;
        for (Probe hole : holes) {
            double dx = hole.x() - x;
            double dy = hole.y() - y;
            nearest = Math.min(nearest, Math.sqrt(dx * dx + dy * dy));
        }
        return nearest;
    }

    /** What is worth a look. */
    public List<Finding> findings() {
        return findings;
    }
}
