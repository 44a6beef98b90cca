package lanewright.planner.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lanewright.measure.Assumption;
import lanewright.measure.Nearest;
import lanewright.measure.Row;
import lanewright.measure.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * A plan as it was read: what it says, what was assumed where it says nothing, and its text, so
 * that a proposal can be written into it without touching anything else.
 */
public final class PlanFile {

    private final String name;
    private final Plan plan;
    private final List<Assumption> assumed;
    private final Node.Members tree;
    private final int readVersion;
    private volatile Node.@Nullable Members whole;

    private PlanFile(
            String name, Plan plan, List<Assumption> assumed, Node.Members tree, int readVersion) {
        this.name = name;
        this.plan = plan;
        this.assumed = List.copyOf(assumed);
        this.tree = tree;
        this.readVersion = readVersion;
    }

    /**
     * Reads a plan.
     *
     * @param name name of the file, for troubles
     * @param bytes what it holds, UTF-8
     * @throws PlanException if it cannot be taken as it stands, with every trouble that was found
     */
    public static PlanFile read(String name, byte[] bytes) throws PlanException {
        return read(name, bytes, Upgrades.ALL);
    }

    static PlanFile read(String name, byte[] bytes, Upgrades upgrades) throws PlanException {
        Node.Members given = JsonTree.read(name, bytes);
        int version = upgrades.version(name, given);
        return of(name, upgrades.upgraded(given, version), version);
    }

    /** The plan that a tree of the present version says. */
    static PlanFile of(String name, Node.Members tree) throws PlanException {
        return of(name, tree, Plan.VERSION);
    }

    private static PlanFile of(String name, Node.Members tree, int version) throws PlanException {
        var reading = new ReadForm.Reading(units(name, tree));
        Plan plan = null;
        try {
            plan = ReadForm.read(reading, tree, "", "", PlanForm::plan);
        } catch (ReadForm.Unmade e) {
            if (reading.troubles.isEmpty()) {
                throw e;
            }
        }
        if (plan != null && reading.troubles.isEmpty()) {
            crossCheck(plan, tree, reading);
        }
        if (plan == null || !reading.troubles.isEmpty()) {
            throw new PlanException(name, sorted(reading.troubles));
        }
        return new PlanFile(name, plan, reading.assumed, tree, version);
    }

    private static List<Trouble> sorted(List<Trouble> troubles) {
        List<Trouble> sorted = new ArrayList<>(troubles);
        sorted.sort(Comparator.comparingLong(Trouble::line).thenComparingLong(Trouble::column));
        return sorted;
    }

    /** The plan's units, which the reading of stations depends on. */
    private static UnitSystem units(String name, Node.Members tree) throws PlanException {
        Node units = tree.values().get("units");
        if (units instanceof Node.Text text) {
            for (UnitSystem system : UnitSystem.values()) {
                if (Codecs.words(system.name()).equals(text.value())) {
                    return system;
                }
            }
        }
        Node.At at = units == null ? tree.at() : units.at();
        throw new PlanException(
                name,
                new Trouble(
                        at.line(),
                        at.column(),
                        "units",
                        "the plan does not say in which units it is to be read",
                        "Write \"units\": \"us\" or \"units\": \"metric\"."));
    }

