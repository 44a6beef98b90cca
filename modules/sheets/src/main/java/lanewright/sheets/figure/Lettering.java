package lanewright.sheets.figure;

import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;

/** Crosses and letters along wires and buried lines, where there is room. */
final class Lettering {

    private static final double NOTE = Type.NOTE;

    private final Land land;
    private final LandView view;
    private final Places places;

    Lettering(Land land, LandView view, Places places) {
        this.land = land;
        this.view = view;
        this.places = places;
    }

    void draw(Pen pen) {
        for (Land.Feature feature : land.features()) {
            if (HazardLine.isLettered(feature.role())) {
                Outline line = view.outline(feature);
                HazardLine.crosses(pen, feature.role(), line);
                String letter = HazardLine.letter(feature.role());
                HazardLine.letters(line, (x, y) -> letter(pen, letter, x, y));
                places.keepOff(line);
            }
        }
    }

    private void letter(Pen pen, String text, double x, double y) {
        var words =
                new Mark.Words(Role.TEXT, text, x, y + NOTE * 0.3, NOTE, true, Anchor.MIDDLE, 0);
        if (view.box().inset(2).holds(x, y) && places.take(words)) {
            Places.plate(pen, words);
            pen.add(words);
        }
    }
}
