package spanledger.workbook.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spanledger.procedure.Input;
import spanledger.procedure.Reference;
import spanledger.procedure.Step;
import spanledger.procedure.SymbolicText;

/**
 * The header of a procedure's table. Symbols and units come first and stay in sight; words,
 * formulas and sources follow and may scroll away.
 */
final class ProcedureTableHeader {

  private static final int NUMBER_WIDTH = 12;
  private static final int WIDEST_STEP = 20;
  private static final int COUNTER_WIDTH = 6;
  private static final int KEY_WIDTH = 11;
  private static final int SOURCES_WIDTH = 40;

  private final LedgerSheet sheet;
  private final TablePlan plan;

  ProcedureTableHeader(LedgerSheet sheet, TablePlan plan) {
    this.sheet = sheet;
    this.plan = plan;
  }

  void write() {
    inlineNotes().forEach(note -> sheet.paragraph(CellRole.NOTE, note));
    int top = sheet.take(5);
    int lead = plan.firstKeyColumn();
    column(top, 0, COUNTER_WIDTH, "row", "", "", "", "");
    List<ProcedureTable.Label> labels = plan.table().labels();
    for (int i = 0; i < labels.size(); i++) {
      ProcedureTable.Label label = labels.get(i);
      column(top, plan.labelColumn(i), label.width(), label.heading(), "", "", "", "");
    }
    for (int i = 0; i < plan.inline().keys().size(); i++) {
      int width = Math.max(KEY_WIDTH, keyHeading(i).length() / 2 + 2);
      column(top, lead + i, width, keyHeading(i), "", "where inputs are taken from", "", "");
    }
    writeInputs(top);
    writeSteps(top);
    plan.table()
        .utilisation()
        .ifPresent(
            symbol -> column(top, plan.verdictColumn(), 9, "verdict", "", "", symbol + " ≤ 1", ""));
    if (plan.sources().perRow()) {
      column(
          top, plan.sourcesColumn(), SOURCES_WIDTH, "sources", "", "of the row's inputs", "", "");
    }
    sheet.page().keep(top, top + 1, lead);
  }

  private void writeInputs(int top) {
    List<Input> inputs = plan.procedure().inputs();
    for (int i = 0; i < inputs.size(); i++) {
      if (plan.hasColumn(i)) {
        Input input = inputs.get(i);
        column(
            top,
            plan.column(i),
            NUMBER_WIDTH,
            input.symbol().symbol(),
            unit(input.symbol()),
            input.words(),
            plan.sources().kind(i),
            plan.sources().source(i));
      }
    }
  }

  private void writeSteps(int top) {
    List<Step> steps = plan.procedure().steps();
    int first = plan.procedure().inputs().size();
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      String formula = "= " + SymbolicText.of(step.expression());
      column(
          top,
          plan.column(first + i),
          width(step.words(), formula),
          step.symbol().symbol(),
          unit(step.symbol()),
          step.words(),
          formula,
          SourceText.of(step.source()));
    }
  }

  /** Long texts get wider columns rather than towers of lines. */
  private static int width(String words, String formula) {
    int wanted = Math.max(words.length() / 4, formula.length() / 5);
    return Math.min(WIDEST_STEP, Math.max(NUMBER_WIDTH, wanted));
  }

  private void column(
      int top,
      int column,
      int width,
      String symbol,
      String unit,
      String words,
      String formula,
      String source) {
    sheet.widen(column, width);
    SheetCells cells = sheet.cells();
    cells.text(top, column, CellRole.COLUMN_SYMBOL, sheet.styles(), symbol);
    cells.text(top + 1, column, CellRole.COLUMN_UNIT, sheet.styles(), unit);
    cells.text(top + 2, column, CellRole.COLUMN_WORDS, sheet.styles(), words);
    cells.text(top + 3, column, CellRole.COLUMN_FORMULA, sheet.styles(), formula);
    cells.text(top + 4, column, CellRole.COLUMN_SOURCE, sheet.styles(), source);
  }

  /** Where inputs without a column are; their words stand there, too. */
  private List<String> inlineNotes() {
    List<String> fixed = new ArrayList<>();
    Map<String, List<String>> moving = new LinkedHashMap<>();
    List<Input> inputs = plan.procedure().inputs();
    for (int i = 0; i < inputs.size(); i++) {
      if (plan.inline().has(i)) {
        String symbol = inputs.get(i).symbol().symbol();
        CellAddress target = plan.inline().target(i, 0);
        if (plan.inline().isFixed(i)) {
          fixed.add(symbol + ", " + inputs.get(i).words() + ": " + target.from(sheet.name()));
        } else {
          moving
              .computeIfAbsent(keyHeading(plan.inline().keyIndex(i)), key -> new ArrayList<>())
              .add(symbol + " in column " + CellAddress.letters(target.column()));
        }
      }
    }
    List<String> notes = new ArrayList<>();
    if (!fixed.isEmpty()) {
      notes.add("The same in all rows: " + String.join("; ", fixed) + ".");
    }
    moving.forEach(
        (heading, symbols) ->
            notes.add("From \"" + heading + "\": " + String.join(", ", symbols) + "."));
    return notes;
  }

  /** Two keys may lead to different rows of one sheet. */
  private String keyHeading(int key) {
    List<InlineInputs.Key> keys = plan.inline().keys();
    String from = keys.get(key).sheet();
    long before = keys.subList(0, key).stream().filter(k -> k.sheet().equals(from)).count();
    return "row of " + from + (before == 0 ? "" : ", " + (before + 1));
  }

  private static String unit(Reference symbol) {
    return symbol.dimension().coreUnit();
  }
}
