package spanledger.joint.stiffness;

import static spanledger.procedure.Formulas.min;
import static spanledger.procedure.Formulas.number;

import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Stiffness of one bolt, not preloaded, in shear and bearing in two plies (coefficients k11 and
 * k12, half of those for a row of two; the modulus cancels).
 *
 * <p>Inputs d, f_ub, d_M16, and for each ply e_b, p_b, t, f_u; steps k_v, k_b1, k_t1, k_br1, k_b2,
 * k_t2, k_br2, k_s. Where there is no bolt behind in the direction of load, p_b is given as large.
 */
public final class BoltShearing {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private BoltShearing() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("bolt-shearing", "Stiffness of a bolt in shear and bearing");
    Reference diameter = p.input("d", "diameter of the bolt", Dimension.LENGTH, Domain.POSITIVE);
    Reference strength =
        p.input("f_ub", "tensile strength of the bolt", Dimension.STRESS, Domain.POSITIVE);
    Reference m16 = p.input("d_M16", "diameter of an M16 bolt", Dimension.LENGTH, Domain.POSITIVE);
    Reference[] plies = new Reference[8];
    for (int ply = 1; ply <= 2; ply++) {
      int at = 4 * ply - 4;
      plies[at] = size(p, "e_b" + ply, "from the bolt to the end of ply " + ply);
      plies[at + 1] = size(p, "p_b" + ply, "spacing of bolts in ply " + ply);
      plies[at + 2] = size(p, "t_" + ply, "thickness of ply " + ply);
      plies[at + 3] =
          p.input("f_u" + ply, "tensile strength of ply " + ply, Dimension.STRESS, Domain.POSITIVE);
    }
    Reference shear = shear(p, diameter, strength, m16);
    Reference first = bearing(p, "1", diameter, m16, plies, 0);
    Reference second = bearing(p, "2", diameter, m16, plies, 4);
    p.step(
        "k_s",
        "stiffness of bolt and both plies in series",
        Dimension.LINE_LOAD,
        shear.pow(-1).plus(first.pow(-1)).plus(second.pow(-1)).pow(-1),
        StiffnessSources.MECHANICS);
    return p.build();
  }

  /** One plane of a bolt in shear, step k_v. */
  static Reference shear(
      Procedure.Builder p, Reference diameter, Reference strength, Reference m16) {
    return p.step(
        "k_v",
        "stiffness of the bolt in shear",
        Dimension.LINE_LOAD,
        diameter.pow(2).times(strength).times(8).over(m16),
        StiffnessSources.COEFFICIENTS);
  }

  private static Reference size(Procedure.Builder p, String symbol, String words) {
    return p.input(symbol, words, Dimension.LENGTH, Domain.POSITIVE);
  }

  /**
   * Bearing in one ply, steps k_b, k_t, k_br with the mark behind them.
   *
   * @param plies end distance, spacing, thickness and strength, from place {@code at} on
   */
  static Reference bearing(
      Procedure.Builder p,
      String mark,
      Reference diameter,
      Reference m16,
      Reference[] plies,
      int at) {
    Expression end = plies[at].times(0.25).over(diameter).plus(number(0.5));
    Expression spacing = plies[at + 1].times(0.25).over(diameter).plus(number(0.375));
    Reference distance =
        p.step(
            "k_b" + mark,
            "factor of end distance and spacing",
            Dimension.NONE,
            min(end, spacing, number(1.25)),
            StiffnessSources.COEFFICIENTS);
    Reference thickness =
        p.step(
            "k_t" + mark,
            "factor of thickness",
            Dimension.NONE,
            min(plies[at + 2].times(1.5).over(m16), number(2.5)),
            StiffnessSources.COEFFICIENTS);
    return p.step(
        "k_br" + mark,
        ("stiffness of bearing in ply " + mark).strip(),
        Dimension.LINE_LOAD,
        distance.times(thickness).times(diameter).times(plies[at + 3]).times(12),
        StiffnessSources.COEFFICIENTS);
  }
}
