package lanewright.planner.run;

import java.nio.file.Files;
import java.nio.file.Path;
import lanewright.drainage.along.CulvertLine;
import lanewright.measure.Progress;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.PlanFile;
import lanewright.planner.listing.WaterListings;
import org.junit.jupiter.api.Test;

class PipeOfferTest {
    @Test
    void look() throws Exception {
        for (String sample : new String[] {"marrow-fold", "wickle-bank"}) {
            Path at = Path.of("..", "..", "sample-surveys", sample);
            PlanFile file = PlanFile.read("plan.json", Files.readAllBytes(at.resolve("plan.json")));
            var run = new Run(at);
            Outcome o = run.outcome(file, Progress.NONE);
            for (int i = 0; i < 4; i++) {
                System.out.println("==== " + sample + " " + i);
                o.water()
                        .places()
                        .forEach(
                                p ->
                                        System.out.println(
                                                p.finding().level()
                                                        + " "
                                                        + p.finding().says().in(UnitSystem.METRIC)
                                                        + " >> "
                                                        + p.finding()
                                                                .remedy()
                                                                .in(UnitSystem.METRIC)));
                o.water().pipes().forEach(System.out::println);
                WaterListings.pipes(o.water())
                        .rows()
                        .forEach(
                                r ->
                                        System.out.println(
                                                r.stream()
                                                        .map(c -> c.in(UnitSystem.METRIC))
                                                        .toList()));
                CulvertLine c = PipeOffer.fitting(o);
                System.out.println(c);
                if (c == null) break;
                file = file.with(PipeOffer.taken(file.plan(), o, c));
                o = run.outcome(file, Progress.NONE);
            }
        }
    }
}
