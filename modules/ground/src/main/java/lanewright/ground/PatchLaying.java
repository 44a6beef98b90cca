package lanewright.ground;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Progress;

/**
 * Lays patches into a ground; lives for one call.
 *
 * <p>Each rim is drawn into the facets, which splits them and changes no height. What then lies
 * inside is left out, and the patch put in its place; its outer triangles are cut wherever its rim
 * was split, so that both sides of a rim share every vertex.
 */
final class PatchLaying {

    private final Ground old;
    private final List<Patch> patches;
    private final Progress progress;
    private final List<Patched.Refusal> refused = new ArrayList<>();

    PatchLaying(Ground old, List<Patch> patches, Progress progress) {
        this.old = old;
        this.patches = List.copyOf(patches);
        this.progress = progress;
    }

    Patched lay() {
        progress.report(0, "laying the lane into the ground");
        List<Integer> kept = new ArrayList<>();
        for (int i = 0; i < patches.size(); i++) {
            kept.add(i);
        }
        while (true) {
            progress.check();
            PatchDrawing attempt = new PatchDrawing(old, patches, kept, progress);
            if (attempt.failed < 0) {
                progress.report(1, "lane laid into the ground");
                return new PatchAssembly(attempt, old, progress).patched(refused);
            }
            refused.add(new Patched.Refusal(attempt.failed, attempt.failedX, attempt.failedY));
            kept.remove((Integer) attempt.failed);
        }
    }
}
