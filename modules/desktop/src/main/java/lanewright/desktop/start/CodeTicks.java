package lanewright.desktop.start;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import lanewright.survey.Survey;
import lanewright.survey.read.LineCodes;

/** Asks which codes of the files run along a line: a tick for each. */
final class CodeTicks {

    /** So many codes are offered as lines; more would be remarks. */
    private static final int MOST_CODES = 40;

    private final VBox box = new VBox(4);
    private final Runnable read;

    /** Codes that the owner is asked about. */
    private TreeSet<String> asked = new TreeSet<>();

    /** Ticks for no codes yet; each reads again. */
    CodeTicks(Runnable read) {
        this.read = read;
    }

    /** What to show. */
    Node node() {
        return box;
    }

    /** True if some code is offered. */
    boolean any() {
        return !asked.isEmpty();
    }

    /** The codes that are ticked. */
    List<String> chosen() {
        List<String> chosen = new ArrayList<>();
        for (Node node : box.getChildren()) {
            if (node instanceof CheckBox tick && tick.isSelected()) {
                chosen.add(tick.getText());
            }
        }
        return chosen;
    }

    /** Offers the codes of a survey. */
    void offer(Survey measured) {
        // Capitals do not count in codes, so one tick is enough for both spellings.
        TreeSet<String> found = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        Set<String> met = new HashSet<>(Set.of(""));
        boolean all = true;
        for (int i = 0; i < measured.size(); i++) {
            String code = measured.code(i).strip();
            if (!met.add(code) || found.contains(code)) {
                continue;
            }
            if (found.size() < MOST_CODES && code.length() <= LineCodes.LONGEST) {
                found.add(code);
            } else {
                all = false;
            }
        }
        if (found.equals(asked)) {
            return; // the boxes stay as they are, and so does what the panel shows
        }
        asked = found;
        List<String> chosen = chosen();
        box.getChildren().clear();
        if (!found.isEmpty()) {
            Label asks =
                    new Label(
                            "Which codes were walked along a line, shot after shot, such as the"
                                    + " edge of a road or the bottom of a ditch? The ground bends"
                                    + " there and nowhere between.");
            asks.setWrapText(true);
            box.getChildren().add(asks);
            for (String code : found) {
                var tick = new CheckBox(code);
                tick.setId("code-" + code);
                tick.setSelected(chosen.contains(code));
                tick.setOnAction(event -> read.run());
                box.getChildren().add(tick);
            }
            if (!all) {
                Label more =
                        new Label(
                                "These are the first "
                                        + MOST_CODES
                                        + " codes of your files, and none longer than "
                                        + LineCodes.LONGEST
                                        + " letters. Others can be written into the plan, under"
                                        + " survey, codes, breaklines.");
                more.setWrapText(true);
                more.getStyleClass().add("note");
                box.getChildren().add(more);
            }
        }
    }
}
