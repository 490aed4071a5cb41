package spanledger.workbook.layout;

import java.util.List;
import spanledger.procedure.Step;

/** The rows of a procedure's table. */
final class ProcedureTableRows {

  /** Labels of this width, in characters, hold sentences, which would be cut off. */
  private static final int WIDE = 40;

  private final LedgerSheet sheet;
  private final SheetCells cells;
  private final Styles styles;
  private final TablePlan plan;
  private final int inputs;
  private final String[] letters;
  private final StepFormula[] formulas;
  private final StringBuilder scratch = new StringBuilder();

  ProcedureTableRows(LedgerSheet sheet, TablePlan plan) {
    this.sheet = sheet;
    this.cells = sheet.cells();
    this.styles = sheet.styles();
    this.plan = plan;
    this.inputs = plan.procedure().inputs().size();
    letters = new String[plan.symbols().size()];
    for (int slot = 0; slot < letters.length; slot++) {
      letters[slot] = plan.hasColumn(slot) ? CellAddress.letters(plan.column(slot)) : "";
    }
    List<Step> steps = plan.procedure().steps();
    formulas = new StepFormula[steps.size()];
    for (int i = 0; i < formulas.length; i++) {
      formulas[i] =
          StepFormula.of(steps.get(i).expression(), r -> plan.table().procedure().slot(r.symbol()));
    }
  }

  ProcedureCells write() {
    int rows = plan.table().rows().size();
    int first = sheet.take(rows);
    int[] stepStyles = new int[formulas.length];
    for (int i = 0; i < stepStyles.length; i++) {
      stepStyles[i] = styles.of(CellRole.FORMULA, plan.pattern(inputs + i));
    }
    int counter = styles.of(CellRole.COUNT, NumberPattern.WHOLE);
    for (int r = 0; r < rows; r++) {
      int row = first + r;
      cells.number(row, 0, counter, r + 1);
      writeLabels(row, r);
      writeInputs(row, r);
      writeSteps(row, r, stepStyles);
      writeEnd(row, r);
    }
    if (plan.table().utilisation().isPresent()) {
      sheet.judged(first, first + rows - 1, plan.verdictColumn());
    }
    return new ProcedureCells(plan, sheet.name(), first);
  }

  private void writeLabels(int row, int r) {
    List<String> labels = plan.table().rows().get(r).labels();
    for (int i = 0; i < labels.size(); i++) {
      boolean wide = plan.table().labels().get(i).width() >= WIDE;
      CellRole role = wide ? CellRole.WRAPPED : CellRole.LABEL;
      cells.text(row, plan.labelColumn(i), role, styles, labels.get(i));
    }
    List<InlineInputs.Key> keys = plan.inline().keys();
    for (int i = 0; i < keys.size(); i++) {
      CellAddress target = keys.get(i).targets().get(r);
      cells.formula(
          row,
          plan.firstKeyColumn() + i,
          styles.of(CellRole.FORMULA, NumberPattern.WHOLE),
          "ROW(" + target.from(sheet.name()) + ")",
          target.row() + 1.0);
    }
  }

  private void writeInputs(int row, int r) {
    List<InputCell> rowInputs = plan.table().rows().get(r).inputs();
    for (int i = 0; i < inputs; i++) {
      if (plan.hasColumn(i)) {
        InputCell input = rowInputs.get(i);
        if (input instanceof InputCell.EarlierRow earlier) {
          int there = row - r + earlier.row();
          int column = plan.column(plan.table().procedure().slot(earlier.symbol()));
          input = InputCell.shown(new NumberAt(sheet.at(there, column), earlier.value()));
        }
        InputCells.write(sheet, row, plan.column(i), input, plan.pattern(i));
      }
    }
  }

  private void writeSteps(int row, int r, int[] stepStyles) {
    String rowNumber = Integer.toString(row + 1);
    double[] values = plan.values()[r];
    StepFormula.Addresses addresses =
        (out, slot) -> {
          if (plan.hasColumn(slot)) {
            out.append(letters[slot]).append(rowNumber);
          } else {
            out.append(plan.inline().target(slot, r).from(sheet.name()));
          }
        };
    for (int i = 0; i < formulas.length; i++) {
      int slot = inputs + i;
      String formula = formulas[i].with(addresses, scratch);
      cells.formula(row, plan.column(slot), stepStyles[i], formula, values[slot]);
    }
  }

  private void writeEnd(int row, int r) {
    plan.table()
        .utilisation()
        .ifPresent(
            symbol -> {
              int slot = plan.table().procedure().slot(symbol);
              String condition = letters[slot] + (row + 1) + "<=1";
              boolean passes = plan.values()[r][slot] <= 1;
              cells.formula(
                  row,
                  plan.verdictColumn(),
                  CellRole.OUTCOME,
                  styles,
                  Outcome.formula(condition, Outcome.PASS, Outcome.FAIL),
                  (passes ? Outcome.PASS : Outcome.FAIL).words());
            });
    if (plan.sources().perRow()) {
      cells.text(row, plan.sourcesColumn(), CellRole.SOURCE, styles, plan.sources().ofRow(r));
    }
  }
}
