package lanewright.planner.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lanewright.drainage.WaterReport;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.Side;
import lanewright.drainage.storm.StormReport;
import lanewright.earthwork.Balance;
import lanewright.earthwork.EarthworkReport;
import lanewright.earthwork.Hauled;
import lanewright.lane.line.Arc;
import lanewright.lane.line.Profile;
import lanewright.lane.section.SectionSet;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.TypicalSection;
import lanewright.lane.volume.LaneVolumes;
import lanewright.lane.volume.State;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.planner.listing.DigListings;
import lanewright.planner.listing.LaneDrainageListings;
import lanewright.planner.pipes.PipeJob;
import lanewright.planner.proposal.Steepest;
import lanewright.planner.work.Stakes;
import lanewright.planner.work.WorkStep;
import lanewright.stone.LayerStone;
import lanewright.stone.StoneReport;
import lanewright.survey.Survey;
import org.jspecify.annotations.Nullable;

/** The owner's questions, each answered in a line with a number and a place. */
final class Answers {

    private final List<Finding> findings;
    private final List<Answer> answers = new ArrayList<>();

    private Answers(List<Finding> findings) {
        this.findings = findings;
    }

    static List<Answer> of(
            List<Finding> findings,
            Survey survey,
            LaneDesign design,
            boolean proposed,
            SectionSet sections,
            LaneVolumes volumes,
            EarthworkReport earth,
            WaterReport water,
            @Nullable StormReport storm,
            List<PipeJob> pipes,
            StoneReport stone,
            String money,
            List<WorkStep> order,
            Stakes stakes) {
        var made = new Answers(findings);
        made.add(Topic.GROUND, "Can I trust the ground?", made.ground(survey));
        made.add(Topic.LINE, "Where does the lane run?", line(design));
        made.add(Topic.GRADE, "What grade does it take?", made.grade(design.profile(), proposed));
        made.add(Topic.SHAPE, "How is it shaped?", shape(design));
        made.add(Topic.WATER, "Where does water go?", water(water, storm));
        made.add(Topic.EARTH, "How much topsoil and dirt?", made.earth(sections, volumes, earth));
        made.add(Topic.STONE, "How much stone?", withPipes(stone(stone, money), pipes, money));
        made.add(Topic.ORDER, "What do I do, in what order?", order(order));
        made.add(Topic.FIELD, "What do I carry to the field?", field(stakes));
        return made.answers;
    }

    /** The answers that need neither water nor stakes, in the same order. */
    static List<Answer> rough(
            List<Finding> findings,
            Survey survey,
            LaneDesign design,
            boolean proposed,
            SectionSet sections,
            LaneVolumes volumes,
            EarthworkReport earth,
            StoneReport stone,
            String money) {
        var made = new Answers(findings);
        made.add(Topic.GROUND, "Can I trust the ground?", made.ground(survey));
        made.add(Topic.LINE, "Where does the lane run?", line(design));
        made.add(Topic.GRADE, "What grade does it take?", made.grade(design.profile(), proposed));
        made.add(Topic.SHAPE, "How is it shaped?", shape(design));
        made.add(Topic.EARTH, "How much topsoil and dirt?", made.earth(sections, volumes, earth));
        made.add(Topic.STONE, "How much stone?", stone(stone, money));
        return made.answers;
    }

    /** An answer; marked as one to look at where a finding of its topic says what to look at. */
    private void add(Topic topic, String question, Saying says) {
        boolean look =
                findings.stream()
                        .anyMatch(each -> each.topic() == topic && each.level() != Level.NOTE);
        answers.add(
                new Answer(topic, question, says, look ? Answer.Mark.LOOK : Answer.Mark.ANSWERED));
    }

    private Saying ground(Survey survey) {
        long look =
                findings.stream()
                        .filter(each -> each.topic() == Topic.GROUND && each.level() != Level.NOTE)
                        .count();
        String rest =
                look == 0
                        ? "; they passed every check."
                        : look == 1 ? "; one thing to look at." : "; {} things to look at.";
        String pattern =
                "{} "
                        + Saying.number(survey.size(), "point", "points")
                        + (survey.probes().isEmpty() ? " and {} measured " : ", {} measured ")
                        + Saying.number(survey.lines().size(), "line", "lines")
                        + holes(survey)
                        + rest;
        List<Quantity> quantities = new ArrayList<>();
        quantities.add(Quantity.count(survey.size()));
        quantities.add(Quantity.count(survey.lines().size()));
        if (!survey.probes().isEmpty()) {
            quantities.add(Quantity.count(survey.probes().size()));
        }
        if (look > 1) {
            quantities.add(Quantity.count((double) look));
        }
        return new Saying(pattern, quantities);
    }

