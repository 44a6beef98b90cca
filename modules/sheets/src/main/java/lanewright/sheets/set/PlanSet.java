package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.function.Supplier;
import lanewright.drainage.along.Sags.Sag;
import lanewright.lane.line.Alignment;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Listing;
import lanewright.measure.SideBySide;
import lanewright.measure.UnitSystem;
import lanewright.measure.Where;
import lanewright.planner.document.Benchmark;
import lanewright.planner.document.Spot;
import lanewright.planner.listing.AlsoListings;
import lanewright.planner.listing.DigListings;
import lanewright.planner.listing.PipeListings;
import lanewright.planner.listing.SettingOut;
import lanewright.planner.listing.ShapeListings;
import lanewright.planner.listing.StoneListings;
import lanewright.planner.listing.WaterListings;
import lanewright.planner.run.Answer;
import lanewright.planner.run.FirstLook;
import lanewright.planner.run.Outcome;
import lanewright.planner.work.Hazard;
import lanewright.planner.work.Hazards;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.figure.LoadStrip;
import lanewright.sheets.figure.SectionSheet;
import lanewright.sheets.figure.Unrolled;
import lanewright.sheets.page.Sheet;
import lanewright.sheets.paint.PdfBook;
import lanewright.stone.StoneTables;
import lanewright.survey.LonLat;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;

/** All sheets of a plan, in the order in which they are read. */
public final class PlanSet {

    /** So many findings are named on the cover. */
    private static final int FIRST = 5;

    /** Corners of the outline drawn round a single hazard. */
    private static final int CORNERS = 32;

    private final Outcome outcome;
    private final UnitSystem units;

    private PlanSet(Outcome outcome) {
        this.outcome = outcome;
        this.units = outcome.plan().units();
    }

    /**
     * The pages of the set, cover first.
     *
     * @throws SurveyException if a benchmark given in degrees has no place in the survey's frame
     */
    public static List<PdfBook.Leaf> of(Outcome outcome) throws SurveyException {
        return new PlanSet(outcome).pages();
    }

    private List<PdfBook.Leaf> pages() throws SurveyException {
        var beside = new Beside(outcome.design().alignment(), outcome.sections().sections());
        Unrolled lane =
                Unrolling.of(
                        outcome.design().alignment(),
                        outcome.design().profile(),
                        outcome.sections().sections(),
                        outcome.ground(),
                        outcome.water(),
                        units);
        List<LandSheet.Thing> things = things();
        Alignment line = outcome.design().alignment();
        List<Listing> out =
                List.of(
                        SettingOut.first(
                                line, outcome.survey(), units, outcome.stakes(), outcome.water()),
                        SettingOut.between(
                                line, outcome.survey(), units, outcome.stakes(), outcome.water()));
        Listing ends =
                SettingOut.pipes(
                        line,
                        outcome.survey(),
                        units,
                        outcome.stakes(),
                        outcome.water(),
                        outcome.ground(),
                        outcome.pipes());
        List<Supplier<List<Sheet>>> parts =
                List.of(
                        () -> List.of(land(beside, things)),
                        () -> along(lane),
                        () -> List.of(waters(beside), wet(beside)),
                        () -> across(lane),
                        () -> lists(out, ends));
        var made = new ArrayList<List<Sheet>>(Collections.nCopies(parts.size(), List.of()));
        SideBySide.each(
                parts.size(), () -> made, (into, part) -> into.set(part, parts.get(part).get()));
        return Binder.bind(
                outcome.plan().name(),
                outcome.plan().date(),
                index -> CoverSheet.of(cover(), index, units),
                made.stream().flatMap(List::stream).toList());
    }

    private Sheet land(Beside beside, List<LandSheet.Thing> things) {
        return LandSheet.of(
                outcome.survey(),
                outcome.ground(),
                beside,
                outcome.water(),
                outcome.heaps().heaps(),
                things,
                outcome.findings(),
                units,
                says(Topic.LINE));
    }

