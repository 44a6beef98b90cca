package lanewright.planner.work;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import lanewright.earthwork.Heap;
import lanewright.earthwork.TopsoilBalance;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionSet;
import lanewright.lane.volume.Running;
import lanewright.measure.Assumption;
import lanewright.measure.Assumption.Mark;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.planner.work.HeapBars.Met;

/** Looks for places for heaps; lives for one call. */
final class HeapSearch {

    /** How far past its stretch a heap may stand, m: 100 ft, our choice, a short push. */
    private static final double PAST = 100 * 0.3048;

    /** How far farther out than the nearest allowed place a heap may stand, m: 100 ft as well. */
    private static final double OUT = 100 * 0.3048;

    /** Steps along the lane between places that are looked at, m. */
    private static final double STEP_ALONG = 4;

    /** Steps outward between places that are looked at, m. */
    private static final double STEP_OUT = 2;

    /** A heap is not parted below this stretch of lane, m. */
    private static final double SHORTEST = HeapPlaces.STRETCH / 8;

    /** Topsoil below this is rounding, loose m³: a bucket. */
    private static final double NOTHING = 0.05;

    private static final String OUR_RULE = "our choice";

    private final SectionSet set;
    private final Alignment line;
    private final Running strip;
    private final TopsoilBalance topsoil;
    private final HeapLand land;
    private final HeapBars bars;
    private final double highest;
    private final List<HeapPlace> heaps = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<Left> left = new ArrayList<>();

    /** A stretch whose topsoil found no place. */
    private record Left(double from, double to, double loose, Map<HeapBars.Why, Integer> refused) {}

    /** A place to look at. */
    private record Candidate(double station, double offset) {}

    HeapSearch(SectionSet set, Running strip, TopsoilBalance topsoil, HeapLand land) {
        this.set = set;
        this.line = set.design().alignment();
        this.strip = strip;
        this.topsoil = topsoil;
        this.land = land;
        this.bars = new HeapBars(set, land);
        this.highest = topsoil.row().height();
    }

    HeapPlaces places() {
        if (land.chosen().isEmpty()) {
            int stretches = (int) Math.max(1, Math.ceil(line.length() / HeapPlaces.STRETCH - 1e-9));
            for (int i = 0; i < stretches; i++) {
                place(line.length() * i / stretches, line.length() * (i + 1) / stretches);
            }
        } else {
            takeChosen();
        }
        double unplaced = 0;
        for (Left each : left) {
            unplaced += each.loose();
        }
        sayLeft();
        return new HeapPlaces(heaps, unplaced, findings, assumptions());
    }

    /** Loose topsoil of a stretch, m³. */
    private double loose(double from, double to) {
        double whole = strip.corrected();
        double part = strip.correctedAt(to) - strip.correctedAt(from);
        return whole > 0 ? topsoil.heaped() * part / whole : 0;
    }

    private void place(double from, double to) {
        double loose = loose(from, to);
        if (loose < NOTHING) {
            return;
        }
        Heap form = Heap.ridge(loose, topsoil.run(), highest);
        Map<HeapBars.Why, Integer> refused = new EnumMap<>(HeapBars.Why.class);
        int looked = 0;
        if (form.count() == 1) {
            for (List<Candidate> equallyNear : candidates(from, to, form).values()) {
                for (Candidate at : highestFirst(equallyNear)) {
                    HeapPlace heap = heap("", from, to, form, at, why(looked, refused));
                    Met met = bars.first(heap);
                    if (met == null) {
                        take(heap);
                        return;
                    }
                    refused.merge(met.why(), 1, Integer::sum);
                    looked++;
                }
            }
        }
        if (to - from > SHORTEST) {
            double middle = (from + to) / 2;
            place(from, middle);
            place(middle, to);
        } else {
            left.add(new Left(from, to, loose, refused));
        }
    }

    private void take(HeapPlace heap) {
        heaps.add(heap);
        bars.add(heap);
    }

