package spanledger.workbook.layout;

/**
 * A number that stands in a cell, so that later formulas can refer to it and know its result.
 *
 * @param at the cell
 * @param value its value, in core units
 */
public record NumberAt(CellAddress at, double value) {

  /** As a formula on the given sheet refers to it. */
  public String from(String formulaSheet) {
    return at.from(formulaSheet);
  }
}
