package spanledger.resistance.member;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.constant;
import static spanledger.procedure.Formulas.greater;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import spanledger.procedure.CompiledProcedure;
import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * A design resistance from a test or a table instead of a code: as declared, with its reference.
 *
 * @param name what it is the resistance of, for example {@code slot bolt connection, pull}
 * @param effect the effect it resists: an internal force
 * @param positive resistance to positive values of the effect, in core units
 * @param negative resistance to negative values, given as a positive number
 * @param reference the test report or table
 */
public record DeclaredResistance(
    String name, Effect effect, double positive, double negative, Source reference) {

  private static final Map<Effect, CompiledProcedure> PROCEDURES = procedures();

  /**
   * @throws IllegalArgumentException if the effect is no internal force, or a resistance is not
   *     positive
   */
  public DeclaredResistance {
    if (!PROCEDURES.containsKey(effect)) {
      throw new IllegalArgumentException(
          "Resistance " + name + " resists " + effect.words() + ", which is no internal force.");
    }
    if (!(positive > 0) || !(negative > 0)) {
      throw new IllegalArgumentException("Resistance " + name + " must be positive.");
    }
  }

  /** The check at a cut; its use is {@code η_declared}. */
  public CutCheck check() {
    String origin = "declared resistance " + name;
    return Working.of(Objects.requireNonNull(PROCEDURES.get(effect)), name + " (declared)")
        .atCut(effect)
        .given("R_pos", positive, origin, reference)
        .given("R_neg", negative, origin, reference)
        .check(new Use("η_declared", name + ", declared resistance", ""));
  }

  private static Map<Effect, CompiledProcedure> procedures() {
    Map<Effect, CompiledProcedure> procedures = new EnumMap<>(Effect.class);
    for (Effect effect : Effect.values()) {
      if (effect.ordinal() <= Effect.M_Z.ordinal()) {
        procedures.put(effect, procedure(effect).compile());
      }
    }
    return procedures;
  }

  private static Procedure procedure(Effect effect) {
    Dimension dimension = effect.dimension();
    Procedure.Builder p =
        Procedure.named(
            "declared-resistance-" + effect.name().toLowerCase(java.util.Locale.ROOT),
            "Declared resistance: " + effect.words());
    Reference force = p.input(effect.symbol(), effect.words(), dimension);
    Reference positive =
        p.input("R_pos", "declared resistance to positive values", dimension, Domain.POSITIVE);
    Reference negative =
        p.input("R_neg", "declared resistance to negative values", dimension, Domain.POSITIVE);
    Source declared = Source.declared("Test or table, as referred to beside it");
    Reference resistance =
        p.step(
            "R_d",
            "resistance that counts",
            dimension,
            choose(greater(force, constant(0, dimension)), positive, negative),
            declared);
    p.step(
        "η_declared",
        "use of the declared resistance",
        Dimension.NONE,
        abs(force).over(resistance),
        declared);
    return p.build();
  }
}
