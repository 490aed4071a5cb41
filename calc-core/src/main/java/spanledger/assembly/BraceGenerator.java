package spanledger.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;

/** Makes the braces of a platform. */
final class BraceGenerator {

  private final PlatformDraft made;
  private final Platform platform;

  /** Two neighbouring posts of a side. */
  private record Pair(
      String place, String firstLabel, DraftMember first, String secondLabel, DraftMember second) {}

  BraceGenerator(PlatformDraft made) {
    this.made = made;
    this.platform = made.platform();
  }

  void generate() {
    platform.bracing().ties().ifPresent(this::makeTies);
    platform.bracing().crosses().ifPresent(this::makeCrosses);
    platform.bracing().knees().ifPresent(this::makeKnees);
    platform.bracing().plan().ifPresent(this::makePlan);
  }

  private List<Pair> pairs(Side side, Set<Integer> bays) {
    List<Pair> pairs = new ArrayList<>();
    if (side.isLong()) {
      List<DraftMember> posts = made.posts(side);
      for (int bay = 1; bay < posts.size(); bay++) {
        if (bays.isEmpty() || bays.contains(bay)) {
          pairs.add(
              new Pair(
                  side.words() + "/bay" + bay,
                  side.words() + bay,
                  posts.get(bay - 1),
                  side.words() + (bay + 1),
                  posts.get(bay)));
        }
      }
    } else {
      int line = side == Side.WEST ? 0 : platform.bays().size();
      pairs.add(
          new Pair(
              side.words(),
              Side.SOUTH.words() + (line + 1),
              made.posts(Side.SOUTH).get(line),
              Side.NORTH.words() + (line + 1),
              made.posts(Side.NORTH).get(line)));
    }
    return pairs;
  }

  private void brace(String rest, Part part, Node from, Node to) {
    made.draft().member(made.name(rest), MemberRole.BRACE, part, from, to);
  }

  private double level(double height) {
    return platform.corner().z() + height;
  }

  private static Stream<Side> inOrder(Set<Side> sides) {
    return Stream.of(Side.values()).filter(sides::contains);
  }

  private void makeTies(Ties ties) {
    double level = level(ties.height());
    inOrder(ties.sides())
        .flatMap(side -> pairs(side, Set.of()).stream())
        .forEach(
            pair ->
                brace(
                    "tie-" + pair.place(),
                    ties.part(),
                    made.onPost(pair.first(), pair.firstLabel(), level, "tie"),
                    made.onPost(pair.second(), pair.secondLabel(), level, "tie")));
  }

  private void makeCrosses(CrossBraces crosses) {
    inOrder(crosses.sides())
        .flatMap(side -> pairs(side, crosses.bays()).stream())
        .forEach(pair -> makeCross(crosses, pair));
  }

  private void makeCross(CrossBraces crosses, Pair pair) {
    double low = level(crosses.from());
    double high = level(crosses.to());
    String place = "brace-" + pair.place();
    String joint = place.contains("/") ? "-" : "/";
    brace(
        place + joint + "up",
        crosses.part(),
        made.onPost(pair.first(), pair.firstLabel(), low, "brace-low"),
        made.onPost(pair.second(), pair.secondLabel(), high, "brace-high"));
    brace(
        place + joint + "down",
        crosses.part(),
        made.onPost(pair.first(), pair.firstLabel(), high, "brace-high"),
        made.onPost(pair.second(), pair.secondLabel(), low, "brace-low"));
  }

  private void makeKnees(KneeBraces knees) {
    List<Double> lines = platform.lines();
    for (Side side : List.of(Side.NORTH, Side.SOUTH)) {
      for (int i = 0; i < lines.size(); i++) {
        if (knees.lines().isEmpty() || knees.lines().contains(i + 1)) {
          makeKnees(knees, side, i, lines.get(i));
        }
      }
    }
  }

  private void makeKnees(KneeBraces knees, Side side, int line, double x) {
    String label = side.words() + (line + 1);
    Node low =
        made.onPost(
            made.posts(side).get(line), label, platform.floorLevel() - knees.drop(), "knee");
    if (knees.across()) {
      Optional<DraftMember> bearer = made.bearerAt(x);
      double fromSouth = side == Side.SOUTH ? knees.reach() : platform.width() - knees.reach();
      bearer.ifPresent(
          b ->
              brace(
                  "knee-" + label,
                  knees.part(),
                  low,
                  b.through(made.draft().node(made.name(label + "/knee-head"), b.at(fromSouth)))));
    }
    if (knees.along() && line > 0) {
      brace(
          "knee-" + label + "-west",
          knees.part(),
          low,
          head(side, label, "west", x - knees.reach()));
    }
    if (knees.along() && line < platform.bays().size()) {
      brace(
          "knee-" + label + "-east",
          knees.part(),
          low,
          head(side, label, "east", x + knees.reach()));
    }
  }

  private Node head(Side side, String label, String way, double x) {
    return made.onBeam(side, x, made.name(label + "/knee-head-" + way));
  }

  private void makePlan(PlanBraces plan) {
    for (int bay = 1; bay <= platform.bays().size(); bay++) {
      if (plan.bays().isEmpty() || plan.bays().contains(bay)) {
        boolean northward = bay % 2 == 1;
        Side from = northward ? Side.SOUTH : Side.NORTH;
        brace(
            "plan-brace/bay" + bay,
            plan.part(),
            corner(from, bay - 1),
            corner(from.opposite(), bay));
      }
    }
  }

  private Node corner(Side side, int line) {
    return made.onBeam(
        side, platform.lines().get(line), made.name(side.words() + (line + 1) + "/floor"));
  }
}
