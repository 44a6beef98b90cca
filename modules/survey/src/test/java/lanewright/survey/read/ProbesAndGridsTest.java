package lanewright.survey.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.LengthUnit;
import lanewright.measure.Progress;
import lanewright.survey.Frame;
import lanewright.survey.Probe;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProbesAndGridsTest {

    @TempDir private Path folder;

    private Survey read(SurveyFile file) throws SurveyException {
        return SurveyReader.read(SurveyRequest.of(file), Progress.NONE);
    }

    private SurveyFile probes(String text) {
        return SurveyFile.of(Written.file(folder, "holes.csv", text), Holds.PROBES)
                .unit(LengthUnit.METRE);
    }

    private SurveyFile grid(String text) {
        return SurveyFile.of(Written.file(folder, "land.asc", text), Holds.GRID)
                .unit(LengthUnit.METRE);
    }

    @Test
    void depthsCarryTheirUnitAndMayBeLowerBounds() throws SurveyException {
        Survey survey =
                read(
                        probes(
                                """
                hole,easting,northing,topsoil,bearing,what was met
                P1,10.5,20.5,8 in,,loam over clay
                P2,11,21,>12 in,> 3 ft,"black, soft, roots"
                P3,12,22,0.25 m,40cm,gravel, dense
                P4,13,23,12+ in,2.5 ft or more,
                P5,14,24,0 in,1 ft 6 in,rock
                """));
        List<Probe> probes = survey.probes();
        assertEquals(5, probes.size());
        assertEquals(0.2032, probes.get(0).topsoil(), 1e-12);
        assertFalse(probes.get(0).topsoilAtLeast());
        assertTrue(Double.isNaN(probes.get(0).bearing()));
        assertEquals("loam over clay", probes.get(0).met());
        assertEquals(0.3048, probes.get(1).topsoil(), 1e-12);
        assertTrue(probes.get(1).topsoilAtLeast());
        assertEquals(0.9144, probes.get(1).bearing(), 1e-12);
        assertTrue(probes.get(1).bearingAtLeast());
        assertEquals(0.4, probes.get(2).bearing(), 1e-12);
        assertEquals("gravel, dense", probes.get(2).met());
        assertTrue(probes.get(3).topsoilAtLeast());
        assertEquals(0.762, probes.get(3).bearing(), 1e-12);
        assertTrue(probes.get(3).bearingAtLeast());
        assertEquals(0, probes.get(4).topsoil());
        assertEquals(0.4572, probes.get(4).bearing(), 1e-12);
        assertEquals(5, survey.readings().get(0).probes());
        assertEquals(0, survey.size());
    }

    @Test
    void headingsGiveBareDepthsTheirUnit() throws SurveyException {
        Survey survey =
                read(
                        probes(
                                """
                name;easting;northing;topsoil (cm);bearing (cm)
                A;1,5;2,5;20,5;>60
                """));
        assertEquals(0.205, survey.probes().get(0).topsoil(), 1e-12);
        assertTrue(survey.probes().get(0).bearingAtLeast());
    }

    @Test
    void holesThatContradictThemselvesAreFound() throws SurveyException {
        Survey survey =
                read(
                        probes(
                                """
                name,easting,northing,topsoil,bearing
                A,1.5,2.5,12 in,8 in
                B,1.5,2.5,9 in,
                """));
        assertEquals(
                List.of("bearing-above-topsoil", "probe-twice"),
                survey.findings().stream().map(Finding::code).toList());
    }

    @Test
    void probesAreToldFromTheLocalZeroToo() throws SurveyException {
        Path points =
                Written.file(
                        folder,
                        "shots.csv",
                        """
                easting,northing,height
                543173,4339090,200
                543200,4339100,201
                543190,4339190,203
                """);
        Survey survey =
                SurveyReader.read(
                        SurveyRequest.of(
                                        SurveyFile.of(points, Holds.POINTS).unit(LengthUnit.METRE),
                                        probes("easting,northing,topsoil\n543180,4339095,8 in\n"))
                                .in(Frame.epsg(26916)),
                        Progress.NONE);
        assertEquals(180, survey.probes().get(0).x(), 1e-9);
        assertEquals(95, survey.probes().get(0).y(), 1e-9);
    }

    @Test
    void asciiGridRunsFromTheNorthWestWithCentresInItsCells() throws SurveyException {
        Survey survey =
                read(
                        grid(
                                """
                NCOLS 3
                NROWS 2
                XLLCORNER 100
                YLLCORNER 200
                CELLSIZE 10
                NODATA_VALUE -9999
                1 2 3
                4 -9999
                6
                """));
        assertEquals(5, survey.size());
        assertEquals(105, survey.x(0));
        assertEquals(215, survey.y(0));
        assertEquals(1, survey.z(0));
        assertEquals(125, survey.x(4));
        assertEquals(205, survey.y(4));
        assertEquals(6, survey.z(4));
        assertEquals("grid-cells-without-height", survey.findings().get(0).code());
    }

    @Test
    void cornersMayBeGivenAsCentres() throws SurveyException {
        Survey survey =
                read(
                        grid(
                                """
                ncols 2
                nrows 2
                xllcenter 100
                yllcenter 200
                cellsize 10
                1 2
                3 nan
                """));
        assertEquals(3, survey.size());
        assertEquals(100, survey.x(2));
        assertEquals(200, survey.y(2));
    }

    @Test
    void corridorCutsAGrid() throws SurveyException {
        StringBuilder text =
                new StringBuilder("ncols 50\nnrows 50\nxllcorner 0\nyllcorner 0\ncellsize 1\n");
        for (int k = 0; k < 2500; k++) {
            text.append(k % 7).append(k % 50 == 49 ? "\n" : " ");
        }
        var corridor = new Corridor(new double[] {10, 40}, new double[] {25, 25}, 5);
        Survey survey =
                SurveyReader.read(
                        SurveyRequest.of(grid(text.toString())).within(corridor), Progress.NONE);
        // 30 by 10 cells and the two half circles of radius 5.
        assertEquals(300 + Math.PI * 25, survey.size(), 12);
        for (int i = 0; i < survey.size(); i++) {
            assertTrue(corridor.contains(survey.x(i), survey.y(i)));
        }
    }

    @Test
    void tiffWithoutASystemIsPlainCoordinates() throws SurveyException {
        SurveyFile file =
                SurveyFile.of(
                                Written.bytes(folder, "land.tif", TinyTiff.of(8, 8, 1, 8)),
                                Holds.GRID)
                        .unit(LengthUnit.METRE);
        Survey survey = read(file);
        assertEquals(64, survey.size());
        // The tie point puts the corner of the first cell at 100, 200; cells are 10 m.
        assertEquals(105, survey.x(0), 1e-9);
        assertEquals(195, survey.y(0), 1e-9);
        assertEquals(175, survey.x(63), 1e-9);
        assertEquals(125, survey.y(63), 1e-9);
        assertEquals(63, survey.z(63));
    }

    @Test
    void aGridThatSaysNothingOfItsPlaceIsSoTold() throws SurveyException {
        Path plain = Written.file(folder, "plain.asc", "ncols 2");
        assertEquals(GridPlace.UNKNOWN, GridPlace.of(plain));
        Path broken = Written.file(folder, "broken.tif", "no picture");
        assertThrows(SurveyException.class, () -> GridPlace.of(broken));
    }
}
