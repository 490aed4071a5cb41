package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import spanledger.joint.sharing.SharedForces;
import spanledger.resistance.joint.JointCheck;
import spanledger.resistance.member.Working;

/**
 * A face of a joint under one set of forces.
 *
 * @param name of the face
 * @param forces a run of {@link ForcesOnFace}
 * @param shared how they are shared, with the residual of equilibrium
 * @param shears the shear of each bolt
 * @param tensions the tension of each bolt
 * @param keys the bearing of each key at its two bearing points, one after the other
 * @param contacts the pressing at each piece of the bed
 * @param demands a run of {@link BoltDemand} for each bolt
 * @param checks every check that can be made
 * @param open what cannot be checked, and what to add
 */
public record FaceRun(
    String name,
    Working forces,
    SharedForces shared,
    List<Working> shears,
    List<Working> tensions,
    List<Working> keys,
    List<Working> contacts,
    List<Working> demands,
    List<JointCheck> checks,
    List<String> open) {

  public FaceRun {
    shears = List.copyOf(shears);
    tensions = List.copyOf(tensions);
    keys = List.copyOf(keys);
    contacts = List.copyOf(contacts);
    demands = List.copyOf(demands);
    checks = List.copyOf(checks);
    open = List.copyOf(open);
  }

  /**
   * A face in which nothing is shared among parts.
   *
   * @param forces a run of {@link ForcesOnFace}
   */
  static FaceRun unshared(String name, Working forces, List<JointCheck> checks, List<String> open) {
    return new FaceRun(
        name,
        forces,
        new SharedForces(
            FaceSharing.forces(forces),
            List.of(),
            List.of(),
            List.of(),
            FaceSharing.still(),
            FaceSharing.none(),
            0),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        checks,
        open);
  }

  /** What leads from the forces on the face to what each bolt and key carries, in order. */
  public List<Working> sharing() {
    List<Working> all = new ArrayList<>(List.of(forces));
    all.addAll(shears);
    all.addAll(tensions);
    all.addAll(keys);
    all.addAll(contacts);
    all.addAll(demands);
    return all;
  }
}
