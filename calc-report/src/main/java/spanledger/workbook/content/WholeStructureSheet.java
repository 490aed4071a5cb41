package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.job.Job;
import spanledger.overturning.LineWeight;
import spanledger.overturning.SlidingCase;
import spanledger.overturning.Standing;
import spanledger.overturning.StandingResult;
import spanledger.overturning.TippingCase;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.verdict.WholeStructure;
import spanledger.workbook.layout.Column;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.DataTable;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** Tipping about every line of the feet, and sliding, live from places and masses. */
final class WholeStructureSheet {

  private static final Source JOB = Source.declared("job file");
  private static final String USED = "η";

  private final Map<String, NumberAt> used = new HashMap<>();
  private final List<ProcedureCells> tables = new ArrayList<>();

  private WholeStructureSheet() {}

  /** The sheet; without content if the job does not say how the structure stands. */
  static WholeStructureSheet write(
      LedgerWorkbook workbook,
      Job job,
      Optional<WholeStructure> whole,
      NodeSheet nodes,
      SectionSheet sections,
      FigureSheet figures) {
    WholeStructureSheet written = new WholeStructureSheet();
    whole
        .map(WholeStructure::standing)
        .filter(standing -> !standing.edges().isEmpty() && !standing.tipping().isEmpty())
        .ifPresent(standing -> written.write(workbook, job, standing, nodes, sections, figures));
    written.used.putAll(RobustnessSheet.write(workbook, whole, figures).used());
    return written;
  }

  /** What a check uses of what it may; empty if it is not judged here. */
  Optional<NumberAt> used(String check, String subject) {
    return Optional.ofNullable(used.get(check + "|" + subject));
  }

  /** The tables of calculations. */
  List<ProcedureCells> tables() {
    return List.copyOf(tables);
  }

  private void write(
      LedgerWorkbook workbook,
      Job job,
      StandingResult result,
      NodeSheet nodes,
      SectionSheet sections,
      FigureSheet figures) {
    LedgerSheet sheet = workbook.sheet(SheetNames.WHOLE);
    sheet.title(
        "Whole structure",
        "Whether it tips about a line through its feet, or slides; as one body on its feet.");
    sheet.note(
        "Weights follow from places, sections and densities. Parts of the permanent load beyond a line"
            + " tip and take one factor, parts within hold and take another. Variable loads act only"
            + " where they tip. Which place or direction of a load is worst was found by search; the"
            + " moments are live.");
    StandingFactors factors = new StandingFactors(sheet, result);
    sheet.printUpToHere();
    StandingLines lines = new StandingLines(sheet, result, nodes);
    StandingWeights weights =
        new StandingWeights(
            sheet, lines, job, result.permanent(), result.standing().ballast(), sections, figures);
    StandingVariables variables = new StandingVariables(sheet, lines, factors, result, figures);
    int judged = sheet.nextRow();
    ProcedureCells balance = writeBalance(sheet, result, factors, weights, variables, figures);
    writeWorst(sheet, result, balance);
    sheet.printFrom(judged);
    writeBallast(sheet, lines, result, factors, balance, figures);
    int slides = sheet.nextRow();
    writeSliding(sheet, result, factors, weights, figures);
    if (sheet.nextRow() > slides) {
      sheet.printFrom(slides);
    }
    tables.add(weights.memberWeights());
    tables.addAll(lines.tables());
  }

