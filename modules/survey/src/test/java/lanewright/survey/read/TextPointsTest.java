package lanewright.survey.read;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.UnaryOperator;
import lanewright.measure.Finding;
import lanewright.measure.LengthUnit;
import lanewright.measure.Progress;
import lanewright.measure.UnitSystem;
import lanewright.survey.Frame;
import lanewright.survey.Reading.Understood;
import lanewright.survey.Source;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;
import lanewright.survey.SurveyLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TextPointsTest {

    private static SurveyFile metres(SurveyFile file) {
        return file.unit(LengthUnit.METRE);
    }

    @TempDir private Path folder;

    private SurveyFile file(String text) {
        return SurveyFile.of(Written.file(folder, "shots.txt", text), Holds.POINTS);
    }

    private Survey read(String text, UnaryOperator<SurveyFile> declared) throws SurveyException {
        return SurveyReader.read(SurveyRequest.of(declared.apply(file(text))), Progress.NONE);
    }

    private static void assertTwoShots(Survey survey) {
        assertEquals(2, survey.size());
        assertEquals(5000.25, survey.x(0));
        assertEquals(4000.5, survey.y(0));
        assertEquals(101.75, survey.z(0));
        assertEquals(5010, survey.x(1));
        assertEquals(4007.125, survey.y(1));
        assertEquals(-1.5, survey.z(1));
    }

    private static String answer(Survey survey, String what) {
        for (Understood each : survey.readings().get(0).understood()) {
            if (each.what().equals(what)) {
                return each.answer() + " | " + each.why();
            }
        }
        return "";
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "name,easting,northing,height,code\n1,5000.25,4000.5,101.75,a\n2,5010,4007.125,-1.5,b\n",
                "Point;Northing;Easting;Elevation\r\n1;4000,5;5000,25;101,75\r\n2;4007,125;5010;-1,5\r\n",
                "z\tx\ty\n101.75\t5000.25\t4000.5\n-1.5\t5010\t4007.125",
                "\uFEFFE  N  RL  Remarks\n 5000.25 4000.5 101.75 by the gate\n5010 4007.125 -1.5 x\n",
                "# made by hand\n#E,N,Z\n\n5000.25,4000.5,101.75\n   \n# rained\n5010,4007.125,-1.5\n",
                """
                "pt no","Easting (m)","Northing (m)","Elev. (m)"
                "A","5000.25","4000.5","101.75"
                "B","5010","4007.125","-1.5"
                """,
                "id;x;y;z;d\n1;5000,25;4000,5;101,75;oak, big\n2;5010;4007,125;-1,5;\n",
                "E,N,H,,\n5.00025e3,4000.5,101.75,,\n+5010.,4007.125,-1.5\n"
            })
    void columnsSeparatorsAndSignsAreFoundByTheHeadings(String text) throws SurveyException {
        assertTwoShots(read(text, TextPointsTest::metres));
    }

    @Test
    void whatWasUnderstoodIsShownWithItsReason() throws SurveyException {
        Survey survey =
                read(
                        """
                pt;north;east;elev;desc
                1;4000,5;5000,25;101,75;oak
                2;4007,125;5010;-1,5;
                """,
                        TextPointsTest::metres);
        assertEquals("semicolon | only so the rows fall into columns", answer(survey, "separator"));
        assertEquals("comma | as the numbers are written", answer(survey, "decimal sign"));
        assertEquals(
                "name, northing, easting, height, code | as the headings say",
                answer(survey, "columns"));
        assertEquals("m | declared", answer(survey, "unit"));
        assertEquals("m | as the coordinates", answer(survey, "unit of heights"));
        var reading = survey.readings().get(0);
        assertEquals(2, reading.points());
        assertEquals("1;4000,5;5000,25;101,75;oak", reading.samples().get(0).text());
        assertEquals(
                "easting 5,000.250 m, northing 4,000.500 m, height 101.750 m, code 'oak'",
                reading.samples().get(0).meaning());
        assertEquals(new Source("shots.txt", 2), survey.source(0));
    }

    @Test
    void declaredColumnsNeedNoHeadings() throws SurveyException {
        assertTwoShots(
                read(
                        "1 4000.5 5000.25 101.75\n2 4007.125 5010 -1.5 a tall oak\n",
                        file ->
                                file.unit(LengthUnit.METRE)
                                        .columns("name, northing, easting, height, code")));
    }

    @Test
    void unusedColumnsAreSkipped() throws SurveyException {
        assertTwoShots(
                read(
                        """
                x,y,accuracy,z,class
                5000.25,4000.5,0.02,101.75,2
                5010,4007.125,0.03,-1.5,2
                """,
                        TextPointsTest::metres));
    }

    @Test
    void northAndEastAreToldApartByTheAreaOfTheFrame() throws SurveyException {
        String rows = "1,4339090.244,543173.836,201.5,edge\n2,4339099.1,543180.2,202.5,\n";
        SurveyFile file = file(rows).heightUnit(LengthUnit.METRE);
        Survey survey =
                SurveyReader.read(SurveyRequest.of(file).in(Frame.epsg(26916)), Progress.NONE);
        assertEquals(543173.836, survey.originX() + survey.x(0), 1e-9);
        assertEquals(4339090.244, survey.originY() + survey.y(0), 1e-9);
        assertEquals(
                "name, northing, easting, height, code | only so the points lie in the area of"
                        + " NAD83 / UTM zone 16N (EPSG:26916) with heights that exist",
                answer(survey, "columns"));
        assertEquals("m | the unit of NAD83 / UTM zone 16N (EPSG:26916)", answer(survey, "unit"));
    }

    @Test
    void surveyFeetOfAStateZoneAreItsOwnUnit() throws SurveyException {
        // Three places in Indiana East, EPSG:2965, whose unit is the US survey foot.
        String rows =
                """
                easting,northing,height
                328083.333,820208.333,700
                328183.333,820308.333,702
                328283.333,820218.333,704
                """;
        SurveyFile file = file(rows).heightUnit(LengthUnit.FOOT);
        Survey survey =
                SurveyReader.read(SurveyRequest.of(file).in(Frame.epsg(2965)), Progress.NONE);
        // 328083.333 ftUS is 100,000 m (3937 ftUS are 1200 m, 85 FR 62698).
        assertEquals(100_000, survey.originX() + survey.x(0), 1e-3);
        assertEquals(250_000, survey.originY() + survey.y(0), 1e-3);
        assertEquals(213.36, survey.z(0), 1e-9);
    }

    @Test
    void placesInDegreesAreCarriedToTheFrame() throws SurveyException {
        String rows = "lat,lon,height\n39.2,-86.5,200\n39.201,-86.5,201\n39.2,-86.499,202\n";
        SurveyFile file = file(rows).epsg(4269).heightUnit(LengthUnit.METRE);
        Survey survey =
                SurveyReader.read(SurveyRequest.of(file).in(Frame.epsg(26916)), Progress.NONE);
        // 543173.836, 4339090.244: PROJ 9.1.1 (gdaltransform) for EPSG:4269 to 26916.
        assertEquals(543173.836, survey.originX() + survey.x(0), 1e-3);
        assertEquals(4339090.244, survey.originY() + survey.y(0), 1e-3);
        assertTrue(survey.findings().isEmpty(), survey.findings().toString());
    }

    @Test
    void changeOfDatumIsSaidWithItsDoubt() throws SurveyException {
        String rows = "lat,lon,height\n39.2,-86.5,200\n39.201,-86.5,201\n39.2,-86.499,202\n";
        SurveyFile file = file(rows).epsg(4267).heightUnit(LengthUnit.METRE);
        Survey survey =
                SurveyReader.read(SurveyRequest.of(file).in(Frame.epsg(26916)), Progress.NONE);
        Finding said = survey.findings().get(0);
        assertEquals("datum-change", said.code());
        String words = said.says().in(UnitSystem.METRIC);
        assertTrue(words.contains("10 m or more"), words);
    }

    @Test
    void pointsInARowWithABreaklineWordMakeALine() throws SurveyException {
        String rows =
                """
                x,y,z,code
                0,0,1,EDGE of road
                1.5,0,1,edge
                2,0,1,tree
                3,0,1,edge
                4,0.1,1,edge ditch
                5,0,1,ditch
                6,0,1,edge
                7,1,1,hedge
                """;
        Survey survey =
                SurveyReader.read(
                        SurveyRequest.of(metres(file(rows)))
                                .codes(LineCodes.breaklines("edge", "ditch")),
                        Progress.NONE);
        List<SurveyLine> lines = survey.lines();
        assertEquals(3, lines.size());
        assertArrayEquals(new int[] {0, 1}, lines.get(0).points());
        assertArrayEquals(new int[] {3, 4}, lines.get(1).points());
        assertArrayEquals(new int[] {4, 5}, lines.get(2).points());
        assertEquals("ditch", lines.get(2).code());
        assertEquals("line-of-one-point", survey.findings().get(0).code());
        assertEquals("EDGE of road", survey.code(0));
    }

    @Test
    void startAndEndWordsPartLinesOfOneCode() throws SurveyException {
        String rows =
                """
                x,y,z,code
                0,0,1,edge start
                1,0,1,edge
                0,5,1,edge start
                1,5,1,edge end
                2,5.5,1,edge
                3,5,1,edge
                """;
        var codes = new LineCodes(Set.of("edge"), "start", "end", Set.of());
        Survey survey =
                SurveyReader.read(SurveyRequest.of(metres(file(rows))).codes(codes), Progress.NONE);
        assertEquals(3, survey.lines().size());
        assertArrayEquals(new int[] {2, 3}, survey.lines().get(1).points());
        assertArrayEquals(new int[] {4, 5}, survey.lines().get(2).points());
    }

    @Test
    void shotsOffTheGroundAreLeftOutAndCounted() throws SurveyException {
        String rows = "x,y,z,code\n0,0,1,\n1,0,9,wire low\n1,1,1.1,\n0,1,1.2,\n";
        var codes = new LineCodes(Set.of(), null, null, Set.of("wire"));
        Survey survey =
                SurveyReader.read(SurveyRequest.of(metres(file(rows))).codes(codes), Progress.NONE);
        assertEquals(3, survey.size());
        Finding said = survey.findings().get(0);
        assertEquals("not-on-the-ground", said.code());
        assertTrue(said.says().in(UnitSystem.US).endsWith("do not lie on the ground: 1"));
    }

    @Test
    void slipsOfThePenInCodesAreFound() throws SurveyException {
        String rows = "x,y,z,code\n0,0,1,dicth\n1.5,0,1,ditch\n2,0.5,1,ditch\n3,0,1,Ditches\n";
        Survey survey =
                SurveyReader.read(
                        SurveyRequest.of(metres(file(rows)))
                                .codes(LineCodes.breaklines("ditch", "bank")),
                        Progress.NONE);
        List<String> codes = survey.findings().stream().map(Finding::code).toList();
        assertEquals(List.of("code-nearly-known", "code-nearly-known", "code-never-met"), codes);
        assertTrue(survey.findings().get(1).says().in(UnitSystem.US).contains("'dicth'"));
    }

    @Test
    void codesOfTwoMeaningsAreRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new LineCodes(Set.of("edge"), "Edge", null, Set.of()));
        assertThrows(
                IllegalArgumentException.class,
                () -> new LineCodes(Set.of("road edge"), null, null, Set.of(" Road  EDGE ")));
    }

    @Test
    void aCodeOfSeveralWordsMakesALine() throws SurveyException {
        String rows =
                """
                x,y,z,code
                0,0,1,road edge
                1.5,0.5,1,Road  Edge st
                2,0,1,by the road edge
                3,0,1,road
                4,0,1,edge
                5,0.3,1,edge
                6,0,1,edge road
                7,0,1,road edge
                """;
        var codes = new LineCodes(Set.of("road  EDGE"), "st", null, Set.of());
        Survey survey =
                SurveyReader.read(SurveyRequest.of(metres(file(rows))).codes(codes), Progress.NONE);
        assertEquals(1, survey.lines().size());
        assertEquals("road edge", survey.lines().get(0).code());
        assertArrayEquals(new int[] {1, 2}, survey.lines().get(0).points());
    }

    @Test
    void theLongerOfTwoCodesIsMeant() throws SurveyException {
        String rows =
                """
                x,y,z,code
                0,0,1,edge
                1.5,0.5,1,edge
                2,0,1,road edge
                3,0.2,1,road edge
                4,0,1,road edge of old track
                5,0.1,1,road edge of old track swale
                6,0,1,swale
                """;
        Survey survey =
                SurveyReader.read(
                        SurveyRequest.of(metres(file(rows)))
                                .codes(
                                        LineCodes.breaklines(
                                                "edge",
                                                "road edge",
                                                "road edge of old track",
                                                "swale")),
                        Progress.NONE);
        assertEquals(
                List.of("edge", "road edge", "road edge of old track", "swale"),
                survey.lines().stream().map(SurveyLine::code).toList());
        assertArrayEquals(new int[] {0, 1}, survey.lines().get(0).points());
        assertArrayEquals(new int[] {5, 6}, survey.lines().get(3).points());
    }

    @Test
    void aSlipInACodeOfSeveralWordsIsFound() throws SurveyException {
        String rows = "x,y,z,code\n0,0,1,raod edge\n1,0,1,road edge\n2,0.5,1,road edge\n";
        Survey survey =
                SurveyReader.read(
                        SurveyRequest.of(metres(file(rows)))
                                .codes(LineCodes.breaklines("road edge")),
                        Progress.NONE);
        assertEquals("code-nearly-known", survey.findings().get(0).code());
    }

    @Test
    void aCodeWithoutWordsOrWithoutEndIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> LineCodes.breaklines(" \t "));
        String longest = "a ".repeat(50).strip() + "b";
        assertEquals(Set.of(longest), LineCodes.breaklines(longest).breaklines());
        assertThrows(IllegalArgumentException.class, () -> LineCodes.breaklines(longest + "c"));
    }

    @Test
    @Timeout(20)
    void codesMadeToTakeLongTakeNoTime() throws SurveyException {
        // Every word of every code begins every declared code, and none but the last is met.
        StringBuilder rows = new StringBuilder("x,y,z,code\n");
        for (int i = 0; i < 300; i++) {
            rows.append(i * i)
                    .append(",")
                    .append(i % 7)
                    .append(",1,")
                    .append("a ".repeat(4000))
                    .append(i)
                    .append('\n');
        }
        String[] codes = new String[200];
        for (int i = 0; i < codes.length; i++) {
            codes[i] = "a ".repeat(1 + i % 48) + "x" + i;
        }
        Survey survey =
                SurveyReader.read(
                        SurveyRequest.of(metres(file(rows.toString())))
                                .codes(LineCodes.breaklines(codes)),
                        Progress.NONE);
        assertEquals(300, survey.size());
        assertEquals(0, survey.lines().size());
    }

    @Test
    void emptyRowsOfASpreadsheetAreCounted() throws SurveyException {
        Survey survey = read("x,y,z\n0,0,1\n,,\n1,0,1\n , ,\n0,1,1\n", TextPointsTest::metres);
        assertEquals(3, survey.size());
        assertEquals(
                "Rows of shots.txt that hold separators and nothing else: 2",
                survey.findings().get(0).says().in(UnitSystem.METRIC));
    }

    @Test
    void pointsOfSeveralFilesComeTogether() throws SurveyException {
        Path one = Written.file(folder, "one.csv", "x,y,z\n0,0,1\n10,0,1\n0,10,1\n");
        Path two = Written.file(folder, "two.csv", "y_ft,x_ft,z_ft\n0,0,0\n0,100,0\n50,0,1\n");
        Survey survey =
                SurveyReader.read(
                        SurveyRequest.of(
                                SurveyFile.of(one, Holds.POINTS).unit(LengthUnit.METRE),
                                SurveyFile.of(two, Holds.POINTS)),
                        Progress.NONE);
        assertEquals(6, survey.size());
        assertEquals(30.48, survey.x(4), 1e-12);
        assertEquals(new Source("two.csv", 2), survey.source(3));
        Finding said = survey.findings().get(0);
        assertEquals("same-place-other-height", said.code());
        String words = said.says().in(UnitSystem.METRIC);
        assertTrue(
                words.contains("(one.csv, line 2)") && words.contains("(two.csv, line 2)"), words);
    }

    @Test
    void readingStopsWhenNobodyWantsItAnyMore() {
        Progress bored =
                new Progress() {
                    @Override
                    public void report(double done, String doing) {}

                    @Override
                    public boolean isCancelled() {
                        return true;
                    }
                };
        SurveyRequest request = SurveyRequest.of(metres(file("x,y,z\n0,0,1\n1,1,1\n")));
        assertThrows(CancellationException.class, () -> SurveyReader.read(request, bored));
    }
}
