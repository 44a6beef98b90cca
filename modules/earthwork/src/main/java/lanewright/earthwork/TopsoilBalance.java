package lanewright.earthwork;

/**
 * Where the topsoil goes. Topsoil that is put back and settled takes the room that it had before:
 * our choice, no source.
 *
 * @param strip bank m³
 * @param back put back in place, m³
 * @param left what is left over, bank m³; negative if it is short
 * @param away what is left over, with its truckloads; nothing if it is short
 * @param heaped all that is stripped, loose m³
 * @param heaps round heaps of it
 * @param row or one long heap of it
 * @param run run over rise of the heaps' sides
 */
public record TopsoilBalance(
        double strip,
        double back,
        double left,
        Hauled away,
        double heaped,
        Heap heaps,
        Heap row,
        double run) {}
