package lanewright.planner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lanewright.ground.Ground;
import lanewright.ground.GroundOptions;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.IntersectionPoint;
import lanewright.measure.Finding;
import lanewright.measure.Progress;
import lanewright.survey.Survey;
import lanewright.survey.SurveyBuilder;
import org.junit.jupiter.api.Test;

class GroundTrustTest {

    /** Shots every 10 m, none between two eastings. */
    private static Ground without(double from, double to) {
        SurveyBuilder survey = Survey.builder();
        for (int x = 0; x <= 200; x += 10) {
            for (int y = -40; y <= 40; y += 10) {
                if (x <= from || x >= to) {
                    survey.point(x, y, 100);
                }
            }
        }
        return Ground.of(survey.build(), GroundOptions.USUAL, Progress.NONE);
    }

    private static Alignment line() throws Exception {
        return Alignment.of(
                List.of(new IntersectionPoint(5, 3, 0), new IntersectionPoint(195, 3, 0)));
    }

    @Test
    void groundShotEveryTenMetresIsTrusted() throws Exception {
        assertEquals(List.of(), GroundTrust.alongLane(without(0, 0), line()));
    }

    @Test
    void aLaneOverAnUnmeasuredStretchIsToldWhere() throws Exception {
        Finding finding = GroundTrust.alongLane(without(60, 100), line()).get(0);
        // 40 m between the shots, 10 m across: the diagonal of that.
        assertEquals(Math.hypot(40, 10), finding.measured().value(), 1e-9);
        assertTrue(finding.where().from() > 50 && finding.where().from() < 100);
    }
}
