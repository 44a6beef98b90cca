package lanewright.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import lanewright.measure.Finding;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.PlanFile;
import lanewright.planner.run.Run;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Lays a first grade and writes it into the plan. */
@Command(
        name = "grade",
        mixinStandardHelpOptions = true,
        description = "Lays a first grade and writes it into the plan with its reasons.",
        footer = {"", "Example:", "  lanewright grade plan.json"})
final class GradeCommand implements Callable<Integer> {

    @Spec private CommandSpec spec = CommandSpec.create();
    @Mixin private PlanArgument plan = new PlanArgument();

    @Option(names = "--replace", description = "Replace a grade that the plan already has.")
    private boolean replace;

    @Override
    public Integer call() throws CommandFailure {
        PrintWriter out = spec.commandLine().getOut();
        Desk desk = new Desk(spec.commandLine().getErr());
        PlanFile file = desk.read(plan.path());
        if (!file.plan().grade().points().isEmpty() && !replace) {
            throw new CommandFailure(
                    Exit.INPUT,
                    plan.path() + " already has a grade. Say --replace to lay another over it.");
        }
        Run.LaidGrade laid = desk.lay(Desk.folder(plan.path()), file);
        Desk.save(plan.path(), file.textWith(laid.written()));
        report(out, laid, file.plan().units());
        out.println("Written into " + plan.path());
        return (laid.proposal().collisions().isEmpty() ? Exit.DONE : Exit.STOP).code();
    }

    static void report(PrintWriter out, Run.LaidGrade laid, UnitSystem units) {
        for (String reason : laid.written().reasons()) {
            out.println("  " + reason);
        }
        for (Finding collision : laid.proposal().collisions()) {
            out.println("  " + collision.says().in(units) + " " + collision.remedy().in(units));
        }
    }
}
