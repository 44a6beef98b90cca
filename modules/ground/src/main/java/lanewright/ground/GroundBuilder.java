package lanewright.ground;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Progress;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.survey.Boundary;
import lanewright.survey.Probe;
import lanewright.survey.Ring;
import lanewright.survey.Survey;
import lanewright.survey.SurveyLine;
import org.jspecify.annotations.Nullable;

/** Turns a survey into triangles; lives for one call. */
final class GroundBuilder {

    /**
     * Flat triangles between contours are worth a word above this share of the ground. Our choice.
     */
    private static final double FLAT_SHARE = 0.02;

    private final Survey survey;
    private final GroundOptions options;
    private final Progress progress;
    private final List<Finding> findings = new ArrayList<>();

    GroundBuilder(Survey survey, GroundOptions options, Progress progress) {
        this.survey = survey;
        this.options = options;
        this.progress = progress;
    }

    Ground build() {
        progress.report(0, "joining the shots into triangles");
        double[] x = survey.copyX();
        double[] y = survey.copyY();
        double[] z = survey.copyZ();
        int[] merged = SamePoints.exact(x, y);
        for (int pass = 0; ; pass++) {
            Attempt attempt = attempt(x, y, z, merged);
            if (attempt == null) {
                return nothing();
            }
            int[] close = SamePoints.close(attempt.made, options.samePoint());
            if (close.length == 0 || pass == 3) {
                return finish(attempt, merged);
            }
            SamePoints.join(merged, attempt.survivors, attempt.made.renumbered, close);
        }
    }

    /** One triangulation of the points that are left after merging. */
    private static final class Attempt {
        private final Triangulation made;
        private final int[] segments;
        private final int[] survivors;

        Attempt(Triangulation made, int[] segments, int[] survivors) {
            this.made = made;
            this.segments = segments;
            this.survivors = survivors;
        }
    }

    private @Nullable Attempt attempt(double[] x, double[] y, double[] z, int[] merged) {
        int[] survivors = SamePoints.survivors(merged);
        int[] number = new int[x.length];
        double[] px = new double[survivors.length];
        double[] py = new double[survivors.length];
        double[] pz = new double[survivors.length];
        for (int i = 0; i < survivors.length; i++) {
            number[survivors[i]] = i;
            px[i] = x[survivors[i]];
            py[i] = y[survivors[i]];
        }
        SamePoints.meanHeights(z, merged, number, pz);
        var points = new Breaklines.Points(px, py, pz);
        findings.clear();
        var breaklines = new Breaklines(points, options.samePoint(), findings);
        for (SurveyLine line : survey.lines()) {
            breaklines.add(chain(line, merged, number));
        }
        Boundary boundary = survey.boundary();
        if (boundary != null) {
            lay(boundary, px, py, pz, points, breaklines);
        }
        int[] segments = breaklines.settle();
        progress.check();
        Triangulation made =
                Triangulation.of(points.xs(), points.ys(), points.zs(), segments, progress);
        return made == null ? null : new Attempt(made, segments, survivors);
    }

    private static int[] chain(SurveyLine line, int[] merged, int[] number) {
        int[] chain = line.points();
        for (int i = 0; i < chain.length; i++) {
            chain[i] = number[merged[chain[i]]];
        }
        return chain;
    }

    /** Lays the boundary onto the facets, so that it cuts the ground without changing it. */
    private void lay(
            Boundary boundary,
            double[] px,
            double[] py,
            double[] pz,
            Breaklines.Points points,
            Breaklines breaklines) {
        Triangulation bare = Triangulation.of(px, py, pz, new int[0], progress);
        if (bare == null) {
            return;
        }
        Ground ground = new Ground(new Facets(bare, new BitSet()).mesh(), new BitSet(), List.of());
        points.index();
        lay(boundary.outer(), ground, points, breaklines);
        for (Ring hole : boundary.holes()) {
            lay(hole, ground, points, breaklines);
        }
    }

    private void lay(Ring ring, Ground ground, Breaklines.Points points, Breaklines breaklines) {
        for (int i = 0; i < ring.size(); i++) {
            int j = (i + 1) % ring.size();
            if (ring.x(i) == ring.x(j) && ring.y(i) == ring.y(j)) {
                continue;
            }
            GroundLine line = ground.across(ring.x(i), ring.y(i), ring.x(j), ring.y(j));
            int[] chain = new int[line.size()];
            for (int k = 0; k < chain.length; k++) {
                chain[k] = points.addOrFind(line.x(k), line.y(k), line.z(k), options.samePoint());
            }
            breaklines.add(chain);
        }
    }

    private Ground finish(Attempt attempt, int[] merged) {
        progress.check();
        BitSet breaks = attempt.made.breaks(attempt.segments);
        countLost(attempt, breaks);
        Facets facets = new Facets(attempt.made, breaks);
        int left = Rim.trim(facets, survey.boundary(), options);
        BitSet probes = splitAtProbes(facets);
        Mesh mesh = facets.mesh();
        tellMerged(merged);
        tellLeftOut(left);
        tellFlat(mesh);
        progress.report(1, "ground built");
        return new Ground(mesh, probes, findings);
    }

    private void countLost(Attempt attempt, BitSet breaks) {
        int sides = 0;
        for (int s = breaks.nextSetBit(0); s >= 0; s = breaks.nextSetBit(s + 1)) {
            sides += attempt.made.neighbour[s] == Mesh.NONE ? 2 : 1;
        }
        int lost = attempt.segments.length / 2 - sides / 2;
        if (lost > 0) {
            findings.add(
                    Finding.of(
                            "breakline-lost",
                            Level.LOOK,
                            Topic.GROUND,
                            Where.ANYWHERE,
                            Saying.of(
                                    "{} pieces of breaklines could not be kept as edges",
                                    Quantity.count(lost)),
                            Saying.plain("Look for breaklines that run over each other")));
        }
    }

