package lanewright.planner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lanewright.lane.volume.Running;
import lanewright.measure.Finding;
import lanewright.measure.Progress;
import lanewright.planner.document.PlanFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What probe holes say, and how far, on level ground with points every 5 m. */
class DepthsTest {

    @TempDir Path folder;

    private Outcome outcome(String holes) throws Exception {
        var points = new StringBuilder("name,easting,northing,height,code\n");
        int number = 1;
        for (int x = -20; x <= 220; x += 5) {
            for (int y = -40; y <= 40; y += 5) {
                points.append(number++).append(',').append(x).append(',').append(y);
                points.append(",100,ground\n");
            }
        }
        Files.writeString(folder.resolve("points.csv"), points);
        Files.writeString(
                folder.resolve("holes.csv"), "name,easting,northing,topsoil,bearing,met\n" + holes);
        String json =
                """
                {
                  "version": 1, "name": "Level lane", "units": "metric",
                  "survey": { "files": [
                    { "path": "points.csv", "holds": "points", "unit": "m" },
                    { "path": "holes.csv", "holds": "probes", "unit": "m" } ] },
                  "line": { "points": [ { "east": "0 m", "north": "0 m" }, { "east": "200 m", "north": "0 m" } ] },
                  "shapes": [ { "name": "lane", "layers": [ { "role": "base", "thickness": "150 mm" } ] } ],
                  "along": [ { "from": "start", "to": "end", "shape": "lane" } ],
                  "grade": { "points": [ { "station": "start", "height": "100.5 m" }, { "station": "end", "height": "100.5 m" } ] },
                  "earth": { "topsoil": "from probes", "bearing": "from probes" },
                  "stone": { "payload": "14 t", "materials": [ { "role": "base", "kind": "crushed limestone, dense graded" } ] }
                }
                """;
        PlanFile plan = PlanFile.read("plan.json", json.getBytes(StandardCharsets.UTF_8));
        return new Run(folder).outcome(plan, Progress.NONE);
    }

    private static List<Finding> coded(Outcome outcome, String code) {
        return outcome.findings().stream().filter(each -> each.code().equals(code)).toList();
    }

    @Test
    void undercutIsCountedOnlyAsFarAsAHoleSpeaks() throws Exception {
        Outcome outcome = outcome("A,50,0,0.2 m,0.7 m,soft clay\n");
        Running undercut = outcome.volumes().undercut();
        assertTrue(undercut.plain() > 0);
        for (int i = 0; i < undercut.size(); i++) {
            if (Math.abs(undercut.station(i) - 50) > 30) {
                assertEquals(0, undercut.area(i), "at " + undercut.station(i));
            } else if (Math.abs(undercut.station(i) - 50) < 20) {
                assertTrue(undercut.area(i) > 0, "at " + undercut.station(i));
            }
        }
        // Beside it the true solid, which is cut triangle by triangle and reads no section: they
        // differ by the two spans in which what is known ends.
        assertEquals(outcome.solid().undercut(), undercut.plain(), 0.2 * undercut.plain());
        Finding far = coded(outcome, "bearing-not-known").get(0);
        assertTrue(far.where().from() > 70 && far.where().from() < 95, far.toString());
        assertEquals(200, far.where().to(), 1e-9);
        assertEquals(1, coded(outcome, "topsoil-far-from-holes").size());
    }

    @Test
    void holesAllAlongLeaveNothingUnknown() throws Exception {
        var holes = new StringBuilder();
        for (int x = 0; x <= 200; x += 40) {
            holes.append("H").append(x).append(',').append(x).append(",1,0.2 m,0.7 m,clay\n");
        }
        Outcome outcome = outcome(holes.toString());
        assertEquals(List.of(), coded(outcome, "bearing-not-known"));
        assertEquals(List.of(), coded(outcome, "topsoil-far-from-holes"));
        assertEquals(
                outcome.solid().undercut(),
                outcome.volumes().undercut().plain(),
                1e-6 * outcome.solid().undercut());
    }

    @Test
    void holesThatSayNothingOfBearingSoilAreSaid() throws Exception {
        Outcome outcome = outcome("A,50,0,0.2 m,,loam\n");
        Finding nowhere = coded(outcome, "bearing-not-known").get(0);
        assertEquals(0, nowhere.where().from(), 1e-9);
        assertEquals(200, nowhere.where().to(), 1e-9);
        assertEquals(0, outcome.volumes().undercut().plain());
    }
}
