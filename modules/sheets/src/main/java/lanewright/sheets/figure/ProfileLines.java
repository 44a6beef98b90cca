package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import lanewright.lane.section.Section;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;

/**
 * The lines of a profile: ground, stripped ground, earth as shaped, finished lane and ditch
 * bottoms. Words are kept off them, and each has its name beside it.
 */
final class ProfileLines {

    /** Ditch bottoms nearer in height than this are drawn as one line, pt. */
    private static final double ALIKE = 1.2;

    /** How far a name may stand from its line, pt. */
    private static final double FARTHEST = 75;

    /** Their names, in the order of naming: those that look most alike come first. */
    private static final List<Map.Entry<Role, String>> NAMES =
            List.of(
                    Map.entry(Role.SUBGRADE, "earth as shaped"),
                    Map.entry(Role.STRIPPED_LINE, "topsoil off"),
                    Map.entry(Role.GROUND_LINE, "ground"),
                    Map.entry(Role.FINISHED, "finished lane"),
                    Map.entry(Role.DITCH_BOTH, "both ditches"),
                    Map.entry(Role.DITCH_LEFT, "left ditch"),
                    Map.entry(Role.DITCH_RIGHT, "right ditch"));

    private final Stretch stretch;
    private final Scale scale;
    private final Map<Role, List<Outline>> lines = new EnumMap<>(Role.class);

    ProfileLines(Stretch stretch, Scale scale) {
        this.stretch = stretch;
        this.scale = scale;
        ditches();
        curve(Role.STRIPPED_LINE, Stretch::stripped);
        curve(Role.SUBGRADE, Stretch::subgrade);
        double[][] ground = stretch.groundLine();
        curve(Role.GROUND_LINE, ground[0], ground[1]);
        curve(Role.FINISHED, Section::profileHeight);
    }

    /** Draws the lines, and keeps words off them. */
    void draw(Pen pen, Places places, Set<Role> drawn) {
        for (Role role : ORDER) {
            for (Outline line : lines.getOrDefault(role, List.of())) {
                pen.line(role, line);
                places.keepOff(line);
                drawn.add(role);
            }
        }
    }

    /** From what lies under the others to what lies over them. */
    private static final List<Role> ORDER =
            List.of(
                    Role.DITCH_BOTH,
                    Role.DITCH_LEFT,
                    Role.DITCH_RIGHT,
                    Role.STRIPPED_LINE,
                    Role.SUBGRADE,
                    Role.GROUND_LINE,
                    Role.FINISHED);

    /** Writes the name of each line beside it. */
    void names(Pen pen, Places places, Box plot) {
        var named = new ArrayList<LineNames.Named>();
        for (Map.Entry<Role, String> name : NAMES) {
            List<Outline> pieces = lines.get(name.getKey());
            if (pieces != null) {
                named.add(new LineNames.Named(name.getValue(), pieces));
            }
        }
        LineNames.draw(pen, places, named, plot, FARTHEST);
    }

    private void curve(Role role, ToDoubleFunction<Section> height) {
        curve(role, stretch.sections().stream().mapToDouble(height).toArray());
    }

    private void curve(Role role, double[] heights) {
        curve(role, stretch.sections().stream().mapToDouble(Section::station).toArray(), heights);
    }

    /** Broken where a height is not a number. */
    private void curve(Role role, double[] stations, double[] heights) {
        var path = new Outline.Builder();
        for (int i = 0; i < heights.length; i++) {
            if (Double.isFinite(heights[i])) {
                path.to(scale.x(stations[i]), scale.y(heights[i]));
            } else {
                keep(role, path);
                path = new Outline.Builder();
            }
        }
        keep(role, path);
    }

    private void keep(Role role, Outline.Builder path) {
        if (path.size() > 1) {
            lines.computeIfAbsent(role, any -> new ArrayList<>()).add(path.open());
        }
    }

    /** Both bottoms as one line where they are equally high, else each as its own. */
    private void ditches() {
        int n = stretch.sections().size();
        double[] left = new double[n];
        double[] right = new double[n];
        boolean[] alike = new boolean[n];
        for (int i = 0; i < n; i++) {
            left[i] = Stretch.leftDitch(stretch.sections().get(i));
            right[i] = Stretch.rightDitch(stretch.sections().get(i));
            alike[i] = Math.abs(left[i] - right[i]) * scale.up() <= ALIKE;
        }
        double[] both = new double[n];
        for (int i = 0; i < n; i++) {
            boolean inside =
                    alike[i]
                            && (i == 0 || alike[i - 1] || !known(left[i - 1], right[i - 1]))
                            && (i == n - 1 || alike[i + 1] || !known(left[i + 1], right[i + 1]));
            both[i] = alike[i] ? left[i] : Double.NaN;
            if (inside) {
                left[i] = Double.NaN;
                right[i] = Double.NaN;
            }
        }
        curve(Role.DITCH_BOTH, both);
        curve(Role.DITCH_LEFT, left);
        curve(Role.DITCH_RIGHT, right);
    }

    private static boolean known(double left, double right) {
        return Double.isFinite(left) || Double.isFinite(right);
    }
}
