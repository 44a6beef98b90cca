package lanewright.desktop.ask;

import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import org.jspecify.annotations.Nullable;

/**
 * Keeps the keyboard where it is while what it was on is replaced. Else it goes on at the top of
 * the window, and a list that rolls rolls there with it.
 */
final class Focus {

    private Focus() {}

    /** Whether the keyboard is on something in a place. */
    static boolean within(Parent place) {
        Scene scene = place.getScene();
        Node at = scene == null ? null : scene.getFocusOwner();
        while (at != null && at != place) {
            at = at.getParent();
        }
        return at != null;
    }

    /** Puts it on the first button of a place that can be pressed, or on something else. */
    static void to(Parent place, Node otherwise) {
        Button first = first(place);
        (first == null ? otherwise : first).requestFocus();
    }

    private static @Nullable Button first(Parent place) {
        for (Node each : place.getChildrenUnmodifiable()) {
            Button found = null;
            if (each instanceof Button button) {
                found = button.isDisable() ? null : button;
            } else if (each instanceof Parent parent) {
                found = first(parent);
            }
            if (found != null) {
                return found;
            }
        }
        return null;
    }
}
