package lanewright.sheets.set;

import lanewright.measure.UnitSystem;
import lanewright.planner.listing.WordListings;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;
import org.jspecify.annotations.Nullable;

/** The words of the trade that the set uses, at its end. */
final class WordsSheet {

    /** As the list on the cover has it. */
    static final String NAME = "Words of the trade";

    private WordsSheet() {}

    static Sheet of(UnitSystem units, @Nullable Sheet before) {
        var flow = new Flow(Paper.of(units), units, NAME, NAME, "", before);
        flow.table(WordListings.words());
        return flow.sheet();
    }
}
