package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.section.Section;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;

/**
 * The band of figures below a profile: the grade between points, and columns of station, ground and
 * finished height.
 */
final class ProfileFigures {

    private static final double NOTE = Type.NOTE;

    /** Height of a row of figures, which stand upright, pt. */
    private static final double ROW = 39;

    /** Least distance between two columns of figures, pt. */
    private static final double COLUMN = 1.45 * NOTE;

    /** Height of the row of grades where all of them lie level, pt. */
    private static final double LEVEL_GRADES = 14;

    private final Stretch stretch;

    ProfileFigures(Stretch stretch) {
        this.stretch = stretch;
    }

    /** Height of all rows, pt. */
    double height(double across) {
        return 3 * ROW + gradeHeight(across) + 6;
    }

    /** Draws the rows below a plot. */
    void draw(Pen pen, Box plot, Scale scale, List<Section> columns) {
        double below = plot.bottom() + 3;
        grades(pen, plot, scale, below);
        figures(pen, plot, scale, columns, below + gradeHeight(scale.across()));
    }

    private double gradeHeight(double across) {
        for (int i = 1; i < stretch.points().size(); i++) {
            double wide =
                    (stretch.points().get(i).station() - stretch.points().get(i - 1).station())
                            * across;
            if (Face.of(false).width(gradeWords(i), NOTE) + 4 > wide) {
                return ROW;
            }
        }
        return LEVEL_GRADES;
    }

    private double gradeTo(int i) {
        VerticalPoint a = stretch.points().get(i - 1);
        VerticalPoint b = stretch.points().get(i);
        return (b.height() - a.height()) / (b.station() - a.station());
    }

    private String gradeWords(int i) {
        String words = Words.fine(Quantity.grade(gradeTo(i)), stretch.units());
        return gradeTo(i) > 0 ? "+" + words : words;
    }

    /** The grade between each two points, in a row of its own below the plot. */
    private void grades(Pen pen, Box plot, Scale scale, double top) {
        double tall = gradeHeight(scale.across());
        pen.words(Role.TEXT, "grade", plot.x() - 5, top + tall / 2 + 3, NOTE, Anchor.END);
        for (int i = 1; i < stretch.points().size(); i++) {
            double left = scale.x(Math.max(stretch.from(), stretch.points().get(i - 1).station()));
            double right = scale.x(Math.min(stretch.to(), stretch.points().get(i).station()));
            if (right - left < 2) {
                continue;
            }
            pen.frame(Role.HAIRLINE, new Box(left, top, right - left, tall));
            String words = gradeWords(i);
            double wide = Face.of(false).width(words, NOTE);
            double middle = (left + right) / 2;
            if (wide + 4 <= right - left) {
                pen.words(Role.TEXT, words, middle, top + tall / 2 + 3, NOTE, Anchor.MIDDLE);
            } else if (right - left >= NOTE * 1.05) {
                pen.words(
                        Role.TEXT,
                        words,
                        middle + NOTE * 0.28,
                        top + tall / 2,
                        NOTE,
                        false,
                        Anchor.MIDDLE,
                        -90);
            }
        }
    }

    /**
     * The sections that have a column of figures: both ends, then the roundest stations, as far as
     * there is room for each.
     */
    List<Section> columns(double across) {
        var ranked = new ArrayList<Section>();
        int last = stretch.sections().size() - 1;
        if (last < 0) {
            return ranked;
        }
        ranked.add(stretch.sections().get(0));
        ranked.add(stretch.sections().get(last));
        for (double round : rounds()) {
            stretch.sections().stream()
                    .filter(section -> isRound(section, round))
                    .forEach(ranked::add);
        }
        var taken = new ArrayList<Section>();
        for (Section section : ranked) {
            boolean free = true;
            for (Section other : taken) {
                free &= Math.abs(other.station() - section.station()) * across >= COLUMN;
            }
            if (free) {
                taken.add(section);
            }
        }
        taken.sort(Comparator.comparingDouble(Section::station));
        return taken;
    }

    /** Distances that stations are counted in, widest first, m. */
    private double[] rounds() {
        double foot = 0.3048;
        return stretch.units() == UnitSystem.US
                ? new double[] {500 * foot, 100 * foot, 50 * foot, 25 * foot, 10 * foot, 5 * foot}
                : new double[] {500, 100, 50, 20, 10, 5, 1};
    }

    private static boolean isRound(Section section, double round) {
        return Math.abs(Math.IEEEremainder(section.station(), round)) < 1e-6;
    }

    /** Station, ground and finished height, a column for each that has room. */
    private void figures(Pen pen, Box plot, Scale scale, List<Section> columns, double top) {
        double bottom = top + 3 * ROW;
        String[] names = {"station", "ground", "finished"};
        for (int row = 0; row < names.length; row++) {
            double y = top + (row + 1) * ROW;
            pen.words(Role.TEXT, names[row], plot.x() - 5, y - ROW / 2 + 3, NOTE, Anchor.END);
            pen.line(Role.HAIRLINE, plot.x(), y, plot.right(), y);
        }
        for (Section section : columns) {
            double x = scale.x(section.station());
            pen.line(Role.TICK, x, plot.bottom(), x, plot.bottom() + 3);
            String at = Words.fine(Quantity.station(section.station()), stretch.units());
            turned(pen, at, x, top + ROW - 3, true);
            turned(pen, shown(Stretch.ground(section)), x, top + 2 * ROW - 3, false);
            turned(pen, shown(section.profileHeight()), x, bottom - 3, false);
        }
    }

    private String shown(double height) {
        return Words.number(Quantity.height(height), stretch.units());
    }

    private static void turned(Pen pen, String words, double x, double foot, boolean bold) {
        pen.words(Role.TEXT, words, x + NOTE * 0.35, foot, NOTE, bold, Anchor.START, -90);
    }
}
