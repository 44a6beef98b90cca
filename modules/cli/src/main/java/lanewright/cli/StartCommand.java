package lanewright.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import lanewright.measure.LengthUnit;
import lanewright.measure.Parse;
import lanewright.measure.QuantityException;
import lanewright.planner.document.FirstPlan;
import lanewright.planner.document.PlanException;
import lanewright.planner.document.PlanFile;
import lanewright.planner.document.Spot;
import lanewright.planner.document.Spots;
import lanewright.planner.document.SurveyPart;
import lanewright.planner.run.Run;
import lanewright.survey.read.Holds;
import lanewright.survey.text.Fields;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Makes a first plan from survey files and two places. */
@Command(
        name = "start",
        mixinStandardHelpOptions = true,
        description =
                "Makes a first plan from survey files and two places, every default written out and explained.",
        footer = {
            "",
            "Places are east and north in the survey's own coordinates, with their unit, or longitude and",
            "latitude. Survey files must lie in the folder of the plan or below it.",
            "",
            "Example:",
            "  lanewright start --points points.csv --unit ft --breaklines road-edge,flow-line \\",
            "      --from \"5003 ft, 2000 ft\" --to \"5760 ft, 2015 ft\" --plan plan.json"
        })
final class StartCommand implements Callable<Integer> {

