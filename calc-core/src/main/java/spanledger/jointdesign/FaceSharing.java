package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
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
  private final Optional<Working> moves;

  /**
   * @param where the joint and the face, in words, unique among joints
   * @param source where the description comes from
   */
  FaceSharing(String where, JointGeometry geometry, FaceSprings springs, Source source) {
    this(where, geometry, springs, source, Optional.empty());
  }

  /**
   * Of a face of one of several brackets.
   *
   * @param moves a run of {@link FaceMoves}, which has the movement off the face
   */
  FaceSharing(
      String where,
      JointGeometry geometry,
      FaceSprings springs,
      Source source,
      Optional<Working> moves) {
    this.where = where;
    this.source = source;
    this.geometry = geometry;
    this.springs = springs;
    this.moves = moves;
  }

  /**
   * Shares.
   *
   * @throws spanledger.joint.sharing.UnresistedFaceException if nothing resists one of the forces
   */
  SharedForces share(Working forces) {
    return share(forces(forces), 0);
  }

  /**
   * Shares; errors as of {@link #share(Working)}.
   *
   * @param floor the force that is rounding of what several brackets carry, N; 0 for one
   */
  SharedForces share(FaceForces forces, double floor) {
    return JointSharing.of(geometry, whole(forces).whole(floor, reach()), model());
  }

  /**
   * How the face moves under many forces, each with its floor, as {@link #share(FaceForces,
   * double)} moves it; errors are the same.
   */
  BiFunction<FaceForces, Double, FaceMovement> moving() {
    MovingFace face = new MovingFace(geometry, model());
    return (forces, floor) -> face.under(whole(forces).whole(floor, reach()));
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
    return whole(all, reach());
  }

  /** The forces without what is rounding of the analysis. */
  static FaceForces whole(FaceForces all, double reach) {
    return all.whole(ROUNDING * all.greatest(reach), reach);
  }

  private double reach() {
    double reach = 1;
    for (BoltPlace bolt : geometry.bolts()) {
      reach = Math.max(reach, Math.hypot(bolt.y(), bolt.z()));
    }
    return reach;
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
                    side * key.bearingArm(),
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
    return moves
        .map(all -> run.from(all, "u_x", "w_x").from(all, "φ_y", "ω_y").from(all, "φ_z", "ω_z"))
        .orElseGet(() -> solved(run, OFF_FACE, movement));
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
