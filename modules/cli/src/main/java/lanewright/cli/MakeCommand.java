package lanewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;
import lanewright.planner.run.Outcome;
import lanewright.sheets.folder.PlanFolder;
import lanewright.sheets.set.PlanFiles;
import lanewright.survey.SurveyException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Makes the whole plan folder. */
@Command(
        name = "make",
        mixinStandardHelpOptions = true,
        description = "Makes the whole plan: sheets, tables, stakes and map layers in one folder.",
        footer = {
            "",
            "A folder from before is replaced as a whole when the new one is done, never in part.",
            "Sheets that say what is wrong are a plan that was made: it ends with 0 also where findings",
            "say stop, unless --strict is given. The check command ends with 1 there.",
            "",
            "Example:",
            "  lanewright make plan.json --into plan-folder"
        })
final class MakeCommand implements Callable<Integer> {

    @Spec private CommandSpec spec = CommandSpec.create();
    @Mixin private PlanArgument plan = new PlanArgument();

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description = "The folder to make. Without it: plan-folder beside the plan.")
    private @Nullable Path into;

    @Option(
            names = "--strict",
            description = "End with 1 if the plan must not be built as it stands.")
    private boolean strict;

    @Override
    public Integer call() throws CommandFailure {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Path folder = into == null ? Desk.folder(plan.path()).resolve("plan-folder") : into;
        ForkJoinPool.commonPool().execute(PlanFiles::ready);
        Outcome outcome = new Desk(err).run(plan.path());
        try (ProgressLine progress = new ProgressLine(err)) {
            PlanFolder.write(folder, PlanFiles.of(outcome), progress);
        } catch (SurveyException e) {
            throw new CommandFailure(Exit.INPUT, String.valueOf(e.getMessage()));
        } catch (FileAlreadyExistsException e) {
            throw new CommandFailure(
                    Exit.FILE, e.getMessage() + ". Name another folder with --into.");
        } catch (IOException e) {
            throw new CommandFailure(
                    Exit.FILE,
                    folder
                            + " cannot be written, and nothing in it was changed: "
                            + e.getMessage());
        }
        Summary.print(out, outcome);
        out.println();
        if (outcome.mustStop()) {
            out.println(
                    "This plan must not be built as it stands: see the findings that say stop.");
        }
        out.println("The plan folder lies in " + folder.toAbsolutePath().normalize());
        return (strict && outcome.mustStop() ? Exit.STOP : Exit.DONE).code();
    }
}
