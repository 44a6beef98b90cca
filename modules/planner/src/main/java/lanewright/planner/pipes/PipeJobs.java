package lanewright.planner.pipes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import lanewright.drainage.Cure;
import lanewright.drainage.DitchWater;
import lanewright.drainage.PipeCourse;
import lanewright.drainage.WaterReport;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.Relief;
import lanewright.drainage.along.Side;
import lanewright.drainage.culvert.Apron;
import lanewright.drainage.culvert.Barrel;
import lanewright.drainage.culvert.Headwater;
import lanewright.drainage.culvert.Inlet;
import lanewright.drainage.culvert.Load;
import lanewright.drainage.culvert.Material;
import lanewright.drainage.culvert.Size;
import lanewright.drainage.storm.Sized;
import lanewright.drainage.storm.SizedRelief;
import lanewright.drainage.storm.StormReport;
import lanewright.ground.Ground;
import lanewright.ground.VertexField;
import lanewright.lane.section.Corner;
import lanewright.lane.section.SectionSet;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Assumption;
import lanewright.measure.Kind;
import lanewright.measure.Price;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.planner.document.PipeWorkPart;
import lanewright.planner.document.WaterPart;
import lanewright.stone.StoneTables;
import org.jspecify.annotations.Nullable;

/** Works out every pipe that the plan has to lay, and every one that is offered. */
public final class PipeJobs {

    /** Depths closer than this are one, m. */
    private static final double SAME = 1e-6;

    private static final double GRAVITY = 9.80665;

    /** Land that is drawn beyond both ends of a pipe, m. Our choice. */
    private static final double BESIDE = 2.5;

    private final PipeWorkPart work;
    private final SectionSet sections;
    private final Ground ground;
    private final VertexField topsoil;
    private final @Nullable StormReport storm;
    private final double bedding;
    private final double riprap;
    private final Load load;

    private PipeJobs(
            PipeWorkPart work,
            SectionSet sections,
            Ground ground,
            VertexField topsoil,
            @Nullable StormReport storm) {
        this.work = work;
        this.sections = sections;
        this.ground = ground;
        this.topsoil = topsoil;
        this.storm = storm;
        this.bedding = StoneTables.density("bedding", work.beddingKind()).value();
        this.riprap = StoneTables.density("riprap", work.riprapKind()).value();
        this.load = Load.building(work.axle() * GRAVITY);
    }

    /**
     * Every pipe, those of the plan first.
     *
     * @param work how pipes are dug in, with what names in the tables stand for its stone
     * @param sections of the lane
     * @param ground as it is
     * @param topsoil its depth, m
     * @param water where the pipes lie
     * @param storm what they are to carry; null if the plan does not say
     * @param wide clear width that an offered pipe is given
     */
    public static List<PipeJob> of(
            PipeWorkPart work,
            SectionSet sections,
            Ground ground,
            VertexField topsoil,
            WaterReport water,
            @Nullable StormReport storm,
            Function<CulvertLine, OptionalDouble> wide,
            double usual) {
        return new PipeJobs(work, sections, ground, topsoil, storm).jobs(water, wide, usual);
    }

    /** What the quantities rest on; nothing if there is no pipe. */
    public static List<Assumption> assumptions(PipeWorkPart work, List<PipeJob> jobs) {
        if (jobs.isEmpty()) {
            return List.of();
        }
        List<Assumption> all = new ArrayList<>();
        all.add(StoneTables.density("bedding", work.beddingKind()).from());
        all.add(StoneTables.density("riprap", work.riprapKind()).from());
        all.add(
                new Assumption(
                        "trenches of pipes",
                        Saying.plain(
                                "upright walls; dug from the stripped ground, or from the subgrade"
                                        + " where that lies lower. Sloped walls, which a deep trench"
                                        + " needs, take more"),
                        Assumption.Mark.COMMON_PRACTICE,
                        "common practice, no source"));
        if (jobs.stream()
                .anyMatch(
                        job ->
                                job.need() == PipeJob.Need.RELIEF
                                        || job.works().walls().isPresent())) {
            all.add(EndWorks.assumption());
        }
        return List.copyOf(all);
    }