    /**
     * Places on both sides by the way there, the least first: from the middle of the stretch along
     * the lane and out to the heap, in whole millimetres.
     */
    private SortedMap<Long, List<Candidate>> candidates(double from, double to, Heap form) {
        double middle = (from + to) / 2;
        int reach = (int) Math.ceil(((to - from) / 2 + PAST) / STEP_ALONG);
        SortedMap<Long, List<Candidate>> all = new TreeMap<>();
        for (int k = -reach; k <= reach; k++) {
            double station = middle + k * STEP_ALONG;
            if (station < 0 || station > line.length()) {
                continue;
            }
            Section near = set.nearest(station);
            for (int side = -1; side <= 1; side += 2) {
                double limit = Math.abs(side < 0 ? near.left().limit() : near.right().limit());
                double first = limit + land.stakesBeyond() + HeapBars.ROOM + form.width() / 2;
                for (double out = 0; out <= OUT; out += STEP_OUT) {
                    double way = Math.abs(k * STEP_ALONG) + first + out;
                    all.computeIfAbsent(Math.round(way * 1000), cost -> new ArrayList<>())
                            .add(new Candidate(station, side * (first + out)));
                }
            }
        }
        return all;
    }

    /**
     * Of equally near places those on higher ground first, so that their soil comes back downhill;
     * then the lower station, then the left.
     */
    private List<Candidate> highestFirst(List<Candidate> equallyNear) {
        if (equallyNear.size() == 1) {
            return equallyNear;
        }
        Map<Candidate, Double> heights = new HashMap<>();
        for (Candidate at : equallyNear) {
            Place place = new Place(at.station(), at.offset());
            double height = land.ground().heightAt(line.x(place), line.y(place));
            heights.put(at, Double.isNaN(height) ? Double.NEGATIVE_INFINITY : height);
        }
        Comparator<Candidate> byHeight = Comparator.comparingDouble(heights::get);
        return equallyNear.stream()
                .sorted(
                        byHeight.reversed()
                                .thenComparingDouble(Candidate::station)
                                .thenComparingDouble(Candidate::offset))
                .toList();
    }

    private HeapPlace heap(
            String name, double from, double to, Heap form, Candidate at, Saying why) {
        Place place = new Place(at.station(), at.offset());
        return new HeapPlace(
                heaps.size() + 1,
                name,
                from,
                to,
                form,
                at.station(),
                at.offset(),
                line.x(place),
                line.y(place),
                line.directionX(at.station()),
                line.directionY(at.station()),
                false,
                why);
    }

    private static Saying why(int looked, Map<HeapBars.Why, Integer> refused) {
        if (looked == 0) {
            return Saying.plain("the nearest place to its stretch, and clear");
        }
        if (refused.size() == 1) {
            String by = refused.keySet().iterator().next().words();
            return looked == 1
                    ? Saying.plain("the nearest clear place; the only nearer one is barred " + by)
                    : Saying.of(
                            "the nearest clear place; {} nearer ones are barred " + by,
                            Quantity.count(looked));
        }
        var pattern = new StringBuilder("the nearest clear place; {} nearer ones are barred: ");
        List<Quantity> counts = new ArrayList<>();
        counts.add(Quantity.count(looked));
        counted(refused, pattern, counts);
        return new Saying(pattern.toString(), counts);
    }

    private static void counted(
            Map<HeapBars.Why, Integer> refused, StringBuilder pattern, List<Quantity> counts) {
        boolean first = true;
        for (Map.Entry<HeapBars.Why, Integer> each : refused.entrySet()) {
            pattern.append(first ? "{} " : ", {} ").append(each.getKey().words());
            counts.add(Quantity.count(each.getValue()));
            first = false;
        }
    }

    /** Stretches without a place, those that touch together. */
    private void sayLeft() {
        int i = 0;
        while (i < left.size()) {
            double from = left.get(i).from();
            double to = left.get(i).to();
            double loose = 0;
            Map<HeapBars.Why, Integer> refused = new EnumMap<>(HeapBars.Why.class);
            while (i < left.size() && left.get(i).from() <= to + 1e-9) {
                to = left.get(i).to();
                loose += left.get(i).loose();
                left.get(i).refused().forEach((why, n) -> refused.merge(why, n, Integer::sum));
                i++;
            }
            var says =
                    new StringBuilder(
                            "{} of loose topsoil from {} to {} finds no clear place to be heaped"
                                    + " near by; places are barred: ");
            List<Quantity> numbers = new ArrayList<>();
            numbers.add(Quantity.volume(loose));
            numbers.add(Quantity.station(from));
            numbers.add(Quantity.station(to));
            counted(refused, says, numbers);
            findings.add(
                    Finding.of(
                            "heap-without-place",
                            Level.LOOK,
                            Topic.EARTH,
                            Where.stretch(from, to),
                            new Saying(says.toString(), numbers),
                            Saying.plain(
                                    "Survey farther out where there is room, choose places of your"
                                            + " own in the plan (work.heaps), or haul this topsoil"
                                            + " to a clear place")));
        }
    }

