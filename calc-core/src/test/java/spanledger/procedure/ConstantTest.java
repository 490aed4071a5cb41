package spanledger.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static spanledger.procedure.Formulas.number;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spanledger.quantity.Dimension;

/** A constant is the same number in Java, in a spreadsheet and in print. */
class ConstantTest {

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "3, 3",
    "-70000, -70000",
    "0.1, 0.1",
    "1.1, 1.1",
    "123456789012345, 123456789012345",
    "1234567890.5, 1234567890.5",
    "1E15, 1E15",
    "2E23, 2E23",
    "1.5E-5, 0.000015",
    "1.25E-6, 1.25E-6",
    "-7.85E-6, -7.85E-6",
    "1E300, 1E300"
  })
  void isWrittenInTheShortestWayThatReadsBack(double value, String expected) {
    String text =
        SpreadsheetFormula.of(
            number(value),
            r -> {
              throw new AssertionError("no references");
            });
    assertThat(text).isEqualTo(expected);
    assertThat(Double.parseDouble(text)).isEqualTo(value + 0.0);
  }

  @Test
  void ofFifteenDigitsIsTaken() {
    assertThat(number(0.333333333333333)).isNotNull();
    assertThat(number(999_999_999_999_999d)).isNotNull();
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.0 / 3, Math.PI, 1234567890123456d, 0.1 + 0.2})
  void ofMoreThanFifteenDigitsIsRefused(double value) {
    assertThatThrownBy(() -> number(value))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "A constant has more than 15 significant digits, found "
                + value
                + "; round it or write it as a formula.");
  }

  @ParameterizedTest
  @ValueSource(
      doubles = {Double.NaN, Double.POSITIVE_INFINITY, 1e301, -1e301, 1e-301, Double.MIN_VALUE})
  void outsideTheRangeOfSpreadsheetsIsRefused(double value) {
    assertThatThrownBy(() -> number(value))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("A constant must be ")
        .hasMessageEndingWith("found " + value + ".");
  }

  @Test
  void inATableObeysTheSameRules() {
    assertThatThrownBy(() -> new Interpolation.Row(1.0 / 3, 1))
        .hasMessageStartingWith("A number in a table has more than 15 significant digits");
    assertThatThrownBy(() -> new Interpolation.Row(1, Double.NaN))
        .hasMessage("A number in a table must be finite, found NaN.");
  }

  @Test
  void tablesHaveIncreasingRows() {
    Reference x = new Reference("x", Dimension.NONE);
    assertThatThrownBy(() -> table(x, new Interpolation.Row(0, 1)))
        .hasMessage("A table to interpolate in needs 2 to 50 rows, found 1.");
    assertThatThrownBy(() -> table(x, new Interpolation.Row(1, 1), new Interpolation.Row(1, 2)))
        .hasMessage("Rows of a table must increase, found 1.0 then 1.0.");
  }

  @Test
  void aPowerZeroIsRefused() {
    assertThatThrownBy(() -> new Reference("x", Dimension.NONE).pow(0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("x cannot be raised to the power zero; write the number 1.");
  }

  private static Interpolation table(Reference x, Interpolation.Row... rows) {
    return new Interpolation(List.of(rows), x, Dimension.NONE, Dimension.NONE);
  }
}