    private List<PipeJob> jobs(
            WaterReport water, Function<CulvertLine, OptionalDouble> wide, double usual) {
        List<PipeJob> jobs = new ArrayList<>();
        for (PipeCourse course : water.pipes()) {
            CulvertLine under = course.under();
            if (course.isToLay() && under != null && under.length() > 0) {
                Material stated = course.pipe().material();
                Barrel barrel =
                        Size.round(
                                stated == null ? Material.METAL : stated, course.pipe().diameter());
                jobs.add(
                        job(
                                course.pipe().name(),
                                asked(PipeJob.Need.PLANNED, course.pipe().ends(), under),
                                course.isFit(),
                                under,
                                new Laid(barrel, 1, stated != null)));
            }
        }
        for (WetPlace place : water.places()) {
            CulvertLine pipe = place.cure().pipe();
            if (pipe != null && pipe.length() > 0) {
                offer(place, pipe, wide, usual).ifPresent(jobs::add);
            }
        }
        for (Relief relief : water.drainage().reliefs()) {
            CulvertLine pipe = lies(relief);
            if (pipe != null && pipe.length() > 0) {
                jobs.add(
                        job(
                                relief.name(),
                                new Asked(
                                        PipeJob.Need.RELIEF,
                                        PipeJob.First.NOTHING,
                                        Inlet.End.PROJECTING,
                                        sized(pipe),
                                        allowed(sized(pipe)),
                                        Begins.of(relief, pipe, water.channels())),
                                true,
                                pipe,
                                offered(pipe, wide, usual)));
            }
        }
        return List.copyOf(jobs);
    }

    /** The pipe that a wet place wants, as the lane is drawn or once it is raised or dug. */
    private Optional<PipeJob> offer(
            WetPlace place,
            CulvertLine pipe,
            Function<CulvertLine, OptionalDouble> wide,
            double usual) {
        Sized there = sized(pipe);
        Cure cure = place.cure();
        if (there != null && there.raised().isPresent()) {
            Sized.Raised higher = there.raised().get();
            var laid = new Laid(higher.option().size().barrel(), higher.option().barrels(), true);
            return Optional.of(
                    job(
                            place.name(),
                            new Asked(
                                    PipeJob.Need.OFFERED,
                                    new PipeJob.First(cure.raise() + higher.by(), cure.dig()),
                                    Inlet.End.PROJECTING,
                                    there,
                                    there.allowed() + higher.by()),
                            true,
                            higher(pipe, higher.by()),
                            laid));
        }
        boolean none = there != null && there.least().isEmpty();
        if (none && !cure.hasPipeNow()) {
            return Optional.empty();
        }
        return Optional.of(
                job(
                        place.name(),
                        new Asked(
                                PipeJob.Need.OFFERED,
                                new PipeJob.First(cure.raise(), cure.dig()),
                                Inlet.End.PROJECTING,
                                there,
                                allowed(there)),
                        true,
                        pipe,
                        offered(pipe, wide, usual)));
    }

    private static double allowed(@Nullable Sized there) {
        return there == null ? Double.NaN : there.allowed();
    }

    /** A pipe under the lane raised more: it reaches out to the feet of the higher slopes. */
    private CulvertLine higher(CulvertLine pipe, double by) {
        TypicalSection shape = sections.design().at(pipe.station()).typical();
        double sign = pipe.from() == Side.LEFT ? -1 : 1;
        SideShape up = pipe.from() == Side.LEFT ? shape.left() : shape.right();
        SideShape down = pipe.from() == Side.LEFT ? shape.right() : shape.left();
        var inlet =
                new Corner(
                        pipe.inlet().offset() + sign * by * up.foreslope(), pipe.inlet().height());
        var outlet =
                new Corner(
                        pipe.outlet().offset() - sign * by * down.foreslope(),
                        pipe.outlet().height());
        double across = Math.abs(outlet.offset() - inlet.offset());
        double before = Math.abs(pipe.outlet().offset() - pipe.inlet().offset());
        return new CulvertLine(
                pipe.station(),
                pipe.outletStation(),
                pipe.from(),
                inlet,
                outlet,
                pipe.isSlanted()
                        ? pipe.length() * across / before
                        : Math.hypot(across, pipe.fall()),
                pipe.room() + by);
    }

    /** How a relief culvert lies for the pipe that carries the storm; null if none does. */
    private @Nullable CulvertLine lies(Relief relief) {
        if (!relief.fits()) {
            return null;
        }
        if (storm == null) {
            return relief.pipe();
        }
        return storm.at(relief)
                .map(SizedRelief::sized)
                .filter(each -> each.least().isPresent())
                .map(each -> each.crossing().line())
                .orElse(null);
    }

