package spanledger.workbook.layout;

/** Explains what the looks of cells mean. */
public record Legend() implements Block<Integer> {

  private record Line(String kind, CellRole role, String sample, String words) {}

  private static final Line[] LINES = {
    new Line("given number", CellRole.GIVEN, "12.5", "boxed; its source stands beside or above it"),
    new Line("formula", CellRole.FORMULA, "12.5", "not boxed; select the cell to read or trace it"),
    new Line(
        "solver value", CellRole.SOLVED, "12.5", "dotted box; residuals in the workbook prove it"),
    new Line(
        "residual",
        CellRole.RESIDUAL,
        "1.2E-09",
        "slanted; what an equation leaves over, zero but for rounding"),
    new Line("choice", CellRole.DRIVER, "7", "thick box; a number to change to see another row"),
    new Line(
        "judgement",
        CellRole.OUTCOME,
        "pass",
        "what is bad or open is in capitals: FAIL, DIFFERS, NOT CHECKED"),
    new Line(
        "units",
        CellRole.UNIT,
        "N, mm",
        "N, mm, N·mm, MPa (N/mm²), kg, rad throughout; without a unit: a pure number"),
  };

  /** The number of lines written. */
  @Override
  public Integer writeTo(LedgerSheet sheet) {
    sheet.heading("Legend");
    for (Line line : LINES) {
      int row = sheet.take(1);
      sheet.cells().text(row, 0, CellRole.UNRULED, sheet.styles(), line.kind());
      sheet.cells().text(row, 1, line.role(), sheet.styles(), line.sample());
      sheet.cells().text(row, 2, CellRole.UNRULED, sheet.styles(), " " + line.words());
    }
    return LINES.length;
  }
}
