package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.List;
import lanewright.earthwork.EarthOptions;
import lanewright.earthwork.EarthworkReport;
import lanewright.lane.line.DesignRefused;
import lanewright.measure.Assumption;
import lanewright.measure.Finding;
import lanewright.measure.Listing;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.planner.listing.PipeListings;
import lanewright.planner.listing.SettingOut;
import lanewright.planner.listing.ShapeListings;
import lanewright.planner.listing.StoneListings;
import lanewright.planner.work.Cautions;
import lanewright.planner.work.HeapLand;
import lanewright.planner.work.HeapPlaces;
import lanewright.planner.work.Stakes;
import lanewright.planner.work.WorkFacts;
import lanewright.planner.work.WorkOrder;
import lanewright.planner.work.WorkStep;
import lanewright.sheets.ToyPlan;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.figure.LoadStrip;
import lanewright.sheets.figure.SectionSheet;
import lanewright.sheets.page.Sheet;
import lanewright.sheets.paint.PdfBook;

/** The sheets of the toy plan, bound. */
public final class ToySet {

    private static final Listing ALSO =
            new Listing(
                    "also-needed",
                    "Also needed",
                    List.of(Listing.Column.words("What"), Listing.Column.words("Where")),
                    List.of(List.of(Listing.cell("check dams"), Listing.cell("ditches"))),
                    0);

    private ToySet() {}

    /** Its pages. */
    public static List<PdfBook.Leaf> pages(UnitSystem units) throws DesignRefused {
        var toy = new ToyPlan();
        var beside = new Beside(toy.design.alignment(), toy.sections.sections());
        var lane =
                Unrolling.of(
                        toy.design.alignment(),
                        toy.design.profile(),
                        toy.sections.sections(),
                        toy.ground,
                        toy.water,
                        units);
        var sheets = new ArrayList<Sheet>();
        sheets.add(
                StoneSheet.of(
                        toy.stone,
                        ToyPlan.findings(),
                        List.of(
                                new LoadStrip.Note(0, 0, "road", false),
                                new LoadStrip.Note(90, 110, "no tipping: wire", true)),
                        List.of(Saying.plain("the wire: raise no bed there")),
                        toy.design.length(),
                        "dollars",
                        ALSO,
                        units,
                        say(
                                units,
                                "{} in {} loads.",
                                Quantity.mass(toy.stone.toOrder()),
                                Quantity.count(toy.stone.loadsToOrder()))));
        sheets.add(
                LandSheet.of(
                        toy.survey,
                        toy.ground,
                        beside,
                        toy.water,
                        heaps(toy).heaps(),
                        List.of(
                                new LandSheet.Thing(
                                        Role.HAZARD,
                                        "wire, lowest 18 ft up",
                                        new double[] {120, 190},
                                        new double[] {90, 10},
                                        false),
                                new LandSheet.Thing(
                                        Role.TICK,
                                        "benchmark: nail in oak",
                                        new double[] {20},
                                        new double[] {40},
                                        false)),
                        ToyPlan.findings(),
                        units,
                        say(
                                units,
                                "{} long, with two bends, the tightest {}.",
                                Quantity.length(toy.design.length()),
                                Quantity.length(40))));
        sheets.add(
                ProfileSheet.of(
                        toy.design.alignment(),
                        toy.design.profile(),
                        lane,
                        null,
                        say(
                                units,
                                "Steepest {} near {}.",
                                Quantity.grade(0.0783),
                                Quantity.station(180))));
        sheets.add(
                VolumeSheet.of(
                        earth(toy),
                        heaps(toy),
                        toy.volumes,
                        toy.sections.sections(),
                        true,
                        List.of(),
                        units,
                        say(
                                units,
                                "{} of topsoil off; {} dug, {} built up.",
                                Quantity.volume(toy.volumes.strip().corrected()),
                                Quantity.volume(toy.volumes.cut().corrected()),
                                Quantity.volume(toy.volumes.fill().corrected())),
                        null));
        var stakes =
                Stakes.of(
                        toy.sections,
                        toy.ground,
                        new Stakes.Levels("nail in oak", 127.31, 129.9, 20, 40),
                        0.9,
                        toy.stone);
        var facts = facts(toy);
        List<WorkStep> steps = WorkOrder.of(facts);
        sheets.add(
                OrderSheet.of(
                        List.of(
                                "The public road's owner: permit, sight distance, pipe and width.",
                                "The public marking service for buried lines."),
                        steps,
                        Cautions.of(facts, 0.43),
                        units,
                        say(units, "{} steps, water first.", Quantity.count(steps.size())),
                        null));
        sheets.add(
                StakeSheet.of(
                        stakes,
                        List.of(
                                SettingOut.first(
                                        toy.design.alignment(),
                                        toy.survey,
                                        units,
                                        stakes,
                                        toy.water)),
                        SettingOut.pipes(
                                toy.design.alignment(),
                                toy.survey,
                                units,
                                stakes,
                                toy.water,
                                toy.ground,
                                List.of()),
                        units,
                        "Two stakes at every section."));
        sheets.add(
                WaterSheet.of(
                        toy.water,
                        null,
                        List.of("how much it rains"),
                        PipeListings.fords(null, 1740, null),
                        units,
                        "Sits beside the lane in one place.",
                        null));
        sheets.add(
                SectionSheet.of(
                        lane,
                        station -> toy.design.at(station).typical(),
                        toy.design.interval(),
                        ShapeListings.stretches(toy.design),
                        "Crowned, with ditches where it is cut."));
        Sheet found = FindingsSheet.of(ToyPlan.findings(), units);
        sheets.add(found);
        var assumptions = new ArrayList<Assumption>(toy.stone.assumptions());
        Sheet rests = AssumptionsSheet.of(assumptions, units, found);
        sheets.add(rests);
        sheets.add(WordsSheet.of(units, rests));
        return Binder.bind(
                "Marrow Fold lane",
                "spring of 2031",
                index -> CoverSheet.of(cover(toy), index, units),
                sheets);
    }

