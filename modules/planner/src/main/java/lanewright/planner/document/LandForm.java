package lanewright.planner.document;

import org.jspecify.annotations.Nullable;

/** The parts of the plan that tell of stone, soil, water, hazards and work. */
final class LandForm {

    private LandForm() {}

    static StonePart stone(Form<StonePart> f) {
        return new StonePart(
                f.value("loss", Codecs.SHARE, StonePart::loss, "Stone bought but never laid."),
                f.value("payload", Codecs.MASS, StonePart::payload, "What one truck brings."),
                f.value(
                        "raisedBed",
                        Codecs.LENGTH,
                        StonePart::raisedBed,
                        "How high the truck's bed reaches when it tips."),
                f.parts("materials", StonePart::materials, LandForm::material, "Stones by role."),
                f.flag(
                        "fabric",
                        StonePart::fabric,
                        "Whether a separation fabric is laid under the stone."));
    }

    private static StonePart.Material material(Form<StonePart.Material> f) {
        return new StonePart.Material(
                f.value(
                        "role",
                        Codecs.TEXT,
                        StonePart.Material::role,
                        "The role of the layers it is for."),
                f.valueOr(
                        "density",
                        Codecs.DENSITY,
                        Double.NaN,
                        StonePart.Material::density,
                        "Compacted in place; left out, the table's for its kind."),
                f.value(
                        "kind",
                        Codecs.TEXT,
                        StonePart.Material::kind,
                        "A name in the table of densities."),
                f.value(
                        "loose",
                        Codecs.TEXT,
                        StonePart.Material::loose,
                        "A name in the table of loose depths."),
                f.valueIfAny(
                        "gradation",
                        Codecs.TEXT,
                        StonePart.Material::gradation,
                        "Published name of its sizes."),
                f.valueIfAny(
                        "price",
                        Codecs.PRICE,
                        StonePart.Material::price,
                        "Your own price, such as 24.00 per ton; without one no money is said."),
                f.valueOr(
                        "inHand",
                        Codecs.MASS,
                        Double.NaN,
                        StonePart.Material::inHand,
                        "What you already have of it."));
    }

    static EarthPart earth(Form<EarthPart> f) {
        EarthWords.Depth topsoil =
                f.value(
                        "topsoil",
                        EarthWords.TOPSOIL,
                        e -> new EarthWords.Depth(e.topsoil(), e.topsoilDepth()),
                        "Depth of topsoil everywhere, or from probes.");
        EarthWords.Depth bearing =
                f.value(
                        "bearing",
                        EarthWords.BEARING,
                        e -> new EarthWords.Depth(e.bearing(), e.bearingDepth()),
                        "Depth to soil that bears, from probes, or not known.");
        return new EarthPart(
                topsoil.where(),
                topsoil.depth(),
                bearing.where(),
                bearing.depth(),
                f.value(
                        "soil",
                        Codecs.TEXT,
                        EarthPart::soil,
                        "A name in the table of volume change."),
                f.value(
                        "washes",
                        Codecs.choice(EarthPart.Washes.class),
                        EarthPart::washes,
                        "How easily the soil washes: little, easily or not known."),
                f.value(
                        "lift",
                        Codecs.DEPTH,
                        EarthPart::lift,
                        "Thickness of a compacted lift of fill."));
    }

    static WaterPart water(Form<WaterPart> f) {
        return new WaterPart(
                f.partsIfAny(
                        "pipes",
                        WaterPart::pipes,
                        LandForm::pipe,
                        "Pipes that are there, and pipes to be laid."),
                f.value(
                        "flowArea",
                        Codecs.LAND,
                        WaterPart::flowArea,
                        "Land that must drain through a way of water for it to be flagged."),
                f.value(
                        "spotDepth",
                        Codecs.DEPTH,
                        WaterPart::spotDepth,
                        "Low spots less deep are counted, not listed."),
                f.value(
                        "spotArea",
                        Codecs.AREA,
                        WaterPart::spotArea,
                        "Smaller low spots are counted, not listed."),
                f.part(
                        "rain",
                        WaterPart::rain,
                        LandForm::rain,
                        "The storm that pipes and ditches are to carry. Left out, none is sized."),
                f.valueOr(
                        "soaksIn",
                        Codecs.SOAKING,
                        Double.NaN,
                        WaterPart::soaksIn,
                        "How fast the ground takes standing water in, such as 0.1 in per hour."
                                + " Left out, it is not told how long water stands."),
                f.part(
                        "pipeWork",
                        WaterPart::pipeWork,
                        LandForm::pipeWork,
                        "How pipes are dug in, and what that costs."),
                f.parts(
                        "outlets",
                        WaterPart::outlets,
                        LandForm::outlet,
                        "Places to which you lead water from ditches and pipes."),
                f.parts(
                        "berms",
                        WaterPart::berms,
                        LandForm::berm,
                        "Windrows that a grader has left along the edges of the lane."));
    }

