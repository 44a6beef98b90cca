package lanewright.ground;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import lanewright.measure.Progress;

/** Puts old facets and patches together into one mesh. */
final class PatchAssembly {
    private final PatchDrawing from;
    private final Ground old;
    private final Progress progress;
    private final Facets facets;
    private final int[] place;
    private final int[] vertexPlace;
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

    PatchAssembly(PatchDrawing from, Ground old, Progress progress) {
        this.old = old;
        this.progress = progress;
        this.from = from;
        this.facets = from.facets;
        place = new int[facets.triangles()];
        vertexPlace = new int[facets.vertices()];
    }

    Patched patched(List<Patched.Refusal> refused) {
        int voids = number();
        progress.check();
        takeOld();
        progress.check();
        int at = solid;
        int first = 0;
        for (LaidPatch laid : from.laid) {
            at = take(laid, at, first);
            first += laid.patch.triangleCount();
        }
        progress.check();
        join();
        progress.check();
        compare();
        progress.check();
        Mesh mesh =
                new Mesh(
                        Arrays.copyOf(x, vertices),
                        Arrays.copyOf(y, vertices),
                        Arrays.copyOf(z, vertices),
                        corner,
                        neighbour,
                        corner.length / 3 - voids,
                        breaks);
        return new Patched(
                new Ground(mesh, new BitSet(), old.findings()), origins, untouched, refused);
    }

    /** Numbers what stays: ground first, patches, voids last. */
    private int number() {
        int made = 0;
        for (LaidPatch laid : from.laid) {
            made += laid.count;
        }
        int voids = 0;
        for (int t = 0; t < facets.triangles(); t++) {
            if (t % PatchDrawing.OFTEN == 0) {
                progress.check();
            }
            boolean stays = !from.inside.get(t);
            solid += stays && !facets.isVoid(t) ? 1 : 0;
            voids += stays && facets.isVoid(t) ? 1 : 0;
        }
        int ground = 0;
        int open = solid + made;
        for (int t = 0; t < facets.triangles(); t++) {
            place[t] = from.inside.get(t) ? Mesh.NONE : facets.isVoid(t) ? open++ : ground++;
        }
        corner = new int[3 * (solid + made + voids)];
        neighbour = new int[corner.length];
        Arrays.fill(neighbour, Mesh.NONE);
        origins = new int[solid + made + voids];
        Arrays.fill(origins, Mesh.NONE);
        return voids;
    }

    private void takeOld() {
        Arrays.fill(vertexPlace, Mesh.NONE);
        for (int t = 0; t < place.length; t++) {
            if (t % PatchDrawing.OFTEN == 0) {
                progress.check();
            }
            if (place[t] != Mesh.NONE) {
                for (int k = 0; k < 3; k++) {
                    vertexPlace[facets.corner(t, k)] = 0;
                }
            }
        }
        int inner = 0;
        for (LaidPatch laid : from.laid) {
            inner += laid.vertex.length;
        }
        for (int v = 0; v < vertexPlace.length; v++) {
            boolean stays = vertexPlace[v] == 0 || from.onRim.get(v);
            vertexPlace[v] = stays ? vertices++ : Mesh.NONE;
        }
        x = new double[vertices + inner];
        y = new double[vertices + inner];
        z = new double[vertices + inner];
        for (int v = 0; v < vertexPlace.length; v++) {
            if (vertexPlace[v] != Mesh.NONE) {
                x[vertexPlace[v]] = facets.x(v);
                y[vertexPlace[v]] = facets.y(v);
                z[vertexPlace[v]] = facets.z(v);
            }
        }
        for (int t = 0; t < place.length; t++) {
            if (t % PatchDrawing.OFTEN == 0) {
                progress.check();
            }
            if (place[t] != Mesh.NONE) {
                takeOld(t);
            }
        }
    }

    private void takeOld(int t) {
        for (int k = 0; k < 3; k++) {
            int other = facets.neighbour(t, k);
            int at = 3 * place[t] + k;
            corner[at] = vertexPlace[facets.corner(t, k)];
            neighbour[at] = other == Mesh.NONE ? Mesh.NONE : place[other];
            if (facets.isBreak(3 * t + k)) {
                breaks.set(at);
            }
        }
    }

    /** Finds the triangles that are still what they were. */
    private void compare() {
        untouched = new int[origins.length];
        Arrays.fill(untouched, Mesh.NONE);
        Mesh was = old.mesh();
        for (int t = 0; t < was.triangles(); t++) {
            if (t % PatchDrawing.OFTEN == 0) {
                progress.check();
            }
            if (place[t] == Mesh.NONE) {
                continue;
            }
            boolean same = true;
            for (int k = 0; k < 3; k++) {
                same &=
                        facets.corner(t, k) == was.corner[3 * t + k]
                                && breaks.get(3 * place[t] + k) == was.breaks.get(3 * t + k);
            }
            if (same) {
                untouched[place[t]] = t;
            }
        }
    }

    private int take(LaidPatch laid, int from0, int first) {
        Patch patch = laid.patch;
        int[] number = new int[patch.x.length];
        Arrays.fill(number, Mesh.NONE);
        int at = from0;
        for (int t = 0; t < laid.count; t++) {
            for (int k = 0; k < 3; k++) {
                int name = laid.corners[3 * t + k];
                corner[3 * at + k] =
                        name >= 0 ? vertexPlace[name] : inner(patch, number, -2 - name);
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
        int[] next = new int[neighbour.length];
        Arrays.fill(first, Mesh.NONE);
        for (int s = 0; s < neighbour.length; s++) {
            if (s % PatchDrawing.OFTEN == 0) {
                progress.check();
            }
            if (neighbour[s] != Mesh.NONE) {
                continue;
            }
            int low = Math.min(begin(s), end(s));
            int other = first[low];
            while (other != Mesh.NONE && !(begin(other) == end(s) && end(other) == begin(s))) {
                other = next[other];
            }
            if (other == Mesh.NONE) {
                next[s] = first[low];
                first[low] = s;
            } else {
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
