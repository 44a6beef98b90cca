package lanewright.drainage.runoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class ConcentrationTest {

    private static final double FOOT = 0.3048;
    private static final double MINUTE = 60;
    private static final double HOUR = 3600;

    @Test
    @Tag("outside")
    @DisplayName(
            "time over land by the FAA form | Colorado mine permit, quarry drainage report, 1989,"
                    + " sub-basin D | read")
    void overlandAndSwale() {
        double over = Concentration.faa(500 * FOOT, 0.10, 0.006);
        double along = Concentration.travel(1300 * FOOT, 2.25 * FOOT);
        assertEquals(47.72, over / MINUTE, 0.01);
        assertEquals(9.63, along / MINUTE, 0.01);
        assertEquals(57.35, (over + along) / MINUTE, 0.02);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "time in a channel by Kirpich | TxDOT, Hydraulic Design Manual, 07/2016, chapter 4,"
                    + " section 11 | read")
    void channelOfAMile() {
        double t = Concentration.kirpich((5280 - 500) * FOOT, 0.0095, Concentration.Surface.BARE);
        assertEquals(32, t / MINUTE, 0.5);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "time by Kirpich, 1 km at 5 % | test of a public hydrology library, metric constant"
                    + " 0.0195 | read")
    void aKilometre() {
        double t = Concentration.kirpich(1000, 0.05, Concentration.Surface.BARE);
        // Its constant is 0.15 % over that of the form in feet.
        assertEquals(12.61, t / MINUTE, 0.03);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "time by Kirpich, 2000 ft at 4 % | the form of TxDOT, Hydraulic Design Manual, chapter"
                    + " 4; a general formula page prints 13.7 with both powers misworked | derived")
    void aPublishedAnswerThatIsWrong() {
        double t = Concentration.kirpich(2000 * FOOT, 0.04, Concentration.Surface.BARE);
        assertEquals(9.378, t / MINUTE, 0.002);
    }

    @Test
    @Tag("outside")
    @DisplayName("time in three parts | SCS, TR-55, 1986, example 3-1 | from memory")
    void sheetShallowAndChannel() {
        double sheet = Concentration.sheet(0.24, 100 * FOOT, 3.6 * 0.0254, 0.01);
        double speed = Concentration.shallowSpeed(0.01, false);
        double shallow = Concentration.travel(1400 * FOOT, speed);
        double channel = Concentration.travel(7300 * FOOT, 2.05 * FOOT);
        assertEquals(0.3, sheet / HOUR, 0.005);
        assertEquals(1.6, speed / FOOT, 0.05);
        assertEquals(0.24, shallow / HOUR, 0.005);
        assertEquals(1.53, (sheet + shallow + channel) / HOUR, 0.01);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "speed of shallow flow | SCS, TR-55, 1986, figure 3-1; a Colorado mine permit read 4.6"
                    + " ft/s off its paved line for unpaved ground | from memory")
    void shallowFlowOnTheRightLine() {
        assertEquals(3.61, Concentration.shallowSpeed(0.05, false) / FOOT, 0.005);
        assertEquals(4.55, Concentration.shallowSpeed(0.05, true) / FOOT, 0.005);
    }

    @Test
    @Tag("outside")
    @DisplayName("time by the lag of the NRCS and by Kerby | the published forms by hand | derived")
    void lagAndKerby() {
        assertEquals(0.4789, Concentration.lag(2000 * FOOT, 75, 0.05) / HOUR, 5e-5);
        assertEquals(19.421, Concentration.kerby(300 * FOOT, 0.40, 0.02) / MINUTE, 5e-4);
        double once = Concentration.kirpich(100, 0.01, Concentration.Surface.GRASS);
        assertEquals(
                1.70527,
                Concentration.kirpich(200, 0.01, Concentration.Surface.GRASS) / once,
                1e-5);
        assertEquals(
                0.58642,
                Concentration.kirpich(100, 0.04, Concentration.Surface.GRASS) / once,
                1e-5);
        assertEquals(2, once / Concentration.kirpich(100, 0.01, Concentration.Surface.BARE), 1e-12);
    }

    @Test
    void whatCannotBeIsRefused() {
        for (Runnable wrong :
                List.<Runnable>of(
                        () -> Concentration.kirpich(0, 0.1, Concentration.Surface.BARE),
                        () -> Concentration.kirpich(10, 0, Concentration.Surface.BARE),
                        () -> Concentration.kirpich(10, 5, Concentration.Surface.BARE),
                        () -> Concentration.kerby(10, 0, 0.1),
                        () -> Concentration.faa(10, 1.2, 0.1),
                        () -> Concentration.lag(10, 0, 0.1),
                        () -> Concentration.sheet(0.24, 60, 0.09, 0.01),
                        () -> Concentration.sheet(0.24, 20, 0, 0.01),
                        () -> Concentration.travel(10, 0))) {
            IllegalArgumentException told =
                    assertThrows(IllegalArgumentException.class, wrong::run);
            assertTrue(told.getMessage().contains(";"), told.getMessage());
        }
    }
}