    /** Both lie across the paper, so that water may begin where the tables of the grade end. */
    private List<Sheet> along(Unrolled lane) {
        Sheet profile =
                ProfileSheet.of(
                        outcome.design().alignment(),
                        outcome.design().profile(),
                        lane,
                        outcome.laid(),
                        says(Topic.GRADE));
        Sheet water =
                WaterSheet.of(
                        outcome.water(),
                        outcome.storm(),
                        outcome.plan().water().rain().missing(),
                        PipeListings.fords(
                                outcome.storm(),
                                StoneTables.density(
                                                "riprap",
                                                outcome.plan().water().pipeWork().riprapKind())
                                        .value(),
                                outcome.plan().water().pipeWork().riprapPrice()),
                        units,
                        says(Topic.WATER),
                        profile);
        if (outcome.pipes().isEmpty()) {
            return List.of(profile, water);
        }
        return List.of(
                profile,
                water,
                CulvertSheet.of(
                        outcome.pipes(),
                        outcome.plan().water().pipeWork(),
                        outcome.earth().soil(),
                        outcome.plan().currency(),
                        units));
    }

    private Sheet waters(Beside beside) {
        return WaterMapSheet.of(outcome, beside, units, says(Topic.WATER));
    }

    private Sheet wet(Beside beside) {
        return WetGroundSheet.of(outcome, beside, units);
    }

    private List<Sheet> across(Unrolled lane) {
        Sheet across =
                SectionSheet.of(
                        lane,
                        station -> outcome.design().at(station).typical(),
                        outcome.design().interval(),
                        ShapeListings.stretches(outcome.design()),
                        says(Topic.SHAPE));
        Sheet volumes =
                VolumeSheet.of(
                        outcome.earth(),
                        outcome.heaps(),
                        outcome.volumes(),
                        outcome.sections().sections(),
                        DigListings.isAtLeast(outcome.findings()),
                        outcome.pipes(),
                        units,
                        says(Topic.EARTH),
                        across);
        return List.of(across, volumes);
    }

    private List<Sheet> lists(List<Listing> out, Listing ends) {
        Sheet stone =
                StoneSheet.of(
                        outcome.stone(),
                        outcome.findings(),
                        alongTheLoads(),
                        Hazards.of(
                                        outcome.sections(),
                                        outcome.hazards(),
                                        outcome.plan().stone().raisedBed())
                                .belowWires(),
                        outcome.design().length(),
                        outcome.plan().currency(),
                        also(),
                        units,
                        says(Topic.STONE));
        Sheet order =
                OrderSheet.of(
                        askFirst(),
                        outcome.order(),
                        outcome.cautions(),
                        units,
                        says(Topic.ORDER),
                        stone);
        Sheet stakes = StakeSheet.of(outcome.stakes(), out, ends, units, says(Topic.FIELD));
        Sheet findings = FindingsSheet.of(outcome.findings(), units);
        Sheet assumptions = AssumptionsSheet.of(outcome.assumptions(), units, findings);
        return List.of(
                stone, order, stakes, findings, assumptions, WordsSheet.of(units, assumptions));
    }

    /** What whoever spreads the loads must know of: where nothing is tipped, and low points. */
    private List<LoadStrip.Note> alongTheLoads() {
        var notes = new ArrayList<LoadStrip.Note>();
        for (Where wire : StoneListings.wires(outcome.findings())) {
            Double from = wire.from();
            Double to = wire.to();
            if (from != null && to != null) {
                notes.add(new LoadStrip.Note(from, to, "no tipping: wire", true));
            }
        }
        notes.add(new LoadStrip.Note(0, 0, "road", false));
        double end = outcome.design().length();
        notes.add(new LoadStrip.Note(end, end, "far end", false));
        for (Sag sag : outcome.water().sags()) {
            notes.add(new LoadStrip.Note(sag.station(), sag.station(), "low point", false));
        }
        return notes;
    }

    private String says(Topic topic) {
        for (Answer answer : outcome.answers()) {
            if (answer.topic() == topic) {
                return answer.says().in(units);
            }
        }
        return "";
    }

    private CoverSheet.Content cover() {
        var answers = new ArrayList<CoverSheet.Answer>();
        for (Answer answer : outcome.answers()) {
            answers.add(
                    new CoverSheet.Answer(
                            answer.question(),
                            answer.says(),
                            mark(answer.mark()),
                            sheet(answer.topic())));
        }
        List<Finding> serious = FirstLook.of(outcome);
        return new CoverSheet.Content(
                outcome.plan().name(),
                outcome.headline(),
                answers,
                StoneListings.order(outcome.stone()),
                also(),
                first(serious),
                serious.size(),
                sheet(Topic.ORDER));
    }

    private Listing also() {
        return AlsoListings.of(
                outcome.findings(),
                outcome.order(),
                outcome.earth(),
                outcome.sections().sections(),
                outcome.water(),
                outcome.pipes(),
                outcome.plan().afterMoney(),
                outcome.storm());
    }

