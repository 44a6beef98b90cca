package lanewright.planner.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import lanewright.measure.Row;
import lanewright.measure.UnitSystem;
import lanewright.survey.read.Holds;
import org.jspecify.annotations.Nullable;

/**
 * A first plan, so that nobody begins with an empty page: the survey files and the places that the
 * owner named, and for everything else what the table of defaults says.
 */
public final class FirstPlan {

    private static final Map<Boolean, List<String>> THICKNESS =
            Map.of(true, List.of("3 in", "6 in"), false, List.of("75 mm", "150 mm"));

    private FirstPlan() {}

    /**
     * What the owner said.
     *
     * @param name what the lane is called
     * @param units the units of the plan
     * @param frame the flat map in words, or null for what the places suggest
     * @param files the survey files, paths relative to the folder of the plan
     * @param breaklines codes of points that make breaklines
     * @param places where the lane leaves the road, any places between, and where it must arrive
     * @param radius radius of curves at the places between, m
     */
    public record Wanted(
            String name,
            UnitSystem units,
            @Nullable String frame,
            List<SurveyPart.File> files,
            List<String> breaklines,
            List<Spot> places,
            double radius) {
        /** Copies the lists. */
        public Wanted {
            files = List.copyOf(files);
            breaklines = List.copyOf(breaklines);
            places = List.copyOf(places);
        }
    }

    /**
     * The plan that says this, without a grade yet.
     *
     * @throws PlanException if something that the owner said cannot stand in a plan
     */
    public static PlanFile of(Wanted wanted) throws PlanException {
        Map<String, Node> plan = new LinkedHashMap<>();
        plan.put("version", new Node.Number(Node.At.NOWHERE, Integer.toString(Plan.VERSION)));
        plan.put("name", text(wanted.name()));
        plan.put("units", text(Codecs.UNITS.write(wanted.units(), wanted.units())));
        plan.put("survey", survey(wanted));
        plan.put("line", members("points", line(wanted)));
        plan.put(
                "shapes",
                items(List.of(members("name", text("lane"), "layers", layers(wanted.units())))));
        plan.put(
                "along",
                items(
                        List.of(
                                members(
                                        "from",
                                        text("start"),
                                        "to",
                                        text("end"),
                                        "shape",
                                        text("lane")))));
        plan.put(
                "stone",
                members(
                        "payload",
                        text(startValue("stone.payload", wanted.units())),
                        "materials",
                        materials()));
        if (wanted.files().stream().anyMatch(file -> file.holds() == Holds.PROBES)) {
            plan.put(
                    "earth",
                    members("topsoil", text("from probes"), "bearing", text("from probes")));
        }
        return PlanFile.of("the first plan", new Node.Members(Node.At.NOWHERE, plan));
    }

    private static String startValue(String field, UnitSystem units) {
        Row row = Defaults.table().row(field);
        if (row == null) {
            throw new IllegalStateException("no default for " + field);
        }
        return Defaults.text(row, units);
    }

    private static Node survey(Wanted wanted) {
        Map<String, Node> survey = new LinkedHashMap<>();
        survey.put("frame", text(frame(wanted)));
        List<Node> files = new ArrayList<>();
        for (SurveyPart.File file : wanted.files()) {
            files.add(WriteForm.write(wanted.units(), false, file, "", PlanForm::file));
        }
        survey.put("files", items(files));
        if (!wanted.breaklines().isEmpty()) {
            survey.put(
                    "codes",
                    members("breaklines", items(list(wanted.breaklines(), FirstPlan::text))));
        }
        return new Node.Members(Node.At.NOWHERE, survey);
    }

    /** Places in degrees ask for a frame on the earth: a zone around the first one. */
    private static String frame(Wanted wanted) {
        String given = wanted.frame();
        if (given != null) {
            return given;
        }
        Spot first = wanted.places().isEmpty() ? Spot.at(0, 0) : wanted.places().get(0);
        if (!first.degrees()) {
            return "local";
        }
        return Codecs.FRAME.write(
                SurveyPart.MapFrame.zone(hundredths(first.across()), hundredths(first.up())),
                wanted.units());
    }

    /** The frame, as a plan writes it, of a flat map around a place in degrees. */
    public static String frameAround(double longitude, double latitude) {
        return Codecs.FRAME.write(
                SurveyPart.MapFrame.zone(hundredths(longitude), hundredths(latitude)),
                UnitSystem.METRIC);
    }

    private static double hundredths(double degrees) {
        return Math.rint(degrees * 100) / 100;
    }

    private static Node line(Wanted wanted) {
        List<Node> points = new ArrayList<>();
        int last = wanted.places().size() - 1;
        for (int i = 0; i <= last; i++) {
            boolean end = i == 0 || i == last;
            var point =
                    new LinePart.Point(
                            i == 0 ? "road" : i == last ? "far end" : "",
                            wanted.places().get(i),
                            end ? 0 : wanted.radius());
            points.add(WriteForm.write(wanted.units(), false, point, "", LaneForm::linePoint));
        }
        return items(points);
    }

    private static Node layers(UnitSystem units) {
        List<String> thickness = THICKNESS.getOrDefault(units == UnitSystem.US, List.of());
        return items(
                List.of(
                        members("role", text("surface"), "thickness", text(thickness.get(0))),
                        members("role", text("base"), "thickness", text(thickness.get(1)))));
    }

    private static Node materials() {
        return items(
                List.of(
                        members(
                                "role",
                                text("surface"),
                                "kind",
                                text("crushed surfacing, top course")),
                        members(
                                "role",
                                text("base"),
                                "kind",
                                text("crushed limestone, dense graded"))));
    }

    private static <T> List<Node> list(List<T> values, Function<T, Node> each) {
        return values.stream().map(each).toList();
    }

    private static Node text(String words) {
        return new Node.Text(Node.At.NOWHERE, words);
    }

    private static Node items(List<Node> nodes) {
        return new Node.Items(Node.At.NOWHERE, nodes);
    }

    private static Node members(Object... namesAndValues) {
        Map<String, Node> members = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            members.put((String) namesAndValues[i], (Node) namesAndValues[i + 1]);
        }
        return new Node.Members(Node.At.NOWHERE, members);
    }
}
