package spanledger.workbook.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Tables with a row per case: N/A with two inputs. */
class ProcedureTableTest {

  private static final Source JOB = Source.declared("job, /loads");
  private static final CompiledProcedure STRESS = stress();

  private static CompiledProcedure stress() {
    Procedure.Builder p = Procedure.named("stress", "Axial stress");
    Reference n = p.input("N", "axial force", Dimension.FORCE);
    Reference a = p.input("A", "area", Dimension.AREA, Domain.POSITIVE);
    p.step("σ", "axial stress", Dimension.STRESS, n.over(a), Source.derived("statics"));
    return p.build().compile();
  }

  private static ProcedureTable table(int rows, BiFunction<Integer, Integer, InputCell> inputs) {
    List<ProcedureTable.Row> all = new ArrayList<>();
    for (int r = 0; r < rows; r++) {
      all.add(
          new ProcedureTable.Row(
              List.of("B" + (r + 1)), List.of(inputs.apply(r, 0), inputs.apply(r, 1))));
    }
    return new ProcedureTable("", STRESS, List.of(new ProcedureTable.Label("member", 8)), all);
  }

  private static NumberAt at(String sheet, int row, int column, double value) {
    return new NumberAt(new CellAddress(sheet, row, column), value);
  }

  private static ProcedureCells written(LedgerWorkbook book, ProcedureTable table) {
    return book.sheet("Stresses").add(table);
  }

  @Test
  void tellsWhereEachNumberStandsAndWhatItIs() {
    try (LedgerWorkbook book = LedgerWorkbook.of(SampleWorkbook.IDENTITY)) {
      ProcedureCells cells =
          written(book, table(3, (r, i) -> InputCell.literal(i == 0 ? 300 * (r + 1) : 100, JOB)));
      // Five rows of header; row number and member stand before the inputs.
      assertThat(cells.number(1, "σ")).isEqualTo(at("Stresses", 6, 4, 6));
      assertThat(cells.column("N").absolute()).isEqualTo("Stresses!$C$6:$C$8");
      assertThat(cells.label(2, 0).absolute()).isEqualTo("Stresses!$B$8");
      assertThat(cells.value(2, "σ")).isEqualTo(9);
    }
  }

  /** N of the second row is σ of the first, 300/100 = 3, so σ there is 3/100. */
  @Test
  void aRowMayTakeNumbersFromARowAboveIt() {
    try (LedgerWorkbook book = LedgerWorkbook.of(SampleWorkbook.IDENTITY)) {
      ProcedureCells cells =
          written(
              book,
              table(
                  2,
                  (r, i) ->
                      r == 1 && i == 0
                          ? InputCell.earlierRow(0, "σ", 3)
                          : InputCell.literal(i == 0 ? 300 : 100, JOB)));
      assertThat(cells.value(1, "σ")).isEqualTo(3.0 / 100);
      try (ReadBack back = ReadBack.of(book.toBytes())) {
        assertThat(back.cell(cells.number(1, "N").at()).getCellFormula()).isEqualTo("$E$6");
      }
    }
  }

  @Test
  void noRowTakesNumbersFromItselfOrBelow() {
    assertThatThrownBy(() -> table(2, (r, i) -> InputCell.earlierRow(1, "σ", 3)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("takes a number from row 2, which is not above it");
  }

  @Test
  void inlineInputsHaveNoColumn() {
    try (LedgerWorkbook book = LedgerWorkbook.of(SampleWorkbook.IDENTITY)) {
      book.sheet("Sections").skip(1);
      ProcedureCells cells =
          written(
              book,
              table(
                  2,
                  (r, i) ->
                      i == 0
                          ? InputCell.literal(300, JOB)
                          : InputCell.inline(at("Sections", 4 + r, 1, 100))));
      try (ReadBack back = ReadBack.of(book.toBytes())) {
        assertThat(back.cell(cells.number(1, "σ").at()).getCellFormula())
            .isEqualTo("D8/Sections!$B$6");
        // The key column says which row of the sections is in use; a note stands above the header.
        assertThat(back.cell(new CellAddress("Stresses", 7, 2)).getCellFormula())
            .isEqualTo("ROW(Sections!$B$6)");
      }
      assertThatThrownBy(() -> cells.column("A")).hasMessageContaining("A is inline");
    }
  }

  @Test
  void aCaseOutsideTheProceduresDomainIsNamed() {
    ProcedureTable table = table(4, (r, i) -> InputCell.literal(i == 0 ? 1 : 2 - r, JOB));
    try (LedgerWorkbook book = LedgerWorkbook.of(SampleWorkbook.IDENTITY)) {
      assertThatThrownBy(() -> written(book, table))
          .hasMessageContaining("Row 3 [B3]")
          .hasMessageContaining("area (A) is 0")
          .hasMessageContaining("greater than 0");
    }
  }

  @Test
  void anInputIsInlineInAllRowsOrInNone() {
    ProcedureTable table =
        table(
            2,
            (r, i) ->
                r == 0 ? InputCell.inline(at("Sections", 4, i, 1)) : InputCell.literal(1, JOB));
    try (LedgerWorkbook book = LedgerWorkbook.of(SampleWorkbook.IDENTITY)) {
      assertThatThrownBy(() -> written(book, table)).hasMessageContaining("in all or none");
    }
  }

  @Test
  void inlineCellsStandInOneColumn() {
    ProcedureTable table =
        table(
            2,
            (r, i) ->
                i == 0 ? InputCell.literal(1, JOB) : InputCell.inline(at("Sections", r, r, 1)));
    try (LedgerWorkbook book = LedgerWorkbook.of(SampleWorkbook.IDENTITY)) {
      assertThatThrownBy(() -> written(book, table))
          .hasMessageContaining("one column of one sheet")
          .hasMessageContaining("Sections!$A$1")
          .hasMessageContaining("Sections!$B$2");
    }
  }

  @Test
  void aRowWithTheWrongNumberOfInputsIsNamed() {
    List<ProcedureTable.Row> rows =
        List.of(new ProcedureTable.Row(List.of("B1"), List.of(InputCell.literal(1, JOB))));
    List<ProcedureTable.Label> labels = List.of(new ProcedureTable.Label("member", 8));
    assertThatThrownBy(() -> new ProcedureTable("Stresses", STRESS, labels, rows))
        .hasMessageContaining("Row 1 of the table \"Stresses\" has 1 labels and 1 inputs")
        .hasMessageContaining("stress takes 2 inputs");
  }

  @Test
  void sourcesThatDifferFromRowToRowStandAtTheRow() {
    Source measured = Source.declared("site survey");
    ProcedureTable table =
        table(2, (r, i) -> InputCell.literal(5, i == 0 && r == 1 ? measured : JOB));
    try (ReadBack back = ReadBack.of(book -> written(book, table))) {
      CellAddress end = new CellAddress("Stresses", 6, 5);
      assertThat(back.cell(end).getStringCellValue())
          .isEqualTo("N: site survey (declared in the job)");
      assertThat(back.cell(end.moved(-2, -2)).getStringCellValue())
          .as("the source common to all rows, in the header")
          .isEqualTo("job, /loads (declared in the job)");
    }
  }
}
