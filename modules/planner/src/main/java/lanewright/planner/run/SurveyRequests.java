package lanewright.planner.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import lanewright.planner.document.LinePart;
import lanewright.planner.document.Plan;
import lanewright.planner.document.SurveyPart;
import lanewright.survey.Frame;
import lanewright.survey.SurveyException;
import lanewright.survey.read.Corridor;
import lanewright.survey.read.Holds;
import lanewright.survey.read.LineCodes;
import lanewright.survey.read.SurveyFile;
import lanewright.survey.read.SurveyRequest;
import org.jspecify.annotations.Nullable;

/** Turns what a plan says of its survey into a request to the reader. */
final class SurveyRequests {

    /**
     * The corridor of an elevation grid runs along the line's corners brought to the nearest
     * multiple of this, and is wider by as much, m: so that a corner can be moved a little and the
     * same land is read. Our choice: less than a tenth of the usual corridor.
     */
    private static final double SNAP = 10;

    private SurveyRequests() {}

    /** The request of a plan whose survey files lie beside it in {@code folder}. */
    static SurveyRequest of(Plan plan, Path folder, Frame frame) throws SurveyException {
        return request(plan.survey(), folder, frame, corridor(plan, frame));
    }

    /** The same for land on which no lane is drawn yet: elevation grids are read whole. */
    static SurveyRequest everywhere(Plan plan, Path folder, Frame frame) throws SurveyException {
        return request(plan.survey(), folder, frame, null);
    }

    /** The request for a survey, elevation grids clipped to a corridor. */
    static SurveyRequest request(
            SurveyPart survey, Path folder, Frame frame, @Nullable Corridor corridor)
            throws SurveyException {
        List<SurveyFile> files = new ArrayList<>();
        for (SurveyPart.File file : survey.files()) {
            files.add(file(file, folder));
        }
        return new SurveyRequest(
                files, frame, codes(survey.codes()), corridor, survey.heightError());
    }

    /** Null where no elevation grid is read: then the survey does not hang on the line. */
    private static @Nullable Corridor corridor(Plan plan, Frame frame) throws SurveyException {
        if (plan.survey().files().stream().noneMatch(file -> file.holds() == Holds.GRID)) {
            return null;
        }
        var places = new Places(frame, 0, 0);
        List<LinePart.Point> points = plan.line().points();
        double[] x = new double[points.size()];
        double[] y = new double[points.size()];
        for (int i = 0; i < x.length; i++) {
            double[] at = places.local(points.get(i).spot());
            x[i] = SNAP * Math.rint(at[0] / SNAP);
            y[i] = SNAP * Math.rint(at[1] / SNAP);
        }
        return new Corridor(x, y, plan.survey().corridor() + SNAP);
    }

    private static SurveyFile file(SurveyPart.File file, Path folder) throws SurveyException {
        Path path = folder.resolve(file.path()).normalize();
        if (!Files.isRegularFile(path)) {
            throw new SurveyException(
                    path,
                    0,
                    "there is no such survey file (" + path + ")",
                    "Give its path as seen from the folder of the plan.");
        }
        SurveyPart.Separator separator = file.separator();
        SurveyPart.Decimal decimal = file.decimal();
        return new SurveyFile(
                path,
                file.holds(),
                file.unit(),
                file.heightUnit(),
                file.depthUnit(),
                file.columns(),
                separator == null ? null : separator.sign(),
                decimal == null ? null : decimal.sign(),
                file.epsg() == 0 ? null : file.epsg(),
                file.coordinates() == SurveyPart.Coordinates.LOCAL,
                file.heightProperty(),
                file.kindProperty());
    }

    private static LineCodes codes(SurveyPart.Codes codes) throws SurveyException {
        try {
            return new LineCodes(
                    new LinkedHashSet<>(codes.breaklines()),
                    codes.start(),
                    codes.end(),
                    new LinkedHashSet<>(codes.notGround()));
        } catch (IllegalArgumentException e) {
            throw new SurveyException(
                    null,
                    0,
                    "survey.codes: " + e.getMessage(),
                    "Give each code its words, as they stand in the files, and one meaning.");
        }
    }

    /**
     * What tells whether a file is still the one that was read: its size and the time it was last
     * changed.
     */
    record Stamp(Path path, long size, long changed) {
        static List<Object> of(SurveyRequest request) throws SurveyException {
            List<Object> stamps = new ArrayList<>();
            for (SurveyFile file : request.files()) {
                try {
                    stamps.add(
                            new Stamp(
                                    file.path(),
                                    Files.size(file.path()),
                                    Files.getLastModifiedTime(file.path()).toMillis()));
                } catch (IOException e) {
                    throw new SurveyException(
                            file.path(),
                            0,
                            "the file cannot be looked at (" + e.getMessage() + ")",
                            "Check that it may be read.");
                }
            }
            return stamps;
        }
    }
}
