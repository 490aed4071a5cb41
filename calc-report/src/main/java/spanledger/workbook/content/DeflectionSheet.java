package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spanledger.action.RuleSet;
import spanledger.analysis.ChordDeflection;
import spanledger.envelope.DeflectionFinding;
import spanledger.envelope.Governing;
import spanledger.envelope.StandingHeight;
import spanledger.envelope.Station;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Segment;
import spanledger.frame.Vector;
import spanledger.job.Job;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.DeflectionUtilisation;
import spanledger.resistance.PointDisplacement;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** Deflections of floor members, rails and posts. */
final class DeflectionSheet {

  private static final Source DIRECTION = Source.declared("direction of the check");
  private static final Source AT_END = Source.declared("0 at the member's ends");
  private static final Set<String> OF_MEMBER = Set.of("E", "G", "I_y", "I_z", "A_v_y", "A_v_z");
  private static final List<String> GLOBAL = List.of("D_X", "D_Y", "D_Z");

  /** A point whose movement is worked out. */
  private record Point(Cut cut, Vector direction, boolean atEnd) {}

  private final Job job;
  private final CutSheets cuts;
  private final SegmentSheets segments;
  private final LoadSumSheet sums;
  private final MovementSheet movements;
  private final Optional<StateSheets> states;
  private final NodeSheet nodes;
  private final FigureSheet figures;
  private final LedgerSheet sheet;
  private Optional<StateDeflections> bent = Optional.empty();
  private final Map<DeflectionFinding, NumberAt> deflections = new HashMap<>();
  private final Map<DeflectionFinding, NumberAt> limits = new HashMap<>();
  private final Map<DeflectionFinding, NumberAt> utilisations = new HashMap<>();
  private final List<ProcedureCells> tables = new ArrayList<>();

  private DeflectionSheet(
      LedgerWorkbook workbook,
      Job job,
      CutSheets cuts,
      SegmentSheets segments,
      LoadSumSheet sums,
      MovementSheet movements,
      Optional<StateSheets> states,
      NodeSheet nodes,
      FigureSheet figures) {
    this.job = job;
    this.cuts = cuts;
    this.segments = segments;
    this.sums = sums;
    this.movements = movements;
    this.states = states;
    this.nodes = nodes;
    this.figures = figures;
    this.sheet = workbook.sheet(SheetNames.DEFLECTION);
  }

  static DeflectionSheet write(
      LedgerWorkbook workbook,
      Job job,
      List<DeflectionFinding> findings,
      CutSheets cuts,
      SegmentSheets segments,
      LoadSumSheet sums,
      MovementSheet movements,
      Optional<StateSheets> states,
      NodeSheet nodes,
      FigureSheet figures) {
    DeflectionSheet deflection =
        new DeflectionSheet(workbook, job, cuts, segments, sums, movements, states, nodes, figures);
    deflection.sheet.title(
        "Deflection",
        "Floor members from the line between their ends; rails, posts and level movements of"
            + " floors from where they stood.");
    if (!findings.isEmpty()) {
      deflection.write(findings);
    }
    return deflection;
  }

  private void write(List<DeflectionFinding> findings) {
    List<Cut> own = findings.stream().map(f -> cut(f.governing())).toList();
    bent = states.map(all -> new StateDeflections(sheet, own, all, cuts, segments));
    ProcedureCells chords = writeChords(findings);
    Map<String, Integer> chordRows = new HashMap<>();
    for (int i = 0; i < own.size(); i++) {
      chordRows.put(own.get(i).key(), i);
    }
    bent.ifPresent(
        all ->
            all.writeBent(
                cut ->
                    symbol ->
                        chords.number(
                            Required.of(chordRows.get(cut.key()), "A deflection at rest"),
                            symbol)));
    bent.ifPresent(all -> tables.addAll(all.tables()));
    List<Point> points = new ArrayList<>();
    for (DeflectionFinding finding : findings) {
      points.add(new Point(cut(finding.governing()), finding.direction(), false));
    }
    for (DeflectionFinding finding : findings) {
      if (finding.kind() == DeflectionFinding.Kind.FROM_CHORD) {
        points.addAll(ends(finding));
      }
    }
    ProcedureCells moved = writePoints(points, findings, chords);
    writeFloors(findings, moved);
    writeRails(findings, moved);
    writeSway(findings, moved);
  }

