package lanewright.drainage.pond;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import lanewright.measure.Progress;

/** Measures the pools of one flood on the triangles; lives for one call. */
final class Measuring {
    private final Mesh mesh;
    private final boolean[] rim;
    private final Flood flood;
    private final List<PlacedPipe> pipes;
    private final int[] through;
    private final LowSpots.Threshold threshold;
    private final double[] area;
    private final double[] volume;
    private final boolean[] atRim;

    Measuring(
            Mesh mesh,
            boolean[] rim,
            Flood flood,
            List<PlacedPipe> pipes,
            int[] through,
            LowSpots.Threshold threshold) {
        this.mesh = mesh;
        this.rim = rim;
        this.flood = flood;
        this.pipes = pipes;
        this.through = through;
        this.threshold = threshold;
        area = new double[flood.pools().size()];
        volume = new double[area.length];
        atRim = new boolean[area.length];
    }

    /**
     * The low spots.
     *
     * @param mayBeWet all triangles with a corner under water, and perhaps others
     */
    LowSpots found(BitSet mayBeWet, Progress progress) {
        var wet = new WetPart();
        int[] wetTriangles = new int[1024];
        int wetCount = 0;
        int looked = 0;
        for (int t = mayBeWet.nextSetBit(0); t >= 0; t = mayBeWet.nextSetBit(t + 1)) {
            if (looked++ % Graph.OFTEN == 0) {
                progress.check();
            }
            int spot = spotIn(t);
            if (spot != Flood.NONE) {
                if (wetCount == wetTriangles.length) {
                    wetTriangles = Arrays.copyOf(wetTriangles, 2 * wetCount);
                }
                wetTriangles[wetCount++] = t;
                wet.of(mesh, t, flood.pools().get(spot).level());
                area[spot] += wet.area();
                volume[spot] += wet.volume();
                atRim[spot] |= touchesRim(t, flood.pools().get(spot).level());
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
        for (int w = 0; w < wetCount; w++) {
            int spot = spotIn(wetTriangles[w]);
            if (place[spot] != Flood.NONE) {
                outlines.get(place[spot]).add(wetTriangles[w]);
            }
        }
        List<LowSpot> listed = new ArrayList<>();
        for (int i = 0; i < chosen.size(); i++) {
            listed.add(spot(chosen.get(i), outlines.get(i).rings()));
        }
        return new LowSpots(listed, small, smallVolume, pipes);
    }

    private boolean touchesRim(int t, double level) {
        for (int k = 0; k < 3; k++) {
            if (mesh.neighbour(t, k) < 0
                    && (mesh.z(mesh.corner(t, (k + 1) % 3)) < level
                            || mesh.z(mesh.corner(t, (k + 2) % 3)) < level)) {
                return true;
            }
        }
        return false;
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
            GivenPipe through = pipes.get(pipe).pipe();
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
                (pipe < 0 && rim[sill]) || atRim[number],
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
