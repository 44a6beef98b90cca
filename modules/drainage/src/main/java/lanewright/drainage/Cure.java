package lanewright.drainage;

import lanewright.drainage.along.CulvertLine;
import lanewright.measure.Saying;
import org.jspecify.annotations.Nullable;

/**
 * The one thing to do about a wet place that holds there: it was worked out from the lane and the
 * ground, and every sheet says it in the same words.
 *
 * @param kind what is done
 * @param pipe the pipe that it takes, as it lies once the rest is done; null without one
 * @param raise how much the lane is raised over the pipe first, m; zero for not at all
 * @param dig how much deeper than it lies now the ground is dug at the pipe's outlet, m; zero for
 *     not at all
 * @param says what to do, to follow "what to do:", without a full stop
 */
public record Cure(Kind kind, @Nullable CulvertLine pipe, double raise, double dig, Saying says) {

    /** What is done. */
    public enum Kind {
        /** A pipe that fits under the lane as drawn. */
        PIPE("pipe"),
        /** The lane is raised until a pipe fits. */
        RAISE("raise"),
        /** The ground at a pipe's outlet is dug lower until the pipe fits. */
        DIG("dig"),
        /** The water is led on to lower ground beside the lane. */
        LEAD_ON("lead on"),
        /** A ditch, the lane or the ground is given a fall. */
        SHAPE("shape"),
        /** The lane is moved off. */
        MOVE("move"),
        /** A pipe of the plan, there or to be laid, takes the water. */
        PIPED("piped"),
        /** What is there is kept open, or looked at. */
        KEEP("keep");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** In a word. */
        public String word() {
            return word;
        }
    }

    /** Something to do that takes no pipe. */
    static Cure of(Kind kind, Saying says) {
        return new Cure(kind, null, 0, 0, says);
    }

    /** Whether its pipe can be laid under the lane as drawn, so that it may be ordered. */
    public boolean hasPipeNow() {
        return kind == Kind.PIPE;
    }
}
