package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import lanewright.sheets.page.Sheet;
import lanewright.sheets.paint.PdfBook;

/** Puts the sheets together: counts the pages, lists them on the cover and numbers them all. */
final class Binder {

    /** Said at the foot of every page. */
    static final String CAUTION =
            "A plan to think and ask with. Local codes, the road's owner and licensed practice come"
                    + " first; check heights on the ground.";

    private Binder() {}

    /**
     * The pages of the whole set.
     *
     * @param plan name of the plan
     * @param date as the owner wrote it; may be empty
     * @param cover makes the cover from the list of the other sheets; asked again until the number
     *     of its own pages agrees with what the list says
     * @param sheets the others, in order
     */
    static List<PdfBook.Leaf> bind(
            String plan,
            String date,
            Function<List<CoverSheet.Entry>, Sheet> cover,
            List<Sheet> sheets) {
        int guess = 1;
        Sheet front = cover.apply(index(guess, sheets));
        while (front.pages().size() != guess) {
            guess = front.pages().size();
            front = cover.apply(index(guess, sheets));
        }
        var all = new ArrayList<Sheet>();
        all.add(front);
        all.addAll(sheets);
        var leaves = new ArrayList<PdfBook.Leaf>();
        for (Sheet.Page page : Sheet.finished(all, plan, date, CAUTION)) {
            leaves.add(new PdfBook.Leaf(page.begins(), page.drawing()));
        }
        return leaves;
    }

    private static List<CoverSheet.Entry> index(int coverPages, List<Sheet> sheets) {
        var index = new ArrayList<CoverSheet.Entry>();
        int page = coverPages + 1;
        for (Sheet sheet : sheets) {
            int first = sheet.joins() ? page - 1 : page;
            index.add(new CoverSheet.Entry(sheet.name(), first));
            page = first + sheet.pages().size();
        }
        return index;
    }
}
