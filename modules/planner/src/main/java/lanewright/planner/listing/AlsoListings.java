package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import lanewright.drainage.WaterReport;
import lanewright.drainage.along.Descents.Descent;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.Relief;
import lanewright.drainage.storm.SizedDitch;
import lanewright.drainage.storm.SizedReach;
import lanewright.drainage.storm.SizedRelief;
import lanewright.drainage.storm.StormReport;
import lanewright.earthwork.EarthworkReport;
import lanewright.lane.section.Section;
import lanewright.measure.Finding;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.planner.pipes.PipeJob;
import lanewright.planner.work.WorkStep;
import org.jspecify.annotations.Nullable;

/** What this plan needs besides the stone of its layers, and what no order of stone holds. */
public final class AlsoListings {

    /** Grades that differ by this little are one. */
    private static final double ROUNDING = 1e-9;

    private static final String CHECKS = "ditch-wants-checks";
    private static final String LINING = "ditch-wants-lining";

    private final List<List<Saying>> rows = new ArrayList<>();

    private AlsoListings() {}

    /**
     * The rows; none if nothing else is needed.
     *
     * @param findings that may ask for stone in ditches
     * @param order the steps of the work, which may lay fabric
     * @param earth the earth, in which soft soil may be refilled
     * @param sections in station order
     * @param water its ditches, and the ways that its water runs down
     * @param pipes pipes that the plan has to lay
     * @param money what stands after an amount of money
     * @param storm the storm in the ditches; null if the plan does not say how much it rains
     */
    public static Listing of(
            List<Finding> findings,
            List<WorkStep> order,
            EarthworkReport earth,
            List<Section> sections,
            WaterReport water,
            List<PipeJob> pipes,
            String money,
            @Nullable StormReport storm) {
        var made = new AlsoListings();
        made.rows.addAll(PipeListings.also(pipes, money));
        made.fabric(order, sections);
        made.refill(earth, sections);
        if (storm == null) {
            made.ditches(
                    findings, water, CHECKS, lined(findings), "Stone check dams, or thick grass");
            made.ditches(
                    findings, water, LINING, Double.POSITIVE_INFINITY, "Stone lining of the ditch");
        } else {
            made.linings(storm);
        }
        made.reliefs(water, storm, pipes);
        return new Listing(
                "also-needed",
                "Also needed, and not in the stone to order",
                List.of(
                        Column.words("What"),
                        Column.of("From", Kind.STATION),
                        Column.of("To", Kind.STATION),
                        Column.words("Side"),
                        Column.words("Amount")),
                made.rows,
                0);
    }

    private void row(String what, double from, double to, String side, Saying amount) {
        rows.add(
                List.of(
                        Listing.cell(what),
                        Listing.cell(Quantity.station(from)),
                        Listing.cell(Quantity.station(to)),
                        Listing.cell(side),
                        amount));
    }

    private void fabric(List<WorkStep> order, List<Section> sections) {
        for (WorkStep step : order) {
            if (step.name().equals("fabric")) {
                row(
                        "Fabric",
                        sections.get(0).station(),
                        sections.get(sections.size() - 1).station(),
                        "whole width",
                        WorkListings.joined(step.amounts()));
            }
        }
    }

    private void refill(EarthworkReport earth, List<Section> sections) {
        double from = Double.NaN;
        double to = Double.NaN;
        for (int i = 0; i < sections.size(); i++) {
            if (sections.get(i).areas().undercut().area() > 0) {
                // Half way to a section without soft soil there still is some.
                from = Double.isNaN(from) ? sections.get(Math.max(0, i - 1)).station() : from;
                to = sections.get(Math.min(sections.size() - 1, i + 1)).station();
            }
        }
        if (earth.refill().bank() > 0 && !Double.isNaN(from)) {
            row(
                    "Fit earth or stone where soft soil is dug out",
                    from,
                    to,
                    "whole width",
                    Saying.of(
                            "{} packed, {} loose",
                            Quantity.volume(earth.refill().compacted()),
                            Quantity.volume(earth.refill().loose())));
        }
    }

    /** A row for each stretch of each ditch that is too steep for bare soil. */
    private void ditches(
            List<Finding> findings, WaterReport water, String code, double most, String what) {
        var told = new ArrayList<Where>();
        for (Finding finding : findings) {
            Where where = finding.where();
            Double from = where.from();
            Double to = where.to();
            Quantity limit = finding.limit();
            if (!finding.code().equals(code) || from == null || to == null || limit == null) {
                continue;
            }
            // Ditches on both sides may be too steep on the same stretch, the left one told first.
            long before = told.stream().filter(where::equals).count();
            told.add(where);
            DitchReach ditch =
                    water.ditches().stream()
                            .filter(reach -> isRun(reach, from, to, limit.value(), most))
                            .sorted(Comparator.comparing(DitchReach::side))
                            .skip(before)
                            .findFirst()
                            .orElse(null);
            row(
                    what,
                    from,
                    to,
                    ditch == null ? "" : ditch.side().word(),
                    Saying.of(
                            "{} of ditch; stone to be measured",
                            Quantity.length(ditch == null ? to - from : along(ditch, from, to))));
        }
    }

    /** Length of a stretch of a ditch along itself, which in a bend is not that of the line, m. */
    private static double along(DitchReach ditch, double from, double to) {
        return ditch.legs().stream()
                .filter(leg -> leg.from() >= from && leg.to() <= to)
                .mapToDouble(DitchReach.Leg::length)
                .sum();
    }

