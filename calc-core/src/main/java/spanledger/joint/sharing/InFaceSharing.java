package spanledger.joint.sharing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Shares the two shears and the torsion. */
final class InFaceSharing {

  private static final FaceModel BOLT = new FaceModel(BoltShearShare.PROCEDURE);
  private static final FaceModel ALONG = new FaceModel(AlongSlotShare.PROCEDURE);
  private static final FaceModel KEY = new FaceModel(KeyBearingShare.PROCEDURE);

  /** How far slots may turn from each other and still be parallel, rad. */
  private static final double PARALLEL = 1e-9;

  private static final String[] WORDS = {"a shear along y", "a shear along z", "a torsion about x"};

  private InFaceSharing() {}

  /**
   * The body of a face for {@link #load} or {@link #loadOnKeys}.
   *
   * @param withBolts whether bolts resist shear, or keys alone
   */
  static FaceBalance balance(JointGeometry joint, boolean withBolts) {
    return new FaceBalance(springs(joint, withBolts), joint.reach(), WORDS);
  }

  static double[] load(FaceForces forces) {
    return new double[] {forces.shearY(), forces.shearZ(), forces.torsion()};
  }

  /** The bolts alone and alike, as friction holds them before slip. */
  static JointGeometry gripped(JointGeometry joint) {
    return JointGeometry.ofBolts(
        joint.bolts().stream().map(b -> BoltPlace.alike(b.name(), b.y(), b.z())).toList());
  }

  static JointSharing.InFace byStiffness(JointGeometry joint, FaceForces forces) {
    double[] movement = balance(joint, true).movement(load(forces));
    List<BoltForce> bolts = new ArrayList<>();
    for (BoltPlace bolt : joint.bolts()) {
      Function<String, Double> values = BOLT.run(boltInputs(bolt, movement));
      bolts.add(
          new BoltForce(bolt, values.apply("F_y"), values.apply("F_z"), values.apply("F_v"), 0));
    }
    return new JointSharing.InFace(bolts, keys(joint, movement), FaceMovement.inFace(movement));
  }

  static JointSharing.InFace beforeSlip(JointGeometry joint, FaceForces forces) {
    JointSharing.InFace gripped = byStiffness(gripped(joint), forces);
    List<BoltForce> bolts = new ArrayList<>();
    for (int i = 0; i < joint.bolts().size(); i++) {
      BoltForce found = gripped.bolts().get(i);
      bolts.add(
          new BoltForce(joint.bolts().get(i), found.shearY(), found.shearZ(), found.shear(), 0));
    }
    List<KeyForce> idle =
        joint.keys().stream().map(key -> new KeyForce(key, 0, 0, 0, 0, 0)).toList();
    return new JointSharing.InFace(bolts, idle, gripped.movement());
  }

  static JointSharing.InFace keysAcross(JointGeometry joint, FaceForces forces) {
    List<BoltForce> bolts = new ArrayList<>();
    double[] movement = balance(joint, false).movement(loadOnKeys(joint, forces, bolts));
    return new JointSharing.InFace(bolts, keys(joint, movement), FaceMovement.inFace(movement));
  }

  /**
   * What is left for the keys after the bolts took what acts along the slots.
   *
   * @param bolts takes the bolts with their shears
   */
  static double[] loadOnKeys(JointGeometry joint, FaceForces forces, List<BoltForce> bolts) {
    boolean parallel = parallel(joint.keys());
    double angle = joint.keys().get(0).slotAngle();
    double[] load = load(forces);
    double total = 0;
    for (BoltPlace bolt : joint.bolts()) {
      total += ALONG.run(alongInputs(bolt, angle, 1, forces)).apply("k_s");
    }
    for (BoltPlace bolt : joint.bolts()) {
      if (!parallel || total == 0) {
        bolts.add(new BoltForce(bolt, 0, 0, 0, 0));
        continue;
      }
      Function<String, Double> values = ALONG.run(alongInputs(bolt, angle, total, forces));
      double alongY = values.apply("F_y");
      double alongZ = values.apply("F_z");
      bolts.add(new BoltForce(bolt, alongY, alongZ, values.apply("F_v"), 0));
      load[0] -= alongY;
      load[1] -= alongZ;
      load[2] -= values.apply("T_b");
    }
    if (parallel && total > 0) {
      removeRounding(load, forces, angle);
    }
    return load;
  }

