package lanewright.measure;

import java.util.ArrayList;
import java.util.List;

/**
 * Comma separated text taken apart by RFC 4180 (2005), section 2: quotes only around a whole field,
 * a quote inside them doubled, lines ended by CR LF or LF. Lines that are wholly empty are left
 * out.
 */
final class Csv {

    /**
     * One record.
     *
     * @param line line of the text on which it begins, from 1
     * @param fields its fields, as many as were written
     */
    record Line(int line, List<String> fields) {
        Line {
            fields = List.copyOf(fields);
        }
    }

    private static final char QUOTE = '"';

    private final String name;
    private final String text;
    private final List<Line> lines = new ArrayList<>();
    private int at;
    private int line = 1;

    private Csv(String name, String text) {
        this.name = name;
        this.text = text;
    }

    /**
     * The records of {@code text}.
     *
     * @param name what the text is called in an error
     * @throws IllegalStateException if a quote stands where none may, or is not closed
     */
    static List<Line> lines(String name, String text) {
        var csv = new Csv(name, text);
        while (csv.at < text.length()) {
            csv.readLine();
        }
        return List.copyOf(csv.lines);
    }

    private void readLine() {
        int began = line;
        List<String> fields = new ArrayList<>();
        fields.add(field());
        while (at < text.length() && text.charAt(at) == ',') {
            at++;
            fields.add(field());
        }
        endLine();
        if (fields.size() > 1 || !fields.get(0).isEmpty()) {
            lines.add(new Line(began, fields));
        }
    }

    private String field() {
        if (at < text.length() && text.charAt(at) == QUOTE) {
            return quoted();
        }
        int from = at;
        while (at < text.length() && ",\r\n".indexOf(text.charAt(at)) < 0) {
            if (text.charAt(at) == QUOTE) {
                throw broken("a quote inside a field that does not begin with one");
            }
            at++;
        }
        return text.substring(from, at);
    }

    private String quoted() {
        int began = line;
        StringBuilder field = new StringBuilder();
        at++;
        while (at < text.length()) {
            char next = text.charAt(at++);
            if (next == QUOTE) {
                if (at >= text.length() || text.charAt(at) != QUOTE) {
                    return field.toString();
                }
                at++;
            } else if (next == '\n') {
                line++;
            }
            field.append(next);
        }
        line = began;
        throw broken("a quote that is never closed");
    }

    private void endLine() {
        if (at < text.length() && text.charAt(at) == '\r') {
            at++;
        }
        if (at < text.length()) {
            if (text.charAt(at) != '\n') {
                throw broken("something after a closing quote, or a lone carriage return");
            }
            at++;
        }
        line++;
    }

    private IllegalStateException broken(String what) {
        return new IllegalStateException("table " + name + ", line " + line + ": " + what);
    }
}
