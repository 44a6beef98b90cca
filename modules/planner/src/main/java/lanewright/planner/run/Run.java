package lanewright.planner.run;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import lanewright.drainage.DitchLook;
import lanewright.drainage.KeptWater;
import lanewright.drainage.WaterOptions;
import lanewright.drainage.WaterReport;
import lanewright.drainage.pond.GivenPipe;
import lanewright.drainage.storm.StormAsked;
import lanewright.drainage.storm.StormReport;
import lanewright.earthwork.EarthOptions;
import lanewright.earthwork.EarthworkReport;
import lanewright.ground.Ground;
import lanewright.ground.GroundOptions;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.line.IntersectionPoint;
import lanewright.lane.line.Profile;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.section.KeptSections;
import lanewright.lane.section.SectionSet;
import lanewright.lane.section.SectionWork;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.surface.BuiltSurface;
import lanewright.lane.surface.CompositeSurface;
import lanewright.lane.surface.TrueSolid;
import lanewright.lane.volume.LaneVolumes;
import lanewright.measure.Assumption;
import lanewright.measure.Finding;
import lanewright.measure.Progress;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.SideBySide;
import lanewright.planner.document.GradePart;
import lanewright.planner.document.Plan;
import lanewright.planner.document.PlanException;
import lanewright.planner.document.PlanFile;
import lanewright.planner.listing.DigListings;
import lanewright.planner.pipes.PipeJob;
import lanewright.planner.pipes.PipeJobs;
import lanewright.planner.proposal.GradeProposal;
import lanewright.planner.work.Cautions;
import lanewright.planner.work.Hazard;
import lanewright.planner.work.Hazards;
import lanewright.planner.work.HeapPlaces;
import lanewright.planner.work.Stakes;
import lanewright.planner.work.WorkFacts;
import lanewright.planner.work.WorkOrder;
import lanewright.stone.StoneReport;
import lanewright.survey.Frame;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;
import lanewright.survey.read.SurveyReader;
import lanewright.survey.read.SurveyRequest;
import org.jspecify.annotations.Nullable;

/**
 * From a plan to its outcome, stage after stage. Each stage is a pure function of what goes into
 * it, and its last result is kept as long as that is equal: run again after an edit, only what the
 * edit touched is computed again, and the outcome is the same to the last bit as from a fresh
 * start. Used by one thread at a time, except that {@link #settled} may run beside {@link #draft}:
 * the two share no kept stage.
 */
public final class Run {

    private final Path folder;
    private final Tally drafted = new Tally();
    private final Tally settled = new Tally();
    private final Kept<Frame> frame;
    private final Kept<Survey> survey;
    private final Kept<Ground> ground;
    private final Kept<Depths> depths = new Kept<>("depths", drafted);
    private final Kept<Alignment> alignment = new Kept<>("line", drafted);
    private final Kept<List<Finding>> trust = new Kept<>("trust in the ground", drafted);
    private final Kept<GradeProposal> laying = new Kept<>("first grade", drafted);
    private final Kept<LaneDesign> design = new Kept<>("design", drafted);
    private final Kept<SectionSet> sections = new Kept<>("sections", drafted);
    private final KeptSections cutting = new KeptSections();
    private final Kept<LaneVolumes> volumes = new Kept<>("volumes", drafted);
    private final Kept<BuiltSurface> built = new Kept<>("built surface", settled);
    private final Kept<TrueSolid> solid = new Kept<>("true solid", settled);
    private final Kept<CompositeSurface> composite = new Kept<>("land as it will be", settled);
    private final Kept<EarthworkReport> roughEarth = new Kept<>("rough earth", drafted);
    private final Kept<EarthworkReport> earth = new Kept<>("earth", settled);
    private final Kept<WaterReport> water = new Kept<>("water", settled);
    private final Kept<StormReport> storm = new Kept<>("storm", settled);
    private final KeptWater following = new KeptWater();

    /** Held while stages of settling run: laying a grade follows water too. */
    private final Object settlingOne = new Object();

    private final Kept<StoneReport> stone = new Kept<>("stone", drafted);

