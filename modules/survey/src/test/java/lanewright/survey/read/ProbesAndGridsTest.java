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
import lanewright.survey.Reading;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

    @ParameterizedTest
    @Tag("outside")
    @DisplayName(
            "Headings for the depth down to soil that bears | common practice, no source |"
                    + " common practice")
    @ValueSource(
            strings = {
                "soft to in",
                "Soft to (in)",
                "soft_to_in",
                "soft down to in",
                "soft soil to in",
                "firm at in",
                "Firm below (inches)",
                "firm soil at in",
                "firm ground below in",
                "bearing in",
                "bearing at in",
                "depth to firm in",
                "depth to firm soil (in)",
                "depth to bearing soil in",
                "bottom of soft in"
            })
    void theDepthDownToFirmSoilHasPlainHeadings(String heading) throws SurveyException {
        Survey survey =
                read(
                        probes(
                                "hole,north,east,topsoil in,"
                                        + heading
                                        + ",note\n1,2080,5150,7,14,\"clay, firm\"\n"));
        Probe hole = survey.probes().get(0);
        assertEquals(7 * 0.0254, hole.topsoil(), 1e-12);
        assertEquals(14 * 0.0254, hole.bearing(), 1e-12);
        assertEquals("clay, firm", hole.met());
        assertEquals(2080, survey.originY() + hole.y(), 1e-9);
    }

    @Test
    void aColumnOfNumbersThatIsNotUsedIsTold() throws SurveyException {
        String rows =
                """
                hole,north,east,elev,topsoil in,muck in,day,rod
                1,2080,5150,620.5,7,14 in,monday,>30
                2,2200,5400,621.5,9,20,tuesday,12+
                """;
        Reading reading = read(probes(rows)).readings().get(0);
        assertEquals(
                List.of("muck in, rod", "elev"),
                reading.understood().stream()
                        .filter(each -> each.what().equals("not used"))
                        .map(Reading.Understood::answer)
                        .toList());
        assertEquals(
                List.of("elev", "muck in", "rod"),
                reading.columns().stream()
                        .filter(Reading.Column::unused)
                        .map(Reading.Column::heading)
                        .toList());
        // What is said to be skipped is not told again, and the unit over a column still counts.
        Survey named =
                read(probes(rows).columns("hole, north, east, skip, topsoil, soft to, skip, ?"));
        assertEquals(14 * 0.0254, named.probes().get(0).bearing(), 1e-12);
        assertEquals(20 * 0.0254, named.probes().get(1).bearing(), 1e-12);
        Reading.Understood left = named.readings().get(0).understood("not used");
        assertEquals("rod", left == null ? "" : left.answer());
    }

    @Test
    void everyWordThatIsOfferedForAColumnIsTaken() throws SurveyException {
        for (Holds holds : List.of(Holds.POINTS, Holds.PROBES)) {
            String order =
                    String.join(
                            ", ",
                            ColumnWords.of(holds).stream().map(ColumnWords.Choice::word).toList());
            String row = holds == Holds.POINTS ? "a,10,20,3,gs,x\n" : "a,10,20,7 in,9 in,clay,x\n";
            Survey survey =
                    read(
                            SurveyFile.of(
                                            Written.file(
                                                    folder,
                                                    "words.csv",
                                                    "q1,q2,q3,q4,q5,q6\n" + row),
                                            holds)
                                    .unit(LengthUnit.METRE)
                                    .columns(order));
            assertEquals(1, survey.size() + survey.probes().size());
        }
        assertEquals(
                List.of("soft to", "note", "skip"),
                ColumnWords.left(
                                Holds.PROBES,
                                List.of("name", "easting", "northing", "topsoil", "skip"))
                        .stream()
                        .map(ColumnWords.Choice::word)
                        .toList());
        assertTrue(ColumnWords.headsDepths("# dug in May\n\nhole;N;E;soft to (in)\n"));
        assertFalse(
                ColumnWords.headsDepths(
                        "# no topsoil, bearing known\nPt,N,E,Z,note\n1,2,3,4,topsoil heap\n"));
    }

    private List<UnitOffer> offers(String land, SurveyFile asked) throws SurveyException {
        SurveyFile points = SurveyFile.of(Written.file(folder, "field.csv", land), Holds.POINTS);
        return UnitOffer.of(SurveyRequest.of(points, asked), asked, read(points), Progress.NONE);
    }

    @Test
    void theUnitOfTheOtherFileIsOfferedWherePlacesThenLieOnItsLand() throws SurveyException {
        String land = "N ft,E ft,elev ft\n2000,5000,620\n2400,5900,622\n2380,5110,630\n";
        SurveyFile holes =
                SurveyFile.of(
                        Written.file(
                                folder,
                                "holes.csv",
                                "hole,north,east,topsoil in\n1,2080,5150,7\n2,2390,5800,8\n"),
                        Holds.PROBES);
        SurveyException asked = assertThrows(SurveyException.class, () -> read(holes));
        assertEquals(SurveyException.Asks.UNIT, asked.asks());
        assertEquals(
                List.of(
                        new UnitOffer(
                                LengthUnit.FOOT,
                                "as field.csv says: then its 2 holes lie on that land")),
                offers(land, holes));
        // 400 ft off land that is 400 ft long is not near it.
        assertEquals(
                List.of(),
                offers("N ft,E ft,elev ft\n2000,5000,620\n2400,5400,622\n2380,5110,630\n", holes));
        assertEquals(
                "as field.csv says: then its 2 holes lie on that land or close beside it",
                offers("N ft,E ft,elev ft\n2000,5000,620\n2400,5750,622\n2380,5110,630\n", holes)
                        .get(0)
                        .reason());
        // Round the zero of its own a place may lie on the land in either unit.
        String own = "N ft,E ft,elev ft\n0,1,620\n7900,8000,622\n7000,100,630\n";
        assertEquals(
                "as field.csv says: then its 2 holes lie on that land, but in m too, so be sure",
                offers(
                                own,
                                SurveyFile.of(
                                        Written.file(
                                                folder,
                                                "holes.csv",
                                                "hole,north,east,topsoil in\n1,80,150,7\n2,390,800,8\n"),
                                        Holds.PROBES))
                        .get(0)
                        .reason());
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
