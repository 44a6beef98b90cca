package lanewright.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class NearestTest {

    @Test
    @Tag("outside")
    @DisplayName(
            "edit distance kitten to sitting is 3, Saturday to Sunday is 3, a swap is 1"
                    + " | textbook examples of Levenshtein and Damerau distance | from memory")
    void countsSlipsAsTheTextbooksDo() {
        assertEquals(3, Nearest.slips("kitten", "sitting"));
        assertEquals(3, Nearest.slips("saturday", "sunday"));
        assertEquals(1, Nearest.slips("wdith", "width"));
        // Optimal string alignment may not touch a letter twice: 3, where the unrestricted is 2.
        assertEquals(3, Nearest.slips("ca", "abc"));
        assertEquals(0, Nearest.slips("", ""));
        assertEquals(4, Nearest.slips("", "four"));
    }

    @Test
    void offersTheNameThatWasMeant() {
        List<String> known = List.of("width", "depth", "crown", "shoulder");
        assertEquals(Optional.of("width"), Nearest.to("widht", known));
        assertEquals(Optional.of("width"), Nearest.to("Widths", known));
        assertEquals(Optional.of("shoulder"), Nearest.to("sholders", known));
    }

    @Test
    void offersNothingFarFetched() {
        List<String> known = List.of("width", "depth", "m");
        assertEquals(Optional.empty(), Nearest.to("price", known));
        assertEquals(Optional.empty(), Nearest.to("x", known));
        assertEquals(Optional.empty(), Nearest.to("", known));
        assertEquals(Optional.empty(), Nearest.to("w".repeat(100_000), known));
    }

    @Test
    void takesTheFirstOfTwoEquallyNear() {
        assertEquals(Optional.of("bale"), Nearest.to("bame", List.of("bale", "base")));
        assertEquals(Optional.of("base"), Nearest.to("bame", List.of("base", "bale")));
    }

    @Test
    void doesNotFollowTheMachinesLanguage() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(new Locale("tr", "TR"));
            assertEquals(Optional.of("inside"), Nearest.to("INSIDE", List.of("inside")));
        } finally {
            Locale.setDefault(before);
        }
    }
}
