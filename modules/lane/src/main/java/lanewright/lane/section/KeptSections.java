package lanewright.lane.section;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import lanewright.ground.Ground;
import lanewright.ground.VertexField;
import lanewright.lane.line.Alignment;
import lanewright.lane.shape.LaneDesign;
import lanewright.measure.Progress;
import lanewright.measure.SideBySide;
import org.jspecify.annotations.Nullable;

/**
 * The sections of one lane after another, where each is the one before with a few edits. Ground
 * lines are kept as long as ground and depths are equal and the line has not moved where they are,
 * and pieces of the lane as long as its line is equal, and the lane at all stations that they were
 * made from; the rest is cut anew. The sections are the same to the last bit as those of {@link
 * Sections#of}. Only the last lane is kept.
 *
 * <p>Used by one thread at a time; it takes others to help.
 */
public final class KeptSections {

    /** Pieces that are taken up together, and by one thread. */
    private static final int TOGETHER = 16;

    private @Nullable Land land;
    private double margin = Double.NaN;
    private double reach = Double.NaN;
    private Piece[] pieces = {};
    private SectionWork work = SectionWork.NONE;

    /** What ground lines are cut from, and those that were cut. */
    private record Land(
            Alignment line,
            Ground ground,
            VertexField topsoil,
            @Nullable VertexField bearing,
            GroundLines lines) {

        static Land of(
                Alignment line, Ground ground, VertexField topsoil, @Nullable VertexField bearing) {
            var lines = new GroundLines(line, ground, topsoil, bearing);
            return new Land(line, ground, topsoil, bearing, lines);
        }

        Land moved(Alignment to) {
            return new Land(to, ground, topsoil, bearing, lines.moved(to));
        }

        boolean isOf(
                Ground otherGround, VertexField otherTopsoil, @Nullable VertexField otherBearing) {
            return ground == otherGround && topsoil == otherTopsoil && bearing == otherBearing;
        }
    }

    /** One thread's tools, used again from piece to piece. */
    private record Hands(GroundLines lines, PieceWalk walk) {}

    /**
     * The sections of a lane on a ground.
     *
     * @param topsoil depth of topsoil, m
     * @param bearing depth to soil that bears, m, or null if known nowhere
     * @param progress told of the work, and asked whether to go on
     */
    public SectionSet of(
            LaneDesign design,
            Ground ground,
            VertexField topsoil,
            @Nullable VertexField bearing,
            Progress progress) {
        Land on = land;
        if (on == null || !on.isOf(ground, topsoil, bearing)) {
            on = Land.of(design.alignment(), ground, topsoil, bearing);
            pieces = new Piece[0];
        } else if (!on.line.equals(design.alignment())) {
            on = on.moved(design.alignment());
            pieces = new Piece[0];
        }
        double first = Sections.reach(design);
        boolean alike =
                Double.compare(margin, design.margin()) == 0 && Double.compare(reach, first) == 0;
        var cutting = new Cutting(design, on.lines, alike ? pieces : new Piece[0], first);
        Piece[] cut = cutting.cut(progress);
        work = work.and(cutting.work);
        land = on;
        margin = design.margin();
        reach = first;
        pieces = cut;
        List<Section> sections = new ArrayList<>();
        for (Piece piece : cut) {
            sections.addAll(piece.sections());
        }
        return Sections.set(design, sections);
    }

    /** What all sections so far took; what was kept from those before is not counted. */
    public SectionWork work() {
        return work;
    }

    /** Cuts one set; lives for one call. */
    private static final class Cutting {
        private final LaneDesign design;
        private final GroundLines lines;
        private final Piece[] kept;
        private final double reach;
        private final List<Stop> stops;
        private final Piece[] cut;
        private final List<Hands> all = new ArrayList<>();
        private final AtomicInteger done = new AtomicInteger();
        private SectionWork work = SectionWork.NONE;

        Cutting(LaneDesign design, GroundLines lines, Piece[] kept, double reach) {
            this.design = design;
            this.lines = lines;
            this.kept = kept;
            this.reach = reach;
            this.stops = Sections.stops(design);
            this.cut = new Piece[stops.size()];
        }

        Piece[] cut(Progress progress) {
            Thread caller = Thread.currentThread();
            int parts = (stops.size() + TOGETHER - 1) / TOGETHER;
            SideBySide.each(
                    parts,
                    this::hands,
                    (hands, part) -> {
                        int from = part * TOGETHER;
                        int to = Math.min(stops.size(), from + TOGETHER);
                        for (int i = from; i < to; i++) {
                            progress.check();
                            cut[i] = piece(hands, i, i > from ? cut[i - 1] : null);
                        }
                        int sofar = done.addAndGet(to - from);
                        if (Thread.currentThread() == caller) {
                            progress.report(sofar / (double) stops.size(), "Cutting sections");
                        }
                    });
            for (Hands hands : all) {
                work = work.and(hands.lines.work());
                lines.take(hands.lines);
            }
            return cut;
        }

        private Hands hands() {
            GroundLines own = lines.helper();
            var hands = new Hands(own, new PieceWalk(design, own, reach));
            synchronized (all) {
                all.add(hands);
            }
            return hands;
        }

        private Piece piece(Hands hands, int i, @Nullable Piece last) {
            Stop before = i == 0 ? null : stops.get(i - 1);
            Stop stop = stops.get(i);
            Piece old = Piece.endingAt(kept, stop);
            double from = before == null ? Double.NaN : before.station();
            if (old != null && old.fits(from, stop, design)) {
                return old;
            }
            Piece made = hands.walk.piece(before, last, stop);
            synchronized (all) {
                work = work.and(made.work());
            }
            return made;
        }
    }
}
