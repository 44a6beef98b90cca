package lanewright.drainage.storm;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.channel.Lining;
import lanewright.drainage.runoff.Covers;
import lanewright.drainage.runoff.DesignRain;
import lanewright.measure.Assumption;
import lanewright.measure.Assumption.Mark;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;

/** What the answers about a storm rest on. */
final class StormAssumptions {

    private static final double MINUTE = 60;

    private StormAssumptions() {}

    /**
     * What they rest on.
     *
     * @param reliefs whether relief culverts are sized
     */
    static List<Assumption> of(StormAsked asked, boolean reliefs) {
        List<Assumption> all = new ArrayList<>();
        all.add(
                new Assumption(
                        "storm that pipes and ditches are to carry",
                        rain(asked),
                        Mark.YOURS,
                        "water.rain of your plan"));
        if (asked.lands().size() > 1) {
            all.add(new Assumption("land", lands(asked), Mark.YOURS, "water.rain of your plan"));
        }
        if (asked.table().isPresent()) {
            for (StormAsked.Land land : asked.lands()) {
                all.add(of(land, asked, Covers.coefficient(land.cover(), 0.1).assumption()));
            }
            all.add(ofLane(Covers.coefficient(asked.laneCover(), 0.1).assumption()));
            all.add(
                    new Assumption(
                            "flow at its height",
                            Saying.plain(
                                    "rational method; the coefficient by the slope of the longest"
                                            + " way, up to 1.25 times in a storm of 25 years and"
                                            + " rarer; rain that lasts as long as water gathers, at"
                                            + " least 5 minutes"),
                            Mark.PUBLISHED,
                            "Kuichling, 1889; ASCE and urban drainage manuals (from memory)"));
        } else {
            for (StormAsked.Land land : asked.lands()) {
                all.add(of(land, asked, Covers.curveNumber(land.cover()).assumption()));
            }
            all.add(ofLane(Covers.curveNumber(asked.laneCover()).assumption()));
            all.add(
                    new Assumption(
                            "flow at its height",
                            Saying.plain("graphical method, no ponds on the way"),
                            Mark.PUBLISHED,
                            "SCS, TR-55, 1986, chapter 4 and appendix F (from memory)"));
        }
        all.add(
                new Assumption(
                        "time in which water gathers",
                        Saying.plain(
                                "along its longest way, over grass; down a ditch at its own speed"),
                        Mark.PUBLISHED,
                        "Kirpich, after TxDOT, Hydraulic Design Manual, 2016, chapter 4"));
        all.add(
                new Assumption(
                        "what a ditch carries",
                        Saying.of(
                                "lane, slopes and land that drain through the foot of each reach;"
                                        + " a reach is up to 60 m long and of about one grade;"
                                        + " {} left between the water and the lane",
                                Quantity.depth(SizedReach.ROOM)),
                        Mark.PUBLISHED,
                        "FHWA, HEC-15, Design of Roadside Channels with Flexible Linings, 2005"
                                + " (from memory); the reaches are our choice"));
        all.add(
                new Assumption(
                        "what a ditch bears",
                        Saying.plain(
                                "dug in "
                                        + asked.soil()
                                        + ", as what you say of washing has it; check dams up to a"
                                        + " foot high, at least 50 ft apart"),
                        Mark.PUBLISHED,
                        Lining.named(asked.soil()).source()));
        all.add(
                new Assumption(
                        "what a pipe carries",
                        Saying.of(
                                "ends that stick out of the fill unless your plan makes them"
                                        + " otherwise, free outlet unless a pool or ditch stands below it, water kept {} below the lane's edge;"
                                        + " a pipe of the plan as corrugated metal unless it says"
                                        + " otherwise",
                                Quantity.depth(StormReport.FREEBOARD)),
                        Mark.PUBLISHED,
                        "FHWA, HDS-5, Hydraulic Design of Highway Culverts, 2001; the room below"
                                + " the edge is our choice"));
        if (reliefs) {
            all.add(
                    new Assumption(
                            "what a relief culvert carries",
                            Saying.of(
                                    "what gathers in the ditch below the proposal above it, and"
                                            + " what others lead into that ditch; out of"
                                            + " a basin deeper than the ditch where no pipe has"
                                            + " room higher; water may stand up to the brim of the"
                                            + " ditch, dammed below the inlet, and no nearer than"
                                            + " {} to the lane's edge; ends that stick out of the"
                                            + " slopes",
                                    Quantity.depth(StormReport.FREEBOARD)),
                            Mark.COMMON_PRACTICE,
                            "common practice, no source"));
        }
        return all;
    }

    /** The same under a name of its own where there are several lands. */
    private static Assumption of(StormAsked.Land land, StormAsked asked, Assumption found) {
        return asked.lands().size() == 1
                ? found
                : named(
                        found,
                        found.name()
                                + ": "
                                + land.cover().name()
                                + ", soil "
                                + land.cover().group());
    }

    private static Assumption ofLane(Assumption found) {
        return named(found, found.name() + " the lane, into its ditches");
    }

    private static Assumption named(Assumption found, String name) {
        return new Assumption(name, found.value(), found.mark(), found.source());
    }

    /** The storm in words. */
    static Saying rain(StormAsked asked) {
        DesignRain table = asked.table().orElse(null);
        if (table != null) {
            return Saying.of(
                    "your table of rain from {} to {} minutes, one year in {}",
                    Quantity.count(table.shortest() / MINUTE),
                    Quantity.count(table.longestBurst() / MINUTE),
                    Quantity.count(asked.years()));
        }
        return asked.years() > 0
                ? Saying.of(
                        "{} of rain in a day, one year in {}, type " + asked.storm().words(),
                        Quantity.depth(asked.rain()),
                        Quantity.count(asked.years()))
                : Saying.of(
                        "{} of rain in a day, type " + asked.storm().words(),
                        Quantity.depth(asked.rain()));
    }

    /** The land in words. */
    static Saying lands(StormAsked asked) {
        var pattern = new StringBuilder();
        var shares = new ArrayList<Quantity>();
        for (StormAsked.Land land : asked.lands()) {
            boolean whole = asked.lands().size() == 1;
            pattern.append(pattern.length() == 0 ? "" : "; ")
                    .append(whole ? "" : "{} ")
                    .append(land.cover().name())
                    .append(" on soil of group ")
                    .append(land.cover().group());
            if (!whole) {
                shares.add(Quantity.share(land.share()));
            }
        }
        return new Saying(pattern.toString(), shares);
    }
}
