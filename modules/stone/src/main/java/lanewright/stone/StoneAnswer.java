package lanewright.stone;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import lanewright.lane.shape.Layer;
import lanewright.lane.volume.Running;
import lanewright.lane.volume.State;

/** How much stone a lane of even width takes on even ground, before anything is surveyed. */
public final class StoneAnswer {

    private StoneAnswer() {}

    /**
     * Stone for a straight lane on level ground.
     *
     * <p>Each layer's edges slope {@code S} to 1, so a layer {@code w} wide on top and {@code t}
     * thick has the area {@code t (w + S t)}, and the layer under it is {@code w + 2 S t} wide on
     * top.
     *
     * @param length of the lane, m, over zero
     * @param width travelled width at the top of the stone, m, over zero
     * @param layers from the top down, as in the typical section
     * @param supplies the stone of each layer, in the same order
     * @return the answer, layers in the order of laying
     */
    public static StoneReport of(
            double length, double width, List<Layer> layers, List<Supply> supplies) {
        if (!(length > 0 && length < 1e6) || !(width > 0 && width < 1e3)) {
            throw new IllegalArgumentException(
                    "length and width must be over zero, were " + length + ", " + width);
        }
        if (layers.size() != supplies.size()) {
            throw new IllegalArgumentException("each layer needs its stone");
        }
        List<LayerStone> answer = new ArrayList<>();
        double top = width;
        for (int i = 0; i < layers.size(); i++) {
            Layer layer = layers.get(i);
            double area = layer.thickness() * (top + layer.edgeSlope() * layer.thickness());
            answer.add(
                    LayerStone.of(
                            supplies.get(i),
                            layer.thickness(),
                            Running.even(layer.role(), State.COMPACTED, 0, length, area)));
            top += 2 * layer.edgeSlope() * layer.thickness();
        }
        Collections.reverse(answer);
        return StoneReport.of(answer);
    }
}
