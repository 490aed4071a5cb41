package spanledger.workbook.content;

import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;

/** Where the numbers of one load stand: size and moments in a table, direction in another. */
final class LoadCells {

  private final ProcedureCells sizes;
  private final int row;
  private final NumberAt[] direction;

  private LoadCells(ProcedureCells sizes, int row, NumberAt[] direction) {
    this.sizes = sizes;
    this.row = row;
    this.direction = direction;
  }

  /** A load whose direction is worked out from global axes. */
  static LoadCells global(ProcedureCells sizes, int row, ProcedureCells directions, int at) {
    return new LoadCells(
        sizes,
        row,
        new NumberAt[] {
          directions.number(at, "d_x"), directions.number(at, "d_y"), directions.number(at, "d_z")
        });
  }

  /** A load whose direction is given in the segment's axes. */
  static LoadCells local(ProcedureCells sizes, int row, DataCells directions, int at) {
    return new LoadCells(
        sizes,
        row,
        new NumberAt[] {
          directions.number(at, "d_x"), directions.number(at, "d_y"), directions.number(at, "d_z")
        });
  }

  /** Part of the load along local axis 0, 1 or 2. */
  NumberAt direction(int axis) {
    return direction[axis];
  }

  /** An input or step of the load's moments, for example q_1 or m_2. */
  NumberAt number(String symbol) {
    return sizes.number(row, symbol);
  }
}
