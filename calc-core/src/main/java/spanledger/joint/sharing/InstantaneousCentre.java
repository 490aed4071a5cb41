package spanledger.joint.sharing;

import java.util.ArrayList;
import java.util.List;
import spanledger.procedure.CompiledProcedure;

/**
 * Ultimate sharing of two shears and torsion to bolts that are all alike: the group turns about a
 * centre, found so that the shears of the bolts, by their load-deformation law, balance the forces.
 *
 * <p>Each round solves the group with every bolt's secant stiffness of the round before. As the law
 * bends one way only, each round lowers the energy, and what is left falls by about half. Bolts,
 * not keys or friction, are reckoned with; whether the plates bear this needs its own check.
 */
public final class InstantaneousCentre {

  private static final CompiledProcedure LAW = BoltLoadDeformation.PROCEDURE.compile();
  private static final FaceModel BOLT = new FaceModel(BoltShearShare.PROCEDURE);
  private static final int MOST_ROUNDS = 2000;
  private static final double SETTLED = 1e-13;
  private static final double ACCEPTED = 1e-9;

  /** A bolt at the centre itself would have no secant; from here on it is as good as there. */
  private static final double AT_CENTRE = 1e-12;

  private static final String[] WORDS = {"a shear along y", "a shear along z", "a torsion about x"};

  private final List<BoltPlace> bolts;
  private final FaceForces forces;
  private final LoadDeformation law;
  private final double reach;

  private InstantaneousCentre(List<BoltPlace> bolts, FaceForces forces, LoadDeformation law) {
    this.bolts = List.copyOf(bolts);
    this.forces = forces;
    this.law = law;
    reach = JointGeometry.ofBolts(bolts).reach();
  }

  /**
   * Shares the shears and the torsion; axial force and moments are left to {@link JointSharing}.
   *
   * @param bolts all alike; their stiffnesses are not used
   * @throws UnresistedFaceException if the bolts resist only some of the forces
   * @throws IllegalArgumentException if there is neither shear nor torsion
   */
  public static UltimateShear of(List<BoltPlace> bolts, FaceForces forces, LoadDeformation law) {
    if (forces.shearY() == 0 && forces.shearZ() == 0 && forces.torsion() == 0) {
      throw new IllegalArgumentException("A bolt group without shear and torsion has no centre.");
    }
    return new InstantaneousCentre(bolts, forces, law).solve();
  }

  private UltimateShear solve() {
    double[] secants = new double[bolts.size()];
    java.util.Arrays.fill(secants, 1);
    UltimateShear best = null;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double[] movement = movement(secants);
      UltimateShear found = shears(movement, secants);
      if (best == null || found.residual() < best.residual()) {
        best = found;
      }
      if (best.residual() <= SETTLED) {
        break;
      }
    }
    if (best == null || best.residual() > ACCEPTED) {
      throw new UnsettledFaceException(best == null ? 1 : best.residual());
    }
    return best;
  }

  private double[] movement(double[] secants) {
    List<SpringLine> springs = new ArrayList<>();
    for (int i = 0; i < secants.length; i++) {
      BoltPlace bolt = bolts.get(i);
      double[] given = {bolt.y(), bolt.z(), 1, 1};
      springs.add(new SpringLine(BOLT.perMovement("d_y", given), secants[i], false, 0));
      springs.add(new SpringLine(BOLT.perMovement("d_z", given), secants[i], false, 0));
    }
    double[] load = {forces.shearY(), forces.shearZ(), forces.torsion()};
    return new FaceBalance(springs, reach, WORDS).movement(load);
  }

  /** The shears by the law for a movement; leaves the secants of the next round. */
  private UltimateShear shears(double[] movement, double[] secants) {
    int count = bolts.size();
    double[] alongY = new double[count];
    double[] alongZ = new double[count];
    double farthest = 0;
    for (int i = 0; i < count; i++) {
      BoltPlace bolt = bolts.get(i);
      var shift = BOLT.run(bolt.y(), bolt.z(), 1, 1, movement[0], movement[1], movement[2]);
      alongY[i] = shift.apply("d_y");
      alongZ[i] = shift.apply("d_z");
      farthest = Math.max(farthest, Math.hypot(alongY[i], alongZ[i]));
    }
    for (int i = 0; i < count; i++) {
      double distance = Math.max(Math.hypot(alongY[i], alongZ[i]) / farthest, AT_CENTRE);
      double part =
          LAW.run(distance, 1, law.greatestDeformation(), law.rate(), law.exponent())[
              LAW.slot("ρ")];
      secants[i] = part / distance;
      alongY[i] *= secants[i] / farthest;
      alongZ[i] *= secants[i] / farthest;
    }
    return scaled(movement, alongY, alongZ);
  }

  /** The ultimate shear of a bolt for which these parts of it balance the forces best. */
  private UltimateShear scaled(double[] movement, double[] alongY, double[] alongZ) {
    double[] carried = new double[3];
    for (int i = 0; i < alongY.length; i++) {
      carried[0] += alongY[i];
      carried[1] += alongZ[i];
      carried[2] += (bolts.get(i).y() * alongZ[i] - bolts.get(i).z() * alongY[i]) / reach;
    }
    double[] load = {forces.shearY(), forces.shearZ(), forces.torsion() / reach};
    double together = 0;
    double own = 0;
    double size = 0;
    for (int i = 0; i < 3; i++) {
      together += carried[i] * load[i];
      own += carried[i] * carried[i];
      size += load[i] * load[i];
    }
    double strength = together / own;
    double left = 0;
    List<BoltForce> shared = new ArrayList<>();
    for (int i = 0; i < alongY.length; i++) {
      double y = strength * alongY[i];
      double z = strength * alongZ[i];
      shared.add(new BoltForce(bolts.get(i), y, z, Math.hypot(y, z), 0));
    }
    for (int i = 0; i < 3; i++) {
      double rest = strength * carried[i] - load[i];
      left += rest * rest;
    }
    return new UltimateShear(
        strength, shared, FaceMovement.inFace(movement), Math.sqrt(left / size));
  }
}
