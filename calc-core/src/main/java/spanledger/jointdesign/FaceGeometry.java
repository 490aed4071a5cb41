package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import spanledger.joint.FaceBolts;
import spanledger.joint.FaceKeys;
import spanledger.joint.FacePlace;
import spanledger.joint.JointFace;
import spanledger.joint.Ply;
import spanledger.joint.sharing.BoltPlace;
import spanledger.joint.sharing.ContactPoint;
import spanledger.joint.sharing.JointGeometry;
import spanledger.joint.sharing.KeyPlace;
import spanledger.provenance.Source;

/**
 * A face as a rigid body on springs.
 *
 * <p>Bolts of a face are alike, so only how stiff they are beside the bed and the keys counts. A
 * bolt stretches as 1.6 E A_s / L, prying in it (EN 1993-1-8, Table 6.11), the plies press on each
 * other where all of them overlap, on a bed as soft as the first ply is under its own compression
 * (common practice, no source).
 */
final class FaceGeometry {

  /** Where stiffnesses come from that only decide how bolts and bed share. */
  static final Source SOURCE =
      Source.fromMemory("EN 1993-1-8:2005", "Table 6.11, k_10; bed by the stiffness of the leg");

  /** Of bolts, MPa; EN 1993-1-1, 3.2.6; austenitic steel is 5 % less. */
  private static final double STEEL = 210_000;

  private static final double STRETCH = 1.6;

  /** In how many pieces the bed is divided either way; an even number, so that none is at 0. */
  private static final int PIECES = 4;

  /** How stiff a key is across its slot beside others of its face: force per shift and length. */
  private static final double KEY_LENGTHS = 1;

  private FaceGeometry() {}

  static JointGeometry of(JointFace face) {
    List<BoltPlace> bolts = new ArrayList<>();
    double stretch = stretch(face);
    for (int i = 0; i < face.bolts().places().size(); i++) {
      FacePlace at = face.bolts().places().get(i);
      bolts.add(new BoltPlace("bolt " + (i + 1), at.a(), at.b(), 1, 1, stretch));
    }
    List<KeyPlace> keys = new ArrayList<>();
    face.keys().ifPresent(own -> addKeys(own, keys));
    return new JointGeometry(bolts, keys, bed(face));
  }

  private static double stretch(JointFace face) {
    FaceBolts bolts = face.bolts();
    double length = face.packing() + bolts.size().headHeight() / 2 + bolts.size().nutHeight() / 2;
    for (Ply ply : face.plies()) {
      length += ply.thickness();
    }
    return STRETCH * STEEL * bolts.size().stressArea() / length;
  }

  private static void addKeys(FaceKeys own, List<KeyPlace> keys) {
    double alongSlot = own.bearsAlongFirst() ? Math.PI / 2 : 0;
    double stiffness =
        KEY_LENGTHS * own.alloy().youngsModulus() * own.length() * own.depth() / own.thickness();
    for (int i = 0; i < own.places().size(); i++) {
      FacePlace at = own.places().get(i);
      keys.add(
          new KeyPlace(
              "key " + (i + 1),
              at.a(),
              at.b(),
              alongSlot,
              own.length(),
              own.clearance(),
              stiffness));
    }
  }

  private static List<ContactPoint> bed(JointFace face) {
    double fromA = Double.NEGATIVE_INFINITY;
    double fromB = Double.NEGATIVE_INFINITY;
    double toA = Double.POSITIVE_INFINITY;
    double toB = Double.POSITIVE_INFINITY;
    for (Ply ply : face.plies()) {
      fromA = Math.max(fromA, ply.from().a());
      fromB = Math.max(fromB, ply.from().b());
      toA = Math.min(toA, ply.to().a());
      toB = Math.min(toB, ply.to().b());
    }
    Ply leg = face.plies().get(0);
    return ContactPoint.rectangle(
        "bed",
        (fromA + toA) / 2,
        (fromB + toB) / 2,
        toA - fromA,
        toB - fromB,
        PIECES,
        PIECES,
        leg.alloy().youngsModulus() / leg.thickness());
  }
}
