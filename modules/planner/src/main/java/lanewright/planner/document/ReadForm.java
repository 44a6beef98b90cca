package lanewright.planner.document;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import lanewright.measure.Assumption;
import lanewright.measure.Nearest;
import lanewright.measure.Row;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * Reads one object. After a trouble it goes on with a legal stand-in, so that one reading tells all
 * troubles; the stand-ins are never seen, because the reading is then refused as a whole.
 */
final class ReadForm<P> implements Form<P> {

    /** Members that stand in any object and mean nothing to the program. */
    private static final String WHY = "why";

    /** What all objects of one reading share. */
    static final class Reading {
        final UnitSystem units;
        final List<Trouble> troubles = new ArrayList<>();
        final List<Assumption> assumed = new ArrayList<>();
        private final Set<String> defaulted = new LinkedHashSet<>();

        Reading(UnitSystem units) {
            this.units = units;
        }

        void refuse(Node.At at, String field, String what, String remedy) {
            troubles.add(new Trouble(at.line(), at.column(), field, what, remedy));
        }
    }

    /** An object that cannot be made; its trouble is already noted. */
    static final class Unmade extends RuntimeException {
        Unmade() {
            super("already noted", null, false, false);
        }
    }

    private final Reading reading;
    private final Node.Members object;

    /** Where the object stands, such as {@code shapes[0].left}; empty for the plan. */
    private final String path;

    /** The same without positions, such as {@code shapes.left}. */
    private final String field;

    private final Set<String> known = new LinkedHashSet<>();

    private ReadForm(Reading reading, Node.Members object, String path, String field) {
        this.reading = reading;
        this.object = object;
        this.path = path;
        this.field = field;
    }

    /** Reads the whole of an object; leaves with {@link Unmade} if it cannot be made. */
    static <P> P read(
            Reading reading,
            Node.Members object,
            String path,
            String field,
            Function<Form<P>, P> description) {
        var form = new ReadForm<P>(reading, object, path, field);
        int before = reading.troubles.size();
        P made = null;
        String refusal = null;
        try {
            made = description.apply(form);
        } catch (IllegalArgumentException e) {
            refusal = String.valueOf(e.getMessage());
        }
        form.refuseStrangers();
        if (refusal != null && reading.troubles.size() == before) {
            reading.refuse(object.at(), path, refusal, "Change it.");
        }
        if (made == null) {
            throw new Unmade();
        }
        return made;
    }

