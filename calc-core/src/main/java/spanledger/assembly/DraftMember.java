package spanledger.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Vector;

/** A member to which nodes are still added. */
final class DraftMember {

  private final String name;
  private final MemberRole role;
  private final Part part;
  private final Vector direction;
  private final double length;
  private final Node from;
  private final TreeMap<Double, Node> along = new TreeMap<>();

  DraftMember(String name, MemberRole role, Part part, Node from, Node to) {
    this.name = name;
    this.role = role;
    this.part = part;
    this.from = from;
    Vector whole = to.place().minus(from.place());
    this.direction = whole.unit();
    this.length = whole.norm();
    along.put(0.0, from);
    along.put(length, to);
  }

  String name() {
    return name;
  }

  MemberRole role() {
    return role;
  }

  Part part() {
    return part;
  }

  Node first() {
    return from;
  }

  Node last() {
    return along.lastEntry().getValue();
  }

  double length() {
    return length;
  }

  Vector direction() {
    return direction;
  }

  /** The place at a distance from the first node. */
  Vector at(double distance) {
    return from.place().plus(direction.times(distance));
  }

  /** How far along this member a place lies, mm. */
  double distanceOf(Vector place) {
    return place.minus(from.place()).dot(direction);
  }

  /** Whether a place lies on this member, ends included. */
  boolean holds(Vector place) {
    double distance = distanceOf(place);
    return distance >= -Draft.SAME_PLACE
        && distance <= length + Draft.SAME_PLACE
        && at(distance).minus(place).norm() <= Draft.SAME_PLACE;
  }

  /** Joins this member to a node that lies on it; returns the node. */
  Node through(Node node) {
    if (!along.containsValue(node)) {
      along.put(distanceOf(node.place()), node);
    }
    return node;
  }

  boolean isJoinedTo(Node node) {
    return along.containsValue(node);
  }

  List<Node> nodes() {
    return new ArrayList<>(along.values());
  }

  /** The length that joints leave of the shortest stretch between neighbouring nodes, mm. */
  double leftByInsets() {
    double least = Double.POSITIVE_INFINITY;
    double before = 0;
    for (double at : along.tailMap(0.0, false).keySet()) {
      double taken = (before == 0 ? part.inset() : 0) + (at == along.lastKey() ? part.inset() : 0);
      least = Math.min(least, at - before - taken);
      before = at;
    }
    return least;
  }

  Member finish() {
    Vector inset = direction.times(part.inset());
    return new Member(
        name,
        role,
        nodes(),
        part.section(),
        part.alloy(),
        part.roll(),
        part.start().moved(inset),
        part.end().moved(inset.times(-1)));
  }
}
