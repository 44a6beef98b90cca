package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.List;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;
import org.jspecify.annotations.Nullable;

/**
 * Words about places of a map. Each in its turn takes the best place that is left; where the line
 * from one to its place would then run through the words of another or the line from them, or one
 * finds no room, it is tried whether all stand better if that one has its turn first.
 */
final class LandLabels {

    /** How far words may stand from what they speak of, pt. */
    private static final double FARTHEST = 170;

    /** What it is worth to a reader that words are there at all, pt. */
    private static final double MISSING = 600;

    /** So many orders are tried at the most. */
    private static final int TRIES = 12;

    /** Draws words at the place that was found for them. */
    @FunctionalInterface
    interface Drawn {
        /** Draws {@code words}, or what stands for them where null: there was no room. */
        void draw(Pen pen, Mark.@Nullable Words words, Places places);
    }

    /**
     * Words that want a place.
     *
     * @param role of the words
     * @param words that want room
     * @param x of what they speak of, pt
     * @param y of what they speak of, pt
     * @param bold whether they are bold
     * @param drawn how they are drawn
     */
    record Asked(Role role, String words, double x, double y, boolean bold, Drawn drawn) {}

    /** Places for words in an order, and how bad all of them are together, pt. */
    private record Laid(List<Asked> order, List<Places.@Nullable Found> found, double cost) {

        boolean isBad(int i) {
            Places.Found at = found.get(i);
            return at == null || at.isCrossed();
        }
    }

    private final Places free;
    private final List<Asked> asked = new ArrayList<>();

    /** Words at places that are free. */
    LandLabels(Places free) {
        this.free = free;
    }

    void ask(Asked one) {
        asked.add(one);
    }

    /** Asks for level words on white with a line that leads to their place. */
    void ask(Role role, String words, double x, double y, boolean bold) {
        asked.add(
                new Asked(
                        role,
                        words,
                        x,
                        y,
                        bold,
                        (pen, at, places) -> {
                            if (at != null) {
                                places.lead(pen, x, y, Places.box(at));
                                Places.plate(pen, at);
                                pen.add(at);
                            }
                        }));
    }

    /**
     * Draws all words.
     *
     * @return the places that are free after that
     */
    Places draw(Pen pen) {
        Laid laid = best();
        var places = new Places(free);
        for (int i = 0; i < laid.order().size(); i++) {
            Places.Found found = laid.found().get(i);
            Mark.Words words = found == null ? null : found.words();
            if (words != null && !places.take(words)) {
                throw new IllegalStateException("what was free is free");
            }
            laid.order().get(i).drawn().draw(pen, words, places);
        }
        return places;
    }

    private Laid best() {
        Laid best = laid(asked);
        int tries = 0;
        for (int i = 1; i < best.order().size() && tries < TRIES; i++) {
            if (best.isBad(i)) {
                var order = new ArrayList<>(best.order());
                order.add(0, order.remove(i));
                Laid other = laid(order);
                tries++;
                if (other.cost() < best.cost()) {
                    best = other;
                    i = 0;
                }
            }
        }
        return best;
    }

    private Laid laid(List<Asked> order) {
        var places = new Places(free);
        var unseen = new Pen();
        var found = new ArrayList<Places.@Nullable Found>();
        double cost = 0;
        for (Asked one : order) {
            Places.Found at =
                    places.find(
                            one.role(),
                            one.words(),
                            one.x(),
                            one.y(),
                            Type.NOTE,
                            one.bold(),
                            FARTHEST);
            found.add(at);
            cost += at == null ? MISSING : at.cost();
            if (at != null) {
                places.lead(unseen, one.x(), one.y(), Places.box(at.words()));
            }
        }
        return new Laid(order, found, cost);
    }
}
