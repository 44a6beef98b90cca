package lanewright.earthwork;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.section.SectionSet;
import lanewright.lane.surface.TrueSolid;
import lanewright.lane.volume.LaneVolumes;
import lanewright.lane.volume.Running;
import lanewright.lane.volume.State;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import org.jspecify.annotations.Nullable;

/** What deserves a look in the earth figures. */
final class EarthFindings {

    /** Two ways to measure may differ by this much of the whole before it is explained. */
    private static final double LARGE_SHARE = 0.02;

    /** What is short or over by less than this is not worth a word, m³. Our choice. */
    private static final double NOTHING = 0.1;

    /** Two figures nearer than this are one, m³: a small tractor's bucket or two. Our choice. */
    private static final double BUCKETS = 0.5;

    /** Topsoil may be short by this before it is said, m³. Our choice. */
    private static final double LITTLE = 1;

    private static final String RULE = "our choice: 2 % or one truckload";

    private final SectionSet sections;
    private final LaneVolumes volumes;
    private final @Nullable TrueSolid solid;
    private final Soil soil;

    EarthFindings(SectionSet sections, LaneVolumes volumes, @Nullable TrueSolid solid, Soil soil) {
        this.sections = sections;
        this.soil = soil;
        this.volumes = volumes;
        this.solid = solid;
    }

    /** One for each stretch of lane that stands on earth that does not bear. */
    List<Finding> undercut() {
        List<Finding> found = new ArrayList<>();
        Running undercut = volumes.undercut();
        int from = -1;
        for (int i = 0; i <= undercut.size(); i++) {
            boolean soft = i < undercut.size() && undercut.area(i) > 0;
            if (soft && from < 0) {
                from = i;
            } else if (!soft && from >= 0) {
                int a = Math.max(0, from - 1);
                int b = Math.min(undercut.size() - 1, i);
                double volume = undercut.correctedTo(b) - undercut.correctedTo(a);
                found.add(undercut(undercut.station(a), undercut.station(b), volume));
                from = -1;
            }
        }
        return found;
    }

    private static Finding undercut(double from, double to, double volume) {
        return new Finding(
                "soft-below",
                Level.LOOK,
                Topic.EARTH,
                Where.stretch(from, to),
                Saying.of(
                        "From {} to {} the soil under the lane is too soft to carry it: {} must"
                                + " come out, and the room be filled again, packed. Neither is in"
                                + " the balance of cut and fill.",
                        Quantity.station(from),
                        Quantity.station(to),
                        Quantity.volume(volume)),
                null,
                null,
                "",
                Saying.plain(
                        "Dig it out to firm soil, to the depths in the volumes sheet, and refill"
                                + " with stone or fit earth in lifts; or raise the lane. More probe"
                                + " holes would show how far it goes."));
    }

    List<Finding> balance(Balance balance) {
        double over = balance.over();
        if (Math.abs(over) < NOTHING) {
            return List.of();
        }
        boolean away = over > 0;
        Hauled hauled = away ? balance.haulAway() : balance.bringIn();
        double packs = soil.convert(balance.cut(), State.BANK, State.COMPACTED);
        var pattern =
                new StringBuilder(
                        "{} of fit earth is dug and packs down to {}; the fill needs {}.");
        var quantities = new ArrayList<Quantity>();
        quantities.add(Quantity.volume(balance.cut()));
        quantities.add(Quantity.volume(packs));
        quantities.add(Quantity.volume(balance.fill()));
        pattern.append(away ? " Left over: {} packed" : " Short: {} packed");
        quantities.add(Quantity.volume(hauled.compacted()));
        pattern.append(", {} on the truck");
        quantities.add(Quantity.volume(hauled.loose()));
        if (hauled.loads() >= 0) {
            pattern.append(hauled.loads() == 1 ? ", {} load" : ", {} loads");
            quantities.add(Quantity.count(hauled.loads()));
        }
        Saying says = new Saying(pattern.append('.').toString(), quantities);
        return List.of(
                new Finding(
                        away ? "earth-left-over" : "earth-short",
                        Level.NOTE,
                        Topic.EARTH,
                        Where.ANYWHERE,
                        says,
                        null,
                        null,
                        "",
                        Saying.plain(
                                away
                                        ? "Find a place for it out of the water's way. A slightly"
                                                + " higher grade would leave less over."
                                        : "Find fit earth nearby; topsoil is no fill. A slightly"
                                                + " lower grade would need less.")));
    }

