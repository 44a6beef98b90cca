package lanewright.earthwork;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionLine;
import lanewright.lane.section.SectionSet;
import lanewright.lane.surface.TrueSolid;
import lanewright.lane.volume.LaneVolumes;
import lanewright.lane.volume.Running;
import lanewright.lane.volume.State;
import lanewright.measure.Assumption;
import lanewright.measure.Assumption.Mark;
import lanewright.measure.Finding;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import org.jspecify.annotations.Nullable;

/** Puts the report together; lives for one call. */
final class EarthworkMaking {

    /**
     * What one truck carries where nobody says, loose m³: 12 yd³, a 20-ton army dump truck (army
     * engineer course slides; see the assumption).
     */
    private static final double TRUCK = 12 * 0.9144 * 0.9144 * 0.9144;

    private final SectionSet sections;
    private final LaneVolumes volumes;
    private final @Nullable TrueSolid solid;
    private final EarthOptions options;
    private final Soil soil;
    private final Soil topsoilSoil;
    private double deepest;
    private double deepestAt = Double.NaN;

    EarthworkMaking(
            SectionSet sections,
            LaneVolumes volumes,
            @Nullable TrueSolid solid,
            EarthOptions options) {
        this.sections = sections;
        this.volumes = volumes;
        this.solid = solid;
        this.options = options;
        soil = Soil.published(options.soil());
        topsoilSoil = Soil.published(options.topsoil());
    }

    EarthworkReport report() {
        findDeepest();
        Heap.Repose repose = Heap.repose(options.heaped());
        double run = Math.max(options.heapRun(), Heap.run(repose.degrees()));
        Balance balance =
                Balance.of(
                        volumes.cut().corrected(),
                        Math.max(0, volumes.earthFill()),
                        soil,
                        options.payload());
        Hauled unfit = Hauled.of(volumes.undercut().corrected(), soil, options.payload());
        double refilled = soil.convert(volumes.refill().corrected(), State.COMPACTED, State.BANK);
        Hauled refill = Hauled.of(refilled, soil, options.payload());
        TopsoilBalance topsoil = topsoil(run);
        List<Comparison> rows = rows();
        int lifts = (int) Math.ceil(deepest / options.lift() - 1e-9);
        var findings = new EarthFindings(sections, volumes, solid, soil);
        List<Finding> found = new ArrayList<>();
        found.addAll(findings.undercut());
        found.addAll(findings.balance(balance));
        found.addAll(findings.topsoil(topsoil));
        for (Comparison row : rows) {
            found.addAll(findings.compare(row, truck(row)));
        }
        return new EarthworkReport(
                soil,
                topsoilSoil,
                rows,
                balance,
                unfit,
                refill,
                topsoil,
                MassDiagram.of(volumes.cut(), volumes.fill(), volumes.edgeRefill(), soil),
                deepest,
                deepestAt,
                options.lift(),
                Math.max(0, lifts),
                found,
                assumptions(repose));
    }

    private TopsoilBalance topsoil(double run) {
        double strip = volumes.strip().corrected();
        double back = volumes.topsoilBack().corrected();
        double loose = topsoilSoil.convert(strip, State.BANK, State.LOOSE);
        return new TopsoilBalance(
                strip,
                back,
                strip - back,
                strip > back
                        ? Hauled.of(strip - back, topsoilSoil, options.payload())
                        : Hauled.NONE,
                loose,
                Heap.round(loose, run, options.heapHeight()),
                Heap.row(loose, run, options.heapHeight()),
                run);
    }

    private List<Comparison> rows() {
        List<Comparison> rows = new ArrayList<>();
        rows.add(row(volumes.strip(), solid == null ? Double.NaN : solid.strip()));
        rows.add(row(volumes.cut(), solid == null ? Double.NaN : solid.cut()));
        rows.add(row(volumes.fill(), solid == null ? Double.NaN : solid.fill()));
        rows.add(row(volumes.edgeRefill(), solid == null ? Double.NaN : solid.edgeRefill()));
        rows.add(row(volumes.topsoilBack(), solid == null ? Double.NaN : solid.topsoilBack()));
        rows.add(row(volumes.undercut(), solid == null ? Double.NaN : solid.undercut()));
        rows.add(row(volumes.refill(), solid == null ? Double.NaN : solid.undercut()));
        for (Running stone : volumes.stone()) {
            rows.add(row(stone, stone(stone.name())));
        }
        return rows;
    }

    private double stone(String role) {
        if (solid == null) {
            return Double.NaN;
        }
        for (TrueSolid.LayerVolume layer : solid.layers()) {
            if (layer.role().equals(role)) {
                return layer.volume();
            }
        }
        return 0;
    }

    private static Comparison row(Running running, double solidVolume) {
        return new Comparison(
                running.name(),
                running.state(),
                running.plain(),
                running.corrected(),
                running.withPyramids(),
                solidVolume);
    }

    /** One truckload in the state that a quantity is measured in, m³. */
    private double truck(Comparison row) {
        double known = options.payload() / soil.looseDensity();
        double loose = Double.isNaN(known) ? TRUCK : known;
        return soil.convert(loose, State.LOOSE, row.state());
    }

    private void findDeepest() {
        for (Section section : sections.sections()) {
            SectionLine earth = section.subgrade();
            SectionLine stripped = section.stripped();
            for (int i = 0; i < earth.size(); i++) {
                deeper(section, earth.height(i) - stripped.at(earth.offset(i)));
            }
            for (int i = 0; i < stripped.size(); i++) {
                deeper(section, earth.at(stripped.offset(i)) - stripped.height(i));
            }
        }
    }

    /** NaN, where one of the lines does not reach, is never deeper. */
    private void deeper(Section section, double fill) {
        if (section.complete() && fill > deepest) {
            deepest = fill;
            deepestAt = section.station();
        }
    }

    private List<Assumption> assumptions(Heap.Repose repose) {
        List<Assumption> list = new ArrayList<>();
        list.add(soil.from());
        if (!topsoilSoil.equals(soil)) {
            list.add(topsoilSoil.from());
        }
        list.add(
                new Assumption(
                        "room that topsoil takes once it is put back",
                        Saying.plain("as much as it had in the bank"),
                        Mark.COMMON_PRACTICE,
                        "common practice, no source"));
        list.add(repose.from());
        list.add(
                new Assumption(
                        "topsoil heaps",
                        Saying.of(
                                "no steeper than {} and no higher than {~}",
                                Quantity.sideSlope(options.heapRun()),
                                Quantity.length(options.heapHeight())),
                        Mark.COMMON_PRACTICE,
                        "common practice, no source"));
        list.add(
                new Assumption(
                        "packed lift of fill",
                        Saying.of("{}", Quantity.depth(options.lift())),
                        Mark.YOURS,
                        "your plan"));
        if (Double.isNaN(options.payload() / soil.looseDensity())) {
            list.add(
                    new Assumption(
                            "a truckload, where volumes are compared",
                            Saying.of("{} loose", Quantity.volume(TRUCK)),
                            Mark.PUBLISHED,
                            "army engineer course slides: a 20-ton dump truck usually carries 12"
                                    + " loose cubic yards"));
        }
        return list;
    }
}
