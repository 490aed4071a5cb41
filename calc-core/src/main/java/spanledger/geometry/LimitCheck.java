package spanledger.geometry;

import static spanledger.procedure.Formulas.max;

import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * A size against its limit. Inputs x (the size) and x_max or x_min (the limit); step η_geometry,
 * which is at most 1 where the limit is kept.
 */
public final class LimitCheck {

  private static final Source LIMITS = Source.declared("Limits of the rule set or of the job");

  /** A length that must not be greater. */
  public static final Procedure LENGTH_AT_MOST = atMost("length-at-most", Dimension.LENGTH);

  /** A length that must not be less. */
  public static final Procedure LENGTH_AT_LEAST = atLeast("length-at-least", Dimension.LENGTH);

  /** An angle (rad) or a number that must not be greater. */
  public static final Procedure NUMBER_AT_MOST = atMost("number-at-most", Dimension.NONE);

  /** An angle (rad) or a number that must not be less. */
  public static final Procedure NUMBER_AT_LEAST = atLeast("number-at-least", Dimension.NONE);

  /** The symbol of the utilisation. */
  public static final String UTILISATION = "η_geometry";

  /** A size under this share of its least value counts as this share. */
  private static final double NOTHING = 0.001;

  private LimitCheck() {}

  /** The procedure for a dimension and kind of limit. */
  public static Procedure of(Dimension dimension, boolean atMost) {
    if (dimension.equals(Dimension.LENGTH)) {
      return atMost ? LENGTH_AT_MOST : LENGTH_AT_LEAST;
    }
    return atMost ? NUMBER_AT_MOST : NUMBER_AT_LEAST;
  }

  /** The utilisation of a limit. */
  public static double utilisation(Dimension dimension, boolean atMost, double size, double limit) {
    CompiledProcedure compiled = of(dimension, atMost).compile();
    double[] slots = compiled.newSlots();
    slots[0] = size;
    slots[1] = limit;
    compiled.evaluate(slots);
    compiled.requireInDomain(slots);
    return slots[compiled.slot(UTILISATION)];
  }

  private static Procedure atMost(String name, Dimension dimension) {
    Procedure.Builder p = Procedure.named(name, "A size that must not be greater");
    Reference size = p.input("x", "the size", dimension, Domain.NOT_NEGATIVE);
    Reference limit = p.input("x_max", "the greatest allowed", dimension, Domain.POSITIVE);
    p.step(UTILISATION, "utilisation", Dimension.NONE, size.over(limit), LIMITS);
    return p.build();
  }

  private static Procedure atLeast(String name, Dimension dimension) {
    Procedure.Builder p = Procedure.named(name, "A size that must not be less");
    Reference size = p.input("x", "the size", dimension, Domain.NOT_NEGATIVE);
    Reference limit = p.input("x_min", "the least allowed", dimension, Domain.POSITIVE);
    p.step(
        UTILISATION,
        "utilisation; what is not there at all counts as a thousandth",
        Dimension.NONE,
        limit.over(max(size, limit.times(NOTHING))),
        LIMITS);
    return p.build();
  }
}
