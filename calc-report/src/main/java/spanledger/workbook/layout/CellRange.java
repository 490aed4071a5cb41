package spanledger.workbook.layout;

/**
 * A rectangle of cells on one sheet.
 *
 * @param first its upper left cell
 * @param last its lower right cell
 */
public record CellRange(CellAddress first, CellAddress last) {

  public CellRange {
    if (!first.sheet().equals(last.sheet())
        || first.row() > last.row()
        || first.column() > last.column()) {
      throw new IllegalArgumentException("No range leads from " + first + " to " + last + ".");
    }
  }

  /** From any sheet, for example {@code 'End forces'!$D$7:$D$20}. */
  public String absolute() {
    return first.absolute() + ":" + last.fixed();
  }

  /** As a formula on the given sheet refers to it. */
  public String from(String formulaSheet) {
    return first.from(formulaSheet) + ":" + last.fixed();
  }

  /** How many rows it has. */
  public int rows() {
    return last.row() - first.row() + 1;
  }
}
