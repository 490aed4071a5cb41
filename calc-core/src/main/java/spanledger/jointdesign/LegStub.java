package spanledger.jointdesign;

import spanledger.joint.BracketLeg;
import spanledger.joint.FacePlace;
import spanledger.joint.JointFace;
import spanledger.joint.Ply;
import spanledger.provenance.Source;
import spanledger.resistance.joint.Metal;
import spanledger.resistance.joint.TStub;

/** The part of a bracket leg that belongs to one bolt, measured in a face. */
final class LegStub {

  /** Part of a fillet's radius that is taken off; EN 1993-1-8, Figure 6.2, from memory. */
  private static final double FILLET = 0.8;

  private LegStub() {}

  /**
   * Measures it.
   *
   * @param index of the bolt
   * @throws IllegalArgumentException if the bolt lies in the fillet or beyond
   */
  static TStub of(JointFace face, BracketLeg line, int index, String name, Source source) {
    Ply ply = face.plies().get(0);
    double own = across(face.bolts().places().get(index), line);
    return new TStub(
        name + " at " + ply.name(),
        Metal.of(ply.alloy()),
        ply.thickness(),
        Math.abs(own - line.at()) - FILLET * line.radius(),
        own < line.at() ? own - across(ply.from(), line) : across(ply.to(), line) - own,
        alongRoot(face, line, index, true),
        alongRoot(face, line, index, false),
        source);
  }

  /** The coordinate of a place across the line. */
  static double across(FacePlace place, BracketLeg line) {
    return line.acrossFirst() ? place.a() : place.b();
  }

  /** The coordinate of a place along the line. */
  static double along(FacePlace place, BracketLeg line) {
    return line.acrossFirst() ? place.b() : place.a();
  }

  private static double alongRoot(JointFace face, BracketLeg line, int index, boolean upwards) {
    Ply ply = face.plies().get(0);
    double own = along(face.bolts().places().get(index), line);
    double nearest = Math.abs(along(upwards ? ply.to() : ply.from(), line) - own);
    for (FacePlace place : face.bolts().places()) {
      double other = along(place, line);
      double away = upwards ? other - own : own - other;
      if (away > 0) {
        nearest = Math.min(nearest, away / 2);
      }
    }
    return nearest;
  }
}
