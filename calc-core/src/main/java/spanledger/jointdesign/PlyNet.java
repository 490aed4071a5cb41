package spanledger.jointdesign;

import java.util.List;
import spanledger.joint.FacePlace;
import spanledger.joint.Ply;
import spanledger.provenance.Source;
import spanledger.resistance.joint.Metal;
import spanledger.resistance.joint.NetCut;

/** The cut through a ply straight across a force, where it meets the most holes. */
final class PlyNet {

  private PlyNet() {}

  /**
   * The cut. Holes that a straight line across the force may touch together count together, so
   * staggered rows closer than a hole are one.
   *
   * @param alongFirst whether the force acts along the first axis of the face (else the second)
   */
  static NetCut of(
      String name, Ply ply, List<FacePlace> places, boolean alongFirst, Source source) {
    double width = alongFirst ? ply.to().b() - ply.from().b() : ply.to().a() - ply.from().a();
    long most = 0;
    for (FacePlace at : places) {
      double own = alongFirst ? at.a() : at.b();
      most =
          Math.max(
              most,
              places.stream()
                  .filter(
                      other -> Math.abs((alongFirst ? other.a() : other.b()) - own) < ply.hole())
                  .count());
    }
    double gross = width * ply.thickness();
    return new NetCut(
        name, Metal.of(ply.alloy()), gross, gross - most * ply.hole() * ply.thickness(), source);
  }
}
