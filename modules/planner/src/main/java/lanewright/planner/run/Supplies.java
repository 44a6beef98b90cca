package lanewright.planner.run;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.Layer;
import lanewright.lane.shape.Stretch;
import lanewright.lane.shape.TypicalSection;
import lanewright.lane.volume.LaneVolumes;
import lanewright.lane.volume.Running;
import lanewright.measure.Kind;
import lanewright.measure.Price;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.planner.document.StonePart;
import lanewright.stone.LayerStone;
import lanewright.stone.StoneReport;
import lanewright.stone.StoneTables;
import lanewright.stone.Supply;
import org.jspecify.annotations.Nullable;

/** Turns what a plan says of its stone into supplies, and volumes into tons and loads. */
public final class Supplies {

    private Supplies() {}

    /**
     * What the owner says of one layer's stone.
     *
     * @throws IllegalArgumentException if a name is in no table
     */
    public static Supply of(StonePart stone, StonePart.Material material) {
        StoneTables.Figure density = density(material);
        StoneTables.Figure loose = StoneTables.loose(material.role(), material.loose());
        String gradation = material.gradation();
        return new Supply(
                material.role(),
                density.value(),
                density.from(),
                loose.value(),
                loose.from(),
                stone.loss(),
                stone.payload(),
                price(material.price(), stone.payload()),
                material.inHand(),
                gradation);
    }

    private static StoneTables.Figure density(StonePart.Material material) {
        if (Double.isNaN(material.density())) {
            return StoneTables.density(material.role(), material.kind());
        }
        return StoneTables.yours(
                "in-place density of " + material.role() + " stone",
                material.density(),
                Saying.of("{}", Quantity.density(material.density())));
    }

    /** Money for one kilogram; NaN without a price. */
    private static double price(@Nullable Price price, double payload) {
        if (price == null) {
            return Double.NaN;
        }
        return price.kind() == Kind.COUNT ? price.amount() / payload : price.of(1);
    }

    /**
     * The stone of a lane.
     *
     * @throws IllegalArgumentException if a name is in no table
     */
    static StoneReport report(StonePart stone, LaneDesign design, LaneVolumes volumes) {
        List<LayerStone> layers = new ArrayList<>();
        for (Running running : volumes.stone()) {
            StonePart.Material material = material(stone, running.name());
            layers.add(
                    LayerStone.of(of(stone, material), thickness(design, running.name()), running));
        }
        Collections.reverse(layers); // laid from the bottom up
        return StoneReport.of(layers);
    }

    private static StonePart.Material material(StonePart stone, String role) {
        for (StonePart.Material material : stone.materials()) {
            if (material.role().equals(role)) {
                return material;
            }
        }
        throw new IllegalArgumentException("nothing is said of the stone " + role);
    }

    /** The greatest thickness at which a role is laid anywhere, m. */
    private static double thickness(LaneDesign design, String role) {
        double thickest = 0;
        for (Stretch<TypicalSection> stretch : design.typical()) {
            for (Layer layer : stretch.value().layers()) {
                if (layer.role().equals(role)) {
                    thickest = Math.max(thickest, layer.thickness());
                }
            }
        }
        return thickest;
    }
}
