package lanewright.ground;

/** The triangles round one vertex, in turn; all of them, also where the vertex lies on the hull. */
final class Fan {

    private final Mesh mesh;
    private final int vertex;
    private final int begin;
    private int at;
    private boolean backward;

    Fan(Mesh mesh, int vertex, int any) {
        this.mesh = mesh;
        this.vertex = vertex;
        this.begin = any;
        this.at = any;
    }

    int first() {
        at = begin;
        backward = false;
        return at;
    }

    /** The next triangle, or -1 when all have been seen. */
    int next() {
        if (!backward) {
            at = step(at, false);
            if (at == begin) {
                at = Mesh.NONE;
                return at;
            }
            if (at != Mesh.NONE) {
                return at;
            }
            backward = true;
            at = begin;
        }
        if (at != Mesh.NONE) {
            at = step(at, true);
        }
        return at;
    }

    private int step(int t, boolean back) {
        int k = mesh.cornerOf(t, vertex);
        return mesh.neighbour[3 * t + (back ? Mesh.last(k) : Mesh.next(k))];
    }
}
