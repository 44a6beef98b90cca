package lanewright.ground;

import java.util.BitSet;
import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.survey.Probe;

/**
 * Gives every probe hole a vertex, so that a depth found there holds there. The facet that a hole
 * lies in is split, and the hole's height is that of the facet: the surface stays as it is, and the
 * pieces are not joined anew.
 */
final class ProbeHoles {

    private final Net net;
    private final double tolerance;

    /** The net must have its vertices indexed. */
    ProbeHoles(Net net, double tolerance) {
        this.net = net;
        this.tolerance = tolerance;
    }

    /** Puts the holes in; returns which vertices stand for one. */
    BitSet put(List<Probe> probes, List<Finding> findings) {
        BitSet marked = new BitSet();
        for (Probe probe : probes) {
            int t = find(probe.x(), probe.y());
            if (t == Mesh.NONE) {
                findings.add(outside(probe));
            } else {
                marked.set(put(t, probe.x(), probe.y()));
            }
        }
        return marked;
    }

    /** The triangle of ground under a place, also where the place lies on the rim. */
    private int find(double px, double py) {
        int t = net.find(px, py);
        if (isGround(t)) {
            return t;
        }
        for (int side = 3 * t; side < 3 * t + 3; side++) {
            int a = net.start(side);
            int b = net.end(side);
            int beyond = net.twin[side] / 3;
            if (a >= 0 && b >= 0 && isGround(beyond) && isNear(a, b, px, py)) {
                return beyond;
            }
        }
        return Mesh.NONE;
    }

    private boolean isGround(int t) {
        return !net.isGhost(t) && !net.isVoid(t);
    }

    private boolean isNear(int a, int b, double px, double py) {
        double off = net.side(a, b, px, py) / net.distance(a, b);
        double part = part(a, b, px, py);
        return Math.abs(off) <= tolerance && part >= 0 && part <= 1;
    }

    private double part(int a, int b, double px, double py) {
        double dx = net.x[b] - net.x[a];
        double dy = net.y[b] - net.y[a];
        return ((px - net.x[a]) * dx + (py - net.y[a]) * dy) / (dx * dx + dy * dy);
    }

    private int put(int t, double px, double py) {
        int nearest = net.corner[3 * t];
        for (int side = 3 * t; side < 3 * t + 3; side++) {
            if (distance(net.corner[side], px, py) < distance(nearest, px, py)) {
                nearest = net.corner[side];
            }
        }
        if (distance(nearest, px, py) <= tolerance) {
            return nearest;
        }
        boolean inside = true;
        for (int side = 3 * t; side < 3 * t + 3; side++) {
            int a = net.start(side);
            int b = net.end(side);
            double where = net.side(a, b, px, py);
            inside &= where > 0;
            if (where == 0 || isNear(a, b, px, py)) {
                double part = part(a, b, px, py);
                double x = where == 0 ? px : net.x[a] + part * (net.x[b] - net.x[a]);
                double y = where == 0 ? py : net.y[a] + part * (net.y[b] - net.y[a]);
                if (isSound(side, x, y)) {
                    double z = net.z[a] + part * (net.z[b] - net.z[a]);
                    int v = net.vertex(x, y, z);
                    net.splitSide(side, v);
                    return v;
                }
            }
        }
        if (!inside) {
            return nearest;
        }
        int v = net.vertex(px, py, net.height(t, px, py));
        net.splitInside(t, v);
        return v;
    }

    /**
     * True if a place may become a vertex on a side: the halves on both sides of it stay triangles,
     * and the hull stays convex.
     */
    private boolean isSound(int side, double px, double py) {
        return isHalved(side, px, py) && isHalved(net.twin[side], px, py);
    }

    private boolean isHalved(int side, double px, double py) {
        int apex = net.corner[side];
        int a = net.start(side);
        int b = net.end(side);
        if (apex < 0) {
            return net.side(a, b, px, py) == 0;
        }
        return net.side(a, apex, px, py) < 0 && net.side(apex, b, px, py) < 0;
    }

    private double distance(int v, double px, double py) {
        double dx = net.x[v] - px;
        double dy = net.y[v] - py;
        return Math.sqrt(dx * dx + dy * dy);
    }

    private static Finding outside(Probe probe) {
        return Finding.of(
                "probe-outside",
                Level.LOOK,
                Topic.GROUND,
                Where.map(probe.x(), probe.y()),
                Saying.plain("Probe hole " + probe.name() + " lies outside the ground"),
                Saying.plain("Check its coordinates, or shoot the ground round it"));
    }
}
