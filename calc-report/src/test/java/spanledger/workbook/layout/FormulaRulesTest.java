package spanledger.workbook.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What formulas may contain. */
class FormulaRulesTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "A1+B1",
        "IF(A1<=1,\"pass\",\"FAIL\")",
        "SUMPRODUCT('End forces'!$A$1:$A$3,$B$1:$B$3)",
        "\"NOW(\"&A1",
        "'NOW(1)'!A1",
        "-(A1^2)",
      })
  void plainFormulasPass(String formula) {
    assertThat(FormulaRules.required(formula)).isEqualTo(formula);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "=A1 | no leading equals sign",
        "NOW() | the function NOW is none of",
        "A1+OFFSET(A1,1,1) | the function OFFSET",
        "INDIRECT(\"A1\") | the function INDIRECT",
        "IFERROR(A1,0) | the function IFERROR",
        "_xlfn.LET(A1,1) | the function _xlfn.LET",
        "MAXIFS(A:A,B:B,1) | the function MAXIFS",
        "sum(A1) | the function sum",
        "[1]Sheet1!A1 | may not contain [",
        "'[other.xlsx]Sheet1'!A1 | may not refer to another file",
        "SUM({1;2}) | may not contain {",
        "@A1 | may not contain @",
        "A1+#REF! | may not contain #",
        "\"open | is not closed",
      })
  void othersAreRefusedWithTheReason(String formula, String reason) {
    assertThatThrownBy(() -> FormulaRules.required(formula)).hasMessageContaining(reason);
  }

  @Test
  void formulasTooLongForACellAreRefused() {
    assertThatThrownBy(() -> FormulaRules.required("1" + "+1".repeat(4096)))
        .hasMessageContaining("8193 characters");
  }

  @Test
  void aTableRefusesThemWhenItIsWritten() {
    try (LedgerWorkbook book = LedgerWorkbook.of(SampleWorkbook.IDENTITY)) {
      LedgerSheet sheet = book.sheet("Basis");
      Entry now =
          Entry.number(
              "today", "", LedgerCell.live("TODAY()", 1), spanledger.quantity.Dimension.NONE);
      assertThatThrownBy(() -> sheet.add(new EntryList("", java.util.List.of(now))))
          .hasMessageContaining("TODAY");
    }
  }
}
