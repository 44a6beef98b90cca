package lanewright.desktop.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lanewright.drainage.runoff.Cover;
import lanewright.measure.Finding.Topic;
import lanewright.planner.document.LinePart;
import lanewright.planner.document.Plan;
import lanewright.planner.document.ShapePart;
import lanewright.planner.document.StonePart;

/**
 * A value of the plan that a question lets its owner change.
 *
 * @param label what it is, in the owner's words
 * @param path which value of the plan
 * @param choices what it may be, if only a few words will do; else empty
 * @param note what helps to fill it in; empty if nothing need be said
 * @param id what the field is called
 * @param row what else the row of a list says that the value stands in, by path, written with the
 *     value where it is not there yet; empty if it stands in none that comes and goes with it
 */
record Control(
        String label,
        String path,
        List<String> choices,
        String note,
        String id,
        Map<String, String> row) {

    Control {
        choices = List.copyOf(choices);
        row = Map.copyOf(row);
    }

    private Control(String label, String path, List<String> choices, String note) {
        this(label, path, choices, note, path, Map.of());
    }

    /** Whether it is a price. */
    boolean isPrice() {
        return path.endsWith(".price") || path.endsWith("Price");
    }

    private static Control of(String label, String path) {
        return of(label, path, "");
    }

    private static Control of(String label, String path, String note) {
        return new Control(label, path, List.of(), note);
    }

    private static Control among(String label, String path, String... choices) {
        return new Control(label, path, List.of(choices), "");
    }

    /** The values that matter to a question. */
    static List<Control> of(Topic topic, Plan plan) {
        return switch (topic) {
            case GROUND, ORDER -> List.of();
            case LINE -> line(plan);
            case GRADE ->
                    List.of(
                            of("Steepest allowed", "grade.steepest"),
                            of("Flattest wanted", "grade.flattest"),
                            of("Edge above the ground", "grade.edgeAboveGround"),
                            of("Curve for each 1 % of change", "grade.curvePerPercent"));
            case SHAPE -> shape(plan);
            case WATER -> water(plan);
            case EARTH ->
                    List.of(
                            of("Depth of topsoil", "earth.topsoil"),
                            of("Depth to firm soil", "earth.bearing"),
                            of("Packed lift of fill", "earth.lift"));
            case STONE -> stone(plan);
            case FIELD ->
                    List.of(
                            of("Stakes beyond the work", "work.stakesBeyond"),
                            of("Height of the level's sight", "work.instrumentHeight"),
                            of("Sections every", "work.interval"));
        };
    }

    private static List<Control> water(Plan plan) {
        List<Control> controls = new ArrayList<>();
        controls.add(among("The soil washes", "earth.washes", "little", "easily", "not known"));
        controls.add(among("The road's own ditch", "ends.roadDitch", "not known", "none", "piped"));
        controls.add(of("Rain of a day, at worst", "water.rain.day"));
        controls.add(
                of(
                        "One year in",
                        "water.rain.years",
                        "How seldom such a day comes, as your table of rain says: 25 is usual for a"
                                + " lane's pipes."));
        controls.add(
                new Control(
                        "How it falls",
                        "water.rain.type",
                        List.of("type ia", "type i", "type ii", "type iii"),
                        "From the published map of the four types of a day's rain; type ii, the"
                                + " hardest, is taken if you do not say."));
        controls.add(new Control("What grows on the land", "water.rain.land", Cover.names(), ""));
        controls.add(
                new Control(
                        "Group of its soil",
                        "water.rain.soil",
                        List.of("not known", "a", "b", "c", "d"),
                        "From a soil map: a takes water in, d sheds it. If you do not know, d is"
                                + " on the safe side."));
        controls.add(
                of(
                        "The ground takes in",
                        "water.soaksIn",
                        "Water that soaks away from a hollow in an hour; nothing, if you do not"
                                + " say."));
        controls.add(of("Count water from", "water.flowArea"));
        controls.add(of("Count low spots from", "water.spotDepth"));
        for (int i = 0; i < plan.water().pipes().size(); i++) {
            controls.add(
                    of(
                            "Width of " + plan.water().pipes().get(i).name(),
                            "water.pipes[" + i + "].diameter"));
            controls.add(
                    among(
                            "Ends of " + plan.water().pipes().get(i).name(),
                            "water.pipes[" + i + "].ends",
                            "projecting",
                            "mitred",
                            "headwall"));
        }
        return controls;
    }

    private static List<Control> line(Plan plan) {
        List<Control> controls = new ArrayList<>();
        List<LinePart.Point> points = plan.line().points();
        for (int i = 1; i < points.size() - 1; i++) {
            String name = points.get(i).name();
            controls.add(
                    of(
                            "Curve at " + (name.isBlank() ? "bend " + i : name),
                            "line.points[" + i + "].radius"));
        }
        return controls;
    }

    private static List<Control> shape(Plan plan) {
        List<Control> controls = new ArrayList<>();
        for (int i = 0; i < plan.shapes().size(); i++) {
            ShapePart shape = plan.shapes().get(i);
            String at = "shapes[" + i + "].";
            String of = plan.shapes().size() == 1 ? "" : " (" + shape.name() + ")";
            controls.add(of("Width" + of, at + "width"));
            controls.add(
                    among(
                            "Which way it falls" + of,
                            at + "fall",
                            "crown",
                            "shed left",
                            "shed right"));
            controls.add(of("Fall across" + of, at + "crossSlope"));
            for (int k = 0; k < shape.layers().size(); k++) {
                controls.add(thickness(shape, i, k, of));
            }
            controls.add(of("Left ditch depth" + of, at + "left.ditchDepth"));
            controls.add(of("Right ditch depth" + of, at + "right.ditchDepth"));
            controls.add(of("Slope down, left" + of, at + "left.foreslope"));
            controls.add(of("Slope down, right" + of, at + "right.foreslope"));
        }
        return controls;
    }

    private static List<Control> stone(Plan plan) {
        List<Control> controls = new ArrayList<>();
        controls.add(of("One truck brings", "stone.payload"));
        controls.add(of("Lost on the way", "stone.loss"));
        controls.add(of("Your money is called", "currency"));
        List<StonePart.Material> materials = plan.stone().materials();
        for (int i = 0; i < materials.size(); i++) {
            String role = materials.get(i).role();
            controls.add(of("Price of " + role, "stone.materials[" + i + "].price"));
            controls.add(of("In hand: " + role, "stone.materials[" + i + "].inHand"));
        }
        controls.addAll(PipePrices.of(plan));
        for (int i = 0; i < plan.shapes().size(); i++) {
            ShapePart shape = plan.shapes().get(i);
            for (int k = 0; k < shape.layers().size(); k++) {
                String of = plan.shapes().size() == 1 ? "" : " (" + shape.name() + ")";
                controls.add(thickness(shape, i, k, of));
            }
        }
        return controls;
    }

    private static Control thickness(ShapePart shape, int number, int layer, String of) {
        return of(
                shape.layers().get(layer).role() + ", packed" + of,
                "shapes[" + number + "].layers[" + layer + "].thickness",
                layer < shape.layers().size() - 1
                        ? ""
                        : "The top of the lane stays where it is: where stone is thinner, earth"
                                + " comes up higher under it, so more is filled and less dug.");
    }
}
