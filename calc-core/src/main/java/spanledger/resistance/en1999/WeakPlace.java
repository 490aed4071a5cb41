package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.abs;
import static spanledger.procedure.Formulas.atMost;
import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * What a weld or holes at one place leave of the resistances: how much, and whether at this cut.
 */
final class WeakPlace {

  /** Beside a weld across the member; the whole section counts as softened. */
  static final Procedure WELD = weld();

  /** At holes. */
  static final Procedure HOLES = holes();

  /** Whether the cut is there; ω_0 runs from place to place. */
  static final Procedure REACHED = reached();

  private WeakPlace() {}

  private static Procedure weld() {
    Steps p = new Steps("weld-across", "A weld across the member, EN 1999-1-1");
    Reference strength = p.proofStrength();
    Reference soft = p.positive("f_u_haz", "ultimate strength beside the weld", Dimension.STRESS);
    Reference yielding = p.yieldFactor();
    Reference rupture = p.ruptureFactor();
    p.step(
        "ω",
        "resistance beside the weld per resistance",
        min(number(1), soft.over(rupture).over(strength.over(yielding))),
        Clause.of("6.2.9.3, eq. 6.44"));
    return p.build();
  }

  private static Procedure holes() {
    Steps p = new Steps("holes", "Holes in one cut, EN 1999-1-1");
    Reference area = p.positive("A_net", "area left in the cut", Dimension.AREA);
    Reference netY = p.positive("W_net_y", "modulus left about y", Dimension.SECTION_MODULUS);
    Reference netZ = p.positive("W_net_z", "modulus left about z", Dimension.SECTION_MODULUS);
    Reference axial = p.positive("N_c_Rd", "compression resistance", Dimension.FORCE);
    Reference aboutY = p.positive("M_y_Rd", "greater moment resistance about y", Dimension.MOMENT);
    Reference aboutZ = p.positive("M_z_Rd", "greater moment resistance about z", Dimension.MOMENT);
    Reference ultimate = p.ultimateStrength();
    Reference rupture = p.ruptureFactor();
    Reference n =
        p.step(
            "ω_N",
            "axial resistance of the cut per resistance",
            area.times(ultimate).over(rupture).over(axial),
            Clause.of("6.2.4, eq. 6.22b"));
    Reference y =
        p.step(
            "ω_My",
            "moment resistance of the cut about y per resistance",
            netY.times(ultimate).over(rupture).over(aboutY),
            Clause.of("6.2.5.1, eq. 6.24"));
    Reference z =
        p.step(
            "ω_Mz",
            "moment resistance of the cut about z per resistance",
            netZ.times(ultimate).over(rupture).over(aboutZ),
            Clause.of("6.2.5.1, eq. 6.24"));
    p.step(
        "ω",
        "resistance of the cut per resistance",
        min(number(1), n, y, z),
        Clause.of("6.2.9.3, eq. 6.44; the least of the three"));
    return p.build();
  }

  private static Procedure reached() {
    Steps p = new Steps("weak-place", "Whether a cut is at a weak place, EN 1999-1-1");
    Reference x = p.place("x", "place of the cut along the member");
    Reference place = p.place("x_w", "place of the weld or holes");
    Reference reach = p.notNegative("b_w", "how far it reaches", Dimension.LENGTH);
    Reference omega =
        p.input("ω", "resistance there per resistance", Dimension.NONE, Domain.FRACTION);
    Reference before =
        p.input("ω_b", "the same by other weak places", Dimension.NONE, Domain.FRACTION);
    p.step(
        "ω_0",
        "resistance at this cut per resistance",
        choose(atMost(abs(x.minus(place)), reach), min(before, omega), before),
        Clause.of("6.2.9.3; 6.1.6.3"));
    return p.build();
  }
}
