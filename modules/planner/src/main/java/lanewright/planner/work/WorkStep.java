package lanewright.planner.work;

import java.util.List;
import lanewright.measure.Saying;

/**
 * One step of the work.
 *
 * @param name short, stable, lower case, words joined by hyphens
 * @param title what is done
 * @param amounts how much of it this plan holds
 * @param lookFor what must be true before going on to the next step
 * @param waitsFor what it waits for: dry days, rain, traffic; empty if nothing
 * @param canHurt what can hurt here, and the usual care
 */
public record WorkStep(
        String name,
        String title,
        List<Saying> amounts,
        List<Saying> lookFor,
        List<Saying> waitsFor,
        List<Saying> canHurt) {
    /** Copies the lists. */
    public WorkStep {
        amounts = List.copyOf(amounts);
        lookFor = List.copyOf(lookFor);
        waitsFor = List.copyOf(waitsFor);
        canHurt = List.copyOf(canHurt);
    }
}
