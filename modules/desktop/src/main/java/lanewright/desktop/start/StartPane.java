package lanewright.desktop.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import lanewright.desktop.files.Chooser;
import lanewright.desktop.files.Draftbook;
import lanewright.desktop.files.Home;
import lanewright.desktop.files.Remembered;
import lanewright.desktop.look.Theme;
import lanewright.planner.document.PlanFile;
import org.jspecify.annotations.Nullable;

/** The start: what to do first, in a few plain ways. */
public final class StartPane implements AutoCloseable {

    /**
     * A plan is told by its own name if its file is no larger, bytes: the list must come at once.
     */
    private static final long MOST_READ = 1_000_000;

    /** Opens what is chosen here. */
    public interface Opening {
        /** Opens a plan that lies in a file. */
        void openPlan(Path plan);

        /**
         * Opens a plan that was just made.
         *
         * @param plan the file it belongs into, which is not written yet
         */
        void openNew(PlanFile file, Path plan);

        /** Goes on with a plan that was never kept, with what can still be undone. */
        void goOn(PlanFile file, Path plan);
    }

    private final Opening opening;
    private final Chooser chooser;
    private final Home home;
    private final Theme theme;
    private final StackPane root = new StackPane();
    private final Label trouble = new Label();
    private @Nullable SurveyPane survey;

    /**
     * The start.
     *
     * @param theme of the board of a survey
     * @param copies safe copies of edits that are in no plan file
     */
    public StartPane(
            Opening opening,
            Chooser chooser,
            Home home,
            Theme theme,
            Remembered remembered,
            List<Draftbook.Copy> copies) {
        this.opening = opening;
        this.chooser = chooser;
        this.home = home;
        this.theme = theme;
        root.getChildren().add(page(remembered, copies));
        root.setId("start");
    }

    /** What to show. */
    public Node node() {
        return root;
    }

    /** Says what is good to know. */
    public void note(String words) {
        trouble.getStyleClass().setAll("label");
        say(words);
    }

    /** Says what went wrong. */
    public void say(String words) {
        trouble.setText(words);
        trouble.setManaged(true);
        trouble.setVisible(true);
    }

    /** Reads survey files and shows what was understood. */
    public void surveys(List<Path> files) {
        List<Path> there = files.stream().filter(Files::isRegularFile).toList();
        if (there.isEmpty()) {
            say("What was dropped is no file. Drop the survey's files themselves.");
            return;
        }
        SurveyPane open = survey;
        if (open == null) {
            SurveyPane made = new SurveyPane(opening, theme, this::back);
            survey = made;
            root.getChildren().setAll(made.node());
            made.add(there);
        } else {
            open.add(there);
        }
    }

    private void back() {
        SurveyPane open = survey;
        if (open != null) {
            open.close();
            survey = null;
        }
        root.getChildren().setAll(page(new Remembered(home), List.of()));
    }

    private Node page(Remembered remembered, List<Draftbook.Copy> copies) {
        VBox page = new VBox(18);
        page.getStyleClass().add("start");
        Label name = new Label("Lanewright");
        name.getStyleClass().add("start-name");
        Label about =
                new Label(
                        "Plan a gravel lane from what you measured: where it runs, how it is"
                                + " shaped, where water goes, what dirt and stone it takes.");
        about.setWrapText(true);
        trouble.getStyleClass().add("wrong");
        trouble.setId("trouble");
        trouble.setWrapText(true);
        trouble.setManaged(!trouble.getText().isEmpty());
        page.getChildren().addAll(name, about, trouble, survey(), plans(remembered, copies));
        page.getChildren().add(new StoneSentence().node());
        page.setMaxWidth(820);
        StackPane middle = new StackPane(page);
        ScrollPane scroll = new ScrollPane(middle);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("start-scroll");
        return scroll;
    }

    private Node survey() {
        Label title = new Label("Begin with a survey");
        title.getStyleClass().add("proposal-title");
        Label drop =
                new Label(
                        "Drop your files here: points as text from a level, tape or rover, GeoJSON"
                                + " contours, an elevation grid, probe holes. Put them in one"
                                + " folder; the plan is kept beside them.");
        drop.setWrapText(true);
        Button open = new Button("Open survey files");
        open.setId("open-surveys");
        open.getStyleClass().add("acting");
        open.setOnAction(
                event -> {
                    List<Path> files = chooser.surveys();
                    if (!files.isEmpty()) {
                        surveys(files);
                    }
                });
        VBox card = new VBox(10, title, drop, open);
        card.getStyleClass().addAll("card", "drop");
        return card;
    }

    private Node plans(Remembered remembered, List<Draftbook.Copy> copies) {
        Label title = new Label("Go on with a plan, or try a sample");
        title.getStyleClass().add("proposal-title");
        FlowPane buttons = new FlowPane(8, 8);
        Button open = new Button("Open a plan");
        open.setId("open-plan");
        open.setOnAction(
                event -> {
                    Path plan = chooser.plan();
                    if (plan != null) {
                        opening.openPlan(plan);
                    }
                });
        buttons.getChildren().add(open);
        for (Samples sample : Samples.values()) {
            Button button = new Button(sample.words());
            button.setId("sample-" + sample.folder());
            button.setOnAction(event -> sample(sample));
            buttons.getChildren().add(button);
        }
        VBox card = new VBox(10, title, buttons);
        for (Path plan : remembered.recent()) {
            Hyperlink link = new Hyperlink(called(plan));
            link.setOnAction(event -> opening.openPlan(plan));
            Label where = new Label(plan.toString());
            where.getStyleClass().add("remedy");
            card.getChildren().add(new VBox(0, link, where));
        }
        int unkept = 0;
        for (Draftbook.Copy copy : copies) {
            if (Files.notExists(copy.plan())) {
                Hyperlink link = new Hyperlink("Edits that were never kept, for " + copy.plan());
                link.setId("never-kept-" + unkept++);
                link.setOnAction(event -> recovered(copy));
                card.getChildren().add(link);
            }
        }
        card.getStyleClass().add("card");
        return card;
    }

    /** A plan by the name that its owner gave it, or its folder's if it cannot be read. */
    private static String called(Path plan) {
        try {
            if (Files.size(plan) < MOST_READ) {
                return PlanFile.read("plan", Files.readAllBytes(plan)).plan().name();
            }
        } catch (IOException | lanewright.planner.document.PlanException e) {
            // Told with its remedy when it is opened; here it goes by its folder.
        }
        Path folder = plan.getParent();
        return folder == null ? plan.toString() : String.valueOf(folder.getFileName());
    }

    private void recovered(Draftbook.Copy copy) {
        try {
            opening.goOn(
                    PlanFile.read(
                            "the safe copy",
                            copy.text().getBytes(java.nio.charset.StandardCharsets.UTF_8)),
                    copy.plan());
        } catch (lanewright.planner.document.PlanException e) {
            say(String.valueOf(e.getMessage()));
        }
    }

    private void sample(Samples sample) {
        try {
            opening.openPlan(sample.layOut(home.folder().resolve("samples")));
        } catch (IOException e) {
            say("The sample could not be laid out: " + e.getMessage());
        }
    }

    @Override
    public void close() {
        SurveyPane open = survey;
        if (open != null) {
            open.close();
        }
    }
}
