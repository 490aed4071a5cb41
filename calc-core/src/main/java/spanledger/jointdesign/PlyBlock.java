package spanledger.jointdesign;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import spanledger.joint.FacePlace;
import spanledger.joint.Ply;
import spanledger.provenance.Source;
import spanledger.resistance.joint.BlockOfMetal;
import spanledger.resistance.joint.Metal;

/**
 * The block that the bolts of a face tear out of a ply towards the nearer end: along both outer
 * lines of holes and across the last row, between the lines or from them out to both edges,
 * whichever is less; for one line along it and out to the nearer edge.
 */
final class PlyBlock {

  private PlyBlock() {}

  /**
   * The block; empty for a single bolt, whose tear-out is in its bearing.
   *
   * @param alongFirst whether the force acts along the first axis of the face (else the second)
   */
  static Optional<BlockOfMetal> of(
      String name, Ply ply, List<FacePlace> places, boolean alongFirst, Source source) {
    if (places.size() < 2) {
      return Optional.empty();
    }
    TreeSet<Double> along = new TreeSet<>();
    TreeSet<Double> across = new TreeSet<>();
    for (FacePlace at : places) {
      along.add(alongFirst ? at.a() : at.b());
      across.add(alongFirst ? at.b() : at.a());
    }
    double low = alongFirst ? ply.from().a() : ply.from().b();
    double high = alongFirst ? ply.to().a() : ply.to().b();
    double end = Math.min(along.first() - low, high - along.last());
    double shearLength = along.last() - along.first() + end;
    double shearHoles = (along.size() - 0.5) * ply.hole();
    boolean oneLine = across.size() == 1;
    double before = across.first() - (alongFirst ? ply.from().b() : ply.from().a());
    double beyond = (alongFirst ? ply.to().b() : ply.to().a()) - across.last();
    double width = oneLine ? Math.min(before, beyond) : across.last() - across.first();
    double widthHoles = (oneLine ? 0.5 : across.size() - 1) * ply.hole();
    if (!oneLine && before + beyond - ply.hole() < width - widthHoles) {
      width = before + beyond;
      widthHoles = ply.hole();
    }
    int sides = oneLine ? 1 : 2;
    double t = ply.thickness();
    return Optional.of(
        new BlockOfMetal(
            name,
            Metal.of(ply.alloy()),
            Math.max(0, width - widthHoles) * t,
            width * t,
            sides * (shearLength - shearHoles) * t,
            sides * shearLength * t,
            oneLine,
            source));
  }
}
