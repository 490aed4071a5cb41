package spanledger.workbook.layout;

/** Explains what the looks of cells mean. */
public record Legend() implements Block<Integer> {

  private record Line(CellRole role, String sample, String words) {}

  private static final Line[] LINES = {
    new Line(
        CellRole.GIVEN, "12.5", "Boxed: a given number; its source stands beside or above it."),
    new Line(
        CellRole.FORMULA,
        "12.5",
        "Not boxed: a live formula; select the cell to read or trace it."),
    new Line(
        CellRole.SOLVED,
        "12.5",
        "Dotted box: a value found by the solver; residuals in the workbook prove it."),
    new Line(
        CellRole.RESIDUAL,
        "1.2E-09",
        "Slanted: a residual, what an equation leaves over; zero but for rounding."),
    new Line(CellRole.DRIVER, "7", "Thick box: a number you may change to see another row."),
    new Line(
        CellRole.OUTCOME,
        "pass",
        "A judgement; what is bad or open is in capitals: FAIL, DIFFERS, NOT CHECKED."),
  };

  /** The number of lines written. */
  @Override
  public Integer writeTo(LedgerSheet sheet) {
    sheet.heading("Legend");
    for (Line line : LINES) {
      int row = sheet.take(1);
      sheet.cells().text(row, 0, line.role(), sheet.styles(), line.sample());
      sheet.cells().text(row, 1, CellRole.UNRULED, sheet.styles(), line.words());
    }
    int units = sheet.take(1);
    sheet.cells().text(units, 0, CellRole.UNIT, sheet.styles(), "N, mm, MPa");
    sheet
        .cells()
        .text(
            units,
            1,
            CellRole.UNRULED,
            sheet.styles(),
            "Units throughout: N, mm, N·mm, MPa (N/mm²), kg, rad; a column without a unit holds pure"
                + " numbers.");
    return LINES.length + 1;
  }
}