    private static WaterPart.Outlet outlet(Form<WaterPart.Outlet> f) {
        String name = f.value("name", Codecs.TEXT, WaterPart.Outlet::name, "What you call it.");
        double station =
                f.valueOr(
                        "station",
                        Codecs.STATION,
                        Double.NaN,
                        WaterPart.Outlet::station,
                        "Where along the lane; or give a place on the map.");
        Double east =
                f.valueIfAny(
                        "east",
                        Codecs.COORDINATE,
                        o -> across(o.spot(), false),
                        "Or east coordinate in the frame, with its unit.");
        Double north =
                f.valueIfAny(
                        "north",
                        Codecs.COORDINATE,
                        o -> up(o.spot(), false),
                        "And north coordinate.");
        Double longitude =
                f.valueIfAny(
                        "longitude",
                        Codecs.LONGITUDE,
                        o -> across(o.spot(), true),
                        "Or longitude, such as 10.25° E or -10.25°.");
        Double latitude =
                f.valueIfAny("latitude", Codecs.LATITUDE, o -> up(o.spot(), true), "And latitude.");
        if (((east == null) != (north == null))
                || ((longitude == null) != (latitude == null))
                || (east != null && longitude != null)) {
            throw new IllegalArgumentException(
                    "a place on the map is east and north, or longitude and latitude");
        }
        Spot spot =
                east != null && north != null
                        ? Spot.at(east, north)
                        : longitude != null && latitude != null
                                ? Spot.onEarth(longitude, latitude)
                                : null;
        return new WaterPart.Outlet(
                name,
                station,
                f.valueIfAny(
                        "side",
                        Codecs.choice(ShapePart.Hand.class),
                        WaterPart.Outlet::side,
                        "Side of the lane, looking up-station. Left out: either."),
                spot,
                f.valueOr(
                        "permitted",
                        Codecs.choice(WaterPart.Permitted.class),
                        WaterPart.Permitted.NOT_KNOWN,
                        WaterPart.Outlet::permitted,
                        "Whether the neighbor, the road's owner or the authority has agreed: yes,"
                                + " no or not known. Left out: not known."));
    }

    private static @Nullable Double across(@Nullable Spot spot, boolean degrees) {
        return spot == null || spot.degrees() != degrees ? null : Double.valueOf(spot.across());
    }

    private static @Nullable Double up(@Nullable Spot spot, boolean degrees) {
        return spot == null || spot.degrees() != degrees ? null : Double.valueOf(spot.up());
    }

    private static WaterPart.Berm berm(Form<WaterPart.Berm> f) {
        return new WaterPart.Berm(
                f.value("from", Codecs.STATION, WaterPart.Berm::from, "Where it begins."),
                f.value("to", Codecs.STATION_OR_END, WaterPart.Berm::to, "Where it ends."),
                f.value(
                        "side",
                        Codecs.choice(ShapePart.Hand.class),
                        WaterPart.Berm::side,
                        "Along which edge, looking up-station."),
                f.value("height", Codecs.DEPTH, WaterPart.Berm::height, "Above that edge."));
    }

