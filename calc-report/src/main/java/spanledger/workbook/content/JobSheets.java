package spanledger.workbook.content;

import static java.util.stream.Collectors.toSet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spanledger.analysis.FrameAnalysis;
import spanledger.behaviour.Behaviour;
import spanledger.behaviour.CombinationBehaviour;
import spanledger.envelope.DeflectionFinding;
import spanledger.envelope.Findings;
import spanledger.envelope.Instance;
import spanledger.envelope.StrengthFinding;
import spanledger.envelope.StrengthMeasure;
import spanledger.job.Job;
import spanledger.procedure.Procedure;
import spanledger.verdict.Assessment;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.ProcedureCells;

/** Puts the sheets of a job's workbook together, each fed by the cells of those before it. */
public final class JobSheets {

  private JobSheets() {}

  /** Writes all sheets. */
  public static void write(LedgerWorkbook workbook, Job job, Assessment assessment) {
    Representatives shown = Representatives.of(assessment.findings());
    Findings findings = shown.findings();
    MemberGroups groups = assessment.members().map(MemberGroups::of).orElseGet(MemberGroups::none);
    JointGroups jointGroups = assessment.joints().map(JointGroups::of).orElseGet(JointGroups::none);
    Behaviour behaviour = assessment.behaviour();
    Optional<CombinationBehaviour> nearest = behaviour.nearestToBuckling();
    List<Instance> more = new ArrayList<>();
    groups.cuts().forEach(cut -> more.add(cut.instance()));
    jointGroups.runs().forEach(run -> more.add(run.instance()));
    nearest.ifPresent(n -> more.add(n.instance()));
    KeptCases kept =
        KeptCases.of(
            assessment.actions(),
            findings,
            more,
            swinging(behaviour),
            new FrameAnalysis(job.frame()));
    BasisSheet.write(workbook, job);
    FigureSheet figures = FigureSheet.write(workbook, job);
    NodeSheet nodes = NodeSheet.write(workbook, job);
    SectionSheet sections = SectionSheet.write(workbook, job);
    SpringCells springs = new SpringCells();
    List<ProcedureCells> ofSprings = new ArrayList<>();
    JointTestSheet.write(workbook, job, springs, ofSprings);
    JointSpringSheet.write(workbook, job, springs, ofSprings);
    SegmentSheets segments = SegmentSheets.write(workbook, job, nodes, sections, springs);
    LoadSheet loads = LoadSheet.write(workbook, kept, nodes, segments, sections, figures);
    LoadSumSheet sums = LoadSumSheet.write(workbook, kept, loads);
    NodalLoadTable onNodes =
        NodalLoadTable.write(sums.sheet(), kept, assessment.actions(), figures);
    CombinationSheet combinations = CombinationSheet.write(workbook, kept, figures);
    SolvedGroup cases = SolvedGroup.cases(kept);
    SolvedLoads loadCells = new SolvedLoads.OfCases(sums, onNodes);
    MovementSheet movements = MovementSheet.write(workbook, cases, job.frame());
    EndForceSheets forces = EndForceSheets.write(workbook, cases, segments, loadCells, movements);
    BalanceSheet balance =
        BalanceSheet.write(workbook, cases, job.frame(), forces, loadCells, movements, nodes);
    Optional<StateSheets> states =
        StateSheets.write(
            workbook, behaviour, kept, segments, nodes, combinations, loads, sums, onNodes);
    List<Cut> strengthCuts = new ArrayList<>();
    for (StrengthFinding finding : findings.strength()) {
      addNew(strengthCuts, DeflectionSheet.cut(finding.governing()));
    }
    List<Cut> all = new ArrayList<>(strengthCuts);
    for (DeflectionFinding finding : findings.deflections()) {
      all.add(DeflectionSheet.cut(finding.governing()));
    }
    all.addAll(groups.cuts());
    all.addAll(jointGroups.cuts());
    List<ShownForces.Row> forceRows =
        ShownForces.of(assessment.forces(), kept).stream()
            .map(row -> row.bySum(instance -> states.flatMap(s -> s.of(instance)).isPresent()))
            .toList();
    forceRows.forEach(row -> all.add(row.shown()));
    CutSheets cuts = CutSheets.write(workbook, all, combinations, forces, loads, segments, states);
    ForceEnvelopeSheet.write(workbook, forceRows, cuts);
    StrengthSheet strength = StrengthSheet.write(workbook, strengthCuts, cuts, sections, figures);
    MemberCodeSheets byCode =
        MemberCodeSheets.write(
            workbook, assessment.members(), groups, job.frame(), sections, segments, cuts);
    SupportReactions reactions = new SupportReactions(combinations, balance, states);
    JointSheets joints =
        JointSheets.write(workbook, assessment.joints(), jointGroups, cuts, reactions, springs);
    DeflectionSheet deflection =
        DeflectionSheet.write(
            workbook,
            job,
            findings.deflections(),
            cuts,
            segments,
            sums,
            movements,
            states,
            nodes,
            figures);
    GuardrailSheet.write(workbook, findings.strength(), cuts);
    InfluenceSheet.write(workbook, assessment, segments, nodes);
    StabilitySheet stability = StabilitySheet.write(workbook, job, behaviour, figures);
    Optional<ModeSheet> mode =
        nearest
            .filter(n -> n.critical().isPresent() && !n.byState())
            .flatMap(
                n ->
                    ModeSheet.write(
                        workbook,
                        n,
                        sheet ->
                            new SummedAxialForces(sheet, n, combinations, forces, sums, segments)
                                ::of,
                        segments,
                        sums,
                        nodes,
                        SupportRule.LINEAR));
    VibrationSheet vibration =
        VibrationSheet.write(
            workbook,
            job,
            behaviour.vibration(),
            assessment.verdicts(),
            new VibrationProof.Ground(
                kept, nodes, segments, sections, loads, sums, onNodes, figures));
    WholeStructureSheet whole =
        WholeStructureSheet.write(workbook, job, assessment.whole(), nodes, sections, figures);
    SupportSheet.write(workbook, findings.reactions(), reactions);
    assessment.joints().ifPresent(found -> AnchorSheet.write(workbook, found));
    GeometrySheet geometry = GeometrySheet.write(workbook, job, figures);
    DeckSheet deck = DeckSheet.write(workbook, job, sections, figures);
    ProcedureCells pieces = PieceSheet.write(workbook, job, sections);
    SummarySheet.write(
        workbook,
        assessment,
        shown,
        strength,
        byCode,
        joints,
        deflection,
        stability,
        vibration,
        whole,
        mode,
        states,
        balance,
        deck,
        geometry.judged());
    Cut worst = worst(findings);
    WorkedSheet.write(
        workbook,
        strength.tables(worst),
        cuts.internalRow(worst),
        strength.row(worst),
        byCode.worked(),
        withStates(deflection.tables(), states));
    List<Procedure> used =
        new ArrayList<>(
            procedures(sections, segments, forces, strength, byCode, deflection, geometry, pieces));
    deck.tables().forEach(t -> used.add(t.procedure().procedure()));
    ofSprings.forEach(t -> used.add(t.procedure().procedure()));
    joints.tables().forEach(t -> used.add(t.procedure().procedure()));
    mode.map(ModeSheet::bars)
        .or(() -> states.map(StateSheets::bars))
        .ifPresent(bars -> bars.tables().forEach(t -> used.add(t.procedure().procedure())));
    vibration.proof().ifPresent(p -> p.tables().forEach(t -> used.add(t.procedure().procedure())));
    whole.tables().forEach(t -> used.add(t.procedure().procedure()));
    SourceSheet.write(workbook, job, used);
    workbook.moveBehind(SheetNames.SUMMARY, SheetNames.BASIS);
  }