    /**
     * A way for plans whose survey files lie in a folder.
     *
     * @param folder folder of the plan
     */
    public Run(Path folder) {
        this.folder = folder;
        this.frame = new Kept<>("frame", drafted);
        this.survey = new Kept<>("survey", drafted);
        this.ground = new Kept<>("ground", drafted);
    }

    private Run(Run other) {
        this.folder = other.folder;
        this.frame = new Kept<>(other.frame, drafted);
        this.survey = new Kept<>(other.survey, drafted);
        this.ground = new Kept<>(other.ground, drafted);
    }

    /**
     * Another way that begins with the survey and the ground that this one has read last, and with
     * nothing else of it: for several plans on one ground, or to do everything else anew.
     */
    public Run beside() {
        return new Run(this);
    }

    /** What the last draft computed anew, whether or not it came to its end. */
    public Work drafting() {
        return drafted.work();
    }

    /** What the last settling computed anew, whether or not it came to its end. */
    public Work settling() {
        return settled.work();
    }

    /**
     * What comes of a plan.
     *
     * @param file the plan as it was read
     * @param progress told of the work, and asked whether to go on
     * @throws SurveyException if the survey cannot be read
     * @throws DesignRefused if the lane cannot be laid out as it is asked for
     * @throws PlanException if the plan names something that is in no table
     */
    public Outcome outcome(PlanFile file, Progress progress)
            throws SurveyException, DesignRefused, PlanException {
        return settled(draft(file, progress.part(0, 0.55)), progress.part(0.55, 1));
    }

    /**
     * What the sections of a lane tell, which is quickly known: all but the true solid, water, and
     * what rests on them.
     *
     * @param file the plan as it was read
     * @param progress told of the work, and asked whether to go on
     * @throws SurveyException if the survey cannot be read
     * @throws DesignRefused if the lane cannot be laid out as it is asked for
     * @throws PlanException if the plan names something that is in no table
     */
    public Draft draft(PlanFile file, Progress progress)
            throws SurveyException, DesignRefused, PlanException {
        return draft(file, false, progress);
    }

    /**
     * A draft for one moment of a drag: as {@link #draft}, but a plan without a grade keeps the one
     * that was laid last, so that the lane follows the hand. It is not to be settled; once the hand
     * lets go, {@link #draft} lays the grade that such a plan gets.
     *
     * @param file the plan at that moment
     * @param progress told of the work, and asked whether to go on
     * @throws SurveyException if the survey cannot be read
     * @throws DesignRefused if the lane cannot be laid out as it is asked for
     * @throws PlanException if the plan names something that is in no table
     */
    public Draft moving(PlanFile file, Progress progress)
            throws SurveyException, DesignRefused, PlanException {
        return draft(file, true, progress);
    }

    private Draft draft(PlanFile file, boolean moving, Progress progress)
            throws SurveyException, DesignRefused, PlanException {
        drafted.begin();
        SectionWork before = cutting.work();
        try {
            return drafted(file, moving, progress);
        } finally {
            drafted.sections(cutting.work().less(before));
        }
    }

    /** What a lane lies on, and its line. */
    private record Site(
            Survey measured, Ground land, Places places, Depths depth, Alignment line) {}

    private Site site(Plan plan, Progress progress) throws SurveyException, DesignRefused {
        Survey measured = survey(plan, progress.part(0, 0.55));
        Ground land = joined(measured, progress.part(0.55, 1));
        var places = new Places(measured.frame(), measured.originX(), measured.originY());
        Depths depth =
                depths.of(
                        List.of(plan.earth(), land), () -> Depths.of(plan.earth(), measured, land));
        List<IntersectionPoint> corners = Designs.corners(plan.line(), places);
        Alignment line = alignment.of(List.of(corners), () -> Alignment.of(corners));
        return new Site(measured, land, places, depth, line);
    }