    /** As it would be taken into the plan; where that takes more than a round pipe, the least. */
    private Laid offered(
            CulvertLine pipe, Function<CulvertLine, OptionalDouble> wide, double usual) {
        OptionalDouble enough = wide.apply(pipe);
        Sized there = sized(pipe);
        if (enough.isEmpty() && there != null && there.least().isPresent()) {
            return new Laid(
                    there.least().get().size().barrel(), there.least().get().barrels(), true);
        }
        return new Laid(
                enough.isPresent()
                        ? Size.round(Material.METAL, enough.getAsDouble())
                        : UsualPipe.under(pipe, usual),
                1,
                false);
    }

    private @Nullable Sized sized(CulvertLine pipe) {
        if (storm == null) {
            return null;
        }
        return storm.at(pipe).filter(each -> !each.isDry()).orElse(null);
    }

    /**
     * What is asked of a pipe, besides where it lies.
     *
     * @param need what it is for
     * @param first what must be done before
     * @param ends how its ends are made
     * @param there the storm there; null without one
     * @param allowed greatest depth of water over its inlet's invert, m; NaN without a storm
     * @param begins how it begins in a ditch; null for anything but a relief culvert
     */
    private record Asked(
            PipeJob.Need need,
            PipeJob.First first,
            Inlet.End ends,
            @Nullable Sized there,
            double allowed,
            @Nullable Begins begins) {

        /** Of a pipe that begins in no ditch. */
        Asked(
                PipeJob.Need need,
                PipeJob.First first,
                Inlet.End ends,
                @Nullable Sized there,
                double allowed) {
            this(need, first, ends, there, allowed, null);
        }
    }

    /**
     * How a relief culvert begins.
     *
     * @param basin how much deeper than the bottom of the ditch, m
     * @param ditch the ditch there, if it is known
     */
    private record Begins(double basin, Optional<DitchWater.Piece> ditch) {

        /** Of a proposal whose pipe lies so. */
        static Begins of(Relief relief, CulvertLine pipe, List<DitchWater> ditches) {
            return new Begins(
                    relief.bottom() - pipe.inlet().height(),
                    ditches.stream()
                            .filter(each -> each.ditch().side() == pipe.from())
                            .flatMap(each -> each.pieces().stream())
                            .filter(
                                    each ->
                                            pipe.station() >= each.from()
                                                    && pipe.station() <= each.to())
                            .findFirst());
        }
    }

    private Asked asked(PipeJob.Need need, Inlet.End ends, CulvertLine line) {
        Sized there = sized(line);
        return new Asked(need, PipeJob.First.NOTHING, ends, there, allowed(there));
    }

    private PipeJob job(String name, Asked asked, boolean fits, CulvertLine line, Laid laid) {
        double raise = asked.first().raise();
        PipeLength length = length(line, laid, asked.ends(), raise);
        PipeWay way =
                PipeWay.of(
                        sections, ground, topsoil, line, length.atInlet(), length.after(), raise);
        Headwater water = headwater(asked, line, laid, length);
        Optional<Apron.Bed> apron = apron(asked, line, laid, length, water);
        EndWorks works = works(asked, laid);
        Trench trench = Trench.of(way, laid, work.sideRoom(), work.bedding());
        return new PipeJob(
                name,
                asked.need(),
                asked.first(),
                fits,
                line,
                laid,
                asked.ends(),
                length,
                way,
                PipeWay.of(
                                sections,
                                ground,
                                topsoil,
                                line,
                                Math.max(0, length.atInlet()) + BESIDE,
                                Math.max(0, length.after())
                                        + BESIDE
                                        + apron.map(Apron.Bed::length).orElse(0.0),
                                raise)
                        .walled(-Math.min(0, length.atInlet()), -Math.min(0, length.after())),
                trench,
                PipeCover.of(way, laid, true, Load.ROAD),
                PipeCover.of(way, laid, false, load),
                asked.there(),
                asked.allowed(),
                water,
                works,
                apron,
                lines(asked, laid, length, trench, works, apron),
                others(asked, line, laid, length, way));
    }

