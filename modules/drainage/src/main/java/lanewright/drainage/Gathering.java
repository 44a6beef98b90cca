package lanewright.drainage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lanewright.drainage.flow.Cells;
import lanewright.drainage.flow.FlowGrid;

/**
 * Land whose water comes to places on the grid, each bit of land counted where its water first
 * meets one of them. Water that has been in a place and leaves it is not counted again.
 */
final class Gathering {

    /**
     * What comes to a place.
     *
     * @param area land whose water meets this place first, its own cells left out, m²
     * @param isLeast whether more may come from beyond the survey
     * @param way the longest way of that water
     */
    record Gathered(double area, boolean isLeast, FlowGrid.Way way) {}

    private final FlowGrid flow;
    private final Cells cells;
    private final int[] places;

    private Gathering(FlowGrid flow, int[] places) {
        this.flow = flow;
        cells = flow.cells();
        this.places = places;
    }

    /**
     * What comes to each place.
     *
     * @param places number of the place that each cell belongs to, or -1
     * @param count how many places there are
     */
    static List<Gathered> of(FlowGrid flow, int[] places, int count) {
        return new Gathering(flow, places).gathered(count);
    }

    private List<Gathered> gathered(int count) {
        int[] order = downhill();
        int[] land = new int[cells.count()];
        int[] head = new int[cells.count()];
        double[] length = new double[cells.count()];
        boolean[] rim = new boolean[cells.count()];
        boolean[] least = new boolean[cells.count()];
        Arrays.fill(head, -1);
        double[] area = new double[count];
        boolean[] more = new boolean[count];
        double[] longest = new double[count];
        double[] fall = new double[count];
        for (int cell : order) {
            int next = flow.next(cell);
            boolean own = flow.reachesRim(cell) && !rim[cell];
            if (next != FlowGrid.LEAVES) {
                rim[next] |= flow.reachesRim(cell);
            }
            if (places[cell] >= 0) {
                continue;
            }
            land[cell]++;
            least[cell] |= own;
            head[cell] = head[cell] < 0 ? cell : head[cell];
            if (next == FlowGrid.LEAVES) {
                continue;
            }
            double dx = cells.x(cell) - cells.x(next);
            double dy = cells.y(cell) - cells.y(next);
            double way = length[cell] + Math.sqrt(dx * dx + dy * dy);
            int place = places[next];
            if (place < 0) {
                land[next] += land[cell];
                least[next] |= least[cell];
                if (way > length[next]) {
                    length[next] = way;
                    head[next] = head[cell];
                }
                continue;
            }
            area[place] += land[cell] * cells.area();
            more[place] |= least[cell];
            if (way > longest[place]) {
                longest[place] = way;
                fall[place] = Math.max(0, flow.height(head[cell]) - flow.height(next));
            }
        }
        List<Gathered> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            all.add(new Gathered(area[i], more[i], new FlowGrid.Way(longest[i], fall[i])));
        }
        return all;
    }

    /** The cells of the land, each before the one that it drains to. */
    private int[] downhill() {
        int[] waits = new int[cells.count()];
        int count = 0;
        for (int cell = 0; cell < waits.length; cell++) {
            if (!Double.isNaN(flow.height(cell))) {
                count++;
                if (flow.next(cell) != FlowGrid.LEAVES) {
                    waits[flow.next(cell)]++;
                }
            }
        }
        int[] order = new int[count];
        int last = 0;
        for (int cell = 0; cell < waits.length; cell++) {
            if (waits[cell] == 0 && !Double.isNaN(flow.height(cell))) {
                order[last++] = cell;
            }
        }
        for (int i = 0; i < last; i++) {
            int next = flow.next(order[i]);
            if (next != FlowGrid.LEAVES && --waits[next] == 0) {
                order[last++] = next;
            }
        }
        return last == count ? order : Arrays.copyOf(order, last);
    }
}
