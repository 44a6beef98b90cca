package lanewright.desktop.look;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import javafx.scene.text.Font;

/** The one typeface, brought along so that every machine shows the same. */
public final class Type {

    /** Name under which the typeface is known once it is loaded. */
    public static final String FAMILY = "Noto Sans";

    /** Ordinary words, px. */
    public static final double BODY = 13;

    /** Notes and axis numbers, px: nothing is smaller. */
    public static final double NOTE = 11;

    private Type() {}

    /** Loads the typeface. May be called more than once. */
    public static void ready() {
        load("NotoSans_400Regular.ttf");
        load("NotoSans_700Bold.ttf");
    }

    private static void load(String name) {
        String resource = "/lanewright/sheets/font/" + name;
        try (InputStream in = Type.class.getResourceAsStream(resource)) {
            if (in == null || Font.loadFont(in, BODY) == null) {
                throw new IllegalStateException("the font " + resource + " is missing");
            }
        } catch (IOException broken) {
            throw new UncheckedIOException("the font " + resource + " cannot be read", broken);
        }
    }
}