    /** From foot to foot, and what the ends make of that. */
    private PipeLength length(CulvertLine line, Laid laid, Inlet.End ends, double raise) {
        if (ends == Inlet.End.PROJECTING) {
            return new PipeLength(line.length(), work.beyond(), work.soldBy());
        }
        return ends == Inlet.End.HEADWALL
                ? PipeLength.walled(
                        line.length(),
                        PipeWay.of(sections, ground, topsoil, line, 0, 0, raise),
                        PipeJob.wall(ends, laid),
                        work.soldBy())
                : new PipeLength(line.length(), 0, 0, work.soldBy(), true);
    }

    private static @Nullable Headwater headwater(
            Asked asked, CulvertLine line, Laid laid, PipeLength length) {
        Sized there = asked.there();
        return there == null
                ? null
                : Headwater.of(
                        PipeJob.culvert(line, laid, asked.ends(), length),
                        there.tail(),
                        there.peak().discharge());
    }

    private static Optional<Apron.Bed> apron(
            Asked asked,
            CulvertLine line,
            Laid laid,
            PipeLength length,
            @Nullable Headwater water) {
        Sized there = asked.there();
        if (there == null || water == null) {
            return Optional.empty();
        }
        OptionalDouble tail =
                Double.isNaN(there.tailwater().depth())
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(there.tail());
        return Apron.of(
                        PipeJob.culvert(line, laid, asked.ends(), length),
                        tail,
                        there.peak().discharge(),
                        water)
                .bed();
    }

    private List<CostLine> lines(
            Asked asked,
            Laid laid,
            PipeLength length,
            Trench trench,
            EndWorks works,
            Optional<Apron.Bed> apron) {
        List<CostLine> lines = new ArrayList<>();
        lines.add(digging(trench));
        double bed = trench.bedding();
        lines.add(
                new CostLine(
                        CostLine.What.BEDDING,
                        Saying.of(
                                "{} packed, {} deep, {}",
                                Quantity.volume(bed),
                                Quantity.depth(work.bedding()),
                                Quantity.mass(bed * bedding)),
                        rock(work.beddingPrice(), bed, bed * bedding),
                        work.beddingPrice()));
        lines.add(
                new CostLine(
                        CostLine.What.BACKFILL,
                        trench.isDug()
                                ? Saying.of(
                                        "{} packed, of what was dug, in lifts beside the pipe up to"
                                                + " the top of the trench",
                                        Quantity.volume(trench.back()))
                                : Saying.plain(
                                        "none of its own: the lane's fill is packed in lifts on"
                                                + " both sides of it"),
                        null,
                        null));
        double whole = length.ordered() * laid.count();
        lines.add(
                new CostLine(
                        CostLine.What.BARREL,
                        laid.count() == 1
                                ? Saying.of("{}", Quantity.length(whole))
                                : Saying.of(
                                        "{} of {}: {}",
                                        Quantity.count(laid.count()),
                                        Quantity.length(length.ordered()),
                                        Quantity.length(whole)),
                        Quantity.length(whole),
                        price(laid)));
        lines.add(ends(asked, length, works));
        works.walls().ifPresent(each -> lines.add(footings(each)));
        if (asked.begins() != null) {
            basin(works, lines);
            lines.add(dam(works));
        }
        apron.ifPresent(each -> riprap(each, laid, lines));
        return lines;
    }

    private CostLine ends(Asked asked, PipeLength length, EndWorks works) {
        return switch (asked.ends()) {
            case HEADWALL -> {
                EndWorks.Walls walls = works.walls().orElseThrow();
                yield new CostLine(
                        CostLine.What.ENDS,
                        Saying.of(
                                "2 headwalls, one at each end, {} high over the bottom of the pipe"
                                        + " and {} long: {} of concrete, footings and all",
                                Quantity.length(walls.high()),
                                Quantity.length(walls.length()),
                                Quantity.volume(walls.concrete())),
                        Quantity.count(2),
                        work.headwallPrice());
            }
            case MITRED ->
                    new CostLine(
                            CostLine.What.ENDS,
                            Saying.plain(
                                    "both ends cut to the slope, which weakens them: bed the cut"
                                            + " edge in stone or concrete"),
                            null,
                            null);
            case PROJECTING, END_SECTION, OTHER ->
                    new CostLine(
                            CostLine.What.ENDS,
                            Saying.of(
                                    "none bought: both ends stick out, {} beyond the foot of each"
                                            + " slope",
                                    Quantity.length(length.atInlet())),
                            null,
                            null);
        };
    }

