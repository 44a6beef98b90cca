package lanewright.drainage.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class FarthestTest {

    @Test
    void theLongestWayIsMeasuredAlongTheCells() {
        // A plane that falls a metre a cell to the south, with a lower lane in its middle column.
        int rows = 9;
        int columns = 5;
        var cells = new Cells(0, 0, 2, columns, rows);
        double[] heights = new double[rows * columns];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                heights[row * columns + column] = row + (column == 2 ? 0 : 0.9);
            }
        }
        FlowGrid flow = FlowGrid.of(cells, heights);
        int[] places = new int[heights.length];
        Arrays.fill(places, -1);
        places[2 * columns + 2] = 0;
        List<FlowGrid.Way> ways =
                flow.gathered(places, 2).stream().map(FlowGrid.Gathered::way).toList();
        // From a corner of the top: a diagonal into the lane, and five cells down it.
        assertEquals(5 * 2 + 2 * Math.sqrt(2), ways.get(0).length(), 1e-12);
        assertEquals(8.9 - 2, ways.get(0).fall(), 1e-12);
        assertEquals(new FlowGrid.Way(0, 0), ways.get(1));
    }
}
