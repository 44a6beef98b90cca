package lanewright.survey.read;

import java.awt.Rectangle;
import java.awt.image.Raster;
import java.awt.image.RenderedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.OptionalInt;
import java.util.concurrent.CancellationException;
import lanewright.measure.Progress;
import lanewright.survey.Frame;
import lanewright.survey.LonLat;
import lanewright.survey.SurveyException;
import org.geotools.api.coverage.grid.GridEnvelope;
import org.geotools.api.referencing.FactoryException;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.api.referencing.crs.GeographicCRS;
import org.geotools.api.referencing.crs.ProjectedCRS;
import org.geotools.api.referencing.datum.PixelInCell;
import org.geotools.api.referencing.operation.MathTransform;
import org.geotools.api.referencing.operation.TransformException;
import org.geotools.coverage.grid.GridCoverage2D;
import org.geotools.coverage.util.CoverageUtilities;
import org.geotools.gce.geotiff.GeoTiffReader;
import org.geotools.referencing.CRS;
import org.geotools.referencing.crs.DefaultEngineeringCRS;
import org.geotools.util.factory.Hints;

/** Reads an elevation grid from GeoTIFF. Loads the reference system library when first used. */
final class TiffGrid {

    /** Rows that are held at a time. */
    private static final int ROWS_AT_ONCE = 64;

    /** Largest tile or strip that is unpacked, cells: 16 million is 128 MB. */
    private static final long LARGEST_TILE = 16_000_000;

    private final Grids grid;
    private final SurveyFile file;

    private TiffGrid(Grids grid, SurveyFile file) {
        this.grid = grid;
        this.file = file;
    }

    static void read(Grids grid, SurveyFile file, Progress progress) throws SurveyException {
        Frame.readyLibrary();
        new TiffGrid(grid, file).read(progress);
    }

    private void read(Progress progress) throws SurveyException {
        GridCoverage2D coverage = null;
        GeoTiffReader reader = null;
        try {
            reader = open(file.path());
            begin(reader);
            TiffStrips.refuseIfCutOff(file.path());
            coverage = reader.read(null);
            cells(coverage, progress);
        } catch (IOException | TransformException broken) {
            throw broken(file.path(), broken);
        } catch (CancellationException cancelled) {
            throw cancelled;
        } catch (RuntimeException broken) {
            // The libraries under the reader say "broken file" in any way they like: with
            // exceptions of their own, plain ones, and array indices out of bounds.
            throw broken(file.path(), broken);
        } finally {
            if (coverage != null) {
                coverage.dispose(true);
            }
            if (reader != null) {
                reader.dispose();
            }
        }
    }

    /** Where a grid says that it lies. */
    static GridPlace place(Path path) throws SurveyException {
        Frame.readyLibrary();
        GeoTiffReader reader = null;
        try {
            reader = open(path);
            CoordinateReferenceSystem system = reader.getCoordinateReferenceSystem();
            if (system instanceof GeographicCRS) {
                var area = reader.getOriginalEnvelope();
                return new GridPlace(
                        OptionalInt.empty(), new LonLat(area.getMedian(0), area.getMedian(1)));
            }
            Integer code =
                    system instanceof ProjectedCRS ? CRS.lookupEpsgCode(system, false) : null;
            return code == null ? GridPlace.UNKNOWN : new GridPlace(OptionalInt.of(code), null);
        } catch (IOException | FactoryException broken) {
            throw broken(path, broken);
        } catch (RuntimeException broken) {
            // As above: the libraries under the reader throw what they like.
            throw broken(path, broken);
        } finally {
            if (reader != null) {
                reader.dispose();
            }
        }
    }

    private static GeoTiffReader open(Path path) throws IOException {
        var hints = new Hints(Hints.FORCE_LONGITUDE_FIRST_AXIS_ORDER, true);
        try {
            return new GeoTiffReader(path.toFile(), hints);
        } catch (IOException perhapsNoSystem) {
            // A raster that names no system is opened only with one to fall back on, and that one
            // would hide the system of a raster that has one: so it comes second.
            hints.put(Hints.DEFAULT_COORDINATE_REFERENCE_SYSTEM, DefaultEngineeringCRS.GENERIC_2D);
            return new GeoTiffReader(path.toFile(), hints);
        }
    }

