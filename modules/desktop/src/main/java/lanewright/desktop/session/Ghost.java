package lanewright.desktop.session;

import lanewright.planner.document.PlanFile;
import lanewright.planner.run.Draft;
import lanewright.planner.run.Outcome;
import org.jspecify.annotations.Nullable;

/**
 * A plan that is looked at beside the present one and not yet taken.
 *
 * @param title what it would change, such as {@code a grade that moves less dirt}
 * @param file the plan with the change in it
 * @param draft what its sections tell, or null while that is worked out
 * @param outcome the whole of what comes of it, or null while that is worked out
 * @param wrong why nothing comes of it, or null
 */
public record Ghost(
        String title,
        PlanFile file,
        @Nullable Draft draft,
        @Nullable Outcome outcome,
        Shown.@Nullable Wrong wrong) {}
