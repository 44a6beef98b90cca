package lanewright.planner.run;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lanewright.ground.Ground;
import lanewright.ground.GroundOptions;
import lanewright.measure.Progress;
import lanewright.planner.document.PlanFile;
import lanewright.survey.Frame;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;
import lanewright.survey.read.SurveyFile;
import lanewright.survey.read.SurveyReader;
import lanewright.survey.read.SurveyRequest;
import lanewright.survey.read.UnitOffer;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a survey of which some files cannot be read as they stand.
 *
 * @param survey what the other files say, or null if none can be read
 * @param ground the ground that they make, or null if they make none
 * @param offers units to offer for the file that was refused, if its unit is what is asked for
 */
public record PartSurvey(@Nullable Survey survey, @Nullable Ground ground, List<UnitOffer> offers) {

    private static final PartSurvey NONE = new PartSurvey(null, null, List.of());

    /** Copies the list. */
    public PartSurvey {
        offers = List.copyOf(offers);
    }

    /**
     * Reads what can be read.
     *
     * @param folder the folder that the paths in the plan are seen from
     * @param plan the plan, whose line does not matter
     * @param refused what its survey was refused for
     * @param progress told of the work, and asked whether to go on
     */
    public static PartSurvey of(
            Path folder, PlanFile plan, SurveyException refused, Progress progress) {
        SurveyRequest all;
        try {
            Frame map = Places.frame(plan.plan().survey().frame());
            all = SurveyRequests.everywhere(plan.plan(), folder, map);
        } catch (SurveyException e) {
            // No single file is to blame, as the one refusal that is told says already.
            return NONE;
        }
        List<SurveyFile> rest = new ArrayList<>(all.files());
        SurveyException last = refused;
        while (true) {
            Path blamed = last.file();
            if (!rest.removeIf(file -> file.path().equals(blamed)) || rest.isEmpty()) {
                return NONE;
            }
            try {
                Survey known = SurveyReader.read(of(all, rest), progress);
                return new PartSurvey(
                        known, ground(known, progress), offers(all, refused, known, progress));
            } catch (SurveyException e) {
                // The next file that cannot be read: it is told when the first one can be.
                last = e;
            }
        }
    }

    private static SurveyRequest of(SurveyRequest all, List<SurveyFile> files) {
        return new SurveyRequest(
                files, all.frame(), all.codes(), all.corridor(), all.heightError());
    }

    private static @Nullable Ground ground(Survey known, Progress progress) {
        if (known.size() == 0) {
            return null;
        }
        Ground ground = Ground.of(known, GroundOptions.USUAL, progress);
        return ground.triangleCount() == 0 ? null : ground;
    }

    private static List<UnitOffer> offers(
            SurveyRequest all, SurveyException refused, Survey known, Progress progress) {
        if (refused.asks() != SurveyException.Asks.UNIT) {
            return List.of();
        }
        return all.files().stream()
                .filter(file -> file.path().equals(refused.file()))
                .flatMap(file -> UnitOffer.of(all, file, known, progress).stream())
                .toList();
    }
}
