package lanewright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Listing;
import lanewright.measure.UnitSystem;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import org.jspecify.annotations.Nullable;

/**
 * Fills the pages of one sheet from top to bottom and begins a new page where something no longer
 * fits. Opens with the question and its answer in words; the proof follows.
 */
public final class Flow {

    /** Free paper at the sides and the top, pt. */
    static final double MARGIN = 43;

    /** Height of the title block at the foot of each page, free paper below it included, pt. */
    static final double FOOT = 58;

    /** Free paper between columns of a table that stand side by side, pt. */
    private static final double GUTTER = 18;

    /** From so many rows on a narrow table is set in columns side by side. */
    private static final int LONG = 12;

    /** So many rows of a table stand together at the least, where it breaks over pages. */
    private static final int TOGETHER = 3;

    /** A table stands beside others in no less than this part of the width that it wishes for. */
    private static final double PART = 0.85;

    /** Setting a table in columns side by side must take so much less height. */
    private static final double LOWER = 0.75;

    /** A sheet may begin on the last page of the one before if so much of it is free. */
    private static final double FREE = 0.4;

    /** Draws into a box that the flow has kept free. */
    @FunctionalInterface
    public interface Figure {
        /** Draws into {@code box}. */
        void draw(Pen pen, Box box);
    }

    private final Paper paper;
    private final UnitSystem units;
    private final String name;
    private final List<Pen> pages = new ArrayList<>();
    private final boolean joins;
    private Pen pen = new Pen();
    private double y;

    /**
     * Begins a sheet.
     *
     * @param paper size of every page of it
     * @param units in which its tables are written
     * @param name of the sheet, as the list on the cover has it
     * @param question that it answers; empty if it is drawn without one
     * @param answer in words, with a number and a place
     */
    public Flow(Paper paper, UnitSystem units, String name, String question, String answer) {
        this(paper, units, name, question, answer, null);
    }

    /**
     * Begins a sheet below the end of another one if much of its last page is free, or else on a
     * page of its own.
     *
     * @param paper size of every page of it
     * @param units in which its tables are written
     * @param name of the sheet, as the list on the cover has it
     * @param question that it answers; empty if it is drawn without one
     * @param answer in words, with a number and a place
     * @param before the sheet that comes before it in the set, or null to begin a page in any case
     */
    public Flow(
            Paper paper,
            UnitSystem units,
            String name,
            String question,
            String answer,
            @Nullable Sheet before) {
        this.paper = paper;
        this.units = units;
        this.name = name;
        joins = before != null && isRoomy(before, paper);
        if (before != null && joins) {
            pages.add(pen);
            if (before.pages().size() > 1) {
                // Whoever leafs through reads the head of the page alone.
                pen.words(
                        Role.NOTE,
                        "below: " + name,
                        MARGIN + width(),
                        MARGIN + Type.NOTE,
                        Type.NOTE,
                        Anchor.END);
            }
            y = before.end() + 8;
            pen.line(Role.FRAME, MARGIN, y, MARGIN + width(), y);
            y += 10;
        } else {
            begin();
        }
        if (!question.isEmpty()) {
            para(title(question), Type.TITLE, true, Role.TEXT, 0);
            y += 1;
        }
        if (!answer.isEmpty()) {
            para(answer, Type.ANSWER, false, Role.TEXT, 0);
        }
        y += 5;
    }

    private static boolean isRoomy(Sheet before, Paper paper) {
        double body = paper.height() - MARGIN - FOOT;
        return before.paper().equals(paper) && paper.height() - FOOT - before.end() >= FREE * body;
    }

    /** The name by which the cover lists the sheet, and its question. */
    private String title(String question) {
        return question.endsWith("?") ? name + ": " + question : question;
    }

