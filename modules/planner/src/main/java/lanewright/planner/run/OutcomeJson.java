package lanewright.planner.run;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lanewright.drainage.Cure;
import lanewright.drainage.Pool;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.Relief;
import lanewright.drainage.along.Side;
import lanewright.drainage.culvert.Apron;
import lanewright.drainage.culvert.Headwater;
import lanewright.drainage.culvert.PipeChoice;
import lanewright.drainage.storm.SizedRelief;
import lanewright.drainage.storm.StormReport;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.section.Areas;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Part;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionLine;
import lanewright.lane.section.SideResult;
import lanewright.measure.Assumption;
import lanewright.measure.Finding;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Price;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.measure.Where;
import lanewright.measure.Words;
import lanewright.planner.document.PipeWorkPart;
import lanewright.planner.listing.AlsoListings;
import lanewright.planner.listing.DigListings;
import lanewright.planner.listing.DitchListings;
import lanewright.planner.listing.EarthListings;
import lanewright.planner.listing.FindingListings;
import lanewright.planner.listing.GradeListings;
import lanewright.planner.listing.LaneDrainageListings;
import lanewright.planner.listing.PipeListings;
import lanewright.planner.listing.SectionListings;
import lanewright.planner.listing.SettingOut;
import lanewright.planner.listing.ShapeListings;
import lanewright.planner.listing.StandingListings;
import lanewright.planner.listing.StoneListings;
import lanewright.planner.listing.StormListings;
import lanewright.planner.listing.VolumeListings;
import lanewright.planner.listing.WaterListings;
import lanewright.planner.listing.WorkListings;
import lanewright.planner.pipes.CostLine;
import lanewright.planner.pipes.Laid;
import lanewright.planner.pipes.PipeCover;
import lanewright.planner.pipes.PipeJob;
import lanewright.planner.proposal.GradeProposal;
import lanewright.planner.work.HeapPlace;
import lanewright.stone.StoneTables;
import lanewright.survey.Reading;
import lanewright.survey.Survey;
import org.jspecify.annotations.Nullable;

/**
 * An outcome as JSON, by the schema {@code outcome.schema.json}. The same outcome gives the same
 * bytes, whatever the machine's language, zone or number of processors.
 *
 * <p>Every figure stands in SI beside the words in which the sheets show it, so that any number on
 * a sheet can be found here.
 */
public final class OutcomeJson {

    private static final int VERSION = 1;

    /** Doubles with the fewest digits that mean them, the same on every Java. */
    private static final JsonFactory FACTORY =
            JsonFactory.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build();

    /** Packed from {@code docs}, where it is published. */
    private static final String SCHEMA = "/lanewright/planner/outcome.schema.json";

    private final Outcome outcome;
    private final UnitSystem units;
    private final List<DrawnSheet> sheets;
    private final JsonGenerator json;

    private OutcomeJson(Outcome outcome, List<DrawnSheet> sheets, JsonGenerator json) {
        this.outcome = outcome;
        this.sheets = sheets;
        this.units = outcome.plan().units();
        this.json = json;
    }

    /**
     * The outcome, UTF-8 with line feeds.
     *
     * @param sheets what its sheets say about how they are drawn; empty if none were drawn
     */
    public static byte[] of(Outcome outcome, List<DrawnSheet> sheets) {
        var bytes = new ByteArrayOutputStream(1 << 16);
        var indenter = new DefaultIndenter(" ", "\n");
        var printer = new DefaultPrettyPrinter().withObjectIndenter(indenter);
        try (JsonGenerator json = FACTORY.createGenerator(bytes)) {
            json.setPrettyPrinter(printer);
            new OutcomeJson(outcome, sheets, json).write();
        } catch (IOException e) {
            throw new UncheckedIOException("writing into memory", e);
        }
        bytes.write('\n');
        return bytes.toByteArray();
    }

