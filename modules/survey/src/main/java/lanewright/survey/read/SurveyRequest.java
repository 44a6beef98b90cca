package lanewright.survey.read;

import java.util.List;
import lanewright.survey.Frame;
import org.jspecify.annotations.Nullable;

/**
 * Which files make up a survey, and what is declared about all of them.
 *
 * @param files the files, one or more; at most one with a boundary
 * @param frame the flat map on which the survey is laid; coordinates of a file that declares no
 *     system of its own are coordinates of this frame
 * @param codes what codes of points mean
 * @param corridor where elevation grids are wanted, or null for all of them
 * @param heightError how far a height may be off, one standard deviation, m; NaN if not stated
 */
public record SurveyRequest(
        List<SurveyFile> files,
        Frame frame,
        LineCodes codes,
        @Nullable Corridor corridor,
        double heightError) {

    /** Copies the list of files. */
    public SurveyRequest {
        files = List.copyOf(files);
        if (files.isEmpty()) {
            throw new IllegalArgumentException("a survey needs at least one file");
        }
        if (heightError < 0 || Double.isInfinite(heightError)) {
            throw new IllegalArgumentException("height error " + heightError);
        }
    }

    /** Files in plain local coordinates, no codes, no corridor. */
    public static SurveyRequest of(SurveyFile... files) {
        return new SurveyRequest(List.of(files), Frame.local(), LineCodes.NONE, null, Double.NaN);
    }

    /** The same in another frame. */
    public SurveyRequest in(Frame other) {
        return new SurveyRequest(files, other, codes, corridor, heightError);
    }

    /** The same with the meaning of codes declared. */
    public SurveyRequest codes(LineCodes words) {
        return new SurveyRequest(files, frame, words, corridor, heightError);
    }

    /** The same with elevation grids clipped. */
    public SurveyRequest within(@Nullable Corridor wanted) {
        return new SurveyRequest(files, frame, codes, wanted, heightError);
    }
}