  /** What is left along the slots after the bolts took it is rounding, which no key resists. */
  private static void removeRounding(double[] load, FaceForces forces, double angle) {
    double along = load[0] * Math.cos(angle) + load[1] * Math.sin(angle);
    if (Math.abs(along) <= 1e-12 * Math.hypot(forces.shearY(), forces.shearZ())) {
      load[0] -= along * Math.cos(angle);
      load[1] -= along * Math.sin(angle);
    }
  }

  private static List<SpringLine> springs(JointGeometry joint, boolean withBolts) {
    List<SpringLine> springs = withBolts ? boltSprings(joint) : new ArrayList<>();
    for (KeyPlace key : joint.keys()) {
      for (double arm : arms(key)) {
        double[] left = KEY.perMovement("d_n", keyInputs(key, arm));
        double[] right = {-left[0], -left[1], -left[2]};
        springs.add(new SpringLine(left, key.stiffness() / 2, true, key.clearance()));
        springs.add(new SpringLine(right, key.stiffness() / 2, true, key.clearance()));
      }
    }
    return springs;
  }

  /** Bolts, and keys with one flank or the other bearing all the time; every one acts both ways. */
  static List<SpringLine> bearing(JointGeometry joint) {
    List<SpringLine> springs = boltSprings(joint);
    for (KeyPlace key : joint.keys()) {
      for (double arm : arms(key)) {
        double[] across = KEY.perMovement("d_n", keyInputs(key, arm));
        springs.add(new SpringLine(across, key.stiffness() / 2, false, 0));
      }
    }
    return springs;
  }

  private static List<SpringLine> boltSprings(JointGeometry joint) {
    List<SpringLine> springs = new ArrayList<>();
    for (BoltPlace bolt : joint.bolts()) {
      double[] given = {bolt.y(), bolt.z(), bolt.shearStiffnessY(), bolt.shearStiffnessZ()};
      springs.add(new SpringLine(BOLT.perMovement("d_y", given), bolt.shearStiffnessY(), false, 0));
      springs.add(new SpringLine(BOLT.perMovement("d_z", given), bolt.shearStiffnessZ(), false, 0));
    }
    return springs;
  }

  private static List<KeyForce> keys(JointGeometry joint, double[] movement) {
    List<KeyForce> forces = new ArrayList<>();
    for (KeyPlace key : joint.keys()) {
      double[] arms = arms(key);
      Function<String, Double> first = KEY.run(withMovement(keyInputs(key, arms[0]), movement));
      Function<String, Double> second = KEY.run(withMovement(keyInputs(key, arms[1]), movement));
      double alongY = first.apply("F_y") + second.apply("F_y");
      double alongZ = first.apply("F_z") + second.apply("F_z");
      double torsion = first.apply("T_b") + second.apply("T_b");
      forces.add(
          new KeyForce(
              key,
              first.apply("B"),
              second.apply("B"),
              alongY,
              alongZ,
              torsion - (key.y() * alongZ - key.z() * alongY)));
    }
    return forces;
  }

  private static boolean parallel(List<KeyPlace> keys) {
    double angle = keys.get(0).slotAngle();
    return keys.stream().allMatch(k -> Math.abs(Math.sin(k.slotAngle() - angle)) <= PARALLEL);
  }

  private static double[] arms(KeyPlace key) {
    return new double[] {-key.bearingArm(), key.bearingArm()};
  }

  private static double[] keyInputs(KeyPlace key, double arm) {
    return new double[] {
      key.y(), key.z(), key.slotAngle(), arm, key.clearance(), key.stiffness() / 2
    };
  }

  private static double[] boltInputs(BoltPlace bolt, double[] movement) {
    return withMovement(
        new double[] {bolt.y(), bolt.z(), bolt.shearStiffnessY(), bolt.shearStiffnessZ()},
        movement);
  }

  private static double[] alongInputs(
      BoltPlace bolt, double angle, double total, FaceForces forces) {
    return new double[] {
      bolt.y(),
      bolt.z(),
      bolt.shearStiffnessY(),
      bolt.shearStiffnessZ(),
      angle,
      total,
      forces.shearY(),
      forces.shearZ()
    };
  }

  static double[] withMovement(double[] given, double[] movement) {
    double[] inputs = new double[given.length + movement.length];
    System.arraycopy(given, 0, inputs, 0, given.length);
    System.arraycopy(movement, 0, inputs, given.length, movement.length);
    return inputs;
  }
}
