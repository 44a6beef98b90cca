package lanewright.sheets.figure;

import java.util.Set;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;

/**
 * Pipes in a profile, which looks along their bore: as tall as from the bottom of the lower end to
 * the top of the higher. Beside them the name of the road's own ditch.
 */
final class ProfilePipes {

    /** Least half of the width of a bore, pt. */
    private static final double LEAST = 2.6;

    /** How far words may stand from what they speak of, pt. */
    private static final double FARTHEST = 150;

    private final Stretch stretch;
    private final Scale scale;
    private final Places places;

    ProfilePipes(Stretch stretch, Scale scale, Places places) {
        this.stretch = stretch;
        this.scale = scale;
        this.places = places;
    }

    /** Draws the pipes, and the road's ditch over what stands before it. */
    void draw(Pen pen, Set<Role> drawn) {
        RoadDitch road = stretch.road();
        if (road != null) {
            var path = new Outline.Builder();
            for (int i = 0; i < road.along().size(); i++) {
                path.to(scale.x(road.along().offset(i)), scale.y(road.along().height(i)));
            }
            pen.line(Role.GROUND_LINE, path.open());
        }
        for (PipeUnder pipe : stretch.pipes()) {
            Box box = box(pipe);
            Outline barrel = barrel(box);
            pen.area(Role.BARREL, barrel).line(Role.BARREL, barrel);
            places.keepOff(box.inset(-1));
            drawn.add(Role.BARREL);
        }
    }

    private Box box(PipeUnder pipe) {
        double tall = pipe.tall(scale.up());
        double half =
                Double.isNaN(pipe.bore())
                        ? tall / 2
                        : Math.max(LEAST, pipe.bore() * scale.across() / 2);
        double top = scale.y(pipe.high()) - tall;
        return new Box(scale.x(pipe.station()) - half, top, 2 * half, scale.y(pipe.low()) - top);
    }

    /** A box with its top and bottom rounded. */
    private static Outline barrel(Box box) {
        double half = box.width() / 2;
        double round = Math.min(half, box.height() / 2);
        var path = new Outline.Builder();
        int pieces = 8;
        for (int i = 0; i <= 2 * pieces + 1; i++) {
            boolean over = i <= pieces;
            double turn = Math.PI * (over ? i : i - 1) / pieces;
            double middle = over ? box.y() + round : box.bottom() - round;
            path.to(
                    box.middle() - half * StrictMath.cos(turn),
                    middle - round * StrictMath.sin(turn));
        }
        return path.closed();
    }

    /** Says what the pipes are, and where the road's ditch is. */
    void words(Pen pen) {
        for (PipeUnder pipe : stretch.pipes()) {
            Box box = box(pipe);
            places.put(
                    pen,
                    Role.TEXT,
                    pipe.words(),
                    box.middle(),
                    box.bottom() + 1,
                    Type.NOTE,
                    true,
                    FARTHEST);
        }
        RoadDitch road = stretch.road();
        if (road != null) {
            double x = scale.x(road.station());
            double y = scale.y(road.bottom());
            if (!places.name(pen, "road ditch", x, y, 1, FARTHEST)) {
                places.put(pen, Role.TEXT, "road ditch", x, y, Type.NOTE, false, FARTHEST);
            }
        }
    }
}
