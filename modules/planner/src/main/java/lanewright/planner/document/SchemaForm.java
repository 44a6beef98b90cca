package lanewright.planner.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import lanewright.measure.Row;
import lanewright.measure.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * Makes the JSON Schema (draft 2020-12) of one object from its description. Answers every question
 * of the description with a legal stand-in.
 */
final class SchemaForm<P> implements Form<P> {

    private final String field;
    private final Map<String, Node> properties = new LinkedHashMap<>();
    private final List<Node> required = new ArrayList<>();
    private final List<String> reasons = new ArrayList<>();
    private boolean hasSpot;

    private SchemaForm(String field) {
        this.field = field;
    }

    /** A schema and the stand-in for what it describes. */
    private record Made<P>(Node.Members schema, P standIn) {}

    /** The schema of the whole plan. */
    static Node.Members of(Function<Form<Plan>, Plan> description) {
        Map<String, Node> schema = new LinkedHashMap<>();
        schema.put("$schema", text("https://json-schema.org/draft/2020-12/schema"));
        schema.put("title", text("Lanewright plan"));
        schema.put(
                "description",
                text(
                        "A gravel lane as its owner wants it. Every quantity is text with its unit"
                                + " inside, such as \"14 ft\" or \"4.5 m\"."));
        Map<String, Node> extra = new LinkedHashMap<>();
        extra.put(
                "$schema",
                members("type", text("string"), "description", text("Where this schema lies.")));
        extra.put(
                "version",
                members(
                        "const",
                        new Node.Number(Node.At.NOWHERE, Integer.toString(Plan.VERSION)),
                        "description",
                        text("Version of this document.")));
        schema.putAll(object("", description, extra).schema().values());
        return new Node.Members(Node.At.NOWHERE, schema);
    }

    private static <P> Made<P> object(
            String field, Function<Form<P>, P> description, Map<String, Node> extra) {
        var form = new SchemaForm<P>(field);
        form.properties.putAll(extra);
        if (extra.containsKey("version")) {
            form.required.add(text("version"));
        }
        P standIn = description.apply(form);
        Map<String, Node> schema = new LinkedHashMap<>();
        schema.put("type", text("object"));
        form.properties.put("why", form.why());
        schema.put("properties", new Node.Members(Node.At.NOWHERE, form.properties));
        if (!form.required.isEmpty()) {
            schema.put("required", new Node.Items(Node.At.NOWHERE, form.required));
        }
        if (form.hasSpot) {
            schema.put("oneOf", places());
        }
        schema.put("additionalProperties", new Node.Flag(Node.At.NOWHERE, false));
        return new Made<>(new Node.Members(Node.At.NOWHERE, schema), standIn);
    }

    private Node why() {
        List<Node> names = reasons.stream().map(SchemaForm::text).toList();
        return members(
                "description",
                text("Reasons for fields of this object. They change nothing."),
                "type",
                text("object"),
                "propertyNames",
                members("enum", new Node.Items(Node.At.NOWHERE, names)),
                "additionalProperties",
                members("type", text("string")));
    }

    private static Node places() {
        Node map = new Node.Items(Node.At.NOWHERE, List.of(text("east"), text("north")));
        Node earth = new Node.Items(Node.At.NOWHERE, List.of(text("longitude"), text("latitude")));
        return new Node.Items(Node.At.NOWHERE, List.of(place(map, earth), place(earth, map)));
    }

    private static Node place(Node wanted, Node other) {
        List<Node> none = new ArrayList<>();
        for (Node name : ((Node.Items) other).values()) {
            none.add(members("required", new Node.Items(Node.At.NOWHERE, List.of(name))));
        }
        return members(
                "required", wanted, "not", members("anyOf", new Node.Items(Node.At.NOWHERE, none)));
    }

    private String fieldOf(String name) {
        return field.isEmpty() ? name : field + "." + name;
    }

    private void put(String name, Node schema) {
        properties.put(name, schema);
        reasons.add(name);
    }

    /** What is said about a field, and the value it has when it is left out. */
    private String about(String name, String about) {
        Row row = Defaults.table().row(fieldOf(name));
        if (row == null || !Defaults.usedWhenAbsent(row)) {
            return about;
        }
        String us = row.text("us");
        String metric = row.text("metric");
        return about
                + " Left out: "
                + (us.equals(metric) ? us : us + " (us), " + metric + " (metric)")
                + ".";
    }

