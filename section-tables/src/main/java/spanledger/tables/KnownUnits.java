package spanledger.tables;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import javax.measure.Unit;
import spanledger.quantity.Dimension;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/**
 * The unit symbols that may be written, and the core unit of every dimension.
 *
 * <p>Inch, pound-force and their multiples are exact by definition: in = 25.4 mm; lbf = 0.45359237
 * kg · 9.80665 m/s² (NIST SP 811, appendix B).
 */
final class KnownUnits {

  /** A unit symbol: what it stands for and its dimension in the core. */
  record Known(Unit<?> unit, Dimension dimension) {}

  private static final Dimension TIME = Dimension.whole(0, 0, 0, 1);
  private static final Unit<?> MM = Units.METRE.divide(1000);
  private static final Map<String, Known> ALL = all();

  private KnownUnits() {}

  /** All symbols, in order. */
  static Map<String, Known> bySymbol() {
    return ALL;
  }

  /** The unit in which the core holds quantities of a dimension with whole exponents. */
  static Unit<?> core(Dimension dimension) {
    return AbstractUnit.ONE
        .multiply(MM.pow(dimension.length() / 12))
        .multiply(Units.NEWTON.pow(dimension.force() / 12))
        .multiply(Units.KILOGRAM.pow(dimension.mass() / 12))
        .multiply(Units.SECOND.pow(dimension.time() / 12));
  }

  private static Map<String, Known> all() {
    Map<String, Known> known = new TreeMap<>();
    Unit<?> inch = Units.METRE.multiply(new BigDecimal("0.0254"));
    Unit<?> foot = inch.multiply(12);
    Unit<?> pound = Units.NEWTON.multiply(new BigDecimal("4.4482216152605"));
    Unit<?> kip = pound.multiply(1000);
    Unit<?> kilonewton = Units.NEWTON.multiply(1000);

    put(known, Dimension.LENGTH, "mm", MM);
    put(known, Dimension.LENGTH, "cm", Units.METRE.divide(100));
    put(known, Dimension.LENGTH, "m", Units.METRE);
    put(known, Dimension.LENGTH, "in", inch);
    put(known, Dimension.LENGTH, "ft", foot);

    put(known, Dimension.FORCE, "N", Units.NEWTON);
    put(known, Dimension.FORCE, "kN", kilonewton);
    put(known, Dimension.FORCE, "MN", kilonewton.multiply(1000));
    put(known, Dimension.FORCE, "lbf", pound);
    put(known, Dimension.FORCE, "kip", kip);

    put(known, Dimension.MOMENT, "Nmm", Units.NEWTON.multiply(MM));
    put(known, Dimension.MOMENT, "Nm", Units.NEWTON.multiply(Units.METRE));
    put(known, Dimension.MOMENT, "kNm", kilonewton.multiply(Units.METRE));

    put(known, Dimension.STRESS, "Pa", Units.PASCAL);
    put(known, Dimension.STRESS, "kPa", Units.PASCAL.multiply(1000));
    put(known, Dimension.STRESS, "MPa", Units.PASCAL.multiply(1_000_000));
    put(known, Dimension.STRESS, "GPa", Units.PASCAL.multiply(1_000_000_000));
    put(known, Dimension.STRESS, "psi", pound.divide(inch.pow(2)));
    put(known, Dimension.STRESS, "ksi", kip.divide(inch.pow(2)));
    put(known, Dimension.STRESS, "psf", pound.divide(foot.pow(2)));
    put(known, Dimension.LINE_LOAD, "plf", pound.divide(foot));

    put(known, Dimension.MASS, "kg", Units.KILOGRAM);
    put(known, Dimension.MASS, "g", Units.GRAM);
    put(known, TIME, "s", Units.SECOND);
    put(known, TIME.power(-1), "Hz", Units.HERTZ);

    put(known, Dimension.NONE, "rad", Units.RADIAN);
    Unit<?> degree = Units.RADIAN.multiply(Math.PI).divide(180);
    put(known, Dimension.NONE, "deg", degree);
    put(known, Dimension.NONE, "°", degree);
    put(known, Dimension.NONE, "%", Units.PERCENT);
    return Collections.unmodifiableMap(known);
  }

  private static void put(
      Map<String, Known> known, Dimension dimension, String symbol, Unit<?> unit) {
    known.put(symbol, new Known(unit, dimension));
  }
}
