package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import lanewright.earthwork.Balance;
import lanewright.earthwork.Comparison;
import lanewright.earthwork.EarthworkReport;
import lanewright.earthwork.Hauled;
import lanewright.earthwork.Heap;
import lanewright.earthwork.TopsoilBalance;
import lanewright.lane.volume.State;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.planner.pipes.PipeJob;
import lanewright.planner.work.HeapPlace;
import lanewright.planner.work.HeapPlaces;

/** What the earth comes to, as rows. */
public final class EarthListings {

    /** Volumes below this are rounding, m³: a bucket. */
    private static final double SMALL = 0.05;

    private EarthListings() {}

    /**
     * Every volume of the whole lane that there is, its state, and how three ways of measuring it
     * agree.
     */
    public static Listing volumes(EarthworkReport earth) {
        var rows = new ArrayList<List<Saying>>();
        for (Comparison volume : earth.volumes()) {
            if (volume.corrected() == 0 && volume.plain() == 0 && volume.solid() == 0) {
                continue;
            }
            rows.add(
                    List.of(
                            Listing.cell(volume.name()),
                            Listing.cell(VolumeListings.state(volume.state())),
                            volume(volume.corrected()),
                            volume(volume.plain()),
                            volume(volume.pyramids()),
                            volume(volume.solid()),
                            volume(volume.more())));
        }
        return new Listing(
                "volumes",
                "How the volumes were checked",
                List.of(
                        Column.words("What"),
                        Column.words("Measured"),
                        Column.of("Used in this set", Kind.VOLUME),
                        Column.of("As if the lane were straight", Kind.VOLUME),
                        Column.of("Ends as points", Kind.VOLUME),
                        Column.of("By triangles", Kind.VOLUME),
                        Column.of("Difference", Kind.VOLUME)),
                rows,
                0);
    }

    /**
     * Cut against fill, and what leaves or comes, each in every state that it has.
     *
     * @param earth the report
     * @param atLeast whether the topsoil is deeper than the probe holes went
     * @param pipes whose trenches stand below the balance, those of the plan
     */
    public static Listing balance(EarthworkReport earth, boolean atLeast, List<PipeJob> pipes) {
        Balance balance = earth.balance();
        TopsoilBalance topsoil = earth.topsoil();
        double cutPacked = earth.soil().convert(balance.cut(), State.BANK, State.COMPACTED);
        double cutLoose = earth.soil().convert(balance.cut(), State.BANK, State.LOOSE);
        String least = atLeast ? ", at least" : "";
        var rows = new ArrayList<List<Saying>>();
        rows.add(row("dug, fit for fill", balance.cut(), cutPacked, cutLoose, 0));
        rows.add(row("fill to be made", balance.fillBank(), balance.fill(), Double.NaN, 0));
        if (balance.over() > 0) {
            rows.add(hauled("left over, to haul away or spread", balance.haulAway()));
        } else if (balance.over() < 0) {
            rows.add(hauled("short, to bring in", balance.bringIn()));
        }
        if (earth.unfit().bank() > 0) {
            Hauled unfit = earth.unfit();
            rows.add(
                    row(
                            "soft soil dug out, never for fill",
                            unfit.bank(),
                            Double.NaN,
                            unfit.loose(),
                            unfit.loads()));
            rows.add(hauled("fit earth or stone to refill it, not in the fill", earth.refill()));
        }
        rows.add(row("topsoil stripped" + least, topsoil.strip(), Double.NaN, topsoil.heaped(), 0));
        rows.add(row("topsoil put back", topsoil.back(), Double.NaN, Double.NaN, 0));
        rows.add(
                topsoil.left() >= 0
                        ? row(
                                "topsoil left over, to place or spread" + least,
                                topsoil.left(),
                                Double.NaN,
                                topsoil.away().loose(),
                                topsoil.away().loads())
                        : row("topsoil short", -topsoil.left(), Double.NaN, Double.NaN, 0));
        trenches(earth, pipes, rows);
        return new Listing(
                "earth-balance",
                "Does the earth balance?",
                List.of(
                        Column.words("What"),
                        Column.of("As it lies (bank)", Kind.VOLUME),
                        Column.of("Packed in place", Kind.VOLUME),
                        Column.of("Loose, on the truck", Kind.VOLUME),
                        Column.of("Truckloads", Kind.COUNT)),
                rows,
                0);
    }

