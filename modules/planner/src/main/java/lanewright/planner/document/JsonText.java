package lanewright.planner.document;

import java.util.Iterator;
import java.util.Map;

/**
 * Writes {@link Node}s as text that is good to read and to compare line by line: two blanks of
 * indent, one member a line, and what holds no list or object of its own on one line where it fits.
 */
final class JsonText {

    /** An object or list goes on one line up to this many characters. */
    private static final int LINE = 100;

    private final StringBuilder out = new StringBuilder();

    private JsonText() {}

    /** The text, with a line feed at its end. */
    static String of(Node node) {
        var text = new JsonText();
        text.write(node, 0);
        return text.out.append('\n').toString();
    }

    private void write(Node node, int depth) {
        String flat = flat(node);
        if (flat.length() + 2 * depth <= LINE && depth > 0 && isShallow(node)) {
            out.append(flat);
        } else if (node instanceof Node.Members members && !members.values().isEmpty()) {
            out.append("{\n");
            Iterator<Map.Entry<String, Node>> each = members.values().entrySet().iterator();
            while (each.hasNext()) {
                Map.Entry<String, Node> member = each.next();
                indent(depth + 1);
                out.append(quoted(member.getKey())).append(": ");
                write(member.getValue(), depth + 1);
                out.append(each.hasNext() ? ",\n" : "\n");
            }
            indent(depth);
            out.append('}');
        } else if (node instanceof Node.Items items && !items.values().isEmpty()) {
            out.append("[\n");
            Iterator<Node> each = items.values().iterator();
            while (each.hasNext()) {
                indent(depth + 1);
                write(each.next(), depth + 1);
                out.append(each.hasNext() ? ",\n" : "\n");
            }
            indent(depth);
            out.append(']');
        } else {
            out.append(flat);
        }
    }

    private void indent(int depth) {
        out.append("  ".repeat(depth));
    }

    private static boolean isShallow(Node node) {
        if (node instanceof Node.Members members) {
            return members.values().values().stream().allMatch(JsonText::isLeaf);
        }
        return !(node instanceof Node.Items items)
                || items.values().stream().allMatch(JsonText::isLeaf);
    }

    private static boolean isLeaf(Node node) {
        return !(node instanceof Node.Members) && !(node instanceof Node.Items);
    }

    private static String flat(Node node) {
        if (node instanceof Node.Members members) {
            StringBuilder flat = new StringBuilder("{");
            members.values()
                    .forEach(
                            (name, value) ->
                                    flat.append(flat.length() > 1 ? ", " : " ")
                                            .append(quoted(name))
                                            .append(": ")
                                            .append(flat(value)));
            return flat.append(flat.length() > 1 ? " }" : "}").toString();
        }
        if (node instanceof Node.Items items) {
            return "["
                    + String.join(", ", items.values().stream().map(JsonText::flat).toList())
                    + "]";
        }
        if (node instanceof Node.Text text) {
            return quoted(text.value());
        }
        if (node instanceof Node.Number number) {
            return number.value();
        }
        return node instanceof Node.Flag flag ? Boolean.toString(flag.value()) : "null";
    }

    /** A JSON string (RFC 8259, section 7). */
    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"', '\\' -> quoted.append('\\').append(c);
                case '\n' -> quoted.append("\\n");
                case '\t' -> quoted.append("\\t");
                case '\r' -> quoted.append("\\r");
                default -> {
                    if (c < 0x20 || Character.isSurrogate(c)) {
                        quoted.append(unicode(c));
                    } else {
                        quoted.append(c);
                    }
                }
            }
        }
        return quoted.append('"').toString();
    }

    private static String unicode(char c) {
        String hex = Integer.toHexString(c);
        return "\\u" + "0".repeat(4 - hex.length()) + hex;
    }
}
