package lanewright.drainage;

import java.util.List;
import lanewright.drainage.along.Berm;
import lanewright.drainage.along.NamedOutlet;
import lanewright.drainage.pond.LowSpots;

/**
 * What the owner may choose about water.
 *
 * @param listed how deep and wide a low spot must be to be listed
 * @param flowArea land that must drain through a way of water for it to be shown and flagged, m²
 * @param soil how easily the soil washes
 * @param wetting rain in steps, and what else is asked of standing water
 * @param outlets places to which the owner leads water
 * @param berms windrows along the edges that the owner tells of
 */
public record WaterOptions(
        LowSpots.Threshold listed,
        double flowArea,
        Soil soil,
        Wetting wetting,
        List<NamedOutlet> outlets,
        List<Berm> berms) {

    /** How easily the soil washes. */
    public enum Soil {
        /** Coarse rock, gravel, some clay. */
        FIRM,
        /** Silt, fine sand and other fine, friable soil. */
        WASHES,
        /** Nobody has said; taken as soil that washes, to be safe. */
        NOT_KNOWN
    }

    /** The usual choice: 50 mm and 2 m², half an acre (2,000 m²), soil not known. */
    public static final WaterOptions USUAL =
            new WaterOptions(LowSpots.Threshold.USUAL, 2000, Soil.NOT_KNOWN);

    /** Nothing asked of standing water, and neither outlets nor berms. */
    public WaterOptions(LowSpots.Threshold listed, double flowArea, Soil soil) {
        this(listed, flowArea, soil, Wetting.NONE, List.of(), List.of());
    }

    /** Copies the lists and checks the ranges. */
    public WaterOptions {
        outlets = List.copyOf(outlets);
        berms = List.copyOf(berms);
        if (!(flowArea > 0) || !(listed.depth() >= 0) || !(listed.area() >= 0)) {
            throw new IllegalArgumentException(
                    "areas and depths must be over zero, were "
                            + flowArea
                            + ", "
                            + listed.area()
                            + ", "
                            + listed.depth());
        }
    }
}
