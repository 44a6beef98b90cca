package lanewright.lane.surface;

import java.util.ArrayList;
import java.util.List;
import lanewright.ground.Ground;
import lanewright.ground.Patch;
import lanewright.ground.Patched;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Progress;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import org.jspecify.annotations.Nullable;

/**
 * The land as it will be: the ground as it is outside the catch lines, the finished surface inside,
 * as one conforming triangulation. Triangles share their vertices along the catch lines, no two
 * vertices lie at one place, and outside the facets keep their heights. Immutable.
 *
 * <p>Steps lean over, so that there is one height at every place: ends of the lane and vertical
 * edges of stone by a millimetre, jumps of its shape by two centimetres. A side that does not meet
 * the ground ends in such a step at its hinge. Where the ground ends under the lane, or the lane
 * runs into itself, the ground stays as it is, with a finding.
 */
public final class CompositeSurface {

    private final Patched patched;
    private final SurfacePart[] parts;
    private final List<Finding> findings;

    private CompositeSurface(Patched patched, SurfacePart[] parts, List<Finding> findings) {
        this.patched = patched;
        this.parts = parts;
        this.findings = List.copyOf(findings);
    }

    /**
     * Joins a built surface with its ground.
     *
     * @param built the lane
     * @param progress told of the work, and asked whether to go on
     */
    public static CompositeSurface of(BuiltSurface built, Progress progress) {
        return new Joining(built, progress).join();
    }

    /** The land as it will be, with all that a ground can be asked. */
    public Ground ground() {
        return patched.ground();
    }

    /** What triangle {@code t} is part of, or null if it is ground as it was. */
    public @Nullable SurfacePart part(int t) {
        int origin = patched.origin(t);
        return origin < 0 ? null : parts[origin];
    }

    /**
     * The triangle of the ground as it is that triangle {@code t} is, unchanged; -1 if the lane
     * made or cut it. Never decreasing from one unchanged triangle to the next.
     */
    public int unchanged(int t) {
        return patched.untouched(t);
    }

    /** What is wrong or worth a look. */
    public List<Finding> findings() {
        return findings;
    }

    /** Lays stretch after stretch; lives for one call. */
    private static final class Joining {

        /** So often is a stretch tried with one ray less before it is cut in two. */
        private static final int TRIES = 12;

        /** So often is all of it tried. */
        private static final int MOST_TRIES = 40;

        /** A piece of lane no longer than this may be missing unsaid, m. Our choice. */
        private static final double SHORT = 0.05;

        private final BuiltSurface built;
        private final Progress progress;
        private final List<Finding> findings = new ArrayList<>();
        private double reached;

        Joining(BuiltSurface built, Progress progress) {
            this.built = built;
            this.progress = progress;
        }

        CompositeSurface join() {
            List<List<Ray>> stretches = stretches();
            for (int tries = 1; ; tries++) {
                progress.check();
                List<Patch> patches = new ArrayList<>();
                List<SurfacePart> parts = new ArrayList<>();
                for (List<Ray> stretch : stretches) {
                    PatchMaker.Made made = new PatchMaker().make(stretch);
                    patches.add(made.patch());
                    parts.addAll(made.parts());
                }
                Patched patched = built.ground().with(patches, progress);
                if (patched.refused().isEmpty() || tries == MOST_TRIES) {
                    say(stretches, patched.refused());
                    return new CompositeSurface(
                            patched, parts.toArray(new SurfacePart[0]), findings);
                }
                stretches = eased(stretches, patched.refused(), tries);
            }
        }

        /** Stretches of rays that have ground under both their ends. */
        private List<List<Ray>> stretches() {
            List<List<Ray>> stretches = new ArrayList<>();
            List<Ray> rays = built.rays();
            int from = 0;
            for (int i = 0; i <= rays.size(); i++) {
                if (i == rays.size() || !stands(rays.get(i), true) || !stands(rays.get(i), false)) {
                    keep(rays.subList(from, i), stretches);
                    from = i + 1;
                }
            }
            return stretches;
        }

        private boolean stands(Ray ray, boolean right) {
            double out = PatchMaker.rimOut(ray.flank(right));
            return built.ground().triangleAt(ray.x(right, out), ray.y(right, out)) >= 0;
        }

        private static void keep(List<Ray> rays, List<List<Ray>> stretches) {
            int last = rays.size() - 1;
            if (last > 0 && rays.get(last).station() - rays.get(0).station() > 3 * Thinning.LEAST) {
                stretches.add(Thinning.of(rays));
            }
        }

        /**
         * Leaves out the ray at which a stretch failed; cuts it in two there if that did not help.
         */
        private List<List<Ray>> eased(
                List<List<Ray>> stretches, List<Patched.Refusal> refused, int tries) {
            List<List<Ray>> next = new ArrayList<>();
            for (int i = 0; i < stretches.size(); i++) {
                List<Ray> rays = stretches.get(i);
                Patched.Refusal refusal = of(refused, i);
                if (refusal == null) {
                    next.add(rays);
                    continue;
                }
                int at = nearest(rays, refusal.x(), refusal.y());
                if (tries % TRIES != 0 && rays.size() > 3) {
                    List<Ray> fewer = new ArrayList<>(rays);
                    fewer.remove(at);
                    next.add(fewer);
                } else {
                    keep(rays.subList(0, at), next);
                    keep(rays.subList(Math.min(at + 1, rays.size()), rays.size()), next);
                }
            }
            return next;
        }

        private static Patched.@Nullable Refusal of(List<Patched.Refusal> refused, int patch) {
            return refused.stream().filter(r -> r.patch() == patch).findFirst().orElse(null);
        }

        /** The ray that runs closest by a place, the first and the last left out. */
        private static int nearest(List<Ray> rays, double x, double y) {
            int nearest = 1;
            double least = Double.POSITIVE_INFINITY;
            for (int i = 1; i + 1 < rays.size(); i++) {
                Ray ray = rays.get(i);
                double px = x - ray.x();
                double py = y - ray.y();
                double scale = ray.dx() * ray.dx() + ray.dy() * ray.dy();
                double at = (px * ray.dx() + py * ray.dy()) / scale;
                double most = PatchMaker.rimOut(ray.flank(at > 0));
                double out = Math.max(-most, Math.min(most, at));
                double ex = px - out * ray.dx();
                double ey = py - out * ray.dy();
                if (ex * ex + ey * ey < least) {
                    least = ex * ex + ey * ey;
                    nearest = i;
                }
            }
            return nearest;
        }

        private void say(List<List<Ray>> stretches, List<Patched.Refusal> refused) {
            for (int i = 0; i < stretches.size(); i++) {
                List<Ray> rays = stretches.get(i);
                if (of(refused, i) == null) {
                    notLaid(reached, rays.get(0).station());
                    reached = rays.get(rays.size() - 1).station();
                }
            }
            notLaid(reached, built.design().length());
        }

        private void notLaid(double from, double to) {
            if (to - from <= SHORT) {
                return;
            }
            findings.add(
                    Finding.of(
                            "lane-not-joined",
                            Level.LOOK,
                            Topic.WATER,
                            Where.stretch(from, to),
                            Saying.of(
                                    "From {} to {} the lane's sides run into another part of the"
                                            + " lane or out of the survey: low spots are looked"
                                            + " for there on the ground as it is.",
                                    Quantity.station(from),
                                    Quantity.station(to)),
                            Saying.plain(
                                    "Keep the lane further from itself, or survey further out.")));
        }
    }
}
