package lanewright;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Which room may know which, and which library lives where. */
class ArchitectureTest {

    private static final JavaClasses OURS =
            new ClassFileImporter()
                    .withImportOption(new DoNotIncludeTests())
                    .importPackages("lanewright");

    /** Each room and the rooms it stands on. What those stand on, it may use too. */
    private static final Map<String, Set<String>> ARROWS =
            Map.ofEntries(
                    Map.entry("measure", Set.of()),
                    Map.entry("survey", Set.of("measure")),
                    Map.entry("ground", Set.of("survey")),
                    Map.entry("lane", Set.of("ground")),
                    Map.entry("earthwork", Set.of("lane")),
                    Map.entry("drainage", Set.of("lane")),
                    Map.entry("stone", Set.of("lane")),
                    Map.entry("planner", Set.of("earthwork", "drainage", "stone")),
                    Map.entry("sheets", Set.of("planner")),
                    Map.entry("desktop", Set.of("sheets")),
                    Map.entry("cli", Set.of("sheets")));

    private static final String[] REFERENCE_SYSTEMS = {
        "org.geotools..", "net.opengis..", "org.eclipse.emf..", "javax.measure..", "si.uom..",
        "systems.uom..", "tech.units..", "tech.uom..", "javax.media.jai..", "com.sun.media..",
        "it.geosolutions..", "org.jaitools..", "org.hsqldb.."
    };

    private static final String[] GEOMETRY = {"org.locationtech.jts.."};

    @Test
    void everyRoomIsOnTheMap() {
        var rooms = new TreeSet<String>();
        for (JavaClass ours : OURS) {
            rooms.add(ours.getPackageName().split("\\.", -1)[1]);
        }
        assertEquals(new TreeSet<>(ARROWS.keySet()), rooms, "rooms found on the class path");
    }

    @Test
    void theDrawingInTheDocsShowsTheseArrows() throws IOException {
        var drawn = new TreeSet<String>();
        for (String line : Files.readAllLines(Path.of("..", "..", "docs", "architecture.md"))) {
            if (line.contains(" --> ")) {
                drawn.add(line.strip());
            }
        }
        var held = new TreeSet<String>();
        ARROWS.forEach((room, on) -> on.forEach(other -> held.add(room + " --> " + other)));
        assertEquals(held, drawn);
    }

