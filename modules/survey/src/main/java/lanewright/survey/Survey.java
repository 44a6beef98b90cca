package lanewright.survey;

import java.util.Arrays;
import java.util.List;
import lanewright.measure.Assumption;
import lanewright.measure.Finding;
import org.jspecify.annotations.Nullable;

/**
 * Measured ground in one projected metre frame. Never changes once made; safe for any number of
 * threads.
 *
 * <p>Coordinates are metres east ({@code x}) and north ({@code y}) of a local zero, so that doubles
 * keep far more digits than any instrument; {@link #originX()} and {@link #originY()} say where
 * that zero lies in the frame. Points stand in the order in which they were read, and are kept in
 * plain arrays: 24 bytes a point for the coordinates, 4 for the line it came from and, only if
 * there are codes at all, 4 for its code.
 *
 * <p>Two points may lie at one place. The readers report it; what to make of it is decided where
 * the ground is built.
 */
public final class Survey {

    private final Frame frame;
    private final double originX;
    private final double originY;
    private final double[] x;
    private final double[] y;
    private final double[] z;

    /** Line of each point in its file, or null if no point has one. */
    private final int @Nullable [] sourceLine;

    /** Number of each point's code in {@link #codes}, or null if no point has one. */
    private final int @Nullable [] codeNumber;

    private final List<String> codes;

    /** Files and, beside them, the first point that came from each. */
    private final List<String> files;

    private final int[] firstOfFile;

    private final List<SurveyLine> lines;
    private final @Nullable Boundary boundary;
    private final List<Probe> probes;
    private final double heightError;
    private final List<Reading> readings;
    private final List<Finding> findings;
    private final List<Assumption> assumptions;

    Survey(SurveyBuilder from, double originX, double originY) {
        this.frame = from.frame;
        this.originX = originX;
        this.originY = originY;
        this.x = from.x;
        this.y = from.y;
        this.z = from.z;
        this.sourceLine = from.sourceLine;
        this.codeNumber = from.codeNumber;
        this.codes = List.copyOf(from.codes.keySet());
        this.files = List.copyOf(from.files);
        this.firstOfFile = from.firstOfFile.stream().mapToInt(Integer::intValue).toArray();
        this.lines = List.copyOf(from.lines);
        this.boundary = from.boundary == null ? null : from.boundary.moved(-originX, -originY);
        this.probes = from.probes.stream().map(p -> p.moved(-originX, -originY)).toList();
        this.heightError = from.heightError;
        this.readings = List.copyOf(from.readings);
        this.findings = List.copyOf(from.findings);
        this.assumptions = List.copyOf(from.assumptions);
    }

    private Survey(Survey from, List<Finding> findings) {
        this.frame = from.frame;
        this.originX = from.originX;
        this.originY = from.originY;
        this.x = from.x;
        this.y = from.y;
        this.z = from.z;
        this.sourceLine = from.sourceLine;
        this.codeNumber = from.codeNumber;
        this.codes = from.codes;
        this.files = from.files;
        this.firstOfFile = from.firstOfFile;
        this.lines = from.lines;
        this.boundary = from.boundary;
        this.probes = from.probes;
        this.heightError = from.heightError;
        this.readings = from.readings;
        this.findings = List.copyOf(findings);
        this.assumptions = from.assumptions;
    }

    /** Starts a survey in plain local metres. */
    public static SurveyBuilder builder() {
        return new SurveyBuilder(Frame.local());
    }

    /** Starts a survey whose points will be given in metres of {@code frame}. */
    public static SurveyBuilder builder(Frame frame) {
        return new SurveyBuilder(frame);
    }

    /** The frame in which the local zero lies. */
    public Frame frame() {
        return frame;
    }

    /** Easting of the local zero in the frame, m. */
    public double originX() {
        return originX;
    }

    /** Northing of the local zero in the frame, m. */
    public double originY() {
        return originY;
    }

    /** How many points there are. */
    public int size() {
        return x.length;
    }

    /** Easting of point {@code i}, local metres. */
    public double x(int i) {
        return x[i];
    }

    /** Northing of point {@code i}, local metres. */
    public double y(int i) {
        return y[i];
    }

    /** Height of point {@code i}, m. */
    public double z(int i) {
        return z[i];
    }

    /** All eastings, local metres, a copy. */
    public double[] copyX() {
        return x.clone();
    }

    /** All northings, local metres, a copy. */
    public double[] copyY() {
        return y.clone();
    }

    /** All heights, m, a copy. */
    public double[] copyZ() {
        return z.clone();
    }

    /** What the crew wrote beside point {@code i}; empty if nothing. */
    public String code(int i) {
        return codeNumber == null ? "" : codes.get(codeNumber[i]);
    }

    /** File and line that point {@code i} came from. */
    public Source source(int i) {
        if (i < 0 || i >= size()) {
            throw new IndexOutOfBoundsException("point " + i + " of " + size());
        }
        int found = Arrays.binarySearch(firstOfFile, i);
        int file = found >= 0 ? found : -found - 2;
        // Files without points share their first number with the next one: take the last of them.
        while (file >= 0 && file + 1 < firstOfFile.length && firstOfFile[file + 1] == i) {
            file++;
        }
        if (file < 0) {
            return Source.NOWHERE;
        }
        return new Source(files.get(file), sourceLine == null ? 0 : sourceLine[i]);
    }

    /** Breaklines and contours, in the order read. */
    public List<SurveyLine> lines() {
        return lines;
    }

    /** How far the survey is to be believed, local metres; null if nothing says. */
    public @Nullable Boundary boundary() {
        return boundary;
    }

    /** Probe holes, in the order read. */
    public List<Probe> probes() {
        return probes;
    }

    /** How far a height may be off, one standard deviation, m; NaN if not stated. */
    public double heightError() {
        return heightError;
    }

    /** What was understood of each file, in the order read. */
    public List<Reading> readings() {
        return readings;
    }

    /** What deserves a look in the measured points. */
    public List<Finding> findings() {
        return findings;
    }

    /** What reading the files rested on. */
    public List<Assumption> assumptions() {
        return assumptions;
    }

    /**
     * Where a local place lies on the earth.
     *
     * @param localX easting, local metres
     * @param localY northing, local metres
     * @throws SurveyException if the frame has no place on the earth, or ends before that place
     */
    public LonLat onEarth(double localX, double localY) throws SurveyException {
        return frame.longitudeLatitude(originX + localX, originY + localY);
    }

    /** The same survey with other findings; the points are shared, not copied. */
    public Survey withFindings(List<Finding> others) {
        return new Survey(this, others);
    }
}
