package spanledger.workbook.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spanledger.quantity.Dimension;

/** Numbers as text of five significant digits. */
class RoundedTextTest {

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "250, 250",
    "-2.33652, (-2.3365)",
    "1234567, 1234600",
    "0.00123456, 0.0012346",
    "0.000123456, 1.2346E-4",
    "12345678, 1.2346E7",
    // A tie of the decimal number goes up although the binary number lies just below it.
    "2.00005, 2.0001",
    "-1e-12, (-1E-12)",
  })
  void readsWell(double value, String text) {
    assertThat(RoundedText.of(value)).isEqualTo(text);
  }

  /** Random numbers over 30 orders of magnitude, with a fixed seed. */
  @Test
  void theLiveFormulaGivesTheSameText() {
    Random random = new Random(11);
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(30) - 15);
      String formula = RoundedText.formula("$C$" + (2 * i + 1));
      entries.add(Entry.number("number " + i, "", LedgerCell.solved(value), Dimension.NONE));
      entries.add(
          Entry.number(
              "text " + i,
              "",
              new LedgerCell.LiveText(formula, RoundedText.of(value)),
              Dimension.NONE));
    }
    try (ReadBack back =
        ReadBack.of(book -> book.sheet("Numbers").add(new EntryList("", entries)))) {
      FormulaEvaluator engine = back.workbook().getCreationHelper().createFormulaEvaluator();
      assertThat(back.formulas()).hasSize(300);
      back.formulas()
          .forEach(
              cell ->
                  assertThat(engine.evaluate(cell).getStringValue())
                      .isEqualTo(cell.getStringCellValue()));
    }
  }
}
