package spanledger.workbook.content;

import java.util.Optional;
import spanledger.workbook.layout.DataCells;
import spanledger.workbook.layout.NumberAt;
import spanledger.workbook.layout.ProcedureCells;

/** Where the numbers of one load stand: size and moments in a table, direction in another. */
final class LoadCells {

  private final ProcedureCells sizes;
  private final int row;
  private final NumberAt[] direction;
  private final Optional<NumberAt> upward;

  private LoadCells(
      ProcedureCells sizes, int row, NumberAt[] direction, Optional<NumberAt> upward) {
    this.sizes = sizes;
    this.row = row;
    this.direction = direction;
    this.upward = upward;
  }

  /** A load whose direction is worked out from global axes. */
  static LoadCells global(ProcedureCells sizes, int row, ProcedureCells directions, int at) {
    return new LoadCells(
        sizes,
        row,
        new NumberAt[] {
          directions.number(at, "d_x"), directions.number(at, "d_y"), directions.number(at, "d_z")
        },
        Optional.of(directions.number(at, "D_Z")));
  }

  /** A load whose direction is given in the segment's axes. */
  static LoadCells local(ProcedureCells sizes, int row, DataCells directions, int at) {
    return new LoadCells(
        sizes,
        row,
        new NumberAt[] {
          directions.number(at, "d_x"), directions.number(at, "d_y"), directions.number(at, "d_z")
        },
        Optional.empty());
  }

  /** Part of the load along local axis 0, 1 or 2. */
  NumberAt direction(int axis) {
    return direction[axis];
  }

  /** Part of the load along global Z; only of loads given in global axes. */
  NumberAt upward() {
    return upward.orElseThrow();
  }

  /** An input or step of the load's moments, for example q_1 or m_2. */
  NumberAt number(String symbol) {
    return sizes.number(row, symbol);
  }
}