    private void require(String name) {
        Row row = Defaults.table().row(fieldOf(name));
        if (row == null || !Defaults.usedWhenAbsent(row)) {
            required.add(text(name));
        }
    }

    private static <T> Node schema(Codec<T> codec, String about) {
        Map<String, Node> schema = new LinkedHashMap<>();
        schema.put("description", text(about));
        schema.put("type", text("string"));
        if (!codec.words().isEmpty()) {
            schema.put(
                    "enum",
                    new Node.Items(
                            Node.At.NOWHERE,
                            codec.words().stream().map(SchemaForm::text).toList()));
        } else if (!codec.pattern().isEmpty()) {
            schema.put("pattern", text(codec.pattern()));
        }
        return new Node.Members(Node.At.NOWHERE, schema);
    }

    @Override
    public <T> T value(String name, Codec<T> codec, Function<P, T> get, String about) {
        put(name, schema(codec, about(name, about)));
        require(name);
        Row row = Defaults.table().row(fieldOf(name));
        return row == null ? codec.sample() : Defaults.value(row, codec, UnitSystem.METRIC);
    }

    @Override
    public <T> T valueOr(String name, Codec<T> codec, T none, Function<P, T> get, String about) {
        put(name, schema(codec, about));
        return none;
    }

    @Override
    public <T> @Nullable T valueIfAny(
            String name, Codec<T> codec, Function<P, T> get, String about) {
        put(name, schema(codec, about));
        return null;
    }

    @Override
    public boolean flag(String name, Function<P, Boolean> get, String about) {
        put(name, members("description", text(about(name, about)), "type", text("boolean")));
        require(name);
        return false;
    }

    @Override
    public int wholeIfAny(String name, Function<P, Integer> get, String about) {
        put(
                name,
                members(
                        "description",
                        text(about),
                        "type",
                        text("integer"),
                        "minimum",
                        new Node.Number(Node.At.NOWHERE, "1")));
        return 0;
    }

    @Override
    public List<String> words(String name, Function<P, List<String>> get, String about) {
        put(
                name,
                members(
                        "description",
                        text(about),
                        "type",
                        text("array"),
                        "items",
                        members("type", text("string"))));
        return List.of();
    }

    @Override
    public <E> List<E> parts(
            String name, Function<P, List<E>> get, Function<Form<E>, E> each, String about) {
        Made<E> made = object(fieldOf(name), each, Map.of());
        put(
                name,
                members("description", text(about), "type", text("array"), "items", made.schema()));
        // Three of a kind: enough for any line or outline.
        return List.of(made.standIn(), made.standIn(), made.standIn());
    }

    @Override
    public <E> List<E> partsIfAny(
            String name, Function<P, List<E>> get, Function<Form<E>, E> each, String about) {
        parts(name, get, each, about);
        return List.of();
    }

    @Override
    public <E> E part(String name, Function<P, E> get, Function<Form<E>, E> inner, String about) {
        Made<E> made = object(fieldOf(name), inner, Map.of());
        Map<String, Node> schema = new LinkedHashMap<>();
        schema.put("description", text(about));
        schema.putAll(made.schema().values());
        put(name, new Node.Members(Node.At.NOWHERE, schema));
        if (made.schema().values().get("required") != null) {
            required.add(text(name));
        }
        return made.standIn();
    }

    @Override
    public Spot spot(Function<P, Spot> get) {
        put("east", schema(Codecs.COORDINATE, "East coordinate in the frame, with its unit."));
        put("north", schema(Codecs.COORDINATE, "North coordinate in the frame, with its unit."));
        put("longitude", schema(Codecs.LONGITUDE, "Or longitude, such as 10.25° E or -10.25°."));
        put("latitude", schema(Codecs.LATITUDE, "Or latitude, such as 45.5° N or -45.5°."));
        hasSpot = true;
        return Spot.at(0, 0);
    }

    private static Node text(String words) {
        return new Node.Text(Node.At.NOWHERE, words);
    }

    private static Node.Members members(Object... namesAndValues) {
        Map<String, Node> members = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            members.put((String) namesAndValues[i], (Node) namesAndValues[i + 1]);
        }
        return new Node.Members(Node.At.NOWHERE, members);
    }
}
