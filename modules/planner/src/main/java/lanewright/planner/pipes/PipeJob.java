package lanewright.planner.pipes;

import java.util.List;
import java.util.Optional;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.culvert.Apron;
import lanewright.drainage.culvert.Culvert;
import lanewright.drainage.culvert.Headwater;
import lanewright.drainage.culvert.Inlet;
import lanewright.drainage.storm.Sized;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import org.jspecify.annotations.Nullable;

/**
 * A pipe under the lane that is bought, dug in and built.
 *
 * @param name of the pipe, or of the place that wants it
 * @param need what it is for
 * @param first what must be done before it can be laid
 * @param fits whether it fits under the lane as drawn, or once that is done
 * @param line how it lies, from foot to foot
 * @param laid what it is
 * @param ends how its ends are made
 * @param length how long it is ordered, each of them
 * @param way what lies over it
 * @param around the same and some way on beyond both ends, to be drawn
 * @param trench its trench
 * @param finished cover once the lane is finished
 * @param building cover while trucks build, on the subgrade
 * @param sized the storm there; null if the plan does not say how much it rains
 * @param allowed greatest depth of water over the inlet's invert, m; NaN without a storm
 * @param headwater of this pipe in that storm; null likewise, or if nothing runs
 * @param works what is built at its ends besides
 * @param apron stone at its outlet, where a published class holds
 * @param lines what is bought and done, in the order of the work
 * @param others the next smaller and the next larger pipe of the same kind
 */
public record PipeJob(
        String name,
        Need need,
        First first,
        boolean fits,
        CulvertLine line,
        Laid laid,
        Inlet.End ends,
        PipeLength length,
        PipeWay way,
        PipeWay around,
        Trench trench,
        PipeCover finished,
        PipeCover building,
        @Nullable Sized sized,
        double allowed,
        @Nullable Headwater headwater,
        EndWorks works,
        Optional<Apron.Bed> apron,
        List<CostLine> lines,
        List<Other> others) {

    /**
     * What must be done before a pipe can be laid.
     *
     * @param raise how much the lane is raised there, m
     * @param dig how much deeper the ground is dug at its outlet, m
     */
    public record First(double raise, double dig) {
        /** Nothing. */
        public static final First NOTHING = new First(0, 0);

        /** Whether nothing must be done. */
        public boolean isNothing() {
            return raise == 0 && dig == 0;
        }

        /** In words, to follow "once"; empty if nothing must be done. */
        public Saying words() {
            Saying higher = Saying.of("the lane is {} higher there", Quantity.depth(raise));
            Saying deeper = Saying.of("the ground is {} deeper at its outlet", Quantity.depth(dig));
            return isNothing()
                    ? Saying.plain("")
                    : raise == 0
                            ? deeper
                            : dig == 0
                                    ? higher
                                    : Saying.of(
                                            "the lane is {} higher there and the ground {} deeper"
                                                    + " at its outlet",
                                            Quantity.depth(raise),
                                            Quantity.depth(dig));
        }
    }

    /** What a pipe is for. */
    public enum Need {
        /** The plan has it. */
        PLANNED,
        /** A wet place wants it: it is offered. */
        OFFERED,
        /** It would relieve a ditch that runs too long: it is offered. */
        RELIEF
    }

    /**
     * Another size in the same place.
     *
     * @param larger whether it is the next larger one; else the next smaller
     * @param laid what it is
     * @param headwater in the storm; null if there is none
     * @param says whether it does
     * @param money all of it together, NaN if something of it has no price
     */
    public record Other(
            boolean larger, Laid laid, @Nullable Headwater headwater, Saying says, double money) {}

    /** What it is to water, ends and all. */
    public Culvert culvert() {
        return culvert(laid);
    }

    /** What another size in the same place would be to water. */
    public Culvert culvert(Laid other) {
        return culvert(line, other, ends, length);
    }

    static Culvert culvert(CulvertLine line, Laid laid, Inlet.End ends, PipeLength length) {
        return new Culvert(
                laid.barrel(),
                Inlet.of(laid.barrel(), ends),
                length.walls(),
                Math.max(0, Math.min(1, line.grade())),
                laid.count());
    }

    /** Copies the lists. */
    public PipeJob {
        lines = List.copyOf(lines);
        others = List.copyOf(others);
    }

    /** A headwall stands so far above the top of the pipe's bore, m: a foot. Common practice. */
    private static final double WALL = 0.3048;

    /** Height of a headwall above the invert, m; zero where the ends are made otherwise. */
    public double wall() {
        return wall(ends, laid);
    }

    static double wall(Inlet.End ends, Laid laid) {
        return ends == Inlet.End.HEADWALL ? laid.rise() + WALL : 0;
    }

    /** Whether it is in the plan; else it is offered. */
    public boolean planned() {
        return need == Need.PLANNED;
    }

    /** All its money, NaN if something that is paid for has no price. */
    public double money() {
        boolean whole = lines.stream().noneMatch(line -> Double.isNaN(line.money()));
        return whole ? priced() : Double.NaN;
    }

    /** Money of what has a price. */
    public double priced() {
        double sum = 0;
        for (CostLine line : lines) {
            sum += Double.isNaN(line.money()) ? 0 : line.money();
        }
        return sum;
    }

    /** Whether anything of it has a price. */
    public boolean hasPrice() {
        return lines.stream().anyMatch(line -> line.price() != null);
    }

    /** The line for one thing, if there is one. */
    public Optional<CostLine> of(CostLine.What what) {
        return lines.stream().filter(line -> line.what() == what).findFirst();
    }
}
