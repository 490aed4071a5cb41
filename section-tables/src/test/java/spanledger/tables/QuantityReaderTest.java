package spanledger.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spanledger.quantity.Dimension;

class QuantityReaderTest {

  private static final Map<String, Dimension> DIMENSIONS =
      Map.ofEntries(
          Map.entry("number", Dimension.NONE),
          Map.entry("length", Dimension.LENGTH),
          Map.entry("area", Dimension.AREA),
          Map.entry("modulus", Dimension.SECTION_MODULUS),
          Map.entry("inertia", Dimension.SECOND_MOMENT),
          Map.entry("warping", Dimension.WARPING_CONSTANT),
          Map.entry("force", Dimension.FORCE),
          Map.entry("moment", Dimension.MOMENT),
          Map.entry("stress", Dimension.STRESS),
          Map.entry("line", Dimension.LINE_LOAD),
          Map.entry("density", Dimension.DENSITY),
          Map.entry("mass/length", Dimension.MASS_PER_LENGTH),
          Map.entry("frequency", Dimension.whole(0, 0, 0, -1)),
          Map.entry("gravity", Dimension.FORCE_PER_MASS));

  /** Powers of ten are exact, so metric conversions must give the very number that Java reads. */
  @ParameterizedTest
  @CsvSource({
    "1200 mm, length, 1200",
    "1.2m, length, 1200",
    "12 cm, length, 120",
    "2.5 kN/m2, stress, 0.0025",
    "2.5 kN/m², stress, 0.0025",
    "2.5 kN/m^2, stress, 0.0025",
    "2.5 kPa, stress, 0.0025",
    "1.1 kN, force, 1100",
    "12 kN*m/rad, moment, 12e6",
    "12 kN·m, moment, 12e6",
    "12 kNm, moment, 12e6",
    "0.35 kN/m, line, 0.35",
    "0.15 kN/m, line, 0.15",
    "70 GPa, stress, 70000",
    "70000 N/mm2, stress, 70000",
    "70000 N/mm/mm, stress, 70000",
    "2700 kg/m3, density, 2.7e-6",
    "1.8 kg/m, mass/length, 0.0018",
    "6.1 cm4, inertia, 61000",
    "12.4 cm3, modulus, 12400",
    "5 cm6, warping, 5e6",
    "1/200, number, 0.005",
    "1.5 %, number, 0.015",
    "0.7, number, 0.7",
    "-3 mm, length, -3",
    "1e3 mm, length, 1000",
    "5 Hz, frequency, 5",
    "9.80665 N/kg, gravity, 9.80665",
  })
  void metricTextsGiveTheNumberExactly(String text, String kind, double expected) {
    assertThat(QuantityReader.read(text, dimension(kind))).isEqualTo(expected);
  }

  /**
   * Factors from NIST SP 811 appendix B.8 (ft = 304.8 mm, lbf = 4.448 222 N, ksi = 6.894 757 MPa,
   * psf = 47.880 26 Pa, lbf/ft = 14.593 90 N/m); relative tolerance 5e-7, half a unit of the
   * seventh digit printed there.
   */
  @ParameterizedTest
  @CsvSource({
    "1 in, length, 25.4",
    "1 ft, length, 304.8",
    "200 lbf, force, 889.6443",
    "1 kip, force, 4448.222",
    "1 ksi, stress, 6.894757",
    "1000 psi, stress, 6.894757",
    "1 psf, stress, 47.88026e-6",
    "1 lbf/ft, line, 0.01459390",
    "1 plf, line, 0.01459390",
    "1 in4, inertia, 416231.4",
  })
  void inchAndPoundTextsGiveThePublishedFactors(String text, String kind, double expected) {
    assertThat(QuantityReader.read(text, dimension(kind)))
        .isCloseTo(expected, within(5e-7 * expected));
  }

  /** A right angle is π/2; one rounding of π is the only error. */
  @Test
  void degreesAreReadAsRadians() {
    assertThat(QuantityReader.read("90 deg", Dimension.NONE)).isEqualTo(Math.PI / 2);
    assertThat(QuantityReader.read("30°", Dimension.NONE))
        .isCloseTo(Math.PI / 6, within(Math.ulp(1.0)));
    assertThat(QuantityReader.read("0.5 rad", Dimension.NONE)).isEqualTo(0.5);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2.5 | force | \"2.5\" has no unit; expected a force, for example 1.1 kN.",
        "2.5 kN/m | stress | \"2.5 kN/m\" is a line load or spring stiffness; expected a stress, modulus or area load, for example 2.5 kN/m2.",
        "3 mm | number | \"3 mm\" is a length; expected a plain number, ratio or angle, for example 1.5, 1/200, 30 deg.",
        "fast | length | \"fast\" does not begin with a number; expected a length, for example 1200 mm.",
        "'' | length | \"\" does not begin with a number; expected a length, for example 1200 mm.",
        "NaN mm | length | \"NaN mm\" does not begin with a number; expected a length, for example 1200 mm.",
        "1,5 kN | force | \"1,5 kN\" is not a number; decimals take one point, and thousands no sign; expected a force, for example 1.1 kN.",
        "1.2.3 kN | force | \"1.2.3 kN\" is not a number; decimals take one point, and thousands no sign; expected a force, for example 1.1 kN.",
        "1e999 mm | length | \"1e999 mm\" is too large a number; expected a length, for example 1200 mm.",
        "1e308 m | length | \"1e308 m\" is too large a number; expected a length, for example 1200 mm.",
        "1/0 | number | \"1/0\" divides by zero; expected a plain number, ratio or angle, for example 1.5, 1/200, 30 deg.",
        "3 m2m | area | \"3 m2m\": the unit \"m2m\" is not understood; expected an area, for example 480 mm2. Write it like kN/m2 or kN*m/rad.",
        "3 kN/ | force | \"3 kN/\": the unit \"kN/\" is not understood; expected a force, for example 1.1 kN. Write it like kN/m2 or kN*m/rad.",
      })
  void faultsAreToldInOneLine(String text, String kind, String message) {
    assertThatThrownBy(() -> QuantityReader.read(text, dimension(kind)))
        .isInstanceOf(QuantityFormatException.class)
        .hasMessage(message);
  }

  @Test
  void anUnknownUnitIsNamedWithTheOneProbablyMeant() {
    assertThatThrownBy(() -> QuantityReader.read("3 kn", Dimension.FORCE))
        .isInstanceOf(QuantityFormatException.class)
        .hasMessageStartingWith(
            "\"3 kn\": the unit \"kn\" is unknown; expected a force, for example 1.1 kN."
                + " Did you mean kN?")
        .hasMessageContaining("Known units: %, GPa, Hz");
  }

  /** What a double prints must come back as the same double when no conversion is needed. */
  @Property
  void coreUnitsKeepEveryDigit(@ForAll @DoubleRange(min = -1e12, max = 1e12) double value) {
    assertThat(QuantityReader.read(value + " mm", Dimension.LENGTH)).isEqualTo(value);
  }

  /** A tiny number must not cost unbounded work; it is zero as a double. */
  @Test
  void aNumberTooSmallForADoubleIsZero() {
    assertThat(QuantityReader.read("1e-999999999 m", Dimension.LENGTH)).isZero();
  }

  private static Dimension dimension(String kind) {
    Dimension dimension = DIMENSIONS.get(kind);
    assertThat(dimension).as(kind).isNotNull();
    return dimension;
  }
}
