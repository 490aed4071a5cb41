package spanledger.workbook.layout;

import java.util.List;
import java.util.Optional;
import spanledger.procedure.CompiledProcedure;

/**
 * A procedure worked out for many cases: a row per case, a column per input and step, every step a
 * live formula.
 *
 * @param title over the table; may be empty
 * @param procedure what is worked out
 * @param labels the columns of words that say which case a row is
 * @param rows the cases, at least one
 * @param utilisation the symbol of the step that passes if it is at most 1, for a column of
 *     verdicts
 */
public record ProcedureTable(
    String title,
    CompiledProcedure procedure,
    List<Label> labels,
    List<Row> rows,
    Optional<String> utilisation)
    implements Block<ProcedureCells> {

  /**
   * A column of words.
   *
   * @param heading over it
   * @param width in characters
   */
  public record Label(String heading, int width) {}

  /**
   * One case.
   *
   * @param labels as many as the table has
   * @param inputs in the procedure's order
   */
  public record Row(List<String> labels, List<InputCell> inputs) {
    public Row {
      labels = List.copyOf(labels);
      inputs = List.copyOf(inputs);
    }
  }

  public ProcedureTable {
    labels = List.copyOf(labels);
    rows = List.copyOf(rows);
    if (rows.isEmpty()) {
      throw new IllegalArgumentException("The table \"" + title + "\" needs at least one row.");
    }
    utilisation.ifPresent(procedure::slot);
    int inputs = procedure.procedure().inputs().size();
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      if (row.labels().size() != labels.size() || row.inputs().size() != inputs) {
        throw new IllegalArgumentException(
            "Row "
                + (i + 1)
                + " of the table \""
                + title
                + "\" has "
                + row.labels().size()
                + " labels and "
                + row.inputs().size()
                + " inputs; the table has "
                + labels.size()
                + " labels and "
                + procedure.procedure().name()
                + " takes "
                + inputs
                + " inputs.");
      }
      for (InputCell input : row.inputs()) {
        if (input instanceof InputCell.EarlierRow earlier && earlier.row() >= i) {
          throw new IllegalArgumentException(
              "Row "
                  + (i + 1)
                  + " of the table \""
                  + title
                  + "\" takes a number from row "
                  + (earlier.row() + 1)
                  + ", which is not above it.");
        }
      }
    }
  }

  /** A table without verdicts. */
  public ProcedureTable(
      String title, CompiledProcedure procedure, List<Label> labels, List<Row> rows) {
    this(title, procedure, labels, rows, Optional.empty());
  }

  /** The same table with a column that says pass where the step of that symbol is at most 1. */
  public ProcedureTable judgedBy(String symbol) {
    return new ProcedureTable(title, procedure, labels, rows, Optional.of(symbol));
  }

  /**
   * Where the table's numbers stand.
   *
   * @throws IllegalArgumentException naming the row whose inputs the procedure does not accept
   */
  @Override
  public ProcedureCells writeTo(LedgerSheet sheet) {
    double[][] values = values();
    TablePlan plan = TablePlan.of(this, values);
    if (!title.isEmpty()) {
      sheet.heading(title);
    }
    new ProcedureTableHeader(sheet, plan).write();
    return new ProcedureTableRows(sheet, plan).write();
  }

  private double[][] values() {
    double[][] values = new double[rows.size()][];
    for (int r = 0; r < values.length; r++) {
      values[r] = procedure.newSlots();
      List<InputCell> inputs = rows.get(r).inputs();
      for (int i = 0; i < inputs.size(); i++) {
        values[r][i] = inputs.get(i).value();
      }
      procedure.evaluate(values[r]);
      try {
        procedure.requireInDomain(values[r]);
      } catch (IllegalArgumentException e) {
        throw new IllegalArgumentException(
            "Row " + (r + 1) + " " + rows.get(r).labels() + ": " + e.getMessage(), e);
      }
    }
    return values;
  }
}
