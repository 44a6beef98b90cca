package lanewright.survey.read;

import java.nio.file.Path;
import java.util.function.Consumer;
import lanewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * One survey file and what its owner declares about it. Whatever is null is found out, and refused
 * where it can be taken in two ways.
 *
 * @param path where it lies
 * @param holds what it holds
 * @param unit unit of its coordinates, and of its heights unless {@code heightUnit} says otherwise
 * @param heightUnit unit of its heights
 * @param depthUnit unit of bare depths in a file of probe holes, such as {@code in}
 * @param columns order of its columns in words, such as {@code "name, northing, easting, height,
 *     code"}; {@code skip} for a column that is not used
 * @param separator what stands between fields: comma, semicolon, tab or blank
 * @param decimal decimal sign: full stop or comma
 * @param epsg code of the system its coordinates are in, if other than the frame's; a geographic
 *     code such as 4326 where the columns are longitude and latitude
 * @param local true if a GeoJSON file holds plain coordinates of the frame instead of the longitude
 *     and latitude that RFC 7946 prescribes
 * @param heightProperty name of the GeoJSON property that holds the height
 * @param kindProperty name of the GeoJSON property that tells {@code point}, {@code breakline},
 *     {@code contour} and {@code boundary} apart in a file of all of them; {@code kind} if null
 */
public record SurveyFile(
        Path path,
        Holds holds,
        @Nullable LengthUnit unit,
        @Nullable LengthUnit heightUnit,
        @Nullable DepthUnit depthUnit,
        @Nullable String columns,
        @Nullable Character separator,
        @Nullable Character decimal,
        @Nullable Integer epsg,
        boolean local,
        @Nullable String heightProperty,
        @Nullable String kindProperty) {

    /** Checks what can be checked without the file. */
    public SurveyFile {
        if (separator != null && ",;\t ".indexOf(separator) < 0) {
            throw new IllegalArgumentException(
                    "separator must be comma, semicolon, tab or blank, was '" + separator + "'");
        }
        if (decimal != null && decimal != '.' && decimal != ',') {
            throw new IllegalArgumentException("decimal sign must be . or , was '" + decimal + "'");
        }
        if (separator != null && separator.equals(decimal)) {
            throw new IllegalArgumentException("separator and decimal sign are both ','");
        }
    }

    /** A file about which nothing is declared but what it holds. */
    public static SurveyFile of(Path path, Holds holds) {
        return new SurveyFile(
                path, holds, null, null, null, null, null, null, null, false, null, null);
    }

    /** With the unit of coordinates declared, and of heights too unless they have their own. */
    public SurveyFile unit(@Nullable LengthUnit declared) {
        return with(file -> file.unit = declared);
    }

    /** With the unit of heights declared. */
    public SurveyFile heightUnit(@Nullable LengthUnit declared) {
        return with(file -> file.heightUnit = declared);
    }

    /** With the unit of bare depths declared. */
    public SurveyFile depthUnit(@Nullable DepthUnit declared) {
        return with(file -> file.depthUnit = declared);
    }

    /** With the order of columns declared. */
    public SurveyFile columns(@Nullable String declared) {
        return with(file -> file.columns = declared);
    }

    /** With separator and decimal sign declared. */
    public SurveyFile signs(@Nullable Character fields, @Nullable Character decimals) {
        return with(
                file -> {
                    file.separator = fields;
                    file.decimal = decimals;
                });
    }

    /** With the EPSG code of its own system declared. */
    public SurveyFile epsg(@Nullable Integer code) {
        return with(file -> file.epsg = code);
    }

    /** With GeoJSON coordinates declared to be plain coordinates of the frame. */
    public SurveyFile local(boolean plain) {
        return with(file -> file.local = plain);
    }

    /** With the GeoJSON properties for height and kind declared. */
    public SurveyFile properties(@Nullable String height, @Nullable String kind) {
        return with(
                file -> {
                    file.heightProperty = height;
                    file.kindProperty = kind;
                });
    }

    private SurveyFile with(Consumer<Declared> change) {
        var declared = new Declared(this);
        change.accept(declared);
        return declared.file();
    }

    /** What is declared of a file while one thing of it changes. */
    private static final class Declared {
        private final SurveyFile old;
        private @Nullable LengthUnit unit;
        private @Nullable LengthUnit heightUnit;
        private @Nullable DepthUnit depthUnit;
        private @Nullable String columns;
        private @Nullable Character separator;
        private @Nullable Character decimal;
        private @Nullable Integer epsg;
        private boolean local;
        private @Nullable String heightProperty;
        private @Nullable String kindProperty;

        Declared(SurveyFile old) {
            this.old = old;
            unit = old.unit;
            heightUnit = old.heightUnit;
            depthUnit = old.depthUnit;
            columns = old.columns;
            separator = old.separator;
            decimal = old.decimal;
            epsg = old.epsg;
            local = old.local;
            heightProperty = old.heightProperty;
            kindProperty = old.kindProperty;
        }

        SurveyFile file() {
            return new SurveyFile(
                    old.path,
                    old.holds,
                    unit,
                    heightUnit,
                    depthUnit,
                    columns,
                    separator,
                    decimal,
                    epsg,
                    local,
                    heightProperty,
                    kindProperty);
        }
    }

    /** Name of the file without its folders. */
    public String name() {
        Path last = path.getFileName();
        return last == null ? path.toString() : last.toString();
    }
}
