package spanledger.workbook.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import spanledger.quantity.Dimension;

/** Tables and lists of cells of any kind. */
class DataTableTest {

  private static final List<Column> COLUMNS =
      List.of(
          Column.text("node", 8),
          Column.number("F", "load", Dimension.FORCE),
          Column.number("2F", "twice the load", Dimension.FORCE));

  private static DataTable table(String formula) {
    return new DataTable(
        "Loads",
        COLUMNS,
        List.of(
            List.of(LedgerCell.text("K1"), LedgerCell.solved(5), LedgerCell.live(formula, 10))));
  }

  @Test
  void formulasNameCellsOfTheirRowByHeading() {
    try (LedgerWorkbook book = LedgerWorkbook.parsingFormulas(SampleWorkbook.IDENTITY)) {
      DataCells cells = book.sheet("Loads").add(table("2*{F}"));
      assertThat(cells.number(0, "2F").value()).isEqualTo(10);
      try (ReadBack back = ReadBack.of(book.toBytes())) {
        assertThat(back.cell(cells.address(0, "2F")).getCellFormula()).isEqualTo("2*B5");
      }
    }
  }

  @Test
  void theHeaderOfOneTableIsNotRepeatedOverAnother() {
    try (ReadBack one = ReadBack.of(book -> book.sheet("Loads").add(table("2*{F}")))) {
      assertThat(one.workbook().getSheet("Loads").getRepeatingRows()).isNotNull();
      assertThat(one.workbook().getSheet("Loads").getPaneInformation().isFreezePane()).isTrue();
    }
    try (ReadBack two =
        ReadBack.of(
            book -> {
              LedgerSheet sheet = book.sheet("Loads");
              sheet.add(table("2*{F}"));
              sheet.add(table("{F}+{F}"));
            })) {
      assertThat(two.workbook().getSheet("Loads").getRepeatingRows()).isNull();
      assertThat(two.workbook().getSheet("Loads").getPaneInformation().getHorizontalSplitPosition())
          .as("rows in sight")
          .isZero();
    }
  }

  @Test
  void aHeadingThatIsNotThereIsNamed() {
    try (LedgerWorkbook book = LedgerWorkbook.of(SampleWorkbook.IDENTITY)) {
      LedgerSheet sheet = book.sheet("Loads");
      assertThatThrownBy(() -> sheet.add(table("2*{G}"))).hasMessageContaining("column G");
    }
  }

  @Test
  void wordsAreNoNumber() {
    try (LedgerWorkbook book = LedgerWorkbook.of(SampleWorkbook.IDENTITY)) {
      DataCells cells = book.sheet("Loads").add(table("2*{F}"));
      assertThatThrownBy(() -> cells.number(0, "node")).hasMessageContaining("no number");
      assertThatThrownBy(() -> cells.number(1, "F")).hasMessageContaining("no row 1");
    }
  }

  @Test
  void aShortRowIsNamed() {
    assertThatThrownBy(
            () -> new DataTable("Loads", COLUMNS, List.of(List.of(LedgerCell.text("K1")))))
        .hasMessageContaining("Row 1 of the table \"Loads\" has 1 cells for 3 columns");
  }

  @Test
  void aGivenNumberNeedsASource() {
    assertThatThrownBy(() -> Entry.number("load", "F", LedgerCell.given(3), Dimension.FORCE))
        .hasMessageContaining("\"load\" needs a source");
  }

  @Test
  void givenNumbersInATableNeedASource() {
    List<List<LedgerCell>> rows = List.of(List.of(LedgerCell.given(3), LedgerCell.text("survey")));
    Column load = Column.number("F", "load", Dimension.FORCE);
    assertThatThrownBy(
            () -> new DataTable("Loads", List.of(load, Column.wrapped("remark", 20)), rows))
        .hasMessageContaining("under F in the table \"Loads\" need a source");
    assertThat(new DataTable("Loads", List.of(load, Column.wrapped("source", 20)), rows).rows())
        .hasSize(1);
  }

  @Test
  void aValueThatIsNoNumberIsRefused() {
    try (LedgerWorkbook book = LedgerWorkbook.of(SampleWorkbook.IDENTITY)) {
      LedgerSheet sheet = book.sheet("Loads");
      Entry entry = Entry.number("load", "F", LedgerCell.solved(Double.NaN), Dimension.FORCE);
      assertThatThrownBy(() -> sheet.add(new EntryList("", List.of(entry))))
          .hasMessageContaining("Loads!$C$1 is NaN");
    }
  }

  @Test
  void namesOfCellsHaveAPrefixAndAreUnique() {
    try (LedgerWorkbook book = LedgerWorkbook.of(SampleWorkbook.IDENTITY)) {
      CellAddress cell = new CellAddress("Loads", 0, 0);
      assertThatThrownBy(() -> book.name("W1", cell)).hasMessageContaining("must be sl_");
      assertThatThrownBy(() -> book.name("sl_a-b", cell)).hasMessageContaining("must be sl_");
      book.name("sl_load", cell);
      assertThatThrownBy(() -> book.name("SL_LOAD", cell)).hasMessageContaining("must be sl_");
      assertThatThrownBy(() -> book.name("sl_Load", cell)).hasMessageContaining("given twice");
    }
  }
}
