package lanewright.desktop.start;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import lanewright.lane.line.DesignRefused;
import lanewright.measure.Progress;
import lanewright.planner.document.PlanException;
import lanewright.planner.document.PlanFile;
import lanewright.planner.run.Run;
import lanewright.survey.SurveyException;

/**
 * Works a sample out once, unseen, while the window comes up and nobody has asked for anything yet:
 * by then the program has all its own code at hand, and the first answers on the owner's ground do
 * not wait for it. Left as soon as a plan or a survey is opened.
 */
public final class Warming implements AutoCloseable, Progress {

    private final Thread thread = new Thread(this::work, "warming");
    private final Path under;
    private volatile boolean enough;

    private Warming(Path under) {
        this.under = under;
    }

    /**
     * Begins beside all else.
     *
     * @param under where the sample's files are laid for as long as it takes
     */
    public static Warming begin(Path under) {
        var warming = new Warming(under);
        warming.thread.setDaemon(true);
        warming.thread.start();
        return warming;
    }

    private void work() {
        try {
            Path folder = Files.createTempDirectory(under, "sample");
            try {
                Path plan = Samples.MARROW_FOLD.layOut(folder);
                PlanFile file = PlanFile.read(plan.toString(), Files.readAllBytes(plan));
                new Run(plan.resolveSibling("")).outcome(file, this);
            } finally {
                clear(folder);
            }
        } catch (CancellationException e) {
            // somebody wants the machine: as it should be
        } catch (IOException
                | UncheckedIOException
                | SurveyException
                | DesignRefused
                | PlanException e) {
            System.getLogger(Warming.class.getName())
                    .log(System.Logger.Level.WARNING, "the first answers will take longer", e);
        }
    }

    private static void clear(Path folder) throws IOException {
        List<Path> all;
        try (Stream<Path> found = Files.walk(folder)) {
            all = found.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path each : all) {
            Files.delete(each);
        }
    }

    @Override
    public void report(double done, String doing) {
        // nobody looks
    }

    @Override
    public boolean isCancelled() {
        return enough;
    }

    /** Leaves off soon. */
    @Override
    public void close() {
        enough = true;
    }

    /** Waits until it has ended, for at most so long; whether it has. */
    public boolean ended(long millis) throws InterruptedException {
        thread.join(millis);
        return !thread.isAlive();
    }
}