    private Draft drafted(PlanFile file, boolean moving, Progress progress)
            throws SurveyException, DesignRefused, PlanException {
        Plan plan = file.plan();
        PlanNames.check(file);
        Site site = site(plan, progress.part(0, 0.8));
        Survey measured = site.measured;
        Ground land = site.land;
        Depths depth = site.depth;
        Alignment line = site.line;
        progress.check();
        GradeProposal laid = null;
        boolean laidBefore = false;
        if (plan.grade().points().isEmpty()) {
            GradeProposal last = moving ? laidLast(plan, site) : null;
            laidBefore = last != null;
            laid = last == null ? lay(plan, site, progress) : last;
        }
        GradePart grade = laid == null ? plan.grade() : GradeLaying.written(plan, laid);
        LaneDesign lane = design(plan, line, grade);
        SectionSet cut = cut(lane, land, depth, progress.part(0.8, 1));
        LaneVolumes amounts = volumes.of(List.of(cut), () -> LaneVolumes.of(cut));
        EarthOptions soils = soils(plan);
        EarthworkReport dirt =
                roughEarth.of(
                        List.of(cut, amounts, soils),
                        () -> EarthworkReport.of(cut, amounts, null, soils));
        StoneReport rock =
                stone.of(
                        List.of(plan.stone(), lane, amounts),
                        () -> Supplies.report(plan.stone(), lane, amounts));

        List<Finding> findings = new ArrayList<>();
        findings.addAll(measured.findings());
        findings.addAll(land.findings());
        findings.addAll(depth.findings());
        findings.addAll(depth.alongLane(line, cut.sections()));
        findings.addAll(trust.of(List.of(land, line), () -> GroundTrust.alongLane(land, line)));
        findings.addAll(GroundTrust.underTheGrass(measured, line.length()));
        if (laid != null) {
            findings.addAll(laid.collisions());
            findings.add(LaidFinding.of(lane, Saying.plain("")));
        } else {
            findings.addAll(OwnGrade.findings(grade, lane.profile()));
        }
        findings.addAll(cut.findings());
        findings.addAll(StoneDepth.of(plan, line.length(), amounts.undercut()));
        List<Assumption> assumptions = new ArrayList<>(file.assumed());
        assumptions.addAll(measured.assumptions());
        return new Draft(
                plan.with(grade),
                laid,
                laidBefore,
                measured,
                land,
                depth.topsoil(),
                depth.bearing(),
                lane,
                cut,
                amounts,
                dirt,
                rock,
                Answers.rough(
                        findings,
                        measured,
                        lane,
                        laid != null,
                        cut,
                        amounts,
                        dirt,
                        rock,
                        plan.afterMoney()),
                findings,
                assumptions);
    }

    /**
     * The whole outcome of a draft. May run on another thread than {@link #draft}, one at a time.
     *
     * @param draft what the sections tell
     * @param progress told of the work, and asked whether to go on
     * @throws SurveyException if a place of the plan cannot be brought to the survey's frame
     */
    public Outcome settled(Draft draft, Progress progress) throws SurveyException {
        synchronized (settlingOne) {
            return settledAlone(draft, progress);
        }
    }

