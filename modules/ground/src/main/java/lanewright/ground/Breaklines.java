package lanewright.ground;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;

/**
 * Makes lines into sides of triangles, and mends the triangles round them (S. W. Sloan, A fast
 * algorithm for generating constrained Delaunay triangulations, Computers and Structures 47, 1993):
 * afterwards no vertex that can be seen from a triangle lies inside its circle.
 *
 * <p>A shot within the tolerance of a line, between its ends, becomes part of it: without that a
 * shot two micrometres off leaves a triangle two micrometres high. Where two lines cross both get a
 * vertex; the height there is halfway between theirs, and a step of over {@value #CROSSING_STEP} m
 * is a finding.
 */
final class Breaklines {

    /** Two lines may differ by this in height where they cross before it is said, m. Our choice. */
    static final double CROSSING_STEP = 0.05;

    /** Crossings told one by one; the rest are counted. */
    private static final int TOLD = 20;

    private final Net net;
    private final Delaunay delaunay;
    private final PointGrid grid;
    private final double tolerance;
    private final List<Finding> findings;
    private int untold;
    private int lost;

    /**
     * A straight piece of a line between two of its vertices.
     *
     * @param drapes true if the piece takes the height of what it crosses instead of having its own
     */
    private record Piece(int from, int to, boolean drapes) {}

    Breaklines(Net net, double tolerance, List<Finding> findings) {
        this.net = net;
        this.delaunay = new Delaunay(net);
        this.tolerance = tolerance;
        this.findings = findings;
        this.grid = new PointGrid(net.x, net.y, net.vertices);
        net.indexVertices();
    }

    /** Lays a chain of vertices, straight between each two. */
    void lay(int[] chain) {
        for (int i = 1; i < chain.length; i++) {
            if (chain[i] != chain[i - 1]) {
                lay(new Piece(chain[i - 1], chain[i], false));
            }
        }
    }

    /** Lays a straight piece that takes the height of the lines that it crosses. */
    void drape(int from, int to) {
        lay(new Piece(from, to, true));
    }

    private void lay(Piece piece) {
        double[] x = net.x;
        double[] y = net.y;
        int from = piece.from;
        int to = piece.to;
        int[] on = grid.near(from, x[from], y[from], to, x[to], y[to], tolerance);
        if (on.length == 0) {
            run(piece);
            return;
        }
        int at = from;
        for (int point : on) {
            lay(new Piece(at, point, piece.drapes));
            at = point;
        }
        lay(new Piece(at, to, piece.drapes));
    }

    /**
     * A vertex at a place on the surface: one within the tolerance, a new one on a line within the
     * tolerance, or a new one. A place outside the hull by a last digit becomes part of it.
     */
    int vertexAt(double px, double py, double height) {
        int t = net.find(px, py);
        for (int s = 3 * t; s < 3 * t + 3; s++) {
            if (net.corner[s] >= 0 && isNear(net.corner[s], px, py)) {
                return net.corner[s];
            }
        }
        for (int s = 3 * t; s < 3 * t + 3; s++) {
            if (net.isLine(s)) {
                int a = net.start(s);
                int b = net.end(s);
                double dx = net.x[b] - net.x[a];
                double dy = net.y[b] - net.y[a];
                double squared = dx * dx + dy * dy;
                double part = ((px - net.x[a]) * dx + (py - net.y[a]) * dy) / squared;
                double x = net.x[a] + part * dx;
                double y = net.y[a] + part * dy;
                double off = (px - x) * (px - x) + (py - y) * (py - y);
                if (part > 0 && part < 1 && off <= tolerance * tolerance && isSound(s, x, y)) {
                    int v = net.vertex(x, y, net.z[a] + part * (net.z[b] - net.z[a]));
                    delaunay.splitSide(s, v);
                    return v;
                }
            }
        }
        int v = net.vertex(px, py, height);
        delaunay.insert(v);
        return v;
    }

