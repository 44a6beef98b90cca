package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import lanewright.lane.volume.LaneVolumes;
import lanewright.lane.volume.Running;
import lanewright.lane.volume.State;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;

/** The volumes of a lane as rows. */
public final class VolumeListings {

    private VolumeListings() {}

    /**
     * All quantities of a lane that are volumes, earth first and then stone from the bottom up, as
     * it is laid.
     */
    public static List<Running> all(LaneVolumes volumes) {
        var all = new ArrayList<Running>();
        all.add(volumes.strip());
        all.add(volumes.cut());
        all.add(volumes.fill());
        all.add(volumes.edgeRefill());
        all.add(volumes.topsoilBack());
        all.add(volumes.undercut());
        all.add(volumes.refill());
        var stone = new ArrayList<Running>(volumes.stone());
        Collections.reverse(stone);
        all.addAll(stone);
        return all;
    }

    /** The state of a volume in words. */
    public static String state(State state) {
        return switch (state) {
            case BANK -> "as it lies (bank)";
            case COMPACTED -> "in place, compacted";
            case LOOSE -> "loose";
        };
    }

    /**
     * Running totals, curves corrected, at every section. Quantities that are nowhere are left out.
     */
    public static Listing running(LaneVolumes volumes) {
        List<Running> shown =
                all(volumes).stream().filter(running -> running.corrected() > 0).toList();
        var columns = new ArrayList<Column>();
        columns.add(Column.of("Station", Kind.STATION));
        for (Running running : shown) {
            columns.add(Column.of(running.name(), Kind.VOLUME));
        }
        var rows = new ArrayList<List<Saying>>();
        for (int i = 0; i < volumes.cut().size(); i++) {
            var row = new ArrayList<Saying>();
            row.add(Listing.cell(Quantity.station(volumes.cut().station(i))));
            for (Running running : shown) {
                row.add(Listing.cell(Quantity.volume(running.correctedTo(i))));
            }
            rows.add(row);
        }
        return new Listing(
                "running-volumes",
                "Running totals from the beginning of the lane",
                columns,
                rows,
                0);
    }
}
