package lanewright.lane.surface;

import java.util.ArrayList;
import java.util.List;

/**
 * Sets rays further apart where they crowd, so that triangles between them are not too thin to be
 * joined with the ground: rays of the same shape are left out, and two that stand before and behind
 * a jump are moved apart, each with its shape. Nothing moves by more than a few centimetres.
 */
final class Thinning {

    /** Least distance between rays, m. */
    static final double LEAST = 0.02;

    private final List<Ray> kept = new ArrayList<>();

    private Thinning() {}

    /** The rays, thinned; the first and the last stay where they are. */
    static List<Ray> of(List<Ray> rays) {
        Thinning thinning = new Thinning();
        for (Ray ray : rays) {
            thinning.take(ray);
        }
        thinning.end(rays.get(rays.size() - 1));
        return thinning.kept;
    }

    private void take(Ray ray) {
        if (kept.isEmpty()) {
            kept.add(ray);
            return;
        }
        Ray last = kept.get(kept.size() - 1);
        double apart = ray.station() - last.station();
        if (apart >= LEAST) {
            kept.add(ray);
        } else if (!last.leadsTo(ray)) {
            double back = room() >= 2 * LEAST ? (LEAST - apart) / 2 : 0;
            kept.set(kept.size() - 1, moved(last, -back));
            kept.add(moved(ray, LEAST - apart - back));
        }
    }

    /** How far the last ray stands from the one before it, m; none for the first. */
    private double room() {
        int n = kept.size();
        return n < 2 ? 0 : kept.get(n - 1).station() - kept.get(n - 2).station();
    }

    private static Ray moved(Ray ray, double by) {
        double scale = Math.sqrt(ray.dx() * ray.dx() + ray.dy() * ray.dy());
        return new Ray(
                ray.station() + by,
                ray.x() - ray.dy() / scale * by,
                ray.y() + ray.dx() / scale * by,
                ray.dx(),
                ray.dy(),
                ray.lane(),
                ray.left(),
                ray.right());
    }

    private void end(Ray last) {
        while (kept.size() > 1 && kept.get(kept.size() - 1).station() > last.station() - LEAST) {
            kept.remove(kept.size() - 1);
        }
        kept.add(last);
    }
}
