package spanledger.assembly;

import java.util.ArrayList;
import java.util.List;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Vector;

/** Makes the posts, beams, bearers and floors of a platform. */
final class FloorGenerator {

  private static final List<Side> LONG_SIDES = List.of(Side.NORTH, Side.SOUTH);

  private final PlatformDraft made;
  private final Platform platform;
  private final Draft draft;
  private final Problems.At problems;

  /**
   * A generator.
   *
   * @param problems takes what does not fit other platforms
   */
  FloorGenerator(PlatformDraft made, Problems.At problems) {
    this.made = made;
    this.problems = problems;
    this.platform = made.platform();
    this.draft = made.draft();
  }

  void generate() {
    for (Side side : LONG_SIDES) {
      makePosts(side);
      makeEdge(side);
    }
    makeBearers();
    makeFloors();
  }

  private void makePosts(Side side) {
    List<Double> lines = platform.lines();
    for (int i = 0; i < lines.size(); i++) {
      String label = side.words() + (i + 1);
      Vector onFloor = platform.onSide(side, lines.get(i));
      Node foot = draft.node(made.name(label + "/foot"), platform.foot(side, i));
      Node floor = draft.node(made.name(label + "/floor"), onFloor);
      DraftMember post = post(label, foot, PostTops.own(platform, side, i));
      post.through(floor);
      made.addPost(side, post);
      if (platform.isRailed(side, i)) {
        makeRailPost(side, label, floor, post);
      }
      if (!draft.foot(made.name("foot-" + label), foot, platform.posts().foot())) {
        problems
            .at("posts")
            .at("foot")
            .add(
                "a foot of "
                    + made.name("post-" + label)
                    + ", which it shares with "
                    + post.name()
                    + " and holds otherwise",
                "one foot for both",
                "give the posts of both platforms the same \"foot\"");
      }
    }
  }

  /** The post on a foot; that of another platform if both are of one part. */
  private DraftMember post(String label, Node foot, double ownTop) {
    Part part = platform.posts().part();
    return draft
        .postOn(foot, part)
        .orElseGet(
            () -> {
              double top = draft.tops().of(foot.place(), part);
              boolean higher = top > ownTop + Draft.SAME_PLACE;
              Vector place = new Vector(foot.place().x(), foot.place().y(), top);
              String word = higher ? "/upper" : top > platform.floorLevel() ? "/top" : "/floor";
              return member(
                  "post-" + label,
                  MemberRole.LEG,
                  part,
                  foot,
                  draft.node(made.name(label + word), place));
            });
  }

  /**
   * What stands above the floor where the guardrail meets a post: the post itself if it reaches up,
   * else a rail post on it; PlatformChecks has made sure that its part is given.
   */
  private void makeRailPost(Side side, String label, Node floor, DraftMember post) {
    Vector top = new Vector(floor.place().x(), floor.place().y(), platform.railLevel());
    Node head = draft.node(made.name(label + "/top"), top);
    if (post.holds(top)) {
      post.through(head);
      made.addRailPost(side, label, post);
    } else {
      Part part = platform.guardrail().flatMap(Guardrail::railPost).orElseThrow();
      made.addRailPost(
          side, label, member("rail-post-" + label, MemberRole.RAIL_POST, part, floor, head));
    }
  }

  private DraftMember member(String rest, MemberRole role, Part part, Node from, Node to) {
    return draft.member(made.name(rest), role, part, from, to);
  }

  private void makeEdge(Side side) {
    int bays = platform.bays().size();
    int step = platform.edgeBeams().baysPerBeam();
    for (int from = 0; from < bays; from += step) {
      int to = Math.min(from + step, bays);
      DraftMember beam =
          member(
              "edge-" + side.words() + "/" + bayWords(from, to),
              MemberRole.FLOOR,
              platform.edgeBeams().part(),
              floorNode(side, from),
              floorNode(side, to));
      for (int line = from + 1; line < to; line++) {
        beam.through(floorNode(side, line));
      }
      made.addBeam(side, beam);
    }
  }

  private Node floorNode(Side side, int line) {
    Vector place = platform.onSide(side, platform.lines().get(line));
    return draft.node(made.name(side.words() + (line + 1) + "/floor"), place);
  }

  /** For example {@code bay2} or {@code bay1-2}. */
  private static String bayWords(int from, int to) {
    return to - from == 1 ? "bay" + to : "bay" + (from + 1) + "-" + to;
  }

  private void makeBearers() {
    double length = platform.length();
    double fromEnds = platform.bearers().fromEnds();
    List<Double> places = places();
    for (int i = 0; i < places.size(); i++) {
      addBearer("bearer" + (i + 1), platform.bearers().part(), places.get(i));
    }
    if (fromEnds > 0 && platform.endBeams().isPresent()) {
      addBearer("end-west", platform.endBeams().get(), 0);
      addBearer("end-east", platform.endBeams().get(), length);
    }
    made.bearerAt(0).ifPresent(bearer -> made.addBeam(Side.WEST, bearer));
    made.bearerAt(length).ifPresent(bearer -> made.addBeam(Side.EAST, bearer));
  }

  /** Where the bearers lie: at the ends, at the inner posts, and evenly between. */
  private List<Double> places() {
    List<Double> stops = new ArrayList<>(platform.lines());
    stops.set(0, platform.bearers().fromEnds());
    stops.set(stops.size() - 1, platform.length() - platform.bearers().fromEnds());
    List<Double> places = new ArrayList<>();
    for (int i = 0; i + 1 < stops.size(); i++) {
      double stretch = stops.get(i + 1) - stops.get(i);
      int parts = EvenDivision.parts(stretch, platform.bearers().spacing());
      for (int k = 0; k < parts; k++) {
        places.add(stops.get(i) + stretch * k / parts);
      }
    }
    places.add(stops.get(stops.size() - 1));
    return places;
  }

  private void addBearer(String rest, Part part, double x) {
    Node south = made.onBeam(Side.SOUTH, x, made.name(rest + "/south"));
    Node north = made.onBeam(Side.NORTH, x, made.name(rest + "/north"));
    made.bearers().put(x, member(rest, MemberRole.FLOOR, part, south, north));
  }

  private void makeFloors() {
    int bays = platform.bays().size();
    int step = platform.deck().baysPerFloor();
    List<Double> lines = platform.lines();
    for (int from = 0; from < bays; from += step) {
      int to = Math.min(from + step, bays);
      List<DraftMember> carriedBy =
          List.copyOf(
              made.bearers()
                  .subMap(
                      lines.get(from) - Draft.SAME_PLACE,
                      true,
                      lines.get(to) + Draft.SAME_PLACE,
                      true)
                  .values());
      draft.floor(
          made.name("deck/" + bayWords(from, to)),
          List.of(
              floorNode(Side.SOUTH, from),
              floorNode(Side.SOUTH, to),
              floorNode(Side.NORTH, to),
              floorNode(Side.NORTH, from)),
          carriedBy,
          platform.deck().finishes(),
          platform.deck().panel());
    }
  }
}
