package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import spanledger.deck.DeckCalculation;
import spanledger.deck.DeckFinding;
import spanledger.deck.DeckInput;
import spanledger.deck.DeckJudgement;
import spanledger.job.Job;
import spanledger.workbook.layout.InputCell;
import spanledger.workbook.layout.LedgerSheet;
import spanledger.workbook.layout.LedgerWorkbook;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;
import spanledger.workbook.layout.ProcedureTable;

/** Deck panels, planks and treads against what they carry. */
final class DeckSheet {

  private static final List<ProcedureTable.Label> LABELS =
      List.of(
          new ProcedureTable.Label("on", 22),
          new ProcedureTable.Label("under", 20),
          new ProcedureTable.Label("panel", 18));

  /** Steps that judge by themselves, whatever else is known. */
  private static final List<String> JUDGES = List.of("η_panel", "η_deflection");

  private record Place(ProcedureCells table, int row) {}

  private final List<ProcedureCells> tables = new ArrayList<>();
  private final List<Judged> judged = new ArrayList<>();
  private final Map<DeckCalculation, Place> places = new LinkedHashMap<>();
  private final Map<DeckCalculation, Integer> depths = new LinkedHashMap<>();

  /**
   * A check that a calculation decides.
   *
   * @param finding the check
   * @param used its live utilisation
   */
  record Judged(DeckFinding finding, NumberAt used) {}

  private DeckSheet() {}

  /** The sheet; without content if the job names no panel. */
  static DeckSheet write(
      LedgerWorkbook workbook, Job job, SectionSheet sections, FigureSheet figures) {
    DeckSheet deck = new DeckSheet();
    if (!job.deck().uses().isEmpty()) {
      deck.write(workbook.sheet(SheetNames.DECK), job, sections, figures);
    }
    return deck;
  }

  /** Every check that a calculation decides, with its live utilisation. */
  List<Judged> judged() {
    return List.copyOf(judged);
  }

  /** The tables of calculations. */
  List<ProcedureCells> tables() {
    return List.copyOf(tables);
  }

  private void write(LedgerSheet sheet, Job job, SectionSheet sections, FigureSheet figures) {
    sheet.title(
        "Deck and treads",
        "Panels between the members that carry them, each as a simple beam. Tables of tested panels"
            + " are read between two rows, never beyond them.");
    sheet.note(
        "Change a span or a number of a table and the rows are looked up anew; outside the table"
            + " there is no value. Loads per area stand in MPa: 0.001 MPa is 1 kN/m². What is not checked is listed on Summary.");
    PanelTableCells given = PanelTableCells.write(sheet, job.deck().uses());
    List<DeckFinding> findings =
        DeckJudgement.of(job.deck(), job.rules(), job.combinations()).findings();
    findings.forEach(finding -> finding.result().ifPresent(r -> depth(r.calculation())));
    Map<String, List<DeckCalculation>> byProcedure = new LinkedHashMap<>();
    Map<Integer, List<DeckCalculation>> byDepth = new TreeMap<>();
    depths.forEach((one, depth) -> byDepth.computeIfAbsent(depth, d -> new ArrayList<>()).add(one));
    byDepth
        .values()
        .forEach(
            same ->
                same.forEach(
                    one ->
                        byProcedure
                            .computeIfAbsent(
                                one.procedure().procedure().name(), n -> new ArrayList<>())
                            .add(one)));
    byProcedure.values().stream()
        .sorted(Comparator.comparingInt(same -> depths.getOrDefault(same.get(0), 0)))
        .forEach(same -> writeTable(sheet, same, given, sections, figures));
    for (DeckFinding finding : findings) {
      finding
          .result()
          .filter(r -> r.used() <= 1 ? r.proves() : r.refutes())
          .ifPresent(
              r -> judged.add(new Judged(finding, number(r.calculation(), r.utilisation()))));
    }
  }

  /** How many calculations a calculation needs before it, itself included. */
  private int depth(DeckCalculation calculation) {
    Integer known = depths.get(calculation);
    if (known != null) {
      return known;
    }
    int deepest = 0;
    for (DeckInput input : calculation.inputs()) {
      if (input instanceof DeckInput.OfStep step) {
        deepest = Math.max(deepest, depth(step.calculation()));
      }
    }
    depths.put(calculation, deepest + 1);
    return deepest + 1;
  }

  private void writeTable(
      LedgerSheet sheet,
      List<DeckCalculation> same,
      PanelTableCells given,
      SectionSheet sections,
      FigureSheet figures) {
    List<ProcedureTable.Row> rows = new ArrayList<>();
    for (DeckCalculation one : same) {
      rows.add(
          new ProcedureTable.Row(
              List.of(one.use().subject(), one.load().words(), one.use().panel().name()),
              one.inputs().stream().map(input -> cell(input, given, sections, figures)).toList()));
    }
    ProcedureTable table =
        new ProcedureTable(
            same.get(0).procedure().procedure().title(), same.get(0).procedure(), LABELS, rows);
    Optional<String> judge =
        JUDGES.stream()
            .filter(
                symbol ->
                    table.procedure().procedure().steps().stream()
                        .anyMatch(step -> step.symbol().symbol().equals(symbol)))
            .findFirst();
    ProcedureCells cells = sheet.add(judge.map(table::judgedBy).orElse(table));
    tables.add(cells);
    for (int row = 0; row < same.size(); row++) {
      places.put(same.get(row), new Place(cells, row));
    }
  }

  private InputCell cell(
      DeckInput input, PanelTableCells given, SectionSheet sections, FigureSheet figures) {
    if (input instanceof DeckInput.OfUse use) {
      return InputCell.shown(given.size(use.use(), use.size()));
    }
    if (input instanceof DeckInput.OfTable read) {
      return InputCell.shown(given.read(read.use(), read.column(), read.after()));
    }
    if (input instanceof DeckInput.OfFigure figure) {
      return InputCell.shown(figures.number(figure.id()));
    }
    if (input instanceof DeckInput.OfCombination factor) {
      return InputCell.shown(figures.factor(factor.template(), factor.category()));
    }
    if (input instanceof DeckInput.OfSection property) {
      return InputCell.shown(sections.property(property.section(), property.symbol()));
    }
    if (input instanceof DeckInput.OfAlloy property) {
      return InputCell.shown(sections.alloy(property.alloy(), property.symbol()));
    }
    if (input instanceof DeckInput.OfStep step) {
      return InputCell.shown(number(step.calculation(), step.symbol()));
    }
    DeckInput.Given literal = (DeckInput.Given) input;
    return InputCell.literal(literal.value(), literal.source());
  }

  private NumberAt number(DeckCalculation calculation, String symbol) {
    Place place = places.get(calculation);
    if (place == null) {
      throw new IllegalStateException("A calculation is used before it stands on the sheet.");
    }
    return place.table().number(place.row(), symbol);
  }
}