    private String at(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    private String fieldOf(String name) {
        return field.isEmpty() ? name : field + "." + name;
    }

    private @Nullable Node find(String name) {
        known.add(name);
        Node found = object.values().get(name);
        if (found instanceof Node.Nothing) {
            reading.refuse(
                    found.at(),
                    at(name),
                    "null says nothing",
                    "Leave the field out, or give it a value.");
            return null;
        }
        return found;
    }

    @Override
    public <T> T value(String name, Codec<T> codec, Function<P, T> get, String about) {
        Node found = find(name);
        if (found != null) {
            return read(name, found, codec);
        }
        if (object.values().get(name) != null) {
            return codec.sample();
        }
        Row row = Defaults.table().row(fieldOf(name));
        if (row == null || !Defaults.usedWhenAbsent(row)) {
            reading.refuse(
                    object.at(),
                    at(name),
                    "this field is missing",
                    "Give " + codec.what() + ". " + about);
            return codec.sample();
        }
        return assumed(name, row, codec);
    }

    private <T> T assumed(String name, Row row, Codec<T> codec) {
        String text = Defaults.text(row, reading.units);
        if (reading.defaulted.add(fieldOf(name))) {
            reading.assumed.add(row.assumption(row.text("about"), Saying.plain(text)));
        }
        return Defaults.value(row, codec, reading.units);
    }

    private <T> T read(String name, Node found, Codec<T> codec) {
        if (!(found instanceof Node.Text text)) {
            String remedy =
                    found instanceof Node.Number number
                            ? "Write it in quotes with its unit: "
                                    + codec.what()
                                    + ", not "
                                    + number.value()
                                    + "."
                            : "Give " + codec.what() + " in quotes.";
            reading.refuse(found.at(), at(name), "here stands " + found.kind(), remedy);
            return codec.sample();
        }
        try {
            return codec.read(text.value(), reading.units);
        } catch (Codec.Unread e) {
            reading.refuse(found.at(), at(name), e.what(), e.remedy());
            return codec.sample();
        }
    }

    @Override
    public <T> T valueOr(String name, Codec<T> codec, T none, Function<P, T> get, String about) {
        Node found = find(name);
        return found == null ? none : read(name, found, codec);
    }

    @Override
    public <T> @Nullable T valueIfAny(
            String name, Codec<T> codec, Function<P, T> get, String about) {
        Node found = find(name);
        return found == null ? null : read(name, found, codec);
    }

    @Override
    public boolean flag(String name, Function<P, Boolean> get, String about) {
        Node found = find(name);
        if (found instanceof Node.Flag flag) {
            return flag.value();
        }
        if (found != null) {
            reading.refuse(
                    found.at(),
                    at(name),
                    "here stands " + found.kind(),
                    "Write true or false, without quotes.");
            return false;
        }
        Row row = Defaults.table().row(fieldOf(name));
        if (row == null || !Defaults.usedWhenAbsent(row)) {
            reading.refuse(object.at(), at(name), "this field is missing", "Write true or false.");
            return false;
        }
        return assumed(name, row, Codecs.FLAG);
    }

    @Override
    public int wholeIfAny(String name, Function<P, Integer> get, String about) {
        Node found = find(name);
        if (found == null) {
            return 0;
        }
        if (found instanceof Node.Number number && number.value().matches("[0-9]{1,9}")) {
            return Integer.parseInt(number.value());
        }
        reading.refuse(
                found.at(),
                at(name),
                "here must stand a whole number",
                "Write digits only, without quotes.");
        return 0;
    }

    @Override
    public List<String> words(String name, Function<P, List<String>> get, String about) {
        List<String> words = new ArrayList<>();
        List<Node> items = items(name);
        for (int i = 0; i < items.size(); i++) {
            Node item = items.get(i);
            if (item instanceof Node.Text text) {
                words.add(text.value());
            } else {
                reading.refuse(
                        item.at(),
                        at(name) + "[" + i + "]",
                        "here stands " + item.kind(),
                        "Give words in quotes.");
            }
        }
        return words;
    }

    @Override
    public <E> List<E> parts(
            String name, Function<P, List<E>> get, Function<Form<E>, E> each, String about) {
        List<E> parts = new ArrayList<>();
        List<Node> items = items(name);
        for (int i = 0; i < items.size(); i++) {
            String place = at(name) + "[" + i + "]";
            if (items.get(i) instanceof Node.Members members) {
                try {
                    parts.add(read(reading, members, place, fieldOf(name), each));
                } catch (Unmade e) {
                    // The reading has noted what is wrong; the next one is read all the same.
                }
            } else {
                reading.refuse(
                        items.get(i).at(),
                        place,
                        "here stands " + items.get(i).kind(),
                        "Write an object between { and }.");
            }
        }
        return parts;
    }

    private List<Node> items(String name) {
        Node found = find(name);
        if (found == null) {
            return List.of();
        }
        if (found instanceof Node.Items items) {
            return items.values();
        }
        reading.refuse(
                found.at(),
                at(name),
                "here stands " + found.kind(),
                "Write a list between [ and ].");
        return List.of();
    }

    @Override
    public <E> E part(String name, Function<P, E> get, Function<Form<E>, E> inner, String about) {
        Node found = find(name);
        if (found != null && !(found instanceof Node.Members)) {
            reading.refuse(
                    found.at(),
                    at(name),
                    "here stands " + found.kind(),
                    "Write an object between { and }.");
            throw new Unmade();
        }
        Node.Members members =
                found instanceof Node.Members given
                        ? given
                        : new Node.Members(object.at(), Map.of());
        return read(reading, members, at(name), fieldOf(name), inner);
    }

    @Override
    public Spot spot(Function<P, Spot> get) {
        Node east = find("east");
        Node north = find("north");
        Node longitude = find("longitude");
        Node latitude = find("latitude");
        boolean onMap = east != null && north != null;
        boolean onEarth = longitude != null && latitude != null;
        boolean mixed = (east != null || north != null) && (longitude != null || latitude != null);
        if (mixed || (!onMap && !onEarth)) {
            reading.refuse(
                    object.at(),
                    path,
                    mixed ? "here stand two kinds of place" : "this place is incomplete",
                    "Give east and north with their unit, or longitude and latitude in degrees.");
            return Spot.at(0, 0);
        }
        if (east != null && north != null) {
            return Spot.at(
                    read("east", east, Codecs.COORDINATE), read("north", north, Codecs.COORDINATE));
        }
        return Spot.onEarth(
                read("longitude", Objects.requireNonNull(longitude), Codecs.LONGITUDE),
                read("latitude", Objects.requireNonNull(latitude), Codecs.LATITUDE));
    }

    /**
     * Refuses members that the description did not ask for, and reasons for fields that are none.
     */
    private void refuseStrangers() {
        Set<String> names = new LinkedHashSet<>(known);
        names.add(WHY);
        if (path.isEmpty()) {
            names.add("version");
            names.add("$schema");
        }
        for (Map.Entry<String, Node> member : object.values().entrySet()) {
            if (!names.contains(member.getKey())) {
                reading.refuse(
                        member.getValue().at(),
                        at(member.getKey()),
                        "there is no such field here",
                        nearest(member.getKey(), names));
            }
        }
        Node why = object.values().get(WHY);
        if (why instanceof Node.Members reasons) {
            for (Map.Entry<String, Node> reason : reasons.values().entrySet()) {
                checkReason(reason.getKey(), reason.getValue());
            }
        } else if (why != null) {
            reading.refuse(
                    why.at(), at(WHY), "here stands " + why.kind(), "Write field: reason pairs.");
        }
    }

    private void checkReason(String name, Node reason) {
        if (!known.contains(name)) {
            reading.refuse(
                    reason.at(),
                    at(WHY + "." + name),
                    "there is no such field here to give a reason for",
                    nearest(name, known));
        } else if (!(reason instanceof Node.Text)) {
            reading.refuse(
                    reason.at(), at(WHY + "." + name), "a reason is text", "Put it in quotes.");
        }
    }

    private static String nearest(String name, Set<String> names) {
        return Nearest.to(name, names)
                .map(near -> "Did you mean " + near + "?")
                .orElse("Known here: " + String.join(", ", names) + ".");
    }
}
