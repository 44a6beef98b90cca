package lanewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import lanewright.lane.line.DesignRefused;
import lanewright.measure.Finding;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.PlanException;
import lanewright.planner.document.PlanFile;
import lanewright.planner.run.Outcome;
import lanewright.planner.run.Run;
import lanewright.survey.SurveyException;

/** Reads plans, runs them and saves files, and says in words what goes wrong with them. */
final class Desk {

    /** A plan is some kilobytes; a file of this many bytes is something else. */
    private static final long LONGEST_PLAN = 8_000_000;

    private final PrintWriter err;

    Desk(PrintWriter err) {
        this.err = err;
    }

    PlanFile read(Path path) throws CommandFailure {
        try {
            if (Files.isDirectory(path)) {
                throw new CommandFailure(
                        Exit.FILE,
                        path
                                + " is a folder. Name the plan file in it, such as "
                                + path.resolve("plan.json"));
            }
            if (Files.size(path) > LONGEST_PLAN) {
                throw new CommandFailure(Exit.INPUT, path + " is over 8 MB long. Is it a plan?");
            }
            return PlanFile.read(name(path), Files.readAllBytes(path));
        } catch (PlanException e) {
            throw new CommandFailure(Exit.INPUT, String.valueOf(e.getMessage()));
        } catch (NoSuchFileException e) {
            throw new CommandFailure(
                    Exit.FILE,
                    "There is no file " + path + ". Make a first plan with: lanewright start");
        } catch (IOException e) {
            throw new CommandFailure(Exit.FILE, path + " cannot be read: " + e.getMessage());
        }
    }

    Outcome run(Path path) throws CommandFailure {
        PlanFile file = read(path);
        try (ProgressLine progress = new ProgressLine(err)) {
            return new Run(folder(path)).outcome(file, progress);
        } catch (PlanException | SurveyException e) {
            throw new CommandFailure(Exit.INPUT, String.valueOf(e.getMessage()));
        } catch (DesignRefused e) {
            throw refused(e, file.plan().units());
        }
    }

    Run.LaidGrade lay(Path folder, PlanFile file) throws CommandFailure {
        try (ProgressLine progress = new ProgressLine(err)) {
            return new Run(folder).layGrade(file, progress);
        } catch (SurveyException e) {
            throw new CommandFailure(Exit.INPUT, String.valueOf(e.getMessage()));
        } catch (DesignRefused e) {
            throw refused(e, file.plan().units());
        }
    }

    static CommandFailure refused(DesignRefused refusal, UnitSystem units) {
        StringBuilder words = new StringBuilder("The lane cannot be laid out as the plan asks:");
        for (Finding finding : refusal.findings()) {
            words.append(System.lineSeparator())
                    .append("  ")
                    .append(finding.says().in(units))
                    .append(" ")
                    .append(finding.remedy().in(units));
        }
        return new CommandFailure(Exit.INPUT, words.toString());
    }

    /** Saves a text whole or not at all: into a file beside the target, then moved over it. */
    static void save(Path target, String text) throws CommandFailure {
        Path whole = target.toAbsolutePath();
        Path fresh = null;
        try {
            fresh = Files.createTempFile(folder(whole), "." + name(whole), ".new");
            Files.writeString(fresh, text, StandardCharsets.UTF_8);
            try {
                Files.move(
                        fresh,
                        whole,
                        StandardCopyOption.ATOMIC_MOVE,
                        StandardCopyOption.REPLACE_EXISTING);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(fresh, whole, StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException e) {
            throw new CommandFailure(Exit.FILE, target + " cannot be written: " + e.getMessage());
        } finally {
            if (fresh != null) {
                tidy(fresh);
            }
        }
    }

    private static void tidy(Path fresh) throws CommandFailure {
        try {
            Files.deleteIfExists(fresh);
        } catch (IOException e) {
            throw new CommandFailure(
                    Exit.FILE, fresh + " cannot be taken away again: " + e.getMessage());
        }
    }

    static Path folder(Path path) {
        Path parent = path.toAbsolutePath().getParent();
        return parent == null ? path.toAbsolutePath() : parent;
    }

    private static String name(Path path) {
        Path name = path.getFileName();
        return name == null ? path.toString() : name.toString();
    }
}
