package spanledger.joint.stiffness;

import spanledger.procedure.Domain;
import spanledger.procedure.Procedure;
import spanledger.procedure.Reference;
import spanledger.quantity.Dimension;

/**
 * Stiffness of one bolt, not preloaded, that is sheared in several planes: planes act beside each
 * other, and so do the plies of one part; the two parts and the bolt lie one behind the other.
 *
 * <p>Inputs d, f_ub, d_M16, n, K_1, K_2 (of the plies of both parts, {@link PlyBearing}); steps
 * k_v, k_s. With one plane and two plies it is {@link BoltShearing}.
 */
public final class BoltInPlies {

  /** The definition. */
  public static final Procedure PROCEDURE = procedure();

  private BoltInPlies() {}

  private static Procedure procedure() {
    Procedure.Builder p =
        Procedure.named(
            "bolt-in-plies", "Stiffness of a bolt in shear and bearing, several planes");
    Reference diameter = p.input("d", "diameter of the bolt", Dimension.LENGTH, Domain.POSITIVE);
    Reference strength =
        p.input("f_ub", "tensile strength of the bolt", Dimension.STRESS, Domain.POSITIVE);
    Reference m16 = p.input("d_M16", "diameter of an M16 bolt", Dimension.LENGTH, Domain.POSITIVE);
    Reference planes =
        p.input("n", "planes in which the bolt is sheared", Dimension.NONE, Domain.POSITIVE);
    Reference first = spring(p, "K_1", "plies of the member, in bearing");
    Reference second = spring(p, "K_2", "plies of what holds it, in bearing");
    Reference plane = BoltShearing.shear(p, diameter, strength, m16);
    p.step(
        "k_s",
        "stiffness of bolt and plies in series",
        Dimension.LINE_LOAD,
        planes.times(plane).pow(-1).plus(first.pow(-1)).plus(second.pow(-1)).pow(-1),
        StiffnessSources.MECHANICS);
    return p.build();
  }

  private static Reference spring(Procedure.Builder p, String symbol, String words) {
    return p.input(symbol, words, Dimension.LINE_LOAD, Domain.POSITIVE);
  }
}