    private static PipeWorkPart pipeWork(Form<PipeWorkPart> f) {
        return new PipeWorkPart(
                f.value(
                        "sideRoom",
                        Codecs.DEPTH,
                        PipeWorkPart::sideRoom,
                        "Room in the trench on each side of the pipe."),
                f.value(
                        "bedding",
                        Codecs.DEPTH,
                        PipeWorkPart::bedding,
                        "Packed thickness of the stone under the pipe."),
                f.value(
                        "soldBy",
                        Codecs.LENGTH,
                        PipeWorkPart::soldBy,
                        "Pipe is sold in multiples of this length."),
                f.value(
                        "beyond",
                        Codecs.LENGTH,
                        PipeWorkPart::beyond,
                        "How far a pipe whose ends stick out goes on beyond the foot of each"
                                + " slope."),
                f.value(
                        "axle",
                        Codecs.MASS,
                        PipeWorkPart::axle,
                        "Load of the heaviest axle that crosses it while the lane is built."),
                f.value(
                        "beddingKind",
                        Codecs.TEXT,
                        PipeWorkPart::beddingKind,
                        "A name in the table of densities."),
                f.value(
                        "riprapKind",
                        Codecs.TEXT,
                        PipeWorkPart::riprapKind,
                        "A name in the table of densities."),
                f.valueOr(
                        "trenchPerHour",
                        Codecs.VOLUME,
                        Double.NaN,
                        PipeWorkPart::trenchPerHour,
                        "What you dig in an hour, as it lies, put back included."),
                f.parts(
                        "prices",
                        PipeWorkPart::prices,
                        LandForm::pipePrice,
                        "What pipe costs by its length, by size and material."),
                f.valueIfAny(
                        "beddingPrice",
                        Codecs.PRICE_OF_ROCK,
                        PipeWorkPart::beddingPrice,
                        "Your own price, such as 24.00 per ton."),
                f.valueIfAny(
                        "riprapPrice",
                        Codecs.PRICE_OF_ROCK,
                        PipeWorkPart::riprapPrice,
                        "Your own price, such as 42.00 per ton."),
                f.valueIfAny(
                        "fabricPrice",
                        Codecs.PRICE_OF_FABRIC,
                        PipeWorkPart::fabricPrice,
                        "Your own price, such as 2.10 per yd2."),
                f.valueIfAny(
                        "trenchPrice",
                        Codecs.PRICE_OF_DIGGING,
                        PipeWorkPart::trenchPrice,
                        "Your own price, such as 95.00 per h, or per yd3 dug."),
                f.valueIfAny(
                        "headwallPrice",
                        Codecs.PRICE_OF_HEADWALL,
                        PipeWorkPart::headwallPrice,
                        "Your own price of one headwall, built, such as 450.00 per piece."));
    }

    private static PipeWorkPart.PipePrice pipePrice(Form<PipeWorkPart.PipePrice> f) {
        return new PipeWorkPart.PipePrice(
                f.value("size", Codecs.DEPTH, PipeWorkPart.PipePrice::size, "Clear width."),
                f.valueIfAny(
                        "rise",
                        Codecs.DEPTH,
                        PipeWorkPart.PipePrice::rise,
                        "Clear height, of a pipe-arch. Left out: round."),
                f.valueOr(
                        "material",
                        Codecs.choice(WaterPart.PipeMaterial.class),
                        WaterPart.PipeMaterial.NOT_KNOWN,
                        PipeWorkPart.PipePrice::material,
                        "What it is made of. Left out: whatever it is made of."),
                f.value(
                        "price",
                        Codecs.PRICE_OF_PIPE,
                        PipeWorkPart.PipePrice::price,
                        "Such as 21.50 per ft."));
    }

