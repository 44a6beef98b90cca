package lanewright.ground;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lanewright.measure.Progress;

/** Tries to draw the rims of some patches into facets, and finds what lies inside them. */
final class PatchDrawing {

    /** So many triangles are gone through between two questions whether to go on. */
    static final int OFTEN = 1 << 16;

    private final Ground old;
    private final Progress progress;
    private final List<Patch> patches;
    final Facets facets;
    final BitSet onRim = new BitSet();

    /** Directed sides of the rims, the patch on their left; the value is the patch. */
    final Map<Long, Integer> rims = new HashMap<>();

    final BitSet inside = new BitSet();
    final List<LaidPatch> laid = new ArrayList<>();
    int failed = Mesh.NONE;
    double failedX;
    double failedY;

    PatchDrawing(Ground old, List<Patch> patches, List<Integer> which, Progress progress) {
        this.old = old;
        this.progress = progress;
        this.patches = patches;
        facets = new Facets(old.mesh());
        for (int i : which) {
            progress.check();
            if (!draw(i)) {
                failed = i;
                return;
            }
        }
        clear();
        for (int i = 0; failed < 0 && i < laid.size(); i++) {
            if (!laid.get(i).cutTriangles()) {
                failed = laid.get(i).number;
                failedX = laid.get(i).failedX;
                failedY = laid.get(i).failedY;
            }
        }
    }

    private boolean draw(int number) {
        Patch patch = patches.get(number);
        LaidPatch made = new LaidPatch(facets, patch, number);
        int start = old.triangleAt(patch.x[patch.rim[0]], patch.y[patch.rim[0]]);
        failedX = patch.x[patch.rim[0]];
        failedY = patch.y[patch.rim[0]];
        if (start < 0) {
            return false;
        }
        RimWalk walk = new RimWalk(facets, start);
        int count = patch.rim.length;
        int first = walk.begin(patch.x[patch.rim[0]], patch.y[patch.rim[0]]);
        made.vertex[patch.rim[0]] = first;
        int from = first;
        for (int i = 1; i <= count; i++) {
            int v = patch.rim[i % count];
            failedX = patch.x[v];
            failedY = patch.y[v];
            List<Integer> passed =
                    i < count
                            ? walk.drawTo(patch.x[v], patch.y[v])
                            : walk.drawTo(facets.x(first), facets.y(first));
            if (passed == null || (i == count && !ends(passed, from, first))) {
                return false;
            }
            int to = passed.isEmpty() ? from : passed.get(passed.size() - 1);
            made.vertex[v] = to;
            made.between.put(key(from, to), passed);
            if (!claim(from, passed, number)) {
                return false;
            }
            from = to;
        }
        laid.add(made);
        return true;
    }

    private boolean ends(List<Integer> passed, int from, int first) {
        return passed.isEmpty() ? from == first : passed.get(passed.size() - 1) == first;
    }

    /** Takes the sides along a line for a rim; false if a rim runs there already. */
    private boolean claim(int from, List<Integer> passed, int number) {
        int a = from;
        onRim.set(a);
        for (int b : passed) {
            if (rims.containsKey(key(b, a)) || rims.put(key(a, b), number) != null) {
                return false;
            }
            onRim.set(b);
            a = b;
        }
        return true;
    }

    /** Finds what lies inside the rims. */
    private void clear() {
        BitSet walls = new BitSet();
        BitSet outside = new BitSet();
        int[] stack = new int[256];
        int depth = 0;
        Set<Long> found = new HashSet<>();
        boolean[] rim = new boolean[facets.vertices()];
        onRim.stream().forEach(v -> rim[v] = true);
        for (int t = 0; t < facets.triangles(); t++) {
            if (t % OFTEN == 0) {
                progress.check();
            }
            if (!sideOnRim(t, rim)) {
                continue;
            }
            for (int k = 0; k < 3; k++) {
                int a = facets.corner(t, Mesh.next(k));
                int b = facets.corner(t, Mesh.last(k));
                if (rims.containsKey(key(a, b))) {
                    walls.set(3 * t + k);
                    found.add(key(a, b));
                    if (!inside.get(t)) {
                        inside.set(t);
                        stack = push(stack, depth++, t);
                    }
                } else if (rims.containsKey(key(b, a))) {
                    walls.set(3 * t + k);
                    outside.set(t);
                }
            }
        }
        if (found.size() != rims.size()) {
            failedAt(
                    rims.keySet().stream()
                            .filter(side -> !found.contains(side))
                            .min(Long::compare)
                            .orElseThrow());
            return;
        }
        while (depth > 0) {
            int t = stack[--depth];
            for (int k = 0; k < 3; k++) {
                int other = facets.neighbour(t, k);
                if (!walls.get(3 * t + k) && other != Mesh.NONE && !inside.get(other)) {
                    inside.set(other);
                    stack = push(stack, depth++, other);
                }
            }
        }
        outside.and(inside);
        int both = outside.nextSetBit(0);
        for (int k = 0; both >= 0 && k < 3; k++) {
            int a = facets.corner(both, Mesh.next(k));
            int b = facets.corner(both, Mesh.last(k));
            if (rims.containsKey(key(b, a))) {
                failedAt(key(b, a));
            }
        }
    }

    /** Whether two corners of a triangle lie on a rim: hardly any do. */
    private boolean sideOnRim(int t, boolean[] rim) {
        boolean first = rim[facets.corner(t, 0)];
        boolean second = rim[facets.corner(t, 1)];
        return (first && second) || ((first || second) && rim[facets.corner(t, 2)]);
    }

    /** The patch failed to whose rim a side belongs, a side that was cut or goes round wrongly. */
    private void failedAt(long side) {
        failed = rims.getOrDefault(side, 0);
        failedX = facets.x((int) (side >> 32));
        failedY = facets.y((int) (side >> 32));
    }

    private int[] push(int[] stack, int depth, int t) {
        int[] room = depth == stack.length ? Arrays.copyOf(stack, 2 * depth) : stack;
        room[depth] = t;
        return room;
    }

    static long key(int a, int b) {
        return ((long) a << 32) | b;
    }
}
