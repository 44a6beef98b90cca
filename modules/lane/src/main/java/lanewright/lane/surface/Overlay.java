package lanewright.lane.surface;

import java.util.Arrays;
import lanewright.ground.Ground;
import lanewright.ground.VertexField;
import org.jspecify.annotations.Nullable;

/**
 * Lays triangles of the built surface over those of the ground and adds up the exact prisms
 * between: each pair of triangles meets in a convex polygon on which every height is linear, and is
 * split where a difference changes sign. For one thread.
 */
final class Overlay {

    private static final int FILL = 0;
    private static final int ABOVE = 1;
    private static final int SOIL = 2;
    private static final int BEARS = 3;
    private static final int LOWEST = 4;
    private static final int VALUES = 5;

    /** A triangle is covered if this share of it is; else there may be a hole to look beyond. */
    private static final double ALL = 1 - 1e-9;

    private final Ground ground;
    private final VertexField topsoil;
    private final @Nullable VertexField bearing;
    private final int[] stamp;
    private int turn;
    private int[] stack = new int[64];
    private final Polygon piece = new Polygon(VALUES);
    private final Polygon part = new Polygon(VALUES);

    private double[] px = new double[3];
    private double[] py = new double[3];
    private final double[] finished = new double[3];
    private final double[] earth = new double[3];
    private boolean strips;
    private boolean margin;
    private boolean undercuts;
    private boolean slope;

    double strip;
    double cut;
    double fill;
    double edgeRefill;
    double marginSoil;
    double undercut;
    double area;
    double uncovered;

    Overlay(Ground ground, VertexField topsoil, @Nullable VertexField bearing) {
        this.ground = ground;
        this.topsoil = topsoil;
        this.bearing = bearing;
        this.stamp = new int[ground.triangleCount()];
    }

    /** Says what the triangles that follow are part of. */
    void under(SurfacePart surface, boolean stripped) {
        strips = stripped;
        margin = surface == SurfacePart.MARGIN;
        undercuts =
                surface == SurfacePart.TRAVELLED
                        || surface == SurfacePart.STONE_EDGE
                        || surface == SurfacePart.SHOULDER;
        slope = !undercuts && !margin;
    }

    /** Sets corner {@code k} of the next triangle. */
    void corner(int k, double x, double y, double finishedHeight, double earthHeight) {
        px[k] = x;
        py[k] = y;
        finished[k] = finishedHeight;
        earth[k] = earthHeight;
    }

    /** Adds the triangle whose corners were set, either way round. */
    void add() {
        double twice = (px[1] - px[0]) * (py[2] - py[0]) - (py[1] - py[0]) * (px[2] - px[0]);
        if (twice < 0) {
            swap();
            twice = -twice;
        }
        if (twice == 0) {
            return;
        }
        turn++;
        double covered =
                flood(
                        push(
                                ground.triangleAt(
                                        (px[0] + px[1] + px[2]) / 3, (py[0] + py[1] + py[2]) / 3),
                                0));
        for (int k = 0; k < 3 && covered < twice / 2 * ALL; k++) {
            covered += flood(push(ground.triangleAt(px[k], py[k]), 0));
        }
        area += twice / 2;
        uncovered += Math.max(0, twice / 2 - covered);
    }

    /**
     * Goes from the triangles on the stack to all that lie under the one above, next to each other.
     */
    private double flood(int first) {
        double covered = 0;
        int depth = first;
        while (depth > 0) {
            int t = stack[--depth];
            double shared = overlap(t);
            if (shared > 0) {
                covered += shared;
                for (int k = 0; k < 3; k++) {
                    depth = push(ground.neighbour(t, k), depth);
                }
            }
        }
        return covered;
    }

    private void swap() {
        double x = px[1];
        double y = py[1];
        double f = finished[1];
        double e = earth[1];
        corner(1, px[2], py[2], finished[2], earth[2]);
        corner(2, x, y, f, e);
    }

    private int push(int t, int depth) {
        if (t < 0 || stamp[t] == turn) {
            return depth;
        }
        stamp[t] = turn;
        if (depth == stack.length) {
            stack = Arrays.copyOf(stack, 2 * depth);
        }
        stack[depth] = t;
        return depth + 1;
    }

    private double overlap(int t) {
        int a = ground.corner(t, 0);
        int b = ground.corner(t, 1);
        int c = ground.corner(t, 2);
        piece.triangle(px[0], py[0], px[1], py[1], px[2], py[2]);
        piece.keepLeft(ground.x(a), ground.y(a), ground.x(b), ground.y(b));
        piece.keepLeft(ground.x(b), ground.y(b), ground.x(c), ground.y(c));
        piece.keepLeft(ground.x(c), ground.y(c), ground.x(a), ground.y(a));
        double shared = piece.area();
        if (!(shared > 0)) {
            return 0;
        }
        fillIn(t);
        count();
        return shared;
    }

    private void fillIn(int t) {
        double bx = px[1] - px[0];
        double by = py[1] - py[0];
        double cx = px[2] - px[0];
        double cy = py[2] - py[0];
        double twice = bx * cy - by * cx;
        for (int i = 0; i < piece.size; i++) {
            double x = piece.x[i];
            double y = piece.y[i];
            double u = ((x - px[0]) * cy - (y - py[0]) * cx) / twice;
            double w = (bx * (y - py[0]) - by * (x - px[0])) / twice;
            double z = ground.heightOn(t, x, y);
            double soil = strips ? topsoil.inside(t, x, y) : 0;
            double sub = earth[0] + u * (earth[1] - earth[0]) + w * (earth[2] - earth[0]);
            double top = finished[0] + u * (finished[1] - finished[0]);
            top += w * (finished[2] - finished[0]);
            piece.value[FILL][i] = sub - (z - soil);
            piece.value[ABOVE][i] = top - z;
            piece.value[SOIL][i] = soil;
            piece.value[BEARS][i] = bearing == null ? Double.NaN : bearing.inside(t, x, y) - soil;
        }
    }

    private void count() {
        if (strips) {
            double soil = piece.integral(SOIL);
            strip += soil;
            if (margin) {
                marginSoil += soil;
            }
        }
        if (margin) {
            return;
        }
        double least = piece.least(FILL);
        double most = piece.most(FILL);
        if (least >= 0) {
            fill += piece.integral(FILL);
            refill(piece);
        } else if (most <= 0) {
            cut -= piece.integral(FILL);
        } else {
            part.set(piece);
            part.keep(FILL, -1);
            cut -= part.integral(FILL);
            part.set(piece);
            part.keep(FILL, 1);
            fill += part.integral(FILL);
            refill(part);
        }
        if (undercuts && bearing != null) {
            undercut();
        }
    }

    /** Fill on a slope whose finished surface lies at or below the old ground. */
    private void refill(Polygon filled) {
        if (!slope || filled.size == 0 || filled.least(ABOVE) > 0) {
            return;
        }
        if (filled != part) {
            part.set(filled);
        }
        part.keep(ABOVE, -1);
        edgeRefill += part.integral(FILL);
    }

    /** From the lower of subgrade and stripped ground down to what bears. */
    private void undercut() {
        if (Double.isNaN(piece.integral(BEARS))) {
            return;
        }
        undercut(1, 0);
        undercut(-1, 1);
    }

    private void undercut(double side, double less) {
        part.set(piece);
        part.keep(FILL, side);
        for (int i = 0; i < part.size; i++) {
            part.value[LOWEST][i] = part.value[BEARS][i] + less * part.value[FILL][i];
        }
        if (part.size > 0) {
            part.keep(LOWEST, 1);
            undercut += part.integral(LOWEST);
        }
    }
}