    private static EarthworkReport earth(ToyPlan toy) {
        return EarthworkReport.of(toy.sections, toy.volumes, null, EarthOptions.USUAL);
    }

    private static HeapPlaces heaps(ToyPlan toy) {
        return HeapPlaces.of(
                toy.sections,
                toy.volumes.strip(),
                earth(toy).topsoil(),
                new HeapLand(toy.ground, null, toy.water, List.of(), List.of(), 0.9, List.of()));
    }

    private static WorkFacts facts(ToyPlan toy) {
        return new WorkFacts(
                toy.design.length(),
                3000,
                toy.volumes.strip().corrected(),
                true,
                heaps(toy),
                toy.volumes.cut().corrected(),
                toy.volumes.earthFill(),
                0.15,
                4.2,
                3,
                100,
                80,
                List.of(Saying.of("W1, {}: a pipe", Quantity.station(108))),
                1,
                List.of(),
                900,
                toy.stone.layers(),
                40,
                1500,
                true,
                true,
                List.of(Saying.plain("the wire: raise no bed there")),
                true);
    }

    private static CoverSheet.Content cover(ToyPlan toy) {
        var answers = new ArrayList<CoverSheet.Answer>();
        for (String question :
                List.of(
                        "Can I trust the ground?",
                        "Where does the lane run?",
                        "What grade does it take?",
                        "How is it shaped?",
                        "Where does water go?",
                        "How much topsoil and dirt?",
                        "How much stone?",
                        "What do I do, in what order?",
                        "What do I carry to the field?")) {
            answers.add(
                    new CoverSheet.Answer(
                            question,
                            Saying.of(
                                    "An answer with a number {} and a place {}, and some more words"
                                            + " so that it is likely to be broken into two lines",
                                    Quantity.length(12),
                                    Quantity.station(108)),
                            List.of(CoverSheet.Mark.values()).get(answers.size() % 3),
                            answers.size() % 2 == 0 ? "Volumes" : ""));
        }
        return new CoverSheet.Content(
                "Marrow Fold lane",
                Saying.of(
                        "A gravel lane {} long and {} wide, from the road to the house place.",
                        Quantity.length(toy.design.length()),
                        Quantity.length(3.66)),
                answers,
                StoneListings.order(toy.stone),
                ALSO,
                ToyPlan.findings().stream()
                        .filter(finding -> finding.level() != Finding.Level.NOTE)
                        .toList(),
                7,
                "Order of work");
    }

    private static String say(UnitSystem units, String pattern, Quantity... quantities) {
        return Saying.of(pattern, quantities).in(units);
    }
}
