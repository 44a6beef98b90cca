package lanewright.desktop.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import lanewright.measure.QuantityException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedPriceTest {

    private static TypedPrice of(String typed, String currency, boolean said) throws Exception {
        return TypedPrice.of(typed, "27.50 per ton", currency, said);
    }

    @ParameterizedTest
    @CsvSource({
        "$28, 28 per ton",
        "28 $/ton, 28 per ton",
        "28$ / ton, 28 per ton",
        "28 dollars a ton, 28 per ton",
        "28 per ton, 28 per ton",
        "28/ton, 28 per ton",
        "28 dollars, 28 per ton",
        "US$ 28.50 per t, 28.50 per t",
        "$450 each, 450 per piece",
        "400 Dollars a load, 400 per load",
        "$28 USD per ton, 28 per ton",
        "$-5, -5 per ton",
    })
    void aPriceInThePlansMoney(String typed, String price) throws Exception {
        assertEquals(new TypedPrice(price, ""), of(typed, "dollars", true));
    }

    @Test
    void aWordThatThePlanUsesIsItsMoney() throws Exception {
        assertEquals(new TypedPrice("28 per t", ""), of("28 thalers a t", "thaler", true));
        assertEquals(new TypedPrice("28 per ton", ""), of("CAD 28", "$", true));
    }

    @ParameterizedTest
    @ValueSource(strings = {"€28", "28 EUR/ton", "28 pounds a ton", "28 CHF per ton"})
    void otherMoneyIsRefused(String typed) {
        var e = assertThrows(QuantityException.class, () -> of(typed, "dollars", true));
        assertEquals(true, e.what().endsWith("is not the money of your plan, which is dollars"));
    }

    @Test
    void aPlanThatNamesNoneTakesOnWhatIsWritten() throws Exception {
        assertEquals(new TypedPrice("28 per ton", "€"), of("€28", "dollars", false));
        assertEquals(new TypedPrice("28 per t", "kr"), of("28 kr/t", "money", false));
        assertEquals(new TypedPrice("28 per ton", ""), of("$28", "dollars", false));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "28 ton",
                "28 pounds",
                "28 perhaps",
                "ten a ton",
                "$28 €/ton",
                "per ton",
                ""
            })
    void nothingIsGuessed(String typed) throws Exception {
        assertEquals(new TypedPrice(typed, ""), of(typed, "dollars", true));
    }

    @Test
    void aVeryLongTextIsLeftAsItIs() {
        String typed = "$ 28 per " + " a per / ".repeat(100_000);
        assertTimeoutPreemptively(
                Duration.ofSeconds(5),
                () -> assertEquals(new TypedPrice(typed, ""), of(typed, "dollars", true)));
    }
}
