package lanewright.survey;

/**
 * Where a measured point comes from.
 *
 * @param file name of the file; empty for points that come from no file
 * @param line line in it from 1, or the number of the feature where lines say nothing (GeoJSON,
 *     grids); 0 if not known
 */
public record Source(String file, int line) {

    /** From no file. */
    public static final Source NOWHERE = new Source("", 0);

    /** {@code shots.csv, line 12}. */
    @Override
    public String toString() {
        if (file.isEmpty()) {
            return "a point without a file";
        }
        return line > 0 ? file + ", line " + line : file;
    }
}
