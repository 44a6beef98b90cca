package lanewright.survey;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lanewright.measure.Assumption;
import lanewright.measure.Finding;
import org.jspecify.annotations.Nullable;

/**
 * Gathers points, lines and probe holes into a {@link Survey}. Everything is given in metres of the
 * frame; {@link #build()} chooses the local zero. Used once: after {@code build} it refuses
 * everything.
 */
public final class SurveyBuilder {

    /**
     * Plain local coordinates nearer to zero than this keep their own zero, m: a double still tells
     * places there apart by less than a millionth of a millimetre.
     */
    static final double OWN_ZERO = 100_000;

    /** Step to which the local zero is rounded down, m, so that it can be read and said. */
    static final double ZERO_STEP = 1000;

    final Frame frame;
    double[] x = new double[16];
    double[] y = new double[16];
    double[] z = new double[16];
    int @Nullable [] sourceLine;
    int @Nullable [] codeNumber;
    final Map<String, Integer> codes = new LinkedHashMap<>();
    final List<String> files = new ArrayList<>();
    final List<Integer> firstOfFile = new ArrayList<>();
    final List<SurveyLine> lines = new ArrayList<>();
    final List<Probe> probes = new ArrayList<>();
    final List<Reading> readings = new ArrayList<>();
    final List<Finding> findings = new ArrayList<>();
    final List<Assumption> assumptions = new ArrayList<>();
    @Nullable Boundary boundary;
    double heightError = Double.NaN;

    private int size;
    private double fixedX = Double.NaN;
    private double fixedY = Double.NaN;
    private boolean built;

    SurveyBuilder(Frame frame) {
        this.frame = frame;
        codes.put("", 0);
    }

    /** How many points there are so far; the next one gets this number. */
    public int size() {
        return size;
    }

    /** Easting of point {@code i} so far, frame metres. */
    public double x(int i) {
        return x[i];
    }

    /** Northing of point {@code i} so far, frame metres. */
    public double y(int i) {
        return y[i];
    }

    /** Height of point {@code i} so far, m. */
    public double z(int i) {
        return z[i];
    }

    /** Line in its file of point {@code i} so far, 0 if not known. */
    public int line(int i) {
        return sourceLine == null ? 0 : sourceLine[i];
    }

    /** Says that the points that follow come from a file. */
    public SurveyBuilder file(String name) {
        refuseIfBuilt();
        files.add(name);
        firstOfFile.add(size);
        return this;
    }

    /** Makes room for {@code more} points, for speed only. */
    public SurveyBuilder expect(int more) {
        if (Math.addExact(size, more) > x.length) {
            grow(size + more);
        }
        return this;
    }

    /** Adds a point without a code. */
    public SurveyBuilder point(double east, double north, double height) {
        return point(east, north, height, "", 0);
    }

    /** Adds a point with what the crew wrote beside it. */
    public SurveyBuilder point(double east, double north, double height, String code) {
        return point(east, north, height, code, 0);
    }

    /**
     * Adds a point.
     *
     * @param east easting, frame metres
     * @param north northing, frame metres
     * @param height height, m
     * @param code what the crew wrote beside it; may be empty
     * @param line line of its file from 1, or 0
     * @throws IllegalArgumentException if a coordinate is not finite
     */
    public SurveyBuilder point(double east, double north, double height, String code, int line) {
        refuseIfBuilt();
        if (!Double.isFinite(east) || !Double.isFinite(north) || !Double.isFinite(height)) {
            throw new IllegalArgumentException(
                    "point must be finite, was " + east + " / " + north + " / " + height);
        }
        if (size == x.length) {
            grow(Math.addExact(size, size >> 1) + 1);
        }
        x[size] = east;
        y[size] = north;
        z[size] = height;
        if (line != 0 && sourceLine == null) {
            sourceLine = new int[x.length];
        }
        if (sourceLine != null) {
            sourceLine[size] = line;
        }
        if (!code.isEmpty() && codeNumber == null) {
            codeNumber = new int[x.length];
        }
        if (codeNumber != null && !code.isEmpty()) {
            Integer known = codes.get(code);
            if (known == null) {
                known = codes.size();
                codes.put(code, known);
            }
            codeNumber[size] = known;
        }
        size++;
        return this;
    }

    /** Adds points without codes, frame metres; the arrays are copied and equally long. */
    public SurveyBuilder points(double[] east, double[] north, double[] height) {
        if (east.length != north.length || east.length != height.length) {
            throw new IllegalArgumentException(
                    "unequal counts " + east.length + ", " + north.length + ", " + height.length);
        }
        expect(east.length);
        for (int i = 0; i < east.length; i++) {
            point(east[i], north[i], height[i]);
        }
        return this;
    }

