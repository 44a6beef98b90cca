package lanewright.sheets.drawing;

import java.util.Arrays;

/** Greys of a picture, never changed. */
public final class Shade {
    private final byte[] greys;

    /** Copies the greys. */
    public Shade(byte[] greys) {
        this.greys = greys.clone();
    }

    /** Number of pixels. */
    public int size() {
        return greys.length;
    }

    /** Grey of pixel {@code i}, 0 black to 255 white. */
    public int grey(int i) {
        return greys[i] & 0xff;
    }

    /** A copy of the greys, one byte each. */
    public byte[] copy() {
        return greys.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Shade shade && Arrays.equals(greys, shade.greys);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(greys);
    }
}
