package lanewright.cli;

import java.nio.file.Path;
import picocli.CommandLine.Parameters;

/** The plan that a command works on. */
final class PlanArgument {

    @Parameters(paramLabel = "PLAN", description = "The plan file, such as plan.json.")
    private Path plan = Path.of("plan.json");

    Path path() {
        return plan;
    }
}
