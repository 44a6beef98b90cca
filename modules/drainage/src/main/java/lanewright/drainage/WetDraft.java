package lanewright.drainage;

import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.Limit;
import lanewright.drainage.along.Side;
import lanewright.drainage.along.WetStretch;
import lanewright.measure.Finding.Level;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import org.jspecify.annotations.Nullable;

/** A wet place while things are still joined to it. */
final class WetDraft {

    /** A low point of the lane this near to a place belongs to it, m. Our choice. */
    private static final double NEAR = 10;

    final double x;
    final double y;
    WetPlace.Kind kind = WetPlace.Kind.DAMMED;
    String code = "lane-dams-water";
    Level level = Level.LOOK;
    @Nullable Side side;
    double station = Double.NaN;
    double from = Double.NaN;
    double to = Double.NaN;
    double depth = Double.NaN;
    @Nullable Pool pool;
    DitchReach.@Nullable Outlet outlet;
    double drained = Double.NaN;
    boolean isLeast;
    @Nullable CulvertLine pipe;
    Saying says = Saying.plain("");
    Saying last = Saying.plain("");
    @Nullable Quantity measured;
    @Nullable Limit limit;
    Saying remedy = Saying.plain("");
    Saying fit = Saying.plain("");
    Cure cure = Cure.of(Cure.Kind.KEEP, Saying.plain("look at it after rain"));

    WetDraft(double x, double y) {
        this.x = x;
        this.y = y;
    }

    /** The limit, in the kind of what was measured. */
    @Nullable Quantity limitShown() {
        return limit == null || measured == null
                ? null
                : new Quantity(limit.value(), measured.kind());
    }

    void add(Saying more) {
        says = WetWords.then(says, more);
    }

    /** Whether a stretch is part of this place. */
    boolean takes(WetStretch stretch) {
        boolean sameSide = side == null || stretch.side() == null || side == stretch.side();
        if (pool != null) {
            return (stretch.kind() != WetStretch.Kind.LEVEL && endsHere(stretch, pool))
                    || (sameSide && overlaps(stretch, 0));
        }
        return switch (stretch.kind()) {
            case DEAD_END -> false;
            case EDGE, TROUGH ->
                    outlet != null
                            && kind == WetPlace.Kind.DITCH
                            && outlet.equals(stretch.outlet());
            case LEVEL -> outlet != null && sameSide && overlaps(stretch, 0);
            case SAG -> sameSide && overlaps(stretch, NEAR);
        };
    }

    private static boolean endsHere(WetStretch stretch, Pool pool) {
        DitchReach ditch = stretch.ditch();
        DitchReach.Outlet outlet = stretch.outlet();
        return ditch != null
                && outlet != null
                && ditch.standsIn(outlet, (atX, atY) -> pool.spot().covers(atX, atY));
    }

    private boolean overlaps(WetStretch stretch, double margin) {
        return stretch.from() <= to + margin && stretch.to() >= from - margin;
    }

    void join(WetStretch stretch) {
        boolean told =
                switch (stretch.kind()) {
                    // Its end is told with the water, or with the dead end itself.
                    case DEAD_END, SAG -> pool != null;
                    case LEVEL -> false;
                    // That water comes onto the lane is told by where it runs over.
                    case EDGE, TROUGH -> pool != null && pool.spill().way() == Pool.SpillWay.LANE;
                };
        if (!told) {
            add(stretch.says());
        }
        if (pool == null) {
            from = Math.min(from, stretch.from());
            to = Math.max(to, stretch.to());
        }
    }
}
