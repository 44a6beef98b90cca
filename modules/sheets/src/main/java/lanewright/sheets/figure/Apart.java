package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.List;

/** Moves words along a line until they stand apart, each as little as it must. */
final class Apart {

    private Apart() {}

    /** Words pushed together, which stand one beside the other about the middle of their places. */
    private record Group(int count, double middle) {

        double first(double apart) {
            return middle - (count - 1) * apart / 2;
        }

        double last(double apart) {
            return middle + (count - 1) * apart / 2;
        }

        Group with(Group other) {
            int both = count + other.count;
            return new Group(both, (middle * count + other.middle * other.count) / both);
        }
    }

    /**
     * Places as near to the wanted ones as lets none stand closer to the next than {@code apart}:
     * the sum of the squares of all moves is least (pooling of neighbours that violate the order).
     *
     * @param wanted places in rising order, pt
     * @param apart least distance, pt, over zero
     * @param low least place, pt
     * @param high greatest place, pt, with room for all from {@code low} on
     */
    static double[] spread(List<Double> wanted, double apart, double low, double high) {
        var groups = new ArrayList<Group>();
        for (double place : wanted) {
            var group = new Group(1, place);
            while (!groups.isEmpty()
                    && group.first(apart) - groups.get(groups.size() - 1).last(apart) < apart) {
                group = groups.remove(groups.size() - 1).with(group);
            }
            groups.add(group);
        }
        int count = wanted.size();
        double[] places = new double[count];
        int at = 0;
        for (Group group : groups) {
            for (int i = 0; i < group.count(); i++) {
                double place = Math.max(group.first(apart) + i * apart, low + at * apart);
                places[at] = Math.min(place, high - (count - 1 - at) * apart);
                at++;
            }
        }
        return places;
    }
}
