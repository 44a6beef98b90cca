package lanewright.ground;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import lanewright.measure.Progress;

/**
 * Puts old facets and patches together into one mesh. Vertices keep the numbers that they had, also
 * those that are left without a triangle; triangles of ground keep their order. So nearly all of it
 * is copied by the run, and few triangles are looked at one by one.
 */
final class PatchAssembly {
    private final PatchDrawing from;
    private final Ground old;
    private final Progress progress;
    private final Facets facets;
    private final int[] place;
    private double[] x = new double[0];
    private double[] y = new double[0];
    private double[] z = new double[0];
    private int[] corner = new int[0];
    private int[] neighbour = new int[0];
    private final BitSet breaks = new BitSet();
    private int[] origins = new int[0];
    private int[] untouched = new int[0];
    private int vertices;
    private int solid;

    /** Sides that had no neighbour before patches and ground were joined, in their order. */
    private int[] open = new int[1024];

    private int opened;

    PatchAssembly(PatchDrawing from, Ground old, Progress progress) {
        this.old = old;
        this.progress = progress;
        this.from = from;
        this.facets = from.facets;
        place = new int[facets.triangles()];
        vertices = facets.vertices();
    }

    Patched patched(List<Patched.Refusal> refused) {
        int voids = number();
        progress.check();
        takeOld(0, solid);
        takeLines();
        progress.check();
        int at = solid;
        int first = 0;
        for (LaidPatch laid : from.laid) {
            at = take(laid, at, first);
            first += laid.patch.triangleCount();
        }
        for (int side = 3 * solid; side < 3 * at; side++) {
            open(side);
        }
        takeOld(at, origins.length);
        progress.check();
        join();
        progress.check();
        compare();
        Mesh mesh =
                new Mesh(
                        Arrays.copyOf(x, vertices),
                        Arrays.copyOf(y, vertices),
                        Arrays.copyOf(z, vertices),
                        corner,
                        neighbour,
                        origins.length - voids,
                        breaks);
        return new Patched(
                new Ground(mesh, new BitSet(), old.findings(), hull()),
                origins,
                untouched,
                refused);
    }

    /** Numbers what stays: ground first, patches, voids last. */
    private int number() {
        int made = 0;
        int inner = 0;
        for (LaidPatch laid : from.laid) {
            made += laid.count;
            inner += laid.vertex.length;
        }
        int voids = 0;
        for (int t = 0; t < place.length; t++) {
            boolean stays = !from.inside.get(t);
            boolean isVoid = facets.isVoid(t);
            place[t] = stays ? isVoid ? voids++ : solid++ : Mesh.NONE;
        }
        int last = solid + made;
        for (int t = old.mesh().solid; t < place.length; t++) {
            if (place[t] != Mesh.NONE && facets.isVoid(t)) {
                place[t] += last;
            }
        }
        origins = new int[last + voids];
        corner = new int[3 * origins.length];
        neighbour = new int[corner.length];
        Arrays.fill(neighbour, Mesh.NONE);
        Arrays.fill(origins, Mesh.NONE);
        x = facets.eastings(vertices + inner);
        y = facets.northings(vertices + inner);
        z = facets.heights(vertices + inner);
        return voids;
    }

    /** Takes over those old facets, in their order, whose new numbers lie in a range. */
    private void takeOld(int begin, int end) {
        int t = 0;
        while (t < place.length) {
            if (place[t] < begin || place[t] >= end) {
                t++;
                continue;
            }
            int to = t + 1;
            while (to < place.length && place[to] == place[t] + to - t) {
                to++;
            }
            facets.copyCorners(t, to, corner, 3 * place[t]);
            takeNeighbours(t, to);
            t = to;
        }
    }

    private void takeNeighbours(int begin, int end) {
        int at = 3 * place[begin];
        for (int side = 3 * begin; side < 3 * end; side++) {
            int other = facets.neighbour(side);
            int now = other == Mesh.NONE ? Mesh.NONE : place[other];
            neighbour[at] = now;
            if (now == Mesh.NONE) {
                open(at);
            }
            at++;
        }
    }

    private void open(int side) {
        if (opened == open.length) {
            open = Arrays.copyOf(open, 2 * opened);
        }
        open[opened++] = side;
    }

