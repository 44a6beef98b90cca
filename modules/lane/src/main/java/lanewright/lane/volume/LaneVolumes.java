package lanewright.lane.volume;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import lanewright.lane.line.Alignment;
import lanewright.lane.section.Areas;
import lanewright.lane.section.Part;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionSet;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.Layer;

/**
 * What a lane takes and moves, from its sections.
 *
 * @param strip topsoil stripped, bank
 * @param cut earth dug from stripped ground down to subgrade, bank
 * @param fill earth from stripped ground up to subgrade, compacted, edge refill included
 * @param edgeRefill the part of fill that only closes the edge of a cut: never ordered or balanced
 *     as earth
 * @param topsoilBack topsoil put back on slopes and in the margin, in place
 * @param undercut earth that does not bear, dug out under stone and shoulders, bank
 * @param refill what is put in its place, compacted
 * @param stone by layer, in the order in which roles first appear, top down; a role that appears in
 *     several layers is one
 * @param disturbed land between the limits of work: widths carried along, m² in place of m³
 */
public record LaneVolumes(
        Running strip,
        Running cut,
        Running fill,
        Running edgeRefill,
        Running topsoilBack,
        Running undercut,
        Running refill,
        List<Running> stone,
        Running disturbed) {
    /** Copies the list. */
    public LaneVolumes {
        stone = List.copyOf(stone);
    }

    /** The volumes of a lane's sections, by average end area. */
    public static LaneVolumes of(SectionSet set) {
        return new Taking(set).all();
    }

    /** Fill that is earth to be found and compacted: all but edge refill, m³, curves corrected. */
    public double earthFill() {
        return fill.corrected() - edgeRefill.corrected();
    }

    /** Reads areas out of sections; lives for one call. */
    private static final class Taking {
        private final LaneDesign design;
        private final List<Section> sections;
        private final double[] station;
        private final double[] curvature;

        Taking(SectionSet set) {
            design = set.design();
            sections = set.sections();
            int n = sections.size();
            station = new double[n];
            curvature = new double[Math.max(0, n - 1)];
            Alignment line = design.alignment();
            for (int i = 0; i < n; i++) {
                station[i] = sections.get(i).station();
                if (i > 0) {
                    curvature[i - 1] = line.curvature((station[i - 1] + station[i]) / 2);
                }
            }
        }

        LaneVolumes all() {
            return new LaneVolumes(
                    taken("topsoil strip", State.BANK, Areas::strip),
                    taken("cut", State.BANK, Areas::cut),
                    taken("fill", State.COMPACTED, Areas::fill),
                    taken("edge refill", State.COMPACTED, Areas::edgeRefill),
                    taken("topsoil put back", State.COMPACTED, Areas::topsoilBack),
                    taken("undercut", State.BANK, Areas::undercut),
                    taken("undercut refill", State.COMPACTED, Areas::undercut),
                    stone(),
                    running("disturbed land", State.BANK, Taking::width));
        }

        private Running taken(String name, State state, Function<Areas, Part> which) {
            return running(name, state, section -> which.apply(section.areas()));
        }

        private Running running(String name, State state, Function<Section, Part> which) {
            double[] area = new double[sections.size()];
            double[] centroid = new double[sections.size()];
            for (int i = 0; i < area.length; i++) {
                Part part = which.apply(sections.get(i));
                area[i] = part.area();
                centroid[i] = part.centroid();
            }
            return Running.of(name, state, station, area, centroid, curvature);
        }

        private static Part width(Section section) {
            double left = section.left().limit();
            double right = section.right().limit();
            return new Part(right - left, (left + right) / 2);
        }

        private List<Running> stone() {
            Set<String> roles = new LinkedHashSet<>();
            design.typical().forEach(s -> s.value().layers().forEach(l -> roles.add(l.role())));
            List<Running> stone = new ArrayList<>();
            for (String role : roles) {
                stone.add(running(role, State.COMPACTED, section -> layer(section, role)));
            }
            return stone;
        }

        private Part layer(Section section, String role) {
            boolean before = section.face() == Section.Face.BEFORE;
            List<Layer> layers =
                    (before ? design.atBefore(section.station()) : design.at(section.station()))
                            .typical()
                            .layers();
            double area = 0;
            double moment = 0;
            for (int i = 0; i < layers.size(); i++) {
                if (layers.get(i).role().equals(role)) {
                    Part part = section.areas().layers().get(i);
                    area += part.area();
                    moment += part.area() * part.centroid();
                }
            }
            return area > 0 ? new Part(area, moment / area) : Part.NONE;
        }
    }
}
