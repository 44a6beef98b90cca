package lanewright.sheets.figure;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionLine;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Quantity;
import lanewright.measure.Words;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;

/**
 * The cross-sections: each shape once at its true proportions and with all its measures, then the
 * sections along the lane, all at one scale, with areas and the places where they meet the ground.
 */
public final class SectionSheet {

    private static final double GAP = 16;
    private static final double STRETCH = 2;

    /** Part of the sections that stand two in a row. */
    private static final double MOST = 0.93;

    /** If the widest is wider than most by less than this, it stands in a row with another too. */
    private static final double LITTLE = 1.3;

    /** No section is drawn higher than this, pt. */
    private static final double TALLEST = 230;

    /** Ground shown beyond the limits of work, m. */
    private static final double BESIDE = 0.6;

    /** Water that ends so near a section is shown in it if it reaches its height, m. */
    private static final double NEAR = 0.5;

    private final Unrolled lane;
    private final DoubleFunction<TypicalSection> typical;
    private final double interval;
    private final List<Section> drawn;
    private final List<Section> usual;
    private final Map<Section, AtSection> at = new HashMap<>();
    private final SectionPicture picture;
    private double across;
    private double stretch = STRETCH;

    private SectionSheet(Unrolled lane, DoubleFunction<TypicalSection> typical, double interval) {
        this.lane = lane;
        this.typical = typical;
        this.interval = interval;
        var choice = new SectionChoice(lane.sections(), typical, interval);
        drawn = choice.drawn();
        usual = choice.usual();
        picture = new SectionPicture(choice, typical, this::extent, this::at, lane.units());
        drawn.forEach(section -> at.put(section, besides(section)));
    }

    /**
     * The sheet.
     *
     * @param lane that is drawn
     * @param typical the shape that holds at a station, m
     * @param interval between sections that the plan asks for, m
     * @param shapes the shapes as rows
     * @param answer what the sheet opens with
     */
    public static Sheet of(
            Unrolled lane,
            DoubleFunction<TypicalSection> typical,
            double interval,
            Listing shapes,
            String answer) {
        return new SectionSheet(lane, typical, interval).sheet(shapes, answer);
    }

    private Sheet sheet(Listing shapes, String answer) {
        var flow =
                new Flow(
                        Paper.of(lane.units()),
                        lane.units(),
                        "Cross-sections",
                        "How is it shaped?",
                        answer);
        double wide = (flow.width() - GAP) / 2;
        fit(wide, flow.width());
        flow.table(shapes);
        var detail = new SectionDetail(typical, lane.units());
        for (Section section : usual) {
            detail.draw(flow, section, new AtSection(pools(section), List.of(), null));
        }
        flow.head("Sections along the lane");
        String says =
                "At the road, every "
                        + Quantity.length(interval).in(lane.units())
                        + ", and where a side changes; looking up-station, away from the road, with"
                        + " left on the left. Heights drawn "
                        + Words.fixed(stretch, 0)
                        + " times as large as widths. Out: from the lane's line to where the slope"
                        + " meets the ground, at the height beside it. Line: finished height at the"
                        + " lane's line. Dig, build up: there, topsoil off, to the underside of the"
                        + " stone. Lengths and heights in "
                        + Words.unit(Kind.HEIGHT, lane.units())
                        + ", areas in "
                        + Words.unit(Kind.AREA, lane.units())
                        + ".";
        flow.drawn(Gauge.of(Gauge.Use.STRETCH, says, stretch)).gap(4);
        int i = 0;
        while (i < drawn.size()) {
            boolean pair =
                    i + 1 < drawn.size()
                            && isNarrow(drawn.get(i), wide)
                            && isNarrow(drawn.get(i + 1), wide);
            row(flow, drawn.subList(i, i + (pair ? 2 : 1)), wide);
            i += pair ? 2 : 1;
        }
        return flow.sheet();
    }

    private AtSection at(Section section) {
        return at.getOrDefault(section, AtSection.NOTHING);
    }

    private AtSection besides(Section section) {
        List<PipeUnder> pipes =
                lane.pipes().stream()
                        .filter(pipe -> nearest(pipe.station()).equals(section))
                        .toList();
        RoadDitch road = lane.road();
        SectionLine ditch = road == null ? null : road.across();
        boolean here =
                road != null
                        && ditch != null
                        && ditch.size() > 1
                        && nearest(road.station()).equals(section);
        return new AtSection(pools(section), pipes, here ? ditch : null);
    }

    private List<StandingWater> pools(Section section) {
        return lane.pools().stream()
                .filter(
                        pool ->
                                section.station() >= pool.from() - NEAR
                                        && section.station() <= pool.to() + NEAR)
                .toList();
    }

    /** Of the sections that are drawn, the nearest to a station. */
    private Section nearest(double station) {
        return drawn.stream()
                .min(Comparator.comparingDouble(s -> Math.abs(s.station() - station)))
                .orElseThrow();
    }

    private Extent extent(Section section) {
        return Extent.of(section, BESIDE, at(section));
    }

    private SectionPicture.Size scale() {
        return new SectionPicture.Size(across, across * stretch);
    }

    private void row(Flow flow, List<Section> row, double column) {
        double tall = 0;
        for (Section section : row) {
            tall = Math.max(tall, height(section));
        }
        double wide = row.size() == 1 && !isNarrow(row.get(0), column) ? flow.width() : column;
        flow.figure(
                SectionPicture.WORDS + tall,
                (pen, box) -> {
                    for (int k = 0; k < row.size(); k++) {
                        double x = box.x() + k * (column + GAP);
                        picture.draw(
                                pen, row.get(k), new Box(x, box.y(), wide, box.height()), scale());
                    }
                });
    }

    private boolean isNarrow(Section section, double column) {
        return extent(section).width() * across <= column + 1e-6;
    }

    /**
     * One scale for all: as large as lets most sections stand two in a row, and the widest alone in
     * one.
     */
    private void fit(double column, double whole) {
        double[] widths = drawn.stream().mapToDouble(s -> extent(s).width()).sorted().toArray();
        double widest = widths[widths.length - 1];
        double most = widths[(int) (widths.length * MOST)];
        if (widest < most * LITTLE) {
            most = widest;
        }
        across = Math.min(column / most, whole / widest);
        double tallest = 0.1;
        for (Section section : drawn) {
            tallest = Math.max(tallest, extent(section).tall());
        }
        if (tallest * across * STRETCH > TALLEST) {
            stretch = 1;
            across = Math.min(across, TALLEST / tallest);
        }
    }

    private double height(Section section) {
        return extent(section).tall() * across * stretch + SectionPicture.ROOM;
    }
}
