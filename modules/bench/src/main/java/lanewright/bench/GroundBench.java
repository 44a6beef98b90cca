package lanewright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import lanewright.ground.Ground;
import lanewright.ground.GroundOptions;
import lanewright.measure.Progress;
import lanewright.survey.Survey;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.tinfour.common.Vertex;
import org.tinfour.standard.IncrementalTin;
import org.tinfour.utils.HilbertSort;

/**
 * Building a ground to its first answered height, against the triangulation library alone with its
 * own sort. The ratio of the two is what matters.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx1500m")
@Warmup(iterations = 2)
@Measurement(iterations = 5)
public class GroundBench {

    /** Number of points. */
    @Param({"100000", "1000000"})
    public int points;

    private Survey survey;

    /** Makes the points, and checks that both ways give the same height. */
    @Setup
    public void prepare() {
        survey = Hills.of(points);
        double middle = Math.sqrt(points) / 2;
        double difference = Math.abs(ours() - Hills.height(middle, middle));
        if (!(difference < 0.2)) {
            throw new IllegalStateException("height is off by " + difference);
        }
    }

    /** This program's ground, to the first answered query. */
    @Benchmark
    public double ours() {
        double middle = Math.sqrt(points) / 2;
        return Ground.of(survey, GroundOptions.USUAL, Progress.NONE).heightAt(middle, middle);
    }

    /** The triangulation library alone, sorted by its own sort. */
    @Benchmark
    public int libraryAlone() {
        List<Vertex> vertices = new ArrayList<>(points);
        for (int i = 0; i < points; i++) {
            vertices.add(new Vertex(survey.x(i), survey.y(i), survey.z(i), i));
        }
        new HilbertSort().sort(vertices);
        var tin = new IncrementalTin(1);
        tin.add(vertices, null);
        return tin.countTriangles().getCount();
    }
}
