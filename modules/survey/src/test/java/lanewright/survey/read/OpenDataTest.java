package lanewright.survey.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import lanewright.measure.LengthUnit;
import lanewright.measure.Progress;
import lanewright.survey.Frame;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpenDataTest {

    @TempDir private Path folder;

    private static Survey read(SurveyFile file) throws SurveyException {
        return SurveyReader.read(SurveyRequest.of(file), Progress.NONE);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Survey points in feet: count, range and mean of 52 spot heights"
                    + " | J. C. Davis, Statistics and Data Analysis in Geology, Wiley 1973 | read")
    void spotHeightsInFeetAreReadByTheirHeadings() throws SurveyException {
        Survey survey =
                read(SurveyFile.of(Written.openData("davis-spot-heights.csv"), Holds.POINTS));
        assertEquals(52, survey.size());
        double least = Double.MAX_VALUE;
        double most = 0;
        double sum = 0;
        for (int i = 0; i < 52; i++) {
            least = Math.min(least, survey.z(i) / 0.3048);
            most = Math.max(most, survey.z(i) / 0.3048);
            sum += survey.z(i) / 0.3048;
        }
        assertEquals(690, least, 1e-9);
        assertEquals(960, most, 1e-9);
        assertEquals(827.1, sum / 52, 0.05);
        assertTrue(survey.findings().isEmpty(), survey.findings().toString());
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Lidar points: count and ranges as the LAS header prints them"
                    + " | laspy tests/data/simple.las, commit fbc5b375, header | read")
    void lidarPointsHaveTheRangesOfTheirHeader() throws SurveyException {
        Survey survey =
                read(
                        SurveyFile.of(Written.openData("lidar-sample.csv"), Holds.POINTS)
                                .unit(LengthUnit.METRE));
        assertEquals(1065, survey.size());
        double west = Double.MAX_VALUE;
        double east = 0;
        double south = Double.MAX_VALUE;
        double north = 0;
        double low = Double.MAX_VALUE;
        double high = 0;
        for (int i = 0; i < survey.size(); i++) {
            west = Math.min(west, survey.originX() + survey.x(i));
            east = Math.max(east, survey.originX() + survey.x(i));
            south = Math.min(south, survey.originY() + survey.y(i));
            north = Math.max(north, survey.originY() + survey.y(i));
            low = Math.min(low, survey.z(i));
            high = Math.max(high, survey.z(i));
        }
        assertEquals(635619.85, west, 1e-6);
        assertEquals(638982.55, east, 1e-6);
        assertEquals(848899.70, south, 1e-6);
        assertEquals(853535.43, north, 1e-6);
        assertEquals(406.59, low, 1e-9);
        assertEquals(586.38, high, 1e-9);
    }

    @Test
    void gridInDegreesIsRefusedWithoutAFrameOnTheEarth() {
        SurveyFile file =
                SurveyFile.of(Written.openData("jacksboro-fault.tif"), Holds.GRID)
                        .unit(LengthUnit.METRE);
        SurveyException refused = assertThrows(SurveyException.class, () -> read(file));
        assertTrue(refused.getMessage().contains("EPSG"), refused.getMessage());
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "GeoTIFF grid in degrees carried to UTM: cells, extremes and sum of heights"
                    + " | Matplotlib sample data jacksboro_fault_dem.npz, array read with NumPy | read")
    void gridInDegreesIsCarriedToTheFrame() throws SurveyException {
        SurveyFile file =
                SurveyFile.of(Written.openData("jacksboro-fault.tif"), Holds.GRID)
                        .heightUnit(LengthUnit.METRE);
        Survey survey =
                SurveyReader.read(SurveyRequest.of(file).in(Frame.epsg(32616)), Progress.NONE);
        assertEquals(138_632, survey.size());
        double least = Double.MAX_VALUE;
        int highest = 0;
        double sum = 0;
        for (int i = 0; i < survey.size(); i++) {
            least = Math.min(least, survey.z(i));
            highest = survey.z(i) > survey.z(highest) ? i : highest;
            sum += survey.z(i);
        }
        assertEquals(236, least);
        assertEquals(1076, survey.z(highest));
        assertEquals(73_617_913, sum);
        assertEquals(297 * 403 + 219, highest, "rows run from the north");
    }

    @Test
    void tiffThatIsCutOffIsNotTakenForLandAtSeaLevel() throws IOException, SurveyException {
        byte[] whole = Files.readAllBytes(Written.openData("jacksboro-fault.tif"));
        byte[] half = Arrays.copyOf(whole, whole.length / 2);
        SurveyFile file =
                SurveyFile.of(Written.bytes(folder, "half.tif", half), Holds.GRID)
                        .heightUnit(LengthUnit.METRE);
        SurveyRequest request = SurveyRequest.of(file).in(Frame.epsg(32616));
        SurveyException refused =
                assertThrows(
                        SurveyException.class, () -> SurveyReader.read(request, Progress.NONE));
        assertTrue(refused.getMessage().contains("cut off"), refused.getMessage());
    }

    @Test
    void corridorTakesOnlyTheCellsNearTheLane() throws SurveyException {
        SurveyFile file =
                SurveyFile.of(Written.openData("jacksboro-fault.tif"), Holds.GRID)
                        .heightUnit(LengthUnit.METRE);
        Frame frame = Frame.epsg(32616);
        double[] middle = frame.eastNorth(new lanewright.survey.LonLat(-84.2, 36.6));
        var corridor =
                new Corridor(
                        new double[] {middle[0], middle[0] + 1000},
                        new double[] {middle[1], middle[1]},
                        500);
        Survey survey =
                SurveyReader.read(SurveyRequest.of(file).in(frame).within(corridor), Progress.NONE);
        // 1 km² and the two half circles of 500 m, at cells of 3 arc-seconds (about 74 by 92 m).
        double cells = (1000 * 1000 + Math.PI * 500 * 500) / (74.5 * 92.5);
        assertEquals(cells, survey.size(), 0.06 * cells);
    }
}
