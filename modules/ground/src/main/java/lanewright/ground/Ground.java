package lanewright.ground;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.Progress;
import lanewright.survey.Survey;
import org.jspecify.annotations.Nullable;

/**
 * The ground as it is: triangles between surveyed points, linear on each, breaklines and boundary
 * kept. Coordinates are the survey's local metres. Immutable, and safe for any number of threads.
 *
 * <p>Outside the triangles nothing is known: a height there is NaN and a line has a gap. Nothing is
 * ever extrapolated.
 */
public final class Ground {

    private final Mesh mesh;
    private final BitSet probes;
    private final List<Finding> findings;
    private volatile @Nullable Locator locator;
    private final int[] hull;

    Ground(Mesh mesh, BitSet probes, List<Finding> findings) {
        this(mesh, probes, findings, hull(mesh));
    }

    /**
     * A ground whose rim is known.
     *
     * @param hull the sides without a neighbour, in their order
     */
    Ground(Mesh mesh, BitSet probes, List<Finding> findings, int[] hull) {
        this.mesh = mesh;
        this.probes = probes;
        this.findings = List.copyOf(findings);
        this.hull = hull;
    }

    private static int[] hull(Mesh mesh) {
        int count = 0;
        for (int other : mesh.neighbour) {
            if (other == Mesh.NONE) {
                count++;
            }
        }
        int[] hull = new int[count];
        int at = 0;
        for (int s = 0; s < mesh.neighbour.length; s++) {
            if (mesh.neighbour[s] == Mesh.NONE) {
                hull[at++] = s;
            }
        }
        return hull;
    }

    /**
     * Builds the ground of a survey.
     *
     * @param survey points, lines, boundary and probe holes
     * @param options rules for what counts as one point and for the rim
     * @param progress told of the work, and asked whether to go on
     * @return the ground; without triangles and with a finding if the shots make none
     */
    public static Ground of(Survey survey, GroundOptions options, Progress progress) {
        return new GroundBuilder(survey, options, progress).build();
    }

    /**
     * Number of vertices: surveyed points that were not merged, line crossings, probe holes. Where
     * patches were laid in, those of the old ground keep their numbers, and some may belong to no
     * triangle any more.
     */
    public int vertexCount() {
        return mesh.x.length;
    }

    /** Local easting of vertex {@code v}, m. */
    public double x(int v) {
        return mesh.x[v];
    }

    /** Local northing of vertex {@code v}, m. */
    public double y(int v) {
        return mesh.y[v];
    }

    /** Height of vertex {@code v}, m. */
    public double z(int v) {
        return mesh.z[v];
    }

    /**
     * True if vertex {@code v} was put in for a probe hole; its height is that of the facet it
     * split.
     */
    public boolean isProbe(int v) {
        return probes.get(v);
    }

    /** Number of triangles. */
    public int triangleCount() {
        return mesh.solid;
    }

    /** Vertex at corner {@code k}, 0 to 2 counter-clockwise, of triangle {@code t}. */
    public int corner(int t, int k) {
        return mesh.corner[3 * t + k];
    }

    /** Triangle across the side that lies opposite corner {@code k}; -1 at the rim and at holes. */
    public int neighbour(int t, int k) {
        int other = mesh.neighbour[3 * t + k];
        return mesh.isSolid(other) ? other : Mesh.NONE;
    }

    /** True if the side opposite corner {@code k} is part of a breakline, contour or boundary. */
    public boolean isBreak(int t, int k) {
        return mesh.breaks.get(3 * t + k);
    }

    /** The triangle under a place, or -1 where there is no ground. */
    public int triangleAt(double x, double y) {
        return mesh.solid == 0 ? Mesh.NONE : locator().findSolid(x, y);
    }

    /** Height of the ground at a place, m, or NaN where there is none. */
    public double heightAt(double x, double y) {
        int t = triangleAt(x, y);
        return t == Mesh.NONE ? Double.NaN : mesh.height(t, x, y);
    }

    /**
     * Longest side of the triangle under a place, m in plan, or NaN where there is no ground. The
     * ground between two shots is taken to be straight, so the further they stand apart, the less
     * the height there is to be trusted.
     */
    public double longestSideAt(double x, double y) {
        int t = triangleAt(x, y);
        if (t == Mesh.NONE) {
            return Double.NaN;
        }
        double longest = 0;
        for (int k = 0; k < 3; k++) {
            int a = corner(t, k);
            int b = corner(t, Mesh.next(k));
            double dx = x(a) - x(b);
            double dy = y(a) - y(b);
            longest = Math.max(longest, Math.sqrt(dx * dx + dy * dy));
        }
        return longest;
    }

    /** Height at a place of the plane of triangle {@code t}, m. */
    public double heightOn(int t, double x, double y) {
        return mesh.height(t, x, y);
    }

    /** The ground along a straight line; see {@link LineCutter#cut}. */
    public GroundLine across(double x0, double y0, double x1, double y1) {
        return cutter().cut(x0, y0, x1, y1);
    }

    /** A cutter of lines that reuses its memory, for one thread. */
    public LineCutter cutter() {
        return new LineCutter(mesh, locator(), hull);
    }

    /**
     * This ground with patches laid in, in place of what is there.
     *
     * @param patches laid one after another; one that cannot be laid is left out and said so
     * @param progress told of the work, and asked whether to go on
     */
    public Patched with(List<Patch> patches, Progress progress) {
        return new PatchLaying(this, patches, progress).lay();
    }

    /** A field with the same value everywhere. */
    public VertexField constant(double value) {
        double[] values = new double[vertexCount()];
        Arrays.fill(values, value);
        return new VertexField(mesh, values);
    }

    /** A field with a value for each vertex, in their order. */
    public VertexField field(double[] values) {
        if (values.length != vertexCount()) {
            throw new IllegalArgumentException(
                    values.length + " values for " + vertexCount() + " vertices");
        }
        return new VertexField(mesh, values.clone());
    }

    /** What is wrong or worth a look. */
    public List<Finding> findings() {
        return findings;
    }

    /** Made when the first place is asked for: not every ground is asked for one. */
    private Locator locator() {
        Locator made = locator;
        if (made == null) {
            synchronized (this) {
                made = locator;
                if (made == null) {
                    made = new Locator(mesh);
                    locator = made;
                }
            }
        }
        return made;
    }

    Mesh mesh() {
        return mesh;
    }
}
