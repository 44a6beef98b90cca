package lanewright.survey.read;

import java.util.List;
import lanewright.measure.LengthUnit;
import lanewright.survey.Reading;
import lanewright.survey.Reading.Understood;
import org.jspecify.annotations.Nullable;

/**
 * How a file of delimited text is to be read.
 *
 * @param separator what stands between fields
 * @param decimal decimal sign
 * @param columns meaning of each column, in order
 * @param headingLine line that holds the headings, or 0 if none does
 * @param unit unit of the coordinates; metres where they are degrees
 * @param heightUnit unit of the heights
 * @param depthUnit unit of bare depths, or null if every depth carries its own
 * @param told the columns as they are told
 * @param understood how each of these is known
 */
record Layout(
        char separator,
        char decimal,
        List<Column> columns,
        long headingLine,
        LengthUnit unit,
        LengthUnit heightUnit,
        @Nullable DepthUnit depthUnit,
        List<Reading.Column> told,
        List<Understood> understood) {

    Layout {
        columns = List.copyOf(columns);
        told = List.copyOf(told);
        understood = List.copyOf(understood);
    }

    /** Number of a column from 0, or -1 if there is none. */
    int at(Column column) {
        return columns.indexOf(column);
    }

    /** True if the places are longitude and latitude. */
    boolean degrees() {
        return at(Column.LONGITUDE) >= 0;
    }
}
