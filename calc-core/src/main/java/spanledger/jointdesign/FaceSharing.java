package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import spanledger.joint.sharing.AlongSlotShare;
import spanledger.joint.sharing.BoltPlace;
import spanledger.joint.sharing.BoltShearShare;
import spanledger.joint.sharing.BoltTensionShare;
import spanledger.joint.sharing.ContactPoint;
import spanledger.joint.sharing.ContactShare;
import spanledger.joint.sharing.FaceForces;
import spanledger.joint.sharing.FaceMovement;
import spanledger.joint.sharing.JointGeometry;
import spanledger.joint.sharing.JointSharing;
import spanledger.joint.sharing.KeyBearingShare;
import spanledger.joint.sharing.KeyPlace;
import spanledger.joint.sharing.KeySharing;
import spanledger.joint.sharing.MovingFace;
import spanledger.joint.sharing.SharedForces;
import spanledger.procedure.CompiledProcedure;
import spanledger.provenance.Source;
import spanledger.resistance.member.Working;

/** Shares the forces on one face and says, run by run, what each of its parts carries. */
final class FaceSharing {

  private static final CompiledProcedure ALONG = AlongSlotShare.PROCEDURE.compile();
  private static final CompiledProcedure SHEAR = BoltShearShare.PROCEDURE.compile();
  private static final CompiledProcedure TENSION = BoltTensionShare.PROCEDURE.compile();
  private static final CompiledProcedure KEY = KeyBearingShare.PROCEDURE.compile();
  private static final CompiledProcedure CONTACT = ContactShare.PROCEDURE.compile();
  private static final CompiledProcedure DEMAND = BoltDemand.PROCEDURE.compile();

  /**
   * Forces smaller than this part of the greatest are rounding of the analysis: a pinned end hands
   * on no torsion, and nothing at its face need resist one.
   */
  private static final double ROUNDING = 1e-9;

  private static final List<String> MOVEMENTS = List.of("u_x", "u_y", "u_z", "φ_x", "φ_y", "φ_z");
  private static final int[] IN_FACE = {1, 2, 3};
  private static final int[] OFF_FACE = {0, 4, 5};

  private final String where;
  private final JointGeometry geometry;
  private final FaceSprings springs;
  private final Source source;

  /**
   * @param where the joint and the face, in words, unique among joints
   * @param source where the description comes from
   */
  FaceSharing(String where, JointGeometry geometry, FaceSprings springs, Source source) {
    this.where = where;
    this.source = source;
    this.geometry = geometry;
    this.springs = springs;
  }

  /**
   * Shares.
   *
   * @throws spanledger.joint.sharing.UnresistedFaceException if nothing resists one of the forces
   */
  SharedForces share(Working forces) {
    return JointSharing.of(geometry, whole(forces(forces)), model());
  }

  /** How the face moves under many forces, as {@link #share} moves it; errors are the same. */
  Function<FaceForces, FaceMovement> moving() {
    MovingFace face = new MovingFace(geometry, model());
    return forces -> face.under(whole(forces));
  }

  private KeySharing model() {
    return geometry.keys().isEmpty() ? KeySharing.BY_STIFFNESS : KeySharing.KEYS_CARRY_ACROSS;
  }

  /** Shares the force off the face and its moments alone; friction holds the rest. */
  SharedForces shareOffFace(Working forces) {
    FaceForces all = whole(forces(forces));
    return JointSharing.of(
        geometry, new FaceForces(all.axial(), 0, 0, 0, all.momentY(), all.momentZ()));
  }

  /** The forces on a face. */
  static FaceForces forces(Working forces) {
    return new FaceForces(
        forces.value("N"),
        forces.value("V_y"),
        forces.value("V_z"),
        forces.value("T"),
        forces.value("M_y"),
        forces.value("M_z"));
  }

  /** No movement. */
  static FaceMovement still() {
    return new FaceMovement(0, 0, 0, 0, 0, 0);
  }

  /** No forces. */
  static FaceForces none() {
    return new FaceForces(0, 0, 0, 0, 0, 0);
  }

  private FaceForces whole(FaceForces all) {
    double force =
        Math.max(Math.abs(all.axial()), Math.max(Math.abs(all.shearY()), Math.abs(all.shearZ())));
    double moment =
        Math.max(
            Math.abs(all.torsion()), Math.max(Math.abs(all.momentY()), Math.abs(all.momentZ())));
    double least = ROUNDING * Math.max(force, moment / reach());
    double leastMoment = least * reach();
    return new FaceForces(
        whole(all.axial(), least),
        whole(all.shearY(), least),
        whole(all.shearZ(), least),
        whole(all.torsion(), leastMoment),
        whole(all.momentY(), leastMoment),
        whole(all.momentZ(), leastMoment));
  }

  private double reach() {
    double reach = 1;
    for (BoltPlace bolt : geometry.bolts()) {
      reach = Math.max(reach, Math.hypot(bolt.y(), bolt.z()));
    }
    return reach;
  }

