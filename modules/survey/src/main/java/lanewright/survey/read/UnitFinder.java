package lanewright.survey.read;

import java.util.List;
import lanewright.measure.LengthUnit;
import lanewright.measure.Words;
import lanewright.survey.Frame;
import lanewright.survey.Reading.Understood;
import lanewright.survey.SurveyException;
import lanewright.survey.SurveyException.Asks;
import org.jspecify.annotations.Nullable;

/** Finds the units of delimited text: as declared, as headed, or as the reference system fixes. */
final class UnitFinder {

    /**
     * The two feet differ by two parts in a million (US survey foot 1200/3937 m, international foot
     * 0.3048 m).
     */
    private static final double FEET_APART = 2e-6;

    /**
     * A plain "ft" is read as the international foot if the other would move no point further, m.
     */
    private static final double SAME_EITHER_WAY = 0.005;

    private final SurveyFile file;
    private final Frame frame;
    private final List<Column.Heading> headings;
    private final List<Column> columns;
    private final double[] sample;

    /**
     * Prepares to look.
     *
     * @param headings words over the columns, empty if there are none
     * @param sample easting, northing and height of the first rows in turn, in the unit sought
     */
    UnitFinder(
            SurveyFile file,
            Frame frame,
            List<Column.Heading> headings,
            List<Column> columns,
            double[] sample) {
        this.file = file;
        this.frame = frame;
        this.headings = headings;
        this.columns = columns;
        this.sample = sample;
    }

    /** Unit of the coordinates; metres, unused, where they are degrees. */
    LengthUnit coordinates(List<Understood> understood) throws SurveyException {
        if (columns.contains(Column.LONGITUDE)) {
            understood.add(new Understood("places", "degrees", "longitude and latitude"));
            return LengthUnit.METRE;
        }
        LengthUnit declared = file.unit();
        LengthUnit east = headed(Column.EASTING, 0);
        LengthUnit north = headed(Column.NORTHING, 1);
        if (east != null && north != null && east != north) {
            throw ask(
                    "easting is headed in " + east.symbol() + " and northing in " + north.symbol(),
                    "Mend the headings: both are in one unit.");
        }
        LengthUnit headed = east == null ? north : east;
        if (declared != null) {
            refuseContradiction("coordinates", declared, headed);
            understood.add(new Understood("unit", declared.symbol(), "declared"));
            return declared;
        }
        if (headed != null) {
            understood.add(new Understood("unit", headed.symbol(), whyHeaded(headed)));
            return headed;
        }
        if (!frame.isLocal()) {
            return ofSystem(understood);
        }
        throw ask("nothing says the unit of the coordinates", unitRemedy("unit"), Asks.UNIT);
    }

    private LengthUnit ofSystem(List<Understood> understood) throws SurveyException {
        Integer code = file.epsg();
        if (code != null) {
            Frame.Bridge bridge = frame.from(code);
            if (bridge.degrees()) {
                throw ask(
                        "the plan says that the file is in "
                                + bridge.from()
                                + ", and its columns are not longitude and latitude",
                        "Declare \"columns\" with longitude and latitude, or the code of the"
                                + " projected system that the file is in.");
            }
            understood.add(
                    new Understood("unit", bridge.unit().symbol(), "the unit of " + bridge.from()));
            return bridge.unit();
        }
        LengthUnit own = frame.unit();
        if (!inside(own)) {
            for (LengthUnit other : LengthUnit.values()) {
                if (inside(other)) {
                    throw ask(
                            "the coordinates do not lie in the area of "
                                    + frame.name()
                                    + " in its own unit, "
                                    + own.symbol()
                                    + ", but would if they were in "
                                    + other.symbol(),
                            "Declare \"unit\" for this file in the plan.");
                }
            }
        }
        understood.add(new Understood("unit", own.symbol(), "the unit of " + frame.name()));
        return own;
    }

    private boolean inside(LengthUnit unit) {
        for (int k = 0; k < sample.length; k += 3) {
            if (!frame.mayHold(sample[k] * unit.metres(), sample[k + 1] * unit.metres())) {
                return false;
            }
        }
        return sample.length > 0;
    }

    /** Unit of the heights. */
    LengthUnit heights(List<Understood> understood) throws SurveyException {
        if (!columns.contains(Column.HEIGHT) || file.holds() == Holds.PROBES) {
            return LengthUnit.METRE;
        }
        LengthUnit declared = file.heightUnit();
        LengthUnit headed = headed(Column.HEIGHT, 2);
        if (declared != null) {
            refuseContradiction("heights", declared, headed);
            understood.add(new Understood("unit of heights", declared.symbol(), "declared"));
            return declared;
        }
        if (headed != null) {
            understood.add(new Understood("unit of heights", headed.symbol(), whyHeaded(headed)));
            return headed;
        }
        LengthUnit all = file.unit();
        if (all != null) {
            understood.add(new Understood("unit of heights", all.symbol(), "as the coordinates"));
            return all;
        }
        throw ask(
                "nothing says the unit of the heights",
                unitRemedy("heightUnit"),
                Asks.UNIT_OF_HEIGHTS);
    }

