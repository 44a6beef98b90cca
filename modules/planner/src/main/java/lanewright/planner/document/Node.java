package lanewright.planner.document;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A JSON value that remembers where in the file it stands. */
sealed interface Node {

    /** Where it begins. */
    At at();

    /** What it is, in words. */
    String kind();

    /**
     * A place in the file.
     *
     * @param line from 1, or 0 if the value was not read from a file
     * @param column from 1, or 0
     */
    record At(long line, long column) {
        static final At NOWHERE = new At(0, 0);
    }

    /** An object; members in the order of the file. */
    record Members(At at, Map<String, Node> values) implements Node {
        public Members {
            values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        }

        @Override
        public String kind() {
            return "an object";
        }
    }

    /** An array. */
    record Items(At at, List<Node> values) implements Node {
        public Items {
            values = List.copyOf(values);
        }

        @Override
        public String kind() {
            return "a list";
        }
    }

    /** A string. */
    record Text(At at, String value) implements Node {
        @Override
        public String kind() {
            return "text";
        }
    }

    /** A number, as it was written. */
    @SuppressWarnings("JavaLangClash") // a number of a document, and always called Node.Number
    record Number(At at, String value) implements Node {
        @Override
        public String kind() {
            return "a bare number";
        }
    }

    /** True or false. */
    record Flag(At at, boolean value) implements Node {
        @Override
        public String kind() {
            return value ? "true" : "false";
        }
    }

    /** Null. */
    record Nothing(At at) implements Node {
        @Override
        public String kind() {
            return "null";
        }
    }
}
