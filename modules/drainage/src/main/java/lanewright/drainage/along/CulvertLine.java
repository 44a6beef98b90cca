package lanewright.drainage.along;

import java.util.function.DoubleFunction;
import lanewright.lane.line.Place;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;

/**
 * How long a pipe must be to pass under the lane, from the section where it lies.
 *
 * <p>The pipe runs straight, and square to the lane unless it is slanted, from where the foreslope
 * on the side that water comes from meets the invert line to where the other foreslope does. Its
 * invert lies at the low ground, or in the ditch, on either side: that is assumed here. What the
 * pipe must carry hangs on a storm, and its bedding is not worked out. A headwall shortens it, a
 * skew or a projecting end lengthens it.
 *
 * @param station of its inlet, m
 * @param outletStation of its outlet, m; the same where it lies square to the lane
 * @param from the side that water comes from
 * @param inlet where the invert line meets the foreslope on that side
 * @param outlet where it meets the foreslope on the other side
 * @param length along the invert, m
 * @param room least height of the edges of the travelled way above the invert, m: what the pipe and
 *     the earth over it must fit in
 */
public record CulvertLine(
        double station,
        double outletStation,
        Side from,
        Corner inlet,
        Corner outlet,
        double length,
        double room) {

    /** A fall less than this is none, m. Our choice: no survey of ground is surer. */
    private static final double LEVEL = 0.01;

    /** Heights and grades are compared to this, so that a limit itself is not under by rounding. */
    private static final double SAME = 1e-9;

    /** How much lower the outlet lies than the inlet, m, negative if it lies higher. */
    public double fall() {
        return inlet.height() - outlet.height();
    }

    /** Station where it crosses the lane's line, m. */
    public double crossing() {
        double share = inlet.offset() / (inlet.offset() - outlet.offset());
        return station + share * (outletStation - station);
    }

    /** Fall over length, negative if the outlet lies higher. */
    public double grade() {
        return fall() / length;
    }

    /** Whether the outlet lies lower than the inlet, by more than heights are known. */
    public boolean falls() {
        return fall() > LEVEL;
    }

    /** Whether it lies askew to the lane. */
    public boolean isSlanted() {
        return station != outletStation;
    }

    /** Whether it falls enough not to silt up. */
    public boolean fallsEnough(Limits limits) {
        return grade() >= limits.ditchLeast().value() - SAME;
    }

    /** Whether the smallest pipe and the earth over it have room under the lane's edges. */
    public boolean hasRoom(Limits limits) {
        return room >= limits.pipeRoom().value() - SAME;
    }

    /** Whether a pipe can be laid so as things are: it falls enough, and has room. */
    public boolean fits(Limits limits) {
        return fallsEnough(limits) && hasRoom(limits);
    }

    /**
     * The pipe under {@code section}.
     *
     * @param from the side that water comes from
     * @param lowest height of the lowest ground that must drain on that side, m
     * @param foreslopeFrom run over rise of the foreslope on that side
     * @param foreslopeTo run over rise of the foreslope on the other side
     */
    public static CulvertLine under(
            Section section, Side from, double lowest, double foreslopeFrom, double foreslopeTo) {
        SideResult up = from.of(section);
        SideResult down = from.across().of(section);
        Corner inlet = foot(up.hinge(), from, Math.min(lowest, bottom(up, lowest)), foreslopeFrom);
        double away = bottom(down, inlet.height());
        Corner outlet = foot(down.hinge(), from.across(), away, foreslopeTo);
        return between(section, from, inlet, outlet);
    }

    /** The pipe straight from an inlet to an outlet under {@code section}, square to the lane. */
    public static CulvertLine between(Section section, Side from, Corner inlet, Corner outlet) {
        return under(section, from, inlet, outlet, 0);
    }

    /**
     * This pipe under the same lane raised, its inlet and outlet as high as they are: it reaches
     * out to the feet of the higher slopes.
     *
     * @param section where it lies
     * @param by how much the lane is raised, m
     * @param foreslopeFrom run over rise of the foreslope on the side that water comes from
     * @param foreslopeTo run over rise of the foreslope on the other side
     */
    public CulvertLine raised(
            Section section, double by, double foreslopeFrom, double foreslopeTo) {
        return under(
                section,
                from,
                out(inlet, from, by * foreslopeFrom),
                out(outlet, from.across(), by * foreslopeTo),
                by);
    }

    /** This pipe with both its ends lower. */
    public CulvertLine lower(Section section, double inletBy, double outletBy) {
        return between(
                section,
                from,
                new Corner(inlet.offset(), inlet.height() - inletBy),
                new Corner(outlet.offset(), outlet.height() - outletBy));
    }

    private static CulvertLine under(
            Section section, Side from, Corner inlet, Corner outlet, double raised) {
        SideResult up = from.of(section);
        SideResult down = from.across().of(section);
        double length =
                Math.hypot(outlet.offset() - inlet.offset(), outlet.height() - inlet.height());
        double room =
                Math.min(above(up.edge(), inlet, outlet), above(down.edge(), inlet, outlet))
                        + raised;
        return new CulvertLine(
                section.station(), section.station(), from, inlet, outlet, length, room);
    }

    private static Corner out(Corner corner, Side side, double by) {
        return new Corner(corner.offset() + (side == Side.LEFT ? -by : by), corner.height());
    }

    /**
     * The pipe slanted from this one's inlet to lower ground farther along on the other side.
     *
     * @param line where the lane runs
     * @param outletStation of the outlet, m
     * @param outlet where it comes out
     * @param sectionAt the section at any station
     */
    public CulvertLine slanted(
            LaneLine line, double outletStation, Corner outlet, DoubleFunction<Section> sectionAt) {
        var in = new Place(station, inlet.offset());
        var at = new Place(outletStation, outlet.offset());
        double plan = Math.hypot(line.x(at) - line.x(in), line.y(at) - line.y(in));
        double length = Math.hypot(plan, outlet.height() - inlet.height());
        return given(station, outletStation, from, inlet, outlet, length, sectionAt);
    }

    /**
     * A pipe whose ends are known.
     *
     * @param station of its inlet, m
     * @param outletStation of its outlet, m; the same where it lies square to the lane
     * @param from the side that its inlet lies on
     * @param inlet offset and height of its inlet, m
     * @param outlet offset and height of its outlet, on the other side, m
     * @param length along its bore, m
     * @param sectionAt the section at any station
     */
    public static CulvertLine given(
            double station,
            double outletStation,
            Side from,
            Corner inlet,
            Corner outlet,
            double length,
            DoubleFunction<Section> sectionAt) {
        double least = Double.POSITIVE_INFINITY;
        for (Side side : Side.values()) {
            // The lane is as wide where the pipe comes under its edge as where its inlet lies, or
            // nearly; its height there is read from the section there.
            double offset = side.of(sectionAt.apply(station)).edge().offset();
            double share = (offset - inlet.offset()) / (outlet.offset() - inlet.offset());
            Section there = sectionAt.apply(station + share * (outletStation - station));
            least =
                    Math.min(
                            least,
                            side.of(there).edge().height()
                                    - inlet.height()
                                    - share * (outlet.height() - inlet.height()));
        }
        return new CulvertLine(station, outletStation, from, inlet, outlet, length, least);
    }

    /** Height of a corner above the straight line from inlet to outlet. */
    private static double above(Corner corner, Corner inlet, Corner outlet) {
        double run = outlet.offset() - inlet.offset();
        double share = run == 0 ? 0 : (corner.offset() - inlet.offset()) / run;
        return corner.height() - inlet.height() - share * (outlet.height() - inlet.height());
    }

    /** The lowest place that a side reaches: its ditch, or where it meets the ground. */
    private static double bottom(SideResult side, double unknown) {
        Corner ditch = side.ditchInner();
        if (ditch != null) {
            return ditch.height();
        }
        Corner ground = side.catchPoint();
        return ground == null ? unknown : ground.height();
    }

    /** Where the foreslope, drawn on, comes down to a height; at the hinge if that lies lower. */
    private static Corner foot(Corner hinge, Side side, double height, double foreslope) {
        double down = Math.max(0, hinge.height() - height);
        double out = down * foreslope;
        return new Corner(hinge.offset() + (side == Side.LEFT ? -out : out), hinge.height() - down);
    }
}
