package lanewright.desktop.land;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import lanewright.desktop.session.Session;
import lanewright.desktop.session.WaterRow;
import lanewright.drainage.LandWater;
import lanewright.drainage.Pool;
import lanewright.drainage.WaterReport;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.DitchEnd;
import lanewright.drainage.along.NamedOutlet;
import lanewright.drainage.along.Relief;
import lanewright.drainage.flow.FlowPath;
import lanewright.drainage.pond.Trace;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.run.Outcome;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.figure.WaterSigns;
import org.jspecify.annotations.Nullable;

/** Puts water on the board: what it says, and which row of the card each of its signs opens. */
final class WaterMarks {

    private final Plates plates;
    private final View view;
    private final UnitSystem units;
    private final WaterReport water;
    private final Alignment line;
    private final boolean all;
    private final int step;
    private final List<Sign> signs = new ArrayList<>();
    private final List<Standing> pools = new ArrayList<>();

    private record Sign(Box box, Consumer<Session> opens) {}

    @SuppressWarnings("ArrayRecordComponent") // never compared, and made anew for each painting
    private record Standing(double[] xy, Consumer<Session> opens) {}

    /**
     * Water of an outcome.
     *
     * @param all whether hollows of the land that the lane leaves alone are told too, where water
     *     is led off, where ditches end, and the largest ways out over the boundary
     * @param step of the plan's rain after which it is told what stands, from 0; -1 for none
     */
    WaterMarks(Plates plates, View view, UnitSystem units, Outcome outcome, boolean all, int step) {
        this.plates = plates;
        this.view = view;
        this.units = units;
        this.water = outcome.water();
        this.line = outcome.design().alignment();
        this.all = all;
        this.step = step;
    }

    /** Water that sits, where it runs, and pipes. */
    void shapes() {
        for (Pool pool : water.gone()) {
            for (Trace ring : pool.spot().outline()) {
                plates.lines(Role.WATER_BEFORE, Plates.closed(traced(ring)));
            }
        }
        for (FlowPath path : water.pathsAfter()) {
            flow(traced(path.line()));
        }
        for (int i = 0; i < water.after().size(); i++) {
            for (Trace ring : water.after().get(i).spot().outline()) {
                double[] xy = traced(ring);
                plates.area(Role.WATER, xy);
                plates.lines(Role.WATER, Plates.closed(xy));
                if (all) {
                    pools.add(new Standing(xy, row(WaterRow.Group.HOLLOWS, i)));
                }
            }
        }
        for (var placed : water.pipes()) {
            var pipe = placed.pipe();
            plates.shapes()
                    .line(
                            Role.PIPE,
                            view.px(pipe.inletX()),
                            view.py(pipe.inletY()),
                            view.px(pipe.outletX()),
                            view.py(pipe.outletY()));
        }
        if (all) {
            water.drainage().reliefs().stream()
                    .filter(relief -> relief.device() != Relief.Device.NONE)
                    .forEach(this::sign);
            water.drainage().ends().forEach(this::sign);
        }
    }

    /** The wet places by name, how deep they are, and what stands there after a step of rain. */
    void places() {
        for (WetPlace place : water.places()) {
            String depth =
                    place.pool() == null
                            ? ""
                            : ": " + Words.of(Quantity.depth(place.depth()), units) + " deep";
            double x = view.px(place.x());
            double y = view.py(place.y());
            leads(
                    plates.label(
                            Role.WATER_TEXT,
                            with(place.name() + depth, after(place.pool())),
                            x,
                            y,
                            true),
                    opening(place));
        }
    }

    /** What a wet place opens: its row if there is one, else its finding. */
    private Consumer<Session> opening(WetPlace place) {
        int hollow = place.pool() == null ? -1 : water.after().indexOf(place.pool());
        if (hollow >= 0) {
            return row(WaterRow.Group.HOLLOWS, hollow);
        }
        int across = water.drainage().across().indexOf(place);
        return across >= 0
                ? row(WaterRow.Group.DOWN_AND_ACROSS, water.drainage().down().size() + across)
                : session -> session.pointTo(place.finding());
    }

    /** Where water is led off, where ditches end, the largest ways out, and hollows elsewhere. */
    void rest() {
        if (!all) {
            return;
        }
        List<Relief> reliefs = water.drainage().reliefs();
        for (int i = 0; i < reliefs.size(); i++) {
            if (reliefs.get(i).device() != Relief.Device.NONE) {
                words(reliefs.get(i), row(WaterRow.Group.RELIEFS, i));
            }
        }
        List<DitchEnd> ends = water.drainage().ends();
        for (int i = 0; i < ends.size(); i++) {
            words(ends.get(i), row(WaterRow.Group.DITCH_ENDS, i));
        }
        List<LandWater.WayOut> ways = water.land().waysOut();
        for (int i = 0; i < ways.size(); i++) {
            LandWater.WayOut out = ways.get(i);
            double x = view.px(out.x());
            double y = view.py(out.y());
            leads(
                    plates.label(Role.WATER_TEXT, out.name(), x, y, true),
                    row(WaterRow.Group.WAYS_OUT, i));
        }
        for (int i = 0; i < water.after().size(); i++) {
            Pool pool = water.after().get(i);
            if (water.places().stream().noneMatch(place -> pool.equals(place.pool()))) {
                leads(
                        plates.plate(
                                Role.WATER_TEXT,
                                with(
                                        Words.of(Quantity.depth(pool.spot().depth()), units)
                                                + " deep",
                                        after(pool)),
                                view.px(pool.spot().x()),
                                view.py(pool.spot().y()) + 4,
                                true),
                        row(WaterRow.Group.HOLLOWS, i));
            }
        }
    }

