package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import lanewright.lane.section.Section;
import lanewright.lane.shape.TypicalSection;
import lanewright.planner.listing.SectionListings;

/** Which sections of a lane are drawn. */
final class SectionChoice {

    /** Areas and heights nearer than this are the same, m² and m. */
    private static final double SAME = 1e-3;

    private final List<Section> sections;
    private final DoubleFunction<TypicalSection> typical;
    private final double interval;

    SectionChoice(List<Section> sections, DoubleFunction<TypicalSection> typical, double interval) {
        this.sections = sections;
        this.typical = typical;
        this.interval = interval;
    }

    /**
     * The sections that are drawn: both ends, every interval, and where a side becomes another
     * kind. One that stands twice at a station is drawn twice only if the two differ.
     */
    List<Section> drawn() {
        var drawn = new ArrayList<Section>();
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            boolean ends = i == 0 || i == sections.size() - 1;
            boolean round = Math.abs(Math.IEEEremainder(section.station(), interval)) < 1e-6;
            boolean jump = section.face() != Section.Face.SINGLE;
            boolean changed =
                    !drawn.isEmpty() && !kinds(section).equals(kinds(drawn.get(drawn.size() - 1)));
            boolean again =
                    section.face() == Section.Face.AFTER && isAlike(section, other(section));
            if (!again && (ends || round || jump || changed)) {
                drawn.add(section);
            }
        }
        return drawn;
    }

    private static String kinds(Section section) {
        return "left "
                + SectionListings.kind(section.left())
                + ", right "
                + SectionListings.kind(section.right());
    }

    /** Whether two sections at one station would make the same picture. */
    static boolean isAlike(Section a, Section b) {
        return Math.abs(a.areas().cut().area() - b.areas().cut().area()) < SAME
                && Math.abs(a.areas().fill().area() - b.areas().fill().area()) < SAME
                && Math.abs(a.profileHeight() - b.profileHeight()) < SAME;
    }

    /** The other section at the same station; the section itself if it stands alone. */
    Section other(Section section) {
        int at = sections.indexOf(section);
        return switch (section.face()) {
            case SINGLE -> section;
            case BEFORE -> at + 1 < sections.size() ? sections.get(at + 1) : section;
            case AFTER -> at > 0 ? sections.get(at - 1) : section;
        };
    }

    /** For each shape the section whose area of earth moved is in the middle of all. */
    List<Section> usual() {
        var shapes = new ArrayList<TypicalSection>();
        var usual = new ArrayList<Section>();
        for (Section section : sections) {
            TypicalSection shape = typical.apply(section.station());
            if (!shapes.contains(shape)) {
                shapes.add(shape);
            }
        }
        for (TypicalSection shape : shapes) {
            List<Section> ordered =
                    sections.stream()
                            .filter(s -> typical.apply(s.station()).equals(shape))
                            .sorted(
                                    Comparator.comparingDouble(
                                            s -> s.areas().cut().area() + s.areas().fill().area()))
                            .toList();
            usual.add(ordered.get(ordered.size() / 2));
        }
        return usual;
    }
}
