package lanewright.desktop.look;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.LinkedHashMap;
import java.util.Map;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Mark;

/**
 * Writes level words. Most stand in the next picture again, so that the dots of those written last
 * are kept: laying them takes a tenth of painting their letters. Words stand on whole dots from
 * line to line and on quarters of a dot along it, so that the same words give the same dots.
 */
final class Letters {

    /** Words kept, in a few megabytes. */
    private static final int MOST = 1500;

    /** Larger letters are seldom, and their dots many. */
    private static final double LARGEST = 40;

    private static final int QUARTERS = 4;

    private record Key(String text, boolean bold, double size, int rgb, int quarter) {}

    /** The dots of words, and where their left top lies from the dot that they begin at. */
    private record Written(BufferedImage image, int left, int top) {}

    private static final Map<Key, Written> KEPT = new Kept();

    /** What was written last. */
    private static final class Kept extends LinkedHashMap<Key, Written> {
        Kept() {
            super(16, 0.75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Written> eldest) {
            return size() > MOST;
        }
    }

    private Letters() {}

    /** The letters of words at their place, as one path. */
    static Path2D path(Mark.Words words) {
        var to = AffineTransform.getTranslateInstance(words.x(), words.y());
        to.rotate(StrictMath.toRadians(words.turn()));
        to.scale(words.size(), -words.size());
        to.translate(-words.anchor().part() * words.width() / words.size(), 0);
        return path(words.text(), words.bold(), to);
    }

    private static Path2D path(String text, boolean bold, AffineTransform to) {
        Face face = Face.of(bold);
        var letters = new Path2D.Double(Path2D.WIND_NON_ZERO);
        text.codePoints()
                .forEach(
                        point -> {
                            letters.append(face.shape(point).getPathIterator(to), false);
                            to.translate(face.advance(point), 0);
                        });
        return letters;
    }

    /**
     * Writes words, if they are level and not too large.
     *
     * @param graphics neither turned nor bent, and as much larger across as down
     * @return whether they are written
     */
    static boolean write(Graphics2D graphics, Mark.Words words, int rgb) {
        AffineTransform to = graphics.getTransform();
        double size = words.size() * to.getScaleX();
        if (words.turn() != 0 || size > LARGEST) {
            return false;
        }
        double x = to.getScaleX() * words.start() + to.getTranslateX();
        double y = to.getScaleY() * words.y() + to.getTranslateY();
        long quarters = Math.round(x * QUARTERS);
        int dot = (int) Math.floorDiv(quarters, QUARTERS);
        var key = new Key(words.text(), words.bold(), size, rgb, Math.floorMod(quarters, QUARTERS));
        Written written;
        synchronized (KEPT) {
            written = KEPT.computeIfAbsent(key, Letters::written);
        }
        graphics.setTransform(new AffineTransform());
        graphics.drawImage(
                written.image(), dot + written.left(), (int) Math.round(y) + written.top(), null);
        graphics.setTransform(to);
        return true;
    }

    private static Written written(Key key) {
        var to = AffineTransform.getTranslateInstance((double) key.quarter() / QUARTERS, 0);
        to.scale(key.size(), -key.size());
        Path2D letters = path(key.text(), key.bold(), to);
        Rectangle2D around = letters.getBounds2D();
        int left = (int) Math.floor(around.getMinX());
        int top = (int) Math.floor(around.getMinY());
        var image =
                new BufferedImage(
                        Math.max(1, (int) Math.ceil(around.getMaxX()) - left),
                        Math.max(1, (int) Math.ceil(around.getMaxY()) - top),
                        BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setRenderingHint(
                    RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.translate(-left, -top);
            graphics.setColor(new Color(key.rgb()));
            graphics.fill(letters);
        } finally {
            graphics.dispose();
        }
        return new Written(image, left, top);
    }
}
