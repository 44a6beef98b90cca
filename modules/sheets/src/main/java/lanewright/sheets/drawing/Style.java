package lanewright.sheets.drawing;

/**
 * How a role looks: the only place where colours and widths are chosen. The colours come from the
 * palette of Okabe and Ito (2008, Color Universal Design), and each meaning has a pattern or a line
 * of its own besides, so that the sheets read in black and white: what is dug or built up is
 * hatched on white or dotted on a light tone, standing water a flat middle tone with a dark rim,
 * stone darker the coarser it is.
 *
 * @param fill colour of areas and words, 0xRRGGBB, or {@link #NOTHING}
 * @param pattern what covers an area besides its fill
 * @param stroke colour of lines and of the pattern, or {@link #NOTHING}
 * @param width of lines, pt
 * @param patternWidth of the pattern's lines, pt
 * @param dash lengths of dash and gap in turn, pt; empty for a whole line
 */
public record Style(
        int fill, Pattern pattern, int stroke, double width, double patternWidth, Dash dash) {

    /** No colour: not painted. */
    public static final int NOTHING = -1;

    /** Dark ink. */
    public static final int INK = 0x1F2A30;

    private static final int WHITE = 0xFFFFFF;
    private static final int SOFT_INK = 0x4F5A60;
    private static final int BROWN = 0x7F7458;
    private static final int BLUE = 0x0072B2;
    private static final int DEEP = 0x004B78;
    private static final int VERMILION = 0xD55E00;

    /** Dash and gap lengths, pt. */
    public enum Dash {
        /** A whole line. */
        NONE,
        /** Short dashes. */
        SHORT,
        /** Middle dashes. */
        MIDDLE,
        /** Long dashes. */
        LONG,
        /** Dash and dot. */
        DASH_DOT,
        /** Dots. */
        DOTS,
        /** Square dots far apart. */
        BEADS,
        /** A long dash and two dots. */
        DASH_DOT_DOT;

        /** Dash and gap in turn, pt. */
        public double[] lengths() {
            return switch (this) {
                case NONE -> new double[0];
                case SHORT -> new double[] {2.5, 2};
                case MIDDLE -> new double[] {5, 2.5};
                case LONG -> new double[] {10, 3};
                case DASH_DOT -> new double[] {8, 2.5, 1.2, 2.5};
                case DOTS -> new double[] {1.2, 2.2};
                case BEADS -> new double[] {1.8, 3.4};
                case DASH_DOT_DOT -> new double[] {9, 2, 1.2, 2, 1.2, 2};
            };
        }
    }

    /** How {@code role} looks. */
    public static Style of(Role role) {
        return switch (role) {
            case TEXT -> words(INK);
            case NOTE -> words(SOFT_INK);
            case WATER_TEXT -> words(DEEP);
            case PLATE -> words(WHITE);
            case BAND -> words(0xF3F0E7);
            case HAIRLINE -> line(0xD3CDBF, 0.5, Dash.NONE);
            case FRAME -> line(0x9A947F, 0.6, Dash.NONE);
            case GRID -> line(0xE1DCCF, 0.5, Dash.NONE);
            case TICK -> new Style(INK, Pattern.NONE, INK, 0.8, 0, Dash.NONE);
            case LEADER -> line(INK, 0.5, Dash.NONE);
            case MARKER -> new Style(WHITE, Pattern.NONE, INK, 1.1, 0, Dash.NONE);
            case PLACE -> line(INK, 2, Dash.NONE);
            case PLATE_LINE -> line(WHITE, 5, Dash.NONE);
            case GROUND_LINE -> line(0x5E5234, 0.7, Dash.NONE);
            case EARTH -> words(0xF6F1E6);
            case STRIPPED_LINE -> line(0x6E4800, 1.8, Dash.BEADS);
            case BEARING_LINE -> line(SOFT_INK, 0.8, Dash.DASH_DOT);
            case SUBGRADE -> line(INK, 1.3, Dash.MIDDLE);
            case FINISHED -> line(INK, 2.0, Dash.NONE);
            case DITCH_LEFT -> line(BLUE, 1.0, Dash.DASH_DOT);
            case DITCH_RIGHT -> line(BLUE, 1.0, Dash.SHORT);
            case DITCH_BOTH -> line(BLUE, 1.0, Dash.LONG);
            case CUT -> area(0xFFFAFD, Pattern.HATCH, 0x8C3568, 0.6);
            case FILL -> area(0xD5ECE1, Pattern.DOTS, 0x004D3B, 1.2);
            case TOPSOIL -> area(0xFDF6E3, Pattern.DASHES, 0x8A5A00, 0.6);
            case TOPSOIL_BACK -> area(0xF7E2B0, Pattern.BLADES, 0x7A5200, 0.5);
            case HEAP -> area(0xFBEFD2, Pattern.DASHES, 0x7A5200, 0.6);
            case UNDERCUT -> area(0xF2F2F2, Pattern.HATCH_BOTH, SOFT_INK, 0.4);
            case STONE_FINE -> area(0xE6E6E6, Pattern.STONES_SMALL, 0x555555, 0.8);
            case STONE_MIDDLE -> area(0xCFCFCF, Pattern.STONES_MIDDLE, 0x444444, 0.4);
            case STONE_COARSE -> area(0xB8B8B8, Pattern.STONES_LARGE, 0x333333, 0.5);
            case LANE -> words(0xFBFAF6);
            case LANE_EDGE -> line(INK, 1.1, Dash.NONE);
            case CENTRE -> line(INK, 0.7, Dash.LONG);
            case LIMIT -> line(INK, 0.8, Dash.MIDDLE);
            case CATCH -> line(BROWN, 0.6, Dash.NONE);
            case CONTOUR -> line(0xB9AE92, 0.4, Dash.NONE);
            case CONTOUR_HEAVY -> line(0x8A7D5C, 0.9, Dash.NONE);
            case BREAKLINE -> line(0xA9A291, 0.5, Dash.SHORT);
            case BOUNDARY -> line(SOFT_INK, 0.9, Dash.DASH_DOT_DOT);
            case SHOT -> words(BROWN);
            case WATER -> new Style(0x7DB9E0, Pattern.LEVEL, DEEP, 1.3, 0.6, Dash.NONE);
            case WET_MOST -> words(0x5B7F95);
            case WET_NEXT -> words(0x93AFBF);
            case WET_DAMP -> words(0xC7D6DE);
            case WATER_BEFORE -> new Style(NOTHING, Pattern.NONE, BLUE, 1.0, 0, Dash.DOTS);
            case FLOW -> new Style(BLUE, Pattern.NONE, BLUE, 1.0, 0, Dash.NONE);
            case DIP, TURN_OUT -> new Style(DEEP, Pattern.NONE, DEEP, 1.3, 0, Dash.NONE);
            case WATER_BAR -> new Style(DEEP, Pattern.NONE, DEEP, 3, 0, Dash.NONE);
            case RELIEF_PIPE, OUTLET_PERMITTED, OUTLET_FORBIDDEN, OUTLET_TO_ASK ->
                    new Style(DEEP, Pattern.NONE, DEEP, 1.2, 0, Dash.NONE);
            case PIPE -> line(INK, 3.4, Dash.NONE);
            case PIPE_CORE -> line(WHITE, 1.7, Dash.NONE);
            case BARREL -> new Style(WHITE, Pattern.NONE, INK, 1.2, 0, Dash.NONE);
            case HAZARD -> new Style(NOTHING, Pattern.CROSSES, VERMILION, 1.2, 0.5, Dash.NONE);
            case WIRE -> line(VERMILION, 1.1, Dash.NONE);
            case BURIED -> line(VERMILION, 1.3, Dash.DASH_DOT);
            case PROBE -> new Style(WHITE, Pattern.NONE, INK, 0.9, 0, Dash.NONE);
            case LOOK -> new Style(VERMILION, Pattern.NONE, INK, 0.6, 0, Dash.NONE);
            case TICK_MARK -> line(WHITE, 1.3, Dash.NONE);
            case ACCENT -> new Style(BLUE, Pattern.NONE, BLUE, 1.2, 0, Dash.NONE);
        };
    }

    private static Style words(int fill) {
        return new Style(fill, Pattern.NONE, NOTHING, 0, 0, Dash.NONE);
    }

    private static Style line(int stroke, double width, Dash dash) {
        return new Style(NOTHING, Pattern.NONE, stroke, width, 0, dash);
    }

    private static Style area(int fill, Pattern pattern, int stroke, double patternWidth) {
        return new Style(fill, pattern, stroke, 0.5, patternWidth, Dash.NONE);
    }
}