    private static String holes(Survey survey) {
        int holes = survey.probes().size();
        return holes == 0
                ? ", but no probe hole: nobody looked under the grass"
                : " and {} probe " + Saying.number(holes, "hole", "holes");
    }

    private static Saying line(LaneDesign design) {
        double tightest = Double.POSITIVE_INFINITY;
        double at = 0;
        for (Arc arc : design.alignment().arcs()) {
            if (arc.radius() < tightest) {
                tightest = arc.radius();
                at = arc.from();
            }
        }
        if (Double.isInfinite(tightest)) {
            return Saying.of(
                    "{} from the road to the far end, without a curve.",
                    Quantity.length(design.length()));
        }
        return Saying.of(
                "{} from the road to the far end; tightest curve {}, at {}.",
                Quantity.length(design.length()),
                Quantity.length(tightest),
                Quantity.station(at));
    }

    /** The steepest grade, uphill or down, and where it is. */
    private Saying grade(Profile profile, boolean proposed) {
        Steepest steepest = Steepest.of(profile);
        Quantity allowed = null;
        for (Finding each : findings) {
            allowed = each.code().equals(OwnGrade.STEEP) ? each.limit() : allowed;
        }
        List<Quantity> quantities = new ArrayList<>();
        quantities.add(Quantity.grade(Math.abs(steepest.grade())));
        quantities.add(Quantity.station(steepest.station()));
        if (allowed != null) {
            quantities.add(allowed);
        }
        quantities.add(Quantity.height(profile.height(profile.from())));
        quantities.add(Quantity.height(profile.height(profile.to())));
        return new Saying(
                "At most {}, "
                        + (steepest.grade() < 0 ? "downhill" : "uphill")
                        + " at {}"
                        + (allowed == null ? "" : ", {} allowed")
                        + "; it begins at {} and ends at {}."
                        + (proposed
                                ? " Proposed by this program: agree on it before building."
                                : ""),
                quantities);
    }

    private static Saying shape(LaneDesign design) {
        TypicalSection first = design.typical().get(0).value();
        String fall =
                switch (first.fall()) {
                    case CROWN -> "falling {} to both sides";
                    case SHED_LEFT -> "falling {} to the left in one plane";
                    case SHED_RIGHT -> "falling {} to the right in one plane";
                };
        boolean more = design.typical().size() > 1;
        return Saying.of(
                "{} wide, "
                        + fall
                        + ", on {} of stone"
                        + (more ? "; other stretches have shapes of their own." : " all along."),
                Quantity.length(first.width()),
                Quantity.grade(first.crossSlope()),
                Quantity.depth(first.stoneThickness()));
    }

    /** So many wet places are named in the answer; the sheet names all. */
    private static final int NAMED = 6;