    /** Unit of bare depths, or null if none is stated and each depth must carry its own. */
    @Nullable DepthUnit depths(List<Understood> understood) throws SurveyException {
        if (file.holds() != Holds.PROBES) {
            return null;
        }
        DepthUnit unit = file.depthUnit();
        String why = "declared";
        for (Column each : List.of(Column.TOPSOIL, Column.BEARING)) {
            String word = word(each);
            if (word != null) {
                DepthUnit headed = depth(word);
                if (headed == null) {
                    throw ask(
                            "the "
                                    + each.word()
                                    + " is headed in '"
                                    + word
                                    + "', which is not known",
                            "Use m, cm, mm, in or ft.");
                }
                if (unit != null && unit != headed) {
                    throw ask(
                            "the depths have two units, "
                                    + unit.symbol()
                                    + " and "
                                    + headed.symbol(),
                            "Give both depths one unit in their headings and in \"depthUnit\".");
                }
                if (unit == null) {
                    why = "as the headings say";
                }
                unit = headed;
            }
        }
        if (unit != null) {
            understood.add(new Understood("unit of depths", unit.symbol(), why));
        }
        return unit;
    }

    private static @Nullable DepthUnit depth(String word) {
        return switch (word) {
            case "m", "metre", "metres", "meter", "meters" -> DepthUnit.METRE;
            case "cm" -> DepthUnit.CENTIMETRE;
            case "mm" -> DepthUnit.MILLIMETRE;
            case "in", "inch", "inches" -> DepthUnit.INCH;
            case "ft", "foot", "feet" -> DepthUnit.FOOT;
            default -> null;
        };
    }

    /** The unit in words over a column, also if only the plan says what the column is. */
    private @Nullable String word(Column column) {
        int at = columns.indexOf(column);
        return at >= 0 && at < headings.size() ? headings.get(at).unit() : null;
    }

    /** The unit that stands over a column, or null. */
    private @Nullable LengthUnit headed(Column column, int inSample) throws SurveyException {
        String word = word(column);
        if (word == null || word.isEmpty()) {
            return null;
        }
        if (word.equals("ft") || word.equals("feet") || word.equals("foot")) {
            return someFoot(column, inSample);
        }
        LengthUnit unit = LayoutFinder.unit(word);
        if (unit == null) {
            throw ask(
                    "the " + column.word() + " is headed in '" + word + "'",
                    "Surveys are read in m, ft (international) and ftUS (US survey foot): convert"
                            + " the column, or mend its heading.");
        }
        return unit;
    }

    /** Which foot a plain "ft" is, where it does not matter or the plan says. */
    private LengthUnit someFoot(Column column, int inSample) throws SurveyException {
        LengthUnit declared =
                column == Column.HEIGHT && file.heightUnit() != null
                        ? file.heightUnit()
                        : file.unit();
        if (declared == LengthUnit.FOOT || declared == LengthUnit.SURVEY_FOOT) {
            return declared;
        }
        if (column != Column.HEIGHT && !frame.isLocal() && frame.unit() != LengthUnit.METRE) {
            return frame.unit();
        }
        double apart = 0;
        for (int k = inSample; k < sample.length; k += 3) {
            apart = Math.max(apart, Math.abs(sample[k]) * LengthUnit.FOOT.metres() * FEET_APART);
        }
        if (apart > SAME_EITHER_WAY) {
            throw ask(
                    "the "
                            + column.word()
                            + " is headed in feet, and the two feet in use would put points "
                            + Words.fixed(1000 * apart, 0)
                            + " mm apart",
                    "Declare \"unit\": \"ft\" (international foot) or \"unit\": \"ftUS\" (US survey"
                            + " foot) for this file in the plan.",
                    Asks.WHICH_FOOT);
        }
        return LengthUnit.FOOT;
    }

    private String whyHeaded(LengthUnit unit) {
        return unit == LengthUnit.FOOT
                ? "as the headings say; the US survey foot would move no point by 5 mm"
                : "as the headings say";
    }

    private void refuseContradiction(String what, LengthUnit declared, @Nullable LengthUnit headed)
            throws SurveyException {
        if (headed != null && headed != declared) {
            throw ask(
                    what
                            + " are headed in "
                            + headed.symbol()
                            + ", and the plan declares "
                            + declared.symbol(),
                    "Mend the unit in the plan, or the headings of the file.");
        }
    }

    private String unitRemedy(String field) {
        String first = "Declare \"" + field + "\": \"m\", \"ft\" (international foot) or \"ftUS\"";
        return first + " (US survey foot) for this file in the plan.";
    }

    private SurveyException ask(String what, String remedy) {
        return ask(what, remedy, Asks.NOTHING);
    }

    private SurveyException ask(String what, String remedy, Asks asks) {
        return new SurveyException(file.path(), 0, what, remedy, asks);
    }
}