    /** True if a place may become a vertex on a side within the hull: four sound triangles. */
    private boolean isSound(int side, double px, double py) {
        int near = net.corner[side];
        int far = net.corner[net.twin[side]];
        int a = net.start(side);
        int b = net.end(side);
        return near >= 0
                && far >= 0
                && net.side(a, near, px, py) < 0
                && net.side(near, b, px, py) < 0
                && net.side(b, far, px, py) < 0
                && net.side(far, a, px, py) < 0;
    }

    /** Says what has been counted. */
    void tell() {
        if (untold > 0) {
            findings.add(
                    Finding.of(
                            "breaklines-cross-more",
                            Level.LOOK,
                            Topic.GROUND,
                            Where.ANYWHERE,
                            Saying.of(
                                    "{} more crossings of breaklines lie over {} apart in height",
                                    Quantity.count(untold),
                                    Quantity.height(CROSSING_STEP)),
                            Saying.plain("Check which lines are right")));
        }
        if (lost > 0) {
            findings.add(
                    Finding.of(
                            "breakline-lost",
                            Level.LOOK,
                            Topic.GROUND,
                            Where.ANYWHERE,
                            Saying.of(
                                    "{} pieces of breaklines could not be kept as edges",
                                    Quantity.count(lost)),
                            Saying.plain("Look for breaklines that run over each other")));
        }
    }

    /** Makes a straight piece into a chain of sides. */
    private void run(Piece piece) {
        int at = piece.from;
        int to = piece.to;
        int most = 4 * net.vertices;
        while (at != to) {
            if (most-- == 0) {
                lost++;
                return;
            }
            at = advance(at, to, piece);
            if (at < 0) {
                lost++;
                return;
            }
        }
    }

    /** Goes from a vertex towards the end; returns the next vertex of the line, -1 if stuck. */
    private int advance(int at, int to, Piece piece) {
        int begin = net.at(at);
        int t = begin;
        do {
            int k = net.cornerOf(t, at);
            int right = net.corner[3 * t + Mesh.next(k)];
            int left = net.corner[3 * t + Mesh.last(k)];
            if (right == to) {
                net.setLine(3 * t + Mesh.last(k), true);
                return to;
            }
            if (right >= 0) {
                double side = net.side(at, to, right);
                if (side == 0 && isAhead(at, to, right)) {
                    net.setLine(3 * t + Mesh.last(k), true);
                    return right;
                }
                if (side < 0 && left >= 0 && left != to && net.side(at, to, left) > 0) {
                    return through(3 * t + k, at, to, piece);
                }
            }
            t = net.turn(t, at);
        } while (t != begin);
        return Mesh.NONE;
    }

    private boolean isAhead(int at, int to, int v) {
        double dx = net.x[to] - net.x[at];
        double dy = net.y[to] - net.y[at];
        return (net.x[v] - net.x[at]) * dx + (net.y[v] - net.y[at]) * dy > 0;
    }

    /** Crosses sides up to the next vertex on the line, or to a line in the way. */
    private int through(int firstSide, int at, int to, Piece piece) {
        Deque<int[]> crossed = new ArrayDeque<>();
        int side = firstSide;
        while (true) {
            if (net.isLine(side)) {
                return meet(side, at, to, piece);
            }
            int right = net.start(side);
            int left = net.end(side);
            crossed.add(new int[] {right, left});
            int other = net.twin[side];
            int ahead = net.corner[other];
            if (ahead < 0) {
                return Mesh.NONE;
            }
            double where = ahead == to ? 0 : net.side(at, to, ahead);
            if (where == 0) {
                clear(crossed, at, ahead);
                net.setLine(net.sideBetween(at, ahead), true);
                return ahead;
            }
            // The other triangle runs ahead, left, right.
            int u = other / 3;
            int far = other % 3;
            side = 3 * u + (where > 0 ? Mesh.next(far) : Mesh.last(far));
        }
    }

