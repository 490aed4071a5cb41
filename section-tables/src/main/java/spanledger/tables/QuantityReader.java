package spanledger.tables;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.IncommensurableException;
import spanledger.quantity.Dimension;

/**
 * Reads quantities as people write them: a number, or a fraction of two numbers, and a unit.
 *
 * <p>Examples: {@code 1200 mm}, {@code 2.5 kN/m2}, {@code 12 kN*m/rad}, {@code 61 cm4}, {@code 35
 * ksi}, {@code 1/200}, {@code 30 deg}, {@code 1.5 %}. Decimals are converted exactly and rounded
 * once to a {@code double}.
 */
public final class QuantityReader {

  private static final String NUMBER =
      "[-+]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][-+]?[0-9]+)?";
  private static final Pattern QUANTITY =
      Pattern.compile("(" + NUMBER + ")(?:\\s*/\\s*(" + NUMBER + "))?\\s*(.*)");

  private QuantityReader() {}

  /**
   * The value in core units (mm, N, MPa, kg, s, rad).
   *
   * @param text the quantity as written
   * @param expected the dimension it must have; angles and ratios are {@link Dimension#NONE}
   * @throws QuantityFormatException if the text is not a number with a known unit of that dimension
   */
  public static double read(String text, Dimension expected) {
    Matcher matcher = QUANTITY.matcher(text.strip());
    if (!matcher.matches()) {
      throw fault(text, "does not begin with a number", expected);
    }
    String unitText = matcher.group(3);
    if (unitText.startsWith(",") || unitText.startsWith(".")) {
      throw fault(
          text, "is not a number; decimals take one point, and thousands no sign", expected);
    }
    BigDecimal number = number(matcher.group(1), text, expected);
    if (matcher.group(2) != null) {
      BigDecimal divisor = number(matcher.group(2), text, expected);
      if (divisor.signum() == 0) {
        throw fault(text, "divides by zero", expected);
      }
      number = number.divide(divisor, MathContext.DECIMAL128);
    }
    UnitExpression unit = unit(unitText, text, expected);
    if (!unit.dimension().equals(expected)) {
      String found =
          unitText.isEmpty() ? "has no unit" : "is " + DimensionWords.name(unit.dimension());
      throw fault(text, found, expected);
    }
    return finite(inCoreUnits(number, unit), text, expected);
  }

  private static BigDecimal number(String digits, String text, Dimension expected) {
    double rounded = Double.parseDouble(digits);
    if (!Double.isFinite(rounded)) {
      throw fault(text, "is too large a number", expected);
    }
    // A number too small for a double would take unbounded work to handle exactly.
    return rounded == 0 ? BigDecimal.ZERO : new BigDecimal(digits);
  }

  private static UnitExpression unit(String unitText, String text, Dimension expected) {
    try {
      return unitText.isEmpty() ? UnitExpression.NONE : UnitExpression.parse(unitText);
    } catch (QuantityFormatException e) {
      throw new QuantityFormatException(
          "\"" + text + "\": " + e.found(), DimensionWords.nameAndExample(expected), e.remedy());
    }
  }

  private static double inCoreUnits(BigDecimal number, UnitExpression unit) {
    try {
      return unit.unit()
          .getConverterToAny(KnownUnits.core(unit.dimension()))
          .convert(number)
          .doubleValue();
    } catch (IncommensurableException e) {
      throw new IllegalStateException("The unit table gives " + unit + " a wrong dimension.", e);
    }
  }

  private static double finite(double value, String text, Dimension expected) {
    if (!Double.isFinite(value)) {
      throw fault(text, "is too large a number", expected);
    }
    return value;
  }

  private static QuantityFormatException fault(String text, String what, Dimension expected) {
    return new QuantityFormatException(
        "\"" + text + "\" " + what, DimensionWords.nameAndExample(expected), "");
  }
}