    /** Whether legs of a ditch between two grades fill the stretch and do not go on beyond it. */
    private static boolean isRun(
            DitchReach ditch, double from, double to, double least, double most) {
        boolean begins = false;
        boolean ends = false;
        for (DitchReach.Leg leg : ditch.legs()) {
            double grade = Math.abs(leg.grade());
            boolean steep = grade > least + ROUNDING && grade <= most + ROUNDING;
            if (leg.to() <= from || leg.from() >= to) {
                if (steep && (leg.to() == from || leg.from() == to)) {
                    return false;
                }
            } else if (!steep) {
                return false;
            }
            begins |= leg.from() == from;
            ends |= leg.to() == to;
        }
        return begins && ends;
    }

    /** Grade from which a ditch is lined and not only checked, or none that is reached. */
    private static double lined(List<Finding> findings) {
        for (Finding finding : findings) {
            Quantity limit = finding.limit();
            if (finding.code().equals(LINING) && limit != null) {
                return limit.value();
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** A row for each stretch of each ditch that one lining holds. */
    private void linings(StormReport storm) {
        for (SizedDitch ditch : storm.ditches()) {
            linings(ditch, "Lining of the ditch", reach -> lining(reach));
        }
        for (SizedDitch ditch : storm.receiving()) {
            linings(
                    ditch,
                    "Lining of the ditch once relief culverts come out in it, in place of what it"
                            + " has",
                    reach -> {
                        String own = lining(reach);
                        String before =
                                storm.before(ditch, reach).map(AlsoListings::lining).orElse("");
                        return own.equals(before) || !storm.carriesMore(ditch, reach) ? "" : own;
                    });
        }
    }

    /** What a reach is lined with; empty if its bare soil holds. */
    private static String lining(SizedReach reach) {
        return reach.wantsLining()
                ? reach.steep().map(each -> each.lining().name()).orElse("")
                : "";
    }

    private void linings(SizedDitch ditch, String what, Function<SizedReach, String> lined) {
        String lining = "";
        double from = Double.NaN;
        double to = Double.NaN;
        double length = 0;
        for (SizedReach reach : ditch.reaches()) {
            String own = lined.apply(reach);
            if (!own.equals(lining) && !lining.isEmpty()) {
                lining(what, ditch, lining, from, to, length);
            }
            if (!own.equals(lining)) {
                lining = own;
                from = reach.from();
                length = 0;
            }
            to = reach.to();
            length += reach.length();
        }
        if (!lining.isEmpty()) {
            lining(what, ditch, lining, from, to, length);
        }
    }

    private void lining(
            String what, SizedDitch ditch, String lining, double from, double to, double length) {
        row(
                what,
                from,
                to,
                ditch.water().ditch().side().word(),
                Saying.of("{} of ditch: " + lining, Quantity.length(length)));
    }

    /** A row for each way down, of what leads its water off. */
    private void reliefs(WaterReport water, @Nullable StormReport storm, List<PipeJob> pipes) {
        for (Descent descent : water.descents()) {
            double from = Math.min(descent.top(), descent.foot());
            double to = Math.max(descent.top(), descent.foot());
            for (Relief.Device device : Relief.Device.values()) {
                List<Relief> own =
                        water.drainage().reliefs().stream()
                                .filter(each -> each.way() == descent.way())
                                .filter(each -> each.device() == device)
                                .filter(each -> each.station() >= from && each.station() <= to)
                                .toList();
                if (own.isEmpty() || device == Relief.Device.NONE) {
                    continue;
                }
                String side =
                        switch (descent.way()) {
                            case LANE -> "across";
                            case LEFT_DITCH -> "left";
                            case RIGHT_DITCH -> "right";
                        };
                Saying sizes = sizes(own, storm);
                List<Quantity> quantities = new ArrayList<>();
                quantities.add(Quantity.count(own.size()));
                quantities.add(Quantity.length(own.get(0).spacing()));
                quantities.addAll(sizes.quantities());
                double stone =
                        pipes.stream()
                                .filter(
                                        job ->
                                                own.stream()
                                                        .anyMatch(
                                                                each ->
                                                                        each.name()
                                                                                .equals(
                                                                                        job
                                                                                                .name())))
                                .mapToDouble(job -> job.works().stone())
                                .sum();
                if (stone > 0) {
                    quantities.add(Quantity.volume(stone));
                }
                row(
                        named(device),
                        from,
                        to,
                        side,
                        new Saying(
                                "{}, no farther apart than {}"
                                        + sizes.pattern()
                                        + (stone > 0
                                                ? "; {} of stone in basins and in dams below them"
                                                : ""),
                                quantities));
            }
        }
    }

    /** The least pipe of each relief culvert, where a storm says which. */
    private static Saying sizes(List<Relief> reliefs, @Nullable StormReport storm) {
        var pattern = new StringBuilder();
        List<Quantity> quantities = new ArrayList<>();
        for (SizedRelief each : storm == null ? List.<SizedRelief>of() : storm.reliefs()) {
            if (reliefs.contains(each.relief())) {
                Saying name = StormListings.leasts(each.sized());
                pattern.append("; ")
                        .append(each.relief().sign())
                        .append(" ")
                        .append(name.pattern());
                quantities.addAll(name.quantities());
            }
        }
        return new Saying(pattern.toString(), quantities);
    }

    private static String named(Relief.Device device) {
        return switch (device) {
            case ROLLING_DIP -> "Dips across the lane";
            case WATER_BAR -> "Water bars across the lane";
            case TURN_OUT -> "Turn-outs of the ditch";
            case RELIEF_PIPE -> "Relief culverts from the ditch";
            case NONE -> "Nothing";
        };
    }
}
