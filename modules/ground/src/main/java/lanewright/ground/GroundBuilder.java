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
import lanewright.survey.Ring;
import lanewright.survey.Survey;
import lanewright.survey.SurveyLine;
import org.jspecify.annotations.Nullable;

/** Turns a survey into triangles; lives for one call. */
final class GroundBuilder {

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
        int[] first = merge();
        progress.check();
        Net net = triangulate(first);
        if (net == null) {
            return nothing();
        }
        progress.report(0.7, "keeping breaklines");
        breaklines(net, first);
        progress.check();
        Rim rim = new Rim(net, options);
        Boundary boundary = survey.boundary();
        if (boundary == null) {
            tellSlivers(rim.leaveOutSlivers());
        } else {
            rim.leaveOutBeyond(boundary);
        }
        BitSet probes = new BitSet();
        if (!survey.probes().isEmpty()) {
            net.indexVertices();
            probes = new ProbeHoles(net, options.samePoint()).put(survey.probes(), findings);
        }
        Mesh mesh = net.mesh();
        if (survey.lines().stream().anyMatch(line -> line.kind() == SurveyLine.Kind.CONTOUR)) {
            Flats.tell(mesh, findings);
        }
        if (mesh.solid == 0) {
            findings.add(noGround());
        }
        progress.report(1, "ground built");
        return new Ground(mesh, probes, findings);
    }

    /** For each shot the one that stands for it; says where merged shots differ. */
    private int[] merge() {
        double[] x = survey.copyX();
        double[] y = survey.copyY();
        int[] first = SamePoints.merge(x, y, options.samePoint());
        int count = 0;
        double widest = 0;
        int worst = -1;
        for (int i = 0; i < first.length; i++) {
            if (first[i] != i) {
                count++;
                double step = Math.abs(survey.z(i) - survey.z(first[i]));
                if (worst < 0 || step > widest) {
                    widest = step;
                    worst = i;
                }
            }
        }
        if (worst >= 0) {
            boolean apart = widest > Breaklines.CROSSING_STEP;
            findings.add(
                    new Finding(
                            "points-merged",
                            apart ? Level.LOOK : Level.NOTE,
                            Topic.GROUND,
                            Where.map(survey.x(worst), survey.y(worst)),
                            Saying.of(
                                    Saying.number(
                                                    count,
                                                    "{} shot lies so near to another that it counts"
                                                            + " as one with it, at their mean height;",
                                                    "{} shots lie so near to another that they count"
                                                            + " as one with it, at their mean height;")
                                            + " the heights differ by up to {} here.",
                                    Quantity.count(count),
                                    Quantity.height(widest)),
                            Quantity.height(widest),
                            Quantity.height(Breaklines.CROSSING_STEP),
                            "our choice",
                            Saying.plain(
                                    apart
                                            ? "Find out which shot is right, and have the other taken out."
                                            : "Nothing to do.")));
        }
        return first;
    }

    /**
     * Triangles of the shots that stand for themselves, in the order of the curve; {@code first}
     * turns from numbers in the survey into numbers of vertices.
     */
    private @Nullable Net triangulate(int[] first) {
        int[] order = Order.along(survey.copyX(), survey.copyY(), SamePoints.survivors(first));
        int n = order.length;
        double[] x = new double[n];
        double[] y = new double[n];
        double[] z = new double[n];
        int[] vertex = new int[first.length];
        for (int v = 0; v < n; v++) {
            x[v] = survey.x(order[v]);
            y[v] = survey.y(order[v]);
            vertex[order[v]] = v;
        }
        int[] shots = new int[n];
        for (int i = 0; i < first.length; i++) {
            first[i] = vertex[first[i]];
            shots[first[i]]++;
            z[first[i]] += survey.z(i);
        }
        for (int v = 0; v < n; v++) {
            if (shots[v] > 1) {
                z[v] /= shots[v];
            }
        }
        return Delaunay.of(x, y, z, progress);
    }

    private void breaklines(Net net, int[] vertexOf) {
        if (survey.lines().isEmpty() && survey.boundary() == null) {
            return;
        }
        var breaklines = new Breaklines(net, options.samePoint(), findings);
        for (SurveyLine line : survey.lines()) {
            progress.check();
            int[] chain = line.points();
            for (int i = 0; i < chain.length; i++) {
                chain[i] = vertexOf[chain[i]];
            }
            breaklines.lay(chain);
        }
        Boundary boundary = survey.boundary();
        if (boundary != null) {
            Ground bare = new Ground(net.mesh(), new BitSet(), List.of());
            drape(boundary.outer(), bare, breaklines);
            for (Ring hole : boundary.holes()) {
                drape(hole, bare, breaklines);
            }
        }
        breaklines.tell();
    }

    /**
     * Lays a ring onto the surface, with a vertex wherever it crosses a side, so that heights along
     * it are those of the net; the triangles that it cuts are joined anew.
     */
    private static void drape(Ring ring, Ground bare, Breaklines breaklines) {
        for (int i = 0; i < ring.size(); i++) {
            int j = (i + 1) % ring.size();
            if (ring.x(i) == ring.x(j) && ring.y(i) == ring.y(j)) {
                continue;
            }
            GroundLine line = bare.across(ring.x(i), ring.y(i), ring.x(j), ring.y(j));
            int before = Mesh.NONE;
            for (int k = 0; k < line.size(); k++) {
                int v = breaklines.vertexAt(line.x(k), line.y(k), line.z(k));
                if (before >= 0 && v != before) {
                    breaklines.drape(before, v);
                }
                before = v;
            }
        }
    }

    private void tellSlivers(int left) {
        if (left > 0) {
            findings.add(
                    Finding.of(
                            "rim-slivers",
                            Level.NOTE,
                            Topic.GROUND,
                            Where.ANYWHERE,
                            Saying.of(
                                    "{} long or thin triangles along the rim of the survey are not taken for ground.",
                                    Quantity.count(left)),
                            Saying.plain(
                                    "Nothing to do, unless the lane, its slopes or the land that drains to it come near the rim: then survey farther out there.")));
        }
    }

    private Finding noGround() {
        return Finding.of(
                "no-ground",
                Level.STOP,
                Topic.GROUND,
                Where.ANYWHERE,
                Saying.of(
                        "{} shots make no ground: fewer than three, all on one line, or all outside the boundary",
                        Quantity.count(survey.size())),
                Saying.plain("Shoot points on both sides of the lane"));
    }

    private Ground nothing() {
        findings.add(noGround());
        double[] none = new double[0];
        Mesh empty = new Mesh(none, none, none, new int[0], new int[0], 0, new BitSet());
        return new Ground(empty, new BitSet(), findings);
    }
}
