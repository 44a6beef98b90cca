package lanewright.bench;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
    private Path text;

    /** Makes the points and their text file, and checks that all ways give the same height. */
    @Setup
    public void prepare() throws IOException, SurveyException {
        survey = Hills.of(points);
        double middle = Math.sqrt(points) / 2;
        double difference = Math.abs(ours() - Hills.height(middle, middle));
        if (!(difference < 0.2)) {
            throw new IllegalStateException("height is off by " + difference);
        }
        text = Files.createTempFile("points", ".csv");
        write();
        double apart = Math.abs(ours() - oursFromText());
        if (!(apart < 0.01)) {
            throw new IllegalStateException("the text gives a height " + apart + " m off");
        }
    }

    private void write() throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(text)) {
            out.write("name,easting,northing,height\n");
            for (int i = 0; i < points; i++) {
                out.write((i + 1) + "," + millimetres(survey.x(i)) + ",");
                out.write(millimetres(survey.y(i)) + "," + millimetres(survey.z(i)) + "\n");
            }
        }
    }

    private static double millimetres(double metres) {
        return Math.rint(1000 * metres) / 1000;
    }

    /** Takes the text file away. */
    @TearDown
    public void tidy() throws IOException {
        Files.delete(text);
    }

    /** This program's ground, to the first answered query. */
    @Benchmark
    public double ours() {
        double middle = Math.sqrt(points) / 2;
        return Ground.of(survey, GroundOptions.USUAL, Progress.NONE).heightAt(middle, middle);
    }

    /** The same from a text file, read, checked and built. */
    @Benchmark
    public double oursFromText() throws SurveyException {
        SurveyFile file = SurveyFile.of(text, Holds.POINTS).unit(LengthUnit.METRE);
        Survey read = SurveyReader.read(SurveyRequest.of(file), Progress.NONE);
        double middle = Math.sqrt(points) / 2;
        return Ground.of(read, GroundOptions.USUAL, Progress.NONE).heightAt(middle, middle);
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