    private Outcome settledAlone(Draft draft, Progress progress) throws SurveyException {
        settled.begin();
        Plan plan = draft.plan();
        Ground land = draft.ground();
        LaneDesign lane = draft.design();
        SectionSet cut = draft.sections();
        LaneVolumes amounts = draft.volumes();
        StoneReport rock = draft.stone();
        Survey measured = draft.survey();
        var places = new Places(measured.frame(), measured.originX(), measured.originY());
        var settling = new Settling(draft, places, progress);
        settling.settle();
        BuiltSurface surface = settling.surface();
        TrueSolid exact = settling.exact();
        CompositeSurface whole = settling.whole();
        WaterReport flows = settling.flows();
        StormAsked rain = plan.water().rain().asked(plan.earth().washes());
        StormReport pouring =
                rain == null
                        ? null
                        : storm.of(
                                List.of(
                                        rain,
                                        flows.crossings(),
                                        flows.channels(),
                                        flows.drainage().reliefs()),
                                () ->
                                        StormReport.of(
                                                rain,
                                                flows.crossings(),
                                                flows.channels(),
                                                flows.drainage().reliefs()));
        List<PipeJob> pipes =
                PipeJobs.of(
                        plan.water().pipeWork(),
                        cut,
                        land,
                        draft.topsoil(),
                        flows,
                        pouring,
                        line -> PipeOffer.enough(pouring, line),
                        PipeOffer.usual(plan.units()));
        EarthOptions soils = soils(plan);
        EarthworkReport dirt =
                earth.of(
                        List.of(cut, amounts, exact, soils),
                        () -> EarthworkReport.of(cut, amounts, exact, soils));
        GradeProposal laid = draft.laid() == null ? null : reasoned(plan, draft.laid(), cut, flows);
        List<Hazard> hazards = LandInputs.hazards(plan.hazards(), places);
        Hazards met = Hazards.of(cut, hazards, plan.stone().raisedBed());
        Stakes stakes =
                Stakes.of(
                        cut,
                        land,
                        LandInputs.levels(plan, places),
                        plan.work().stakesBeyond(),
                        rock);
        HeapPlaces heaps =
                HeapPlaces.of(
                        cut,
                        amounts.strip(),
                        dirt.topsoil(),
                        LandInputs.heaps(plan, measured, land, flows, hazards, places));
        WorkFacts facts =
                Facts.of(
                        plan,
                        cut,
                        amounts,
                        dirt,
                        flows,
                        pipes,
                        rock,
                        hazards,
                        met,
                        heaps,
                        DigListings.isAtLeast(draft.findings()));
        var order = WorkOrder.of(facts);
        progress.check();

        List<Finding> findings = new ArrayList<>();
        for (Finding finding : draft.findings()) {
            findings.add(
                    laid != null && finding.code().equals(LaidFinding.CODE)
                            ? LaidFinding.of(lane, clear(plan, cut, flows).get(0))
                            : finding);
        }
        findings.addAll(surface.findings());
        findings.addAll(whole.findings());
        findings.addAll(dirt.findings());
        findings.addAll(StormFindings.unlessSized(flows.findings(), pouring));
        findings.addAll(StormFindings.of(pouring, plan.water().rain().missing(), flows));
        findings.addAll(PipeFindings.of(pipes));
        findings.addAll(rock.findings());
        findings.addAll(stakes.findings());
        findings.addAll(heaps.findings());
        findings.addAll(met.findings());
        List<Finding> sorted = FindingOrder.sorted(findings, lane.alignment());

        List<Assumption> assumptions = new ArrayList<>(draft.assumptions());
        assumptions.addAll(dirt.assumptions());
        assumptions.addAll(heaps.assumptions());
        assumptions.addAll(flows.assumptions());
        if (pouring != null) {
            assumptions.addAll(pouring.assumptions());
        }
        assumptions.addAll(PipeJobs.assumptions(plan.water().pipeWork(), pipes));
        assumptions.addAll(rock.assumptions());
        progress.report(1, "done");
        return new Outcome(
                laid == null ? plan : plan.with(GradeLaying.written(plan, laid)),
                laid,
                measured,
                land,
                draft.topsoil(),
                draft.bearing(),
                lane,
                cut,
                amounts,
                surface,
                exact,
                whole.ground(),
                dirt,
                flows,
                pouring,
                pipes,
                rock,
                hazards,
                heaps,
                order,
                Cautions.of(facts, Facts.dammed(flows)),
                stakes,
                Answers.headline(lane, amounts, flows, rock, facts.stripAtLeast()),
                Answers.of(
                        sorted,
                        measured,
                        lane,
                        draft.laid() != null,
                        cut,
                        amounts,
                        dirt,
                        flows,
                        pouring,
                        pipes,
                        rock,
                        plan.afterMoney(),
                        order,
                        stakes),
                sorted,
                Premises.of(assumptions, plan, lane));
    }

    /**
     * The true solid on one side, and on the other the land as it will be with its water: neither
     * asks for the other. Lives for one call.
     */
    private final class Settling {
        private final Draft draft;
        private final List<GivenPipe> pipes;
        private final WaterOptions asked;
        private final Progress progress;
        private @Nullable BuiltSurface surface;
        private @Nullable TrueSolid exact;
        private @Nullable CompositeSurface whole;
        private @Nullable WaterReport flows;