    /** Earth of pipe trenches: dug below the lane's own cut, so in none of the lines above. */
    private static void trenches(
            EarthworkReport earth, List<PipeJob> pipes, List<List<Saying>> rows) {
        double dug = 0;
        double back = 0;
        double displaced = 0;
        for (PipeJob job : pipes) {
            if (job.planned() && job.fits()) {
                dug += job.trench().dug();
                back += job.trench().back();
                displaced += job.trench().displaced();
            }
        }
        if (dug > SMALL) {
            double returns = earth.soil().convert(back, State.COMPACTED, State.BANK);
            double over = dug - returns;
            rows.add(row("besides: dug from pipe trenches", dug, Double.NaN, Double.NaN, 0));
            rows.add(row("besides: put back around the pipes", returns, back, Double.NaN, 0));
            rows.add(
                    over >= 0
                            ? row(
                                    "besides: left over from the trenches",
                                    over,
                                    Double.NaN,
                                    earth.soil().convert(over, State.BANK, State.LOOSE),
                                    0)
                            : row(
                                    "besides: short in the trenches",
                                    -over,
                                    Double.NaN,
                                    Double.NaN,
                                    0));
        }
        if (displaced > SMALL) {
            rows.add(
                    row(
                            "besides: fill that pipes and their beds take the place of",
                            earth.soil().convert(displaced, State.COMPACTED, State.BANK),
                            displaced,
                            Double.NaN,
                            0));
        }
    }

    private static List<Saying> hauled(String what, Hauled hauled) {
        return row(what, hauled.bank(), hauled.compacted(), hauled.loose(), hauled.loads());
    }

    private static List<Saying> row(
            String what, double bank, double compacted, double loose, int loads) {
        return List.of(
                Listing.cell(what),
                volume(bank),
                volume(compacted),
                volume(loose),
                loads > 0 ? Listing.cell(Quantity.count(loads)) : Listing.BLANK);
    }

    private static Saying volume(double value) {
        return Double.isNaN(value) ? Listing.BLANK : Listing.cell(Quantity.volume(value));
    }

    /** Why the heaps add up to more than the topsoil stripped: said wherever they are listed. */
    public static final String HEAPS_ARE_LOOSE =
            "Heaps are told loose: stripped topsoil takes more room than it did in the ground, so"
                    + " their sum is more than the topsoil in them was as it lay.";

    /** A heap in a line: its number, how much it holds, loose, and where it stands. */
    public static Saying heapLine(HeapPlace heap) {
        Saying where = placeAndName(heap);
        var quantities = new ArrayList<Quantity>();
        quantities.add(Quantity.count(heap.number()));
        quantities.add(Quantity.volume(heap.form().volume()));
        quantities.addAll(where.quantities());
        return new Saying("{}: {} loose, " + where.pattern(), quantities);
    }

    private static Saying placeAndName(HeapPlace heap) {
        Saying where = heap.place();
        String name = heap.name();
        return name.isBlank() || Double.isNaN(heap.station())
                ? where
                : new Saying(
                        where.pattern() + " (" + name.replace("{}", "{ }") + ")",
                        where.quantities());
    }

    /** Where each heap of topsoil stands, how big it is and why it stands there. */
    public static Listing heapPlaces(HeapPlaces places) {
        var rows = new ArrayList<List<Saying>>();
        for (HeapPlace heap : places.heaps()) {
            rows.add(
                    List.of(
                            Listing.cell(Quantity.count(heap.number())),
                            volume(heap.form().volume()),
                            placeAndName(heap),
                            Listing.cell(Quantity.station(heap.from())),
                            Listing.cell(Quantity.station(heap.to())),
                            Listing.cell(Quantity.length(heap.form().height())),
                            Listing.cell(Quantity.length(heap.form().width())),
                            Listing.cell(Quantity.length(heap.form().length())),
                            heap.why()));
        }
        return new Listing(
                "heap-places",
                "Where the topsoil is heaped",
                List.of(
                        Column.of("Heap", Kind.COUNT),
                        Column.of("Loose", Kind.VOLUME),
                        Column.words("Its middle"),
                        Column.of("Takes from", Kind.STATION),
                        Column.of("To", Kind.STATION),
                        Column.of("Height", Kind.LENGTH),
                        Column.of("Width", Kind.LENGTH),
                        Column.of("Length", Kind.LENGTH),
                        Column.words("Why there")),
                rows,
                0);
    }

    /** The same topsoil heaped otherwise: in round heaps, or in one long one. */
    public static Listing heaps(EarthworkReport earth) {
        var rows = new ArrayList<List<Saying>>();
        if (earth.topsoil().heaps().count() > 0) {
            rows.add(heap("round heaps", earth.topsoil().heaps()));
            rows.add(heap("one long heap", earth.topsoil().row()));
        }
        return new Listing(
                "topsoil-heaps",
                "The same topsoil heaped otherwise",
                List.of(
                        Column.words("What"),
                        Column.of("How many", Kind.COUNT),
                        Column.of("Each, loose", Kind.VOLUME),
                        Column.of("Height", Kind.LENGTH),
                        Column.of("Across the base", Kind.LENGTH),
                        Column.of("Length of base", Kind.LENGTH)),
                rows,
                0);
    }

    private static List<Saying> heap(String what, Heap heap) {
        return List.of(
                Listing.cell(what),
                Listing.cell(Quantity.count(heap.count())),
                volume(heap.volume()),
                Listing.cell(Quantity.length(heap.height())),
                Listing.cell(Quantity.length(heap.width())),
                heap.length() > heap.width()
                        ? Listing.cell(Quantity.length(heap.length()))
                        : Listing.BLANK);
    }
}