    /** Flips the crossed sides away, so that a side from one vertex to the other is there. */
    private void clear(Deque<int[]> crossed, int at, int to) {
        List<int[]> made = new ArrayList<>();
        while (!crossed.isEmpty()) {
            int[] ends = crossed.remove();
            int side = net.sideBetween(ends[0], ends[1]);
            int p = net.corner[side];
            int q = net.corner[net.twin[side]];
            int a = net.start(side);
            int b = net.end(side);
            if (net.side(p, q, a) >= 0 || net.side(p, q, b) <= 0) {
                crossed.add(ends);
                continue;
            }
            net.flip(side);
            boolean across =
                    p != at
                            && p != to
                            && q != at
                            && q != to
                            && net.side(at, to, p) > 0 != net.side(at, to, q) > 0;
            (across ? crossed : made).add(new int[] {p, q});
        }
        mend(made, at, to);
    }

    private void mend(List<int[]> made, int at, int to) {
        boolean flipped = true;
        while (flipped) {
            flipped = false;
            for (int[] ends : made) {
                int side = net.sideBetween(ends[0], ends[1]);
                int p = net.corner[side];
                int q = net.corner[net.twin[side]];
                boolean isLine =
                        (ends[0] == at && ends[1] == to) || (ends[0] == to && ends[1] == at);
                if (!isLine && q >= 0 && delaunay.isInside(p, net.twin[side])) {
                    net.flip(side);
                    ends[0] = p;
                    ends[1] = q;
                    flipped = true;
                }
            }
        }
    }

    /** Another line lies in the way: both get a vertex where they cross. */
    private int meet(int side, int at, int to, Piece piece) {
        int c = net.start(side);
        int d = net.end(side);
        double sideC = net.side(at, to, c);
        double sideD = net.side(at, to, d);
        double part = sideC / (sideC - sideD);
        double px = net.x[c] + part * (net.x[d] - net.x[c]);
        double py = net.y[c] + part * (net.y[d] - net.y[c]);
        if (isNear(c, px, py) || isNear(d, px, py)) {
            int via = isNear(c, px, py) ? c : d;
            run(new Piece(at, via, piece.drapes));
            return via;
        }
        if (isNear(at, px, py) || isNear(to, px, py)) {
            int via = isNear(at, px, py) ? at : to;
            net.setLine(side, false);
            run(new Piece(c, via, true));
            run(new Piece(via, d, true));
            return at;
        }
        return cross(side, at, px, py, part, piece);
    }

    private int cross(int side, int at, double px, double py, double part, Piece piece) {
        int c = net.start(side);
        int d = net.end(side);
        double heightThere = net.z[c] + part * (net.z[d] - net.z[c]);
        double dx = net.x[piece.to] - net.x[piece.from];
        double dy = net.y[piece.to] - net.y[piece.from];
        double along =
                ((px - net.x[piece.from]) * dx + (py - net.y[piece.from]) * dy)
                        / (dx * dx + dy * dy);
        double height = net.z[piece.from] + along * (net.z[piece.to] - net.z[piece.from]);
        // The rounded place leaves sound triangles unless a corner lies all but on the line.
        if (!isSound(side, px, py)) {
            return Mesh.NONE;
        }
        if (piece.drapes) {
            height = heightThere;
        }
        sayStep(px, py, Math.abs(height - heightThere));
        int v = net.vertex(px, py, (height + heightThere) / 2);
        delaunay.splitSide(side, v);
        run(new Piece(at, v, piece.drapes));
        return v;
    }

    private boolean isNear(int v, double px, double py) {
        double dx = net.x[v] - px;
        double dy = net.y[v] - py;
        return dx * dx + dy * dy <= tolerance * tolerance;
    }

    private void sayStep(double px, double py, double step) {
        if (step <= CROSSING_STEP) {
            return;
        }
        long told = findings.stream().filter(f -> f.code().equals("breaklines-cross")).count();
        if (told >= TOLD) {
            untold++;
            return;
        }
        findings.add(
                new Finding(
                        "breaklines-cross",
                        Level.LOOK,
                        Topic.GROUND,
                        Where.map(px, py),
                        Saying.of(
                                "Two breaklines cross here at heights {} apart; halfway between is used",
                                Quantity.height(step)),
                        Quantity.height(step),
                        Quantity.height(CROSSING_STEP),
                        "our choice",
                        Saying.plain(
                                "Check both lines; shoot the crossing, or end one line before it")));
    }
}
