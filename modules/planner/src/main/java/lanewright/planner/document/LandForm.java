package lanewright.planner.document;

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
                f.parts(
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
                        "The storm that pipes are to carry. Left out, no pipe is sized."),
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
                        "How pipes are dug in, and what that costs."));
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
                        "How far it goes on beyond the foot of each slope, or how long each end"
                                + " section is."),
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
                        "Your own price, such as 95.00 per h, or per yd3 dug."));
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
                        "Rain in steps, to see what stands in hollows after each."));
    }

    private static WaterPart.Step step(Form<WaterPart.Step> f) {
        return new WaterPart.Step(
                f.value("name", Codecs.TEXT, WaterPart.Step::name, "What you call it."),
                f.value("rain", Codecs.DEPTH, WaterPart.Step::rain, "How much falls in all."),
                f.value("hours", Codecs.COUNT, WaterPart.Step::hours, "How long it takes."));
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
                                + " out, looked up where it runs into a ditch or a pool."));
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
