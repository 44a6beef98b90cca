package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.paint.Color;
import lanewright.desktop.look.Theme;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.drawing.Style;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Words and marks stand out from what is behind them, in the light and in the dark. */
class ContrastTest {

    /** WCAG 2.1, success criterion 1.4.3: words. */
    private static final double WORDS = 4.5;

    /** WCAG 2.1, success criterion 1.4.11: marks and edges of controls in use. */
    private static final double MARKS = 3;

    @Test
    @Tag("outside")
    @DisplayName("contrast of words and marks | WCAG 2.1, 1.4.3 and 1.4.11, W3C 2018 | from memory")
    void wordsAndMarksOfTheWindow() throws IOException {
        for (Map<String, Color> theme : List.of(theme(".desk"), theme(".desk.dark"))) {
            for (String paper : List.of("paper", "sheet", "side")) {
                for (String words : List.of("ink", "soft", "look", "accent")) {
                    double least = words.equals("accent") ? MARKS : WORDS;
                    check(words + " on " + paper, theme.get(words), theme.get(paper), least);
                }
            }
            check("acting words", theme.get("accent-ink"), theme.get("accent"), WORDS);
        }
    }

    @Test
    void wordsAndLinesOfDrawings() {
        for (Theme theme : Theme.values()) {
            Color plate = theme.colour(Style.of(Role.PLATE).fill());
            for (Role role : List.of(Role.TEXT, Role.NOTE, Role.WATER_TEXT)) {
                check(theme + " " + role, theme.colour(Style.of(role).fill()), plate, WORDS);
            }
            for (Role role :
                    List.of(
                            Role.FINISHED,
                            Role.GROUND_LINE,
                            Role.SUBGRADE,
                            Role.DITCH_LEFT,
                            Role.PLACE,
                            Role.ACCENT,
                            Role.HAZARD,
                            Role.DIP,
                            Role.WATER_BAR,
                            Role.TURN_OUT,
                            Role.RELIEF_PIPE,
                            Role.OUTLET_PERMITTED,
                            Role.OUTLET_FORBIDDEN,
                            Role.OUTLET_TO_ASK,
                            Role.WATER)) {
                check(theme + " " + role, theme.colour(Style.of(role).stroke()), plate, MARKS);
            }
        }
    }

    /** The steps of wet ground are told apart by how dark they are, whatever their hue. */
    @Test
    void tonesOfWetGround() {
        for (Theme theme : Theme.values()) {
            Color beside = theme.colour(Style.of(Role.PLATE).fill());
            check(theme + " the wettest", tone(theme, Role.WET_MOST), beside, MARKS);
            check(theme, Role.WET_MOST, Role.WET_NEXT);
            check(theme, Role.WET_NEXT, Role.WET_DAMP);
            check(theme + " damp", tone(theme, Role.WET_DAMP), beside, 1.3);
        }
    }

    private static Color tone(Theme theme, Role role) {
        return theme.colour(Style.of(role).fill());
    }

    private static void check(Theme theme, Role one, Role other) {
        check(theme + " " + one + " " + other, tone(theme, one), tone(theme, other), 1.4);
    }

    private static void check(String what, Color one, Color other, double least) {
        double ratio = ratio(one, other);
        assertTrue(ratio >= least, what + " has " + ratio + ", least is " + least);
    }

    /** WCAG 2.1, definition of contrast ratio. */
    private static double ratio(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** WCAG 2.1, definition of relative luminance. */
    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(double part) {
        return part <= 0.03928 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }

    private static Map<String, Color> theme(String selector) throws IOException {
        try (var in = ContrastTest.class.getResourceAsStream("/lanewright/desktop/look.css")) {
            String css = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            int from = css.indexOf(selector + " {");
            String block = css.substring(from, css.indexOf('}', from));
            Map<String, Color> colours = new HashMap<>();
            Matcher each = Pattern.compile("\\s([a-z-]+): (#[0-9A-Fa-f]{6});").matcher(block);
            while (each.find()) {
                colours.put(each.group(1), Color.web(each.group(2)));
            }
            return colours;
        }
    }
}
