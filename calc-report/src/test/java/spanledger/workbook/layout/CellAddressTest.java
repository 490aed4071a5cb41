package spanledger.workbook.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How formulas refer to cells. */
class CellAddressTest {

  @ParameterizedTest
  @CsvSource({
    "0, A",
    "25, Z",
    "26, AA",
    "51, AZ",
    "52, BA",
    "701, ZZ",
    "702, AAA",
    "16383, XFD",
  })
  void columnsHaveLetters(int column, String letters) {
    assertThat(CellAddress.letters(column)).isEqualTo(letters);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "Members | Members!$D$7",
        "End forces | 'End forces'!$D$7",
        "Beam's ends | 'Beam''s ends'!$D$7",
        // Looks like a cell, a column, a truth value, a number.
        "AB12 | 'AB12'!$D$7",
        "RC | 'RC'!$D$7",
        "True | 'True'!$D$7",
        "2026 | '2026'!$D$7",
      })
  void sheetsAreQuotedWhereNeeded(String sheet, String address) {
    assertThat(new CellAddress(sheet, 6, 3).absolute()).isEqualTo(address);
  }

  @Test
  void withinTheSheetItIsNotNamed() {
    CellAddress cell = new CellAddress("Members", 6, 3);
    assertThat(cell.from("Members")).isEqualTo("$D$7");
    assertThat(cell.from("Joints")).isEqualTo("Members!$D$7");
    assertThat(cell.relative()).isEqualTo("D7");
    assertThat(cell.to(cell.moved(2, 1)).from("Members")).isEqualTo("$D$7:$E$9");
  }

  @Test
  void rangesLeadDownAndRight() {
    CellAddress cell = new CellAddress("Members", 6, 3);
    assertThatThrownBy(() -> cell.to(new CellAddress("Members", 5, 3)))
        .hasMessageContaining("No range leads from Members!$D$7 to Members!$D$6");
  }

  @Test
  void thereAreNoCellsBeyondTheSheet() {
    assertThatThrownBy(() -> new CellAddress("Members", 1_048_576, 0))
        .hasMessageContaining("no cell in row 1048577");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "a/b",
        "a[1]",
        "a:b",
        "'quoted'",
        "rather more than thirty-one characters"
      })
  void namesThatSpreadsheetsRefuseAreRefused(String name) {
    try (LedgerWorkbook book = LedgerWorkbook.of(SampleWorkbook.IDENTITY)) {
      assertThatThrownBy(() -> book.sheet(name)).hasMessageContaining("1 to 31 characters");
    }
  }

  @Test
  void sheetNamesDifferByMoreThanCapitals() {
    try (LedgerWorkbook book = LedgerWorkbook.of(SampleWorkbook.IDENTITY)) {
      book.sheet("Members");
      assertThatThrownBy(() -> book.sheet("MEMBERS")).hasMessageContaining("already");
    }
  }
}
