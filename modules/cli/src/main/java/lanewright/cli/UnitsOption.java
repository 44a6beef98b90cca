package lanewright.cli;

import lanewright.measure.UnitSystem;
import picocli.CommandLine.Option;

/** The units that a command writes in. */
final class UnitsOption {

    @Option(
            names = "--units",
            defaultValue = "us",
            paramLabel = "us|metric",
            description = "Units of what comes out. Without it: ${DEFAULT-VALUE}.")
    private String units = "us";

    UnitSystem system() throws CommandFailure {
        return switch (units) {
            case "us" -> UnitSystem.US;
            case "metric" -> UnitSystem.METRIC;
            default ->
                    throw new CommandFailure(
                            Exit.INPUT, "--units is " + units + ". Write us or metric.");
        };
    }
}
