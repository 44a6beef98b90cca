package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionLine;
import lanewright.lane.volume.LaneVolumes;
import lanewright.measure.Finding;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;

/** How deep to strip and to dig out, stretch by stretch: what the machine is set to. */
public final class DigListings {

    /**
     * Depths in one stretch may differ by this much, m: an inch and a half, about what a blade
     * holds. Our choice.
     */
    private static final double ALIKE = 0.038;

    /** Shallower than this is rounding, m. */
    private static final double NOTHING = 0.002;

    /** Depths nearer to one another than this are told as one, m: half an inch. */
    private static final double ROUGH = 0.013;

    /** The finding that says that a hole ended in topsoil. */
    private static final String AT_LEAST = "topsoil-at-least";

    private DigListings() {}

    /**
     * A stretch along which the depths are much alike.
     *
     * @param from its beginning, m
     * @param to its end, m
     * @param average mean depth of topsoil between the limits of work, m
     * @param deepest greatest depth of topsoil, m
     * @param width mean width between the limits of work, m
     * @param strip topsoil, bank m³
     * @param out greatest depth to dig out below the earth as shaped, m; zero for none
     * @param outWidth greatest width dug out, hinge to hinge, m; zero for none
     */
    private record Stretch(
            double from,
            double to,
            double average,
            double deepest,
            double width,
            double strip,
            double out,
            double outWidth) {

        double length() {
            return to - from;
        }

        boolean isLike(Stretch next) {
            return Math.abs(average - next.average) <= ALIKE / 2
                    && Math.abs(out - next.out) <= ALIKE
                    && out > NOTHING == next.out > NOTHING;
        }

        Stretch and(Stretch next) {
            double sum = length() + next.length();
            return new Stretch(
                    from,
                    next.to,
                    (average * length() + next.average * next.length()) / sum,
                    Math.max(deepest, next.deepest),
                    (width * length() + next.width * next.length()) / sum,
                    strip + next.strip,
                    Math.max(out, next.out),
                    Math.max(outWidth, next.outWidth));
        }
    }

    /** Depths by stretch, with the topsoil that each gives. */
    public static Listing stretches(List<Section> sections, LaneVolumes volumes) {
        var rows = new ArrayList<List<Saying>>();
        for (Stretch stretch : found(sections, volumes)) {
            boolean strips = stretch.deepest() > NOTHING;
            boolean digs = stretch.out() > NOTHING;
            rows.add(
                    List.of(
                            Listing.cell(Quantity.station(stretch.from())),
                            Listing.cell(Quantity.station(stretch.to())),
                            strips
                                    ? Listing.cell(Quantity.depth(stretch.average()))
                                    : Listing.BLANK,
                            strips
                                    ? Listing.cell(Quantity.depth(stretch.deepest()))
                                    : Listing.BLANK,
                            strips ? Listing.cell(Quantity.length(stretch.width())) : Listing.BLANK,
                            Listing.cell(Quantity.volume(stretch.strip())),
                            digs ? Listing.cell(Quantity.depth(stretch.out())) : Listing.BLANK,
                            digs
                                    ? Listing.cell(Quantity.length(stretch.outWidth()))
                                    : Listing.BLANK));
        }
        return new Listing(
                "depths-to-dig",
                "How deep to strip and to dig out, from the road inwards",
                List.of(
                        Column.of("From", Kind.STATION),
                        Column.of("To", Kind.STATION),
                        Column.of("Strip topsoil, average depth", Kind.DEPTH),
                        Column.of("Deepest topsoil", Kind.DEPTH),
                        Column.of("Width to strip, on average", Kind.LENGTH),
                        Column.of("Topsoil as it lies", Kind.VOLUME),
                        Column.of("Dig out soft soil, up to", Kind.DEPTH),
                        Column.of("Width to dig out, up to", Kind.LENGTH)),
                rows,
                0);
    }

    private static List<Stretch> found(List<Section> sections, LaneVolumes volumes) {
        var found = new ArrayList<Stretch>();
        for (int i = 1; i < sections.size(); i++) {
            Section a = sections.get(i - 1);
            Section b = sections.get(i);
            if (b.station() <= a.station()) {
                continue;
            }
            double strip = volumes.strip().correctedTo(i) - volumes.strip().correctedTo(i - 1);
            Stretch next =
                    new Stretch(
                            a.station(),
                            b.station(),
                            (average(a) + average(b)) / 2,
                            Math.max(range(a)[1], range(b)[1]),
                            (width(a) + width(b)) / 2,
                            strip,
                            Math.max(out(a), out(b)),
                            Math.max(outWidth(a), outWidth(b)));
            int last = found.size() - 1;
            if (last >= 0 && found.get(last).isLike(next)) {
                found.set(last, found.get(last).and(next));
            } else {
                found.add(next);
            }
        }
        return found;
    }

    /** Least and greatest depth of topsoil anywhere inside the limits of work, m; zero for none. */
    public static double[] topsoil(List<Section> sections) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (Section section : sections) {
            double[] range = range(section);
            if (range[1] > NOTHING) {
                least = Math.min(least, range[0]);
                most = Math.max(most, range[1]);
            }
        }
        return new double[] {Math.min(least, most), most};
    }

    /** Whether a hole ended in topsoil, so that there is more of it than was worked out. */
    public static boolean isAtLeast(List<Finding> findings) {
        return findings.stream().anyMatch(finding -> finding.code().equals(AT_LEAST));
    }

    /** The depth of topsoil in words, to stand after an amount of it; empty for none. */
    public static Saying depth(List<Section> sections) {
        double[] range = topsoil(sections);
        if (range[1] <= NOTHING) {
            return Listing.BLANK;
        }
        return range[1] - range[0] < ROUGH
                ? Saying.of(", {~} deep", Quantity.depth(range[1]))
                : Saying.of(
                        ", {~} to {~} deep", Quantity.depth(range[0]), Quantity.depth(range[1]));
    }

    private static double width(Section section) {
        return section.right().limit() - section.left().limit();
    }

    private static double average(Section section) {
        double width = width(section);
        return width > 0 ? section.areas().strip().area() / width : 0;
    }

    /** Least and greatest depth of topsoil in one section, the steps at its limits left out. */
    private static double[] range(Section section) {
        SectionLine stripped = section.stripped();
        double left = section.left().limit();
        double right = section.right().limit();
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int i = 0; i < stripped.size(); i++) {
            double offset = stripped.offset(i);
            if (offset > left + NOTHING && offset < right - NOTHING) {
                double depth = section.ground().at(offset) - stripped.height(i);
                least = Math.min(least, depth);
                most = Math.max(most, depth);
            }
        }
        return new double[] {Math.min(least, most), most};
    }

    /** Greatest depth of soil under stone and shoulders that does not bear, m. */
    private static double out(Section section) {
        SectionLine bearing = section.bearing();
        if (bearing == null || section.areas().undercut().area() <= 0) {
            return 0;
        }
        double deepest = 0;
        for (SectionLine line :
                List.of(bearing, section.subgrade(), section.stripped(), section.ground())) {
            for (int i = 0; i < line.size(); i++) {
                double offset = line.offset(i);
                if (offset >= section.left().hinge().offset()
                        && offset <= section.right().hinge().offset()) {
                    double top =
                            Math.min(section.subgrade().at(offset), section.stripped().at(offset));
                    double depth = top - bearing.at(offset);
                    deepest = depth > deepest ? depth : deepest;
                }
            }
        }
        return deepest;
    }

    private static double outWidth(Section section) {
        return section.areas().undercut().area() > 0
                ? section.right().hinge().offset() - section.left().hinge().offset()
                : 0;
    }
}