  static Cut cut(Governing governing) {
    return new Cut(governing.instance(), governing.station());
  }

  private List<Point> ends(DeflectionFinding finding) {
    List<Segment> own = job.frame().segmentsOf(finding.member());
    Segment last = own.get(own.size() - 1);
    Governing governing = finding.governing();
    return List.of(
        new Point(
            new Cut(governing.instance(), new Station(own.get(0), 0)), finding.direction(), true),
        new Point(
            new Cut(governing.instance(), new Station(last, last.length())),
            finding.direction(),
            true));
  }

  private ProcedureCells writeChords(List<DeflectionFinding> findings) {
    CompiledProcedure procedure = ChordDeflection.PROCEDURE.compile();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (DeflectionFinding finding : findings) {
      Cut cut = cut(finding.governing());
      rows.add(
          new ProcedureTable.Row(
              List.of(
                  Integer.toString(cuts.row(cut) + 1),
                  cut.station().segment().name(),
                  cut.instance().words()),
              Inputs.of(procedure, symbol -> chordInput(cut, symbol))));
    }
    return table(procedure, List.of("cut", "segment", "combination"), rows);
  }

  private InputCell chordInput(Cut cut, String symbol) {
    Segment segment = cut.station().segment();
    if (symbol.equals("x")) {
      return InputCell.shown(cuts.place(cut));
    } else if (symbol.equals("L")) {
      return InputCell.shown(segments.geometry(segment, symbol));
    } else if (isOfState(cut) && !OF_MEMBER.contains(symbol)) {
      return bent.orElseThrow().atRest(cut, symbol);
    } else if (symbol.startsWith("F_") || symbol.startsWith("M_")) {
      return cuts.combined(cut, symbol, sheet.name());
    } else if (symbol.startsWith("g_")) {
      return cuts.before(cut, symbol, sheet.name());
    } else if (symbol.startsWith("m_")) {
      return loadSum(cut, segment, symbol);
    }
    return InputCell.shown(segments.stiffness(segment, symbol));
  }

  private boolean isOfState(Cut cut) {
    return bent.map(all -> all.covers(cut)).orElse(false);
  }

  private InputCell loadSum(Cut cut, Segment segment, String symbol) {
    Sums sum = new Sums(sheet.name());
    for (CombinationSheet.Weighted part : cuts.parts(cut)) {
      if (sums.isLoaded(part.kept(), segment)) {
        sum.plusProduct(part.factor(), sums.number(part.kept(), segment, symbol));
      }
    }
    return sum.input("sum over the cases");
  }

