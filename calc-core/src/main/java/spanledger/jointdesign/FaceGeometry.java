package spanledger.jointdesign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
 * A face as a rigid body on springs, each worked out by {@link FaceStiffness}. In shear the bolts
 * of a face are alike, so that they share by their places.
 *
 * @param geometry the body
 * @param springs where its stiffnesses come from
 */
record FaceGeometry(JointGeometry geometry, FaceSprings springs) {

  /** In how many pieces the bed is divided either way; an even number, so that none is at 0. */
  private static final int PIECES = 4;

  /**
   * Of a face.
   *
   * @param where the joint and the face, in words
   * @param source where the description comes from
   * @throws IllegalArgumentException if a bolt lies where its leg cannot bend
   */
  static FaceGeometry of(JointFace face, String where, Source source) {
    FaceStiffness stiffness = new FaceStiffness(face, where, source);
    List<FaceStiffness.Spring> stretches = stiffness.bolts();
    List<BoltPlace> bolts = new ArrayList<>();
    for (int i = 0; i < stretches.size(); i++) {
      FacePlace at = face.bolts().places().get(i);
      bolts.add(new BoltPlace("bolt " + (i + 1), at.a(), at.b(), 1, 1, stretches.get(i).value()));
    }
    Optional<FaceStiffness.Spring> key = stiffness.key();
    List<KeyPlace> keys = new ArrayList<>();
    face.keys().ifPresent(own -> addKeys(own, key.orElseThrow().value(), keys));
    Bed bed = Bed.of(face);
    FaceStiffness.Spring piece = stiffness.bed(bed.width() / PIECES, bed.height() / PIECES);
    return new FaceGeometry(
        new JointGeometry(bolts, keys, bed.pieces(piece.value())),
        new FaceSprings(
            stretches.stream().map(FaceStiffness.Spring::feed).toList(),
            piece.feed(),
            key.map(spring -> spring.run().feed("k_h"))));
  }

  private static void addKeys(FaceKeys own, double stiffness, List<KeyPlace> keys) {
    double alongSlot = own.bearsAlongFirst() ? Math.PI / 2 : 0;
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

  /** Where all plies overlap. */
  private record Bed(FacePlace from, FacePlace to) {

    static Bed of(JointFace face) {
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
      return new Bed(new FacePlace(fromA, fromB), new FacePlace(toA, toB));
    }

    double width() {
      return to.a() - from.a();
    }

    double height() {
      return to.b() - from.b();
    }

    /** The pieces, each as stiff as given. */
    List<ContactPoint> pieces(double stiffness) {
      return ContactPoint.rectangle(
          "bed",
          (from.a() + to.a()) / 2,
          (from.b() + to.b()) / 2,
          width(),
          height(),
          PIECES,
          PIECES,
          stiffness * (PIECES / width()) * (PIECES / height()));
    }
  }
}
