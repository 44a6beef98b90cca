package lanewright.desktop;

import javafx.application.Application;

/** Starts the window. Apart from the application, because Java wants it so on a class path. */
public final class Launcher {

    private Launcher() {}

    /** Starts; the first argument may name a plan to open. */
    public static void main(String[] arguments) {
        Application.launch(DeskApp.class, arguments);
    }
}
