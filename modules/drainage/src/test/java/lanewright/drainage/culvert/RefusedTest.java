package lanewright.drainage.culvert;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Bad figures are refused in words that say what to do. */
class RefusedTest {

    private static final Barrel PIPE = new Barrel(Material.METAL, new Circle(0.6), 0.024, 0.0127);
    private static final Inlet INLET = Inlet.of(PIPE, Inlet.End.PROJECTING);
    private static final Culvert CULVERT = new Culvert(PIPE, INLET, 10, 0.02, 1);

    private static void refused(String words, Runnable what) {
        String said = assertThrows(IllegalArgumentException.class, what::run).getMessage();
        assertTrue(said.contains(words), said);
    }

    @Test
    void barrels() {
        refused("diameter", () -> new Circle(0));
        refused("diameter", () -> new Circle(Double.NaN));
        refused("span of a box", () -> new Box(-1, 1));
        refused("rise of a box", () -> new Box(1, 0));
        refused("Manning's n", () -> new Barrel(Material.METAL, new Circle(1), 0, 0));
        refused("wall", () -> new Barrel(Material.METAL, new Circle(1), 0.024, -1));
        refused("treat more water as a full barrel", () -> new Circle(1).area(1.1));
        refused("between 0 and its rise", () -> new Circle(1).topWidth(-0.1));
        refused("one row of the maker's table", () -> PipeArch.of(1, 0.7, 0.69));
        refused("one row of the maker's table", () -> PipeArch.of(1, 0.7, 0.2));
        refused("span of a pipe-arch", () -> PipeArch.of(0, 0.7, 0.5));
        refused("no barrel is made of", () -> Material.of("wood"));
        refused(
                "the pipe runs full",
                () ->
                        lanewright.drainage.channel.Manning.normalDepth(
                                new Circle(0.3), 5, 0.024, 0.01));
    }

    @Test
    void inlets() {
        refused("nearest is", () -> Inlet.named("pipe-arch, projectin"));
        Barrel concrete = new Barrel(Material.CONCRETE, new Circle(0.6), 0.012, 0.08);
        refused("take HEADWALL or PROJECTING", () -> Inlet.of(concrete, Inlet.End.MITRED));
        refused(
                "take all four from one row",
                () ->
                        new Inlet(
                                "x",
                                Inlet.Shape.ROUND,
                                Material.METAL,
                                Inlet.End.OTHER,
                                Inlet.Form.ONE,
                                -1,
                                1,
                                0.04,
                                0.7,
                                false,
                                0.5,
                                "x"));
        refused(
                "Ke was",
                () ->
                        new Inlet(
                                "x",
                                Inlet.Shape.ROUND,
                                Material.METAL,
                                Inlet.End.OTHER,
                                Inlet.Form.ONE,
                                0.01,
                                1,
                                0.04,
                                0.7,
                                false,
                                -0.5,
                                "x"));
    }

    @Test
    void culverts() {
        refused("length of a barrel", () -> new Culvert(PIPE, INLET, 0, 0.02, 1));
        refused("lay the outlet lower", () -> new Culvert(PIPE, INLET, 10, -0.02, 1));
        refused("write 2 percent as 0.02", () -> new Culvert(PIPE, INLET, 10, 2, 1));
        refused("1 to 12 barrels", () -> new Culvert(PIPE, INLET, 10, 0.02, 0));
        refused("wholly blocked", () -> CULVERT.withOpen(0));
        refused("discharge", () -> Headwater.of(CULVERT, 0, 0));
        refused("discharge", () -> Headwater.of(CULVERT, 0, Double.NaN));
        refused("tailwater", () -> Headwater.of(CULVERT, -1, 1));
        refused("tailwater", () -> new Performance(CULVERT, -1));
        refused("headwater", () -> new Performance(CULVERT, 0).discharge(-1));
        refused("discharge", () -> InletControl.headwater(PIPE, INLET, 0.02, -1));
        refused("length", () -> OutletControl.of(PIPE, INLET, -1, 0.02, 0, 1));
    }

    @Test
    void crests() {
        refused("two places", () -> new Overtopping(List.of(1.0), List.of(1.0), 1.5));
        refused("two places", () -> new Overtopping(List.of(1.0, 2.0), List.of(1.0), 1.5));
        refused(
                "put them in order",
                () -> new Overtopping(List.of(1.0, 1.0), List.of(1.0, 1.0), 1.5));
        refused(
                "measure it",
                () -> new Overtopping(List.of(0.0, 1.0), List.of(1.0, Double.NaN), 1.5));
        refused("multiply one in feet by 0.552", () -> Overtopping.flat(10, 1, 2.7));
        refused("weir coefficient", () -> Overtopping.flat(10, 1, 0));
        refused("length of a crest", () -> Overtopping.flat(0, 1, 1.5));
        refused("water over the crest", () -> Overtopping.gravel(-1));
        refused("discharge", () -> Overtopping.flat(10, 1, 1.5).level(-1));
        refused(
                "lay the pipe lower than the lane",
                () ->
                        Blocked.of(
                                CULVERT,
                                0,
                                Overtopping.flat(10, -0.1, 1.5),
                                1,
                                1,
                                Blocked.Share.HALF));
        refused(
                "no water comes to the pipe",
                () ->
                        Blocked.of(
                                CULVERT,
                                0,
                                Overtopping.flat(10, 1, 1.5),
                                0,
                                1,
                                Blocked.Share.HALF));
    }

    @Test
    void choices() {
        refused("discharge", () -> wanted(0, 1, 0.02, 1));
        refused("headwater allowed", () -> wanted(1, 0, 0.02, 1));
        refused("lay the outlet lower", () -> wanted(1, 1, -0.02, 1));
        refused("room from the inlet invert", () -> wanted(1, 1, 0.02, -1));
        refused("no material", () -> PipeChoice.of(wanted(1, 1, 0.02, 1), List.<Material>of()));
        refused("keep heavier machines off", () -> Load.building(1e7));
        refused("keep heavier machines off", () -> Load.building(0));
        refused("lay the pipe lower than the lane", () -> FillLength.of(1, 1, 0, 4, 3, 0));
        refused("lay the outlet lower", () -> FillLength.of(2, 1, 1.1, 4, 3, 0));
        refused("sold piece", () -> FillLength.of(2, 1, 0.9, 4, 3, 0).sold(0));
        refused("leave it out", () -> Apron.of(1, 1, OptionalDouble.empty(), OptionalDouble.of(2)));
        refused("tailwater", () -> Apron.of(1, 1, OptionalDouble.of(-1), OptionalDouble.empty()));
    }

    private static PipeChoice.Wanted wanted(
            double discharge, double headwater, double slope, double room) {
        return new PipeChoice.Wanted(
                discharge, headwater, 0, slope, 10, room, Load.ROAD, Inlet.End.PROJECTING);
    }
}
