package lanewright.ground;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
            Attempt attempt = new Attempt(kept);
            if (attempt.failed < 0) {
                progress.report(1, "lane laid into the ground");
                return new Patched(attempt.ground(), attempt.origins, refused);
            }
            refused.add(new Patched.Refusal(attempt.failed, attempt.failedX, attempt.failedY));
            kept.remove((Integer) attempt.failed);
        }
    }

    private static long key(int a, int b) {
        return ((long) a << 32) | b;
    }

    /** Tries to lay some of the patches. */
    private final class Attempt {
        private final Facets facets = new Facets(old.mesh());
        private final BitSet onRim = new BitSet();

        /** Directed sides of the rims, the patch on their left; the value is the patch. */
        private final Map<Long, Integer> rims = new HashMap<>();

        private final BitSet inside = new BitSet();
        private final List<Laid> laid = new ArrayList<>();
        private int failed = Mesh.NONE;
        private double failedX;
        private double failedY;
        private int[] origins = new int[0];

        Attempt(List<Integer> which) {
            for (int i : which) {
                if (!draw(i)) {
                    failed = i;
                    return;
                }
            }
            clear();
            for (int i = 0; failed < 0 && i < laid.size(); i++) {
                if (!laid.get(i).cutTriangles()) {
                    failed = laid.get(i).number;
                }
            }
        }

        private boolean draw(int number) {
            Patch patch = patches.get(number);
            Laid made = new Laid(patch, number);
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
            int found = 0;
            for (int t = 0; t < facets.triangles(); t++) {
                for (int k = 0; k < 3; k++) {
                    int a = facets.corner(t, Mesh.next(k));
                    int b = facets.corner(t, Mesh.last(k));
                    if (!onRim.get(a) || !onRim.get(b)) {
                        continue;
                    }
                    if (rims.containsKey(key(a, b))) {
                        walls.set(3 * t + k);
                        found++;
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
            if (found != rims.size()) {
                failedNear(laid.get(laid.size() - 1));
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
            if (outside.intersects(inside)) {
                failedNear(laid.get(laid.size() - 1));
            }
        }

        private void failedNear(Laid last) {
            failed = last.number;
            failedX = last.patch.x[last.patch.rim[0]];
            failedY = last.patch.y[last.patch.rim[0]];
        }

        private int[] push(int[] stack, int depth, int t) {
            int[] room = depth == stack.length ? Arrays.copyOf(stack, 2 * depth) : stack;
            room[depth] = t;
            return room;
        }

        Ground ground() {
            return new Assembly(this).ground();
        }

        /** A patch whose rim has been drawn. */
        private final class Laid {
            final Patch patch;
            final int number;

            /** Where its vertices are in the facets; -1 for those inside. */
            final int[] vertex;

            /** Vertices passed between two rim vertices, the second included. */
            final Map<Long, List<Integer>> between = new HashMap<>();

            /** Corners of the triangles after cutting; inner vertices counted down from -2. */
            int[] corners = new int[0];

            int[] cutFrom = new int[0];
            int count;

            Laid(Patch patch, int number) {
                this.patch = patch;
                this.number = number;
                vertex = new int[patch.x.length];
                Arrays.fill(vertex, Mesh.NONE);
            }

            boolean cutTriangles() {
                corners = new int[patch.corner.length + 3 * rims.size()];
                cutFrom = new int[corners.length / 3];
                for (int t = 0; t < patch.triangleCount(); t++) {
                    int a = name(patch.corner[3 * t]);
                    int b = name(patch.corner[3 * t + 1]);
                    int c = name(patch.corner[3 * t + 2]);
                    if (!cut(a, b, c, t)) {
                        return false;
                    }
                }
                return true;
            }

            private int name(int v) {
                return vertex[v] == Mesh.NONE ? -2 - v : vertex[v];
            }

            private boolean cut(int a, int b, int c, int t) {
                if (a == b || b == c || c == a) {
                    return true;
                }
                int[] corner = {a, b, c};
                for (int k = 0; k < 3; k++) {
                    int p = corner[k];
                    int q = corner[Mesh.next(k)];
                    int r = corner[Mesh.last(k)];
                    List<Integer> passed = p < 0 || q < 0 ? null : between.get(key(p, q));
                    if (passed != null && passed.size() > 1) {
                        int half = (passed.size() - 1) / 2;
                        int m = passed.get(half);
                        between.put(key(p, m), passed.subList(0, half + 1));
                        between.put(key(m, q), passed.subList(half + 1, passed.size()));
                        return cut(p, m, r, t) && cut(m, q, r, t);
                    }
                }
                return keep(a, b, c, t);
            }

            private boolean keep(int a, int b, int c, int t) {
                if (!(Side.of(x(a), y(a), x(b), y(b), x(c), y(c)) > 0)) {
                    failedX = x(a);
                    failedY = y(a);
                    return false;
                }
                if (3 * count + 3 > corners.length) {
                    corners = Arrays.copyOf(corners, 2 * corners.length + 3);
                    cutFrom = Arrays.copyOf(cutFrom, corners.length / 3);
                }
                corners[3 * count] = a;
                corners[3 * count + 1] = b;
                corners[3 * count + 2] = c;
                cutFrom[count++] = t;
                return true;
            }

            private double x(int name) {
                return name < 0 ? patch.x[-2 - name] : facets.x(name);
            }

            private double y(int name) {
                return name < 0 ? patch.y[-2 - name] : facets.y(name);
            }
        }
    }

    /** Puts old facets and patches together into one mesh. */
    private final class Assembly {
        private final Attempt from;
        private final Facets facets;
        private final int[] place;
        private final int[] vertexPlace;
        private double[] x = new double[0];
        private double[] y = new double[0];
        private double[] z = new double[0];
        private int[] corner = new int[0];
        private int[] neighbour = new int[0];
        private final BitSet breaks = new BitSet();
        private int vertices;
        private int solid;

        Assembly(Attempt from) {
            this.from = from;
            this.facets = from.facets;
            place = new int[facets.triangles()];
            vertexPlace = new int[facets.vertices()];
        }

        Ground ground() {
            int voids = number();
            takeOld();
            int at = solid;
            int first = 0;
            for (Attempt.Laid laid : from.laid) {
                at = take(laid, at, first);
                first += laid.patch.triangleCount();
            }
            join();
            Mesh mesh =
                    new Mesh(
                            Arrays.copyOf(x, vertices),
                            Arrays.copyOf(y, vertices),
                            Arrays.copyOf(z, vertices),
                            corner,
                            neighbour,
                            corner.length / 3 - voids,
                            breaks);
            return new Ground(mesh, new BitSet(), old.findings());
        }

        /** Numbers what stays: ground first, patches, voids last. */
        private int number() {
            int made = 0;
            for (Attempt.Laid laid : from.laid) {
                made += laid.count;
            }
            int voids = 0;
            for (int t = 0; t < facets.triangles(); t++) {
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
            from.origins = new int[solid + made + voids];
            Arrays.fill(from.origins, Mesh.NONE);
            return voids;
        }

        private void takeOld() {
            Arrays.fill(vertexPlace, Mesh.NONE);
            for (int t = 0; t < place.length; t++) {
                if (place[t] != Mesh.NONE) {
                    for (int k = 0; k < 3; k++) {
                        vertexPlace[facets.corner(t, k)] = 0;
                    }
                }
            }
            int inner = 0;
            for (Attempt.Laid laid : from.laid) {
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

        private int take(Attempt.Laid laid, int from0, int first) {
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
                this.from.origins[at] = first + laid.cutFrom[t];
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
        private void lines(Attempt.Laid laid, int t, int at) {
            int whole = laid.cutFrom[t];
            for (int k = 0; k < 3; k++) {
                int a = laid.corners[3 * t + Mesh.next(k)];
                int b = laid.corners[3 * t + Mesh.last(k)];
                boolean rim = a >= 0 && b >= 0 && from.rims.containsKey(key(a, b));
                if (rim || laid.patch.lines.get(3 * whole + side(laid, whole, a, b))) {
                    breaks.set(3 * at + k);
                }
            }
        }

        /** Which side of an uncut triangle runs from a to b; one past all if none. */
        private int side(Attempt.Laid laid, int whole, int a, int b) {
            for (int k = 0; k < 3; k++) {
                if (laid.name(laid.patch.corner[3 * whole + Mesh.next(k)]) == a
                        && laid.name(laid.patch.corner[3 * whole + Mesh.last(k)]) == b) {
                    return k;
                }
            }
            return laid.patch.corner.length;
        }

        /** Makes neighbours of the triangles that meet along patches' sides and rims. */
        private void join() {
            Map<Long, Integer> open = new HashMap<>();
            for (int s = 0; s < neighbour.length; s++) {
                if (neighbour[s] != Mesh.NONE) {
                    continue;
                }
                int a = corner[s - s % 3 + Mesh.next(s % 3)];
                int b = corner[s - s % 3 + Mesh.last(s % 3)];
                Integer other = open.remove(key(b, a));
                if (other == null) {
                    open.put(key(a, b), s);
                } else {
                    neighbour[s] = other / 3;
                    neighbour[other] = s / 3;
                    boolean line = breaks.get(s) || breaks.get(other);
                    breaks.set(s, line);
                    breaks.set(other, line);
                }
            }
        }
    }
}
