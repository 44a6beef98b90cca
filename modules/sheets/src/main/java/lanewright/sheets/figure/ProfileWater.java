package lanewright.sheets.figure;

import java.util.Set;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionLine;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;

/** Standing water in a profile. */
final class ProfileWater {

    private static final double NOTE = Type.NOTE;

    private final Stretch stretch;
    private final Scale scale;

    ProfileWater(Stretch stretch, Scale scale) {
        this.stretch = stretch;
        this.scale = scale;
    }

    /** Water from what it stands on up to its level: nothing where the land stands out of it. */
    void areas(Pen pen, Set<Role> drawn) {
        for (StandingWater pool : stretch.pools()) {
            for (int i = 1; i < stretch.sections().size(); i++) {
                Section a = stretch.sections().get(i - 1);
                Section b = stretch.sections().get(i);
                double begin = Math.max(pool.from(), a.station());
                double end = Math.min(pool.to(), b.station());
                if (!(begin < end)) {
                    continue;
                }
                double length = b.station() - a.station();
                double bedA = bed(a, pool);
                double rise = (bed(b, pool) - bedA) / length;
                double deepBegin = pool.level() - bedA - rise * (begin - a.station());
                double deepEnd = pool.level() - bedA - rise * (end - a.station());
                if (!Double.isFinite(deepBegin + deepEnd) || (deepBegin <= 0 && deepEnd <= 0)) {
                    continue;
                }
                if (deepBegin < 0) {
                    begin += (end - begin) * deepBegin / (deepBegin - deepEnd);
                    deepBegin = 0;
                } else if (deepEnd < 0) {
                    end = begin + (end - begin) * deepBegin / (deepBegin - deepEnd);
                    deepEnd = 0;
                }
                water(pen, pool, new double[] {begin, end, deepBegin, deepEnd});
                drawn.add(Role.WATER);
            }
        }
    }

    /** How high water stands, as a line all along: it shows on the far side of a bank too. */
    void levels(Pen pen) {
        for (StandingWater pool : stretch.pools()) {
            double y = scale.y(pool.level());
            double left = scale.x(Math.max(stretch.from(), pool.from()));
            double right = scale.x(Math.min(stretch.to(), pool.to()));
            if (left < right) {
                pen.line(Role.WATER, left, y, right, y);
            }
        }
    }

    private void water(Pen pen, StandingWater pool, double[] piece) {
        double left = scale.x(piece[0]);
        double right = scale.x(piece[1]);
        double top = scale.y(pool.level());
        pen.area(
                Role.WATER,
                Outline.closed(
                        left,
                        top,
                        right,
                        top,
                        right,
                        scale.y(pool.level() - piece[3]),
                        left,
                        scale.y(pool.level() - piece[2])));
    }

    /** The lowest that the finished land is across the lane within the reach of a pool, m. */
    private static double bed(Section section, StandingWater pool) {
        double low = Double.NaN;
        SectionLine finished = section.finished();
        double left = finished.size() < 2 ? 0 : finished.offset(0);
        double right = finished.size() < 2 ? 0 : finished.offset(finished.size() - 1);
        for (boolean built : new boolean[] {false, true}) {
            SectionLine line = built ? finished : section.ground();
            for (int i = 0; i < line.size(); i++) {
                double offset = line.offset(i);
                boolean inside = offset >= left && offset <= right;
                if (offset >= pool.leftmost() - 0.01
                        && offset <= pool.rightmost() + 0.01
                        && inside == built) {
                    low = Double.isNaN(low) ? line.height(i) : Math.min(low, line.height(i));
                }
            }
        }
        for (double offset : new double[] {pool.leftmost(), pool.rightmost()}) {
            boolean built = offset >= left && offset <= right;
            double z = (built ? finished : section.ground()).at(offset);
            low = Double.isNaN(low) || z < low ? z : low;
        }
        return low;
    }

    /** What is said of each, beside its deepest place. */
    void words(Pen pen, Places places) {
        for (StandingWater pool : stretch.pools()) {
            double middle =
                    Math.max(stretch.from(), Math.min(stretch.to(), (pool.from() + pool.to()) / 2));
            double deepest = Double.POSITIVE_INFINITY;
            for (Section section : stretch.sections()) {
                double bed = bed(section, pool);
                if (section.station() >= pool.from()
                        && section.station() <= pool.to()
                        && bed < deepest) {
                    deepest = bed;
                    middle = section.station();
                }
            }
            double x = scale.x(middle);
            double y = scale.y(pool.level() - Math.min(0.1, (pool.level() - pool.bottom()) / 2));
            places.put(pen, Role.WATER_TEXT, pool.words(), x, y + 4, NOTE, true, 160);
        }
    }
}
