package lanewright.planner.work;

import java.util.ArrayList;
import java.util.List;
import lanewright.ground.Ground;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionSet;
import lanewright.stone.LayerStone;
import lanewright.stone.Load;
import lanewright.stone.StoneReport;
import org.jspecify.annotations.Nullable;

/** Sets the marks that stand on the lane and beside its stone. */
final class MarkSetting {

    /** How far outside the stone a load mark stands, m: 1 ft, our choice, clear of the spreader. */
    static final double OUTSIDE = 0.3048;

    /** Least distance between two rows of stakes, m: 1 ft, our choice, room for a stake's hub. */
    static final double APART = 0.3048;

    private MarkSetting() {}

    /**
     * Sections that are staked: all but those that stand too close to the one before. The last, at
     * the lane's end, is staked instead of the one before it.
     */
    static List<Section> staked(List<Section> sections) {
        List<Section> staked = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            if (section.face() == Section.Face.AFTER) {
                continue;
            }
            boolean close =
                    !staked.isEmpty()
                            && section.station() - staked.get(staked.size() - 1).station() < APART;
            boolean last = i == sections.size() - 1;
            if (close && last && staked.size() > 1) {
                staked.remove(staked.size() - 1);
            }
            if (!close || (last && !staked.isEmpty())) {
                staked.add(section);
            }
        }
        return staked;
    }

    /** The line and both edges at every section that is staked, in that order at each station. */
    static List<LaneMark> onLane(
            SectionSet set, List<Section> staked, Ground ground, Stakes.@Nullable Levels levels) {
        List<LaneMark> marks = new ArrayList<>();
        Alignment line = set.design().alignment();
        for (Section section : staked) {
            for (LaneMark.Kind kind : LaneMark.Kind.values()) {
                double offset =
                        switch (kind) {
                            case CENTRE -> 0;
                            case LEFT_EDGE -> section.left().edge().offset();
                            case RIGHT_EDGE -> section.right().edge().offset();
                        };
                double height =
                        switch (kind) {
                            case CENTRE -> section.profileHeight();
                            case LEFT_EDGE -> section.left().edge().height();
                            case RIGHT_EDGE -> section.right().edge().height();
                        };
                Place place = new Place(section.station(), offset);
                double x = line.x(place);
                double y = line.y(place);
                double was = levels == null ? Double.NaN : ground.heightAt(x, y);
                double finished = levels == null ? Double.NaN : height;
                double sight = levels == null ? Double.NaN : levels.instrument();
                marks.add(
                        new LaneMark(
                                kind,
                                section.station(),
                                offset,
                                x,
                                y,
                                was,
                                finished,
                                finished - was,
                                Stakes.rod(sight, finished)));
            }
        }
        return marks;
    }

    /** Where each load starts and stops, layer by layer in the order of laying, on the right. */
    static List<LoadMark> ofLoads(SectionSet set, StoneReport stone) {
        List<LoadMark> marks = new ArrayList<>();
        for (LayerStone layer : stone.layers()) {
            List<Load> loads = layer.loads();
            for (int i = 0; i <= loads.size() && !loads.isEmpty(); i++) {
                boolean end = i == loads.size();
                double station = end ? loads.get(i - 1).to() : loads.get(i).from();
                double offset = besideStone(set, station) + OUTSIDE;
                Place place = new Place(station, offset);
                marks.add(
                        new LoadMark(
                                layer.supply().role(),
                                i == 0 ? 0 : loads.get(i - 1).number(),
                                end ? 0 : loads.get(i).number(),
                                station,
                                offset,
                                set.design().alignment().x(place),
                                set.design().alignment().y(place)));
            }
        }
        return marks;
    }

    /** How far the stone reaches to the right at a station, m: the wider section about it. */
    private static double besideStone(SectionSet set, double station) {
        double before = Double.NEGATIVE_INFINITY;
        double after = Double.NEGATIVE_INFINITY;
        for (Section section : set.sections()) {
            double out = section.right().stoneLow().offset();
            if (section.station() <= station) {
                before = out;
            }
            if (section.station() >= station) {
                after = out;
                break;
            }
        }
        return Math.max(before, after);
    }
}