    /** Every part of the lane gives its topsoil to the nearest of the owner's places. */
    private void takeChosen() {
        int n = land.chosen().size();
        double[] loose = new double[n];
        double[] from = new double[n];
        double[] to = new double[n];
        Arrays.fill(from, Double.NaN);
        List<Section> sections = set.sections();
        for (int i = 1; i < sections.size(); i++) {
            double a = sections.get(i - 1).station();
            double b = sections.get(i).station();
            int nearest = nearestChosen((a + b) / 2);
            loose[nearest] += loose(a, b);
            from[nearest] = Double.isNaN(from[nearest]) ? a : from[nearest];
            to[nearest] = b;
        }
        for (int i = 0; i < n; i++) {
            HeapLand.Chosen place = land.chosen().get(i);
            if (loose[i] < NOTHING) {
                findings.add(
                        Finding.of(
                                "heap-place-not-used",
                                Level.NOTE,
                                Topic.EARTH,
                                Where.map(place.x(), place.y()),
                                Saying.plain(
                                        "No topsoil is nearest to the heap place "
                                                + called(place.name(), i)),
                                Saying.plain("Leave it out, or move it nearer to the lane")));
                continue;
            }
            HeapPlace heap = chosen(place, from[i], to[i], loose[i]);
            for (Met met : bars.all(heap)) {
                findings.add(onBar(heap, met));
            }
            take(heap);
        }
    }

    private static String called(String name, int index) {
        return name.isBlank() ? "number " + (index + 1) : name;
    }

