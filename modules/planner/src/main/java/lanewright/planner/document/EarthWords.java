package lanewright.planner.document;

import lanewright.measure.UnitSystem;

/** Depths of topsoil and of soil that bears: a depth, or words for where it comes from. */
final class EarthWords {

    private static final String FROM_PROBES = "from probes";
    private static final String NOT_KNOWN = "not known";

    static final Codec<Depth> TOPSOIL = new Words(false);
    static final Codec<Depth> BEARING = new Words(true);

    private EarthWords() {}

    /** Where a depth comes from, and the depth, m, or NaN. */
    record Depth(EarthPart.Depth where, Double depth) {}

    private record Words(boolean mayBeUnknown) implements Codec<Depth> {
        @Override
        public Depth read(String text, UnitSystem units) throws Unread {
            if (text.equals(FROM_PROBES)) {
                return new Depth(EarthPart.Depth.FROM_PROBES, Double.NaN);
            }
            if (mayBeUnknown && text.equals(NOT_KNOWN)) {
                return new Depth(EarthPart.Depth.NOT_KNOWN, Double.NaN);
            }
            if (text.isEmpty() || Character.isLetter(text.charAt(0))) {
                throw new Unread(
                        "\"" + text + "\" is not understood here", "Write " + what() + ".");
            }
            return new Depth(EarthPart.Depth.EVERYWHERE, Codecs.DEPTH.read(text, units));
        }

        @Override
        public String write(Depth value, UnitSystem units) {
            return switch (value.where()) {
                case FROM_PROBES -> FROM_PROBES;
                case NOT_KNOWN -> NOT_KNOWN;
                case EVERYWHERE -> Codecs.DEPTH.write(value.depth(), units);
            };
        }

        @Override
        public String pattern() {
            return mayBeUnknown
                    ? "^(from probes|not known|[0-9.\u00bc\u00bd\u00be].*)$"
                    : "^(from probes|[0-9.\u00bc\u00bd\u00be].*)$";
        }

        @Override
        public String what() {
            return "a depth with its unit, or from probes" + (mayBeUnknown ? ", or not known" : "");
        }

        @Override
        public Depth sample() {
            return new Depth(EarthPart.Depth.FROM_PROBES, Double.NaN);
        }
    }
}
