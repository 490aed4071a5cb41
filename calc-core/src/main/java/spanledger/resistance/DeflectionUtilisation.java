package spanledger.resistance;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.min;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** Deflections against their limits. */
public final class DeflectionUtilisation {

  private static final Source CHORD = Source.derived("Geometry of small movements");

  /**
   * A floor member from the line between its ends. Inputs δ, δ_A, δ_B, ξ (place along the member
   * per length), L_m, r_lim (limit per length), δ_max (greatest allowed); steps δ_rel, δ_lim,
   * η_deflection.
   */
  public static final Procedure FLOOR = floor(true);

  /** The same where the rule set has no greatest deflection: without the input δ_max. */
  public static final Procedure FLOOR_BY_RATIO = floor(false);

  /** A rail or post point. Inputs δ, δ_max; step η_deflection. */
  public static final Procedure RAIL = rail();

  /** A point of a floor or leg, level. Inputs δ, h, r_sway; steps δ_lim, η_deflection. */
  public static final Procedure SWAY = sway();

  private DeflectionUtilisation() {}

  private static Procedure floor(boolean capped) {
    Procedure.Builder p =
        Procedure.named(
            capped ? "floor-deflection" : "floor-deflection-by-ratio",
            "Deflection of a floor member");
    Reference at = p.input("δ", "movement of the point", Dimension.LENGTH);
    Reference first = p.input("δ_A", "movement of the member's start", Dimension.LENGTH);
    Reference second = p.input("δ_B", "movement of the member's end", Dimension.LENGTH);
    Reference place =
        p.input("ξ", "place along the member per length", Dimension.NONE, Domain.FRACTION);
    Reference length = p.input("L_m", "length of the member", Dimension.LENGTH, Domain.POSITIVE);
    Reference ratio =
        p.input("r_lim", "deflection allowed per length", Dimension.NONE, Domain.POSITIVE);
    Expression byRatio = length.times(ratio);
    Expression allowed =
        capped
            ? min(
                byRatio,
                p.input("δ_max", "greatest deflection allowed", Dimension.LENGTH, Domain.POSITIVE))
            : byRatio;
    Reference relative =
        p.step(
            "δ_rel",
            "deflection from the line between the member's ends",
            Dimension.LENGTH,
            at.minus(first.plus(second.minus(first).times(place))),
            CHORD);
    Reference limit =
        p.step(
            "δ_lim",
            "deflection allowed",
            Dimension.LENGTH,
            allowed,
            Source.declared("Limits of the rule set"));
    p.step(
        "η_deflection",
        "utilisation, deflection",
        Dimension.NONE,
        abs(relative).over(limit),
        Source.declared("Limits of the rule set"));
    return p.build();
  }

  private static Procedure sway() {
    Procedure.Builder p = Procedure.named("sway-deflection", "Level movement of a floor or leg");
    Reference at = p.input("δ", "movement of the point", Dimension.LENGTH);
    Reference height =
        p.input("h", "height above the lowest support", Dimension.LENGTH, Domain.POSITIVE);
    Reference ratio =
        p.input("r_sway", "level movement allowed per height", Dimension.NONE, Domain.POSITIVE);
    Reference limit =
        p.step(
            "δ_lim",
            "level movement allowed",
            Dimension.LENGTH,
            height.times(ratio),
            Source.declared("Limits of the rule set"));
    p.step(
        "η_deflection",
        "utilisation, level movement",
        Dimension.NONE,
        abs(at).over(limit),
        Source.declared("Limits of the rule set"));
    return p.build();
  }

  private static Procedure rail() {
    Procedure.Builder p = Procedure.named("rail-deflection", "Movement of a rail or post");
    Reference at = p.input("δ", "movement of the point", Dimension.LENGTH);
    Reference most =
        p.input("δ_max", "greatest movement allowed", Dimension.LENGTH, Domain.POSITIVE);
    p.step(
        "η_deflection",
        "utilisation, deflection",
        Dimension.NONE,
        abs(at).over(most),
        Source.declared("Limits of the rule set"));
    return p.build();
  }
}