    private static Saying water(WaterReport water, @Nullable StormReport storm) {
        List<WetPlace> places = water.places();
        if (places.isEmpty()) {
            Saying counted = LaneDrainageListings.counted(water);
            return new Saying(
                    "No wet place: the lane holds no water back, its ditches run out, and no"
                            + " watercourse meets it. "
                            + counted.pattern(),
                    counted.quantities());
        }
        StringBuilder pattern =
                new StringBuilder("{} " + Saying.number(places.size(), "wet place", "wet places"));
        List<Quantity> quantities = new ArrayList<>();
        quantities.add(Quantity.count(places.size()));
        long settle = toSettle(places);
        if (settle > 0) {
            pattern.append(", {} to settle before building");
            quantities.add(Quantity.count((double) settle));
        }
        long served = places.stream().filter(WetPlace::isServed).count();
        if (served > 0) {
            pattern.append(", {} served by ")
                    .append(Saying.number((double) served, "a pipe", "pipes"))
                    .append(" of your plan");
            quantities.add(Quantity.count((double) served));
        }
        long small =
                storm == null
                        ? 0
                        : storm.sized().stream()
                                .filter(each -> each.crossing().isGiven() && !each.isEnough())
                                .count();
        if (small > 0) {
            pattern.append(", {} ")
                    .append(Saying.number((double) small, "pipe", "pipes"))
                    .append(" of your plan too small for its storm");
            quantities.add(Quantity.count((double) small));
        }
        String between = ": ";
        for (WetPlace place : places.subList(0, Math.min(NAMED, places.size()))) {
            Side side = place.side();
            pattern.append(between)
                    .append(place.name())
                    .append(' ')
                    .append(place.kind().words())
                    .append(Double.isNaN(place.station()) ? " past an end" : " at {}")
                    .append(side == null ? "" : " " + side.word());
            if (!Double.isNaN(place.station())) {
                quantities.add(Quantity.station(place.station()));
            }
            if (place.pool() != null) {
                pattern.append(", {} deep");
                quantities.add(Quantity.depth(place.depth()));
            }
            between = "; ";
        }
        if (places.size() > NAMED) {
            pattern.append("; and {} more");
            quantities.add(Quantity.count((double) places.size() - NAMED));
        }
        Saying counted = LaneDrainageListings.counted(water);
        quantities.addAll(counted.quantities());
        return new Saying(pattern.append(". ").append(counted.pattern()).toString(), quantities);
    }

    /** How many must be settled or nothing is built: those whose finding says stop. */
    private static long toSettle(List<WetPlace> places) {
        return places.stream().filter(WetPlace::isDam).count();
    }

    private Saying earth(SectionSet sections, LaneVolumes volumes, EarthworkReport earth) {
        Balance balance = earth.balance();
        var pattern =
                new StringBuilder("Strip ").append(least(isAtLeast())).append("{} of topsoil");
        var quantities = new ArrayList<Quantity>();
        quantities.add(Quantity.volume(volumes.strip().corrected()));
        Saying depth = DigListings.depth(sections.sections());
        pattern.append(depth.pattern());
        quantities.addAll(depth.quantities());
        pattern.append(". Dig {}, packing down to {}; the fill needs {}");
        quantities.add(Quantity.volume(balance.cut()));
        quantities.add(
                Quantity.volume(earth.soil().convert(balance.cut(), State.BANK, State.COMPACTED)));
        quantities.add(Quantity.volume(balance.fill()));
        if (balance.over() > 0) {
            pattern.append("; haul away or spread ");
            hauled(balance.haulAway(), pattern, quantities);
        } else if (balance.over() < 0) {
            pattern.append("; bring in ");
            hauled(balance.bringIn(), pattern, quantities);
        }
        pattern.append('.');
        if (earth.unfit().bank() > 0) {
            pattern.append(" Refill {} of soft soil dug out: ");
            quantities.add(Quantity.volume(earth.unfit().bank()));
            hauled(earth.refill(), pattern, quantities);
            pattern.append('.');
        }
        return new Saying(pattern.toString(), quantities);
    }

    /** So much loose, and its loads if they are known. */
    private static void hauled(Hauled hauled, StringBuilder pattern, List<Quantity> quantities) {
        pattern.append("{} loose");
        quantities.add(Quantity.volume(hauled.loose()));
        if (hauled.loads() > 0) {
            pattern.append(hauled.loads() == 1 ? " in {} load" : " in {} loads");
            quantities.add(Quantity.count(hauled.loads()));
        }
    }

    private boolean isAtLeast() {
        return DigListings.isAtLeast(findings);
    }

    private static String least(boolean atLeast) {
        return atLeast ? "at least " : "";
    }

    /** The same, and what the pipes of the plan cost beside the stone, if they have prices. */
    private static Saying withPipes(Saying stone, List<PipeJob> pipes, String money) {
        List<PipeJob> bought = pipes.stream().filter(job -> job.planned() && job.fits()).toList();
        double paid = bought.stream().mapToDouble(PipeJob::priced).sum();
        if (!(paid > 0)) {
            return stone;
        }
        boolean whole = bought.stream().noneMatch(job -> Double.isNaN(job.money()));
        var quantities = new ArrayList<>(stone.quantities());
        quantities.add(Quantity.money(paid));
        return new Saying(
                stone.pattern()
                        + " Besides, "
                        + Saying.number(bought.size(), "a pipe", "pipes")
                        + " under the lane, dug in and with stone: {}"
                        + brace(money)
                        + (whole ? "." : " without what has no price."),
                quantities);
    }

