package lanewright.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Makes several plans in one process, one after another or all at once. The first argument says by
 * how many threads; after it come a plan and a folder for each.
 */
final class MakePlans {

    private MakePlans() {}

    /**
     * Ends with the sum of the exit codes, and prints what the commands say, in the order asked.
     */
    public static void main(String[] arguments) throws Exception {
        var pool = Executors.newFixedThreadPool(Integer.parseInt(arguments[0]));
        var tasks = new ArrayList<Callable<Integer>>();
        List<StringWriter> said = new ArrayList<>();
        for (int i = 1; i < arguments.length; i += 2) {
            var words = new StringWriter();
            said.add(words);
            String plan = arguments[i];
            String folder = arguments[i + 1];
            tasks.add(
                    () -> {
                        var out = new PrintWriter(words, true);
                        return Main.run(out, out, "make", plan, "--into", folder);
                    });
        }
        int code = 0;
        for (Future<Integer> each : pool.invokeAll(tasks)) {
            code += each.get();
        }
        pool.shutdown();
        var out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        said.forEach(out::print);
        out.flush();
        System.exit(code);
    }
}