    private void takeLines() {
        for (int s = facets.nextBreak(0); s >= 0; s = facets.nextBreak(s + 1)) {
            int now = place[s / 3];
            if (now != Mesh.NONE) {
                breaks.set(3 * now + s % 3);
            }
        }
    }

    /** Finds the triangles that are still what they were. */
    private void compare() {
        Mesh was = old.mesh();
        untouched = new int[origins.length];
        Arrays.fill(untouched, Mesh.NONE);
        for (int t = 0; t < was.triangles(); t++) {
            if (place[t] != Mesh.NONE) {
                untouched[place[t]] = t;
            }
        }
        for (int t = facets.nextChanged(was, 0); t >= 0; t = facets.nextChanged(was, t + 1)) {
            if (place[t] != Mesh.NONE) {
                untouched[place[t]] = Mesh.NONE;
            }
        }
        for (int i = 0; i < opened; i++) {
            int side = open[i];
            int before = untouched[side / 3];
            if (before != Mesh.NONE && breaks.get(side) != was.breaks.get(3 * before + side % 3)) {
                untouched[side / 3] = Mesh.NONE;
            }
        }
    }

    /** Sides that still have no neighbour. */
    private int[] hull() {
        return Arrays.stream(open, 0, opened)
                .filter(side -> neighbour[side] == Mesh.NONE)
                .toArray();
    }

    private int take(LaidPatch laid, int from0, int first) {
        Patch patch = laid.patch;
        int[] number = new int[patch.x.length];
        Arrays.fill(number, Mesh.NONE);
        int at = from0;
        for (int t = 0; t < laid.count; t++) {
            for (int k = 0; k < 3; k++) {
                int name = laid.corners[3 * t + k];
                corner[3 * at + k] = name >= 0 ? name : inner(patch, number, -2 - name);
            }
            origins[at] = first + laid.cutFrom[t];
            lines(laid, t, at);
            at++;
        }
        return at;
    }

    private int inner(Patch patch, int[] number, int v) {
        if (number[v] == Mesh.NONE) {
            x[vertices] = patch.x[v];
            y[vertices] = patch.y[v];
            z[vertices] = patch.z[v];
            number[v] = vertices++;
        }
        return number[v];
    }

    /** Marks lines of the patch on an uncut triangle, and its rim on all of them. */
    private void lines(LaidPatch laid, int t, int at) {
        int whole = laid.cutFrom[t];
        for (int k = 0; k < 3; k++) {
            int a = laid.corners[3 * t + Mesh.next(k)];
            int b = laid.corners[3 * t + Mesh.last(k)];
            boolean rim = a >= 0 && b >= 0 && from.rims.containsKey(PatchDrawing.key(a, b));
            if (rim || laid.patch.lines.get(3 * whole + side(laid, whole, a, b))) {
                breaks.set(3 * at + k);
            }
        }
    }

    /** Which side of an uncut triangle runs from a to b; one past all if none. */
    private int side(LaidPatch laid, int whole, int a, int b) {
        for (int k = 0; k < 3; k++) {
            if (laid.name(laid.patch.corner[3 * whole + Mesh.next(k)]) == a
                    && laid.name(laid.patch.corner[3 * whole + Mesh.last(k)]) == b) {
                return k;
            }
        }
        return laid.patch.corner.length;
    }

    /**
     * Makes neighbours of the triangles that meet along patches' sides and rims. Sides without a
     * neighbour wait in a list at the lower of their two vertices until the other comes by.
     */
    private void join() {
        int[] first = new int[vertices];
        int[] next = new int[opened];
        Arrays.fill(first, Mesh.NONE);
        for (int i = 0; i < opened; i++) {
            int s = open[i];
            int low = Math.min(begin(s), end(s));
            int waiting = first[low];
            while (waiting != Mesh.NONE
                    && !(begin(open[waiting]) == end(s) && end(open[waiting]) == begin(s))) {
                waiting = next[waiting];
            }
            if (waiting == Mesh.NONE) {
                next[i] = first[low];
                first[low] = i;
            } else {
                int other = open[waiting];
                neighbour[s] = other / 3;
                neighbour[other] = s / 3;
                boolean line = breaks.get(s) || breaks.get(other);
                breaks.set(s, line);
                breaks.set(other, line);
            }
        }
    }

    private int begin(int side) {
        return corner[side - side % 3 + Mesh.next(side % 3)];
    }

    private int end(int side) {
        return corner[side - side % 3 + Mesh.last(side % 3)];
    }
}
