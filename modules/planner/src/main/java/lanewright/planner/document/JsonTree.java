package lanewright.planner.document;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lanewright.planner.document.Node.At;

/** Reads JSON into {@link Node}s. Strict, and bounded in size, depth and length of names. */
final class JsonTree {

    /** No plan that a person keeps is larger, bytes. */
    static final int LARGEST = 4_000_000;

    private static final JsonFactory FACTORY =
            JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
                    .streamReadConstraints(
                            StreamReadConstraints.builder()
                                    .maxNestingDepth(20)
                                    .maxNameLength(200)
                                    .maxStringLength(20_000)
                                    .maxNumberLength(40)
                                    .build())
                    .build();

    private final String file;
    private final JsonParser parser;

    private JsonTree(String file, JsonParser parser) {
        this.file = file;
        this.parser = parser;
    }

    /**
     * The object that a file holds.
     *
     * @throws PlanException if it is too large, not UTF-8, not JSON, or holds no object or more
     */
    static Node.Members read(String file, byte[] bytes) throws PlanException {
        if (bytes.length > LARGEST) {
            throw refused(
                    file,
                    At.NOWHERE,
                    "the file is larger than any plan",
                    "Check that this is the plan and not a survey.");
        }
        String text = text(file, bytes);
        if (text.isBlank()) {
            throw refused(
                    file,
                    At.NOWHERE,
                    "the file is empty",
                    "Make a first plan with \"lanewright start\".");
        }
        try (JsonParser parser = FACTORY.createParser(text)) {
            return new JsonTree(file, parser).document();
        } catch (JsonProcessingException e) {
            throw refused(file, at(e.getLocation()), reason(e), "Mend the JSON here.");
        } catch (IOException e) {
            throw new UncheckedIOException("text in memory could not be read", e);
        }
    }

    private static String text(String file, byte[] bytes) throws PlanException {
        try {
            String text =
                    StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw refused(
                    file, At.NOWHERE, "the file is not UTF-8 text", "Save the plan as UTF-8 text.");
        }
    }

    private Node.Members document() throws IOException, PlanException {
        JsonToken first = parser.nextToken();
        Node whole = value(first);
        if (!(whole instanceof Node.Members members)) {
            throw refused(
                    file,
                    whole.at(),
                    "a plan is a JSON object, this is " + whole.kind(),
                    "Begin it with { and end it with }.");
        }
        if (parser.nextToken() != null) {
            throw refused(
                    file,
                    at(parser.currentTokenLocation()),
                    "something follows the end of the plan",
                    "Take it out.");
        }
        return members;
    }

    private Node value(JsonToken token) throws IOException, PlanException {
        At at = at(parser.currentTokenLocation());
        return switch (token) {
            case START_OBJECT -> members(at);
            case START_ARRAY -> items(at);
            case VALUE_STRING -> new Node.Text(at, parser.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Node.Number(at, parser.getText());
            case VALUE_TRUE -> new Node.Flag(at, true);
            case VALUE_FALSE -> new Node.Flag(at, false);
            case VALUE_NULL -> new Node.Nothing(at);
            default -> throw refused(file, at, "a value is missing", "Put one in.");
        };
    }

    private Node members(At at) throws IOException, PlanException {
        Map<String, Node> values = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            values.put(name, value(parser.nextToken()));
        }
        return new Node.Members(at, values);
    }

    private Node items(At at) throws IOException, PlanException {
        List<Node> values = new ArrayList<>();
        for (JsonToken token = parser.nextToken();
                token != JsonToken.END_ARRAY;
                token = parser.nextToken()) {
            values.add(value(token));
        }
        return new Node.Items(at, values);
    }

    private static At at(JsonLocation location) {
        return location == null ? At.NOWHERE : new At(location.getLineNr(), location.getColumnNr());
    }

    /** What the library says, cut to its first sentence. */
    private static String reason(JsonProcessingException e) {
        String said = e.getOriginalMessage();
        if (said.startsWith("Duplicate field")) {
            return "the field " + said.substring("Duplicate field ".length()) + " is given twice";
        }
        int end = said.indexOf('\n');
        String first = end < 0 ? said : said.substring(0, end);
        return "this is not JSON (" + first + ")";
    }

    private static PlanException refused(String file, At at, String what, String remedy) {
        return new PlanException(file, new Trouble(at.line(), at.column(), "", what, remedy));
    }
}