    /** Adds a breakline through points that were added before. */
    public SurveyBuilder breakline(String code, int... points) {
        return line(new SurveyLine(SurveyLine.Kind.BREAKLINE, code, points));
    }

    /** Adds a contour through points that were added before. */
    public SurveyBuilder contour(String code, int... points) {
        return line(new SurveyLine(SurveyLine.Kind.CONTOUR, code, points));
    }

    /** Adds a line through points that were added before. */
    public SurveyBuilder line(SurveyLine line) {
        refuseIfBuilt();
        for (int k = 0; k < line.size(); k++) {
            if (line.point(k) < 0 || line.point(k) >= size) {
                throw new IllegalArgumentException(
                        "line goes through point " + line.point(k) + " of " + size);
            }
        }
        lines.add(line);
        return this;
    }

    /** Says how far the survey is to be believed, frame metres. */
    public SurveyBuilder boundary(Boundary outside) {
        refuseIfBuilt();
        boundary = outside;
        return this;
    }

    /** True if a boundary was given. */
    public boolean hasBoundary() {
        return boundary != null;
    }

    /** Adds a probe hole, its place in frame metres. */
    public SurveyBuilder probe(Probe probe) {
        refuseIfBuilt();
        probes.add(probe);
        return this;
    }

    /** Probe holes so far, their places in frame metres. */
    public List<Probe> probes() {
        return List.copyOf(probes);
    }

    /** Says how far heights may be off, one standard deviation, m, zero or more. */
    public SurveyBuilder heightError(double metres) {
        refuseIfBuilt();
        if (metres < 0 || Double.isInfinite(metres)) {
            throw new IllegalArgumentException("height error " + metres);
        }
        heightError = metres;
        return this;
    }

    /** Adds what was understood of a file. */
    public SurveyBuilder reading(Reading reading) {
        readings.add(reading);
        return this;
    }

    /** Adds something that deserves a look; its place in local metres. */
    public SurveyBuilder finding(Finding finding) {
        findings.add(finding);
        return this;
    }

    /** Adds something that reading rested on. */
    public SurveyBuilder assumption(Assumption assumption) {
        assumptions.add(assumption);
        return this;
    }

    /** Sets the local zero instead of having it chosen, frame metres, finite. */
    public SurveyBuilder origin(double east, double north) {
        if (!Double.isFinite(east) || !Double.isFinite(north)) {
            throw new IllegalArgumentException("origin " + east + " / " + north);
        }
        fixedX = east;
        fixedY = north;
        return this;
    }

    /**
     * The survey. Its local zero is the frame's own zero where the frame is plain local coordinates
     * within {@value #OWN_ZERO} m of it, else the south-west corner of the points rounded down to
     * whole {@value #ZERO_STEP} m.
     */
    public Survey build() {
        refuseIfBuilt();
        built = true;
        double originX = fixedX;
        double originY = fixedY;
        if (Double.isNaN(originX)) {
            boolean ownZero = frame.isLocal() && within(x) && within(y);
            originX = ownZero ? 0 : roundedLowest(x);
            originY = ownZero ? 0 : roundedLowest(y);
        }
        grow(size);
        for (int i = 0; i < size; i++) {
            x[i] -= originX;
            y[i] -= originY;
        }
        return new Survey(this, originX, originY);
    }

    private boolean within(double[] values) {
        for (int i = 0; i < size; i++) {
            if (Math.abs(values[i]) > OWN_ZERO) {
                return false;
            }
        }
        return true;
    }

    private double roundedLowest(double[] values) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < size; i++) {
            lowest = Math.min(lowest, values[i]);
        }
        return size == 0 ? 0 : Math.floor(lowest / ZERO_STEP) * ZERO_STEP;
    }

    private void grow(int to) {
        if (to == x.length || to < size) {
            return;
        }
        x = Arrays.copyOf(x, to);
        y = Arrays.copyOf(y, to);
        z = Arrays.copyOf(z, to);
        if (sourceLine != null) {
            sourceLine = Arrays.copyOf(sourceLine, to);
        }
        if (codeNumber != null) {
            codeNumber = Arrays.copyOf(codeNumber, to);
        }
    }

    private void refuseIfBuilt() {
        if (built) {
            throw new IllegalStateException("this survey is already built");
        }
    }
}
