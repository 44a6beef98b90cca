package lanewright.drainage.storm;

import java.util.List;
import java.util.Optional;
import lanewright.drainage.Crossing;
import lanewright.drainage.culvert.Apron;
import lanewright.drainage.culvert.Blocked;
import lanewright.drainage.culvert.Headwater;
import lanewright.drainage.culvert.PipeChoice;
import lanewright.drainage.runoff.Peak;

/**
 * One storm at one crossing.
 *
 * @param crossing where
 * @param time that water takes to gather, s
 * @param peak the flow at its height
 * @param allowed greatest depth above the inlet's invert, m; zero or less where there is no room
 * @param given headwater of the plan's own pipe; empty where none is chosen or nothing runs
 * @param carries what the plan's own pipe carries at the allowed depth, m³/s; NaN without one
 * @param choices the least pipe of each material, or why there is none; empty if nothing runs
 * @param raised how the lane would have to be raised where none does; empty where one does, or
 *     where raising does not help
 * @param blocked the same storm with the plan's own pipe, or the first that does, its inlet clear,
 *     half and wholly blocked; empty where there is none, or where the lane is raised first
 * @param apron stone at the outlet of that pipe
 * @param ford a dip of rock instead, where no pipe does or the lane would have to be raised much
 * @param tailwater water over the bottom of the outlet in the storm
 */
public record Sized(
        Crossing crossing,
        double time,
        Peak peak,
        double allowed,
        Optional<Headwater> given,
        double carries,
        List<PipeChoice> choices,
        Optional<Raised> raised,
        List<Blocked> blocked,
        Optional<Apron> apron,
        Optional<Ford> ford,
        Crossing.Tailwater tailwater) {

    /**
     * A pipe that carries the storm once the lane is raised.
     *
     * @param by how much, besides what the crossing asks for already, m
     * @param option the least pipe then
     */
    public record Raised(double by, PipeChoice.Option option) {}

    /** Copies the lists. */
    public Sized {
        choices = List.copyOf(choices);
        blocked = List.copyOf(blocked);
    }

    /** The same, with what else the lane could do there. */
    Sized with(Optional<Raised> higher, Optional<Ford> instead) {
        return new Sized(
                crossing, time, peak, allowed, given, carries, choices, higher, blocked, apron,
                instead, tailwater);
    }

    /** Depth of water over the bottom of the outlet, m; zero where it runs out freely. */
    public double tail() {
        return Double.isNaN(tailwater.depth()) ? 0 : tailwater.depth();
    }

    /** Whether the storm makes no water run there. */
    public boolean isDry() {
        return !(peak.discharge() > 0);
    }

    /** Whether the plan's own pipe keeps the water within the allowed depth. */
    public boolean isEnough() {
        return isDry() || given.map(each -> each.depth() <= allowed).orElse(false);
    }

    /** The first pipe that carries the storm, if there is one. */
    public Optional<PipeChoice.Option> least() {
        return choices.stream().flatMap(choice -> choice.chosen().stream()).findFirst();
    }
}
