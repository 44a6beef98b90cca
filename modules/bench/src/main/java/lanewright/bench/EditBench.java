package lanewright.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.measure.Progress;
import lanewright.planner.document.GradePart;
import lanewright.planner.document.LinePart;
import lanewright.planner.document.Plan;
import lanewright.planner.document.PlanException;
import lanewright.planner.document.PlanFile;
import lanewright.planner.document.Spot;
import lanewright.planner.run.Draft;
import lanewright.planner.run.Outcome;
import lanewright.planner.run.Run;
import lanewright.survey.SurveyException;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Edits of a lane of 1,055 m with sections every 5 m over a million points: from the edited plan to
 * what the sections tell, the edit written into the owner's document included, and from there to
 * the whole outcome. Beside them the same worked out from the start, on the same ground. Every
 * sample is another edit.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx2g")
@Warmup(iterations = 4, time = 5)
@Measurement(iterations = 6, time = 10)
public class EditBench {

    private static final String PLAN =
            """
            { "version": 1, "name": "Long lane", "units": "metric",
              "survey": { "files": [ { "path": "hills.csv", "holds": "points", "unit": "m" } ] },
              "line": { "points": [
                { "east": "20 m", "north": "480 m" },
                { "east": "260 m", "north": "580 m", "radius": "60 m" },
                { "east": "500 m", "north": "440 m", "radius": "45 m" },
                { "east": "720 m", "north": "580 m", "radius": "60 m" },
                { "east": "978 m", "north": "500 m" } ] },
              "grade": { "points": [
                { "station": "start", "height": "100 m" }, { "station": "end", "height": "100 m" } ] },
              "shapes": [ { "name": "lane", "width": "4 m", "layers": [
                { "role": "surface", "thickness": "100 mm" },
                { "role": "base", "thickness": "200 mm" } ] } ],
              "along": [ { "from": "start", "to": "end", "shape": "lane" } ],
              "stone": { "payload": "14 t", "materials": [
                { "role": "surface", "kind": "crushed surfacing, top course", "price": "20 per t" },
                { "role": "base", "kind": "crushed surfacing, base course" } ] },
              "earth": { "topsoil": "200 mm" },
              "work": { "interval": "5 m" } }
            """;

    private final SplittableRandom random = new SplittableRandom(7);
    private Path folder;
    private Run run;
    private PlanFile file;

    /** Writes the survey, and lays a grade with a point every 100 m just over the ground. */
    @Setup
    public void prepare() throws IOException, SurveyException, DesignRefused, PlanException {
        folder = Files.createTempDirectory("hills");
        Hills.write(Hills.of(1_000_000), folder.resolve("hills.csv"));
        run = new Run(folder);
        PlanFile bare = PlanFile.read("plan.json", PLAN.getBytes(StandardCharsets.UTF_8));
        Draft first = run.draft(bare, Progress.NONE);
        Alignment line = first.design().alignment();
        List<GradePart.Point> points = new ArrayList<>();
        for (double s = 0; s < line.length() - 60; s += 100) {
            points.add(new GradePart.Point(s, height(first, s), s == 0 ? 0 : 40));
        }
        points.add(new GradePart.Point(Double.POSITIVE_INFINITY, height(first, line.length()), 0));
        file = bare.with(bare.plan().with(bare.plan().grade().laid(points, List.of())));
        run.outcome(file, Progress.NONE);
    }

    private static double height(Draft on, double station) {
        Alignment line = on.design().alignment();
        double ground = on.ground().heightAt(line.x(station), line.y(station));
        return Math.rint((ground + 0.4) * 1000) / 1000;
    }

    /** Takes the files away. */
    @TearDown
    public void clear() throws IOException {
        Files.delete(folder.resolve("hills.csv"));
        Files.delete(folder);
    }

    private PlanFile raised() throws PlanException {
        Plan plan = file.plan();
        List<GradePart.Point> points = new ArrayList<>(plan.grade().points());
        int i = 1 + random.nextInt(points.size() - 2);
        GradePart.Point at = points.get(i);
        double height = at.height() + random.nextInt(-50, 50) / 100.0;
        points.set(i, new GradePart.Point(at.station(), height, at.curve()));
        return file.with(plan.with(plan.grade().laid(points, List.of())));
    }

    private PlanFile moved() throws PlanException {
        Plan plan = file.plan();
        List<LinePart.Point> points = new ArrayList<>(plan.line().points());
        int i = 1 + random.nextInt(points.size() - 2);
        LinePart.Point at = points.get(i);
        double east = at.spot().across() + random.nextInt(-50, 50) / 20.0;
        double north = at.spot().up() + random.nextInt(-50, 50) / 20.0;
        points.set(i, new LinePart.Point(at.name(), Spot.at(east, north), at.radius()));
        return file.with(plan.with(new LinePart(points)));
    }

    /** A vertical point is raised or lowered. */
    @Benchmark
    public Draft verticalPoint() throws SurveyException, DesignRefused, PlanException {
        return run.draft(raised(), Progress.NONE);
    }

    /** A corner of the line is moved. */
    @Benchmark
    public Draft intersectionPoint() throws SurveyException, DesignRefused, PlanException {
        return run.draft(moved(), Progress.NONE);
    }

    /** The same as for a vertical point with nothing kept but survey and ground. */
    @Benchmark
    public Draft everythingOnTheGround() throws SurveyException, DesignRefused, PlanException {
        return run.beside().draft(raised(), Progress.NONE);
    }

    /** Drafts an edit that is then settled. */
    @State(Scope.Thread)
    public static class Released {
        private Draft draft;

        /** Drafts the edit. */
        @Setup(Level.Invocation)
        public void draft(EditBench bench) throws SurveyException, DesignRefused, PlanException {
            draft = bench.run.draft(bench.raised(), Progress.NONE);
        }
    }

    /** The whole outcome after a vertical point was let go. */
    @Benchmark
    public Outcome settle(Released released) throws SurveyException {
        return run.settled(released.draft, Progress.NONE);
    }
}