    @Test
    void roomsKnowOnlyTheRoomsTheyStandOn() {
        for (String room : new TreeSet<>(ARROWS.keySet())) {
            String[] strangers =
                    ARROWS.keySet().stream()
                            .filter(other -> !other.equals(room) && !below(room).contains(other))
                            .map(other -> "lanewright." + other + "..")
                            .sorted()
                            .toArray(String[]::new);
            noClasses()
                    .that()
                    .resideInAPackage("lanewright." + room + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(strangers)
                    .because("figures flow one way, from the survey to the sheets")
                    .allowEmptyShould(true)
                    .check(OURS);
        }
    }

    private static Set<String> below(String room) {
        var below = new TreeSet<String>();
        for (String next : ARROWS.getOrDefault(room, Set.of())) {
            below.add(next);
            below.addAll(below(next));
        }
        return below;
    }

    @Test
    void roomsDoNotGoRoundInCircles() {
        slices().matching("lanewright.(*)..")
                .should()
                .beFreeOfCycles()
                .because("a room that needs the room above it cannot be understood alone")
                .allowEmptyShould(true)
                .check(OURS);
    }

    @Test
    void packagesDoNotGoRoundInCircles() {
        slices().matching("lanewright.(**)")
                .should()
                .beFreeOfCycles()
                .because("two packages that need each other are one package")
                .allowEmptyShould(true)
                .check(OURS);
    }

    @Test
    void sectionsAndBuiltSurfaceDoNotKnowEachOther() {
        noClasses()
                .that()
                .resideInAPackage("lanewright.lane.surface..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("lanewright.lane.section..", "lanewright.lane.volume..")
                .because("the true solid checks the volumes from sections, and must not read one")
                .check(OURS);
        noClasses()
                .that()
                .resideInAnyPackage("lanewright.lane.section..", "lanewright.lane.volume..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("lanewright.lane.surface..")
                .because("the true solid checks the volumes from sections, and must not feed them")
                .check(OURS);
    }

    @Test
    void referenceSystemLibraryOnlyInSurvey() {
        onlyIn(
                List.of("survey"),
                "it is heavy, slow to start and knows no gravel; survey hides it behind its own"
                        + " types",
                REFERENCE_SYSTEMS);
    }

    @Test
    void nothingBundledWithTheReferenceSystemLibraryIsUsed() {
        onlyIn(
                List.of(),
                "these come along inside another library's jar and may leave with its next version",
                "com.google.common..",
                "javax.annotation..",
                "javax.xml.bind..",
                "jakarta.inject..",
                "org.checkerframework..",
                "org.ehcache..",
                "org.ejml..");
    }

    @Test
    void geometryLibraryWhereThereIsGeometry() {
        onlyIn(
                List.of("survey", "ground", "lane", "drainage", "planner", "sheets"),
                "earthwork and stone get finished sections, and the command line gets answers",
                "org.locationtech.jts..");
    }

    @Test
    void surveyShowsItsOwnTypesOnly() {
        String[] hidden =
                Stream.of(REFERENCE_SYSTEMS, GEOMETRY).flatMap(Stream::of).toArray(String[]::new);
        ArchRuleDefinition.members()
                .that()
                .areDeclaredInClassesThat()
                .resideInAPackage("lanewright.survey..")
                .should(notShow(hidden))
                .because(
                        "the libraries that read a survey must be replaceable without anyone noticing")
                .allowEmptyShould(true)
                .check(OURS);
    }

    private static ArchCondition<JavaMember> notShow(String... packages) {
        return new ArchCondition<>("not show types of " + String.join(", ", packages)) {
            @Override
            public void check(JavaMember member, ConditionEvents events) {
                boolean seen =
                        member.getOwner().getModifiers().contains(JavaModifier.PUBLIC)
                                && (member.getModifiers().contains(JavaModifier.PUBLIC)
                                        || member.getModifiers().contains(JavaModifier.PROTECTED));
                if (seen) {
                    shown(member)
                            .filter(
                                    type ->
                                            resideInAnyPackage(packages)
                                                    .test(type.getBaseComponentType()))
                            .forEach(
                                    type ->
                                            events.add(
                                                    SimpleConditionEvent.violated(
                                                            member,
                                                            member.getDescription()
                                                                    + " shows "
                                                                    + type.getName())));
                }
            }
        };
    }

    private static Stream<JavaClass> shown(JavaMember member) {
        if (member instanceof JavaField field) {
            return field.getAllInvolvedRawTypes().stream();
        }
        var codeUnit = (JavaCodeUnit) member;
        return Stream.concat(
                codeUnit.getReturnType().getAllInvolvedRawTypes().stream(),
                codeUnit.getParameterTypes().stream()
                        .flatMap(type -> type.getAllInvolvedRawTypes().stream()));
    }

    @Test
    void triangulationLibraryOnlyInMeasurements() {
        onlyIn(
                List.of("bench"),
                "the ground makes its own triangles; the library is what they are measured against",
                "org.tinfour..");
    }

    @Test
    void drawingOnlyInSheets() {
        onlyIn(
                List.of("sheets"),
                "a drawing is made once, as data, and painted in one place",
                "org.apache.pdfbox..",
                "org.apache.fontbox..",
                "javax.swing..");
    }

    @Test
    void awtOnlyWhereThereArePictures() {
        onlyIn(
                List.of("survey", "sheets", "desktop"),
                "only rasters, sheets and boards are pictures; the engine must not start a graphics system",
                "java.awt..",
                "javax.imageio..");
    }

    @Test
    void windowLibraryOnlyInDesktop() {
        onlyIn(
                List.of("desktop"),
                "the engine, the sheets and the command line work where there is no screen",
                "javafx..",
                "com.sun.javafx..",
                "com.sun.glass..",
                "com.sun.prism..");
    }

    @Test
    void windowUsesOnlyWhatTheLibraryPromises() {
        onlyIn(
                List.of(),
                "what is inside the window library may leave with its next version",
                "com.sun.javafx..",
                "com.sun.glass..",
                "com.sun.prism..");
    }

    @Test
    void commandLineLibraryOnlyInCli() {
        onlyIn(
                List.of("cli"),
                "the engine is called from more places than a terminal",
                "picocli..");
    }

    @Test
    void tablesOfTextOnlyAtTheEdges() {
        onlyIn(
                List.of("survey", "sheets"),
                "points come in and lists go out as CSV; in between there are objects",
                "org.apache.commons.csv..");
    }

    @Test
    void jsonOnlyAtTheEdges() {
        onlyIn(
                List.of("survey", "planner", "sheets"),
                "plans, surveys and exports are JSON; what the engine works on is not",
                "com.fasterxml.jackson..",
                "com.networknt..");
    }

    @Test
    void mathsLibraryNotInMeasure() {
        noClasses()
                .that()
                .resideInAPackage("lanewright.measure..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.apache.commons.math3..")
                .because("a quantity is a number and a unit, and needs no mathematics")
                .allowEmptyShould(true)
                .check(OURS);
    }

    @Test
    void engineOpensNoFiles() {
        noClasses()
                .that(
                        resideInAnyPackage(
                                "lanewright.measure..",
                                "lanewright.ground..",
                                "lanewright.lane..",
                                "lanewright.earthwork..",
                                "lanewright.drainage..",
                                "lanewright.stone.."))
                .should()
                .dependOnClassesThat(
                        resideInAnyPackage("java.nio.file..")
                                .or(
                                        describe(
                                                "are files",
                                                type -> type.getName().startsWith("java.io.File"))))
                .because(
                        "files are known to survey, planner and sheets, and named by cli and desktop")
                .allowEmptyShould(true)
                .check(OURS);
    }

    private static void onlyIn(List<String> rooms, String reason, String... libraries) {
        noClasses()
                .that()
                .resideOutsideOfPackages(
                        rooms.stream()
                                .map(room -> "lanewright." + room + "..")
                                .toArray(String[]::new))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(libraries)
                .because(reason)
                .allowEmptyShould(true)
                .check(OURS);
    }
}
