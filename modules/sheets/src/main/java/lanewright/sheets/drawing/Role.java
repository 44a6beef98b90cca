package lanewright.sheets.drawing;

/** What a mark means. How it looks is said once, in {@link Style}. */
public enum Role {
    /** Words in ink. */
    TEXT,
    /** Words that may be passed over: notes, units, axis numbers. */
    NOTE,
    /** Words of water. */
    WATER_TEXT,
    /** White ground under words or a drawing, so that nothing shows through. */
    PLATE,
    /** Warm band under a head or a box of words. */
    BAND,
    /** Thin line between rows. */
    HAIRLINE,
    /** Frame of a drawing. */
    FRAME,
    /** Grid of a drawing. */
    GRID,
    /** A short line across something: ticks, bars, arrows of measure. */
    TICK,
    /** A thin line from words to what they speak of. */
    LEADER,
    /** A place on the lane, in drawings and strips. */
    MARKER,
    /** The line and ring of the place marker on a screen. */
    PLACE,
    /** White rim under a line on a screen, so that it stands out from the land. */
    PLATE_LINE,
    /** The ground as it is. */
    GROUND_LINE,
    /** The earth under the ground line. */
    EARTH,
    /** The ground less its topsoil. */
    STRIPPED_LINE,
    /** The line of soil that bears. */
    BEARING_LINE,
    /** The earth as shaped. */
    SUBGRADE,
    /** The finished lane: the thickest line. */
    FINISHED,
    /** Bottom of a ditch, left of the lane. */
    DITCH_LEFT,
    /** Bottom of a ditch, right of the lane. */
    DITCH_RIGHT,
    /** Bottoms of both ditches, where they are equally high. */
    DITCH_BOTH,
    /** Dug. */
    CUT,
    /** Built up. */
    FILL,
    /** Topsoil taken off. */
    TOPSOIL,
    /** Topsoil put back. */
    TOPSOIL_BACK,
    /** A heap of topsoil, seen from above. */
    HEAP,
    /** Dug out down to soil that bears, and refilled. */
    UNDERCUT,
    /** Finest stone, at the top. */
    STONE_FINE,
    /** Middle stone. */
    STONE_MIDDLE,
    /** Coarsest stone, at the bottom. */
    STONE_COARSE,
    /** The lane's surface seen from above. */
    LANE,
    /** Edge of the travelled way. */
    LANE_EDGE,
    /** The lane's own line, from which stations run. */
    CENTRE,
    /** Limit of work. */
    LIMIT,
    /** Where the new slope meets the ground. */
    CATCH,
    /** Ordinary contour. */
    CONTOUR,
    /** Every fifth contour, with its height. */
    CONTOUR_HEAVY,
    /** A measured breakline. */
    BREAKLINE,
    /** Boundary of the survey. */
    BOUNDARY,
    /** A measured point. */
    SHOT,
    /** The ground that stays wettest by its shape. */
    WET_MOST,
    /** Ground that stays wet by its shape. */
    WET_NEXT,
    /** Ground that stays damp by its shape. */
    WET_DAMP,
    /** Water that sits with the lane built. */
    WATER,
    /** Water that sat before there was a lane. */
    WATER_BEFORE,
    /** Way that water takes. */
    FLOW,
    /** A long flat dip across the lane that leads water off. */
    DIP,
    /** A bar across the lane that leads water off. */
    WATER_BAR,
    /** A ditch that leads out over lower ground. */
    TURN_OUT,
    /** A pipe that leads a ditch's water to the other side. */
    RELIEF_PIPE,
    /** Where a ditch lets its water out, and may. */
    OUTLET_PERMITTED,
    /** Where a ditch lets its water out, and may not. */
    OUTLET_FORBIDDEN,
    /** Where a ditch lets its water out, and nobody has said whether it may. */
    OUTLET_TO_ASK,
    /** A pipe that lets water through. */
    PIPE,
    /** The hollow of a pipe. */
    PIPE_CORE,
    /** A pipe seen from the side or along its bore. */
    BARREL,
    /** A place to be kept off. */
    HAZARD,
    /** An overhead wire. */
    WIRE,
    /** A buried line. */
    BURIED,
    /** A probe hole. */
    PROBE,
    /** Look here. */
    LOOK,
    /** Answered, or acting. */
    ACCENT,
    /** The tick on {@link #ACCENT}. */
    TICK_MARK
}
