package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.Ditch;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.Layer;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.Stretch;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;

/** The shape across, stretch by stretch, as rows. */
public final class ShapeListings {

    private ShapeListings() {}

    /** The typical sections in station order. */
    public static Listing stretches(LaneDesign design) {
        var rows = new ArrayList<List<Saying>>();
        for (Stretch<TypicalSection> stretch : design.typical()) {
            TypicalSection typical = stretch.value();
            rows.add(
                    List.of(
                            Listing.cell(Quantity.station(stretch.from())),
                            Listing.cell(Quantity.station(stretch.to())),
                            Listing.cell(Quantity.length(typical.width())),
                            fall(typical),
                            stone(typical),
                            side(typical.left()),
                            side(typical.right()),
                            soil(typical)));
        }
        return new Listing(
                "shapes",
                "Shape across",
                List.of(
                        Column.of("From", Kind.STATION),
                        Column.of("To", Kind.STATION),
                        Column.of("Width", Kind.LENGTH),
                        Column.words("Falls"),
                        Column.words("Stone, from the top down"),
                        Column.words("Left side"),
                        Column.words("Right side"),
                        Column.words("Topsoil")),
                rows,
                0);
    }

    private static Saying fall(TypicalSection typical) {
        String way =
                switch (typical.fall()) {
                    case CROWN -> "{} to both sides";
                    case SHED_LEFT -> "{} to the left";
                    case SHED_RIGHT -> "{} to the right";
                };
        return Saying.of(way, Quantity.grade(typical.crossSlope()));
    }

    private static Saying stone(TypicalSection typical) {
        var pattern = new StringBuilder(typical.bed() == Bed.ON_TOP ? "on top: " : "boxed: ");
        var depths = new ArrayList<Quantity>();
        for (Layer layer : typical.layers()) {
            pattern.append(depths.isEmpty() ? "" : ", ").append("{} ").append(layer.role());
            depths.add(Quantity.depth(layer.thickness()));
        }
        if (depths.isEmpty()) {
            return Listing.cell("none");
        }
        return new Saying(pattern.toString(), depths);
    }

    private static Saying side(SideShape side) {
        var pattern = new StringBuilder("shoulder {}, foreslope {}");
        var quantities = new ArrayList<Quantity>();
        quantities.add(Quantity.length(side.shoulder()));
        quantities.add(Quantity.sideSlope(side.foreslope()));
        Ditch ditch = side.ditch();
        if (ditch.rule() == DitchRule.NEVER) {
            pattern.append(", no ditch; cut slope {}");
            quantities.add(Quantity.sideSlope(side.cutSlope()));
        } else {
            pattern.append(
                    ditch.rule() == DitchRule.ALWAYS
                            ? ", ditch {} deep"
                            : ", in cut a ditch {} deep");
            quantities.add(Quantity.depth(ditch.depth()));
            if (ditch.bottom() > 0) {
                pattern.append(" with {} flat bottom");
                quantities.add(Quantity.length(ditch.bottom()));
            }
            pattern.append(", backslope {}");
            quantities.add(Quantity.sideSlope(side.backslope()));
        }
        return new Saying(pattern.toString(), quantities);
    }

    private static Saying soil(TypicalSection typical) {
        String strip = typical.strip() ? "stripped" : "not stripped, built up on top";
        return typical.topsoilBack() > 0
                ? Saying.of(strip + "; {} back on slopes", Quantity.depth(typical.topsoilBack()))
                : Listing.cell(strip + "; none put back");
    }
}
