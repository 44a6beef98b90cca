package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import lanewright.desktop.look.Type;
import lanewright.measure.Finding.Topic;
import lanewright.sheets.drawing.Mark;
import org.junit.jupiter.api.Test;

/** Words on the land never stand on other words, whichever question is open. */
class LandWordsTest extends WaterCard {

    /** How far two boxes of words may reach into each other, px: what a rounding of widths does. */
    private static final double TOUCH = 0.5;

    @Test
    void noWordsStandOnOthersOnTheFirstSample() throws Exception {
        nothingOverlaps("marrow-fold");
    }

    @Test
    void noWordsStandOnOthersOnTheSecondSample() throws Exception {
        nothingOverlaps("wickle-bank");
    }

    private void nothingOverlaps(String sample) throws Exception {
        show(sample);
        int digit = 0;
        for (Topic topic : Topic.values()) {
            digit++;
            hand.keys(KeyCode.CONTROL, KeyCode.valueOf("DIGIT" + digit));
            hand.click("fit");
            Hand.pause(200);
            if (topic == Topic.GROUND || topic == Topic.WATER) {
                hand.look("words-" + sample + "-" + digit);
            }
            List<Mark.Words> words = words();
            assertTrue(words.size() > 8, topic + " " + words.size());
            assertEquals(List.of(), overlapping(words), sample + " " + topic);
        }
    }

    private List<Mark.Words> words() {
        return Hand.on(
                () ->
                        window.land().drawnWords().stream()
                                .filter(mark -> mark instanceof Mark.Words)
                                .map(mark -> (Mark.Words) mark)
                                .toList());
    }

    private static List<String> overlapping(List<Mark.Words> words) {
        List<Area> boxes = Hand.on(() -> words.stream().map(LandWordsTest::box).toList());
        List<String> found = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            for (int k = i + 1; k < words.size(); k++) {
                if (!boxes.get(i).getBounds2D().intersects(boxes.get(k).getBounds2D())) {
                    continue;
                }
                Area both = new Area(boxes.get(i));
                both.intersect(boxes.get(k));
                if (!both.isEmpty()) {
                    found.add(words.get(i).text() + " / " + words.get(k).text());
                }
            }
        }
        return found;
    }

    /** The box of words as the toolkit measures its own letters, turned as they are. */
    private static Area box(Mark.Words words) {
        Text text = new Text(words.text());
        text.setFont(
                Font.font(
                        Type.FAMILY,
                        words.bold() ? FontWeight.BOLD : FontWeight.NORMAL,
                        words.size()));
        text.setBoundsType(javafx.scene.text.TextBoundsType.VISUAL);
        Bounds seen = text.getLayoutBounds();
        double left = words.x() - words.anchor().part() * text.prefWidth(-1);
        var box =
                new Rectangle2D.Double(
                        left + seen.getMinX() + TOUCH,
                        words.y() + seen.getMinY() + TOUCH,
                        Math.max(1, seen.getWidth() - 2 * TOUCH),
                        Math.max(1, seen.getHeight() - 2 * TOUCH));
        return new Area(
                AffineTransform.getRotateInstance(
                                Math.toRadians(words.turn()), words.x(), words.y())
                        .createTransformedShape(box));
    }
}
