package lanewright.sheets.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class CsvTableTest {

    private static final Listing LISTING =
            new Listing(
                    "t",
                    "T",
                    List.of(
                            Listing.Column.of("Station", Kind.STATION),
                            Listing.Column.of("Volume", Kind.VOLUME),
                            Listing.Column.words("Note")),
                    List.of(
                            List.of(
                                    Listing.cell(Quantity.station(381)),
                                    Listing.cell(Quantity.volume(1234.4)),
                                    Listing.cell("a, \"b\"\nc")),
                            List.of(
                                    Listing.BLANK,
                                    Listing.cell(Quantity.volume(Double.NaN)),
                                    Listing.cell("=1+1"))),
                    0);

    @Test
    @Tag("outside")
    @DisplayName(
            "Comma-separated tables | RFC 4180 (2005), section 2: CRLF, quotes doubled inside"
                    + " quotes | from memory")
    void cellsAreQuotedAndLinesEndAsTheStandardSays() {
        assertEquals(
                String.join(
                        "\r\n",
                        "Station,Volume (m³),Note",
                        "0+381.0,1234.4,\"a, \"\"b\"\"\nc\"",
                        "\"\",,'=1+1",
                        ""),
                CsvTable.of(LISTING, UnitSystem.METRIC));
    }

    @Test
    void theUnitStandsInTheHead() {
        assertEquals(
                "Station,Volume (yd³),Note",
                CsvTable.of(LISTING, UnitSystem.US).lines().findFirst().orElse(""));
    }
}
