package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/** Shear resistance from the shear area. */
final class Shear {

  static final Procedure PROCEDURE = define();

  private Shear() {}

  private static Procedure define() {
    Steps p = new Steps("shear", "Shear resistance of a section, EN 1999-1-1");
    Reference area =
        p.positive("A_1", "walls along the force, area of a bar or tube", Dimension.AREA);
    Reference part = p.factor("k_v", "part of it that carries shear");
    Reference strength = p.proofStrength();
    Reference partial = p.yieldFactor();
    Reference shear =
        p.step("A_v", "shear area", part.times(area), Clause.of("6.2.6(2), eq. 6.30, 6.31"));
    p.step(
        "V_Rd",
        "shear resistance",
        shear.times(strength).over(sqrt(number(3)).times(partial)),
        Clause.of("6.2.6(2), eq. 6.29"));
    return p.build();
  }
}
