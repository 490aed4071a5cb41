package spanledger.joint.sharing;

import java.util.List;
import java.util.Optional;

/**
 * A bolt group at its ultimate shear.
 *
 * @param requiredStrength ultimate shear that each bolt must have for the group to carry the
 *     forces, N
 * @param bolts their shears, which balance the forces
 * @param movement only its ratios mean anything
 * @param residual what the shears leave unbalanced, per force
 */
public record UltimateShear(
    double requiredStrength, List<BoltForce> bolts, FaceMovement movement, double residual) {

  public UltimateShear {
    bolts = List.copyOf(bolts);
  }

  /** How many bolts' ultimate shears the resultant of the two shears is. */
  public double coefficient(FaceForces forces) {
    return Math.hypot(forces.shearY(), forces.shearZ()) / requiredStrength;
  }

  /** Place of the centre of turning in the face, mm; none if the group shifts without a turn. */
  public Optional<double[]> centre() {
    if (movement.aboutX() == 0) {
      return Optional.empty();
    }
    return Optional.of(
        new double[] {-movement.z() / movement.aboutX(), movement.y() / movement.aboutX()});
  }
}