    private static Consumer<Session> row(WaterRow.Group group, int number) {
        return session -> session.pointTo(new WaterRow(group, number));
    }

    private void leads(@Nullable Box box, Consumer<Session> opens) {
        if (box != null) {
            signs.add(new Sign(box, opens));
        }
    }

    /** What the sign at a place of the board opens, or null if there is none. */
    @Nullable Consumer<Session> at(double x, double y) {
        for (Sign sign : signs) {
            if (sign.box().holds(x, y)) {
                return sign.opens();
            }
        }
        for (Standing pool : pools) {
            if (inside(pool.xy(), x, y)) {
                return pool.opens();
            }
        }
        return null;
    }

    /** Whether a place lies in a ring, by the number of its sides that a ray crosses. */
    private static boolean inside(double[] xy, double x, double y) {
        boolean in = false;
        int n = xy.length / 2;
        for (int i = 0; i < n; i++) {
            int k = (i + 1) % n;
            double ay = xy[2 * i + 1];
            double by = xy[2 * k + 1];
            if ((ay > y) != (by > y)
                    && x < xy[2 * i] + (y - ay) / (by - ay) * (xy[2 * k] - xy[2 * i])) {
                in = !in;
            }
        }
        return in;
    }

    /** What stands in a hollow after a step of the rain, in words; empty if that is not known. */
    private String after(@Nullable Pool pool) {
        int at = pool == null ? -1 : water.after().indexOf(pool);
        if (at < 0 || step < 0 || at >= water.land().spots().size()) {
            return "";
        }
        double stands = water.land().spots().get(at).depths().get(step);
        String name = water.land().steps().get(step).name();
        return stands > 0
                ? Words.of(Quantity.depth(stands), units) + " after " + name
                : "dry after " + name;
    }

    private static List<String> with(String words, String below) {
        return below.isEmpty() ? List.of(words) : List.of(words, below);
    }

    /** A proposal to lead water off. */
    private void sign(Relief relief) {
        Place from = WaterSigns.from(relief);
        Place to = WaterSigns.to(relief);
        if (view.sees(line.x(to), line.y(to))) {
            plates.keepFree(own(view.px(line.x(to)), view.py(line.y(to))));
            WaterSigns.along(
                    plates.shapes(),
                    WaterSigns.role(relief.device()),
                    Outline.open(
                            view.px(line.x(from)),
                            view.py(line.y(from)),
                            view.px(line.x(to)),
                            view.py(line.y(to))));
        }
    }

    /** Its letters and its station, or the letters alone. */
    private void words(Relief relief, Consumer<Session> opens) {
        Place to = WaterSigns.to(relief);
        double x = view.px(line.x(to));
        double y = view.py(line.y(to));
        String sign = relief.sign();
        String station = Words.fine(Quantity.station(relief.station()), units);
        Box box = plates.beside(Role.WATER_TEXT, sign + " " + station, x, y);
        leads(box == null ? plates.beside(Role.WATER_TEXT, sign, x, y) : box, opens);
        leads(own(x, y), opens);
    }

    /** The sign of something at a place. */
    private static Box own(double x, double y) {
        return new Box(x - 6, y - 6, 12, 12);
    }

    /** Where a ditch lets its water out. */
    private void sign(DitchEnd end) {
        if (view.sees(end.outlet().x(), end.outlet().y())) {
            double x = view.px(end.outlet().x());
            double y = view.py(end.outlet().y());
            WaterSigns.outlet(plates.shapes(), WaterSigns.role(end), x, y);
            plates.keepFree(own(x, y));
        }
    }

    /** What its owner calls the place. */
    private void words(DitchEnd end, Consumer<Session> opens) {
        double x = view.px(end.outlet().x());
        double y = view.py(end.outlet().y());
        NamedOutlet named = end.named();
        if (named != null) {
            leads(plates.beside(Role.WATER_TEXT, named.name(), x, y), opens);
        }
        leads(own(x, y), opens);
    }

    private void flow(double[] xy) {
        plates.lines(Role.FLOW, xy);
        int n = xy.length / 2;
        if (n < 2) {
            return;
        }
        int i = n / 2;
        double dx = xy[2 * i] - xy[2 * i - 2];
        double dy = xy[2 * i + 1] - xy[2 * i - 1];
        double length = Math.hypot(dx, dy);
        if (length > 0) {
            double ux = dx / length * 8;
            double uy = dy / length * 8;
            double x = xy[2 * i];
            double y = xy[2 * i + 1];
            plates.area(
                    Role.FLOW,
                    new double[] {
                        x,
                        y,
                        x - ux - uy * 0.45,
                        y - uy + ux * 0.45,
                        x - ux + uy * 0.45,
                        y - uy - ux * 0.45
                    });
        }
    }

    private double[] traced(Trace trace) {
        double[] xy = new double[2 * trace.size()];
        for (int i = 0; i < trace.size(); i++) {
            xy[2 * i] = view.px(trace.x(i));
            xy[2 * i + 1] = view.py(trace.y(i));
        }
        return xy;
    }
}