    /** What no single object can know. */
    private static void crossCheck(Plan plan, Node.Members tree, ReadForm.Reading reading) {
        if (plan.shapes().isEmpty() || plan.along().isEmpty()) {
            reading.refuse(
                    tree.at(),
                    plan.shapes().isEmpty() ? "shapes" : "along",
                    "the lane has no shape",
                    "Give one shape at least, and say along which stations it holds.");
            return;
        }
        Set<String> shapes =
                names(
                        plan.shapes().stream().map(ShapePart::name).toList(),
                        "shapes",
                        tree,
                        reading);
        double at = 0;
        for (int i = 0; i < plan.along().size(); i++) {
            ShapePart.Along along = plan.along().get(i);
            Node.At place = place(tree, "along", i);
            String field = "along[" + i + "]";
            if (!shapes.contains(along.shape())) {
                reading.refuse(
                        place,
                        field + ".shape",
                        "no shape is called \"" + along.shape() + "\"",
                        Nearest.to(along.shape(), shapes)
                                .map(near -> "Did you mean " + near + "?")
                                .orElse("There are: " + String.join(", ", shapes) + "."));
            }
            if (along.from() != at) {
                reading.refuse(
                        place,
                        field + ".from",
                        i == 0
                                ? "the first stretch does not begin at the start"
                                : "it does not begin where the one before ends",
                        "Let stretches follow each other without gap or overlap.");
            }
            at = along.to();
        }
        if (at != Double.POSITIVE_INFINITY) {
            reading.refuse(
                    place(tree, "along", plan.along().size() - 1),
                    "along[" + (plan.along().size() - 1) + "].to",
                    "the last stretch does not reach the end",
                    "Write \"to\": \"end\".");
        }
        Set<String> roles =
                names(
                        plan.stone().materials().stream().map(StonePart.Material::role).toList(),
                        "stone.materials",
                        tree,
                        reading);
        for (int i = 0; i < plan.shapes().size(); i++) {
            for (ShapePart.Layer layer : plan.shapes().get(i).layers()) {
                if (!roles.contains(layer.role())) {
                    reading.refuse(
                            place(tree, "shapes", i),
                            "shapes[" + i + "].layers",
                            "nothing is said of the stone \"" + layer.role() + "\"",
                            "Add it to stone.materials"
                                    + Nearest.to(layer.role(), roles)
                                            .map(near -> ", or write " + near)
                                            .orElse("")
                                    + ".");
                }
            }
        }
    }

    private static Set<String> names(
            List<String> names, String field, Node.Members tree, ReadForm.Reading reading) {
        Set<String> seen = new LinkedHashSet<>();
        for (String name : names) {
            if (!seen.add(name)) {
                reading.refuse(tree.at(), field, "two are called \"" + name + "\"", "Rename one.");
            }
        }
        return seen;
    }

    private static Node.At place(Node.Members tree, String list, int index) {
        return tree.values().get(list) instanceof Node.Items items && index < items.values().size()
                ? items.values().get(index).at()
                : tree.at();
    }

    /** Name of the file, without folders. */
    public String name() {
        return name;
    }

    /**
     * A trouble with what the plan says, at its place in the file; for a field that is left out, at
     * the place of what it would stand in.
     *
     * @param field such as {@code stone.materials[0].kind}
     * @param what what is wrong, without a full stop
     * @param remedy what to do, a whole sentence
     */
    public Trouble trouble(String field, String what, String remedy) {
        Node at = tree;
        for (String step : field.split("\\.|(?=\\[)")) {
            Node inside = inside(at, step);
            if (inside == null) {
                break;
            }
            at = inside;
        }
        return new Trouble(at.at().line(), at.at().column(), field, what, remedy);
    }

    private static @Nullable Node inside(Node node, String step) {
        if (node instanceof Node.Members members) {
            return members.values().get(step);
        }
        if (node instanceof Node.Items items && step.startsWith("[")) {
            int index = Integer.parseInt(step.substring(1, step.length() - 1));
            return index < items.values().size() ? items.values().get(index) : null;
        }
        return null;
    }

    /**
     * The plan with every value written out. Kept, for one edit on the screen asks many times; two
     * threads that ask at once may each make it, and make the same.
     */
    private Node.Members whole() {
        Node.Members made = whole;
        if (made == null) {
            made = WriteForm.write(plan.units(), false, plan, "", PlanForm::plan);
            whole = made;
        }
        return made;
    }

    /** What it says. */
    public Plan plan() {
        return plan;
    }

    /** What was assumed where it says nothing, each once, with its source. */
    public List<Assumption> assumed() {
        return assumed;
    }

