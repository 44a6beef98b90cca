package lanewright.stone;

import java.util.List;

/**
 * How much of one layer lies along the lane: spans in station order, in each of which the layer's
 * section area changes along a straight line.
 *
 * @param spans in station order; gaps between them hold no stone
 */
public record Spread(List<Span> spans) {

    /**
     * A stretch of one layer.
     *
     * @param from station, m
     * @param to station, m, over {@code from}
     * @param areaFrom section area of the layer at {@code from}, m², zero or more
     * @param areaTo section area of the layer at {@code to}, m², zero or more
     * @param volume compacted volume of the span, m³, zero or more; it may differ a little from the
     *     average end area where the lane curves, and then the areas only say how it is shared out
     */
    public record Span(double from, double to, double areaFrom, double areaTo, double volume) {
        /** Checks the ranges. */
        public Span {
            if (!(to > from) || !Double.isFinite(from) || !Double.isFinite(to)) {
                throw new IllegalArgumentException("span must run forward: " + from + " to " + to);
            }
            if (!(areaFrom >= 0 && areaTo >= 0 && volume >= 0) || !Double.isFinite(volume)) {
                throw new IllegalArgumentException(
                        "areas and volume must be zero or more, were "
                                + areaFrom
                                + ", "
                                + areaTo
                                + ", "
                                + volume);
            }
        }

        /** A span of constant area, m². */
        public static Span even(double from, double to, double area) {
            return new Span(from, to, area, area, area * (to - from));
        }

        /**
         * Part of the way through the span, 0 to 1, at which {@code share} of its volume lies
         * behind.
         *
         * <p>With area {@code a + (b − a) t} the volume up to {@code t} is {@code (a t + (b − a)
         * t²/2)} of {@code (a + b)/2}; the root is taken in the form that does not cancel.
         */
        private double partAt(double share) {
            double target = share * (areaFrom + areaTo) / 2;
            if (target <= 0) {
                return 0;
            }
            double change = areaTo - areaFrom;
            double root = Math.sqrt(Math.max(0, areaFrom * areaFrom + 2 * change * target));
            return Math.min(1, 2 * target / (areaFrom + root));
        }

        private double shareAt(double part) {
            double mean = (areaFrom + areaTo) / 2;
            return mean <= 0 ? part : part * (areaFrom + part * (areaTo - areaFrom) / 2) / mean;
        }
    }

    /** Copies the list and checks its order. */
    public Spread {
        spans = List.copyOf(spans);
        for (int i = 1; i < spans.size(); i++) {
            if (spans.get(i).from() < spans.get(i - 1).to()) {
                throw new IllegalArgumentException(
                        "spans overlap at station " + spans.get(i).from() + " m");
            }
        }
    }

    /** A layer of constant area over one length. */
    public static Spread even(double from, double to, double area) {
        return new Spread(List.of(Span.even(from, to, area)));
    }

    /** Compacted volume of the whole layer, m³, added in station order. */
    public double volume() {
        double sum = 0;
        for (Span span : spans) {
            sum += span.volume();
        }
        return sum;
    }

    /** Station where the layer begins, m, or NaN where there is none of it. */
    public double begin() {
        for (Span span : spans) {
            if (span.volume() > 0) {
                return span.from();
            }
        }
        return Double.NaN;
    }

    /** Station where the layer ends, m, or NaN where there is none of it. */
    public double end() {
        double end = Double.NaN;
        for (Span span : spans) {
            if (span.volume() > 0) {
                end = span.to();
            }
        }
        return end;
    }

    /**
     * Station up to which {@code volume} of the layer reaches, laid from its beginning.
     *
     * @param volume compacted volume, m³, zero or more
     * @return station, m; the end of the layer if there is more than it takes; NaN if the layer
     *     holds nothing
     */
    public double stationAt(double volume) {
        if (!(volume >= 0)) {
            throw new IllegalArgumentException("volume must be zero or more, was " + volume);
        }
        double left = volume;
        for (Span span : spans) {
            if (span.volume() > 0 && left <= span.volume()) {
                double part = span.partAt(left / span.volume());
                return span.from() + part * (span.to() - span.from());
            }
            left -= span.volume();
        }
        return end();
    }

    /**
     * Compacted volume that lies before {@code station}, m³.
     *
     * @param station any station, m
     */
    public double volumeBefore(double station) {
        double sum = 0;
        for (Span span : spans) {
            if (station >= span.to()) {
                sum += span.volume();
            } else if (station > span.from()) {
                double part = (station - span.from()) / (span.to() - span.from());
                return sum + span.volume() * span.shareAt(part);
            }
        }
        return sum;
    }
}