  private ProcedureCells writeBalance(
      LedgerSheet sheet,
      StandingResult result,
      StandingFactors factors,
      StandingWeights weights,
      StandingVariables variables,
      FigureSheet figures) {
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (int i = 0; i < result.tipping().size(); i++) {
      TippingCase one = result.tipping().get(i);
      int edge = result.edges().indexOf(one.edge());
      RangeSums variable = variables.sum(i);
      rows.add(
          new ProcedureTable.Row(
              List.of(one.edge().name(), one.rule().name(), one.leading()),
              List.of(
                  InputCell.shown(weights.sum(edge, "M_in")),
                  InputCell.shown(weights.sum(edge, "M_out")),
                  InputCell.shown(weights.sum(edge, "M_z")),
                  StandingVariables.sway(one.sway(), figures),
                  InputCell.shown(factors.holding(one.rule())),
                  InputCell.shown(factors.overturning(one.rule())),
                  InputCell.live(variable.formula(), variable.value(), "sum of the loads above"))));
    }
    ProcedureCells balance =
        sheet.add(
            new ProcedureTable(
                    "Tipping about each line under each rule",
                    TippingCase.BALANCE.compile(),
                    List.of(
                        new ProcedureTable.Label("line", 28),
                        new ProcedureTable.Label("rule", 24),
                        new ProcedureTable.Label("leads", 28)),
                    rows)
                .judgedBy(USED));
    tables.add(balance);
    return balance;
  }

  /** Rows of a line follow each other, since lines are looked at one after another. */
  private void writeWorst(LedgerSheet sheet, StandingResult result, ProcedureCells balance) {
    Map<String, int[]> spans = new LinkedHashMap<>();
    for (int i = 0; i < result.tipping().size(); i++) {
      int row = i;
      spans.computeIfAbsent(result.tipping().get(i).edge().name(), n -> new int[] {row, 0})[1]++;
    }
    List<List<LedgerCell>> rows = new ArrayList<>();
    spans.forEach(
        (name, span) -> {
          double worst = 0;
          for (int row = span[0]; row < span[0] + span[1]; row++) {
            worst = Math.max(worst, balance.value(row, USED));
          }
          String range =
              balance
                  .number(span[0], USED)
                  .at()
                  .to(balance.number(span[0] + span[1] - 1, USED).at())
                  .from(sheet.name());
          rows.add(List.of(LedgerCell.text(name), LedgerCell.live("MAX(" + range + ")", worst)));
        });
    DataCells cells =
        sheet.add(
            new DataTable(
                "Worst rule of each line",
                List.of(
                    Column.wrapped("line", 14),
                    Column.number(USED, "what tips per what holds", Dimension.NONE)),
                rows));
    int row = 0;
    for (String name : spans.keySet()) {
      used.put("tipping about|" + name, cells.number(row++, USED));
    }
  }

  private void writeBallast(
      LedgerSheet sheet,
      StandingLines lines,
      StandingResult result,
      StandingFactors factors,
      ProcedureCells balance,
      FigureSheet figures) {
    List<Integer> needy = new ArrayList<>();
    for (int i = 0; i < result.tipping().size(); i++) {
      if (result.tipping().get(i).use() > 1) {
        needy.add(i);
      }
    }
    if (needy.isEmpty()) {
      return;
    }
    DataCells perMass = writeUnitBallast(sheet, lines, result, figures);
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (int i : needy) {
      TippingCase one = result.tipping().get(i);
      int edge = result.edges().indexOf(one.edge());
      rows.add(
          new ProcedureTable.Row(
              List.of(one.edge().name(), one.rule().name()),
              List.of(
                  InputCell.shown(balance.number(i, "M_stb")),
                  InputCell.shown(balance.number(i, "M_dst")),
                  InputCell.shown(factors.holding(one.rule())),
                  InputCell.shown(factors.overturning(one.rule())),
                  StandingVariables.sway(one.sway(), figures),
                  InputCell.shown(perMass.number(edge, "k_in")),
                  InputCell.shown(perMass.number(edge, "k_out")),
                  InputCell.shown(perMass.number(edge, "k_z")))));
    }
    int added = sheet.nextRow();
    tables.add(
        sheet.add(
            new ProcedureTable(
                "Ballast to add so that it just does not tip, all places together",
                TippingCase.BALLAST.compile(),
                List.of(new ProcedureTable.Label("line", 28), new ProcedureTable.Label("rule", 24)),
                rows)));
    sheet.printFrom(added);
  }