    /**
     * The worst few: a lane that is a dam, what else must stop the work, then the rest, each kind
     * once.
     */
    private static List<Finding> first(List<Finding> serious) {
        var kinds = new LinkedHashMap<String, Finding>();
        serious.stream()
                .sorted(Comparator.comparing(PlanSet::rank))
                .forEach(finding -> kinds.putIfAbsent(finding.code(), finding));
        return kinds.values().stream().limit(FIRST).toList();
    }

    private static int rank(Finding finding) {
        if (finding.level() == Finding.Level.STOP) {
            return finding.code().equals("lane-is-a-dam") ? 0 : 1;
        }
        return switch (finding.topic()) {
            case WATER -> 2;
            case ORDER, LINE -> 3;
            default -> 4;
        };
    }

    /** The sheet that proves the answer to a question. */
    private static String sheet(Topic topic) {
        return switch (topic) {
            case GROUND -> "Findings";
            case LINE -> "Plan";
            case GRADE -> "Profile";
            case SHAPE -> "Cross-sections";
            case WATER -> "Water";
            case EARTH -> "Volumes";
            case STONE -> "Stone and loads";
            case ORDER -> "Order of work";
            case FIELD -> "Stakes";
        };
    }

    private static CoverSheet.Mark mark(Answer.Mark mark) {
        return switch (mark) {
            case ANSWERED -> CoverSheet.Mark.ANSWERED;
            case LOOK -> CoverSheet.Mark.LOOK;
            case OPEN -> CoverSheet.Mark.OPEN;
        };
    }

    private List<String> askFirst() {
        var ask = new ArrayList<String>();
        ask.add(
                "The owner of the public road: permit for the entrance, its width and pipe, and how"
                        + " far drivers can see.");
        ask.add(
                "The public marking service for buried lines (find and mark your own yourself);"
                        + " county and state: erosion, streams and wet land.");
        if (!WaterListings.pipes(outcome.water()).rows().isEmpty()) {
            ask.add(
                    "A person licensed or named to size pipes where you build: this set says where"
                            + " and how long"
                            + (outcome.storm() == null
                                    ? ", not how wide."
                                    : ", and how wide for the storm that you wrote."));
        }
        return ask;
    }

    /** What the plan itself puts on the map. */
    private List<LandSheet.Thing> things() throws SurveyException {
        var things = new ArrayList<LandSheet.Thing>();
        for (Hazard hazard : outcome.hazards()) {
            things.add(thing(hazard));
        }
        for (Benchmark benchmark : outcome.plan().benchmarks()) {
            double[] at = local(benchmark.spot());
            things.add(
                    new LandSheet.Thing(
                            Role.TICK,
                            "benchmark: " + benchmark.name(),
                            new double[] {at[0]},
                            new double[] {at[1]},
                            false));
        }
        return things;
    }

    private static LandSheet.Thing thing(Hazard hazard) {
        List<Hazard.Spot> points = hazard.points();
        boolean circle = points.size() == 1 && hazard.around() > 0;
        int n = circle ? CORNERS : points.size();
        double[] x = new double[n];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            double turn = 2 * Math.PI * i / n;
            Hazard.Spot at = points.get(circle ? 0 : i);
            x[i] = at.x() + (circle ? hazard.around() * StrictMath.cos(turn) : 0);
            y[i] = at.y() + (circle ? hazard.around() * StrictMath.sin(turn) : 0);
        }
        boolean wire = hazard.kind() == Hazard.Kind.WIRE;
        boolean buried = hazard.kind().isBuried();
        Role role = wire ? Role.WIRE : buried ? Role.BURIED : Role.HAZARD;
        return new LandSheet.Thing(role, words(hazard), x, y, !wire && !buried);
    }

    /** What the owner calls it, and what it is unless that says so or its line does. */
    private static String words(Hazard hazard) {
        String kind = hazard.kind().words();
        if (hazard.name().isBlank()) {
            return kind;
        }
        boolean said =
                hazard.kind() == Hazard.Kind.WIRE
                        || hazard.kind().isBuried()
                        || hazard.name().contains(kind);
        return said ? hazard.name() : kind + ": " + hazard.name();
    }

    private double[] local(Spot spot) throws SurveyException {
        Survey survey = outcome.survey();
        double[] at =
                spot.degrees()
                        ? survey.frame().eastNorth(new LonLat(spot.across(), spot.up()))
                        : new double[] {spot.across(), spot.up()};
        return new double[] {at[0] - survey.originX(), at[1] - survey.originY()};
    }
}