        Settling(Draft draft, Places places, Progress progress) throws SurveyException {
            this.draft = draft;
            this.pipes = LandInputs.pipes(draft.plan().water(), places);
            this.asked = LandInputs.water(draft.plan(), draft.survey(), places);
            this.progress = progress;
        }

        void settle() {
            surface = built(draft.design(), draft.ground(), progress.part(0, 0.15));
            SideBySide.each(2, () -> this, Settling::part);
        }

        private void part(int which) {
            if (which == 0) {
                followWater();
            } else {
                measureSolid();
            }
        }

        private void measureSolid() {
            exact =
                    solid.of(
                            List.of(
                                    surface(),
                                    draft.topsoil(),
                                    Optional.ofNullable(draft.bearing())),
                            () ->
                                    TrueSolid.of(
                                            surface(),
                                            draft.topsoil(),
                                            draft.bearing(),
                                            new Quiet(progress)));
        }

        private void followWater() {
            CompositeSurface land = Run.this.whole(surface(), progress.part(0.15, 0.4));
            whole = land;
            flows =
                    Run.this.flows(
                            draft.ground(),
                            draft.sections(),
                            land,
                            pipes,
                            asked,
                            progress.part(0.4, 0.95));
        }

        BuiltSurface surface() {
            return Objects.requireNonNull(surface);
        }

        TrueSolid exact() {
            return Objects.requireNonNull(exact);
        }

        CompositeSurface whole() {
            return Objects.requireNonNull(whole);
        }

        WaterReport flows() {
            return Objects.requireNonNull(flows);
        }
    }

    /** Work beside other work: it asks whether to go on, and reports nothing of its own. */
    private record Quiet(Progress whole) implements Progress {
        @Override
        public void report(double done, String doing) {}

        @Override
        public boolean isCancelled() {
            return whole.isCancelled();
        }
    }

    private static EarthOptions soils(Plan plan) {
        return EarthOptions.USUAL.with(
                plan.earth().soil(), plan.earth().lift(), plan.stone().payload());
    }

    /**
     * The plan with a first grade laid, whether or not it has one already.
     *
     * @param file the plan as it was read
     * @return the proposal, and the grade as it goes into the plan
     * @throws SurveyException if the survey cannot be read
     * @throws DesignRefused if the lane cannot be laid out as it is asked for
     */
    public LaidGrade layGrade(PlanFile file, Progress progress)
            throws SurveyException, DesignRefused {
        drafted.begin();
        Plan plan = file.plan();
        Site site = site(plan, progress.part(0, 0.7));
        Ground land = site.land;
        Alignment line = site.line;
        GradeProposal laid = lay(plan, site, progress);
        LaneDesign lane = design(plan, line, GradeLaying.written(plan, laid));
        SectionSet cut = cut(lane, land, site.depth, progress.part(0.7, 0.75));
        WaterReport flows;
        synchronized (settlingOne) {
            BuiltSurface surface = built(lane, land, progress.part(0.75, 0.8));
            CompositeSurface whole = whole(surface, progress.part(0.8, 0.85));
            List<GivenPipe> pipes = LandInputs.pipes(plan.water(), site.places);
            WaterOptions asked = LandInputs.water(plan, site.measured, site.places);
            flows = flows(land, cut, whole, pipes, asked, progress.part(0.85, 1));
        }
        GradeProposal reasoned = reasoned(plan, laid, cut, flows);
        progress.report(1, "grade laid");
        return new LaidGrade(site.measured, reasoned, GradeLaying.written(plan, reasoned));
    }

    /**
     * A grade that was laid.
     *
     * @param survey what was measured
     * @param proposal the grade with its reasons
     * @param written the same as it goes into the plan
     */
    public record LaidGrade(Survey survey, GradeProposal proposal, GradePart written) {}

