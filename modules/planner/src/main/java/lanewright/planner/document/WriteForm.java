package lanewright.planner.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import lanewright.measure.Row;
import lanewright.measure.UnitSystem;
import org.jspecify.annotations.Nullable;

/** Writes one object, every field that has something to say, in the order of its description. */
final class WriteForm<P> implements Form<P> {

    private final UnitSystem units;
    private final boolean explain;
    private final P given;
    private final String field;
    private final Map<String, Node> members = new LinkedHashMap<>();
    private final Map<String, Node> why = new LinkedHashMap<>();

    private WriteForm(UnitSystem units, boolean explain, P given, String field) {
        this.units = units;
        this.explain = explain;
        this.given = given;
        this.field = field;
    }

    /**
     * The object that says {@code given}.
     *
     * @param explain whether each value that has a default is given its reason beside it
     */
    static <P> Node.Members write(
            UnitSystem units,
            boolean explain,
            P given,
            String field,
            Function<Form<P>, P> description) {
        var form = new WriteForm<>(units, explain, given, field);
        P written = description.apply(form);
        if (written == null) {
            throw new IllegalStateException("a description made nothing of " + field);
        }
        if (!form.why.isEmpty()) {
            form.members.put("why", new Node.Members(Node.At.NOWHERE, form.why));
        }
        return new Node.Members(Node.At.NOWHERE, form.members);
    }

    private static Node text(String words) {
        return new Node.Text(Node.At.NOWHERE, words);
    }

    private String fieldOf(String name) {
        return field.isEmpty() ? name : field + "." + name;
    }

    private void explain(String name, String written) {
        Row row = Defaults.table().row(fieldOf(name));
        if (explain && row != null && Defaults.text(row, units).equals(written)) {
            why.put(name, text(row.text("why") + " [" + row.citation() + "]"));
        }
    }

    @Override
    public <T> T value(String name, Codec<T> codec, Function<P, T> get, String about) {
        T value = get.apply(given);
        String written = codec.write(value, units);
        members.put(name, text(written));
        explain(name, written);
        return value;
    }

    @Override
    public <T> T valueOr(String name, Codec<T> codec, T none, Function<P, T> get, String about) {
        T value = get.apply(given);
        if (!Objects.equals(value, none)) {
            members.put(name, text(codec.write(value, units)));
        }
        return value;
    }

    @Override
    public <T> @Nullable T valueIfAny(
            String name, Codec<T> codec, Function<P, T> get, String about) {
        T value = get.apply(given);
        if (value != null) {
            members.put(name, text(codec.write(value, units)));
        }
        return value;
    }

    @Override
    public boolean flag(String name, Function<P, Boolean> get, String about) {
        boolean value = get.apply(given);
        members.put(name, new Node.Flag(Node.At.NOWHERE, value));
        explain(name, Boolean.toString(value));
        return value;
    }

    @Override
    public int wholeIfAny(String name, Function<P, Integer> get, String about) {
        int value = get.apply(given);
        if (value != 0) {
            members.put(name, new Node.Number(Node.At.NOWHERE, Integer.toString(value)));
        }
        return value;
    }

    @Override
    public List<String> words(String name, Function<P, List<String>> get, String about) {
        List<String> words = get.apply(given);
        if (!words.isEmpty()) {
            members.put(
                    name,
                    new Node.Items(Node.At.NOWHERE, words.stream().map(WriteForm::text).toList()));
        }
        return words;
    }

    @Override
    public <E> List<E> parts(
            String name, Function<P, List<E>> get, Function<Form<E>, E> each, String about) {
        List<E> parts = get.apply(given);
        if (!parts.isEmpty()) {
            List<Node> items = new ArrayList<>();
            for (E part : parts) {
                items.add(write(units, explain && items.isEmpty(), part, fieldOf(name), each));
            }
            members.put(name, new Node.Items(Node.At.NOWHERE, items));
        }
        return parts;
    }

    @Override
    public <E> E part(String name, Function<P, E> get, Function<Form<E>, E> inner, String about) {
        E part = get.apply(given);
        Node.Members written = write(units, explain, part, fieldOf(name), inner);
        if (!written.values().isEmpty()) {
            members.put(name, written);
        }
        return part;
    }

    @Override
    public Spot spot(Function<P, Spot> get) {
        Spot spot = get.apply(given);
        if (spot.degrees()) {
            members.put("longitude", text(Codecs.LONGITUDE.write(spot.across(), units)));
            members.put("latitude", text(Codecs.LATITUDE.write(spot.up(), units)));
        } else {
            members.put("east", text(Codecs.COORDINATE.write(spot.across(), units)));
            members.put("north", text(Codecs.COORDINATE.write(spot.up(), units)));
        }
        return spot;
    }
}