    private static SurveyException broken(Path path, Exception cause) {
        String reason = "";
        for (Throwable each = cause; each != null; each = each.getCause()) {
            String words = each.getMessage();
            reason = words == null || words.isBlank() ? reason : words;
        }
        var said =
                new SurveyException(
                        path,
                        0,
                        "the GeoTIFF cannot be read"
                                + (reason.isEmpty()
                                        ? ""
                                        : ": "
                                                + reason.lines()
                                                        .findFirst()
                                                        .orElse("")
                                                        .replaceAll("[.!\\s]+$", "")),
                        "The file may be cut off or of an unusual kind: get it again as a plain"
                                + " GeoTIFF of heights.");
        said.initCause(cause);
        return said;
    }

    private void begin(GeoTiffReader reader) throws SurveyException {
        GridEnvelope size = reader.getOriginalGridRange();
        CoordinateReferenceSystem system = reader.getCoordinateReferenceSystem();
        boolean geographic = system instanceof GeographicCRS;
        boolean known = geographic || system instanceof ProjectedCRS;
        double cell = reader.getOriginalEnvelope().getSpan(0) / size.getSpan(0);
        boolean degrees = geographic || (!known && looksLikeDegrees(reader, cell));
        grid.begin(
                new Grids.Described(
                        "GeoTIFF",
                        size.getSpan(0),
                        size.getSpan(1),
                        known ? system.toWKT() : null,
                        degrees,
                        cell));
    }

    private static boolean looksLikeDegrees(GeoTiffReader reader, double cell) {
        var area = reader.getOriginalEnvelope();
        return cell < AsciiGrid.DEGREES_CELL
                && Math.abs(area.getMinimum(0)) <= 181
                && Math.abs(area.getMaximum(0)) <= 181
                && Math.abs(area.getMinimum(1)) <= 91
                && Math.abs(area.getMaximum(1)) <= 91;
    }

    private void cells(GridCoverage2D coverage, Progress progress)
            throws SurveyException, TransformException {
        RenderedImage image = coverage.getRenderedImage();
        if (image.getSampleModel().getNumBands() != 1) {
            throw new SurveyException(
                    file.path(),
                    0,
                    "the TIFF has "
                            + image.getSampleModel().getNumBands()
                            + " bands and looks like a picture",
                    "An elevation grid has one band, the height.");
        }
        if ((long) image.getTileWidth() * image.getTileHeight() > LARGEST_TILE) {
            throw new SurveyException(
                    file.path(),
                    0,
                    "the TIFF is cut into tiles of "
                            + image.getTileWidth()
                            + " by "
                            + image.getTileHeight()
                            + " cells",
                    "Write it again in tiles or strips of at most 16 million cells.");
        }
        var noData = CoverageUtilities.getNoDataProperty(coverage);
        double mark = noData == null ? Double.NaN : noData.getAsSingleValue();
        MathTransform toPlace = coverage.getGridGeometry().getGridToCRS(PixelInCell.CELL_CENTER);
        int west = image.getMinX();
        int north = image.getMinY();
        double[] heights = new double[image.getWidth()];
        double[] places = new double[2 * image.getWidth()];
        for (int top = 0; top < image.getHeight(); top += ROWS_AT_ONCE) {
            progress.check();
            progress.report(top / (double) image.getHeight(), "reading " + file.name());
            int rows = Math.min(ROWS_AT_ONCE, image.getHeight() - top);
            Raster part = image.getData(new Rectangle(west, north + top, image.getWidth(), rows));
            for (int row = 0; row < rows; row++) {
                int y = north + top + row;
                part.getSamples(west, y, image.getWidth(), 1, 0, heights);
                for (int k = 0; k < heights.length; k++) {
                    places[2 * k] = west + k;
                    places[2 * k + 1] = y;
                }
                toPlace.transform(places, 0, places, 0, heights.length);
                for (int k = 0; k < heights.length; k++) {
                    boolean measured = heights[k] != mark && !Double.isNaN(heights[k]);
                    grid.cell(
                            places[2 * k], places[2 * k + 1], heights[k], measured, top + row + 1);
                }
            }
        }
    }
}
