package lanewright.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CancellationException;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line. */
@Command(
        name = "lanewright",
        mixinStandardHelpOptions = true,
        version = "Lanewright 0.1.0",
        description = "Turns survey points into the whole plan for a gravel lane.",
        subcommands = {
            StartCommand.class,
            GradeCommand.class,
            CheckCommand.class,
            MakeCommand.class,
            StoneCommand.class
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:done",
            "1:checked, laid, or made with --strict, but the plan must not be built as it stands: see"
                    + " the findings",
            "2:the command was not understood",
            "3:a survey, a plan or a quantity cannot be used as it stands",
            "4:a file cannot be read or written",
            "70:a fault of this program",
            "130:cancelled"
        })
public final class Main implements Runnable {

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec = CommandLine.Model.CommandSpec.create();

    private Main() {}

    /** Runs a command and ends the process with its exit code. */
    public static void main(String[] arguments) {
        var out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        var err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        Interrupt.listen();
        int code;
        try {
            code = run(out, err, arguments);
        } catch (OutOfMemoryError e) {
            err.println(
                    "The survey is too large for the memory that Java was given. Thin it, clip it to"
                            + " the lane, or give more, such as LANEWRIGHT_JAVA=-Xmx4g.");
            code = Exit.INPUT.code();
        }
        out.flush();
        err.flush();
        Interrupt.ended();
        System.exit(code);
    }

    /**
     * Runs a command.
     *
     * @param out where answers go
     * @param err where complaints and progress go
     * @return the exit code
     */
    public static int run(PrintWriter out, PrintWriter err, String... arguments) {
        return new CommandLine(new Main())
                .setOut(out)
                .setErr(err)
                .setExecutionExceptionHandler((thrown, line, parsed) -> explain(thrown, err))
                .execute(arguments);
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    private static int explain(Exception thrown, PrintWriter err) {
        if (thrown instanceof CommandFailure failure) {
            err.println(failure.getMessage());
            return failure.exit().code();
        }
        if (thrown instanceof CancellationException) {
            err.println("Cancelled; nothing was written.");
            return Exit.CANCELLED.code();
        }
        err.println("This is a fault of the program and not of your files: " + thrown);
        thrown.printStackTrace(err);
        return Exit.FAULT.code();
    }
}
