package lanewright.cli;

import java.util.concurrent.Callable;
import lanewright.planner.run.Outcome;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Checks a plan and writes nothing. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description =
                "Works a plan out and says how the survey was read and all that is found; writes nothing.",
        footer = {"", "Example:", "  lanewright check plan.json"})
final class CheckCommand implements Callable<Integer> {

    @Spec private CommandSpec spec = CommandSpec.create();
    @Mixin private PlanArgument plan = new PlanArgument();

    @Override
    public Integer call() throws CommandFailure {
        var line = spec.commandLine();
        Outcome outcome = new Desk(line.getErr()).run(plan.path());
        Summary.readings(line.getOut(), outcome.survey().readings());
        Summary.printAll(line.getOut(), outcome);
        return (outcome.mustStop() ? Exit.STOP : Exit.DONE).code();
    }
}
