package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Arc;
import lanewright.lane.line.Profile;
import lanewright.lane.line.VerticalPoint;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.planner.proposal.GradeProposal;

/** The lane's line and grade as rows. */
public final class GradeListings {

    private GradeListings() {}

    /** The points between grades, with the grade that leads to the next one. */
    public static Listing points(Profile profile) {
        var rows = new ArrayList<List<Saying>>();
        List<VerticalPoint> points = profile.points();
        for (int i = 0; i < points.size(); i++) {
            VerticalPoint point = points.get(i);
            Saying grade = Listing.BLANK;
            if (i + 1 < points.size()) {
                VerticalPoint next = points.get(i + 1);
                grade =
                        Listing.cell(
                                Quantity.grade(
                                        (next.height() - point.height())
                                                / (next.station() - point.station())));
            }
            rows.add(
                    List.of(
                            Listing.cell(Quantity.count(i + 1)),
                            Listing.cell(Quantity.station(point.station())),
                            Listing.cell(Quantity.height(point.height())),
                            Listing.cell(Quantity.height(profile.height(point.station()))),
                            point.curve() > 0
                                    ? Listing.cell(Quantity.length(point.curve()))
                                    : Listing.BLANK,
                            grade));
        }
        return new Listing(
                "grade-points",
                "Points between grades",
                List.of(
                        Column.of("No.", Kind.COUNT),
                        Column.of("Station", Kind.STATION),
                        Column.of("Grades meet at", Kind.HEIGHT),
                        Column.of("Finished height", Kind.HEIGHT),
                        Column.of("Curve", Kind.LENGTH),
                        Column.of("Grade to the next", Kind.GRADE)),
                rows,
                0);
    }

    /** Why a laid grade lies as it does, a sentence to a row. */
    public static Listing reasons(GradeProposal laid) {
        var rows = new ArrayList<List<Saying>>();
        laid.reasons().forEach(reason -> rows.add(List.of(reason)));
        return new Listing(
                "grade-reasons",
                "Why the proposed grade lies so",
                List.of(Column.words("Why")),
                rows,
                0);
    }

    /** The bends of the line. */
    public static Listing bends(Alignment alignment) {
        var rows = new ArrayList<List<Saying>>();
        for (Arc arc : alignment.arcs()) {
            rows.add(
                    List.of(
                            Listing.cell(Quantity.station(arc.from())),
                            Listing.cell(Quantity.station(arc.to())),
                            Listing.cell(arc.deflection() > 0 ? "right" : "left"),
                            Listing.cell(Quantity.length(arc.radius())),
                            Listing.cell(
                                    Quantity.angle(
                                            StrictMath.toDegrees(Math.abs(arc.deflection()))))));
        }
        return new Listing(
                "bends",
                "Bends",
                List.of(
                        Column.of("From", Kind.STATION),
                        Column.of("To", Kind.STATION),
                        Column.words("Turns"),
                        Column.of("Radius", Kind.LENGTH),
                        Column.of("Turn", Kind.ANGLE)),
                rows,
                0);
    }
}
