package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Profile;
import lanewright.measure.Listing;
import lanewright.measure.Words;
import lanewright.planner.listing.GradeListings;
import lanewright.planner.proposal.GradeProposal;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.figure.Legend;
import lanewright.sheets.figure.ProfileDrawing;
import lanewright.sheets.figure.Unrolled;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;
import lanewright.sheets.page.Type;
import org.jspecify.annotations.Nullable;

/**
 * The lane unrolled, in as many drawings as its length asks for, and its grade points in figures.
 */
final class ProfileSheet {

    /** Longest stretch in one drawing, m: beyond it the figures below would run together. */
    private static final double LONGEST = 400;

    private ProfileSheet() {}

    static Sheet of(
            Alignment alignment,
            Profile profile,
            Unrolled lane,
            @Nullable GradeProposal laid,
            String answer) {
        var flow =
                new Flow(
                        Paper.of(lane.units()).lying(),
                        lane.units(),
                        "Profile",
                        "What grade does it take?",
                        answer);
        String signs = lane.reliefs().isEmpty() ? "" : Told.RELIEF_SIGNS;
        double length = lane.sections().get(lane.sections().size() - 1).station();
        for (double[] stretch : ProfileDrawing.stretches(length, LONGEST)) {
            var drawing = new ProfileDrawing(lane, stretch[0], stretch[1]);
            flow.rest(
                    330,
                    (pen, box) -> {
                        double legend = signs.isEmpty() ? 46 : 56;
                        var plot = new Box(box.x(), box.y(), box.width(), box.height() - legend);
                        Set<Role> drawn = drawing.draw(pen, plot);
                        List<Role> shown = SHOWN.stream().filter(drawn::contains).toList();
                        double used =
                                Legend.draw(pen, box.x(), plot.bottom() + 4, box.width(), shown);
                        note(
                                pen,
                                box,
                                plot.bottom() + 4 + used,
                                drawing.stretch(plot.width(), plot.height()),
                                signs);
                    });
        }
        var tables = new ArrayList<Listing>();
        tables.add(GradeListings.points(profile));
        if (laid != null) {
            tables.add(GradeListings.reasons(laid));
        }
        if (!alignment.arcs().isEmpty()) {
            tables.add(GradeListings.bends(alignment));
        }
        flow.tables(tables);
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
                    Role.WATER,
                    Role.BARREL);

    private static void note(Pen pen, Box box, double top, double stretch, String signs) {
        String words =
                "Along the lane's line, from the road on; heights drawn "
                        + Words.fixed(stretch, 0)
                        + " times as large as lengths. Cut and fill are what lies at the line: banks"
                        + " and ditches beside it are dug besides. Numbered diamonds: where the"
                        + " grade changes, in the table that follows; a grade with a minus runs"
                        + " downhill as you walk in."
                        + signs;
        pen.paragraph(
                Gauge.of(Gauge.Use.STRETCH, words, stretch),
                Type.lines(words, Type.NOTE, false, box.width()),
                box.x(),
                top + Type.NOTE,
                Type.NOTE);
    }
}