    private void begin() {
        pen = new Pen();
        pages.add(pen);
        y = MARGIN;
        if (pages.size() > 1) {
            pen.words(
                    Role.NOTE,
                    name + ", continued",
                    MARGIN,
                    y + Type.NOTE,
                    Type.NOTE,
                    Anchor.START);
            y += Type.NOTE * Type.LEAD + 6;
        }
    }

    /** Width between the margins, pt. */
    public double width() {
        return paper.width() - 2 * MARGIN;
    }

    /** Height still free on this page, pt. */
    public double left() {
        return paper.height() - FOOT - y;
    }

    /** Units of the sheet. */
    public UnitSystem units() {
        return units;
    }

    /** Begins a new page unless {@code height} pt are free on this one. */
    public Flow need(double height) {
        if (left() < height && y > MARGIN + 40) {
            begin();
        }
        return this;
    }

    /** Leaves some space. */
    public Flow gap(double height) {
        y += height;
        return this;
    }

    /** A head above what follows; never alone at the foot of a page. */
    public Flow head(String text) {
        need(70);
        y += 7;
        para(text, Type.HEAD, true, Role.TEXT, 0);
        y += 2;
        return this;
    }

    /** A head with small print and a table below it, none of which stands alone. */
    public Flow head(String text, String note, Listing listing) {
        return head(text, note, least(listing)).table(listing);
    }

    /**
     * A head with small print below it, and after them what must begin on the same page.
     *
     * @param least height of that, pt
     */
    public Flow head(String text, String note, double least) {
        need(Type.HEAD * Type.LEAD + 9 + noteHeight(note) + least);
        return head(text).note(note);
    }

    /** Heads of the columns of a listing that are shown: those that tell something. */
    public List<String> heads(Listing listing) {
        return TableBlock.heads(listing, units);
    }

    /** Ordinary words. */
    public Flow para(String text) {
        return para(text, Type.BODY, false, Role.TEXT, 0).gap(3);
    }

    /** Words in small print. */
    public Flow note(String text) {
        return para(text, Type.NOTE, false, Role.NOTE, 0).gap(2);
    }

    /** Words in small print about how a thing is drawn. */
    public Flow drawn(Gauge gauge) {
        for (String line : Type.lines(gauge.words(), Type.NOTE, false, width())) {
            need(Type.NOTE * Type.LEAD);
            pen.add(
                    new Mark.Words(
                            Role.NOTE,
                            line,
                            MARGIN,
                            y + Type.NOTE,
                            Type.NOTE,
                            false,
                            Anchor.START,
                            0,
                            gauge));
            y += Type.NOTE * Type.LEAD;
        }
        return gap(2);
    }

    private Flow para(String text, double size, boolean bold, Role role, double indent) {
        if (text.isBlank()) {
            return this;
        }
        List<String> lines = Type.lines(text, size, bold, width() - indent);
        if (role == Role.NOTE) {
            need(lines.size() * size * Type.LEAD);
        }
        for (String line : lines) {
            need(size * Type.LEAD);
            pen.words(role, line, MARGIN + indent, y + size, size, bold, Anchor.START, 0);
            y += size * Type.LEAD;
        }
        return this;
    }

    /** What stands before an entry of a list. */
    public enum Sign {
        /** Vermilion triangle. */
        LOOK,
        /** Small dot. */
        DOT,
        /** An empty box to be ticked with a pencil. */
        BOX,
        /** A tick in a full circle: answered. */
        TICK,
        /** An empty circle: not answered yet. */
        OPEN
    }

    /** An entry of a list: a sign, words in bold, and ordinary words below them. */
    public Flow entry(Sign sign, String bold, String below) {
        return entry(sign, bold, below.isBlank() ? List.of() : List.of(below));
    }

