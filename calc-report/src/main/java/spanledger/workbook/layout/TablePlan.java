package spanledger.workbook.layout;

import java.util.ArrayList;
import java.util.List;
import spanledger.procedure.Input;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.procedure.Step;

/**
 * Which column of a procedure's table holds what. From the left: number, labels, keys of inline
 * inputs, inputs, steps, verdict, sources of the rows.
 */
final class TablePlan {

  private static final int NONE = -1;

  private final ProcedureTable table;
  private final double[][] values;
  private final InlineInputs inline;
  private final InputSources sources;
  private final int[] columnOfSlot;
  private final NumberPattern[] patternOfSlot;
  private final int columns;

  private TablePlan(ProcedureTable table, double[][] values) {
    this.table = table;
    this.values = values;
    this.inline = new InlineInputs(table);
    this.sources = new InputSources(table);
    int slots = table.procedure().slotCount();
    columnOfSlot = new int[slots];
    patternOfSlot = new NumberPattern[slots];
    int column = firstKeyColumn() + inline.keys().size();
    List<Reference> symbols = symbols();
    for (int slot = 0; slot < slots; slot++) {
      columnOfSlot[slot] = inline.has(slot) ? NONE : column++;
      patternOfSlot[slot] = NumberPattern.of(symbols.get(slot).dimension(), greatest(slot));
    }
    columns = column;
  }

  static TablePlan of(ProcedureTable table, double[][] values) {
    return new TablePlan(table, values);
  }

  ProcedureTable table() {
    return table;
  }

  Procedure procedure() {
    return table.procedure().procedure();
  }

  double[][] values() {
    return values;
  }

  InlineInputs inline() {
    return inline;
  }

  InputSources sources() {
    return sources;
  }

  /** Symbols by slot. */
  List<Reference> symbols() {
    List<Reference> symbols = new ArrayList<>();
    procedure().inputs().stream().map(Input::symbol).forEach(symbols::add);
    procedure().steps().stream().map(Step::symbol).forEach(symbols::add);
    return symbols;
  }

  int labelColumn(int label) {
    return 1 + label;
  }

  int firstKeyColumn() {
    return 1 + table.labels().size();
  }

  boolean hasColumn(int slot) {
    return columnOfSlot[slot] != NONE;
  }

  int column(int slot) {
    return columnOfSlot[slot];
  }

  NumberPattern pattern(int slot) {
    return patternOfSlot[slot];
  }

  /** Of verdicts, if the table has any. */
  int verdictColumn() {
    return columns;
  }

  /** Of the sources of single rows, if the table has any. */
  int sourcesColumn() {
    return columns + (table.utilisation().isPresent() ? 1 : 0);
  }

  private double greatest(int slot) {
    double greatest = 0;
    for (double[] row : values) {
      greatest = Math.max(greatest, Math.abs(row[slot]));
    }
    return greatest;
  }
}