  /** The cases whose loads are masses. */
  private static Set<String> swinging(Behaviour behaviour) {
    return behaviour
        .vibration()
        .map(v -> v.loads().stream().map(l -> l.part().loads().name()).collect(toSet()))
        .orElse(Set.of());
  }

  private static void addNew(List<Cut> cuts, Cut cut) {
    if (cuts.stream().noneMatch(c -> c.key().equals(cut.key()))) {
      cuts.add(cut);
    }
  }

  private static Cut worst(Findings findings) {
    return findings.strength().stream()
        .filter(f -> f.measure() == StrengthMeasure.COMBINED)
        .max(Comparator.comparingDouble(f -> f.governing().value()))
        .map(f -> DeflectionSheet.cut(f.governing()))
        .orElseThrow(() -> new IllegalStateException("No member was checked."));
  }

  private static List<ProcedureCells> withStates(
      List<ProcedureCells> tables, Optional<StateSheets> states) {
    List<ProcedureCells> all = new ArrayList<>(tables);
    states.ifPresent(s -> all.addAll(s.bars().worked()));
    return all;
  }

  private static List<Procedure> procedures(
      SectionSheet sections,
      SegmentSheets segments,
      EndForceSheets forces,
      StrengthSheet strength,
      MemberCodeSheets byCode,
      DeflectionSheet deflection,
      GeometrySheet geometry,
      ProcedureCells pieces) {
    List<ProcedureCells> tables = new ArrayList<>(sections.tables());
    tables.add(segments.geometryTable());
    tables.add(segments.stiffnessTable());
    tables.add(forces.endForceTable());
    tables.addAll(strength.tables());
    tables.addAll(byCode.tables());
    tables.addAll(deflection.tables());
    tables.addAll(geometry.tables());
    tables.add(pieces);
    List<Procedure> procedures =
        new ArrayList<>(tables.stream().map(t -> t.procedure().procedure()).toList());
    procedures.addAll(sections.outlineProcedures());
    return procedures;
  }
}
