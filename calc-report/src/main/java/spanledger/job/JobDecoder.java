package spanledger.job;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import spanledger.action.CombinationSet;
import spanledger.action.LoadTrain;
import spanledger.action.Rail;
import spanledger.action.RuleSet;
import spanledger.action.Surface;
import spanledger.action.UserCase;
import spanledger.assembly.GeneratedFrame;
import spanledger.frame.Frame;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedNumber;
import spanledger.jointdesign.JointDesign;
import spanledger.jointdesign.MetalContacts;
import spanledger.jointdesign.TestedEnd;
import spanledger.memberdesign.MemberDesign;
import spanledger.overturning.Standing;
import spanledger.tables.ContactTables;

/** Decodes a whole job file and checks how its parts fit together. */
final class JobDecoder {

  /** On how many places of each segment a moving load is tried, if the job does not say. */
  static final int USUAL_PLACES = 8;

  private final Reading reading;
  private final Tables tables;
  private final SolvedOutlines solved;
  private final StiffnessBound bound;
  private final String sha256;

  JobDecoder(
      Reading reading, Tables tables, SolvedOutlines solved, StiffnessBound bound, String sha256) {
    this.reading = reading;
    this.tables = tables;
    this.solved = solved;
    this.bound = bound;
    this.sha256 = sha256;
  }

  /**
   * The job, holding only its sound parts; empty if even the title block or the rules have faults.
   */
  Optional<Job> decode(Located root) {
    return reading.fields("job", root).flatMap(this::job);
  }

  private Optional<Job> job(Fields fields) {
    fields.find("$schema");
    fields.require("formatVersion");
    Optional<JobTitle> title = fields.require("job").flatMap(new TitleDecoder(reading)::decode);
    Tables known = new LibraryDecoder(reading).decode(fields.findList("libraries"), tables);
    RulesDecoder rulesDecoder = new RulesDecoder(reading, known);
    Optional<RuleSet> rules = fields.require("rules").flatMap(rulesDecoder::rules);
    Optional<CombinationSet> combinations =
        fields.require("combinations").flatMap(rulesDecoder::combinations);
    List<FigureOverride> overrides =
        fields.find("overrides").map(o -> rulesDecoder.overrides(o, rules)).orElse(List.of());
    Structure structure = Structure.decode(fields, reading, known, solved, bound);
    FrameChecks checks = new FrameChecks(reading, structure);
    Frame frame = structure.frame(checks);
    Names<Surface> surfaces = new Names<>(reading, "surface");
    structure.assembly().addTo(surfaces, GeneratedFrame::surfaces, Surface::name);
    fields
        .find("surfaces")
        .ifPresent(given -> new SurfaceDecoder(reading, structure).decode(given, surfaces));
    Names<Rail> rails = new Names<>(reading, "rail");
    structure.assembly().addTo(rails, GeneratedFrame::rails, Rail::name);
    fields
        .find("rails")
        .ifPresent(given -> new RailDecoder(reading, structure).decode(given, rails));
    MemberLoadDecoder memberLoads = new MemberLoadDecoder(reading, structure.members(), frame);
    Names<UserCase> userCases =
        named(
            fields,
            "userCases",
            "load case",
            new UserCaseDecoder(reading, structure.nodes(), checks, memberLoads)::decode);
    Optional<Located> memberChecks = fields.find("memberChecks");
    Optional<MemberDesign> design =
        memberChecks.flatMap(new MemberChecksDecoder(reading, structure, tables.codes())::decode);
    Optional<Located> stands = fields.find("standing");
    Optional<StandingBlock> standing =
        stands
            .flatMap(s -> reading.fields("standing", s))
            .flatMap(new StandingDecoder(reading, structure, combinations)::decode);
    Standing.Ground ground =
        standing.map(block -> block.standing().ground()).orElse(Standing.Ground.LEVEL);
    Optional<Located> jointChecks = fields.find("jointChecks");
    Optional<JointDesign> joints =
        jointChecks.flatMap(
            new JointChecksDecoder(reading, structure, tables.jointCodes(), ground)::decode);
    AnalysisOptions analysis =
        fields
            .find("analysis")
            .map(new AnalysisDecoder(reading)::decode)
            .orElse(AnalysisOptions.USUAL);
    Optional<Fields> moving =
        fields.find("movingLoads").flatMap(m -> reading.fields("movingLoads", m));
    int places =
        moving.flatMap(m -> m.find("placesPerSegment")).flatMap(this::count).orElse(USUAL_PLACES);
    Names<LoadTrain> trains =
        moving
            .flatMap(m -> m.find("trains"))
            .map(new TrainDecoder(reading, structure.members(), frame)::decode)
            .orElseGet(() -> new Names<>(reading, "train"));
    new WholeChecks(reading, structure, surfaces, rails).run(fields.object(), frame, checks);
    if (title.isEmpty()
        || rules.isEmpty()
        || combinations.isEmpty()
        || !structure.isSound()
        || !surfaces.areAllSound()
        || !rails.areAllSound()
        || !userCases.areAllSound()
        || !trains.areAllSound()
        || joints.isPresent() != jointChecks.isPresent()
        || design.isPresent() != memberChecks.isPresent()
        || standing.isPresent() != stands.isPresent()) {
      return Optional.empty();
    }
    RuleSet effective = rules.get();
    for (FigureOverride override : overrides) {
      effective = effective.with(override.given());
    }
    for (LoadTrain train : trains.usable()) {
      effective = effective.with(train.force());
    }
    return Optional.of(
        new Job(
            title.get(),
            effective,
            overrides,
            combinations.get(),
            frame,
            surfaces.usable(),
            rails.usable(),
            userCases.usable(),
            trains.usable(),
            structure.panels().usable(),
            structure.assembly().built(),
            design,
            withTests(joints, structure.springs().tested(frame)),
            structure.springs(),
            standing,
            places,
            analysis,
            bound,
            sha256));
  }

  /** Tested member ends are judged by their tests, whether or not a code checks other joints. */
  private static Optional<JointDesign> withTests(
      Optional<JointDesign> joints, List<TestedEnd> tested) {
    if (tested.isEmpty()) {
      return joints;
    }
    JointDesign others =
        joints.orElseGet(
            () ->
                new JointDesign(
                    Optional.empty(),
                    List.of(),
                    List.of(),
                    new MetalContacts(ContactTables.standard(), Optional.empty()),
                    List.of()));
    return Optional.of(others.withTested(tested));
  }

  private <T> Names<T> named(
      Fields fields, String key, String kind, Function<Located, Names<T>> decoder) {
    return fields.find(key).map(decoder).orElseGet(() -> new Names<>(reading, kind));
  }

  /** A whole number; the schema reports anything else. */
  private Optional<Integer> count(Located value) {
    if (value instanceof LocatedNumber number && number.value() == (int) number.value()) {
      return Optional.of((int) number.value());
    }
    reading.gap(value.pointer());
    return Optional.empty();
  }
}
