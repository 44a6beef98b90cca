package lanewright.planner.document;

import java.util.List;
import lanewright.measure.LengthUnit;
import lanewright.survey.read.DepthUnit;
import lanewright.survey.read.Holds;
import org.jspecify.annotations.Nullable;

/**
 * Where the measured ground comes from, and what is declared about it.
 *
 * @param frame the flat map on which everything lies
 * @param files the survey files, at least one
 * @param codes what codes of points mean
 * @param heightError how far a height may be off, one standard deviation, m; NaN if not stated
 * @param corridor how far to either side of the lane elevation grids are read, m
 */
public record SurveyPart(
        MapFrame frame, List<File> files, Codes codes, double heightError, double corridor) {
    /** Copies the list and checks the ranges. */
    public SurveyPart {
        files = List.copyOf(files);
        if (files.isEmpty()) {
            throw new IllegalArgumentException("a survey needs at least one file");
        }
        if (heightError < 0 || heightError > 10) {
            throw new IllegalArgumentException("the height error must be 0 to 10 m");
        }
        if (!(corridor >= 10 && corridor <= 5000)) {
            throw new IllegalArgumentException("the corridor must be 10 to 5,000 m");
        }
    }

    /**
     * The flat map.
     *
     * @param kind which kind
     * @param epsg code of a projected system, or 0
     * @param longitude where a local zone has its zero, degrees, or NaN
     * @param latitude where a local zone has its zero, degrees, or NaN
     */
    public record MapFrame(Kind kind, int epsg, double longitude, double latitude) {
        /** What a frame can be. */
        public enum Kind {
            /** Plain local coordinates. */
            LOCAL,
            /** A projected reference system with an EPSG code. */
            EPSG,
            /** A zone of its own around a place. */
            ZONE
        }

        /** Plain local coordinates. */
        public static final MapFrame LOCAL = new MapFrame(Kind.LOCAL, 0, Double.NaN, Double.NaN);

        /** The system with an EPSG code. */
        public static MapFrame epsg(int code) {
            return new MapFrame(Kind.EPSG, code, Double.NaN, Double.NaN);
        }

        /** A zone around a place, degrees. */
        public static MapFrame zone(double longitude, double latitude) {
            return new MapFrame(Kind.ZONE, 0, longitude, latitude);
        }
    }

    /**
     * One survey file. Whatever is null is found out, and refused where it can be taken in two
     * ways.
     *
     * @param path where it lies, relative to the folder of the plan
     * @param holds what it holds
     * @param unit unit of its coordinates
     * @param heightUnit unit of its heights, if another
     * @param depthUnit unit of bare depths in a file of probe holes
     * @param columns order of its columns in words
     * @param separator what stands between fields
     * @param decimal decimal sign
     * @param epsg code of its own reference system, if other than the frame's
     * @param coordinates how a GeoJSON file gives its places, or null for RFC 7946
     * @param heightProperty GeoJSON property that holds the height
     * @param kindProperty GeoJSON property that tells points and lines apart
     */
    public record File(
            String path,
            Holds holds,
            @Nullable LengthUnit unit,
            @Nullable LengthUnit heightUnit,
            @Nullable DepthUnit depthUnit,
            @Nullable String columns,
            @Nullable Separator separator,
            @Nullable Decimal decimal,
            int epsg,
            @Nullable Coordinates coordinates,
            @Nullable String heightProperty,
            @Nullable String kindProperty) {
        /** Checks the path and the code. */
        public File {
            if (path.isBlank()) {
                throw new IllegalArgumentException("a survey file needs a path");
            }
            if (path.startsWith("/") || path.startsWith("\\") || path.matches("[A-Za-z]:.*")) {
                throw new IllegalArgumentException(
                        "the path must be relative to the folder of the plan");
            }
            if (epsg < 0) {
                throw new IllegalArgumentException("an EPSG code is over zero");
            }
            boolean oneSign = separator == Separator.COMMA && decimal == Decimal.COMMA;
            if (oneSign) {
                throw new IllegalArgumentException(
                        "separator and decimal sign cannot both be the comma");
            }
        }

        /** A file of which nothing is declared. */
        public static File of(String path, Holds holds) {
            return new File(path, holds, null, null, null, null, null, null, 0, null, null, null);
        }
    }

    /** What stands between the fields of delimited text. */
    public enum Separator {
        /** A comma. */
        COMMA(','),
        /** A semicolon. */
        SEMICOLON(';'),
        /** A tab. */
        TAB('\t'),
        /** One or more blanks. */
        BLANK(' ');

        private final char sign;

        Separator(char sign) {
            this.sign = sign;
        }

        /** The character. */
        public char sign() {
            return sign;
        }
    }

    /** The decimal sign of delimited text. */
    public enum Decimal {
        /** A full stop. */
        POINT('.'),
        /** A comma. */
        COMMA(',');

        private final char sign;

        Decimal(char sign) {
            this.sign = sign;
        }

        /** The character. */
        public char sign() {
            return sign;
        }
    }

    /** How a GeoJSON file gives its places. */
    public enum Coordinates {
        /** Longitude, latitude, as RFC 7946 prescribes. */
        LONGITUDE_LATITUDE,
        /** East, north, in the frame's own coordinates. */
        LOCAL
    }

    /**
     * What codes of points mean, each one whole word or several.
     *
     * @param breaklines codes that make breaklines
     * @param start code that begins a new line, or null
     * @param end code that ends a line, or null
     * @param notGround codes of shots that do not lie on the ground
     */
    public record Codes(
            List<String> breaklines,
            @Nullable String start,
            @Nullable String end,
            List<String> notGround) {
        /** No code means anything. */
        public static final Codes NONE = new Codes(List.of(), null, null, List.of());

        /** Copies the lists. */
        public Codes {
            breaklines = List.copyOf(breaklines);
            notGround = List.copyOf(notGround);
        }
    }
}