    private int nearestChosen(double station) {
        double x = line.x(station);
        double y = line.y(station);
        int nearest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < land.chosen().size(); i++) {
            HeapLand.Chosen place = land.chosen().get(i);
            double apart = Math.hypot(place.x() - x, place.y() - y);
            if (apart < least) {
                least = apart;
                nearest = i;
            }
        }
        return nearest;
    }

    private HeapPlace chosen(HeapLand.Chosen at, double from, double to, double loose) {
        Heap form = Heap.ridge(loose, topsoil.run(), highest);
        Place place = line.place(at.x(), at.y());
        double beside = place == null ? nearestEnd(at) : place.station();
        return new HeapPlace(
                heaps.size() + 1,
                at.name(),
                from,
                to,
                form,
                place == null ? Double.NaN : place.station(),
                place == null ? Double.NaN : place.offset(),
                at.x(),
                at.y(),
                line.directionX(beside),
                line.directionY(beside),
                true,
                Saying.plain("your plan says so"));
    }

    private double nearestEnd(HeapLand.Chosen at) {
        double length = line.length();
        double start = Math.hypot(at.x() - line.x(0), at.y() - line.y(0));
        double end = Math.hypot(at.x() - line.x(length), at.y() - line.y(length));
        return start <= end ? 0 : length;
    }

    private static Finding onBar(HeapPlace heap, Met met) {
        Where where =
                (Double.isNaN(heap.station())
                                ? Where.ANYWHERE
                                : Where.beside(heap.station(), heap.offset()))
                        .at(heap.x(), heap.y());
        return Finding.of(
                code(met),
                level(met),
                Topic.EARTH,
                where,
                Saying.of(
                        "Heap "
                                + heap.number()
                                + (heap.name().isBlank() ? "" : " (" + plain(heap.name()) + ")")
                                + " of {} "
                                + (met.touches() ? verb(met) : "comes too near ")
                                + plain(met.words()),
                        Quantity.volume(heap.form().volume())),
                Saying.plain(remedy(met)));
    }

    /** An owner's word, which must not be taken for a gap. */
    private static String plain(String word) {
        return word.replace("{}", "{ }");
    }

    private static String code(Met met) {
        Hazard hazard = met.hazard();
        return hazard == null
                ? switch (met.why()) {
                    case WORK -> "heap-in-work";
                    case ROAD -> "heap-by-road";
                    case SURVEY -> "heap-off-survey";
                    case STEEP -> "heap-on-steep-ground";
                    case WATER -> "heap-in-water";
                    case BENCHMARK -> "heap-on-benchmark";
                    case HEAP, HAZARD -> "heap-on-heap";
                }
                : (hazard.kind() == Hazard.Kind.WIRE ? "heap-under-" : "heap-on-")
                        + hazard.kind().words().replace(' ', '-');
    }

    private static Level level(Met met) {
        return switch (met.why()) {
            case WORK, WATER, HAZARD -> met.touches() ? Level.STOP : Level.LOOK;
            case ROAD, SURVEY, STEEP, BENCHMARK, HEAP -> Level.LOOK;
        };
    }

    private static String verb(Met met) {
        Hazard hazard = met.hazard();
        boolean wire = hazard != null && hazard.kind() == Hazard.Kind.WIRE;
        return wire
                ? "stands under "
                : switch (met.why()) {
                    case ROAD -> "stands too near ";
                    case SURVEY -> "reaches over ";
                    default -> "stands on ";
                };
    }

    private static String remedy(Met met) {
        Hazard hazard = met.hazard();
        if (hazard != null) {
            return switch (hazard.kind()) {
                case WIRE ->
                        "Move it out from under the wire: a raised bucket or bed reaches it, and a"
                                + " heap lifts the machine nearer; ask the wire's owner about"
                                + " height and voltage (29 CFR 1926.1408)";
                case BURIED, BURIED_PUBLIC, BURIED_PRIVATE ->
                        "Move it off the line: it hides the marks, loads the pipe or cable, and a"
                                + " bucket that takes it up again can dig into it";
                case DRAIN_FIELD, TANK ->
                        "Move it: weight packs and breaks a drain field or tank; your health"
                                + " department says how far to stay away";
                case WELL ->
                        "Move it: your health department says how far soil work stays from a well";
                case TREE -> "Move it out from over the roots, which smother under soil";
                case WETLAND ->
                        "Move it: soil on wet land needs a permit before anything is put there";
                case OTHER -> "Move it away, as far as your plan says to stay";
            };
        }
        return switch (met.why()) {
            case WORK ->
                    "Move it outside the limits of work, with room for the stakes and a machine";
            case ROAD ->
                    "Move it back: drivers must see past it; the road's owner says how far they"
                            + " must see";
            case SURVEY -> "Survey there first, or move it: nobody knows what it stands on";
            case STEEP -> "Move it to flatter ground: a heap on a slope slides and washes";
            case WATER ->
                    "Move it: water carries it off, and it holds water back; soil in a stream or"
                            + " wet land also needs a permit";
            case BENCHMARK -> "Move it: the benchmark must stay in sight, and undisturbed";
            case HEAP, HAZARD -> "Move it apart, so that a machine can pass";
        };
    }

    private List<Assumption> assumptions() {
        List<Assumption> list = new ArrayList<>();
        list.add(
                new Assumption(
                        "shape of topsoil heaps",
                        Saying.of(
                                "long, along the lane, ends as flat as sides, measured as if on"
                                        + " level ground; one for each {} of lane at most",
                                Quantity.length(HeapPlaces.STRETCH)),
                        Mark.RULE,
                        OUR_RULE
                                + "; many small heaps near their use: Illinois Urban Manual,"
                                + " standard 752"));
        list.add(
                new Assumption(
                        "room around topsoil heaps",
                        Saying.of(
                                "{} from stakes, buried lines, benchmarks and each other, {} from"
                                        + " water, {} from wires, {} from the road, on ground no"
                                        + " steeper than {}",
                                Quantity.length(HeapBars.ROOM),
                                Quantity.length(HeapBars.FROM_WATER),
                                Quantity.length(Hazards.WIRE_CLEARANCE + HeapBars.ROOM),
                                Quantity.length(HeapBars.FROM_ROAD),
                                Quantity.sideSlope(1 / HeapBars.STEEPEST)),
                        Mark.RULE,
                        OUR_RULE
                                + ": a compact tractor passes and turns; off slopes and ways of"
                                + " water: Illinois Urban Manual, standard 752"));
        return list;
    }
}
