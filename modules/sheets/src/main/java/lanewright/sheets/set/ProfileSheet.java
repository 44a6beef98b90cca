package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import lanewright.drainage.Pool;
import lanewright.drainage.WaterReport;
import lanewright.drainage.WetPlace;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Profile;
import lanewright.lane.section.Section;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.listing.GradeListings;
import lanewright.planner.listing.WaterListings;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.figure.LandDrawing;
import lanewright.sheets.figure.ProfileDrawing;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;
import lanewright.sheets.page.Type;

/**
 * The lane unrolled, in as many drawings as its length asks for, and its grade points in figures.
 */
final class ProfileSheet {

    /** Longest stretch in one drawing, m: beyond it the figures below would run together. */
    private static final double LONGEST = 400;

    /** Water this far from the lane's limits is not the lane's, m. */
    private static final double NEAR = 3;

    private ProfileSheet() {}

    static Sheet of(
            Alignment alignment,
            Profile profile,
            List<Section> sections,
            WaterReport water,
            UnitSystem units,
            String answer) {
        var flow =
                new Flow(
                        Paper.of(units).lying(),
                        units,
                        "Profile",
                        "What grade does it take?",
                        answer);
        double length = sections.get(sections.size() - 1).station();
        List<ProfileDrawing.Pool> pools = pools(water, units);
        for (double[] stretch : ProfileDrawing.stretches(length, LONGEST)) {
            var drawing =
                    new ProfileDrawing(
                            sections, profile.points(), pools, units, stretch[0], stretch[1]);
            flow.rest(
                    330,
                    (pen, box) -> {
                        double legend = 46;
                        var plot = new Box(box.x(), box.y(), box.width(), box.height() - legend);
                        Set<Role> drawn = drawing.draw(pen, plot);
                        List<Role> shown = SHOWN.stream().filter(drawn::contains).toList();
                        double used =
                                LandDrawing.legend(
                                        pen, box.x(), plot.bottom() + 4, box.width(), shown);
                        note(
                                pen,
                                box,
                                plot.bottom() + 4 + used,
                                drawing.stretch(plot.width(), plot.height()));
                    });
        }
        flow.table(GradeListings.points(profile));
        if (!alignment.arcs().isEmpty()) {
            flow.table(GradeListings.bends(alignment));
        }
        if (!water.sags().isEmpty()) {
            flow.table(WaterListings.sags(water));
        }
        return flow.sheet();
    }

    private static final List<Role> SHOWN =
            List.of(
                    Role.FINISHED,
                    Role.SUBGRADE,
                    Role.GROUND_LINE,
                    Role.STRIPPED_LINE,
                    Role.DITCH_BOTH,
                    Role.DITCH_LEFT,
                    Role.DITCH_RIGHT,
                    Role.CUT,
                    Role.FILL,
                    Role.WATER);

    private static void note(Pen pen, Box box, double top, double stretch) {
        String words =
                "Along the lane's line, from the road on; heights drawn "
                        + Words.fixed(stretch, 0)
                        + " times as large as lengths. Cut and fill are what lies at the line: banks"
                        + " and ditches beside it are dug besides. Numbered diamonds: where the"
                        + " grade changes, in the table that follows; a grade with a minus runs"
                        + " downhill as you walk in.";
        pen.paragraph(
                Gauge.of(Gauge.Use.STRETCH, words, stretch),
                Type.lines(words, Type.NOTE, false, box.width()),
                box.x(),
                top + Type.NOTE,
                Type.NOTE);
    }

    /** Water that touches the lane's limits or nearly so. */
    static List<ProfileDrawing.Pool> pools(WaterReport water, UnitSystem units) {
        var pools = new ArrayList<ProfileDrawing.Pool>();
        for (Pool pool : water.after()) {
            Pool.Beside beside = pool.beside();
            WetPlace place = water.placeOf(pool);
            if (beside != null
                    && (beside.inLimits()
                            || (beside.leftmost() < NEAR && beside.rightmost() > -NEAR))) {
                pools.add(
                        new ProfileDrawing.Pool(
                                beside.from(),
                                beside.to(),
                                beside.leftmost(),
                                beside.rightmost(),
                                pool.spot().bottom(),
                                pool.spot().level(),
                                Words.of(Quantity.depth(pool.spot().depth()), units)
                                        + " of water, "
                                        + beside.side().word()
                                        + (place == null ? "" : " (" + place.name() + ")")));
            }
        }
        return together(pools);
    }

    /** Water that stands equally deep on both sides at one place is spoken of once. */
    private static List<ProfileDrawing.Pool> together(List<ProfileDrawing.Pool> pools) {
        var joined = new ArrayList<>(pools);
        for (int i = 0; i < joined.size(); i++) {
            for (int k = i + 1; k < joined.size(); k++) {
                ProfileDrawing.Pool a = joined.get(i);
                ProfileDrawing.Pool b = joined.get(k);
                boolean meet = a.from() <= b.to() && b.from() <= a.to();
                if (meet
                        && !deep(a).isEmpty()
                        && deep(a).equals(deep(b))
                        && !a.words().equals(b.words())) {
                    joined.set(i, a.saying(deep(a) + ", left and right" + names(a, b)));
                    joined.set(k, b.saying(""));
                }
            }
        }
        return joined;
    }

    /** The names of two wet places in brackets, or nothing where one has none. */
    private static String names(ProfileDrawing.Pool a, ProfileDrawing.Pool b) {
        int first = a.words().lastIndexOf(" (");
        int second = b.words().lastIndexOf(" (");
        return first < 0 || second < 0
                ? ""
                : a.words().substring(first, a.words().length() - 1)
                        + ", "
                        + b.words().substring(second + 2);
    }

    /** The words without the side. */
    private static String deep(ProfileDrawing.Pool pool) {
        int comma = pool.words().lastIndexOf(", ");
        return comma < 0 ? "" : pool.words().substring(0, comma);
    }
}