  private ProcedureCells writePoints(
      List<Point> points, List<DeflectionFinding> findings, ProcedureCells chords) {
    CompiledProcedure procedure = PointDisplacement.PROCEDURE.compile();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Point point = points.get(i);
      int chord = i < findings.size() ? i : -1;
      rows.add(
          new ProcedureTable.Row(
              List.of(
                  point.atEnd() ? "member end" : "cut",
                  point.cut().station().segment().name(),
                  point.cut().instance().words()),
              Inputs.of(procedure, symbol -> pointInput(point, symbol, chords, chord))));
    }
    return table(procedure, List.of("point", "segment", "combination"), rows);
  }

  private InputCell pointInput(Point point, String symbol, ProcedureCells chords, int chord) {
    Segment segment = point.cut().station().segment();
    int global = GLOBAL.indexOf(symbol);
    if (global >= 0) {
      Vector d = point.direction();
      return InputCell.literal(global == 0 ? d.x() : global == 1 ? d.y() : d.z(), DIRECTION);
    }
    if (symbol.equals("x")) {
      return endOrCut(point, segment);
    }
    if (symbol.equals("d_y") || symbol.equals("d_z")) {
      if (point.atEnd()) {
        return InputCell.literal(0, AT_END);
      }
      return isOfState(point.cut())
          ? bent.orElseThrow().bent(point.cut(), symbol)
          : InputCell.shown(chords.number(chord, symbol));
    }
    for (Freedom freedom : Freedom.values()) {
      String movement = MovementSheet.SYMBOLS[freedom.ordinal()];
      if (symbol.equals(movement + "1") || symbol.equals(movement + "2")) {
        var node = symbol.endsWith("1") ? segment.first() : segment.second();
        return cuts.state(point.cut())
            .map(
                state ->
                    InputCell.shown(states.orElseThrow().movements().number(state, node, freedom)))
            .orElseGet(
                () ->
                    cuts.summed(
                        point.cut(),
                        part -> movements.number(part.kept(), node, freedom),
                        sheet.name(),
                        "sum over the cases"));
      }
    }
    return InputCell.shown(segments.geometry(segment, symbol));
  }

  private InputCell endOrCut(Point point, Segment segment) {
    if (!point.atEnd()) {
      return InputCell.shown(cuts.place(point.cut()));
    }
    return point.cut().station().x() == 0
        ? InputCell.literal(0, AT_END)
        : InputCell.shown(segments.geometry(segment, "L"));
  }

  private void writeFloors(List<DeflectionFinding> findings, ProcedureCells moved) {
    boolean capped = job.rules().find(RuleSet.FLOOR_DEFLECTION).isPresent();
    if (job.rules().find(RuleSet.FLOOR_DEFLECTION_RATIO).isEmpty()) {
      return;
    }
    CompiledProcedure procedure =
        (capped ? DeflectionUtilisation.FLOOR : DeflectionUtilisation.FLOOR_BY_RATIO).compile();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    List<DeflectionFinding> floors = new ArrayList<>();
    int end = findings.size();
    for (int i = 0; i < findings.size(); i++) {
      DeflectionFinding finding = findings.get(i);
      if (finding.kind() != DeflectionFinding.Kind.FROM_CHORD) {
        continue;
      }
      Map<String, InputCell> own = new HashMap<>();
      own.put("δ", InputCell.shown(moved.number(i, "δ")));
      own.put("δ_A", InputCell.shown(moved.number(end, "δ")));
      own.put("δ_B", InputCell.shown(moved.number(end + 1, "δ")));
      own.put("ξ", share(finding));
      own.put("L_m", memberLength(finding));
      own.put("r_lim", InputCell.shown(figures.number(RuleSet.FLOOR_DEFLECTION_RATIO)));
      if (capped) {
        own.put("δ_max", InputCell.shown(figures.number(RuleSet.FLOOR_DEFLECTION)));
      }
      end += 2;
      floors.add(finding);
      rows.add(
          new ProcedureTable.Row(
              List.of(finding.member().name(), finding.governing().instance().words()),
              Inputs.of(procedure, own::get)));
    }
    if (rows.isEmpty()) {
      return;
    }
    ProcedureCells table = judged(procedure, rows);
    for (int i = 0; i < floors.size(); i++) {
      deflections.put(floors.get(i), table.number(i, "δ_rel"));
      limits.put(floors.get(i), table.number(i, "δ_lim"));
      utilisations.put(floors.get(i), table.number(i, "η_deflection"));
    }
  }

  private InputCell memberLength(DeflectionFinding finding) {
    Sums sum = new Sums(sheet.name());
    for (Segment one : job.frame().segmentsOf(finding.member())) {
      sum.plus(segments.geometry(one, "L"));
    }
    return sum.input("sum of the segments");
  }

  private InputCell share(DeflectionFinding finding) {
    Sums before = new Sums(sheet.name());
    Sums total = new Sums(sheet.name());
    Station station = finding.governing().station();
    for (Segment one : job.frame().segmentsOf(finding.member())) {
      if (one.order() < station.segment().order()) {
        before.plus(segments.geometry(one, "L"));
      }
      total.plus(segments.geometry(one, "L"));
    }
    before.plus(cuts.place(cut(finding.governing())));
    return InputCell.live(
        "(" + before.formula() + ")/(" + total.formula() + ")",
        before.value() / total.value(),
        "place per length of the member");
  }

  private void writeRails(List<DeflectionFinding> findings, ProcedureCells moved) {
    writeMoved(
        DeflectionFinding.Kind.MOVEMENT,
        RuleSet.RAIL_DEFLECTION,
        DeflectionUtilisation.RAIL.compile(),
        "δ_max",
        findings,
        moved,
        (movement, limit, member) -> List.of(movement, limit));
  }

  private void writeSway(List<DeflectionFinding> findings, ProcedureCells moved) {
    writeMoved(
        DeflectionFinding.Kind.SWAY,
        RuleSet.SWAY_DEFLECTION_RATIO,
        DeflectionUtilisation.SWAY.compile(),
        "δ_lim",
        findings,
        moved,
        (movement, limit, member) -> List.of(movement, height(member), limit));
  }

  /** The inputs of a procedure from a movement and the figure that limits it. */
  private interface Limited {
    List<InputCell> inputs(InputCell movement, InputCell limit, Member member);
  }

  private void writeMoved(
      DeflectionFinding.Kind kind,
      String figure,
      CompiledProcedure procedure,
      String limit,
      List<DeflectionFinding> findings,
      ProcedureCells moved,
      Limited limited) {
    if (job.rules().find(figure).isEmpty()) {
      return;
    }
    List<ProcedureTable.Row> rows = new ArrayList<>();
    List<DeflectionFinding> judged = new ArrayList<>();
    for (int i = 0; i < findings.size(); i++) {
      DeflectionFinding finding = findings.get(i);
      if (finding.kind() == kind) {
        judged.add(finding);
        rows.add(
            new ProcedureTable.Row(
                List.of(finding.member().name(), finding.governing().instance().words()),
                limited.inputs(
                    InputCell.shown(moved.number(i, "δ")),
                    InputCell.shown(figures.number(figure)),
                    finding.member())));
      }
    }
    if (rows.isEmpty()) {
      return;
    }
    ProcedureCells table = judged(procedure, rows);
    for (int i = 0; i < judged.size(); i++) {
      deflections.put(judged.get(i), table.number(i, "δ"));
      limits.put(judged.get(i), table.number(i, limit));
      utilisations.put(judged.get(i), table.number(i, "η_deflection"));
    }
  }

  /** The height of the member's lowest node, of a leg its top, above the lowest support, live. */
  private InputCell height(Member member) {
    List<String> own = new ArrayList<>();
    member.nodes().forEach(n -> own.add(nodes.place(n, 2).from(sheet.name())));
    List<String> supports = new ArrayList<>();
    job.frame().supports().forEach(s -> supports.add(nodes.place(s.node(), 2).from(sheet.name())));
    return InputCell.live(
        (member.role() == MemberRole.LEG ? "MAX(" : "MIN(")
            + String.join(",", own)
            + ")-MIN("
            + String.join(",", supports)
            + ")",
        new StandingHeight(job.frame()).of(member),
        "lowest node of the floor member, or top of the leg, above the lowest support");
  }

  private ProcedureCells judged(CompiledProcedure procedure, List<ProcedureTable.Row> rows) {
    ProcedureCells cells =
        sheet.add(
            new ProcedureTable(
                    procedure.procedure().title(),
                    procedure,
                    List.of(
                        new ProcedureTable.Label("member", 22),
                        new ProcedureTable.Label("combination", 60)),
                    rows)
                .judgedBy("η_deflection"));
    tables.add(cells);
    return cells;
  }

  private ProcedureCells table(
      CompiledProcedure procedure, List<String> labels, List<ProcedureTable.Row> rows) {
    ProcedureCells cells =
        sheet.add(
            new ProcedureTable(
                procedure.procedure().title(),
                procedure,
                List.of(
                    new ProcedureTable.Label(labels.get(0), 12),
                    new ProcedureTable.Label(labels.get(1), 22),
                    new ProcedureTable.Label(labels.get(2), 50)),
                rows));
    tables.add(cells);
    return cells;
  }

  /** Whether the finding is judged in this workbook. */
  boolean judges(DeflectionFinding finding) {
    return utilisations.containsKey(finding);
  }

  NumberAt deflection(DeflectionFinding finding) {
    return Required.of(deflections.get(finding), "A deflection");
  }

  NumberAt limit(DeflectionFinding finding) {
    return Required.of(limits.get(finding), "A limit");
  }

  NumberAt utilisation(DeflectionFinding finding) {
    return Required.of(utilisations.get(finding), "A utilisation");
  }

  /** The tables in the order of the calculation. */
  List<ProcedureCells> tables() {
    return tables;
  }

  Frame frame() {
    return job.frame();
  }
}
