package spanledger.resistance.adm;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.number;
import static spanledger.procedure.Formulas.sqrt;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/** The elastic lateral-torsional buckling moment, with the height of the load and asymmetry. */
public final class ElasticLateralMoment {

  private ElasticLateralMoment() {}

  /**
   * Writes inputs load (whether loads act between restraints), z_g, z_j, P_e_z, K_T and the steps
   * C_1, C_2, U, M_e.
   *
   * @param side towards which the member bends
   * @param factor C_b
   * @return M_e, for uniform moment
   */
  public static Reference write(Procedure.Builder p, Side side, Reference factor, Source clause) {
    Reference across = Symbols.flag(p, "load", "loads act across the member between restraints");
    Reference height =
        p.input(
            "z_g",
            "load above the shear centre, positive where it pushes towards it",
            Dimension.LENGTH);
    Reference asymmetry =
        p.input(
            "z_j", "asymmetry, positive if the side of larger z is the larger", Dimension.LENGTH);
    Reference euler =
        p.input("P_e_z", "elastic buckling force about z", Dimension.FORCE, Domain.POSITIVE);
    Reference twist =
        p.input("K_T", "elastic resistance to twist", Dimension.FLEXURAL_RIGIDITY, Domain.POSITIVE);
    Reference first =
        p.step(
            "C_1",
            "factor on the height of the load",
            Dimension.NONE,
            choose(Symbols.is(across), factor.times(0.41), number(0)),
            clause);
    Reference second =
        p.step(
            "C_2",
            "factor on the asymmetry",
            Dimension.NONE,
            choose(Symbols.is(across), factor.times(0.47), number(1)),
            clause);
    Reference offset =
        p.step(
            "U",
            "help (positive) or harm of asymmetry and load height",
            Dimension.LENGTH,
            second.times(side.of(asymmetry.negated(), asymmetry)).minus(first.times(height)),
            clause);
    return p.step(
        "M_e",
        "elastic lateral-torsional buckling moment, uniform moment",
        Dimension.MOMENT,
        euler.times(offset.plus(sqrt(offset.pow(2).plus(twist.over(euler))))),
        clause);
  }
}