    /**
     * What a plan's survey files say, before a lane is drawn: elevation grids are read whole.
     *
     * @param file the plan, whose line does not matter
     * @param progress told of the work, and asked whether to go on
     * @throws SurveyException if the survey cannot be read
     */
    public Survey survey(PlanFile file, Progress progress) throws SurveyException {
        Plan plan = file.plan();
        Frame map =
                frame.of(List.of(plan.survey().frame()), () -> Places.frame(plan.survey().frame()));
        return survey(SurveyRequests.everywhere(plan, folder, map), progress);
    }

    /**
     * The land of a plan, before its lane is laid on it: what can be shown even if the lane cannot.
     *
     * @param file the plan
     * @param progress told of the work, and asked whether to go on
     * @throws SurveyException if the survey cannot be read or makes no ground
     */
    public Land land(PlanFile file, Progress progress) throws SurveyException {
        Survey measured = survey(file.plan(), progress.part(0, 0.6));
        return new Land(measured, joined(measured, progress.part(0.6, 1)));
    }

    /**
     * Measured land.
     *
     * @param survey what was measured
     * @param ground the ground it makes
     */
    public record Land(Survey survey, Ground ground) {}

    /**
     * The ground that those files make.
     *
     * @param file the plan, whose line does not matter
     * @param progress told of the work, and asked whether to go on
     * @throws SurveyException if the survey cannot be read or makes no ground
     */
    public Ground ground(PlanFile file, Progress progress) throws SurveyException {
        Survey measured = survey(file, progress.part(0, 0.5));
        return joined(measured, progress.part(0.5, 1));
    }

    private Ground joined(Survey measured, Progress progress) throws SurveyException {
        Ground land =
                ground.of(
                        List.of(measured),
                        () -> Ground.of(measured, GroundOptions.USUAL, progress));
        refuseEmpty(land);
        return land;
    }

    private Survey survey(Plan plan, Progress progress) throws SurveyException {
        Frame map =
                frame.of(List.of(plan.survey().frame()), () -> Places.frame(plan.survey().frame()));
        return survey(SurveyRequests.of(plan, folder, map), progress);
    }

    private Survey survey(SurveyRequest request, Progress progress) throws SurveyException {
        List<Object> inputs = new ArrayList<>();
        inputs.add(request);
        inputs.addAll(SurveyRequests.Stamp.of(request));
        return survey.of(inputs, () -> SurveyReader.read(request, progress));
    }

    private static void refuseEmpty(Ground land) throws SurveyException {
        if (land.triangleCount() == 0) {
            throw new SurveyException(
                    null,
                    0,
                    "the survey makes no ground: its points lie on one line or there are too few",
                    "Shoot points over the whole width that the lane and its slopes will take.");
        }
    }

    private LaneDesign design(Plan plan, Alignment line, GradePart grade) throws DesignRefused {
        return design.of(
                Arrays.asList(
                        line,
                        grade.points(),
                        plan.shapes(),
                        plan.along(),
                        plan.ditchBottoms(),
                        plan.work(),
                        plan.ends()),
                () -> {
                    Profile profile = Designs.profile(grade.points(), line.length());
                    return Designs.design(plan, line, profile);
                });
    }

    private SectionSet cut(LaneDesign lane, Ground land, Depths depth, Progress progress) {
        return sections.of(
                List.of(lane, land, depth),
                () -> cutting.of(lane, land, depth.topsoil(), depth.bearing(), progress));
    }

    private BuiltSurface built(LaneDesign lane, Ground land, Progress progress) {
        return built.of(List.of(lane, land), () -> BuiltSurface.of(lane, land, progress));
    }

    private CompositeSurface whole(BuiltSurface surface, Progress progress) {
        return composite.of(List.of(surface), () -> CompositeSurface.of(surface, progress));
    }

    private WaterReport flows(
            Ground land,
            SectionSet cut,
            CompositeSurface whole,
            List<GivenPipe> pipes,
            WaterOptions asked,
            Progress progress) {
        return water.of(
                List.of(land, cut.design(), cut, whole, pipes, asked),
                () ->
                        following.of(
                                land, cut.design(), cut.sections(), whole, pipes, asked, progress));
    }

