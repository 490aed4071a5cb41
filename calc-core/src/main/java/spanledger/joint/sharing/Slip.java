package spanledger.joint.sharing;

import java.util.ArrayList;
import java.util.List;
import spanledger.procedure.CompiledProcedure;

/**
 * Whether a preloaded joint slips under forces in service.
 *
 * <p>Before slip the parts do not move against each other: keys do not bear, and every bolt holds
 * alike in all directions, also along a slot. So the shears are shared to the bolts as to alike
 * ones. Strength at ultimate is another question: there slip is taken to have happened, and {@link
 * JointSharing} shares to what bears.
 */
public final class Slip {

  private static final CompiledProcedure GRIP = FrictionGrip.PROCEDURE.compile();

  private Slip() {}

  /**
   * What holds the faces together by friction.
   *
   * @param preload lower bound for each bolt, in service, N
   * @param friction lower bound
   * @param faces how many faces rub at each bolt
   * @param factor partial factor of slip
   */
  public record Grip(double preload, double friction, int faces, double factor) {}

  /**
   * One bolt.
   *
   * @param bolt with its shear before slip and its tension
   * @param resistance to slip, N
   * @param left before slip, N; below zero it slips
   */
  public record BoltSlip(BoltForce bolt, double resistance, double left) {}

  /**
   * A joint.
   *
   * @param bolts in the order given
   * @param slips whether any bolt's grip is overcome
   */
  public record SlipState(List<BoltSlip> bolts, boolean slips) {

    public SlipState {
      bolts = List.copyOf(bolts);
    }
  }

  /**
   * Looks at every bolt.
   *
   * @param service forces in service
   * @throws UnresistedFaceException if nothing resists one of the forces
   */
  public static SlipState of(JointGeometry joint, FaceForces service, Grip grip) {
    List<BoltPlace> alike =
        joint.bolts().stream()
            .map(b -> new BoltPlace(b.name(), b.y(), b.z(), 1, 1, b.tensionStiffness()))
            .toList();
    SharedForces shared =
        JointSharing.of(new JointGeometry(alike, List.of(), joint.contacts()), service);
    List<BoltSlip> bolts = new ArrayList<>();
    for (BoltForce bolt : shared.bolts()) {
      double[] values =
          GRIP.run(
              bolt.shear(),
              bolt.tension(),
              grip.preload(),
              grip.friction(),
              grip.faces(),
              grip.factor());
      bolts.add(new BoltSlip(bolt, values[GRIP.slot("F_s")], values[GRIP.slot("R")]));
    }
    return new SlipState(bolts, bolts.stream().anyMatch(b -> b.left() < 0));
  }
}
