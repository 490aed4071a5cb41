package spanledger.joint;

import java.util.List;
import spanledger.frame.Vector;

/**
 * A face of a bracket that is mirrored and turned: its axes become axes of the joint again, perhaps
 * exchanged and of the other sense.
 */
final class FaceTurn {

  private final BracketPlace place;
  private final JointFace face;
  private final FaceNormal normal;
  private final boolean exchanged;
  private final double senseOfFirst;
  private final double senseOfSecond;

  FaceTurn(BracketPlace place, JointFace face) {
    this.place = place;
    this.face = face;
    Vector square = place.turned(face.normal().axis().direction().times(face.normal().sign()));
    normal = normalAlong(square);
    Vector first = place.turned(face.first().direction());
    Vector second = place.turned(face.second().direction());
    exchanged = Math.abs(first.dot(normal.first().direction())) < 0.5;
    Vector alongFirst = exchanged ? normal.second().direction() : normal.first().direction();
    Vector alongSecond = exchanged ? normal.first().direction() : normal.second().direction();
    senseOfFirst = Math.signum(first.dot(alongFirst));
    senseOfSecond = Math.signum(second.dot(alongSecond));
  }

  private static FaceNormal normalAlong(Vector square) {
    for (JointAxis axis : JointAxis.values()) {
      double along = square.dot(axis.direction());
      if (Math.abs(along) > 0.5) {
        return new FaceNormal(axis, along > 0);
      }
    }
    throw new IllegalArgumentException("A face looks along an axis of its joint.");
  }

  JointFace turned(String name) {
    return new JointFace(
        name,
        normal,
        place.turned(face.origin()).plus(place.at()),
        bolts(face.bolts()),
        face.keys().map(this::keys),
        face.plies().stream().map(this::ply).toList(),
        face.leg().map(this::leg),
        face.lips().map(this::lips),
        face.wall().map(this::wall),
        face.friction(),
        face.packing());
  }

  private FacePlace place(FacePlace of) {
    // Adding zero leaves no negative zero, which a workbook would show as another number.
    double first = senseOfFirst * of.a() + 0.0;
    double second = senseOfSecond * of.b() + 0.0;
    return exchanged ? new FacePlace(second, first) : new FacePlace(first, second);
  }

  private List<FacePlace> places(List<FacePlace> of) {
    return of.stream().map(this::place).toList();
  }

  private FaceBolts bolts(FaceBolts own) {
    return new FaceBolts(
        own.size(),
        own.grade(),
        own.head(),
        places(own.places()),
        own.shearPlanes(),
        own.threadInShear(),
        own.tightening());
  }

  private FaceKeys keys(FaceKeys own) {
    return new FaceKeys(
        places(own.places()),
        own.bearsAlongFirst() != exchanged,
        own.depth(),
        own.length(),
        own.thickness(),
        own.clearance(),
        own.side(),
        own.alloy(),
        own.slotAlloy());
  }

  private Ply ply(Ply own) {
    FacePlace one = place(own.from());
    FacePlace other = place(own.to());
    return new Ply(
        own.name(),
        own.thickness(),
        own.alloy(),
        own.hole(),
        new FacePlace(Math.min(one.a(), other.a()), Math.min(one.b(), other.b())),
        new FacePlace(Math.max(one.a(), other.a()), Math.max(one.b(), other.b())),
        own.side());
  }

  private BracketLeg leg(BracketLeg own) {
    double sense = own.acrossFirst() ? senseOfFirst : senseOfSecond;
    return new BracketLeg(own.acrossFirst() != exchanged, sense * own.at() + 0.0, own.radius());
  }

  private SlotLips lips(SlotLips own) {
    return new SlotLips(
        own.alongFirst() != exchanged,
        own.reach(),
        own.thickness(),
        own.opening(),
        own.toEnd(),
        own.alloy(),
        own.source());
  }

  private FaceWall wall(FaceWall own) {
    double sense = own.alongFirst() ? senseOfSecond : senseOfFirst;
    return new FaceWall(
        own.alongFirst() != exchanged,
        own.width(),
        sense * own.middle() + 0.0,
        own.thickness(),
        own.clamped(),
        own.toEnd(),
        own.alloy(),
        own.source());
  }
}
