package lanewright.sheets.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class GeoJsonTest {

    private static Survey local() {
        return Survey.builder()
                .origin(1000, 2000)
                .point(1000, 2000, 1)
                .point(1010, 2000, 1)
                .point(1000, 2010, 1)
                .build();
    }

    private static String text(GeoJson.Feature feature) throws SurveyException {
        return new String(GeoJson.of(local(), List.of(feature)), StandardCharsets.UTF_8);
    }

    @Test
    void localPlacesAreSaidToBeLocal() throws SurveyException {
        assertEquals(
                "{\"type\":\"FeatureCollection\",\"frame\":\"local metres, x east, y north; no"
                        + " reference system\",\"features\":[{\"type\":\"Feature\",\"properties\":"
                        + "{\"a\":1.5,\"name\":\"x\"},\"geometry\":{\"type\":\"Point\","
                        + "\"coordinates\":[1001.5,2002]}}]}\n",
                text(GeoJson.Feature.point(1.5, 2, Map.of("name", "x", "a", 1.5))));
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Rings of areas | RFC 7946 (2016), section 3.1.6: closed, outer ring counter-clockwise,"
                    + " holes clockwise | from memory")
    void ringsAreClosedAndTurnedAsTheStandardSays() throws SurveyException {
        double[][] clockwise = {{0, 0, 4, 4}, {0, 4, 4, 0}};
        double[][] counter = {{1, 2, 2, 1}, {1, 1, 2, 2}};
        String text =
                text(
                        new GeoJson.Feature(
                                GeoJson.Shape.AREA, List.of(clockwise, counter), Map.of()));
        String rings = text.substring(text.indexOf("[[["), text.indexOf("]]]") + 3);
        assertEquals(
                "[[[1000,2000],[1004,2000],[1004,2004],[1000,2004],[1000,2000]],"
                        + "[[1001,2001],[1001,2002],[1002,2002],[1002,2001],[1001,2001]]]",
                rings);
    }
}