  private static DataCells writeUnitBallast(
      LedgerSheet sheet, StandingLines lines, StandingResult result, FigureSheet figures) {
    List<String> names = result.ballastPlaceNames();
    List<LineWeight> unit = TippingCase.unitBallast(result.ballastPlaces());
    NumberAt gravity = figures.number("g");
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < unit.size(); i++) {
      places.add(i);
    }
    ProcedureCells cells =
        lines.table(
            "1 kg of ballast, shared evenly by its places",
            LineWeight.PROCEDURE,
            List.of("place"),
            lines.everywhere(
                places,
                (edge, i) ->
                    new StandingLines.Row(
                        edge,
                        List.of(names.get(i)),
                        StandingLines.inputs(
                            unit.get(i),
                            InputCell.live(
                                gravity.from(sheet.name()) + "/" + unit.size(),
                                unit.get(i).weight(),
                                "share of the weight of 1 kg")))));
    Dimension perMass = Dimension.MOMENT.per(Dimension.MASS);
    List<List<LedgerCell>> rows = new ArrayList<>();
    for (int edge = 0; edge < result.edges().size(); edge++) {
      List<LedgerCell> row =
          new ArrayList<>(List.of(LedgerCell.text(result.edges().get(edge).name())));
      for (String symbol : List.of("M_in", "M_out", "M_z")) {
        row.add(
            new RangeSums(sheet.name())
                .plus(cells, edge * unit.size(), unit.size(), symbol)
                .cell());
      }
      rows.add(row);
    }
    return sheet.add(
        new DataTable(
            "Moments per mass of ballast",
            List.of(
                Column.wrapped("line", 14),
                Column.number("k_in", "holds", perMass),
                Column.number("k_out", "tips", perMass),
                Column.number("k_z", "by height", perMass)),
            rows));
  }

  private void writeSliding(
      LedgerSheet sheet,
      StandingResult result,
      StandingFactors factors,
      StandingWeights weights,
      FigureSheet figures) {
    if (result.sliding().isEmpty()) {
      return;
    }
    StandingLevels levels = new StandingLevels(sheet, factors, result);
    Standing.Ground ground = result.standing().ground();
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (int i = 0; i < result.sliding().size(); i++) {
      SlidingCase one = result.sliding().get(i);
      rows.add(
          new ProcedureTable.Row(
              List.of(one.rule().name(), one.leading()),
              List.of(
                  InputCell.shown(weights.weight()),
                  InputCell.shown(factors.holding(one.rule())),
                  InputCell.shown(factors.overturning(one.rule())),
                  StandingVariables.sway(one.sway(), figures),
                  InputCell.literal(ground.slope(), JOB),
                  InputCell.literal(ground.downhill().x(), JOB),
                  InputCell.literal(ground.downhill().y(), JOB),
                  levels.sum(i, "H_X"),
                  levels.sum(i, "H_Y"),
                  levels.sum(i, "U"))));
    }
    List<ProcedureTable.Label> labels =
        List.of(new ProcedureTable.Label("rule", 24), new ProcedureTable.Label("leads", 28));
    ProcedureCells balance =
        sheet.add(
            new ProcedureTable(
                "Friction needed under each rule", SlidingCase.BALANCE.compile(), labels, rows));
    tables.add(balance);
    Optional<Standing.Friction> friction = result.standing().friction();
    if (friction.isEmpty()) {
      return;
    }
    List<ProcedureTable.Row> uses = new ArrayList<>();
    int worst = 0;
    for (int i = 0; i < rows.size(); i++) {
      worst = balance.value(i, "μ_req") > balance.value(worst, "μ_req") ? i : worst;
      uses.add(
          new ProcedureTable.Row(
              rows.get(i).labels(),
              List.of(
                  InputCell.shown(balance.number(i, "μ_req")),
                  InputCell.literal(friction.get().coefficient(), friction.get().source()))));
    }
    ProcedureCells use =
        sheet.add(
            new ProcedureTable("Use of the friction", SlidingCase.USE.compile(), labels, uses)
                .judgedBy(USED));
    tables.add(use);
    used.put("sliding|whole structure", use.number(worst, USED));
  }
}
