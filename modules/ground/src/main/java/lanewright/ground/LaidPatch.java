package lanewright.ground;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A patch whose rim has been drawn into facets; cuts its triangles to fit. */
final class LaidPatch {
    private final Facets facets;
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
    double failedX;
    double failedY;

    LaidPatch(Facets facets, Patch patch, int number) {
        this.facets = facets;
        this.patch = patch;
        this.number = number;
        vertex = new int[patch.x.length];
        Arrays.fill(vertex, Mesh.NONE);
    }

    boolean cutTriangles() {
        corners = new int[2 * patch.corner.length];
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

    int name(int v) {
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
            List<Integer> passed = p < 0 || q < 0 ? null : between.get(PatchDrawing.key(p, q));
            if (passed != null && passed.size() > 1) {
                int half = (passed.size() - 1) / 2;
                int m = passed.get(half);
                between.put(PatchDrawing.key(p, m), passed.subList(0, half + 1));
                between.put(PatchDrawing.key(m, q), passed.subList(half + 1, passed.size()));
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
