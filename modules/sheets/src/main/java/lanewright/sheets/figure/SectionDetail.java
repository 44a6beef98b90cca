package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import lanewright.lane.section.Section;
import lanewright.lane.shape.Layer;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Type;

/** A section at its true proportions, with its measures and a legend of its areas. */
final class SectionDetail {

    private static final double LINE = Type.NOTE * Type.LEAD;

    /** Ground shown beyond the slopes, m. */
    private static final double CLOSE = 0.3;

    /** It is drawn no higher than this, pt. */
    private static final double TALLEST = 230;

    /** Room for words above and below, pt. */
    private static final double MEASURES = 54;

    private final DoubleFunction<TypicalSection> typical;
    private final UnitSystem units;

    SectionDetail(DoubleFunction<TypicalSection> typical, UnitSystem units) {
        this.typical = typical;
        this.units = units;
    }

    /** One section at its true proportions, as wide as the page, with its measures. */
    void draw(Flow flow, Section section, AtSection at) {
        var extent = Extent.of(section, CLOSE, at);
        double large = Math.min(flow.width() / extent.width(), TALLEST / extent.tall());
        double tall = extent.tall() * large + 2 * MEASURES;
        TypicalSection shape = typical.apply(section.station());
        flow.figure(
                tall + 36,
                (pen, box) -> {
                    pen.bold(
                            Role.TEXT,
                            "True to scale, with its measures: the lane at "
                                    + Words.fine(Quantity.station(section.station()), units),
                            box.x(),
                            box.y() + Type.NOTE,
                            Type.NOTE,
                            Anchor.START);
                    var frame = new Box(box.x(), box.y() + 14, box.width(), tall);
                    double spare = frame.width() / large - extent.width();
                    Scale scale =
                            Scale.in(
                                    frame,
                                    extent.left() - spare / 2,
                                    extent.low() - MEASURES / large,
                                    large,
                                    large);
                    Map<Role, Between.Ring> areas =
                            SectionDrawing.draw(section, shape, at, scale, pen, frame);
                    pen.frame(Role.FRAME, frame);
                    new Measures(section, shape, units, scale, frame).draw(pen, areas);
                    legend(pen, shape, areas, box.x(), frame.bottom() + 4, box.width());
                });
    }

    private void legend(
            Pen pen,
            TypicalSection shape,
            Map<Role, Between.Ring> areas,
            double left,
            double top,
            double width) {
        var entries = new ArrayList<Map.Entry<Role, String>>();
        int count = shape.layers().size();
        for (int i = 0; i < count; i++) {
            Layer layer = shape.layers().get(i);
            entries.add(
                    Map.entry(
                            SectionDrawing.role(i, count),
                            Quantity.depth(layer.thickness()).in(units) + " " + layer.role()));
        }
        Measures.NAMES.forEach(
                (role, words) -> {
                    if (areas.containsKey(role) || ANYWHERE.contains(role)) {
                        entries.add(Map.entry(role, words));
                    }
                });
        double x = left;
        double y = top;
        for (Map.Entry<Role, String> entry : entries) {
            double wide = 24 + Face.of(false).width(entry.getValue(), Type.NOTE) + 11;
            if (x + wide > left + width) {
                x = left;
                y += LINE;
            }
            Box sample = new Box(x, y, 20, Type.NOTE);
            pen.fill(entry.getKey(), sample).frame(Role.HAIRLINE, sample);
            pen.words(
                    Role.TEXT,
                    entry.getValue(),
                    x + 24,
                    y + Type.NOTE - 1,
                    Type.NOTE,
                    Anchor.START);
            x += wide;
        }
    }

    /** Areas that some section will show, whatever the enlarged one does. */
    private static final List<Role> ANYWHERE =
            List.of(Role.CUT, Role.FILL, Role.TOPSOIL, Role.TOPSOIL_BACK);
}
