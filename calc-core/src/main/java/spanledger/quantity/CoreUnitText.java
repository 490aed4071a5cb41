package spanledger.quantity;

import java.util.ArrayList;
import java.util.List;

/** Writes the core unit of a dimension the way an engineer would. */
final class CoreUnitText {

  private static final int WHOLE = 12;
  private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

  private CoreUnitText() {}

  static String of(Dimension dimension) {
    if (dimension.equals(Dimension.STRESS)) {
      return "MPa";
    }
    List<String> above = new ArrayList<>();
    List<String> below = new ArrayList<>();
    add("N", dimension.force(), above, below);
    add("kg", dimension.mass(), above, below);
    add("mm", dimension.length(), above, below);
    add("s", dimension.time(), above, below);
    String numerator = String.join("·", above);
    if (below.isEmpty()) {
      return numerator;
    }
    String denominator = String.join("·", below);
    String bracketed = below.size() > 1 ? "(" + denominator + ")" : denominator;
    return (above.isEmpty() ? "1" : numerator) + "/" + bracketed;
  }

  private static void add(String unit, int twelfths, List<String> above, List<String> below) {
    if (twelfths > 0) {
      above.add(unit + exponent(twelfths));
    } else if (twelfths < 0) {
      below.add(unit + exponent(-twelfths));
    }
  }

  private static String exponent(int twelfths) {
    if (twelfths == WHOLE) {
      return "";
    }
    if (twelfths % WHOLE != 0) {
      int divisor = gcd(twelfths, WHOLE);
      return "^(" + twelfths / divisor + "/" + WHOLE / divisor + ")";
    }
    StringBuilder text = new StringBuilder();
    for (char digit : Integer.toString(twelfths / WHOLE).toCharArray()) {
      text.append(SUPERSCRIPTS.charAt(digit - '0'));
    }
    return text.toString();
  }

  private static int gcd(int a, int b) {
    return b == 0 ? a : gcd(b, a % b);
  }
}