    /** A laid grade that also says how its edges are kept clear of water. */
    private static GradeProposal reasoned(
            Plan plan, GradeProposal laid, SectionSet cut, WaterReport flows) {
        GradeProposal reasoned = laid;
        for (Saying says : clear(plan, cut, flows)) {
            reasoned = reasoned.because(says);
        }
        return reasoned;
    }

    /** How the lane's edges are kept clear of the ground's water, how much of them first. */
    private static List<Saying> clear(Plan plan, SectionSet cut, WaterReport flows) {
        double wanted = plan.grade().edgeAboveGround();
        return ClearanceWords.of(flows.clearance(cut.sections(), wanted), wanted);
    }

    /** The grade laid last, if it was laid for another lane and can be on this one; else null. */
    private @Nullable GradeProposal laidLast(Plan plan, Site site) throws SurveyException {
        GradeProposal last = laying.last();
        if (last == null || laying.isOf(ofGrade(plan, site))) {
            return null;
        }
        VerticalPoint before = last.points().get(last.points().size() - 2);
        // The last point moves with the end of the lane.
        return before.station() + before.curve() / 2 < site.line.length() ? last : null;
    }

    /** What a laid grade is made of. */
    private static List<Object> ofGrade(Plan plan, Site site) throws SurveyException {
        return List.of(
                plan.grade(),
                plan.ends(),
                site.line,
                site.land,
                site.depth,
                plan.shapes(),
                plan.along(),
                plan.work(),
                LandInputs.pipes(plan.water(), site.places));
    }

    /** Lays a grade, and says what it moves beside a straight one. */
    private GradeProposal lay(Plan plan, Site site, Progress progress)
            throws DesignRefused, SurveyException {
        List<GivenPipe> pipes = LandInputs.pipes(plan.water(), site.places);
        Alignment line = site.line;
        return laying.of(
                ofGrade(plan, site),
                () -> {
                    GradeProposal laid =
                            GradeLaying.lay(
                                    plan,
                                    line,
                                    site.land,
                                    site.depth.topsoil(),
                                    Designs.typical(plan, line.length()),
                                    grade -> {
                                        progress.check();
                                        return judged(plan, site, pipes, grade);
                                    });
                    if (laid.points().size() < 3) {
                        return laid;
                    }
                    GradePart.Point first =
                            new GradePart.Point(0, laid.points().get(0).height(), 0);
                    double end = laid.points().get(laid.points().size() - 1).height();
                    var last = new GradePart.Point(Double.POSITIVE_INFINITY, end, 0);
                    LaneDesign straight =
                            design(plan, line, plan.grade().laid(List.of(first, last), List.of()));
                    double plain = moved(straight, site, progress);
                    LaneDesign ours = design(plan, line, GradeLaying.written(plan, laid));
                    return laid.because(
                            Saying.of(
                                    "Digs and fills {} in all; one straight grade from end to end"
                                            + " would move {}.",
                                    Quantity.volume(moved(ours, site, progress)),
                                    Quantity.volume(plain)));
                });
    }

    private GradeLaying.Judged judged(
            Plan plan, Site site, List<GivenPipe> pipes, GradeProposal grade) throws DesignRefused {
        LaneDesign lane = design(plan, site.line, GradeLaying.written(plan, grade));
        SectionSet set = tried(lane, site);
        return new GradeLaying.Judged(
                moved(set),
                DitchLook.of(lane, set.sections(), pipes, plan.grade().edgeAboveGround()));
    }

    private double moved(LaneDesign lane, Site site, Progress progress) {
        progress.check();
        return moved(tried(lane, site));
    }

    private SectionSet tried(LaneDesign lane, Site site) {
        return cutting.of(
                lane, site.land, site.depth.topsoil(), site.depth.bearing(), Progress.NONE);
    }

    /** Cut and fill together, m³. */
    private static double moved(SectionSet sections) {
        LaneVolumes amounts = LaneVolumes.of(sections);
        return amounts.cut().corrected() + amounts.earthFill();
    }
}
