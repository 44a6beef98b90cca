package lanewright.sheets.drawing;

/** Which part of some words stands at their place. */
public enum Anchor {
    /** Their beginning. */
    START(0),
    /** Their middle. */
    MIDDLE(0.5),
    /** Their end. */
    END(1);

    private final double part;

    Anchor(double part) {
        this.part = part;
    }

    /** Part of the words that lies before the place, 0 to 1. */
    public double part() {
        return part;
    }
}
