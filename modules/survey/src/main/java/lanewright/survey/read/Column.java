package lanewright.survey.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What a column of delimited text means. */
enum Column {
    NAME("name"),
    EASTING("easting"),
    NORTHING("northing"),
    HEIGHT("height"),
    CODE("code"),
    LONGITUDE("longitude"),
    LATITUDE("latitude"),
    TOPSOIL("topsoil"),
    BEARING("bearing"),
    MET("met"),
    SKIP("skip");

    /** Words as they stand over columns, without units; all in lower case. */
    private static final Map<String, Column> WORDS = new TreeMap<>();

    static {
        words(NAME, "name point pt pnt no nr num number id key station pid shot hole probe");
        words(NAME, "point_no point_number point_id pt_no pointno pointnumber pointid # p");
        words(EASTING, "easting east e x xcoord x_coord easting_x");
        words(NORTHING, "northing north n y ycoord y_coord northing_y");
        words(HEIGHT, "height elevation elev el z h hgt rl level zcoord z_coord reduced_level");
        words(CODE, "code description desc d note notes remark remarks comment comments feature");
        words(CODE, "point_code");
        words(LONGITUDE, "longitude lon long lng");
        words(LATITUDE, "latitude lat");
        words(TOPSOIL, "topsoil topsoil_depth depth_of_topsoil topsoil_to topsoil_thickness");
        words(TOPSOIL, "top_soil top_soil_depth depth_of_top_soil top_soil_to");
        // Depths from the grass down to soil that bears: common practice, no source. Words that may
        // mean a thickness below the topsoil ("soft"), rock ("refusal") or a depth to dig
        // ("undercut") are not among them.
        words(BEARING, "bearing bearing_depth depth_to_bearing depth_to_bearing_soil");
        words(BEARING, "bearing_soil bearing_at bearing_below bearing_from bears_at bears_below");
        words(BEARING, "firm firm_depth firm_at firm_below firm_from firm_soil_at firm_ground_at");
        words(BEARING, "firm_soil_below firm_ground_below depth_to_firm depth_to_firm_soil");
        words(BEARING, "depth_to_firm_ground soft_to soft_down_to soft_soil_to soft_ground_to");
        words(BEARING, "bottom_of_soft bottom_of_soft_soil");
        words(MET, "met found what_was_met soil");
        words(SKIP, "skip - ?");
    }

    private static final String UNITS =
            "m|metres?|meters?|ft|feet|foot|ftus|us[ _]?ft|usft|sft|us[ _]survey[ _](?:ft|feet|foot)"
                    + "|survey[ _](?:ft|feet|foot)|ift|intl?[ _]?ft|international[ _](?:ft|feet|foot)"
                    + "|in|inch|inches|cm|mm|km|yd|deg|degrees?|°";
    private static final Pattern BRACKETED = Pattern.compile("(.+?)[ _]*[(\\[](.*)[)\\]]");
    private static final Pattern SUFFIXED = Pattern.compile("(.+?)[ _](" + UNITS + ")");

    private final String word;

    Column(String word) {
        this.word = word;
    }

    /** How it is written in the plan. */
    String word() {
        return word;
    }

    private static void words(Column column, String words) {
        for (String each : words.split(" ")) {
            WORDS.put(each, column);
        }
    }

    /**
     * A word over a column.
     *
     * @param text as it stands
     * @param column what it means, or null if the word is not known
     * @param unit the unit that stands with it in lower case, or null if none does
     */
    record Heading(String text, @Nullable Column column, @Nullable String unit) {

        /** What it means in a file: a note on a probe hole is what was met there. */
        @Nullable Column column(Holds holds) {
            return holds == Holds.PROBES && column == CODE ? MET : column;
        }
    }

    /** What a word over a column means. */
    static Heading heading(String given) {
        String text = given.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        while (text.startsWith("#") && text.length() > 1) {
            text = text.substring(1).strip();
        }
        Matcher bracketed = BRACKETED.matcher(text);
        if (bracketed.matches()) {
            return new Heading(
                    given.strip(), known(bracketed.group(1)), bracketed.group(2).strip());
        }
        Column whole = known(text);
        Matcher suffixed = SUFFIXED.matcher(text);
        if (whole == null && suffixed.matches()) {
            return new Heading(given.strip(), known(suffixed.group(1)), suffixed.group(2));
        }
        return new Heading(given.strip(), whole, null);
    }

    private static @Nullable Column known(String text) {
        String joined = text.replaceAll("[ ._-]+", "_").replaceAll("(?<=.)_$", "");
        Column found = WORDS.get(text);
        return found == null ? WORDS.get(joined) : found;
    }

    /**
     * The columns named in a plan.
     *
     * @return the columns, or null and the first unknown word in {@code unknown}
     */
    static @Nullable List<Column> declared(String columns, List<String> unknown) {
        List<Column> all = new ArrayList<>();
        for (String each : columns.split(",", -1)) {
            String text = each.strip().toLowerCase(Locale.ROOT);
            Column column = known(text);
            if (column == null) {
                unknown.add(each.strip());
                return null;
            }
            all.add(column);
        }
        return all;
    }
}
