package lanewright.sheets.figure;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import lanewright.measure.UnitSystem;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;

/** The land from above, north up, with shading, contours, the lane and its water. */
public final class LandDrawing {

    private static final double RIM = 8;

    private final Land land;
    private final LandView view;
    private Places places;
    private final Set<Role> drawn = EnumSet.noneOf(Role.class);

    private LandDrawing(Land land, LandView view) {
        this.land = land;
        this.view = view;
        places = new Places(view.box().inset(1.5));
    }

    /** The scale at which the land fits into a box. */
    public static MapScale scale(Land land, UnitSystem units, double width, double height) {
        double wide = land.right() - land.left();
        double tall = land.high() - land.low();
        MapScale byWidth = MapScale.fitting(units, wide, width - 2 * RIM);
        MapScale byHeight = MapScale.fitting(units, tall, height - 2 * RIM);
        return byWidth.points() < byHeight.points() ? byWidth : byHeight;
    }

    /** What is seen of the land in a box of this size: left, low, right and high, local metres. */
    public static double[] seen(Land land, MapScale scale, double width, double height) {
        double x = (land.left() + land.right()) / 2;
        double y = (land.low() + land.high()) / 2;
        double dx = width / 2 / scale.points();
        double dy = height / 2 / scale.points();
        return new double[] {x - dx, y - dy, x + dx, y + dy};
    }

    /**
     * Draws the land into a box at the given scale.
     *
     * @return what is drawn, for a legend
     */
    public static Set<Role> draw(
            Land land, Land.Heights heights, MapScale scale, Pen pen, Box box) {
        var drawing = new LandDrawing(land, LandView.of(land, scale, box));
        drawing.draw(pen, heights);
        return drawing.drawn;
    }

    private void draw(Pen pen, Land.Heights heights) {
        var inside = new Pen();
        HillShade.draw(inside, view, heights);
        // Drawn last, but first to take its room.
        Pen furniture = new Furniture(land, view, places).drawn();
        new LandLines(land, view, places, drawn).draw(inside);
        new LandSpots(land, view, places, drawn).draw(inside);
        new Lettering(land, view, places).draw(inside);
        new LandStations(land, view, places).draw(inside);
        places = labels().draw(inside);
        new ContourWords(land, view, places).draw(inside);
        furniture.marks().forEach(inside::add);
        pen.framed(view.box(), inside);
        pen.frame(Role.FRAME, view.box());
    }

    /** Labels and warnings, those first that are put where they like best. */
    private LandLabels labels() {
        var labels = new LandLabels(places);
        ranked(labels, 0, 0);
        List<LandLabels.Asked> looks = new LandWarnings(land, view).asked();
        if (!looks.isEmpty()) {
            drawn.add(Role.LOOK);
        }
        looks.forEach(labels::ask);
        ranked(labels, 1, Integer.MAX_VALUE);
        return labels;
    }

    /** Labels of some ranks, in their order. */
    private void ranked(LandLabels labels, int first, int last) {
        land.labels().stream()
                .filter(label -> label.rank() >= first && label.rank() <= last)
                .sorted(Comparator.comparingInt(Land.Label::rank))
                .forEach(
                        label -> {
                            double x = view.x(label.x());
                            double y = view.y(label.y());
                            if (view.box().holds(x, y)) {
                                labels.ask(label.role(), label.words(), x, y, label.bold());
                            }
                        });
    }
}
