package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.min;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/** Axial tension: yielding of the whole section, rupture of the net one. */
final class Tension {

  static final Procedure PROCEDURE = define();

  private Tension() {}

  private static Procedure define() {
    Steps p = new Steps("tension", "Tension resistance of a section, EN 1999-1-1");
    Reference area = p.positive("A_g", "area, less what welds along it soften", Dimension.AREA);
    Reference net = p.positive("A_net", "area at the weakest cut through holes", Dimension.AREA);
    Reference strength = p.proofStrength();
    Reference ultimate = p.ultimateStrength();
    Reference counts = p.factor("k_net", "part of the net section's strength that counts");
    Reference yielding = p.yieldFactor();
    Reference rupture = p.ruptureFactor();
    Reference gross =
        p.step(
            "N_o_Rd",
            "resistance to yielding",
            area.times(strength).over(yielding),
            Clause.of("6.2.3, eq. 6.18"));
    Reference torn =
        p.step(
            "N_u_Rd",
            "resistance to rupture",
            counts.times(net).times(ultimate).over(rupture),
            Clause.of("6.2.3, eq. 6.19a"));
    p.step("N_t_Rd", "tension resistance", min(gross, torn), Clause.of("6.2.3"));
    return p.build();
  }
}
