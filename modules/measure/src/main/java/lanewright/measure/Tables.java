package lanewright.measure;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The published tables that travel inside the program, as CSV (RFC 4180) with a source, an edition
 * and a mark on every row. A table is data: which row applies, and in which unit a column stands,
 * is known to the room that asks for it.
 */
public final class Tables {

    private static final String FOLDER = "/lanewright/tables/";

    /** Those that were read, for they are asked for again with every edit of a plan. */
    private static final Map<String, Table> READ = new ConcurrentHashMap<>();

    private Tables() {}

    /**
     * A table that is packed with the program, read when it is asked for first.
     *
     * @param name name of its file without {@code .csv}, such as {@code stone-sizes}
     * @return the table, with at least one row
     * @throws IllegalArgumentException if there is no table of that name
     * @throws IllegalStateException if the table is broken, with its name and line
     */
    public static Table read(String name) {
        return READ.computeIfAbsent(name, Tables::packed);
    }

    private static Table packed(String name) {
        for (int i = 0; i < name.length(); i++) {
            if ("abcdefghijklmnopqrstuvwxyz0123456789-".indexOf(name.charAt(i)) < 0) {
                throw new IllegalArgumentException(
                        "a table's name has lower case letters, digits and hyphens, was " + name);
            }
        }
        try (InputStream in = Tables.class.getResourceAsStream(FOLDER + name + ".csv")) {
            if (in == null) {
                throw new IllegalArgumentException("no table is called " + name);
            }
            return parse(name, in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException("table " + name + " could not be read", e);
        }
    }

    /**
     * Reads a table from its bytes.
     *
     * @param name what it is called in errors
     * @param bytes UTF-8, a header row and at least one row below it
     * @throws IllegalStateException if it is broken, with its name and line
     */
    static Table parse(String name, byte[] bytes) {
        try {
            String text =
                    StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return new Table(name, Csv.lines(name, text));
        } catch (CharacterCodingException e) {
            throw new IllegalStateException("table " + name + " is not UTF-8", e);
        }
    }
}