    @Spec private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--points",
            paramLabel = "FILE",
            description = "Measured points, delimited text or GeoJSON.")
    private List<Path> points = List.of();

    @Option(names = "--probes", paramLabel = "FILE", description = "Probe holes, delimited text.")
    private List<Path> probes = List.of();

    @Option(names = "--contours", paramLabel = "FILE", description = "Contours, GeoJSON.")
    private List<Path> contours = List.of();

    @Option(
            names = "--grid",
            paramLabel = "FILE",
            description = "An elevation grid, GeoTIFF or ASCII grid.")
    private List<Path> grids = List.of();

    @Option(
            names = "--unit",
            paramLabel = "m|ft|ftUS",
            description = "Unit of the survey, where the files do not say.")
    private @Nullable String unit;

    @Option(
            names = "--columns",
            paramLabel = "NAMES",
            description =
                    "Order of the columns of points, such as \"name, northing, easting, height, code\","
                            + " where the file does not say.")
    private @Nullable String columns;

    @Option(
            names = "--height-unit",
            paramLabel = "m|ft|ftUS",
            description = "Unit of its heights, if another.")
    private @Nullable String heightUnit;

    @Option(
            names = "--breaklines",
            paramLabel = "CODES",
            description =
                    "Codes of shots that make breaklines, with commas between. A code may have blanks;"
                            + " one with a comma stands in double quotes.")
    private List<String> breaklines = List.of();

    @Option(
            names = "--frame",
            paramLabel = "FRAME",
            description = "The flat map: local, or EPSG:26916 or the like.")
    private @Nullable String frame;

    @Option(
            names = "--from",
            required = true,
            paramLabel = "PLACE",
            description = "Where the lane leaves the road.")
    private String from = "";

    @Option(
            names = "--by",
            paramLabel = "PLACE",
            description = "A place on the way; give it again for each.")
    private List<String> by = List.of();

    @Option(
            names = "--to",
            required = true,
            paramLabel = "PLACE",
            description = "Where the lane must arrive.")
    private String to = "";

    @Option(
            names = "--radius",
            defaultValue = "60 ft",
            paramLabel = "LENGTH",
            description = "Radius of curves at places on the way. Without it: ${DEFAULT-VALUE}.")
    private String radius = "60 ft";

    @Mixin private UnitsOption units = new UnitsOption();

    @Option(
            names = "--name",
            defaultValue = "My lane",
            paramLabel = "NAME",
            description = "What the lane is called.")
    private String name = "My lane";

    @Option(
            names = "--plan",
            defaultValue = "plan.json",
            paramLabel = "FILE",
            description = "The plan to write. Without it: ${DEFAULT-VALUE}.")
    private Path plan = Path.of("plan.json");

    @Override
    public Integer call() throws CommandFailure {
        if (Files.exists(plan)) {
            throw new CommandFailure(
                    Exit.FILE,
                    plan + " is there already and is not written over. Name another with --plan.");
        }
        PrintWriter out = spec.commandLine().getOut();
        Path folder = Desk.folder(plan);
        PlanFile first = first(folder);
        Desk desk = new Desk(spec.commandLine().getErr());
        Run.LaidGrade laid = desk.lay(folder, first);
        Desk.save(plan, PlanFile.write(first.plan().with(laid.written()), true));
        Summary.readings(out, laid.survey().readings());
        out.println("Laid a first grade:");
        GradeCommand.report(out, laid, first.plan().units());
        out.println();
        out.println(
                "A first plan lies in "
                        + plan
                        + ", every value with its reason. Next: lanewright make "
                        + plan);
        return (laid.proposal().collisions().isEmpty() ? Exit.DONE : Exit.STOP).code();
    }

    private PlanFile first(Path folder) throws CommandFailure {
        List<SurveyPart.File> files = new ArrayList<>();
        add(files, folder, points, Holds.POINTS);
        add(files, folder, contours, Holds.CONTOURS);
        add(files, folder, grids, Holds.GRID);
        add(files, folder, probes, Holds.PROBES);
        if (files.isEmpty()) {
            throw new CommandFailure(
                    Exit.INPUT,
                    "No survey file is named. Give one with --points, --contours or --grid.");
        }
        try {
            List<Spot> places = new ArrayList<>();
            places.add(Spots.read(from));
            for (String place : by) {
                places.add(Spots.read(place));
            }
            places.add(Spots.read(to));
            return FirstPlan.of(
                    new FirstPlan.Wanted(
                            name,
                            units.system(),
                            frame,
                            files,
                            codes(),
                            places,
                            Parse.length(radius)));
        } catch (QuantityException e) {
            throw new CommandFailure(Exit.INPUT, e.what() + ". " + e.remedy() + ".");
        } catch (PlanException | IllegalArgumentException e) {
            throw new CommandFailure(Exit.INPUT, String.valueOf(e.getMessage()));
        }
    }

    /** Codes with commas between, in quotes where a code holds one: as the survey's own rows. */
    private List<String> codes() throws CommandFailure {
        List<String> codes = new ArrayList<>();
        var fields = new Fields(',');
        for (String each : breaklines) {
            if (!fields.cut(each)) {
                throw new CommandFailure(
                        Exit.INPUT,
                        "--breaklines "
                                + each
                                + " cannot be taken apart. Put commas between the codes, and a code"
                                + " that holds a comma in double quotes.");
            }
            codes.addAll(fields.all());
        }
        return codes;
    }

    private void add(List<SurveyPart.File> files, Path folder, List<Path> paths, Holds holds)
            throws CommandFailure {
        for (Path path : paths) {
            Path below = folder.relativize(path.toAbsolutePath().normalize());
            if (below.startsWith("..")) {
                throw new CommandFailure(
                        Exit.INPUT,
                        path
                                + " lies outside the folder of the plan. Put it beside the plan or below it.");
            }
            String relative = below.toString().replace('\\', '/');
            SurveyPart.File bare = SurveyPart.File.of(relative, holds);
            files.add(
                    new SurveyPart.File(
                            relative,
                            holds,
                            isGeographic(path) ? null : unit(unit),
                            unit(heightUnit),
                            bare.depthUnit(),
                            holds == Holds.POINTS && !isGeographic(path) ? columns : null,
                            bare.separator(),
                            bare.decimal(),
                            bare.epsg(),
                            isGeographic(path) && isLocal()
                                    ? SurveyPart.Coordinates.LOCAL
                                    : bare.coordinates(),
                            bare.heightProperty(),
                            bare.kindProperty()));
        }
    }

    /** Places in plain coordinates and no frame on the earth: then GeoJSON is plain too. */
    private boolean isLocal() {
        boolean degrees = from.contains("°") || from.contains("deg");
        return frame == null ? !degrees : frame.equals("local");
    }

    /** GeoJSON is in degrees by its standard, so only its heights have a unit to be told. */
    private static boolean isGeographic(Path path) {
        String lower = path.toString().toLowerCase(Locale.ROOT);
        return lower.endsWith(".geojson") || lower.endsWith(".json");
    }

    private static @Nullable LengthUnit unit(@Nullable String text) throws CommandFailure {
        if (text == null) {
            return null;
        }
        for (LengthUnit unit : LengthUnit.values()) {
            if (unit.symbol().equals(text)) {
                return unit;
            }
        }
        throw new CommandFailure(
                Exit.INPUT, "The unit " + text + " is not known. Write m, ft or ftUS.");
    }
}