    /**
     * Each hole gets a vertex on the facet it lies in; few holes, so the mesh is made anew for
     * each.
     */
    private BitSet splitAtProbes(Facets facets) {
        BitSet marked = new BitSet();
        for (Probe probe : survey.probes()) {
            Mesh mesh = facets.mesh();
            int t = new Locator(mesh).findSolid(probe.x(), probe.y());
            if (t == Mesh.NONE) {
                findings.add(
                        Finding.of(
                                "probe-outside",
                                Level.LOOK,
                                Topic.GROUND,
                                Where.map(probe.x(), probe.y()),
                                Saying.plain(
                                        "Probe hole " + probe.name() + " lies outside the ground"),
                                Saying.plain(
                                        "Check its coordinates, or shoot the ground round it")));
            } else {
                facets.take(mesh);
                marked.set(split(facets, mesh, t, probe));
            }
        }
        return marked;
    }

    private int split(Facets facets, Mesh mesh, int t, Probe probe) {
        double near = options.samePoint();
        for (int k = 0; k < 3; k++) {
            int v = mesh.corner[3 * t + k];
            double dx = mesh.x[v] - probe.x();
            double dy = mesh.y[v] - probe.y();
            if (dx * dx + dy * dy <= near * near) {
                return v;
            }
        }
        double height = mesh.height(t, probe.x(), probe.y());
        for (int k = 0; k < 3; k++) {
            int a = mesh.corner[3 * t + Mesh.next(k)];
            int b = mesh.corner[3 * t + Mesh.last(k)];
            double off =
                    Side.of(mesh.x[a], mesh.y[a], mesh.x[b], mesh.y[b], probe.x(), probe.y())
                            / facets.distance(a, b);
            if (off <= near) {
                double dx = mesh.x[b] - mesh.x[a];
                double dy = mesh.y[b] - mesh.y[a];
                double part =
                        ((probe.x() - mesh.x[a]) * dx + (probe.y() - mesh.y[a]) * dy)
                                / (dx * dx + dy * dy);
                return facets.split(
                        t,
                        k,
                        mesh.x[a] + part * dx,
                        mesh.y[a] + part * dy,
                        mesh.z[a] + part * (mesh.z[b] - mesh.z[a]));
            }
        }
        return facets.split(t, -1, probe.x(), probe.y(), height);
    }

    private void tellMerged(int[] merged) {
        int count = merged.length - SamePoints.survivors(merged).length;
        if (count > 0) {
            findings.add(
                    new Finding(
                            "points-merged",
                            Level.NOTE,
                            Topic.GROUND,
                            Where.ANYWHERE,
                            Saying.of(
                                    "{} shots lie within {} of another and count as one, at their mean height",
                                    Quantity.count(count),
                                    Quantity.depth(options.samePoint())),
                            Quantity.count(count),
                            null,
                            "",
                            Saying.plain("Nothing, unless their heights differ")));
        }
    }

    private void tellLeftOut(int left) {
        if (left > 0 && survey.boundary() == null) {
            findings.add(
                    Finding.of(
                            "rim-slivers",
                            Level.NOTE,
                            Topic.GROUND,
                            Where.ANYWHERE,
                            Saying.of(
                                    "{} long thin triangles along the rim of the survey are not taken for ground",
                                    Quantity.count(left)),
                            Saying.plain(
                                    "Shoot further out where the lane's slopes come near the rim")));
        }
    }

    private void tellFlat(Mesh mesh) {
        boolean contours =
                survey.lines().stream().anyMatch(line -> line.kind() == SurveyLine.Kind.CONTOUR);
        if (!contours) {
            return;
        }
        double flat = 0;
        double all = 0;
        int count = 0;
        for (int t = 0; t < mesh.solid; t++) {
            double area = mesh.twiceArea(t);
            all += area;
            double z = mesh.z[mesh.corner[3 * t]];
            if (mesh.z[mesh.corner[3 * t + 1]] == z && mesh.z[mesh.corner[3 * t + 2]] == z) {
                flat += area;
                count++;
            }
        }
        if (flat > FLAT_SHARE * all) {
            findings.add(
                    new Finding(
                            "contour-flats",
                            Level.LOOK,
                            Topic.GROUND,
                            Where.ANYWHERE,
                            Saying.of(
                                    "{} of the ground, {} triangles, is flat only because all three corners lie on one contour",
                                    Quantity.share(flat / all),
                                    Quantity.count(count)),
                            Quantity.share(flat / all),
                            Quantity.share(FLAT_SHARE),
                            "rule of this program",
                            Saying.plain(
                                    "Add spot heights on hilltops, in hollows and along ridges and draws; low spots there are not to be trusted")));
        }
    }

    private Ground nothing() {
        findings.clear();
        findings.add(
                Finding.of(
                        "no-ground",
                        Level.STOP,
                        Topic.GROUND,
                        Where.ANYWHERE,
                        Saying.of(
                                "{} shots make no ground: fewer than three, or all on one line",
                                Quantity.count(survey.size())),
                        Saying.plain("Shoot points on both sides of the lane")));
        Mesh empty =
                new Mesh(
                        new double[0],
                        new double[0],
                        new double[0],
                        new int[0],
                        new int[0],
                        0,
                        new BitSet());
        return new Ground(empty, new BitSet(), findings);
    }
}
