package lanewright.planner.run;

import lanewright.measure.Finding.Topic;
import lanewright.measure.Saying;

/**
 * One of the owner's questions with its answer in a line.
 *
 * @param topic which question
 * @param question the question in words
 * @param says the answer, with its numbers and places
 * @param mark how far it is answered
 */
public record Answer(Topic topic, String question, Saying says, Mark mark) {

    /** How far a question is answered. */
    public enum Mark {
        /** There is an answer. */
        ANSWERED,
        /** There is an answer, and something to look at before it is trusted. */
        LOOK,
        /** There is no answer yet. */
        OPEN
    }
}
