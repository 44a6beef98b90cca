package lanewright.desktop.lane;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import lanewright.planner.document.Plan;
import lanewright.planner.document.ShapePart;

/** Shapes across with one thing changed. */
public final class Shapes {

    private Shapes() {}

    /** Name of the shape that holds at a station, m. */
    public static String nameAt(Plan plan, double station) {
        for (ShapePart.Along along : plan.along()) {
            if (station <= along.to()) {
                return along.shape();
            }
        }
        return plan.along().get(plan.along().size() - 1).shape();
    }

    /** The plan with the shape of a name changed. */
    public static Plan changed(Plan plan, String name, UnaryOperator<ShapePart> change) {
        List<ShapePart> shapes = new ArrayList<>();
        for (ShapePart shape : plan.shapes()) {
            shapes.add(shape.name().equals(name) ? change.apply(shape) : shape);
        }
        return plan.shaped(shapes, plan.along(), plan.ditchBottoms());
    }

    /** Another travelled width, m. */
    public static ShapePart wide(ShapePart shape, double width) {
        return make(shape, width, shape.crossSlope(), shape.layers(), shape.left(), shape.right());
    }

    /** Another cross slope, rise over run. */
    public static ShapePart falling(ShapePart shape, double crossSlope) {
        return make(shape, shape.width(), crossSlope, shape.layers(), shape.left(), shape.right());
    }

    /** Other sides. */
    public static ShapePart sides(ShapePart shape, ShapePart.Side left, ShapePart.Side right) {
        return make(shape, shape.width(), shape.crossSlope(), shape.layers(), left, right);
    }

    /** Another thickness of one layer, m. */
    public static ShapePart thick(ShapePart shape, int layer, double thickness) {
        List<ShapePart.Layer> layers = new ArrayList<>(shape.layers());
        ShapePart.Layer old = layers.get(layer);
        layers.set(layer, new ShapePart.Layer(old.role(), thickness, old.edgeSlope(), old.width()));
        return make(shape, shape.width(), shape.crossSlope(), layers, shape.left(), shape.right());
    }

    /** Another depth of a ditch, m. */
    public static ShapePart.Side deep(ShapePart.Side side, double depth) {
        return new ShapePart.Side(
                side.shoulder(),
                side.foreslope(),
                side.ditch(),
                depth,
                side.ditchBottom(),
                side.backslope(),
                side.cutSlope());
    }

    /** Other slopes of a side, run over rise. */
    public static ShapePart.Side sloped(ShapePart.Side side, double fore, double back) {
        return new ShapePart.Side(
                side.shoulder(),
                fore,
                side.ditch(),
                side.ditchDepth(),
                side.ditchBottom(),
                back,
                side.cutSlope());
    }

    private static ShapePart make(
            ShapePart shape,
            double width,
            double crossSlope,
            List<ShapePart.Layer> layers,
            ShapePart.Side left,
            ShapePart.Side right) {
        return new ShapePart(
                shape.name(),
                width,
                shape.fall(),
                crossSlope,
                shape.bed(),
                layers,
                shape.subgradeFall(),
                left,
                right,
                shape.strip(),
                shape.topsoilBack(),
                shape.topsoilInDitch());
    }
}
