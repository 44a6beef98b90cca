package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Saying;

/** The words of the trade that the sheets use, each in a line. */
public final class WordListings {

    private WordListings() {}

    /** The words, in the order in which the sheets need them. */
    public static Listing words() {
        var rows = new ArrayList<List<Saying>>();
        add(rows, "Station", "Distance along the lane's line from its start at the road.");
        add(rows, "Offset", "Distance square to the lane's line; with a minus it is to the left.");
        add(
                rows,
                "Line",
                "The line that stations run along; the grade is the finished height on it.");
        add(
                rows,
                "Grade",
                "How steep the lane is along its line; uphill as you walk in, with a minus downhill.");
        add(
                rows,
                "Crown, shed",
                "Falling to both sides from the middle; falling to one side in one plane.");
        add(
                rows,
                "Edge",
                "Where the travelled stone ends; its shoulder of soil lies outside it, lower by the stone.");
        add(rows, "Hinge", "Outer edge of the shoulder, where the slope begins to go down.");
        add(
                rows,
                "Foreslope",
                "Slope from the hinge down to a ditch or to the ground; 3:1 goes out three and down one.");
        add(rows, "Backslope", "Slope from the ditch up to the ground.");
        add(
                rows,
                "Catch",
                "Where a slope meets the ground as it is now: there the digging or filling begins.");
        add(rows, "Subgrade", "The earth as shaped, under the stone.");
        add(
                rows,
                "Bank, loose, packed",
                "The same earth as it lies in the ground, dug and on a truck, and rolled in place.");
        add(
                rows,
                "Undercut",
                "Soft soil dug out below the subgrade; its refill is fit soil or stone, packed.");
        add(
                rows,
                "Edge refill",
                "A sliver of earth that closes the edge of a cut; too little to order.");
        add(rows, "Lift", "One layer of fill, rolled before the next.");
        add(rows, "Invert", "The lowest line inside a pipe.");
        add(
                rows,
                "Average end area",
                "Volume between two sections: the mean of their areas times their distance.");
        return new Listing(
                "words",
                "As they are used in this set",
                List.of(Column.words("Word"), Column.words("What it means")),
                rows,
                0);
    }

    private static void add(List<List<Saying>> rows, String word, String means) {
        rows.add(List.of(Listing.cell(word), Listing.cell(means)));
    }
}