    /** An entry of a list: a sign, words in bold, and paragraphs below them. */
    public Flow entry(Sign sign, String bold, List<String> below) {
        double indent = 16;
        int lines =
                (bold.isEmpty() ? 0 : Type.lines(bold, Type.BODY, true, width() - indent).size())
                        + (below.isEmpty() ? 0 : 1);
        need(lines * Type.BODY * Type.LEAD);
        sign(sign, y + Type.BODY * 0.62);
        para(bold, Type.BODY, true, Role.TEXT, indent);
        for (String paragraph : below) {
            para(paragraph, Type.BODY, false, Role.TEXT, indent);
        }
        y += 4;
        return this;
    }

    private void sign(Sign sign, double middle) {
        double x = MARGIN + 5;
        switch (sign) {
            case LOOK -> pen.look(x, middle, 10);
            case DOT -> pen.area(Role.TICK, Outline.circle(x, middle, 1.8, 12));
            case BOX -> pen.frame(Role.TICK, new Box(x - 4, middle - 4, 8, 8));
            case OPEN -> pen.line(Role.TICK, Outline.circle(x, middle, 4.4, 20));
            case TICK -> {
                pen.area(Role.ACCENT, Outline.circle(x, middle, 5, 24));
                pen.line(
                        Role.TICK_MARK,
                        x - 2.4,
                        middle + 0.2,
                        x - 0.6,
                        middle + 2,
                        x + 2.6,
                        middle - 1.9);
            }
        }
    }

    /**
     * A question and its answer side by side, with a sign before them.
     *
     * @param page number of the sheet that proves it; zero for none
     */
    public Flow answer(Sign sign, String question, String answer, int page) {
        double indent = 16;
        double column = 156;
        List<String> asked = Type.lines(question, Type.BODY, true, column - indent - 6);
        List<String> said = Type.lines(answer, Type.BODY, false, width() - column - 36);
        double line = Type.BODY * Type.LEAD;
        double height = Math.max(asked.size(), said.size()) * line + 5;
        need(height);
        sign(sign, y + Type.BODY * 0.62);
        for (int i = 0; i < asked.size(); i++) {
            double base = y + Type.BODY + i * line;
            pen.bold(Role.TEXT, asked.get(i), MARGIN + indent, base, Type.BODY, Anchor.START);
        }
        for (int i = 0; i < said.size(); i++) {
            double base = y + Type.BODY + i * line;
            pen.words(Role.TEXT, said.get(i), MARGIN + column, base, Type.BODY, Anchor.START);
        }
        if (page > 0) {
            Gauge sheet = Gauge.of(Gauge.Use.CONTENTS, "sheet " + page, page);
            pen.gauge(sheet, MARGIN + width(), y + Type.BODY, Type.NOTE, false, Anchor.END);
        }
        y += height;
        pen.line(Role.HAIRLINE, MARGIN, y - 3, MARGIN + width(), y - 3);
        return this;
    }

    /** A drawing of the given height; begins a new page if it does not fit on this one. */
    public Flow figure(double height, Figure figure) {
        need(height);
        figure.draw(pen, new Box(MARGIN, y, width(), height));
        y += height + 6;
        return this;
    }

    /** A drawing that takes all that is left of the page, at least {@code least} pt high. */
    public Flow rest(double least, Figure figure) {
        need(least);
        return figure(Math.max(least, left() - 6), figure);
    }

    /** Height of a title, the head and the first rows of a table, pt. */
    private double least(Listing listing) {
        var block = new TableBlock(listing, units, width());
        return titleHeight(List.of(listing.title()))
                + block.headHeight()
                + block.height(0, Math.min(TOGETHER, block.rows()))
                + 2;
    }

    private static double titleHeight(List<String> lines) {
        return 6 + lines.size() * Type.BODY * Type.LEAD;
    }

    /**
     * Short tables, as many side by side and below one another there as fit; in the given order.
     */
    public Flow tables(List<Listing> listings) {
        var shelf = new ArrayList<Standing>();
        for (Listing listing : listings) {
            if (!isPut(shelf, halves(listing)) && !isPut(shelf, List.of(listing))) {
                stand(shelf);
                shelf.clear();
                if (!isPut(shelf, halves(listing)) && !isPut(shelf, List.of(listing))) {
                    throw new IllegalStateException("an empty shelf takes every table");
                }
            }
        }
        stand(shelf);
        return this;
    }

