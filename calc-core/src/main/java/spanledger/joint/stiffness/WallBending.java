package spanledger.joint.stiffness;

import static spanledger.procedure.Formulas.choose;
import static spanledger.procedure.Formulas.greater;
import static spanledger.procedure.Formulas.number;

import java.util.Arrays;
import spanledger.procedure.Domain;
import spanledger.procedure.Expression;
import spanledger.procedure.Interpolation;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;

/**
 * Stiffness of a long wall between two webs against a force at one place: an elastic plate, with
 * Poisson's ratio 0.3.
 *
 * <p>Inputs E, t, w, x (to the nearer web), clamped (1 if the webs hold its edges against turning,
 * else 0); steps D, c, k_w.
 */
public final class WallBending {

  /**
   * Deflection at the force, per force, width squared and 1/D, by the place x/w: edges clamped,
   * edges supported. Integrated over all waves along the wall; verification works them out anew.
   */
  private static final double[][] DEFLECTION = {
    {0, 0, 0},
    {0.05, 0.000_195, 0.001_057},
    {0.1, 0.000_755, 0.003_130},
    {0.15, 0.001_606, 0.005_604},
    {0.2, 0.002_649, 0.008_164},
    {0.25, 0.003_774, 0.010_599},
    {0.3, 0.004_871, 0.012_762},
    {0.35, 0.005_840, 0.014_545},
    {0.4, 0.006_596, 0.015_870},
    {0.45, 0.007_076, 0.016_685},
    {0.5, 0.007_241, 0.016_960}
  };

  private static final Source PLATE =
      Source.derived("Elastic plate strip by Fourier integral (docs/theory/joint-sharing.md)");

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private WallBending() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named("wall-bending", "Stiffness of the wall behind a bolt, in bending");
    Reference modulus =
        p.input("E", "modulus of elasticity of the wall", Dimension.STRESS, Domain.POSITIVE);
    Reference thickness = p.input("t", "thickness of the wall", Dimension.LENGTH, Domain.POSITIVE);
    Reference width = p.input("w", "width between the webs", Dimension.LENGTH, Domain.POSITIVE);
    Reference toWeb = p.input("x", "to the nearer web", Dimension.LENGTH, Domain.POSITIVE);
    Reference clamped =
        p.input(
            "clamped",
            "1 if the webs clamp the wall, 0 if they support it",
            Dimension.NONE,
            Domain.FRACTION);
    Reference rigidity =
        p.step(
            "D",
            "bending stiffness of the plate",
            Dimension.MOMENT,
            modulus.times(thickness.pow(3)).over(12 * (1 - 0.3 * 0.3)),
            PLATE);
    Expression place = toWeb.over(width);
    Reference deflection =
        p.step(
            "c",
            "deflection per force, width squared and 1/D",
            Dimension.NONE,
            choose(greater(clamped, number(0.5)), column(1, place), column(2, place)),
            PLATE);
    p.step(
        "k_w",
        "stiffness of the wall",
        Dimension.LINE_LOAD,
        rigidity.over(deflection.times(width.pow(2))),
        PLATE);
    return p.build();
  }

  private static Expression column(int column, Expression place) {
    return new Interpolation(
        Arrays.stream(DEFLECTION).map(row -> new Interpolation.Row(row[0], row[column])).toList(),
        place,
        Dimension.NONE,
        Dimension.NONE);
  }
}
