package lanewright.desktop.session;

import java.util.List;
import lanewright.measure.Finding;
import lanewright.planner.document.PlanFile;
import lanewright.planner.run.Answer;
import lanewright.planner.run.Draft;
import lanewright.planner.run.Outcome;
import org.jspecify.annotations.Nullable;

/**
 * What is known at one moment. The draft is of this plan or, while it is being worked out, of an
 * earlier one; the outcome likewise.
 *
 * @param edit number of the edit that led to {@code file}, from 0
 * @param file the plan as edited
 * @param draft the newest draft, or null before the first
 * @param draftEdit the edit that the draft is of, or -1
 * @param outcome the newest whole outcome, or null before the first
 * @param outcomeEdit the edit that the outcome is of, or -1
 * @param wrong why the plan of this edit has no answer, or null
 * @param doing what is being worked out, in words; empty if nothing is
 * @param part how much of it is done, 0 to 1
 */
public record Shown(
        long edit,
        PlanFile file,
        @Nullable Draft draft,
        long draftEdit,
        @Nullable Outcome outcome,
        long outcomeEdit,
        @Nullable Wrong wrong,
        String doing,
        double part) {

    /**
     * Why a plan has no answer.
     *
     * @param what what is wrong, a sentence
     * @param remedy what to do, a sentence; may be empty
     * @param findings what was found, if the lane was refused
     */
    public record Wrong(String what, String remedy, List<Finding> findings) {
        /** Copies the list. */
        public Wrong {
            findings = List.copyOf(findings);
        }
    }

    /** True if a picture of the lane would be the same as for another moment. */
    @SuppressWarnings("ReferenceEquality") // what was worked out anew is drawn anew
    public boolean looksLike(Shown other) {
        return draft == other.draft && outcome == other.outcome && wrong == other.wrong;
    }

    /** True if only the work has gone on since another moment. */
    public boolean saysTheSameAs(Shown other) {
        return looksLike(other)
                && edit == other.edit
                && draftEdit == other.draftEdit
                && outcomeEdit == other.outcomeEdit;
    }

    /** True if the draft is of this very plan. */
    public boolean drafted() {
        return draft != null && draftEdit == edit;
    }

    /** True if everything shown is of this very plan. */
    public boolean settled() {
        return outcome != null && outcomeEdit == edit;
    }

    /**
     * The newest answers in the order they are asked: those of the draft, and where it has none,
     * those of the outcome.
     */
    public List<Answer> answers() {
        Outcome whole = outcome;
        Draft quick = draft;
        if (whole == null || quick == null) {
            return quick == null ? List.of() : quick.answers();
        }
        if (outcomeEdit >= draftEdit) {
            return whole.answers();
        }
        return whole.answers().stream()
                .map(
                        old ->
                                quick.answers().stream()
                                        .filter(now -> now.topic() == old.topic())
                                        .findFirst()
                                        .orElse(old))
                .toList();
    }

    /** True if the answer of a topic is still of an earlier plan, or of its grade. */
    public boolean stale(Finding.Topic topic) {
        Draft quick = draft;
        boolean inDraft =
                quick != null && quick.answers().stream().anyMatch(each -> each.topic() == topic);
        return !(settled() || (drafted() && inDraft && !onEarlierGrade(topic)));
    }

    /** True if the answer of a topic stands on the grade of the lane as it was before a drag. */
    public boolean onEarlierGrade(Finding.Topic topic) {
        Draft quick = draft;
        return quick != null
                && !settled()
                && quick.laidBefore()
                && (topic == Finding.Topic.GRADE || topic == Finding.Topic.EARTH);
    }

    /** The newest findings: those of the outcome, or of the draft before there is one. */
    public List<Finding> findings() {
        if (outcome != null) {
            return outcome.findings();
        }
        return draft == null ? List.of() : draft.findings();
    }
}
