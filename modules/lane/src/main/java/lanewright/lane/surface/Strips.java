package lanewright.lane.surface;

import java.util.List;

/**
 * Walks over the strips of a lane: every four-cornered piece between two rays and two edges of a
 * strip, in station order, left side first. Pieces are split along the diagonal whose ends lie
 * lower, which is the same diagonal whichever way the lane is walked or mirrored.
 */
final class Strips {

    private Strips() {}

    /** Told of each piece. */
    interface Visitor {
        /**
         * A piece of a strip, from ray {@code a} to ray {@code b}; the strip has the same number on
         * both.
         */
        void piece(Ray a, Ray b, boolean right, int strip);

        /** The margin of a closed side from ray {@code a} to ray {@code b}. */
        void margin(Ray a, Ray b, boolean right);
    }

    /** Visits all pieces; a jump is halved between the shapes on both sides of it. */
    static void visit(List<Ray> rays, Visitor visitor) {
        for (int i = 0; i + 1 < rays.size(); i++) {
            Ray a = rays.get(i);
            Ray b = rays.get(i + 1);
            if (a.leadsTo(b)) {
                visit(a, b, visitor);
            } else {
                Ray middle = middle(a, b);
                visit(a, a.movedTo(middle), visitor);
                visit(b.movedTo(middle), b, visitor);
            }
        }
    }

    private static Ray middle(Ray a, Ray b) {
        return new Ray(
                (a.station() + b.station()) / 2,
                (a.x() + b.x()) / 2,
                (a.y() + b.y()) / 2,
                (a.dx() + b.dx()) / 2,
                (a.dy() + b.dy()) / 2,
                a.lane(),
                a.left(),
                a.right());
    }

    private static void visit(Ray a, Ray b, Visitor visitor) {
        for (boolean right : new boolean[] {false, true}) {
            Flank fa = a.flank(right);
            Flank fb = b.flank(right);
            for (int strip = 0; strip < fa.strips(); strip++) {
                if (fa.out(strip) < fa.out(strip + 1) || fb.out(strip) < fb.out(strip + 1)) {
                    visitor.piece(a, b, right, strip);
                }
            }
            if (fa.isClosed() && (fa.limit() > fa.catchOut() || fb.limit() > fb.catchOut())) {
                visitor.margin(a, b, right);
            }
        }
    }

    /**
     * Whether the diagonal runs from the inner edge at {@code a} to the outer edge at {@code b}.
     */
    static boolean splitsOutward(Ray a, Ray b, boolean right, int strip) {
        Flank fa = a.flank(right);
        Flank fb = b.flank(right);
        return fa.finished(strip, false) + fb.finished(strip, true)
                <= fa.finished(strip, true) + fb.finished(strip, false);
    }
}
