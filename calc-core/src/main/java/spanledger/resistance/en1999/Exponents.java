package spanledger.resistance.en1999;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Exponents and reductions of the interaction formulas. Where the standard lets one choose, the
 * least exponent is taken, which is the safe one.
 */
final class Exponents {

  static final Procedure PROCEDURE = define();

  private Exponents() {}

  private static Procedure define() {
    Steps p = new Steps("exponents", "Exponents of interaction, EN 1999-1-1");
    Reference solid = p.yes("m", "solid");
    Reference area = p.positive("A_eff", "area that local buckling leaves", Dimension.AREA);
    Reference strength = p.proofStrength();
    Reference partial = p.yieldFactor();
    Reference ny = p.positive("N_b_y", "buckling resistance about y", Dimension.FORCE);
    Reference nz = p.positive("N_b_z", "buckling resistance about z", Dimension.FORCE);
    Reference nt = p.positive("N_b_T", "torsional-flexural buckling resistance", Dimension.FORCE);
    Reference squash =
        p.step(
            "N_Rd",
            "resistance without buckling of the member",
            area.times(strength).over(partial),
            Clause.of("6.3.3.1"));
    p.step("χ_y", "reduction about y", min(number(1), ny.over(squash)), Clause.of("6.3.3.1"));
    p.step(
        "χ_zT",
        "least reduction of the other modes",
        min(number(1), nz.over(squash), nt.over(squash)),
        Clause.of("6.3.3.1"));
    p.step(
        "e_0",
        "exponent of open sections",
        number(1),
        Clause.of("6.2.9.1, eq. 6.40, 6.41; the least value allowed, which is the safe one"));
    p.step(
        "ψ_0",
        "exponent of the axial force, hollow and solid",
        choose(greater(solid, number(0.5)), number(2), number(1.3)),
        Clause.of("6.2.9.2, eq. 6.43"));
    p.step(
        "e_c",
        "exponent of buckling and of the moment about z",
        number(0.8),
        Clause.of("6.3.3.1, eq. 6.59 to 6.62; the least value allowed, which is the safe one"));
    return p.build();
  }
}
