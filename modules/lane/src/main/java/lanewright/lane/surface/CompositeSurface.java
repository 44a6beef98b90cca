package lanewright.lane.surface;

import java.util.ArrayList;
import java.util.Arrays;
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
 * <p>Steps (ends of the lane, jumps of its shape, vertical edges of stone) lean over by a
 * millimetre, so that there is one height at every place. Where a side does not meet the ground, or
 * the lane runs into itself, the ground stays as it is, with a finding.
 */
public final class CompositeSurface {

    /** So often is a stretch that cannot be laid halved before it is left out. */
    private static final int MOST_ATTEMPTS = 16;

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

    /** What is wrong or worth a look. */
    public List<Finding> findings() {
        return findings;
    }

    /** Lays stretch after stretch; lives for one call. */
    private static final class Joining {
        private final BuiltSurface built;
        private final Progress progress;
        private final List<Finding> findings = new ArrayList<>();

        Joining(BuiltSurface built, Progress progress) {
            this.built = built;
            this.progress = progress;
        }

        CompositeSurface join() {
            List<List<Ray>> stretches = stretches();
            int attempts = 0;
            while (true) {
                progress.check();
                List<Patch> patches = new ArrayList<>();
                List<SurfacePart> parts = new ArrayList<>();
                for (List<Ray> stretch : stretches) {
                    PatchMaker.Made made = new PatchMaker().make(stretch);
                    patches.add(made.patch());
                    parts.addAll(Arrays.asList(made.parts()));
                }
                Patched patched = built.ground().with(patches, progress);
                if (patched.refused().isEmpty() || attempts == MOST_ATTEMPTS) {
                    for (int i : patched.refused()) {
                        leftOut(stretches.get(i));
                    }
                    return new CompositeSurface(
                            patched, parts.toArray(new SurfacePart[0]), findings);
                }
                attempts++;
                stretches = halved(stretches, patched.refused());
            }
        }

        /** Stretches of rays that meet the ground on both sides. */
        private List<List<Ray>> stretches() {
            List<List<Ray>> stretches = new ArrayList<>();
            List<Ray> rays = built.rays();
            int from = 0;
            for (int i = 0; i <= rays.size(); i++) {
                boolean open =
                        i == rays.size()
                                || !rays.get(i).left().isClosed()
                                || !rays.get(i).right().isClosed();
                if (open) {
                    keep(rays.subList(from, i), stretches);
                    from = i + 1;
                }
            }
            return stretches;
        }

        private void keep(List<Ray> rays, List<List<Ray>> stretches) {
            double length =
                    rays.isEmpty()
                            ? 0
                            : rays.get(rays.size() - 1).station() - rays.get(0).station();
            if (length > 5 * PatchMaker.LEAN) {
                stretches.add(rays);
            } else if (length > 0) {
                leftOut(rays);
            }
        }

        private List<List<Ray>> halved(List<List<Ray>> stretches, List<Integer> refused) {
            List<List<Ray>> next = new ArrayList<>();
            for (int i = 0; i < stretches.size(); i++) {
                List<Ray> rays = stretches.get(i);
                if (!refused.contains(i)) {
                    next.add(rays);
                } else if (rays.size() < 6) {
                    leftOut(rays);
                } else {
                    int half = rays.size() / 2;
                    keep(rays.subList(0, half), next);
                    keep(rays.subList(half, rays.size()), next);
                }
            }
            return next;
        }

        private void leftOut(List<Ray> rays) {
            double from = rays.get(0).station();
            double to = rays.get(rays.size() - 1).station();
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
