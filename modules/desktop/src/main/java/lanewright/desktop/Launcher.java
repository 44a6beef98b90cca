package lanewright.desktop;

import javafx.application.Application;

/** Starts the window. Apart from the application, because Java wants it so on a class path. */
public final class Launcher {

    private Launcher() {}

    /** Starts; the first argument may name a plan to open. */
    public static void main(String[] arguments) {
        // Pictures are painted in memory; the window is JavaFX's alone.
        System.setProperty("java.awt.headless", "true");
        Application.launch(DeskApp.class, arguments);
    }
}
