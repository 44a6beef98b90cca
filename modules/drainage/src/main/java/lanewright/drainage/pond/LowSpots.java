package lanewright.drainage.pond;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lanewright.measure.Progress;

/**
 * All low spots of a surface of triangles, found and measured on the triangles themselves.
 *
 * <p>The low points of a surface that is flat on each triangle are corners, and so are the points
 * over which its pools spill. So a search over corners and edges finds every pool with its exact
 * level, whatever way its lines run, and a ditch that falls steadily shows none. Area and volume
 * come by cutting each triangle at the level: exact but for rounding.
 *
 * @param listed low spots that are deep and wide enough to list, in the order of their level
 * @param small how many more there are that are too shallow or too small to list
 * @param smallVolume what those hold together, m³
 * @param pipes the existing pipes, in the order given, and whether they let water through
 */
public record LowSpots(
        List<LowSpot> listed, int small, double smallVolume, List<PlacedPipe> pipes) {

    /**
     * Pools that are no deeper than this are rounding of heights and not counted at all, m. Our
     * choice: no staff or rover reads a height to a millimetre.
     */
    static final double LEAST_DEPTH = 0.001;

    /**
     * What makes a low spot worth a line in a table.
     *
     * @param depth least depth, m
     * @param area least area, m²
     */
    public record Threshold(double depth, double area) {
        /**
         * 50 mm and 2 m². Our choice: what a boot notices, and the width of a lane's wheel tracks.
         */
        public static final Threshold USUAL = new Threshold(0.05, 2);
    }

    /** Copies the list. */
    public LowSpots {
        listed = List.copyOf(listed);
        pipes = List.copyOf(pipes);
    }

    /**
     * Finds the low spots of {@code mesh}.
     *
     * @param pipes pipes that are there already
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    public static LowSpots of(
            Mesh mesh, List<ExistingPipe> pipes, Threshold threshold, Progress progress) {
        progress.report(0, "looking for low spots");
        List<PlacedPipe> placed = pipes.stream().map(pipe -> PlacedPipe.on(mesh, pipe)).toList();
        List<PipeLink> links = new ArrayList<>();
        int[] through = new int[placed.size()];
        for (int p = 0; p < placed.size(); p++) {
            PipeLink link = placed.get(p).link();
            if (link != null) {
                through[links.size()] = p;
                links.add(link);
            }
        }
        Flood flood = Flood.of(Graph.of(mesh, links), LEAST_DEPTH);
        progress.check();
        progress.report(0.7, "measuring low spots");
        return new Measuring(mesh, flood, placed, through, threshold).all();
    }

    /** One search; lives for one call. */
    private static final class Measuring {
        private final Mesh mesh;
        private final Flood flood;
        private final List<PlacedPipe> pipes;
        private final int[] through;
        private final Threshold threshold;
        private final double[] area;
        private final double[] volume;

        Measuring(
                Mesh mesh,
                Flood flood,
                List<PlacedPipe> pipes,
                int[] through,
                Threshold threshold) {
            this.mesh = mesh;
            this.flood = flood;
            this.pipes = pipes;
            this.through = through;
            this.threshold = threshold;
            area = new double[flood.pools().size()];
            volume = new double[area.length];
        }

        LowSpots all() {
            var wet = new WetPart();
            for (int t = 0; t < mesh.triangleCount(); t++) {
                int spot = spotIn(t);
                if (spot != Flood.NONE) {
                    wet.of(mesh, t, flood.pools().get(spot).level());
                    area[spot] += wet.area();
                    volume[spot] += wet.volume();
                }
            }
            int[] place = new int[area.length];
            Arrays.fill(place, Flood.NONE);
            List<Outline> outlines = new ArrayList<>();
            List<Integer> chosen = new ArrayList<>();
            int small = 0;
            double smallVolume = 0;
            for (int spot : flood.spots()) {
                Flood.Pool pool = flood.pools().get(spot);
                double depth = pool.level() - mesh.z(pool.low());
                if (depth >= threshold.depth() && area[spot] >= threshold.area()) {
                    place[spot] = chosen.size();
                    chosen.add(spot);
                    outlines.add(new Outline(mesh, pool.level()));
                } else {
                    small++;
                    smallVolume += volume[spot];
                }
            }
            if (!chosen.isEmpty()) {
                for (int t = 0; t < mesh.triangleCount(); t++) {
                    int spot = spotIn(t);
                    if (spot != Flood.NONE && place[spot] != Flood.NONE) {
                        outlines.get(place[spot]).add(t);
                    }
                }
            }
            List<LowSpot> listed = new ArrayList<>();
            for (int i = 0; i < chosen.size(); i++) {
                listed.add(spot(chosen.get(i), outlines.get(i).rings()));
            }
            return new LowSpots(listed, small, smallVolume, pipes);
        }

        /** The low spot that some part of the triangle may lie in. */
        private int spotIn(int t) {
            for (int k = 0; k < 3; k++) {
                int v = mesh.corner(t, k);
                int spot = flood.spotOf(v);
                if (spot != Flood.NONE && mesh.z(v) < flood.pools().get(spot).level()) {
                    return spot;
                }
            }
            return Flood.NONE;
        }

        private LowSpot spot(int number, List<Trace> outline) {
            Flood.Pool pool = flood.pools().get(number);
            int sill = pool.sill();
            int pipe = -1;
            double spillX;
            double spillY;
            if (sill < mesh.vertexCount()) {
                spillX = mesh.x(sill);
                spillY = mesh.y(sill);
            } else {
                pipe = through[(sill - mesh.vertexCount()) / 2];
                ExistingPipe through = pipes.get(pipe).pipe();
                spillX = through.inletX();
                spillY = through.inletY();
            }
            List<LowSpot.Hollow> parts = new ArrayList<>();
            hollows(pool, parts);
            return new LowSpot(
                    mesh.x(pool.low()),
                    mesh.y(pool.low()),
                    mesh.z(pool.low()),
                    pool.level(),
                    spillX,
                    spillY,
                    pipe < 0 && flood.isOutlet(sill),
                    pipe,
                    area[number],
                    volume[number],
                    parts,
                    outline);
        }

        /** The hollows at the bottom of the tree of joins, deep enough to list by themselves. */
        private void hollows(Flood.Pool pool, List<LowSpot.Hollow> into) {
            for (int number : pool.parts()) {
                Flood.Pool part = flood.pools().get(number);
                if (!part.parts().isEmpty()) {
                    hollows(part, into);
                } else if (part.level() - mesh.z(part.low()) >= threshold.depth()) {
                    into.add(
                            new LowSpot.Hollow(
                                    mesh.x(part.low()),
                                    mesh.y(part.low()),
                                    mesh.z(part.low()),
                                    part.level()));
                }
            }
        }
    }
}
