package lanewright.planner.document;

/**
 * One thing in a plan that cannot be taken as it stands.
 *
 * @param line line in the file, from 1, or 0 if the trouble is not in one line
 * @param column character in that line, from 1, or 0
 * @param field the field, such as {@code shapes[0].width}; empty for the file as a whole
 * @param what what is wrong, without a full stop
 * @param remedy what to do, a whole sentence
 */
public record Trouble(long line, long column, String field, String what, String remedy) {

    /** In words: where, what and what to do. */
    public String words() {
        String where = line > 0 ? "line " + line + ", column " + column + ": " : "";
        String named = field.isEmpty() ? "" : field + ": ";
        return where + named + what + ". " + remedy;
    }
}