    private CostLine digging(Trench trench) {
        if (!trench.isDug()) {
            return new CostLine(
                    CostLine.What.TRENCH,
                    Saying.plain(
                            "none: it lies above the stripped ground, on packed fill of the lane"
                                    + " that goes in under its bed first"),
                    null,
                    null);
        }
        return dug(
                CostLine.What.TRENCH,
                trench.dug(),
                Saying.of(
                        "{} as it lies, {} wide, up to {} deep",
                        Quantity.volume(trench.dug()),
                        Quantity.length(trench.width()),
                        Quantity.length(trench.deepest())));
    }

    /** What is dug, with its hours where the plan says how much is dug in one. */
    private CostLine dug(CostLine.What what, double volume, Saying says) {
        Price price = work.trenchPrice();
        boolean paced = !Double.isNaN(work.trenchPerHour());
        double hours = volume / work.trenchPerHour();
        boolean byHour = price == null || price.kind() == Kind.HOURS;
        List<Quantity> quantities = new ArrayList<>(says.quantities());
        if (paced) {
            quantities.add(Quantity.hours(hours));
        }
        Quantity paid = byHour && paced ? Quantity.hours(hours) : Quantity.volume(volume);
        // A price by the hour says nothing as long as nobody says how much is dug in one.
        return new CostLine(
                what,
                new Saying(says.pattern() + (paced ? ": {}" : ""), quantities),
                paid,
                byHour && !paced ? null : price);
    }

    private CostLine footings(EndWorks.Walls walls) {
        return dug(
                CostLine.What.FOOTINGS,
                walls.dug(),
                Saying.of(
                        "2 of {}, {} as it lies",
                        Quantity.length(walls.length()),
                        Quantity.volume(walls.dug())));
    }

    private void basin(EndWorks works, List<CostLine> lines) {
        EndWorks.Basin basin = works.basin().orElse(null);
        if (basin == null) {
            lines.add(
                    new CostLine(
                            CostLine.What.BASIN,
                            Saying.plain("none: the pipe begins at the bottom of the ditch"),
                            null,
                            null));
            return;
        }
        lines.add(
                dug(
                        CostLine.What.BASIN,
                        basin.dug(),
                        Saying.of(
                                "1, {} deeper than the ditch, its bottom {} square: {} as it lies",
                                Quantity.depth(basin.deep()),
                                Quantity.length(basin.bottom()),
                                Quantity.volume(basin.dug()))));
        lines.add(stone(CostLine.What.BASIN_STONE, "{} as laid: {}", basin.stone()));
    }

    private CostLine dam(EndWorks works) {
        EndWorks.Dam dam = works.dam().orElse(null);
        return dam == null
                ? new CostLine(
                        CostLine.What.DAM,
                        Saying.plain("1, as high as the ditch is deep, which is not known there"),
                        Quantity.count(1),
                        null)
                : stone(
                        CostLine.What.DAM,
                        "1 of stone, as high as the ditch is deep: {} as laid, {}",
                        dam.stone());
    }

    private CostLine stone(CostLine.What what, String says, double volume) {
        return new CostLine(
                what,
                Saying.of(says, Quantity.volume(volume), Quantity.mass(volume * riprap)),
                rock(work.riprapPrice(), volume, volume * riprap),
                work.riprapPrice());
    }

    private static EndWorks works(Asked asked, Laid laid) {
        Begins begins = asked.begins();
        double wall = PipeJob.wall(asked.ends(), laid);
        return new EndWorks(
                begins == null || !(begins.basin() > SAME)
                        ? Optional.empty()
                        : Optional.of(EndWorks.Basin.of(begins.basin(), laid)),
                begins == null
                        ? Optional.empty()
                        : begins.ditch().map(at -> EndWorks.Dam.of(brim(at), at.shape())),
                wall > 0 ? Optional.of(EndWorks.Walls.of(wall, laid)) : Optional.empty());
    }

    /** Depth of a ditch up to where water runs out of it, m. */
    private static double brim(DitchWater.Piece at) {
        return Double.isNaN(at.bank()) ? at.depth() : Math.min(at.depth(), at.bank());
    }