    List<Finding> topsoil(TopsoilBalance topsoil) {
        if (topsoil.left() > -LITTLE) {
            return List.of();
        }
        return List.of(
                new Finding(
                        "topsoil-short",
                        Level.LOOK,
                        Topic.EARTH,
                        Where.ANYWHERE,
                        Saying.of(
                                "{} of topsoil is put back, but only {} is stripped: {} is short.",
                                Quantity.volume(topsoil.back()),
                                Quantity.volume(topsoil.strip()),
                                Quantity.volume(-topsoil.left())),
                        Quantity.volume(topsoil.strip()),
                        Quantity.volume(topsoil.back()),
                        "your plan",
                        Saying.plain("Put back a thinner cover, or bring topsoil in.")));
    }

    /**
     * Explains a quantity whose figure is not what the true solid or the plain average says.
     *
     * @param truck one truckload in the quantity's state, m³
     */
    List<Finding> compare(Comparison row, double truck) {
        List<Finding> found = new ArrayList<>();
        double curve = row.corrected() - row.plain();
        if (isLarge(curve, row.plain(), truck)) {
            found.add(
                    finding(
                            "curve-changes-volume",
                            Saying.of(
                                    "The "
                                            + name(row)
                                            + " is {} along the curves, but {} as if the lane"
                                            + " were straight: its weight lies "
                                            + (curve > 0 ? "outside" : "inside")
                                            + " the curves.",
                                    Quantity.volume(row.corrected()),
                                    Quantity.volume(row.plain())),
                            curve,
                            row.plain(),
                            "Go by the figure along the curves."));
        }
        if (solid != null && isLarge(row.more(), row.solid(), truck)) {
            found.add(
                    finding(
                            "sections-against-solid",
                            reason(row),
                            row.more(),
                            row.solid(),
                            "Nothing to do while the difference is small beside a truckload;"
                                    + " sections nearer together would bring the two closer."));
        }
        return found;
    }

    /** The name fit to stand in a pattern. */
    private static String name(Comparison row) {
        return row.name().replace("{}", "{ }");
    }

    private static boolean isLarge(double difference, double whole, double truck) {
        double off = Math.abs(difference);
        return off >= BUCKETS && (off > LARGE_SHARE * Math.abs(whole) || off > truck);
    }

    private Saying reason(Comparison row) {
        double more = row.more();
        double pointed = row.plain() - row.pyramids();
        String begin = "The " + name(row) + " is {} from sections and {} as a true solid: ";
        Quantity ours = Quantity.volume(row.corrected());
        Quantity truth = Quantity.volume(row.solid());
        if (!sections.isComplete()) {
            return Saying.of(
                    begin
                            + "a side does not meet the ground, and between sections it is not known"
                            + " where that begins.",
                    ours,
                    truth);
        }
        if (more > 0 && pointed > more / 2) {
            return Saying.of(
                    begin
                            + "it runs out to points, which average end areas count too high;"
                            + " pyramids there would give {}.",
                    ours,
                    truth,
                    Quantity.volume(row.pyramids()));
        }
        if (sections.design().alignment().kinks().length > 0) {
            return Saying.of(
                    begin
                            + "sections {} apart do not see the ground between them, nor the"
                            + " wedge at a sharp angle of the lane.",
                    ours,
                    truth,
                    Quantity.length(sections.design().interval()));
        }
        return Saying.of(
                begin + "sections {} apart do not see the ground between them.",
                ours,
                truth,
                Quantity.length(sections.design().interval()));
    }

    private static Finding finding(
            String code, Saying says, double off, double whole, String remedy) {
        return new Finding(
                code,
                Level.NOTE,
                Topic.EARTH,
                Where.ANYWHERE,
                says,
                Quantity.volume(Math.abs(off)),
                Quantity.volume(LARGE_SHARE * Math.abs(whole)),
                RULE,
                Saying.plain(remedy));
    }
}
