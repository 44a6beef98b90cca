package lanewright.desktop.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;

/** Edits a plan of nothing but numbers as fast as it can, until it is killed. */
final class KilledWriter {

    private KilledWriter() {}

    /** A text whose every line must be the same, or it is not whole. */
    static String text(int edit) {
        return ("edit " + edit + "\n").repeat(2000);
    }

    /** The edit that a whole text is of. */
    static int edit(String text) {
        String line = text.substring(0, text.indexOf('\n'));
        int edit = Integer.parseInt(line.substring("edit ".length()));
        if (!text.equals(text(edit))) {
            throw new AssertionError("half of one edit and half of another: " + line);
        }
        return edit;
    }

    /** Arguments: home, plan, number of the last edit that there was, seed. */
    public static void main(String[] arguments) throws Exception {
        Path plan = Path.of(arguments[1]);
        SplittableRandom random = new SplittableRandom(Long.parseLong(arguments[3]));
        Draftbook book =
                new Draftbook(
                        new Home(Path.of(arguments[0])),
                        trouble -> System.out.println("failed " + trouble));
        book.begin(plan, Files.exists(plan) ? Files.readString(plan) : "");
        for (int edit = Integer.parseInt(arguments[2]) + 1; ; edit++) {
            book.note(plan, text(edit));
            System.out.println("edit " + edit + " " + System.currentTimeMillis());
            if (random.nextInt(40) == 0) {
                int kept = edit;
                book.keep(plan, text(edit), trouble -> System.out.println("kept " + kept + " 0"));
            }
            Thread.sleep(random.nextInt(8));
        }
    }
}