    private void riprap(Apron.Bed bed, Laid laid, List<CostLine> lines) {
        double more = laid.across() - laid.outsideWidth();
        double area = bed.length() * ((bed.startWidth() + bed.endWidth()) / 2 + more);
        double volume = area * bed.depth();
        lines.add(
                new CostLine(
                        CostLine.What.RIPRAP,
                        Saying.of(
                                "{} as laid, {} on average, {} long, {} to {} wide, {} deep: {}",
                                Quantity.volume(volume),
                                Quantity.depth(bed.stone()),
                                Quantity.length(bed.length()),
                                Quantity.length(bed.startWidth() + more),
                                Quantity.length(bed.endWidth() + more),
                                Quantity.depth(bed.depth()),
                                Quantity.mass(volume * riprap)),
                        rock(work.riprapPrice(), volume, volume * riprap),
                        work.riprapPrice()));
        lines.add(
                new CostLine(
                        CostLine.What.FABRIC,
                        Saying.of("{}, laps and edges not included", Quantity.area(area)),
                        Quantity.area(area),
                        work.fabricPrice()));
    }

    private static Quantity rock(@Nullable Price price, double volume, double mass) {
        return price != null && price.kind() == Kind.VOLUME
                ? Quantity.volume(volume)
                : Quantity.mass(mass);
    }

    /** The price of the size nearest to the pipe's, within 3 %; of its material before any. */
    private @Nullable Price price(Laid laid) {
        PipeWorkPart.PipePrice best = null;
        double nearest = Double.POSITIVE_INFINITY;
        for (PipeWorkPart.PipePrice price : work.prices()) {
            Material made = price.material().known();
            boolean of = made == null || made == laid.material();
            Double rise = price.rise();
            boolean like = (rise == null) == laid.isRound();
            double off =
                    Math.abs(price.size() / laid.span() - 1)
                            + (rise == null ? 0 : Math.abs(rise / laid.rise() - 1))
                            + (price.material() == WaterPart.PipeMaterial.NOT_KNOWN ? 1e-6 : 0);
            if (of && like && off < 0.03 && off < nearest) {
                nearest = off;
                best = price;
            }
        }
        return best == null ? null : best.price();
    }

    private List<PipeJob.Other> others(
            Asked asked, CulvertLine line, Laid laid, PipeLength length, PipeWay way) {
        List<Size> family =
                Size.sold(laid.material()).stream()
                        .filter(size -> size.shape() == Inlet.Shape.ROUND == laid.isRound())
                        .toList();
        Size smaller = null;
        Size larger = null;
        for (Size size : family) {
            double apart = size.barrel().inside().span() / laid.span() - 1;
            if (apart < -0.03) {
                smaller = size;
            } else if (apart > 0.03 && larger == null) {
                larger = size;
            }
        }
        List<PipeJob.Other> others = new ArrayList<>();
        if (smaller != null) {
            others.add(other(asked, line, smaller, laid, length, way, false));
        }
        if (larger != null) {
            others.add(other(asked, line, larger, laid, length, way, true));
        }
        return others;
    }

    private PipeJob.Other other(
            Asked asked,
            CulvertLine line,
            Size size,
            Laid like,
            PipeLength length,
            PipeWay way,
            boolean larger) {
        var laid = new Laid(size.barrel(), like.count(), like.stated());
        Headwater water = headwater(asked, line, laid, length);
        Trench trench = Trench.of(way, laid, work.sideRoom(), work.bedding());
        PipeCover cover = PipeCover.of(way, laid, true, Load.ROAD);
        double money =
                lines(
                                asked,
                                laid,
                                length,
                                trench,
                                works(asked, laid),
                                apron(asked, line, laid, length, water))
                        .stream()
                        .mapToDouble(CostLine::money)
                        .sum();
        return new PipeJob.Other(larger, laid, water, says(asked.allowed(), water, cover), money);
    }

    private static Saying says(double allowed, @Nullable Headwater water, PipeCover cover) {
        if (cover.isThin()) {
            return Double.isNaN(cover.needed())
                    ? Saying.plain("no cover is published for it")
                    : Saying.of("{} too little cover", Quantity.depth(cover.lacking()));
        }
        if (water == null) {
            return Saying.plain("fits");
        }
        return water.depth() <= allowed
                ? Saying.plain("fits, carries the storm")
                : Saying.of(
                        "fits, but water would stand {} too high",
                        Quantity.depth(water.depth() - allowed));
    }
}