    /** Puts tables on a shelf, all of them or none; says whether it did. */
    private boolean isPut(List<Standing> shelf, List<Listing> listings) {
        var more = new ArrayList<>(shelf);
        for (Listing listing : listings) {
            Standing next = standing(listing, more);
            if (next == null) {
                return false;
            }
            more.add(next);
        }
        shelf.clear();
        shelf.addAll(more);
        return true;
    }

    /** A long narrow table in two, the second without a title; others as they are. */
    private List<Listing> halves(Listing listing) {
        if (across(listing) == 1) {
            return List.of(listing);
        }
        int half = (listing.rows().size() + 1) / 2;
        return List.of(
                new Listing(
                        listing.name(),
                        listing.title(),
                        listing.columns(),
                        listing.rows().subList(0, half),
                        0),
                new Listing(
                        listing.name(),
                        "",
                        listing.columns(),
                        listing.rows().subList(half, listing.rows().size()),
                        0));
    }

    /** A table with its place on a shelf, pt from the shelf's left and top. */
    private record Standing(
            Listing listing, TableBlock block, List<String> title, double x, double top) {
        double right() {
            double wide = block.width();
            for (String line : title) {
                wide = Math.max(wide, Face.of(true).width(line, Type.BODY));
            }
            return x + wide;
        }

        double bottom() {
            return top + titleHeight(title) + block.height() + 8;
        }
    }

    /** The table below the last one on the shelf or else beside it; null if neither fits. */
    private @Nullable Standing standing(Listing listing, List<Standing> shelf) {
        if (shelf.isEmpty()) {
            return at(listing, 0, 0);
        }
        Standing last = shelf.get(shelf.size() - 1);
        double right = shelf.stream().mapToDouble(Standing::right).max().orElse(0);
        double tallest = shelf.stream().mapToDouble(Standing::bottom).max().orElse(0);
        Standing below = last.x() == 0 ? null : at(listing, last.x(), last.bottom());
        if (below != null && below.right() <= width() && below.bottom() <= tallest) {
            return below;
        }
        Standing beside = at(listing, right + GUTTER, 0);
        if (beside == null || beside.right() > width()) {
            return null;
        }
        return Math.max(tallest, beside.bottom()) <= body() ? beside : null;
    }

    /**
     * The table at a place; null if there is much less room beside others than it wishes for, so
     * that its words would be broken into many lines.
     */
    private @Nullable Standing at(Listing listing, double x, double top) {
        double wished = new TableBlock(listing, units, width()).width();
        if (x > 0
                && (PART * wished > width() - x
                        || TableBlock.least(listing, units) > width() - x)) {
            return null;
        }
        var block = new TableBlock(listing, units, width() - x);
        double wide = Math.max(block.width(), Math.min(150, width() - x));
        List<String> title = Type.lines(listing.title(), Type.BODY, true, x > 0 ? wide : width());
        return new Standing(listing, block, title, x, top);
    }

    private double body() {
        return paper.height() - FOOT - MARGIN - 30;
    }

    private void stand(List<Standing> shelf) {
        if (shelf.size() == 1) {
            table(shelf.get(0).listing());
            return;
        }
        double tallest = shelf.stream().mapToDouble(Standing::bottom).max().orElse(0);
        need(tallest);
        for (Standing each : shelf) {
            double x = MARGIN + each.x();
            double down = y + each.top() + 4;
            for (String line : each.title()) {
                pen.bold(Role.TEXT, line, x, down + Type.BODY, Type.BODY, Anchor.START);
                down += Type.BODY * Type.LEAD;
            }
            down += 2;
            each.block().drawHead(pen, x, down);
            down += each.block().headHeight();
            for (int row = 0; row < each.block().rows(); row++) {
                each.block().drawRow(pen, row, x, down);
                down += each.block().rowHeight(row);
            }
        }
        y += tallest;
    }

