package lanewright.planner.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lanewright.earthwork.Soil;
import lanewright.measure.Nearest;
import lanewright.planner.document.PipeWorkPart;
import lanewright.planner.document.PlanException;
import lanewright.planner.document.PlanFile;
import lanewright.planner.document.StonePart;
import lanewright.planner.document.Trouble;
import lanewright.stone.StoneTables;

/** Names in a plan that must stand in a table: kinds of stone and of soil. */
final class PlanNames {

    private PlanNames() {}

    /** Refuses names that are in no table, all at once and with their places in the file. */
    static void check(PlanFile file) throws PlanException {
        List<Trouble> troubles = new ArrayList<>();
        List<StonePart.Material> materials = file.plan().stone().materials();
        for (int i = 0; i < materials.size(); i++) {
            StonePart.Material material = materials.get(i);
            String field = "stone.materials[" + i + "]";
            if (Double.isNaN(material.density())) {
                known(material.kind(), StoneTables.weighed(), file, field + ".kind", troubles);
            }
            known(material.loose(), StoneTables.spread(), file, field + ".loose", troubles);
        }
        known(file.plan().earth().soil(), Soil.names(), file, "earth.soil", troubles);
        PipeWorkPart pipes = file.plan().water().pipeWork();
        List<String> stones = StoneTables.weighed();
        known(pipes.beddingKind(), stones, file, "water.pipeWork.beddingKind", troubles);
        known(pipes.riprapKind(), stones, file, "water.pipeWork.riprapKind", troubles);
        if (!troubles.isEmpty()) {
            troubles.sort(
                    Comparator.comparingLong(Trouble::line).thenComparingLong(Trouble::column));
            throw new PlanException(file.name(), troubles);
        }
    }

    private static void known(
            String name, List<String> names, PlanFile file, String field, List<Trouble> troubles) {
        if (!names.contains(name)) {
            troubles.add(
                    file.trouble(
                            field,
                            "\"" + name + "\" is not in the table",
                            Nearest.to(name, names)
                                            .map(near -> "Did you mean \"" + near + "\"? ")
                                            .orElse("")
                                    + "There are: "
                                    + String.join("; ", names)
                                    + "."));
        }
    }
}