    private static Saying stone(StoneReport stone, String money) {
        var quantities = new ArrayList<Quantity>();
        var pattern = new StringBuilder();
        if (stone.loadsToOrder() > 0) {
            pattern.append("Order {} in {} ")
                    .append(Saying.number(stone.loadsToOrder(), "load", "loads"));
            quantities.add(Quantity.mass(stone.toOrder()));
            quantities.add(Quantity.count(stone.loadsToOrder()));
            if (Double.isNaN(stone.cost())) {
                pattern.append(", cost not known without prices");
            } else {
                pattern.append(", to pay {}").append(brace(money));
                quantities.add(Quantity.money(stone.cost()));
            }
            pattern.append(": ");
        } else {
            pattern.append("Nothing to order: ");
        }
        String between = "";
        for (LayerStone layer : stone.layers()) {
            pattern.append(between);
            stone(layer, pattern, quantities);
            between = "; ";
        }
        return new Saying(pattern.append('.').toString(), quantities);
    }

    /** What to order of a layer, and in brackets what is needed and what is in hand. */
    private static void stone(LayerStone layer, StringBuilder pattern, List<Quantity> quantities) {
        String role = brace(layer.supply().role());
        if (layer.loadsToOrder() > 0) {
            pattern.append("{} of ").append(role).append(" in {} ({} needed");
            quantities.add(Quantity.mass(layer.toOrder()));
            quantities.add(Quantity.count(layer.loadsToOrder()));
        } else {
            pattern.append("no ").append(role).append(" ({} needed");
        }
        quantities.add(Quantity.mass(layer.needed()));
        LayerStone.Reach reach = layer.reach();
        if (reach != null && reach.mass() > 0) {
            pattern.append(", {} in hand to ").append(reach.shortBy() > 0 ? "{}" : "the end, {}");
            quantities.add(Quantity.mass(reach.mass()));
            quantities.add(Quantity.station(reach.station()));
        }
        pattern.append(')');
    }

    /** An owner's word, which must not be taken for a gap. */
    private static String brace(String word) {
        return word.replace("{}", "{ }");
    }

    private static Saying order(List<WorkStep> order) {
        return Saying.of(
                "{} steps; first: " + brace(lower(order.get(0).title())) + ".",
                Quantity.count(order.size()));
    }

    private static String lower(String title) {
        return title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
    }

    private static Saying field(Stakes stakes) {
        String benchmark = stakes.benchmark();
        return Saying.of(
                "{} stakes and {} load marks; "
                        + (benchmark == null
                                ? "no heights, since no benchmark is named."
                                : "all heights from " + brace(benchmark) + "."),
                Quantity.count(stakes.stakes().size() + stakes.marks().size()),
                Quantity.count(stakes.loads().size()));
    }

    /** One sentence about the whole. */
    static Saying headline(
            LaneDesign design,
            LaneVolumes volumes,
            WaterReport water,
            StoneReport stone,
            boolean atLeast) {
        int wet = water.places().size();
        var pattern = new StringBuilder("{} of lane");
        var quantities = new ArrayList<Quantity>();
        quantities.add(Quantity.length(design.length()));
        pattern.append(", {} of stone to order in {} ")
                .append(Saying.number(stone.loadsToOrder(), "load", "loads"));
        quantities.add(Quantity.mass(stone.toOrder()));
        quantities.add(Quantity.count(stone.loadsToOrder()));
        pattern.append(", ").append(least(atLeast)).append("{} of topsoil to strip, and ");
        quantities.add(Quantity.volume(volumes.strip().corrected()));
        pattern.append("{} ").append(Saying.number(wet, "wet place", "wet places"));
        quantities.add(Quantity.count(wet));
        long settle = toSettle(water.places());
        if (settle > 0) {
            pattern.append(", {} to settle before building");
            quantities.add(Quantity.count((double) settle));
        }
        pattern.append('.');
        return new Saying(pattern.toString(), quantities);
    }
}
