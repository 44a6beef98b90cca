package lanewright.lane.surface;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lanewright.ground.VertexField;
import lanewright.lane.shape.Layer;
import lanewright.measure.Progress;
import org.jspecify.annotations.Nullable;

/**
 * Volumes between the built surface and the ground, exact for their triangles: no section, no
 * averaging, no curve correction. What sections give tends to these figures as they stand closer.
 * Over the whole lane finished − ground = stone + fill + topsoil back − cut − strip, all m³.
 *
 * <p>Where a side is not built (its ground ends, or it folds) only its stone is counted.
 *
 * @param strip topsoil taken off inside the limits of work, bank
 * @param cut stripped ground above the subgrade, bank
 * @param fill subgrade above stripped ground, compacted, edge refill included
 * @param edgeRefill the part of fill on slopes whose finished surface is at or below the old ground
 * @param topsoilBack topsoil put back on slopes and in the margin
 * @param undercut earth under stone and shoulders down to soil that bears, bank; zero where that is
 *     not known
 * @param layers stone by role, compacted, in the order in which the roles first appear
 * @param disturbed area inside the limits of work, m² in plan
 * @param uncovered area of it under which there is no ground, m²: no earth is counted there
 */
public record TrueSolid(
        double strip,
        double cut,
        double fill,
        double edgeRefill,
        double topsoilBack,
        double undercut,
        List<LayerVolume> layers,
        double disturbed,
        double uncovered) {

    /** Copies the list. */
    public TrueSolid {
        layers = List.copyOf(layers);
    }

    /**
     * Stone of one role.
     *
     * @param role as in the typical sections
     * @param volume compacted, m³
     */
    public record LayerVolume(String role, double volume) {}

    /** Compacted volume of all stone, m³. */
    public double stone() {
        double sum = 0;
        for (LayerVolume layer : layers) {
            sum += layer.volume();
        }
        return sum;
    }

    /**
     * Measures a built surface against the ground it stands on.
     *
     * @param built the surface
     * @param topsoil depth of topsoil on that ground, m
     * @param bearing depth to soil that bears on that ground, m, NaN where not known; null if
     *     nowhere known
     * @param progress told of the work, and asked whether to go on
     */
    public static TrueSolid of(
            BuiltSurface built,
            VertexField topsoil,
            @Nullable VertexField bearing,
            Progress progress) {
        progress.report(0, "measuring the true solid");
        Measuring measuring =
                new Measuring(new Overlay(built.ground(), topsoil, bearing), progress);
        Strips.visit(built.rays(), measuring);
        progress.report(1, "true solid measured");
        return measuring.solid();
    }

    /** Adds strip after strip; lives for one call. */
    private static final class Measuring implements Strips.Visitor {
        private final Overlay overlay;
        private final Progress progress;
        private final Map<String, Double> stone = new LinkedHashMap<>();
        private double soil;

        Measuring(Overlay overlay, Progress progress) {
            this.overlay = overlay;
            this.progress = progress;
        }

        TrueSolid solid() {
            List<LayerVolume> layers = new ArrayList<>();
            stone.forEach((role, volume) -> layers.add(new LayerVolume(role, volume)));
            return new TrueSolid(
                    overlay.strip,
                    overlay.cut,
                    overlay.fill,
                    overlay.edgeRefill,
                    soil + overlay.marginSoil,
                    overlay.undercut,
                    layers,
                    overlay.area,
                    overlay.uncovered);
        }

        @Override
        public void piece(Ray a, Ray b, boolean right, int strip) {
            if (strip == 0 && right) {
                progress.check();
            }
            Flank flank = a.flank(right);
            boolean earth = flank.isClosed();
            overlay.under(flank.part(strip), a.lane().typical().strip());
            if (Strips.splitsOutward(a, b, right, strip)) {
                triangle(a, strip, false, a, true, b, true, right, earth);
                triangle(a, strip, false, b, true, b, false, right, earth);
            } else {
                triangle(a, strip, false, a, true, b, false, right, earth);
                triangle(a, strip, true, b, true, b, false, right, earth);
            }
        }

        private void triangle(
                Ray p,
                int strip,
                boolean pOuter,
                Ray q,
                boolean qOuter,
                Ray r,
                boolean rOuter,
                boolean right,
                boolean earth) {
            double area =
                    Math.abs(
                                    twiceArea(
                                            p,
                                            at(p, right, strip, pOuter),
                                            q,
                                            at(q, right, strip, qOuter),
                                            r,
                                            at(r, right, strip, rOuter),
                                            right))
                            / 2;
            if (area == 0) {
                return;
            }
            List<Layer> layers = p.lane().typical().layers();
            for (int i = 0; i < layers.size(); i++) {
                double thickness =
                        p.flank(right).stone(strip, i, pOuter)
                                + q.flank(right).stone(strip, i, qOuter)
                                + r.flank(right).stone(strip, i, rOuter);
                stone.merge(layers.get(i).role(), area * thickness / 3, Double::sum);
            }
            if (!earth) {
                return;
            }
            soil +=
                    area
                            / 3
                            * (p.flank(right).soil(strip, pOuter)
                                    + q.flank(right).soil(strip, qOuter)
                                    + r.flank(right).soil(strip, rOuter));
            corner(0, p, right, strip, pOuter);
            corner(1, q, right, strip, qOuter);
            corner(2, r, right, strip, rOuter);
            overlay.add();
        }

        private static double at(Ray ray, boolean right, int strip, boolean outer) {
            return ray.flank(right).out(outer ? strip + 1 : strip);
        }

        private static double twiceArea(
                Ray p, double atP, Ray q, double atQ, Ray r, double atR, boolean right) {
            double x = p.x(right, atP);
            double y = p.y(right, atP);
            return (q.x(right, atQ) - x) * (r.y(right, atR) - y)
                    - (q.y(right, atQ) - y) * (r.x(right, atR) - x);
        }

        private void corner(int k, Ray ray, boolean right, int strip, boolean outer) {
            Flank flank = ray.flank(right);
            double out = at(ray, right, strip, outer);
            overlay.corner(
                    k,
                    ray.x(right, out),
                    ray.y(right, out),
                    flank.finished(strip, outer),
                    flank.earth(strip, outer));
        }

        @Override
        public void margin(Ray a, Ray b, boolean right) {
            overlay.under(SurfacePart.MARGIN, a.lane().typical().strip());
            Flank fa = a.flank(right);
            Flank fb = b.flank(right);
            edge(0, a, right, fa.catchOut());
            edge(1, a, right, fa.limit());
            edge(2, b, right, fb.limit());
            overlay.add();
            edge(0, a, right, fa.catchOut());
            edge(1, b, right, fb.limit());
            edge(2, b, right, fb.catchOut());
            overlay.add();
        }

        private void edge(int k, Ray ray, boolean right, double out) {
            overlay.corner(k, ray.x(right, out), ray.y(right, out), 0, 0);
        }
    }
}
