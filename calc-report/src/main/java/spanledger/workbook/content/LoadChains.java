package spanledger.workbook.content;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import spanledger.action.Actions;
import spanledger.action.Chains;
import spanledger.action.LoadPath;
import spanledger.action.MovingLoad;
import spanledger.envelope.Influence;
import spanledger.frame.Frame;
import spanledger.frame.Member;
import spanledger.frame.MemberRole;
import spanledger.frame.Vector;

/** The straight chains of members on which moving loads walk, for each direction of a load. */
final class LoadChains {

  /** Parts of each segment that are tried for the worst place. */
  private static final int PARTS = 32;

  /** A place on a path. */
  record Place(LoadPath path, double at) {}

  private final List<LoadPath> paths;

  private LoadChains(List<LoadPath> paths) {
    this.paths = paths;
  }

  static LoadChains of(Frame frame, Actions actions) {
    Map<Vector, Set<String>> byDirection = new LinkedHashMap<>();
    for (MovingLoad load : actions.movingLoads()) {
      for (LoadPath path : load.paths()) {
        for (LoadPath.Lane lane : path.lanes()) {
          byDirection
              .computeIfAbsent(lane.direction(), d -> new TreeSet<>())
              .add(lane.segment().member().name());
        }
      }
    }
    List<LoadPath> paths = new ArrayList<>();
    byDirection.forEach(
        (direction, names) -> {
          for (MemberRole role : MemberRole.values()) {
            List<Member> members =
                frame.members().stream()
                    .filter(m -> m.role() == role && names.contains(m.name()))
                    .toList();
            paths.addAll(new Chains(frame).straight(members, direction));
          }
        });
    return new LoadChains(paths);
  }

  /** The chains of members of a role. */
  List<LoadPath> of(MemberRole role) {
    return paths.stream()
        .filter(path -> path.lanes().get(0).segment().member().role() == role)
        .toList();
  }

  /** The most segments of a chain that a member is in; 0 if no load walks there. */
  int length(Member member) {
    return paths.stream()
        .filter(
            path ->
                path.lanes().stream()
                    .anyMatch(lane -> lane.segment().member().name().equals(member.name())))
        .mapToInt(path -> path.lanes().size())
        .max()
        .orElse(0);
  }

  /** Where a single force has the greatest effect, by size; empty if it has none anywhere. */
  static Optional<Place> most(Influence influence, List<LoadPath> paths) {
    Place most = null;
    double greatest = 0;
    for (LoadPath path : paths) {
      double[] marks = path.marks();
      for (int i = 0; i < path.lanes().size(); i++) {
        for (int k = 0; k <= PARTS; k++) {
          double at = marks[i] + (marks[i + 1] - marks[i]) * k / PARTS;
          double size = Math.abs(influence.ordinate(path, at));
          // Rounding does not move the place.
          if (size > greatest * (1 + 1e-9)) {
            greatest = size;
            most = new Place(path, at);
          }
        }
      }
    }
    return Optional.ofNullable(most);
  }
}
