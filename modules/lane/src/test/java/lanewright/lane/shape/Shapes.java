package lanewright.lane.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * A typical section for tests, the same on both sides unless told: begins as bare earth, level
 * across, 4 m wide, without shoulder or ditch, slopes 2:1.
 */
public final class Shapes {

    private double width = 4;
    private CrossFall fall = CrossFall.CROWN;
    private double crossSlope;
    private Bed bed = Bed.ON_TOP;
    private final List<Layer> layers = new ArrayList<>();
    private double under = Double.NaN;
    private double shoulder;
    private double foreslope = 2;
    private Ditch ditch = Ditch.NONE;
    private double backslope = 2;
    private double cutSlope = 2;
    private boolean strip;
    private double topsoilBack;
    private boolean topsoilInDitch;

    /** A lane of bare earth. */
    public static Shapes lane(double width) {
        Shapes shapes = new Shapes();
        shapes.width = width;
        return shapes;
    }

    /** Falls both ways. */
    public Shapes crown(double slope) {
        crossSlope = slope;
        return this;
    }

    /** Falls one way. */
    public Shapes shed(CrossFall way, double slope) {
        fall = way;
        crossSlope = slope;
        return this;
    }

    /** Adds a layer below those there are. */
    public Shapes layer(String role, double thickness, double edge) {
        layers.add(new Layer(role, thickness, edge));
        return this;
    }

    /** Adds a layer with its own width. */
    public Shapes layer(String role, double thickness, double edge, double top) {
        layers.add(new Layer(role, thickness, edge, top));
        return this;
    }

    /** Sets the stone in a box. */
    public Shapes boxed() {
        bed = Bed.BOXED;
        return this;
    }

    /** Gives the subgrade its own fall. */
    public Shapes under(double slope) {
        under = slope;
        return this;
    }

    /** Shoulders. */
    public Shapes shoulder(double metres) {
        shoulder = metres;
        return this;
    }

    /** Slopes, run over rise: down to the ditch or ground, up from the ditch, up without one. */
    public Shapes slopes(double fore, double back, double cut) {
        foreslope = fore;
        backslope = back;
        cutSlope = cut;
        return this;
    }

    /** Ditches. */
    public Shapes ditch(DitchRule rule, double depth, double bottom) {
        ditch = new Ditch(rule, depth, bottom);
        return this;
    }

    /** Strips topsoil. */
    public Shapes strip() {
        strip = true;
        return this;
    }

    /** Puts topsoil back. */
    public Shapes topsoilBack(double thickness, boolean inDitch) {
        topsoilBack = thickness;
        topsoilInDitch = inDitch;
        return this;
    }

    /** The same shape on both sides. */
    public TypicalSection make() {
        SideShape side = side();
        return make(side, side);
    }

    /** Different sides. */
    public TypicalSection make(SideShape left, SideShape right) {
        return new TypicalSection(
                width,
                fall,
                crossSlope,
                bed,
                layers,
                under,
                left,
                right,
                strip,
                topsoilBack,
                topsoilInDitch);
    }

    /** One side as it stands. */
    public SideShape side() {
        return new SideShape(shoulder, foreslope, ditch, backslope, cutSlope);
    }
}