    private static WaterPart.Rain rain(Form<WaterPart.Rain> f) {
        return new WaterPart.Rain(
                f.valueOr(
                        "day",
                        Codecs.DEPTH,
                        Double.NaN,
                        WaterPart.Rain::day,
                        "Depth that falls in 24 hours, from a published table for your place."),
                f.valueOr(
                        "years",
                        Codecs.COUNT,
                        0.0,
                        WaterPart.Rain::years,
                        "How often it comes: one year in so many."),
                f.valueOr(
                        "type",
                        Codecs.choice(WaterPart.StormType.class),
                        WaterPart.StormType.TYPE_II,
                        WaterPart.Rain::type,
                        "How it falls over the day, by region. Left out: type ii, the sharpest."),
                f.valueOr(
                        "land",
                        Codecs.TEXT,
                        "",
                        WaterPart.Rain::land,
                        "What grows or lies on the land, such as pasture, fair."),
                f.valueOr(
                        "soil",
                        Codecs.choice(WaterPart.SoilGroup.class),
                        WaterPart.SoilGroup.NOT_KNOWN,
                        WaterPart.Rain::soil,
                        "Hydrologic soil group, from a soil map: a takes much water, d next to"
                                + " none."),
                f.parts(
                        "steps",
                        WaterPart.Rain::steps,
                        LandForm::step,
                        "Rain in steps, to see what stands in hollows after each."),
                f.words(
                        "periods",
                        WaterPart.Rain::periods,
                        "The columns of your table: one year in so many, such as 2, 10 and 25."),
                f.partsIfAny(
                        "table",
                        WaterPart.Rain::table,
                        LandForm::rainRow,
                        "Short rains from the published table for your place, in place of day: the"
                                + " rational method then takes the column of years."),
                f.partsIfAny(
                        "lands",
                        WaterPart.Rain::lands,
                        LandForm::landShare,
                        "Several kinds of land with their shares, in place of land and soil."));
    }

    private static WaterPart.Step step(Form<WaterPart.Step> f) {
        return new WaterPart.Step(
                f.value("name", Codecs.TEXT, WaterPart.Step::name, "What you call it."),
                f.value("rain", Codecs.DEPTH, WaterPart.Step::rain, "How much falls in all."),
                f.value("hours", Codecs.COUNT, WaterPart.Step::hours, "How long it takes."));
    }

    private static WaterPart.RainRow rainRow(Form<WaterPart.RainRow> f) {
        return new WaterPart.RainRow(
                f.value(
                        "lasts",
                        Codecs.TEXT,
                        WaterPart.RainRow::lasts,
                        "How long it rains, such as 10 min."),
                f.words(
                        "rain",
                        WaterPart.RainRow::rain,
                        "For each period the depth, such as 0.8 in, or how hard it rains, such as"
                                + " 4.8 in/h."));
    }

    private static WaterPart.LandShare landShare(Form<WaterPart.LandShare> f) {
        return new WaterPart.LandShare(
                f.value(
                        "land",
                        Codecs.TEXT,
                        WaterPart.LandShare::land,
                        "What grows or lies on it, such as woods, fair."),
                f.value(
                        "soil",
                        Codecs.choice(WaterPart.SoilGroup.class),
                        WaterPart.LandShare::soil,
                        "Its hydrologic soil group."),
                f.value(
                        "share",
                        Codecs.SHARE,
                        WaterPart.LandShare::share,
                        "Its part of the land, such as 30 %."));
    }

    private static WaterPart.Pipe pipe(Form<WaterPart.Pipe> f) {
        return new WaterPart.Pipe(
                f.value("name", Codecs.TEXT, WaterPart.Pipe::name, "What you call it."),
                f.part("inlet", WaterPart.Pipe::inlet, LandForm::mouth, "Where water goes in."),
                f.part("outlet", WaterPart.Pipe::outlet, LandForm::mouth, "Where it comes out."),
                f.value("diameter", Codecs.DEPTH, WaterPart.Pipe::diameter, "Clear width."),
                f.valueOr(
                        "state",
                        Codecs.choice(WaterPart.PipeState.class),
                        WaterPart.PipeState.THERE,
                        WaterPart.Pipe::state,
                        "Whether it is there or still to lay. Left out: there."),
                f.valueOr(
                        "material",
                        Codecs.choice(WaterPart.PipeMaterial.class),
                        WaterPart.PipeMaterial.NOT_KNOWN,
                        WaterPart.Pipe::material,
                        "What it is made of: metal, plastic, concrete or not known."),
                f.valueOr(
                        "tailwater",
                        Codecs.DEPTH,
                        Double.NaN,
                        WaterPart.Pipe::tailwater,
                        "How deep water stands over the bottom of its outlet in the storm. Left"
                                + " out, looked up where it runs into a ditch or a pool."),
                f.valueOr(
                        "ends",
                        Codecs.choice(WaterPart.PipeEnds.class),
                        WaterPart.PipeEnds.PROJECTING,
                        WaterPart.Pipe::ends,
                        "How its ends are made: projecting (they stick out of the slope), mitred"
                                + " (cut to the slope) or headwall. Left out: projecting."));
    }