    /** A table, with its title above; the heads come again on every page that it runs over. */
    public Flow table(Listing listing) {
        return table(listing, 0);
    }

    /** A table with small print below it, which stands with the last rows. */
    public Flow table(Listing listing, String note) {
        return table(listing, noteHeight(note)).note(note);
    }

    private double noteHeight(String note) {
        return note.isBlank()
                ? 0
                : Type.lines(note, Type.NOTE, false, width()).size() * Type.NOTE * Type.LEAD + 2;
    }

    /**
     * A table.
     *
     * @param below height of what must stand on the page of the last rows, pt
     */
    private Flow table(Listing listing, double below) {
        need(least(listing) + (listing.rows().size() <= TOGETHER ? below + 8 : 0));
        y += 4;
        para(listing.title(), Type.BODY, true, Role.TEXT, 0);
        y += 2;
        int across = across(listing);
        var block = new TableBlock(listing, units, columnWidth(across));
        if (across > 1) {
            abreast(block, across);
            y += 8;
            return this;
        }
        tableHead(block);
        for (int row = 0; row < block.rows(); row++) {
            int rest = block.rows() - row;
            // The last rows go to the next page together, sums with what they add up.
            int together = rest == TOGETHER && row > TOGETHER ? rest : 1;
            double tail = row + together == block.rows() && below > 0 ? below + 8 : 0;
            if (left() < block.height(row, row + together) + 2 + tail) {
                begin();
                tableHead(block);
            }
            block.drawRow(pen, row, MARGIN, y);
            y += block.rowHeight(row);
        }
        y += 8;
        return this;
    }

    /** In how many columns side by side a table is set: more than one only if it is long. */
    private int across(Listing listing) {
        if (listing.rows().size() < LONG || listing.totals() > 0) {
            return 1;
        }
        double least = TableBlock.least(listing, units);
        int best = 1;
        double lowest = new TableBlock(listing, units, width()).height();
        for (int across = 2; least <= columnWidth(across); across++) {
            double height = new TableBlock(listing, units, columnWidth(across)).height() / across;
            if (height < LOWER * lowest) {
                lowest = height;
                best = across;
            }
        }
        return best;
    }

    private double columnWidth(int across) {
        return (width() - (across - 1) * GUTTER) / across;
    }

    /** A long narrow table in several columns side by side, each with its head. */
    private void abreast(TableBlock block, int across) {
        int row = 0;
        while (row < block.rows()) {
            double room = left() - block.headHeight() - 2;
            double rest = 0;
            double tallest = 0;
            for (int i = row; i < block.rows(); i++) {
                rest += block.rowHeight(i);
                tallest = Math.max(tallest, block.rowHeight(i));
            }
            double column = Math.min(room, rest / across + tallest);
            double bottom = y;
            for (int c = 0; c < across && row < block.rows(); c++) {
                double x = MARGIN + c * (block.width() + GUTTER);
                double down = y + block.headHeight();
                double end = down + Math.max(column, block.rowHeight(row));
                block.drawHead(pen, x, y);
                while (row < block.rows() && down + block.rowHeight(row) <= end + 0.01) {
                    block.drawRow(pen, row, x, down);
                    down += block.rowHeight(row);
                    row++;
                }
                bottom = Math.max(bottom, down);
            }
            y = bottom;
            if (row < block.rows()) {
                begin();
            }
        }
    }

    private void tableHead(TableBlock block) {
        block.drawHead(pen, MARGIN, y);
        y += block.headHeight();
    }

    /** The sheet as laid out so far. */
    public Sheet sheet() {
        return new Sheet(name, paper, pages.stream().map(Pen::marks).toList(), joins, y);
    }
}
