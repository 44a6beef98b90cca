package lanewright.survey.read;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lanewright.measure.LengthUnit;
import lanewright.measure.Words;
import lanewright.survey.Reading.Understood;
import lanewright.survey.SurveyException;
import lanewright.survey.text.Numbers;
import org.jspecify.annotations.Nullable;

/**
 * Where the heights of a GeoJSON file stand: in the third number of each place or in a property.
 * Decided at the first feature and kept for the whole file.
 */
final class GeoJsonHeights {

    /** What to declare as the height property where the third number of each place is meant. */
    private static final String IN_PLACES = "coordinates";

    private final SurveyFile file;
    private final boolean degrees;
    private final LengthUnit unit;
    private final List<Understood> understood;

    private boolean decided;
    private @Nullable String property;
    private LengthUnit heightUnit = LengthUnit.METRE;

    GeoJsonHeights(SurveyFile file, boolean degrees, LengthUnit unit, List<Understood> understood) {
        this.file = file;
        this.degrees = degrees;
        this.unit = unit;
        this.understood = understood;
    }

    /** Height of each place of a feature, m. */
    double[] of(GeoJsonParser.Feature feature, Geometry shape) throws SurveyException {
        if (!decided) {
            decide(feature, shape);
            decided = true;
        }
        double[] z = new double[shape.size()];
        if (property == null) {
            for (int k = 0; k < z.length; k++) {
                z[k] = shape.z(k) * heightUnit.metres();
                if (Double.isNaN(z[k])) {
                    throw bad(
                            feature,
                            "a place has no height",
                            "Heights stand as the third number of each place in this file: add it,"
                                    + " or declare \"heightProperty\".");
                }
            }
        } else {
            Arrays.fill(z, fromProperty(feature, property));
        }
        for (double each : z) {
            if (!Limits.heightExists(each)) {
                throw bad(
                        feature,
                        "the height " + Words.fixed(each, 1) + " m is no height of dry land",
                        "Mend the height, or declare \"heightUnit\" for this file in the plan.");
            }
        }
        return z;
    }

    private double fromProperty(GeoJsonParser.Feature feature, String name) throws SurveyException {
        String text = feature.properties().get(name);
        if (text == null) {
            throw bad(
                    feature,
                    "the feature has no property \"" + name + "\" for its height",
                    "Add it, or declare another \"heightProperty\" for this file in the plan.");
        }
        double value = Numbers.parse(text.strip(), '.');
        if (Double.isNaN(value)) {
            throw bad(
                    feature,
                    "the height " + Numbers.explain(text, '.'),
                    "Mend the property \"" + name + "\" of this feature.");
        }
        return value * heightUnit.metres();
    }

    private void decide(GeoJsonParser.Feature feature, Geometry shape) throws SurveyException {
        String declared = file.heightProperty();
        if (declared != null) {
            property = declared.equals(IN_PLACES) ? null : declared;
            say("height", where(), "declared");
        } else {
            List<String> candidates = new ArrayList<>();
            for (String name : feature.properties().keySet()) {
                if (Column.heading(name).column() == Column.HEIGHT || name.equals("ele")) {
                    candidates.add(name);
                }
            }
            if (!Double.isNaN(shape.z(0))) {
                candidates.add(0, IN_PLACES);
            }
            if (candidates.isEmpty()) {
                throw bad(
                        feature,
                        "nothing in it looks like a height",
                        "Declare \"heightProperty\" for this file in the plan"
                                + (feature.properties().isEmpty()
                                        ? ", or write the height as the third number of each place."
                                        : "; it has " + quoted(feature) + "."));
            }
            if (candidates.size() > 1) {
                throw bad(
                        feature,
                        "its height may stand in " + String.join(" or in ", candidates),
                        "Declare \"heightProperty\" for this file in the plan, one of these.");
            }
            property = candidates.get(0).equals(IN_PLACES) ? null : candidates.get(0);
            say("height", where(), "nothing else looks like a height");
        }
        heightUnit = unitOfHeights(feature);
    }

    private LengthUnit unitOfHeights(GeoJsonParser.Feature feature) throws SurveyException {
        LengthUnit declared = file.heightUnit();
        if (declared != null) {
            say("unit of heights", declared.symbol(), "declared");
            return declared;
        }
        String word = property == null ? null : Column.heading(property).unit();
        if (word != null) {
            boolean foot = word.equals("ft") || word.equals("feet") || word.equals("foot");
            LengthUnit named = foot ? LengthUnit.FOOT : LayoutFinder.unit(word);
            if (named != null) {
                boolean survey = foot && file.unit() == LengthUnit.SURVEY_FOOT;
                LengthUnit taken = survey ? LengthUnit.SURVEY_FOOT : named;
                say("unit of heights", taken.symbol(), "as the property is called");
                return taken;
            }
        }
        if (file.unit() != null || (property == null && file.local())) {
            say("unit of heights", unitOrDeclared().symbol(), "as the coordinates");
            return unitOrDeclared();
        }
        if (property == null && degrees) {
            say("unit of heights", "m", "so RFC 7946 prescribes, section 3.1.1");
            return LengthUnit.METRE;
        }
        throw new SurveyException(
                file.path(),
                feature.line(),
                "nothing says the unit of the heights",
                "Declare \"heightUnit\": \"m\", \"ft\" (international foot) or \"ftUS\" (US survey"
                        + " foot) for this file in the plan.",
                SurveyException.Asks.UNIT_OF_HEIGHTS);
    }

    private LengthUnit unitOrDeclared() {
        LengthUnit declared = file.unit();
        return declared == null ? unit : declared;
    }

    private String where() {
        return property == null
                ? "the third number of each place"
                : "the property \"" + property + "\"";
    }

    private static String quoted(GeoJsonParser.Feature feature) {
        return "\"" + String.join("\", \"", feature.properties().keySet()) + "\"";
    }

    private void say(String what, String answer, String why) {
        understood.add(new Understood(what, answer, why));
    }

    private SurveyException bad(GeoJsonParser.Feature feature, String what, String remedy) {
        return new SurveyException(file.path(), feature.line(), what, remedy);
    }
}