    /** The schema that the outcome keeps to. */
    public static String schema() {
        try (InputStream in = OutcomeJson.class.getResourceAsStream(SCHEMA)) {
            if (in == null) {
                throw new IllegalStateException("outcome.schema.json is not packed");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("reading outcome.schema.json", e);
        }
    }

    /** Every table of the outcome, in the order of the sheets. */
    public static List<Listing> listings(Outcome outcome) {
        List<Listing> all = new ArrayList<>();
        all.add(ShapeListings.stretches(outcome.design()));
        all.add(GradeListings.points(outcome.design().profile()));
        GradeProposal laid = outcome.laid();
        if (laid != null) {
            all.add(GradeListings.reasons(laid));
        }
        all.add(GradeListings.bends(outcome.design().alignment()));
        all.add(SectionListings.areas(outcome.sections().sections()));
        all.add(SectionListings.catchPoints(outcome.sections().sections()));
        all.add(VolumeListings.running(outcome.volumes()));
        all.add(EarthListings.volumes(outcome.earth()));
        all.add(
                EarthListings.balance(
                        outcome.earth(),
                        DigListings.isAtLeast(outcome.findings()),
                        outcome.pipes()));
        all.add(DigListings.stretches(outcome.sections().sections(), outcome.volumes()));
        all.add(EarthListings.heapPlaces(outcome.heaps()));
        all.add(EarthListings.heaps(outcome.earth()));
        all.add(WaterListings.places(outcome.water()));
        all.add(WaterListings.pipes(outcome.water()));
        PipeWorkPart work = outcome.plan().water().pipeWork();
        all.add(
                PipeListings.fords(
                        outcome.storm(),
                        StoneTables.density("riprap", work.riprapKind()).value(),
                        work.riprapPrice()));
        all.add(PipeListings.schedule(outcome.pipes()));
        all.add(PipeListings.work(outcome.pipes()));
        all.add(PipeListings.lengths(outcome.pipes()));
        all.add(PipeListings.covers(outcome.pipes()));
        all.add(PipeListings.others(outcome.pipes()));
        all.add(PipeListings.earth(outcome.pipes(), outcome.earth().soil()));
        all.add(StormListings.flows(outcome.storm()));
        all.add(StormListings.sizes(outcome.storm()));
        all.add(StormListings.blocked(outcome.storm()));
        all.add(StormListings.aprons(outcome.storm()));
        all.add(StormListings.reliefs(outcome.storm()));
        all.add(DitchListings.gathering(outcome.storm()));
        all.add(DitchListings.reaches(outcome.storm()));
        all.add(DitchListings.relieved(outcome.storm()));
        all.add(LaneDrainageListings.downAndAcross(outcome.water()));
        all.add(LaneDrainageListings.reliefs(outcome.water()));
        all.add(LaneDrainageListings.ends(outcome.water()));
        all.add(LaneDrainageListings.falls(outcome.water()));
        all.add(WaterListings.pools(outcome.water()));
        all.add(WaterListings.gone(outcome.water()));
        all.add(StandingListings.nests(outcome.water()));
        all.add(StandingListings.rain(outcome.water()));
        all.add(StandingListings.wet(outcome.water()));
        all.add(StandingListings.border(outcome.water(), outcome.storm()));
        all.add(StandingListings.waysOut(outcome.water(), outcome.storm()));
        all.add(WaterListings.inflows(outcome.water()));
        all.add(WaterListings.ditches(outcome.water()));
        all.add(WaterListings.sags(outcome.water()));
        all.add(WaterListings.descents(outcome.water()));
        all.add(StoneListings.order(outcome.stone()));
        all.add(StoneListings.layers(outcome.stone()));
        all.add(
                AlsoListings.of(
                        outcome.findings(),
                        outcome.order(),
                        outcome.earth(),
                        outcome.sections().sections(),
                        outcome.water(),
                        outcome.pipes(),
                        outcome.plan().afterMoney(),
                        outcome.storm()));
        all.add(StoneListings.loads(outcome.stone(), outcome.findings()));
        all.add(StoneListings.inHand(outcome.stone()));
        all.add(StoneListings.fewer(outcome.stone()));
        all.add(WorkListings.order(outcome.order()));
        all.add(WorkListings.cautions(outcome.cautions()));
        all.add(
                SettingOut.first(
                        outcome.design().alignment(),
                        outcome.survey(),
                        outcome.plan().units(),
                        outcome.stakes(),
                        outcome.water()));
        all.add(
                SettingOut.between(
                        outcome.design().alignment(),
                        outcome.survey(),
                        outcome.plan().units(),
                        outcome.stakes(),
                        outcome.water()));
        all.add(
                SettingOut.pipes(
                        outcome.design().alignment(),
                        outcome.survey(),
                        outcome.plan().units(),
                        outcome.stakes(),
                        outcome.water(),
                        outcome.ground(),
                        outcome.pipes()));
        all.add(WorkListings.stakes(outcome.stakes()));
        all.add(WorkListings.laneStakes(outcome.stakes()));
        all.add(WorkListings.loadMarks(outcome.stakes()));
        all.add(FindingListings.levels(outcome.findings()));
        return all;
    }

    private void write() throws IOException {
        json.writeStartObject();
        json.writeNumberField("version", VERSION);
        json.writeStringField("name", outcome.plan().name());
        json.writeStringField("date", outcome.plan().date());
        json.writeStringField("units", word(units));
        json.writeStringField("currency", outcome.plan().currency());
        frame();
        survey();
        benchmark();
        json.writeFieldName("headline");
        saying(outcome.headline());
        answers();
        findings();
        wetPlaces();
        culverts();
        reliefs();
        assumptions();
        sections();
        GradeProposal laid = outcome.laid();
        if (laid != null) {
            laid(laid);
        }
        heaps();
        json.writeArrayFieldStart("tables");
        for (Listing listing : listings(outcome)) {
            table(listing);
        }
        json.writeEndArray();
        sheets();
        json.writeEndObject();
    }

    private void sheets() throws IOException {
        json.writeArrayFieldStart("sheets");
        for (DrawnSheet sheet : sheets) {
            json.writeStartObject();
            json.writeNumberField("number", sheet.number());
            json.writeStringField("name", sheet.name());
            number("width", sheet.width());
            number("height", sheet.height());
            json.writeArrayFieldStart("drawn");
            for (DrawnSheet.Said said : sheet.drawn()) {
                json.writeStartObject();
                json.writeStringField("what", said.what());
                json.writeStringField("words", said.words());
                json.writeArrayFieldStart("values");
                for (double value : said.values()) {
                    number(value);
                }
                json.writeEndArray();
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void frame() throws IOException {
        json.writeObjectFieldStart("frame");
        json.writeStringField("name", outcome.survey().frame().name());
        number("zeroEast", outcome.survey().originX());
        number("zeroNorth", outcome.survey().originY());
        json.writeEndObject();
    }

    private void survey() throws IOException {
        Survey survey = outcome.survey();
        json.writeObjectFieldStart("survey");
        json.writeNumberField("points", survey.size());
        json.writeNumberField("lines", survey.lines().size());
        json.writeNumberField("probes", survey.probes().size());
        number("heightError", survey.heightError());
        json.writeArrayFieldStart("readings");
        for (Reading reading : survey.readings()) {
            json.writeStartObject();
            json.writeStringField("file", reading.file());
            json.writeNumberField("points", reading.points());
            json.writeNumberField("lines", reading.lines());
            json.writeNumberField("probes", reading.probes());
            json.writeArrayFieldStart("understood");
            for (Reading.Understood each : reading.understood()) {
                json.writeStartObject();
                json.writeStringField("what", each.what());
                json.writeStringField("answer", each.answer());
                json.writeStringField("why", each.why());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    /** The point that all heights in the field are taken from. */
    private void benchmark() throws IOException {
        String name = outcome.stakes().benchmark();
        json.writeFieldName("benchmark");
        if (name == null) {
            json.writeNull();
            return;
        }
        Quantity height = Quantity.height(outcome.stakes().benchmarkHeight());
        json.writeStartObject();
        json.writeStringField("name", name);
        number("height", height.value());
        json.writeStringField("words", Words.fine(height, units));
        json.writeEndObject();
    }

    private void laid(GradeProposal laid) throws IOException {
        json.writeObjectFieldStart("laidGrade");
        json.writeArrayFieldStart("points");
        for (VerticalPoint point : laid.points()) {
            json.writeStartObject();
            number("station", point.station());
            number("height", point.height());
            number("curve", point.curve());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("reasons");
        for (Saying reason : laid.reasons()) {
            saying(reason);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("waysOut");
        for (GradeProposal.WayOut way : laid.ways()) {
            saying(way.says());
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void answers() throws IOException {
        json.writeArrayFieldStart("answers");
        for (Answer answer : outcome.answers()) {
            json.writeStartObject();
            json.writeStringField("topic", word(answer.topic()));
            json.writeStringField("question", answer.question());
            json.writeFieldName("says");
            saying(answer.says());
            json.writeStringField("mark", word(answer.mark()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void findings() throws IOException {
        json.writeArrayFieldStart("findings");
        for (Finding finding : outcome.findings()) {
            json.writeStartObject();
            json.writeStringField("code", finding.code());
            json.writeStringField("level", word(finding.level()));
            json.writeStringField("topic", word(finding.topic()));
            json.writeFieldName("where");
            where(finding.where());
            json.writeFieldName("says");
            saying(finding.says());
            json.writeFieldName("measured");
            quantity(finding.measured());
            json.writeFieldName("limit");
            limit(finding.limit());
            json.writeStringField("source", finding.source());
            json.writeFieldName("remedy");
            saying(finding.remedy());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void heaps() throws IOException {
        json.writeArrayFieldStart("heaps");
        for (HeapPlace heap : outcome.heaps().heaps()) {
            json.writeStartObject();
            json.writeNumberField("number", heap.number());
            json.writeStringField("name", heap.name());
            json.writeBooleanField("chosen", heap.chosen());
            number("from", heap.from());
            number("to", heap.to());
            number("volume", heap.form().volume());
            number("height", heap.form().height());
            number("width", heap.form().width());
            number("length", heap.form().length());
            number("station", heap.station());
            number("offset", heap.offset());
            number("x", heap.x());
            number("y", heap.y());
            number("alongX", heap.alongX());
            number("alongY", heap.alongY());
            json.writeFieldName("why");
            saying(heap.why());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void wetPlaces() throws IOException {
        json.writeArrayFieldStart("wetPlaces");
        for (WetPlace place : outcome.water().places()) {
            json.writeStartObject();
            json.writeStringField("name", place.name());
            json.writeStringField("kind", place.kind().words());
            Side side = place.side();
            json.writeFieldName("side");
            if (side == null) {
                json.writeNull();
            } else {
                json.writeString(side.word());
            }
            number("station", place.station());
            number("from", place.from());
            number("to", place.to());
            number("x", place.x());
            number("y", place.y());
            number("depth", place.depth());
            number("area", place.area());
            number("volume", place.volume());
            Pool pool = place.pool();
            number("level", pool == null ? null : pool.spot().level());
            json.writeFieldName("runsOver");
            if (pool == null) {
                json.writeNull();
            } else {
                saying(pool.spill().words());
            }
            json.writeBooleanField("runsOverLane", place.runsOverLane());
            number("drained", place.drained());
            json.writeBooleanField("drainedIsLeast", place.isLeast());
            json.writeFieldName("pipe");
            pipe(place.pipe());
            json.writeFieldName("fit");
            saying(place.fit());
            json.writeStringField("finding", place.finding().code());
            json.writeFieldName("says");
            saying(place.finding().says());
            json.writeFieldName("remedy");
            saying(place.finding().remedy());
            json.writeFieldName("brief");
            saying(place.brief());
            cure(place.cure());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void culverts() throws IOException {
        json.writeArrayFieldStart("culverts");
        for (PipeJob job : outcome.pipes()) {
            json.writeStartObject();
            json.writeStringField("name", job.name());
            json.writeBooleanField("planned", job.planned());
            json.writeStringField("need", word(job.need()));
            number("raise", job.first().raise());
            number("dig", job.first().dig());
            json.writeBooleanField("fits", job.fits());
            json.writeFieldName("line");
            pipe(job.line());
            laid(job.laid());
            json.writeBooleanField("materialStated", job.laid().stated());
            json.writeStringField("ends", word(job.ends()));
            json.writeObjectFieldStart("length");
            number("feet", job.length().feet());
            number("atInlet", job.length().atInlet());
            number("atOutlet", job.length().atOutlet());
            number("wanted", job.length().wanted());
            number("soldBy", job.length().soldBy());
            number("ordered", job.length().ordered());
            number("cutOff", job.length().waste());
            json.writeEndObject();
            json.writeObjectFieldStart("trench");
            number("width", job.trench().width());
            number("dug", job.trench().dug());
            number("deepest", job.trench().deepest());
            number("bedding", job.trench().bedding());
            number("barrel", job.trench().barrel());
            number("back", job.trench().back());
            number("displaced", job.trench().displaced());
            json.writeEndObject();
            cover("finished", job.finished());
            cover("building", job.building());
            Headwater water = job.headwater();
            number("headwater", water == null ? null : water.depth());
            number("allowed", job.allowed());
            number("tailwater", job.sized() == null ? null : job.sized().tail());
            apron(job.apron().orElse(null));
            json.writeArrayFieldStart("costs");
            for (CostLine line : job.lines()) {
                cost(line);
            }
            json.writeEndArray();
            number("money", job.money());
            json.writeArrayFieldStart("others");
            for (PipeJob.Other other : job.others()) {
                json.writeStartObject();
                json.writeBooleanField("larger", other.larger());
                laid(other.laid());
                Headwater stands = other.headwater();
                number("headwater", stands == null ? null : stands.depth());
                json.writeFieldName("says");
                saying(other.says());
                number("money", other.money());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void reliefs() throws IOException {
        json.writeArrayFieldStart("reliefs");
        for (Relief relief : outcome.water().drainage().reliefs()) {
            json.writeStartObject();
            json.writeStringField("sign", relief.sign());
            json.writeStringField("device", relief.device().words());
            json.writeStringField("way", word(relief.way()));
            number("station", relief.station());
            Side side = relief.side();
            if (side == null) {
                json.writeNullField("side");
            } else {
                json.writeStringField("side", side.word());
            }
            number("grade", relief.grade());
            number("spacing", relief.spacing());
            json.writeFieldName("why");
            saying(relief.why());
            json.writeStringField("source", relief.source());
            json.writeFieldName("pipe");
            pipe(relief.pipe());
            json.writeBooleanField("fits", relief.fits());
            json.writeFieldName("storm");
            stormAt(relief);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void stormAt(Relief relief) throws IOException {
        StormReport storm = outcome.storm();
        SizedRelief found = null;
        for (SizedRelief each : storm == null ? List.<SizedRelief>of() : storm.reliefs()) {
            found = each.relief().equals(relief) ? each : found;
        }
        if (found == null) {
            json.writeNull();
            return;
        }
        json.writeStartObject();
        number("drained", found.sized().crossing().drained());
        json.writeBooleanField("drainedIsLeast", found.sized().crossing().isLeast());
        number("flow", found.sized().peak().discharge());
        number("allowed", found.sized().allowed());
        number("brim", found.brim());
        number("basin", found.basin());
        json.writeFieldName("line");
        pipe(found.sized().crossing().line());
        number("tailwater", found.sized().tail());
        json.writeBooleanField("intoDitch", found.intoDitch());
        json.writeArrayFieldStart("pipes");
        for (PipeChoice choice : found.sized().choices()) {
            PipeChoice.Option option = choice.chosen().orElse(null);
            if (option != null) {
                json.writeStartObject();
                laid(new Laid(option.size().barrel(), option.barrels(), true));
                number("headwater", option.headwater().depth());
                json.writeEndObject();
            }
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void laid(Laid laid) throws IOException {
        json.writeStringField("material", laid.material().words());
        number("span", laid.span());
        number("rise", laid.rise());
        number("wall", laid.barrel().wall());
        json.writeNumberField("count", laid.count());
    }

    private void cover(String name, PipeCover cover) throws IOException {
        json.writeObjectFieldStart(name);
        json.writeStringField("load", cover.load().words());
        number("least", cover.least());
        number("needed", cover.needed());
        json.writeStringField("source", cover.source());
        json.writeEndObject();
    }

    private void apron(Apron.@Nullable Bed bed) throws IOException {
        json.writeFieldName("apron");
        if (bed == null) {
            json.writeNull();
            return;
        }
        json.writeStartObject();
        number("stone", bed.stone());
        number("length", bed.length());
        number("depth", bed.depth());
        number("startWidth", bed.startWidth());
        number("endWidth", bed.endWidth());
        json.writeStringField("source", bed.source());
        json.writeEndObject();
    }

    private void cost(CostLine line) throws IOException {
        json.writeStartObject();
        json.writeStringField("what", line.what().words());
        json.writeFieldName("amount");
        saying(line.amount());
        json.writeFieldName("paid");
        quantity(line.paid());
        Price price = line.price();
        if (price == null) {
            json.writeNullField("price");
        } else {
            json.writeStringField("price", price.inWords(""));
        }
        number("money", line.money());
        json.writeEndObject();
    }

    private void cure(Cure cure) throws IOException {
        json.writeObjectFieldStart("cure");
        json.writeStringField("kind", cure.kind().word());
        number("raise", cure.raise());
        number("dig", cure.dig());
        json.writeFieldName("pipe");
        pipe(cure.pipe());
        json.writeEndObject();
    }

    private void pipe(@Nullable CulvertLine pipe) throws IOException {
        if (pipe == null) {
            json.writeNull();
            return;
        }
        json.writeStartObject();
        number("station", pipe.station());
        number("outletStation", pipe.outletStation());
        json.writeStringField("from", pipe.from().word());
        json.writeFieldName("inlet");
        json.writeArray(new double[] {pipe.inlet().offset(), pipe.inlet().height()}, 0, 2);
        json.writeFieldName("outlet");
        json.writeArray(new double[] {pipe.outlet().offset(), pipe.outlet().height()}, 0, 2);
        number("length", pipe.length());
        number("fall", pipe.fall());
        number("grade", pipe.grade());
        number("room", pipe.room());
        json.writeEndObject();
    }

    private void where(Where where) throws IOException {
        json.writeStartObject();
        number("from", where.from());
        number("to", where.to());
        number("offset", where.offset());
        number("x", where.x());
        number("y", where.y());
        json.writeStringField("words", FindingListings.place(where).in(units));
        json.writeEndObject();
    }

    private void assumptions() throws IOException {
        json.writeArrayFieldStart("assumptions");
        for (Assumption assumption : outcome.assumptions()) {
            json.writeStartObject();
            json.writeStringField("name", assumption.name());
            json.writeFieldName("value");
            saying(assumption.value());
            json.writeStringField("mark", word(assumption.mark()));
            json.writeStringField("source", assumption.source());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void sections() throws IOException {
        json.writeArrayFieldStart("sections");
        for (Section section : outcome.sections().sections()) {
            json.writeStartObject();
            number("station", section.station());
            json.writeStringField("face", word(section.face()));
            number("profileHeight", section.profileHeight());
            json.writeBooleanField("complete", section.complete());
            line("ground", section.ground());
            line("stripped", section.stripped());
            line("subgrade", section.subgrade());
            line("finished", section.finished());
            side("left", section.left());
            side("right", section.right());
            areas(section.areas());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void line(String name, SectionLine line) throws IOException {
        json.writeArrayFieldStart(name);
        for (int i = 0; i < line.size(); i++) {
            json.writeArray(new double[] {line.offset(i), line.height(i)}, 0, 2);
        }
        json.writeEndArray();
    }

    private void side(String name, SideResult side) throws IOException {
        json.writeObjectFieldStart(name);
        json.writeStringField("kind", word(side.kind()));
        corner("edge", side.edge());
        corner("hinge", side.hinge());
        corner("ditch", side.ditchInner());
        corner("catch", side.catchPoint());
        number("limit", side.limit());
        json.writeEndObject();
    }

    private void corner(String name, @Nullable Corner corner) throws IOException {
        json.writeFieldName(name);
        if (corner == null) {
            json.writeNull();
        } else {
            json.writeArray(new double[] {corner.offset(), corner.height()}, 0, 2);
        }
    }

    private void areas(Areas areas) throws IOException {
        json.writeObjectFieldStart("areas");
        number("strip", areas.strip().area());
        number("cut", areas.cut().area());
        number("fill", areas.fill().area());
        number("edgeRefill", areas.edgeRefill().area());
        number("topsoilBack", areas.topsoilBack().area());
        number("undercut", areas.undercut().area());
        json.writeArrayFieldStart("layers");
        for (Part layer : areas.layers()) {
            json.writeNumber(layer.area());
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void table(Listing listing) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", listing.name());
        json.writeStringField("title", listing.title());
        json.writeArrayFieldStart("columns");
        for (Column column : listing.columns()) {
            json.writeStartObject();
            json.writeStringField("head", column.head());
            json.writeStringField("unit", column.unit(units));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeNumberField("totals", listing.totals());
        json.writeArrayFieldStart("rows");
        for (int row = 0; row < listing.rows().size(); row++) {
            json.writeStartArray();
            for (int column = 0; column < listing.columns().size(); column++) {
                json.writeStartObject();
                json.writeStringField("words", listing.shown(row, column, units));
                values(listing.rows().get(row).get(column));
                json.writeEndObject();
            }
            json.writeEndArray();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void saying(Saying saying) throws IOException {
        json.writeStartObject();
        json.writeStringField("words", saying.in(units));
        values(saying);
        json.writeEndObject();
    }

    private void values(Saying saying) throws IOException {
        json.writeArrayFieldStart("values");
        for (Quantity quantity : saying.quantities()) {
            number(quantity.value());
        }
        json.writeEndArray();
    }

    private void quantity(@Nullable Quantity quantity) throws IOException {
        quantity(quantity, quantity == null ? "" : quantity.in(units));
    }

    private void quantity(@Nullable Quantity quantity, String words) throws IOException {
        if (quantity == null) {
            json.writeNull();
            return;
        }
        json.writeStartObject();
        json.writeStringField("kind", word(quantity.kind()));
        number("value", quantity.value());
        json.writeStringField("words", words);
        json.writeEndObject();
    }

    /** A limit is told roundly, as the sheet of findings tells it. */
    private void limit(@Nullable Quantity limit) throws IOException {
        quantity(limit, limit == null ? "" : Words.round(limit, units));
    }

    private void number(String name, @Nullable Double value) throws IOException {
        json.writeFieldName(name);
        if (value == null) {
            json.writeNull();
        } else {
            number(value.doubleValue());
        }
    }

    private void number(double value) throws IOException {
        if (Double.isFinite(value)) {
            json.writeNumber(value);
        } else {
            json.writeNull();
        }
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
