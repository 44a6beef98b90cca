package lanewright.planner.run;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import lanewright.drainage.along.Clearance.Edge;
import lanewright.drainage.along.Clearance.State;
import lanewright.drainage.along.Clearance.Stretch;
import lanewright.drainage.along.Clearance.Why;
import lanewright.drainage.along.Side;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;

/**
 * Says of a laid grade how its edges are kept clear of the ground's water, from what the report on
 * water found along the same lane: how much stands high enough, where ditches that drain make up
 * for it and where they lead, and where neither is so.
 */
final class ClearanceWords {

    private final List<Stretch> stretches;
    private final double wanted;

    private ClearanceWords(List<Stretch> stretches, double wanted) {
        this.stretches = stretches;
        this.wanted = wanted;
    }

    /**
     * The sentences.
     *
     * @param stretches of the whole lane, in station order
     * @param wanted height of an edge over the ground beside it, m
     */
    static List<Saying> of(List<Stretch> stretches, double wanted) {
        return new ClearanceWords(stretches, wanted).all();
    }

    private List<Saying> all() {
        List<Saying> words = new ArrayList<>();
        words.add(
                Saying.of(
                        "Its edge stands {} or more over the higher ground beside it along {} of"
                                + " the way.",
                        Quantity.depth(wanted),
                        Quantity.share(share(State.HIGH))));
        var along = new TreeMap<Double, Saying>(); // no two begin at one station
        for (List<Stretch> run : runs(State.DRAINED)) {
            along.put(run.get(0).from(), drained(run));
        }
        for (List<Stretch> run : runs(State.NEAR)) {
            along.put(
                    run.get(0).from(),
                    stretch(run, "From {} to {} it stands less than that over the ground").end());
        }
        for (List<Stretch> run : runs(State.UNDRAINED)) {
            along.put(run.get(0).from(), undrained(run));
        }
        words.addAll(along.values());
        return words;
    }

    private static Saying drained(List<Stretch> run) {
        var words = stretch(run, "From {} to {} it lies lower beside a ditch that drains");
        words.places("; it runs out at ", places(run, Why.RUNS_OUT));
        words.places("; it leads to the pipe at ", places(run, Why.PIPE));
        words.places("; its water must pass under the lane at ", places(run, Why.CROSSING));
        return words.end();
    }

    private static Sentence stretch(List<Stretch> run, String begin) {
        var words = new Sentence(begin);
        words.put(Quantity.station(run.get(0).from()));
        words.put(Quantity.station(run.get(run.size() - 1).to()));
        return words;
    }

    private static Saying undrained(List<Stretch> run) {
        var words = stretch(run, "From {} to {} it lies lower, and no ditch drains it: ");
        Set<String> said = new LinkedHashSet<>();
        for (Side side : Side.values()) {
            for (Stretch stretch : run) {
                Edge edge = stretch.edge(side);
                if (edge.state() == State.UNDRAINED && said.add(side + " " + edge.why())) {
                    words.add(said.size() > 1 ? ", " : "");
                    words.add(why(edge, side.word()));
                    if (edge.why() != Why.NO_DITCH) {
                        words.put(Quantity.station(edge.place()));
                    }
                }
            }
        }
        return words.end();
    }

    private static String why(Edge edge, String side) {
        return switch (edge.why()) {
            case ROAD -> "the " + side + " ditch falls to the public road at {}";
            case FLAT -> "the " + side + " ditch is too flat at {}";
            case IN_WATER -> "the " + side + " ditch lies in water that stands at {}";
            case DEAD_END -> "the " + side + " ditch has no way out at {}";
            case NO_DITCH -> "none is dug on the " + side;
            case HIGH, RUNS_OUT, PIPE, CROSSING, NO_DITCH_NEAR ->
                    throw new IllegalStateException("an edge that is clear: " + edge);
        };
    }

    private static Set<Double> places(List<Stretch> run, Why why) {
        Set<Double> places = new TreeSet<>();
        for (Stretch stretch : run) {
            for (Side side : Side.values()) {
                if (stretch.edge(side).why() == why) {
                    places.add(stretch.edge(side).place());
                }
            }
        }
        return places;
    }

    private double share(State state) {
        double all = 0;
        double some = 0;
        for (Stretch stretch : stretches) {
            all += stretch.length();
            some += stretch.state() == state ? stretch.length() : 0;
        }
        return some / all;
    }

    /** Stretches in a state that follow each other without a gap. */
    private List<List<Stretch>> runs(State state) {
        List<List<Stretch>> runs = new ArrayList<>();
        boolean open = false;
        for (Stretch stretch : stretches) {
            boolean now = stretch.state() == state;
            if (now && !open) {
                runs.add(new ArrayList<>());
            }
            if (now) {
                runs.get(runs.size() - 1).add(stretch);
            }
            open = now;
        }
        return runs;
    }

    /** A sentence as it grows. */
    private static final class Sentence {

        private final StringBuilder pattern;
        private final List<Quantity> quantities = new ArrayList<>();

        Sentence(String begin) {
            pattern = new StringBuilder(begin);
        }

        void add(String more) {
            pattern.append(more);
        }

        void put(Quantity quantity) {
            quantities.add(quantity);
        }

        void places(String begin, Set<Double> places) {
            int i = 0;
            for (double place : places) {
                add(i == 0 ? begin + "{}" : i == places.size() - 1 ? " and {}" : ", {}");
                put(Quantity.station(place));
                i++;
            }
        }

        Saying end() {
            return new Saying(pattern + ".", quantities);
        }
    }
}
