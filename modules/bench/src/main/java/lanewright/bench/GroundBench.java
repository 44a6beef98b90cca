package lanewright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import lanewright.ground.Ground;
import lanewright.ground.GroundOptions;
import lanewright.measure.LengthUnit;
import lanewright.measure.Progress;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;
import lanewright.survey.read.Holds;
import lanewright.survey.read.SurveyFile;
import lanewright.survey.read.SurveyReader;
import lanewright.survey.read.SurveyRequest;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.tinfour.common.IIncrementalTin;
import org.tinfour.common.Vertex;
import org.tinfour.interpolation.TriangularFacetInterpolator;
import org.tinfour.semivirtual.SemiVirtualIncrementalTin;
import org.tinfour.standard.IncrementalTin;
import org.tinfour.utils.HilbertSort;

/**
 * Building a ground to its first answered height, against a triangulation library with its own sort
 * and its own facet interpolation, in both of its forms; and the same from the text file, which the
 * library cannot read. All in the memory that the whole command is promised to pass in.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 2, jvmArgs = "-Xmx1500m")
@Warmup(iterations = 4)
@Measurement(iterations = 8)
public class GroundBench {

    /** Heights compared before timing. */
    private static final int COMPARED = 2000;

    /** The library keeps heights in single precision, so at 100 m it may be off by this, m. */
    private static final double AGREE = 1e-5;

    /** Number of points. */
    @Param({"100000", "1000000"})
    public int points;

    private Survey survey;
    private Path file;
    private double middle;

    /** Makes the points and their file, and checks that all ways give the same heights. */
    @Setup
    public void prepare() throws IOException, SurveyException {
        survey = Hills.of(points);
        middle = Math.sqrt(points) / 2;
        file = Files.createTempFile("hills", ".csv");
        Hills.write(survey, file);
        Ground ground = Ground.of(survey, GroundOptions.WHOLE_HULL, Progress.NONE);
        var library = new TriangularFacetInterpolator(build(new IncrementalTin(1)));
        var random = new SplittableRandom(1);
        for (int i = 0; i < COMPARED; i++) {
            double x = middle * random.nextDouble(0.1, 1.9);
            double y = middle * random.nextDouble(0.1, 1.9);
            double apart = Math.abs(ground.heightAt(x, y) - library.interpolate(x, y, null));
            if (!(apart < AGREE)) {
                throw new IllegalStateException("heights differ by " + apart + " m");
            }
        }
        double apart = Math.abs(fromTextFile() - ground.heightAt(middle, middle));
        if (!(apart < 0.002)) {
            throw new IllegalStateException("from the file the height differs by " + apart + " m");
        }
    }

    /** Takes the file away. */
    @TearDown
    public void clean() throws IOException {
        Files.deleteIfExists(file);
    }

    private IIncrementalTin build(IIncrementalTin tin) {
        List<Vertex> vertices = new ArrayList<>(points);
        for (int i = 0; i < points; i++) {
            vertices.add(new Vertex(survey.x(i), survey.y(i), survey.z(i), i));
        }
        new HilbertSort().sort(vertices);
        tin.add(vertices, null);
        return tin;
    }

    /** This program's ground, to the first answered query. */
    @Benchmark
    public double ours() {
        return Ground.of(survey, GroundOptions.USUAL, Progress.NONE).heightAt(middle, middle);
    }

    /** The same from the text file. */
    @Benchmark
    public double fromTextFile() throws SurveyException {
        SurveyFile read = SurveyFile.of(file, Holds.POINTS).unit(LengthUnit.METRE);
        Survey fresh = SurveyReader.read(SurveyRequest.of(read), Progress.NONE);
        return Ground.of(fresh, GroundOptions.USUAL, Progress.NONE)
                .heightAt(middle - fresh.originX(), middle - fresh.originY());
    }

    /** The library's usual form. */
    @Benchmark
    public double library() {
        return first(build(new IncrementalTin(1)));
    }

    /** The library's form that keeps its edges in arrays. */
    @Benchmark
    public double libraryInArrays() {
        return first(build(new SemiVirtualIncrementalTin(1)));
    }

    private double first(IIncrementalTin tin) {
        return new TriangularFacetInterpolator(tin).interpolate(middle, middle, null);
    }
}
