package lanewright.survey.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lanewright.measure.Finding;
import lanewright.measure.Progress;
import lanewright.measure.Where;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;

/** Reads the files of a request into one survey. */
public final class SurveyReader {

    private SurveyReader() {}

    /**
     * Reads a survey.
     *
     * <p>What is declared in the request is obeyed. What is not is found out and shown in {@link
     * Survey#readings()}, or refused with words on what to declare if it can be taken in two ways.
     * No row is dropped without a finding. Files are read in the order given and never altered.
     *
     * @param request which files, and what is declared about them
     * @param progress told how far it is, and asked whether to go on
     * @throws SurveyException if a file cannot be read as it stands
     */
    public static Survey read(SurveyRequest request, Progress progress) throws SurveyException {
        var all = new Gathering(request);
        int count = request.files().size();
        for (int k = 0; k < count; k++) {
            SurveyFile file = request.files().get(k);
            Progress part = progress.part(0.9 * k / count, 0.9 * (k + 1) / count);
            part.check();
            part.report(0, "reading " + file.name());
            read(all, file, part);
        }
        progress.check();
        progress.report(0.9, "checking the points");
        all.findings().addAll(all.lines().findings(all.survey().size() > 0));
        Survey survey = all.survey().build();
        List<Finding> findings = new ArrayList<>();
        for (Finding finding : all.findings()) {
            findings.add(local(finding, survey));
        }
        findings.addAll(PointChecks.of(survey));
        progress.report(1, "survey read");
        return survey.withFindings(findings);
    }

    private static void read(Gathering all, SurveyFile file, Progress progress)
            throws SurveyException {
        String name = file.name().toLowerCase(Locale.ROOT);
        boolean json = name.endsWith(".geojson") || name.endsWith(".json");
        if (json) {
            GeoJsonReader.read(all, file, progress);
            return;
        }
        switch (file.holds()) {
            case POINTS -> TextPoints.read(all, file, progress);
            case PROBES -> TextProbes.read(all, file);
            case GRID -> Grids.read(all, file, progress);
            default ->
                    throw new SurveyException(
                            file.path(),
                            0,
                            "lines and boundaries are read from GeoJSON only",
                            "Export them as GeoJSON and let the name end in .geojson; breaklines"
                                    + " can also be made by codes in a file of points.");
        }
    }

    /** The same finding with its place told from the local zero. */
    private static Finding local(Finding finding, Survey survey) {
        Double x = finding.where().x();
        Double y = finding.where().y();
        if (x == null || y == null) {
            return finding;
        }
        return new Finding(
                finding.code(),
                finding.level(),
                finding.topic(),
                Where.map(x - survey.originX(), y - survey.originY()),
                finding.says(),
                finding.measured(),
                finding.limit(),
                finding.source(),
                finding.remedy());
    }
}