    /** The version that the file was written in. */
    public int readVersion() {
        return readVersion;
    }

    /**
     * This file after an edit: what changed is written in, and everything else stays as its owner
     * wrote it. The result is read as any file is, so that it holds exactly what it says.
     *
     * @param edited the plan as it shall be
     * @throws PlanException if that plan cannot stand, with the field that is wrong
     */
    public PlanFile with(Plan edited) throws PlanException {
        Node.Members before = whole();
        Node.Members after = WriteForm.write(edited.units(), false, edited, "", PlanForm::plan);
        return of("the plan", Edit.members(tree, before, after), readVersion);
    }

    /**
     * This file with one value written anew, in the owner's own words.
     *
     * @param path which value, such as {@code grade.steepest} or {@code shapes[0].width}
     * @param value what to write, such as {@code 12 %}
     * @throws PlanException if that cannot stand, with what is wrong and what to do
     */
    public PlanFile with(String path, String value) throws PlanException {
        return with(Map.of(path, value));
    }

    /**
     * This file with several values written anew, read again only when all of them are there.
     *
     * @param values what to write at which path, in this order
     * @throws PlanException if that cannot stand, with what is wrong and what to do
     */
    public PlanFile with(Map<String, String> values) throws PlanException {
        Node.Members edited = tree;
        for (Map.Entry<String, String> each : values.entrySet()) {
            edited = Path.of(each.getKey()).put(edited, whole(), each.getValue());
        }
        return of("the plan", edited, readVersion);
    }

    /**
     * What stands at a path, as it is written, or an empty text if nothing does.
     *
     * @param path which value, such as {@code grade.steepest}
     */
    public String said(String path) {
        Path at = Path.of(path);
        String own = at.get(tree);
        return own.isEmpty() ? at.get(whole()) : own;
    }

    /** Whether the owner said the value at a path, so that it is not an assumption. */
    public boolean isSaid(String path) {
        return !Path.of(path).get(tree).isEmpty();
    }

    /**
     * Why the value at a path is what it is: the reason beside it in the file, else the reason of
     * the usual value if it is the usual one; empty if the owner simply said so.
     *
     * @param path which value, such as {@code grade.steepest}
     */
    public String why(String path) {
        int dot = path.lastIndexOf('.');
        String own =
                Path.of(
                                dot < 0
                                        ? "why." + path
                                        : path.substring(0, dot) + ".why" + path.substring(dot))
                        .get(tree);
        if (!own.isEmpty()) {
            return own;
        }
        Row usual = Defaults.table().row(path.replaceAll("\\[\\d+]", ""));
        if (usual != null && said(path).equals(Defaults.text(usual, plan.units()))) {
            return usual.text("why");
        }
        return "";
    }

    /**
     * The text of the plan with this grade in it and everything else as its owner wrote it. Only
     * line ends and indents are made even.
     */
    public String textWith(GradePart grade) {
        Node.Members before = whole();
        Node.Members after =
                WriteForm.write(plan.units(), false, plan.with(grade), "", PlanForm::plan);
        return JsonText.of(Edit.members(tree, before, after));
    }

    /** The text of the plan in the version of this program, otherwise as its owner wrote it. */
    public String text() {
        return JsonText.of(tree);
    }

    /**
     * The text of a plan, every value written out.
     *
     * @param explained whether each value that has a default is given its reason beside it
     */
    public static String write(Plan plan, boolean explained) {
        Map<String, Node> members = new LinkedHashMap<>();
        members.put("version", new Node.Number(Node.At.NOWHERE, Integer.toString(Plan.VERSION)));
        members.putAll(WriteForm.write(plan.units(), explained, plan, "", PlanForm::plan).values());
        return JsonText.of(new Node.Members(Node.At.NOWHERE, members));
    }

    /** The JSON Schema of the plan. */
    public static String schema() {
        return JsonText.of(SchemaForm.of(PlanForm::plan));
    }
}
