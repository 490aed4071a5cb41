package spanledger.picture.structure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Sizes as drawings write them. */
final class Sizes {

  /** Places nearer to each other than this are dimensioned as one, mm. */
  static final double SAME = 1;

  private Sizes() {}

  /** Millimetres, to a tenth where they are not whole. */
  static String mm(double size) {
    BigDecimal rounded =
        BigDecimal.valueOf(size).setScale(1, RoundingMode.HALF_EVEN).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  /** A level with its sign. */
  static String level(double level) {
    String words = mm(level);
    return words.equals("0")
        ? "±0"
        : words.startsWith("-") ? "−" + words.substring(1) : "+" + words;
  }

  /** The places in order, those that are as good as one taken as one. */
  static List<Double> distinct(Collection<Double> places) {
    List<Double> distinct = new ArrayList<>();
    for (double place : places.stream().sorted().toList()) {
      if (distinct.isEmpty() || place > distinct.get(distinct.size() - 1) + SAME) {
        distinct.add(place);
      }
    }
    return distinct;
  }
}
