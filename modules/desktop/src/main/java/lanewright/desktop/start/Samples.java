package lanewright.desktop.start;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The samples that come with the program: invented land in an invented place. */
@SuppressWarnings("ImmutableEnumChecker") // the lists are made by List.of
enum Samples {
    /** Points, breaklines and probe holes in feet, with a hollow to cross and a hill to climb. */
    MARROW_FOLD(
            "marrow-fold",
            "Marrow Fold, points and probe holes in feet",
            List.of("plan.json", "points.csv", "probes.csv")),
    /** Contours in degrees on a side-hill, in metres. */
    WICKLE_BANK(
            "wickle-bank",
            "Wickle Bank, contours in metres",
            List.of("plan.json", "contours.geojson", "spots.geojson"));

    private final String folder;
    private final String words;
    private final List<String> files;

    Samples(String folder, String words, List<String> files) {
        this.folder = folder;
        this.words = words;
        this.files = files;
    }

    String folder() {
        return folder;
    }

    String words() {
        return words;
    }

    /**
     * Lays the sample's files into a folder of its own, where it may be worked on.
     *
     * @param under where that folder is made
     * @return its plan
     */
    Path layOut(Path under) throws IOException {
        Path place = under.resolve(folder);
        Files.createDirectories(place);
        for (String file : files) {
            Path to = place.resolve(file);
            if (Files.notExists(to)) {
                String resource = "/lanewright/desktop/samples/" + folder + "/" + file;
                try (InputStream in = Samples.class.getResourceAsStream(resource)) {
                    if (in == null) {
                        throw new IOException("the sample's " + file + " is missing");
                    }
                    Files.copy(in, to);
                }
            }
        }
        return place.resolve("plan.json");
    }
}
