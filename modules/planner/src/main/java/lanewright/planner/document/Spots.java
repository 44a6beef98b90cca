package lanewright.planner.document;

import java.util.List;
import lanewright.measure.QuantityException;
import lanewright.measure.UnitSystem;

/** Places as they are written in one text, such as on a command line. */
public final class Spots {

    private Spots() {}

    /**
     * A place: {@code 1200 ft, 850 ft} for east and north, or {@code -86.5°, 39.2°} for longitude
     * and latitude.
     *
     * @throws QuantityException if it is no such place
     */
    public static Spot read(String text) throws QuantityException {
        List<String> parts = List.of(text.split(",", -1));
        if (parts.size() != 2) {
            throw new QuantityException(
                    "\"" + text + "\" is not a place",
                    "Write east and north with their unit and a comma between, as in 1200 ft,"
                            + " 850 ft, or longitude and latitude, as in -86.5°, 39.2°");
        }
        boolean degrees = parts.get(0).contains("°") || parts.get(0).contains("deg");
        try {
            if (degrees) {
                return Spot.onEarth(
                        Codecs.LONGITUDE.read(parts.get(0), UnitSystem.METRIC),
                        Codecs.LATITUDE.read(parts.get(1), UnitSystem.METRIC));
            }
            return Spot.at(
                    Codecs.COORDINATE.read(parts.get(0), UnitSystem.METRIC),
                    Codecs.COORDINATE.read(parts.get(1), UnitSystem.METRIC));
        } catch (Codec.Unread e) {
            String remedy = e.remedy();
            throw new QuantityException(
                    e.what(),
                    remedy.endsWith(".") ? remedy.substring(0, remedy.length() - 1) : remedy);
        }
    }
}
