package spanledger.workbook.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spanledger.quantity.Dimension;

/** How many digits are shown: five significant ones of the largest number, four of ratios. */
class NumberPatternTest {

  @ParameterizedTest
  @CsvSource({
    "12345.6, '#,##0.0_)'",
    "345.6, '#,##0.00_)'",
    "-1.25, '#,##0.0000_)'",
    "0, '#,##0.0_)'",
    "2.5e9, 0.0000E+00_)",
    "1e-5, 0.0000E+00_)",
    // rounding left over: as if it were nothing
    "1e-9, '#,##0.0_)'",
  })
  void forces(double greatest, String code) {
    assertThat(NumberPattern.of(Dimension.FORCE, greatest).code()).isEqualTo(code);
  }

  @ParameterizedTest
  @CsvSource({"8000000, '#,##0_)'", "950.5, '#,##0.00_)'", "1.2e12, 0.0000E+00_)"})
  void moments(double greatest, String code) {
    assertThat(NumberPattern.of(Dimension.MOMENT, greatest).code()).isEqualTo(code);
  }

  @ParameterizedTest
  @CsvSource({"0.83, '#,##0.0000_)'", "1.02, '#,##0.000_)'", "70000, '#,##0.000_)'"})
  void ratios(double greatest, String code) {
    assertThat(NumberPattern.of(Dimension.NONE, greatest).code()).isEqualTo(code);
  }

  @ParameterizedTest
  @CsvSource({
    "250, '#,##0_)'",
    "1.1, '#,##0.0_)'",
    "0.002, '#,##0.000_)'",
    "1e-7, 0.0000E+00_)",
    "0, '#,##0_)'",
    // at most seven decimals
    "0.3333333333333333, '#,##0.0000000_)'",
  })
  void givenNumbersOfAllKinds(double value, String code) {
    assertThat(NumberPattern.asGiven(value).code()).isEqualTo(code);
  }

  @ParameterizedTest
  @CsvSource({"3000, '#,##0.00_)'", "12.34, '#,##0.000_)'", "0.02, '#,##0.000000_)'"})
  void lengths(double greatest, String code) {
    assertThat(NumberPattern.of(Dimension.LENGTH, greatest).code()).isEqualTo(code);
  }

  /** Eight digits are as wide as a column; more decimals than that leave only hash signs. */
  @ParameterizedTest
  @CsvSource({
    "350, '#,##0.000_)'",
    "457832.1, '#,##0.00_)'",
    "2460937.5, '#,##0.0_)'",
    "14838000, '#,##0_)'"
  })
  void stiffnesses(double greatest, String code) {
    assertThat(NumberPattern.of(Dimension.LINE_LOAD, greatest).code()).isEqualTo(code);
  }
}
