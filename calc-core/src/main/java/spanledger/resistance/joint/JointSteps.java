package spanledger.resistance.joint;

import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.max;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Condition;
import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Writes procedures of joints with the same words for the same symbol everywhere. */
final class JointSteps {

  /** Below this a resistance counts as this, so that a use of nothing is large, not undefined. */
  private static final Expression LEAST = constant(1, Dimension.FORCE);

  private final Procedure.Builder builder;

  JointSteps(String name, String title) {
    builder = Procedure.named("joint-" + name, title);
  }

  Reference size(String symbol, String words) {
    return builder.input(symbol, words, Dimension.LENGTH, Domain.POSITIVE);
  }

  /** A length of at least 0. */
  Reference length(String symbol, String words) {
    return builder.input(symbol, words, Dimension.LENGTH, Domain.NOT_NEGATIVE);
  }

  Reference area(String symbol, String words) {
    return builder.input(symbol, words, Dimension.AREA, Domain.POSITIVE);
  }

  /** An area of at least 0. */
  Reference area0(String symbol, String words) {
    return builder.input(symbol, words, Dimension.AREA, Domain.NOT_NEGATIVE);
  }

  Reference strength(String symbol, String words) {
    return builder.input(symbol, words, Dimension.STRESS, Domain.POSITIVE);
  }

  /** A force whose direction does not matter. */
  Reference force(String symbol, String words) {
    return builder.input(symbol, words, Dimension.FORCE, Domain.NOT_NEGATIVE);
  }

  Reference moment(String symbol, String words) {
    return builder.input(symbol, words, Dimension.MOMENT, Domain.NOT_NEGATIVE);
  }

  /** A number above 0. */
  Reference factor(String symbol, String words) {
    return builder.input(symbol, words, Dimension.NONE, Domain.POSITIVE);
  }

  /** A count or ratio of at least 0. */
  Reference number0(String symbol, String words) {
    return builder.input(symbol, words, Dimension.NONE, Domain.NOT_NEGATIVE);
  }

  /** From 0 to below 1. */
  Reference part(String symbol, String words) {
    return builder.input(symbol, words, Dimension.NONE, new Domain(0, true, 0.99));
  }

  /** 1 for yes, 0 for no. */
  Reference yes(String symbol, String words) {
    return builder.input(symbol, words + ": 1 yes, 0 no", Dimension.NONE, Domain.FRACTION);
  }

  Reference step(String symbol, String words, Expression formula, Source source) {
    return builder.step(symbol, words, formula.dimension(), formula, source);
  }

  /** How much of a resistance to forces is used. */
  Reference use(String symbol, String words, Expression demand, Expression capacity, Source from) {
    return step(symbol, words + ", use", demand.over(max(capacity, LEAST)), from);
  }

  /** How much of bending and shear of a rectangular part is used, both from one force. */
  Reference bendingAndShear(
      String symbol, String words, Reference force, Reference bending, Reference shear) {
    Source source =
        Source.fromMemory("D. C. Drucker, J. Appl. Mech. 23 (1956)", "beam of rectangular section");
    Reference both =
        step(
            "both",
            "bending and shear together",
            force.over(bending).plus(force.over(shear).pow(4)),
            source);
    Reference most = step("both_Rd", "most that they may be", number(1), source);
    return step(symbol, words + ", use", both.over(most), source);
  }

  Procedure build() {
    return builder.build();
  }

  static Condition isYes(Reference yes) {
    return greater(yes, number(0.5));
  }

  /** Whether a length that may be 0 for none is there. */
  static Condition isThere(Reference length) {
    return greater(length, constant(0, Dimension.LENGTH));
  }
}
