package lanewright.planner.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Which value of a document: member names and places in lists, from the outside in.
 *
 * @param steps names of members, and numbers of items from 0
 */
record Path(List<Object> steps) {

    Path {
        steps = List.copyOf(steps);
    }

    /** Reads a path such as {@code shapes[0].left.ditchDepth}. */
    static Path of(String written) {
        List<Object> steps = new ArrayList<>();
        for (String part : written.split("\\.", -1)) {
            int bracket = part.indexOf('[');
            String name = bracket < 0 ? part : part.substring(0, bracket);
            if (name.isEmpty()) {
                throw new IllegalArgumentException("no path: " + written);
            }
            steps.add(name);
            if (bracket >= 0) {
                if (!part.endsWith("]")) {
                    throw new IllegalArgumentException("no path: " + written);
                }
                steps.add(Integer.valueOf(part.substring(bracket + 1, part.length() - 1)));
            }
        }
        return new Path(steps);
    }

    /** What stands there, or an empty text. */
    String get(Node whole) {
        Node at = whole;
        for (Object step : steps) {
            at = inside(at, step);
        }
        if (at instanceof Node.Text text) {
            return text.value();
        }
        if (at instanceof Node.Number number) {
            return number.value();
        }
        return at instanceof Node.Flag flag ? Boolean.toString(flag.value()) : "";
    }

    private static @Nullable Node inside(@Nullable Node at, Object step) {
        if (at instanceof Node.Members members && step instanceof String name) {
            return members.values().get(name);
        }
        if (at instanceof Node.Items items
                && step instanceof Integer index
                && index < items.values().size()) {
            return items.values().get(index);
        }
        return null;
    }

    /**
     * The owner's document with a value put there. The item after the last of a list is made; an
     * item that is put empty is taken out.
     *
     * @param owner as it stands
     * @param written the whole of it written out, which tells what kind of value belongs there and
     *     gives what the owner left unsaid on the way to it
     * @param value what to put; empty to take it out
     */
    Node.Members put(Node.Members owner, Node.Members written, String value) {
        return (Node.Members) put(owner, written, 0, value);
    }

    private Node put(@Nullable Node owner, @Nullable Node written, int depth, String value) {
        if (depth == steps.size()) {
            return written instanceof Node.Flag
                    ? new Node.Flag(Node.At.NOWHERE, Boolean.parseBoolean(value))
                    : written instanceof Node.Number
                            ? new Node.Number(Node.At.NOWHERE, value)
                            : new Node.Text(Node.At.NOWHERE, value);
        }
        Object step = steps.get(depth);
        boolean last = depth == steps.size() - 1;
        if (step instanceof Integer index) {
            Node.Items list =
                    owner instanceof Node.Items own
                            ? own
                            : written instanceof Node.Items out
                                    ? out
                                    : new Node.Items(Node.At.NOWHERE, List.of());
            List<Node> items = new ArrayList<>(list.values());
            if (index > items.size() || (last && index == items.size())) {
                throw new IllegalArgumentException("there is no item " + index);
            }
            if (last && value.isEmpty()) {
                items.remove((int) index);
            } else if (index == items.size()) {
                items.add(put(null, null, depth + 1, value));
            } else {
                items.set(index, put(items.get(index), inside(written, step), depth + 1, value));
            }
            return new Node.Items(Node.At.NOWHERE, items);
        }
        Map<String, Node> members = new LinkedHashMap<>();
        if (owner instanceof Node.Members own) {
            members.putAll(own.values());
        }
        String name = (String) step;
        if (last && value.isEmpty()) {
            members.remove(name);
        } else {
            members.put(name, put(members.get(name), inside(written, step), depth + 1, value));
        }
        if (last && members.get("why") instanceof Node.Members reasons) {
            Map<String, Node> why = new LinkedHashMap<>(reasons.values());
            why.remove(name);
            members.remove("why");
            if (!why.isEmpty()) {
                members.put("why", new Node.Members(Node.At.NOWHERE, why));
            }
        }
        return new Node.Members(Node.At.NOWHERE, members);
    }
}
