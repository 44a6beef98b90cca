package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import lanewright.lane.section.Section;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;

/**
 * The lane unrolled: heights along the alignment of the ground, the finished lane, the earth as
 * shaped and the ditch bottoms, with pipes, water and the points between grades numbered, and below
 * them a band of figures in which every column has its own station.
 */
public final class ProfileDrawing {

    private static final double LEFT = 50;
    private static final double RIM = 9;

    /** Heights are stretched no more than this; more would make every lane a mountain. */
    private static final double MOST_STRETCH = 10;

    private final Stretch stretch;
    private final ProfileFigures figures;

    /**
     * A stretch of the profile.
     *
     * @param lane that is drawn
     * @param from first station drawn, m
     * @param to last station drawn, m
     */
    public ProfileDrawing(Unrolled lane, double from, double to) {
        stretch = Stretch.of(lane, from, to);
        figures = new ProfileFigures(stretch);
    }

    private double across(double width) {
        return (width - LEFT - 2 * RIM - 4) / length();
    }

    /** What is shown of the line, the land before the lane included, m. */
    private double length() {
        return stretch.to() - stretch.from() + stretch.before();
    }

    /**
     * How many times heights are stretched in a box of this size: a whole number.
     *
     * @param width of the box, pt
     * @param height of the box, pt
     */
    public double stretch(double width, double height) {
        double[] range = stretch.range();
        double across = across(width);
        double fits = (height - figures.height(across) - 46) / ((range[1] - range[0]) * across);
        return Math.max(1, Math.min(MOST_STRETCH, Math.floor(fits)));
    }

    /**
     * Draws the stretch into a box.
     *
     * @return what is drawn, for a legend
     */
    public Set<Role> draw(Pen pen, Box box) {
        var drawn = EnumSet.noneOf(Role.class);
        double across = across(box.width());
        double up = across * stretch(box.width(), box.height());
        double[] range = stretch.range();
        Box plot =
                new Box(
                        box.x() + LEFT,
                        box.y(),
                        length() * across + 2 * RIM,
                        box.height() - figures.height(across));
        double spare = plot.height() - (range[1] - range[0]) * up;
        double floor = range[0] - spare / 2 / up;
        double first = stretch.from() - stretch.before() - RIM / across;
        Scale scale = Scale.in(plot, first, floor, across, up);
        List<Section> columns = figures.columns(across);
        grid(pen, plot, scale, columns);
        pen.framed(plot, inside(plot, scale, drawn));
        pen.frame(Role.FRAME, plot);
        figures.draw(pen, plot, scale, columns);
        return drawn;
    }

    private Pen inside(Box plot, Scale scale, Set<Role> drawn) {
        var pen = new Pen();
        var places = new Places(plot.inset(1));
        var water = new ProfileWater(stretch, scale);
        var lines = new ProfileLines(stretch, scale);
        var points = new ProfilePoints(stretch, scale, places);
        var pipes = new ProfilePipes(stretch, scale, places);
        new ProfileEarth(stretch, scale).draw(pen, drawn);
        water.areas(pen, drawn);
        water.levels(pen);
        lines.draw(pen, places, drawn);
        points.reliefs(pen);
        points.draw(pen);
        pipes.draw(pen, drawn);
        points.ends(pen, plot);
        pipes.words(pen);
        water.words(pen, places);
        lines.names(pen, places, plot);
        return pen;
    }

    private void grid(Pen pen, Box plot, Scale scale, List<Section> columns) {
        Rule heights = Rule.of(stretch.units(), 22 / scale.up());
        double low = scale.b0();
        for (Rule.Tick tick : heights.ticks(low, low + plot.height() / scale.up())) {
            double y = scale.y(tick.at());
            pen.line(Role.GRID, plot.x(), y, plot.right(), y);
            if (y > plot.y() + 7 && y < plot.bottom() - 2) {
                pen.gauge(
                        Gauge.of(Gauge.Use.HEIGHT, tick.words(), tick.at()),
                        plot.x() - 5,
                        y + 3,
                        Type.NOTE,
                        false,
                        Anchor.END);
            }
        }
        for (Section section : columns) {
            double x = scale.x(section.station());
            pen.line(Role.GRID, x, plot.y(), x, plot.bottom());
        }
    }

    /** Stretches to draw one by one so that each is readable: as few equal ones as possible. */
    public static List<double[]> stretches(double length, double most) {
        int count = (int) Math.max(1, Math.ceil(length / most - 1e-9));
        var stretches = new ArrayList<double[]>();
        for (int i = 0; i < count; i++) {
            stretches.add(new double[] {length * i / count, length * (i + 1) / count});
        }
        return stretches;
    }
}
