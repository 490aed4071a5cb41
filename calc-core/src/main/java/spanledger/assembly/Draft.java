package spanledger.assembly;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spanledger.action.FloorBays;
import spanledger.action.Rail;
import spanledger.action.RailKind;
import spanledger.action.Surface;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Support;
import spanledger.frame.Vector;

/** A frame while it is put together. Places within 1 mm of each other are one node. */
final class Draft {

  /** Places nearer than this are one place, mm; the rule of job files. */
  static final double SAME_PLACE = 1.0;

  /** A floor before its members are finished. */
  private record FloorDraft(
      String name,
      List<Node> corners,
      List<DraftMember> carriedBy,
      double finishes,
      Optional<String> panel) {}

  /** A rail before its members are finished. */
  private record RailDraft(
      String name, RailKind kind, List<DraftMember> rails, List<DraftMember> posts, Vector out) {}

  private record Cell(long x, long y, long z) {}

  /** What two platforms that adjoin must have in common to share a member. */
  private record Ends(MemberRole role, Part part, Node from, Node to) {}

  private final Map<String, Node> nodes = new LinkedHashMap<>();
  private final Map<Cell, List<Node>> grid = new HashMap<>();
  private final Map<String, DraftMember> members = new LinkedHashMap<>();
  private final Map<Ends, DraftMember> shareable = new HashMap<>();
  private final PostTops tops;
  private final Map<String, Support> feet = new LinkedHashMap<>();
  private final List<FloorDraft> floors = new ArrayList<>();
  private final List<RailDraft> rails = new ArrayList<>();
  private final List<Flight> flights = new ArrayList<>();
  private final List<RailStretch> stretches = new ArrayList<>();

  /**
   * An empty draft.
   *
   * @param tops how high posts must reach that several platforms share
   */
  Draft(PostTops tops) {
    this.tops = tops;
  }

  /** How high posts must reach that several platforms share. */
  PostTops tops() {
    return tops;
  }

  /** The node at a place; if there is none yet, one of this name. */
  Node node(String name, Vector place) {
    Cell own = cell(place);
    for (long x = own.x() - 1; x <= own.x() + 1; x++) {
      for (long y = own.y() - 1; y <= own.y() + 1; y++) {
        for (long z = own.z() - 1; z <= own.z() + 1; z++) {
          for (Node near : grid.getOrDefault(new Cell(x, y, z), List.of())) {
            if (near.place().minus(place).norm() <= SAME_PLACE) {
              return near;
            }
          }
        }
      }
    }
    Node made = new Node(name, place);
    if (nodes.put(name, made) != null) {
      throw new IllegalStateException("Two nodes would be named " + name + ".");
    }
    grid.computeIfAbsent(own, c -> new ArrayList<>()).add(made);
    return made;
  }

  private static Cell cell(Vector place) {
    return new Cell(
        (long) Math.floor(place.x() / SAME_PLACE),
        (long) Math.floor(place.y() / SAME_PLACE),
        (long) Math.floor(place.z() / SAME_PLACE));
  }

  /**
   * Adds a member between two nodes. A floor member, post or brace that another platform has made
   * of the same part between the same nodes is shared.
   */
  DraftMember member(String name, MemberRole role, Part part, Node from, Node to) {
    Ends ends = new Ends(role, part, from, to);
    DraftMember there = shareable.get(ends);
    if (there != null && !maker(there.name()).equals(maker(name))) {
      return there;
    }
    DraftMember made = new DraftMember(name, role, part, from, to);
    if (members.put(name, made) != null) {
      throw new IllegalStateException("Two members would be named " + name + ".");
    }
    if (role != MemberRole.RAIL) {
      shareable.put(ends, made);
    }
    return made;
  }

  private static String maker(String name) {
    return name.substring(0, name.indexOf('/'));
  }

  /** The post of a part that another platform has put on a foot. */
  Optional<DraftMember> postOn(Node foot, Part part) {
    return members.values().stream()
        .filter(
            member ->
                member.role() == MemberRole.LEG
                    && member.first().equals(foot)
                    && member.part().equals(part))
        .findFirst();
  }

  /**
   * Adds a foot, unless the node has one already.
   *
   * @return whether the node is held as asked for
   */
  boolean foot(String name, Node node, List<Restraint> holds) {
    Support asked = new Support(node, holds);
    for (Support there : feet.values()) {
      if (there.node().equals(node)) {
        return there.equals(asked);
      }
    }
    feet.put(name, asked);
    return true;
  }

  /** Adds a floor; its panel may not be known. */
  void floor(
      String name,
      List<Node> corners,
      List<DraftMember> carriedBy,
      double finishes,
      Optional<String> panel) {
    floors.add(new FloorDraft(name, corners, List.copyOf(carriedBy), finishes, panel));
  }

  /** Adds a rail. */
  void rail(
      String name, RailKind kind, List<DraftMember> pieces, List<DraftMember> posts, Vector out) {
    rails.add(new RailDraft(name, kind, List.copyOf(pieces), List.copyOf(posts), out));
  }

  /** Notes a flight. */
  void flight(Flight flight) {
    flights.add(flight);
  }

  /** Notes a stretch of guardrail. */
  void stretch(RailStretch stretch) {
    stretches.add(stretch);
  }

  /** The members in order. */
  List<DraftMember> members() {
    return List.copyOf(members.values());
  }

  /**
   * The finished frame.
   *
   * @param without the names of members that are left out; none of them carries a floor or a rail
   */
  GeneratedFrame finish(Set<String> without) {
    Map<String, Member> finished = new LinkedHashMap<>();
    Map<String, Part> parts = new LinkedHashMap<>();
    for (DraftMember draft : members.values()) {
      if (!without.contains(draft.name())) {
        finished.put(draft.name(), draft.finish());
        parts.put(draft.name(), draft.part());
      }
    }
    Set<Node> used = new HashSet<>();
    finished.values().forEach(member -> used.addAll(member.nodes()));
    return new GeneratedFrame(
        nodes.values().stream().filter(used::contains).toList(),
        List.copyOf(finished.values()),
        parts,
        feet,
        floors.stream()
            .map(
                f ->
                    new Surface(
                        f.name(),
                        f.corners(),
                        of(f.carriedBy(), finished),
                        f.finishes(),
                        FloorBays.SPANS,
                        f.panel()))
            .toList(),
        rails.stream()
            .map(
                r ->
                    new Rail(
                        r.name(),
                        r.kind(),
                        of(r.rails(), finished),
                        of(r.posts(), finished),
                        r.out()))
            .toList(),
        flights,
        stretches);
  }

  private static List<Member> of(List<DraftMember> drafts, Map<String, Member> finished) {
    List<Member> members = new ArrayList<>();
    for (DraftMember draft : drafts) {
      Member member = finished.get(draft.name());
      if (member != null) {
        members.add(member);
      }
    }
    return members;
  }
}
