package lanewright.survey.read;

import java.nio.file.Path;
import java.util.OptionalInt;
import lanewright.survey.LonLat;
import lanewright.survey.SurveyException;
import org.jspecify.annotations.Nullable;

/**
 * What an elevation grid says by itself of where it lies, before its cells are read: enough to
 * suggest a frame for a plan that has none yet.
 *
 * @param code EPSG code of its own projected system, if it has one
 * @param middle its middle, if it is written in degrees; else null
 */
public record GridPlace(OptionalInt code, @Nullable LonLat middle) {

    /** A grid that does not say where it lies. */
    public static final GridPlace UNKNOWN = new GridPlace(OptionalInt.empty(), null);

    /**
     * Asks a grid in GeoTIFF; of any other file nothing is known. May take a second, for the
     * library of reference systems is loaded.
     *
     * @throws SurveyException if the file cannot be read
     */
    public static GridPlace of(Path file) throws SurveyException {
        String name = file.toString().toLowerCase(java.util.Locale.ROOT);
        return name.endsWith(".tif") || name.endsWith(".tiff") ? TiffGrid.place(file) : UNKNOWN;
    }
}
