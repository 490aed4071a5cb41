package spanledger.tables;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Unit;
import spanledger.quantity.Dimension;
import tech.units.indriya.AbstractUnit;

/**
 * A unit as written: symbols with whole exponents, multiplied, then divided, for example {@code
 * kN*m/rad}.
 *
 * @param unit the unit
 * @param dimension its dimension in the core
 */
record UnitExpression(Unit<?> unit, Dimension dimension) {

  private static final Pattern FACTOR =
      Pattern.compile("([^0-9⁰¹²³⁴⁵⁶⁷⁸⁹^]+)\\^?([0-9⁰¹²³⁴⁵⁶⁷⁸⁹]?)");
  private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

  /** No unit at all. */
  static final UnitExpression NONE = new UnitExpression(AbstractUnit.ONE, Dimension.NONE);

  /**
   * Reads a unit.
   *
   * @throws QuantityFormatException if a symbol is unknown or the form is not understood
   */
  static UnitExpression parse(String text) {
    String[] parts = text.split("/", -1);
    UnitExpression result = NONE;
    for (String factor : parts[0].split("[*·⋅]", -1)) {
      UnitExpression one = factor(factor.strip(), text);
      result =
          new UnitExpression(result.unit.multiply(one.unit), result.dimension.times(one.dimension));
    }
    for (int i = 1; i < parts.length; i++) {
      UnitExpression one = factor(parts[i].strip(), text);
      result =
          new UnitExpression(result.unit.divide(one.unit), result.dimension.per(one.dimension));
    }
    return result;
  }

  private static UnitExpression factor(String factor, String whole) {
    Matcher matcher = FACTOR.matcher(factor);
    if (!matcher.matches()) {
      throw new QuantityFormatException(
          "the unit \"" + whole + "\" is not understood", "", "Write it like kN/m2 or kN*m/rad.");
    }
    String symbol = matcher.group(1);
    KnownUnits.Known known = KnownUnits.bySymbol().get(symbol);
    if (known == null) {
      throw new QuantityFormatException(
          "the unit \"" + symbol + "\" is unknown",
          "",
          NearMiss.question(symbol, KnownUnits.bySymbol().keySet())
              + "Known units: "
              + String.join(", ", KnownUnits.bySymbol().keySet())
              + ".");
    }
    int exponent = exponent(matcher.group(2));
    return new UnitExpression(known.unit().pow(exponent), known.dimension().power(exponent));
  }

  private static int exponent(String digit) {
    if (digit.isEmpty()) {
      return 1;
    }
    int raised = SUPERSCRIPTS.indexOf(digit);
    return raised >= 0 ? raised : Integer.parseInt(digit);
  }
}
