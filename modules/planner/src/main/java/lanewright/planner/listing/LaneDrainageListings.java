package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.LaneDrainage;
import lanewright.drainage.WaterReport;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.Descents.Descent;
import lanewright.drainage.along.DitchEnd;
import lanewright.drainage.along.FallAdvice;
import lanewright.drainage.along.NamedOutlet;
import lanewright.drainage.along.Relief;
import lanewright.drainage.along.Side;
import lanewright.lane.shape.CrossFall;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import org.jspecify.annotations.Nullable;

/** The lane's own drainage, as rows. */
public final class LaneDrainageListings {

    private LaneDrainageListings() {}

    /** Water down the lane and water across it, each place with its own cure. */
    public static Listing downAndAcross(WaterReport water) {
        var rows = new ArrayList<List<Saying>>();
        LaneDrainage drainage = water.drainage();
        for (Descent descent : drainage.down()) {
            List<Relief> own = reliefs(drainage, descent);
            Relief.Device device = own.isEmpty() ? Relief.Device.ROLLING_DIP : own.get(0).device();
            rows.add(
                    List.of(
                            Listing.cell("down the lane"),
                            Listing.cell(Quantity.station(descent.top())),
                            Listing.cell(Quantity.station(descent.foot())),
                            Saying.of(
                                    "{} at {}, steeper than the lane's fall across",
                                    Quantity.length(descent.length()),
                                    Quantity.grade(descent.grade())),
                            cure(own, device)));
        }
        for (WetPlace place : drainage.across()) {
            boolean lies = !Double.isNaN(place.station());
            List<Quantity> quantities = new ArrayList<>(place.brief().quantities());
            rows.add(
                    List.of(
                            Listing.cell("across the lane"),
                            lies ? Listing.cell(Quantity.station(place.from())) : Listing.BLANK,
                            lies ? Listing.cell(Quantity.station(place.to())) : Listing.BLANK,
                            Listing.cell(place.name() + ", " + place.kind().words()),
                            new Saying(place.brief().pattern(), quantities)));
        }
        return new Listing(
                "down-and-across",
                "Water down the lane and water across it",
                List.of(
                        Column.words("Which way"),
                        Column.of("From", Kind.STATION),
                        Column.of("To", Kind.STATION),
                        Column.words("What"),
                        Column.words("What to do")),
                rows,
                0);
    }

    /** The proposals along one way. */
    private static List<Relief> reliefs(LaneDrainage drainage, Descent descent) {
        double from = Math.min(descent.top(), descent.foot());
        double to = Math.max(descent.top(), descent.foot());
        return drainage.reliefs().stream()
                .filter(each -> each.way() == descent.way())
                .filter(each -> each.station() >= from && each.station() <= to)
                .toList();
    }

    private static Saying cure(List<Relief> reliefs, Relief.Device device) {
        var pattern =
                new StringBuilder(
                        reliefs.size() == 1 ? device.words() + " at " : device.words() + "s at ");
        List<Quantity> stations = new ArrayList<>();
        for (Relief relief : reliefs) {
            pattern.append(stations.isEmpty() ? "" : ", ").append("{}");
            stations.add(Quantity.station(relief.station()));
        }
        return new Saying(pattern.toString(), stations);
    }

    /** How often water runs down the lane too far, and how often it comes across, in a sentence. */
    public static Saying counted(WaterReport water) {
        LaneDrainage drainage = water.drainage();
        int down = drainage.down().size();
        int across = drainage.across().size();
        return Saying.of(
                "Down the lane: {} "
                        + Saying.number(down, "place", "places")
                        + ", across it: {} "
                        + Saying.number(across, "place", "places")
                        + ".",
                Quantity.count(down),
                Quantity.count(across));
    }

    /** What is proposed to lead water off the lane and out of its ditches. */
    public static Listing reliefs(WaterReport water) {
        var rows = new ArrayList<List<Saying>>();
        for (Relief relief : water.drainage().reliefs()) {
            rows.add(
                    List.of(
                            Listing.cell(Quantity.station(relief.station())),
                            Listing.cell(relief.device().words()),
                            Listing.cell(relief.sign()),
                            Listing.cell(from(relief)),
                            Listing.cell(word(relief.side())),
                            Listing.cell(Quantity.grade(relief.grade())),
                            Listing.cell(Quantity.length(relief.spacing())),
                            relief.why()));
        }
        return new Listing(
                "reliefs",
                "Where to lead water off: proposals",
                List.of(
                        Column.of("Station", Kind.STATION),
                        Column.words("What"),
                        Column.words("Sign"),
                        Column.words("Takes water from"),
                        Column.words("To the"),
                        Column.of("Falls", Kind.GRADE),
                        Column.of("At most apart", Kind.LENGTH),
                        Column.words("Why so")),
                rows,
                0);
    }

    private static String from(Relief relief) {
        return switch (relief.way()) {
            case LANE -> "the lane";
            case LEFT_DITCH -> "the left ditch";
            case RIGHT_DITCH -> "the right ditch";
        };
    }

    private static String word(@Nullable Side side) {
        return side == null ? "" : side.word();
    }

    /** Where the ditches end, and what the owner says of those places. */
    public static Listing ends(WaterReport water) {
        var rows = new ArrayList<List<Saying>>();
        for (DitchEnd end : water.drainage().ends()) {
            NamedOutlet named = end.named();
            rows.add(
                    List.of(
                            Listing.cell(end.side().word()),
                            Listing.cell(Quantity.station(end.outlet().station())),
                            Listing.cell(end.outlet().kind().words()),
                            Listing.cell(named == null ? "not named" : named.name()),
                            Listing.cell(
                                    named == null
                                            ? ""
                                            : switch (named.permitted()) {
                                                case YES -> "yes";
                                                case NO -> "no";
                                                case NOT_KNOWN -> "not known: ask";
                                            })));
        }
        return new Listing(
                "ditch-ends",
                "Where the ditches end",
                List.of(
                        Column.words("Ditch"),
                        Column.of("Ends at", Kind.STATION),
                        Column.words("Its water"),
                        Column.words("Outlet"),
                        Column.words("Permitted")),
                rows,
                0);
    }

    /** How the lane had better fall across. */
    public static Listing falls(WaterReport water) {
        var rows = new ArrayList<List<Saying>>();
        for (FallAdvice advice : water.drainage().falls()) {
            rows.add(
                    List.of(
                            Listing.cell(Quantity.station(advice.from())),
                            Listing.cell(Quantity.station(advice.to())),
                            Saying.of(
                                    "{} to the " + (advice.across() > 0 ? "right" : "left"),
                                    Quantity.grade(Math.abs(advice.across()))),
                            Listing.cell(Quantity.grade(advice.grade())),
                            Listing.cell(fall(advice.now())),
                            Listing.cell(
                                    advice.isChange() ? fall(advice.better()) : "as it is drawn"),
                            advice.why()));
        }
        return new Listing(
                "fall-across",
                "Which way the lane had better fall: proposals",
                List.of(
                        Column.of("From", Kind.STATION),
                        Column.of("To", Kind.STATION),
                        Column.words("The ground falls"),
                        Column.of("Lane, at most", Kind.GRADE),
                        Column.words("Now"),
                        Column.words("Better"),
                        Column.words("Why")),
                rows,
                0);
    }

    private static String fall(CrossFall fall) {
        return switch (fall) {
            case CROWN -> "crown";
            case SHED_LEFT -> "to the left";
            case SHED_RIGHT -> "to the right";
        };
    }
}
