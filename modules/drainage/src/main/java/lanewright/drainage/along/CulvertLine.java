package lanewright.drainage.along;

import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;

/**
 * How long a pipe must be to pass under the lane, from the section where it lies.
 *
 * <p>The pipe runs straight and square to the lane, from where the foreslope on the side that water
 * comes from meets the invert line to where the other foreslope does. Its invert lies at the low
 * ground, or in the ditch, on either side: that is assumed here, since what the pipe must carry,
 * its cover and its bedding are not worked out. A headwall shortens it, a skew or a projecting end
 * lengthens it.
 *
 * @param station m
 * @param from the side that water comes from
 * @param inlet where the invert line meets the foreslope on that side
 * @param outlet where it meets the foreslope on the other side
 * @param length along the invert, m
 * @param room least height of the edges of the travelled way above the invert, m: what the pipe and
 *     the earth over it must fit in
 */
public record CulvertLine(
        double station, Side from, Corner inlet, Corner outlet, double length, double room) {

    /** A fall less than this is none, m. Our choice: no survey of ground is surer. */
    private static final double LEVEL = 0.01;

    /** How much lower the outlet lies than the inlet, m, negative if it lies higher. */
    public double fall() {
        return inlet.height() - outlet.height();
    }

    /** Fall over length, negative if the outlet lies higher. */
    public double grade() {
        return fall() / length;
    }

    /** Whether the outlet lies lower than the inlet, by more than heights are known. */
    public boolean falls() {
        return fall() > LEVEL;
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

    /** The pipe straight from an inlet to an outlet under {@code section}. */
    public static CulvertLine between(Section section, Side from, Corner inlet, Corner outlet) {
        SideResult up = from.of(section);
        SideResult down = from.across().of(section);
        double length =
                Math.hypot(outlet.offset() - inlet.offset(), outlet.height() - inlet.height());
        double room = Math.min(above(up.edge(), inlet, outlet), above(down.edge(), inlet, outlet));
        return new CulvertLine(section.station(), from, inlet, outlet, length, room);
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