  private static double whole(double value, double least) {
    return Math.abs(value) <= least ? 0 : value;
  }

  List<Working> shears(Working forces, FaceMovement movement) {
    List<Working> runs = new ArrayList<>();
    for (BoltPlace bolt : geometry.bolts()) {
      String name = where + ", " + bolt.name();
      boolean keyed = !geometry.keys().isEmpty();
      Working.Feeding run =
          Working.of(keyed ? ALONG : SHEAR, name)
              .given("y", bolt.y(), name + ", place along the first axis", source)
              .given("z", bolt.z(), name + ", place along the second axis", source)
              .given("k_y", bolt.shearStiffnessY(), ALIKE, ALIKE_SOURCE)
              .given("k_z", bolt.shearStiffnessZ(), ALIKE, ALIKE_SOURCE);
      if (keyed) {
        KeyPlace key = geometry.keys().get(0);
        run.given("α", key.slotAngle(), where + ", direction of the slot", source)
            .given("K_s", geometry.bolts().size(), where + ", bolts alike, their sum", ALIKE_SOURCE)
            .same(forces, "V_y", "V_z");
      } else {
        inFace(run, movement);
      }
      runs.add(run.run());
    }
    return runs;
  }

  private static final String ALIKE = "bolts of a face are alike; only their ratio counts";
  private static final Source ALIKE_SOURCE =
      Source.derived("Bolts alike share by their places alone (docs/theory/joints.md)");

  List<Working> tensions(FaceMovement movement) {
    List<Working> runs = new ArrayList<>();
    for (int i = 0; i < geometry.bolts().size(); i++) {
      BoltPlace bolt = geometry.bolts().get(i);
      String name = where + ", " + bolt.name();
      Working.Feeding run =
          Working.of(TENSION, name)
              .given("y", bolt.y(), name + ", place along the first axis", source)
              .given("z", bolt.z(), name + ", place along the second axis", source)
              .with("k_x", springs.bolts().get(i));
      runs.add(offFace(run, movement).run());
    }
    return runs;
  }

  List<Working> contacts(FaceMovement movement) {
    List<Working> runs = new ArrayList<>();
    for (ContactPoint point : geometry.contacts()) {
      String name = where + ", " + point.name();
      Working.Feeding run =
          Working.of(CONTACT, name)
              .given("y", point.y(), name + ", place along the first axis", source)
              .given("z", point.z(), name + ", place along the second axis", source)
              .with("k_c", springs.bed());
      runs.add(offFace(run, movement).run());
    }
    return runs;
  }

  List<Working> keys(FaceMovement movement) {
    List<Working> runs = new ArrayList<>();
    for (KeyPlace key : geometry.keys()) {
      for (int side = -1; side <= 1; side += 2) {
        String name = where + ", " + key.name();
        Working.Feeding run =
            Working.of(KEY, name + (side < 0 ? ", first half" : ", second half"))
                .given("y", key.y(), name + ", place along the first axis", source)
                .given("z", key.z(), name + ", place along the second axis", source)
                .given("α", key.slotAngle(), where + ", direction of the slot", source)
                .given(
                    "a",
                    side * key.length() / Math.sqrt(12),
                    String.format(Locale.ROOT, "%s, bearing point %+d", name, side),
                    Source.derived("Length of the key over the root of 12, either way"))
                .given("g", key.clearance(), where + ", clearance of keys", source)
                .with("k", springs.halfKey().orElseThrow());
        inFace(run, movement);
        runs.add(run.run());
      }
    }
    return runs;
  }

  List<Working> demands(List<Working> shears, List<Working> tensions) {
    List<Working> runs = new ArrayList<>();
    for (int i = 0; i < shears.size(); i++) {
      runs.add(
          Working.of(DEMAND, shears.get(i).label())
              .same(shears.get(i), "F_y", "F_z")
              .from(tensions.get(i), "F_x", "F_t")
              .run());
    }
    return runs;
  }

  private void inFace(Working.Feeding run, FaceMovement movement) {
    solved(run, IN_FACE, movement);
  }

  private Working.Feeding offFace(Working.Feeding run, FaceMovement movement) {
    return solved(run, OFF_FACE, movement);
  }

  private Working.Feeding solved(Working.Feeding run, int[] which, FaceMovement movement) {
    double[] values = values(movement);
    for (int i : which) {
      run.given(MOVEMENTS.get(i), values[i], moved(where, i), JointFeeds.SOLVED);
    }
    return run;
  }

  /** What a movement of a face is called where it feeds a run: by its place in {@link #values}. */
  static String moved(String where, int which) {
    return where + ", movement " + MOVEMENTS.get(which);
  }

  /** u_x, u_y, u_z, φ_x, φ_y, φ_z. */
  static double[] values(FaceMovement movement) {
    return new double[] {
      movement.x(), movement.y(), movement.z(),
      movement.aboutX(), movement.aboutY(), movement.aboutZ()
    };
  }
}
