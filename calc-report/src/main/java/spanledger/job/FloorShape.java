package spanledger.job;

import java.util.List;
import java.util.Optional;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Vector;
import spanledger.job.source.Quoted;

/**
 * Whether a floor is a rectangle and its members lie in it.
 *
 * @param corners four nodes in order around it
 */
record FloorShape(List<Node> corners) {

  /** How far directions may stray from parallel or square, as a sine: a millimetre in a metre. */
  private static final double SQUARENESS = 1e-3;

  /**
   * What is wrong with a corner.
   *
   * @param corner which, from 0
   * @param words what is wrong
   */
  record Fault(int corner, String words) {}

  /** The first corner that does not make a rectangle with the others. */
  Optional<Fault> fault() {
    for (int i = 0; i < corners.size(); i++) {
      if (side(i).norm() <= Tolerance.SAME_PLACE) {
        return fault(i + 1, "is the place of the corner before it");
      }
    }
    double off = Math.abs(side(2).dot(normal()));
    if (off > Tolerance.SAME_PLACE) {
      return fault(3, "is " + Lengths.words(off) + " out of the plane of the other three");
    }
    for (int i = 0; i < corners.size(); i++) {
      Vector turn = side(i).cross(side((i + 1) % corners.size()));
      if (turn.dot(normal()) <= 0) {
        return fault(i + 1, "makes the outline cross or dent; it is not convex");
      }
    }
    Vector closing = side(0).plus(side(2));
    if (closing.norm() > Tolerance.SAME_PLACE) {
      return fault(3, "is " + Lengths.words(closing.norm()) + " from where a rectangle has it");
    }
    if (Math.abs(side(0).unit().dot(side(1).unit())) > SQUARENESS) {
      return fault(1, "is no right angle");
    }
    return Optional.empty();
  }

  /** What keeps a member from carrying this floor together with another one. */
  Optional<String> faultOf(Member member, Member first) {
    String name = "member " + Quoted.text(member.name());
    Vector direction = direction(member);
    if (direction.cross(direction(first)).norm() > SQUARENESS) {
      return Optional.of(name + ", which is not parallel to " + Quoted.text(first.name()));
    }
    double skew =
        Math.min(direction.cross(side(0).unit()).norm(), direction.cross(side(1).unit()).norm());
    if (skew > SQUARENESS) {
      return Optional.of(name + ", which is not parallel to a side of the floor");
    }
    for (Node node : member.nodes()) {
      double off = Math.abs(node.place().minus(corners.get(0).place()).dot(normal()));
      if (off > Tolerance.SAME_PLACE) {
        return Optional.of(
            name
                + ", which at node "
                + Quoted.text(node.name())
                + " is "
                + Lengths.words(off)
                + " out of the plane of the floor");
      }
    }
    return Optional.empty();
  }

  /** The area, mm². */
  double area() {
    return side(0).cross(side(1)).norm();
  }

  private Vector side(int from) {
    return corners.get((from + 1) % corners.size()).place().minus(corners.get(from).place());
  }

  /** Square to the plane of the first three corners; null vector if they are in line. */
  private Vector normal() {
    Vector cross = side(0).cross(side(1));
    return cross.norm() == 0 ? Vector.ZERO : cross.unit();
  }

  private static Vector direction(Member member) {
    List<Node> along = member.nodes();
    return along.get(along.size() - 1).place().minus(along.get(0).place()).unit();
  }

  private Optional<Fault> fault(int corner, String words) {
    int index = corner % corners.size();
    return Optional.of(
        new Fault(
            index, "a floor whose corner " + Quoted.text(corners.get(index).name()) + " " + words));
  }
}