    private static WaterPart.Mouth mouth(Form<WaterPart.Mouth> f) {
        return new WaterPart.Mouth(
                f.spot(WaterPart.Mouth::spot),
                f.value(
                        "invert",
                        Codecs.HEIGHT,
                        WaterPart.Mouth::invert,
                        "Height of the bottom of its bore."));
    }

    static HazardPart hazards(Form<HazardPart> f) {
        return new HazardPart(
                f.parts("wires", HazardPart::wires, LandForm::wire, "Overhead wires."),
                f.parts("buried", HazardPart::buried, LandForm::buried, "Buried lines."),
                f.parts("keepOff", HazardPart::keepOff, LandForm::keepOff, "Places to keep off."));
    }

    private static HazardPart.Wire wire(Form<HazardPart.Wire> f) {
        return new HazardPart.Wire(
                f.value("name", Codecs.TEXT, HazardPart.Wire::name, "What you call it."),
                f.parts("points", HazardPart.Wire::points, LandForm::bareSpot, "Where it runs."),
                f.valueOr(
                        "clearance",
                        Codecs.LENGTH,
                        Double.NaN,
                        HazardPart.Wire::clearance,
                        "Height of its lowest point above the ground."));
    }

    private static HazardPart.Buried buried(Form<HazardPart.Buried> f) {
        return new HazardPart.Buried(
                f.value("name", Codecs.TEXT, HazardPart.Buried::name, "What you call it."),
                f.parts("points", HazardPart.Buried::points, LandForm::bareSpot, "Where it runs."),
                f.valueOr(
                        "depth",
                        Codecs.DEPTH,
                        Double.NaN,
                        HazardPart.Buried::depth,
                        "Depth of its top below the ground."),
                f.value(
                        "owner",
                        Codecs.choice(HazardPart.Owner.class),
                        HazardPart.Buried::owner,
                        "Whose it is: public, private or not known."));
    }

    private static HazardPart.KeepOff keepOff(Form<HazardPart.KeepOff> f) {
        return new HazardPart.KeepOff(
                f.value("name", Codecs.TEXT, HazardPart.KeepOff::name, "What you call it."),
                f.value(
                        "kind",
                        Codecs.choice(HazardPart.KeepOffKind.class),
                        HazardPart.KeepOff::kind,
                        "What it is."),
                f.parts(
                        "outline",
                        HazardPart.KeepOff::outline,
                        LandForm::bareSpot,
                        "Its corners, or its middle alone."),
                f.valueOr(
                        "radius",
                        Codecs.LENGTH,
                        0.0,
                        HazardPart.KeepOff::radius,
                        "How far it reaches around its middle."),
                f.value("away", Codecs.LENGTH, HazardPart.KeepOff::away, "How far to stay away."));
    }

    private static Spot bareSpot(Form<Spot> f) {
        return f.spot(spot -> spot);
    }

    static WorkPart work(Form<WorkPart> f) {
        return new WorkPart(
                f.value(
                        "margin",
                        Codecs.LENGTH,
                        WorkPart::margin,
                        "How far the limits of work lie outside the catch points."),
                f.value(
                        "interval",
                        Codecs.LENGTH,
                        WorkPart::interval,
                        "Distance between cross-sections."),
                f.value(
                        "stakesBeyond",
                        Codecs.LENGTH,
                        WorkPart::stakesBeyond,
                        "How far outside the limits of work stakes stand."),
                f.valueOr(
                        "instrumentHeight",
                        Codecs.HEIGHT,
                        Double.NaN,
                        WorkPart::instrumentHeight,
                        "Height of the level's line of sight, for rod readings."),
                f.parts(
                        "heaps",
                        WorkPart::heaps,
                        LandForm::heap,
                        "Places of your own for heaps of topsoil, each taking what is nearest to"
                                + " it. Left out, places are proposed."));
    }

    private static WorkPart.HeapSpot heap(Form<WorkPart.HeapSpot> f) {
        return new WorkPart.HeapSpot(
                f.valueOr("name", Codecs.TEXT, "", WorkPart.HeapSpot::name, "What you call it."),
                f.spot(WorkPart.HeapSpot::spot));
    }
}
