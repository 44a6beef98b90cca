package lanewright.survey.read;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.LengthUnit;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.survey.Frame;
import lanewright.survey.Survey;
import lanewright.survey.SurveyBuilder;
import lanewright.survey.SurveyException;
import org.jspecify.annotations.Nullable;

/** What is gathered from all files of a request while they are read. Lives for one call. */
final class Gathering {

    private final SurveyRequest request;
    private final SurveyBuilder survey;
    private final CodedLines lines;

    /** Places in frame metres until the local zero is known. */
    private final List<Finding> findings = new ArrayList<>();

    Gathering(SurveyRequest request) {
        this.request = request;
        this.survey = Survey.builder(request.frame()).heightError(request.heightError());
        this.lines = new CodedLines(request.codes());
    }

    Frame frame() {
        return request.frame();
    }

    @Nullable Corridor corridor() {
        return request.corridor();
    }

    SurveyBuilder survey() {
        return survey;
    }

    CodedLines lines() {
        return lines;
    }

    List<Finding> findings() {
        return findings;
    }

    /** Adds a finding about a file as a whole. */
    void say(String code, Level level, Saying says, String remedy) {
        findings.add(
                Finding.of(code, level, Topic.GROUND, Where.ANYWHERE, says, Saying.plain(remedy)));
    }

    /** The way from a text file's own system into the frame, or null if it is in the frame. */
    Frame.@Nullable Bridge bridge(SurveyFile file, Layout layout) throws SurveyException {
        Integer code = file.epsg();
        if (code == null) {
            if (layout.degrees()) {
                throw new SurveyException(
                        file.path(),
                        layout.headingLine(),
                        "the columns are longitude and latitude, in degrees",
                        "Declare \"epsg\": 4326 (WGS 84) or the code of their own geographic system"
                                + " for this file, and a projected frame for the plan.");
            }
            return null;
        }
        if (!layout.degrees() && frame().code().orElse(0) == code) {
            return null;
        }
        Frame.Bridge bridge = bridge(file, code);
        if (bridge.degrees() != layout.degrees()) {
            throw new SurveyException(
                    file.path(),
                    layout.headingLine(),
                    bridge.from()
                            + (bridge.degrees()
                                    ? " is written in degrees, and the columns are easting and"
                                            + " northing"
                                    : " has easting and northing, and the columns are longitude and"
                                            + " latitude"),
                    "Mend \"epsg\" or \"columns\" for this file in the plan.");
        }
        LengthUnit unit = layout.unit();
        if (!bridge.degrees() && unit != bridge.unit()) {
            throw new SurveyException(
                    file.path(),
                    0,
                    bridge.from()
                            + " is measured in "
                            + bridge.unit().symbol()
                            + ", and the file in "
                            + unit.symbol(),
                    "Mend \"unit\" or \"epsg\" for this file in the plan.");
        }
        return bridge;
    }

    /** The way from a system with an EPSG code into the frame; a change of datum is said. */
    Frame.Bridge bridge(SurveyFile file, int code) throws SurveyException {
        try {
            Frame.Bridge bridge = frame().from(code);
            sayDatum(file, bridge);
            return bridge;
        } catch (SurveyException refused) {
            var said = new SurveyException(file.path(), 0, refused.what(), refused.remedy());
            said.initCause(refused);
            throw said;
        }
    }

    /** Says what a change of datum leaves in doubt. */
    void sayDatum(SurveyFile file, Frame.Bridge bridge) {
        if (!bridge.datumChange().isEmpty()) {
            say(
                    "datum-change",
                    Level.LOOK,
                    Saying.plain(
                            file.name() + " is carried to another datum, " + bridge.datumChange()),
                    "Points from one file keep their places to each other; hold points from"
                            + " different sources against each other before you trust them"
                            + " together");
        }
    }

    /** Words of a file made safe to stand in the pattern of a saying. */
    static String inSaying(String words) {
        return words.replace("{}", "{ }");
    }

    /** Refuses more points than there is room for. */
    void refuseTooMany(SurveyFile file) throws SurveyException {
        if (survey.size() >= Limits.MOST_POINTS) {
            throw new SurveyException(
                    file.path(),
                    0,
                    "there are more than " + Limits.MOST_POINTS + " points",
                    "Cut the files down to the land that the lane may touch, or thin them.");
        }
    }

    /** Says which rows were left out. */
    void leftOut(SurveyFile file, int notGround, int empty) {
        if (notGround > 0) {
            say(
                    "not-on-the-ground",
                    Level.NOTE,
                    Saying.of(
                            "Shots left out of "
                                    + inSaying(file.name())
                                    + ", since their codes say that"
                                    + " they do not lie on the ground: {}",
                            Quantity.count(notGround)),
                    "Nothing to do if the codes are right");
        }
        if (empty > 0) {
            say(
                    "empty-rows",
                    Level.NOTE,
                    Saying.of(
                            "Rows of "
                                    + inSaying(file.name())
                                    + " that hold separators and nothing else: {}",
                            Quantity.count(empty)),
                    "Nothing to do; a spreadsheet leaves such rows behind");
        }
    }
}
