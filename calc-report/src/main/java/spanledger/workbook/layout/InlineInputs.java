package spanledger.workbook.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spanledger.procedure.Input;

/**
 * The inputs of a table that have no column.
 *
 * <p>Inputs whose cells move down over the rows share a key column with others that move the same
 * way; it shows from which row of the other sheet a case takes them.
 */
final class InlineInputs {

  /**
   * A key column.
   *
   * @param targets in each row, a cell in the row that is used
   */
  record Key(List<CellAddress> targets) {
    String sheet() {
      return targets.get(0).sheet();
    }
  }

  private final Map<Integer, List<CellAddress>> targets = new HashMap<>();
  private final Map<Integer, Key> keyOf = new HashMap<>();
  private final List<Key> keys = new ArrayList<>();

  InlineInputs(ProcedureTable table) {
    List<Input> inputs = table.procedure().procedure().inputs();
    Map<List<String>, Key> known = new HashMap<>();
    for (int i = 0; i < inputs.size(); i++) {
      if (!isInline(table, i)) {
        continue;
      }
      List<CellAddress> cells = cells(table, i);
      targets.put(i, cells);
      if (cells.stream().distinct().count() > 1) {
        requireOneColumn(cells, inputs.get(i));
        List<String> way = cells.stream().map(c -> c.sheet() + "!" + c.row()).toList();
        Key key = known.get(way);
        if (key == null) {
          key = new Key(cells);
          known.put(way, key);
          keys.add(key);
        }
        keyOf.put(i, key);
      }
    }
  }

  private static boolean isInline(ProcedureTable table, int input) {
    long inline = table.rows().stream().filter(row -> row.inputs().get(input).isInline()).count();
    if (inline != 0 && inline != table.rows().size()) {
      throw new IllegalArgumentException(
          "The input "
              + table.procedure().procedure().inputs().get(input).symbol().symbol()
              + " is inline in some rows of the table \""
              + table.title()
              + "\" and not in others; it must be so in all or none.");
    }
    return inline != 0;
  }

  private static List<CellAddress> cells(ProcedureTable table, int input) {
    List<CellAddress> cells = new ArrayList<>(table.rows().size());
    for (ProcedureTable.Row row : table.rows()) {
      cells.add(((InputCell.Linked) row.inputs().get(input)).target().at());
    }
    return cells;
  }

  private static void requireOneColumn(List<CellAddress> cells, Input input) {
    CellAddress first = cells.get(0);
    for (CellAddress cell : cells) {
      if (cell.column() != first.column() || !cell.sheet().equals(first.sheet())) {
        throw new IllegalArgumentException(
            "The inline input "
                + input.symbol().symbol()
                + " is taken from "
                + first
                + " and from "
                + cell
                + "; inline cells must stand in one column of one sheet. Maybe show the input.");
      }
    }
  }

  boolean has(int input) {
    return targets.containsKey(input);
  }

  /** Whether every row takes the input from the same cell. */
  boolean isFixed(int input) {
    return !keyOf.containsKey(input);
  }

  /** The cell that a row takes the input from. */
  CellAddress target(int input, int row) {
    return cellsOf(input).get(row);
  }

  /** All cells that rows take the input from, as one range. */
  CellRange span(int input) {
    List<CellAddress> cells = cellsOf(input);
    CellAddress low = cells.get(0);
    CellAddress high = low;
    for (CellAddress cell : cells) {
      low = cell.row() < low.row() ? cell : low;
      high = cell.row() > high.row() ? cell : high;
    }
    return low.to(high);
  }

  List<Key> keys() {
    return keys;
  }

  /** Which of {@link #keys} an input that is not fixed moves by. */
  int keyIndex(int input) {
    return keys.indexOf(keyOf.get(input));
  }

  private List<CellAddress> cellsOf(int input) {
    List<CellAddress> cells = targets.get(input);
    if (cells == null) {
      throw new IllegalArgumentException("Input " + input + " is not inline.");
    }
    return cells;
  }
}
