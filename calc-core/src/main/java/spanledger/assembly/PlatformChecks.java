package spanledger.assembly;

import java.util.TreeSet;

/** Finds what does not fit in a platform, apart from gates and posts of its guardrail. */
final class PlatformChecks {

  /**
   * Bearers and posts are no nearer than this, mm: brackets need room. Common practice, no source.
   */
  private static final double LEAST_APART = 50;

  /** More bearers or bays than this are a slip of the pen. */
  private static final int MOST_PIECES = 500;

  /** The farthest place from the origin along an axis, mm; the rule of job files. */
  private static final double FARTHEST = 1e6;

  private final Platform platform;
  private final Problems.At at;

  PlatformChecks(Platform platform, Problems.At at) {
    this.platform = platform;
    this.at = at;
  }

  void run() {
    checkSizes();
    checkBays();
    checkGround();
    checkBearers();
    new BracingChecks(platform, at).run();
    platform.guardrail().ifPresent(this::checkGuardrail);
  }

  private void checkSizes() {
    double farthest =
        Math.max(
            Math.max(Math.abs(platform.corner().x()), Math.abs(platform.corner().y())),
            Math.max(
                Math.abs(platform.corner().z()),
                Math.max(platform.floorHeight(), Math.max(platform.length(), platform.width()))));
    double rail = platform.guardrail().map(Guardrail::height).orElse(0.0);
    double deepest =
        platform.posts().ground().values().stream().mapToDouble(Math::abs).max().orElse(0);
    if (Math.max(farthest, Math.max(rail, deepest)) > FARTHEST) {
      at.add(
          "a size or place of more than 1 km",
          "sizes and places of one structure",
          "check the units, or move the origin to the structure");
    }
  }

  private void checkBays() {
    double sum = platform.bays().stream().mapToDouble(Double::doubleValue).sum();
    if (Math.abs(sum - platform.length()) > Draft.SAME_PLACE) {
      at.at("bays")
          .add(
              "bays that are " + Problems.mm(sum) + " long together",
              "bays that make the length of the platform, " + Problems.mm(platform.length()),
              "correct the bays, or make the length " + Problems.mm(sum));
    }
    double shortest = platform.bays().stream().mapToDouble(Double::doubleValue).min().orElse(0);
    if (shortest < RailPlanner.LEAST_BETWEEN_POSTS || platform.bays().size() > MOST_PIECES) {
      at.at("bays")
          .add(
              platform.bays().size() + " bays, the shortest of " + Problems.mm(shortest),
              "at most "
                  + MOST_PIECES
                  + " bays of "
                  + Problems.mm(RailPlanner.LEAST_BETWEEN_POSTS)
                  + " or more",
              "correct the bays");
    }
    if (platform.width() < RailPlanner.LEAST_BETWEEN_POSTS) {
      at.at("width")
          .add(
              Problems.mm(platform.width()),
              "at least " + Problems.mm(RailPlanner.LEAST_BETWEEN_POSTS),
              "correct the width or its unit");
    }
  }

  private void checkGround() {
    TreeSet<String> known = new TreeSet<>();
    for (int i = 1; i <= platform.bays().size() + 1; i++) {
      known.add("north" + i);
      known.add("south" + i);
    }
    for (String post : new TreeSet<>(platform.posts().ground().keySet())) {
      Problems.At here = at.at("posts", "ground", post);
      double ground = platform.posts().ground().getOrDefault(post, 0.0);
      if (!known.contains(post)) {
        here.add(
            "a post " + post,
            "a post from north1 to north"
                + (platform.bays().size() + 1)
                + " or from south1 to south"
                + (platform.bays().size() + 1),
            "correct the name");
      } else if (ground > platform.floorHeight() - LEAST_APART) {
        here.add(
            "ground at " + Problems.mm(ground) + " under a floor at " + floorWords(),
            "ground at least "
                + Problems.mm(LEAST_APART)
                + " under the floor: at most "
                + Problems.mm(platform.floorHeight() - LEAST_APART),
            "correct the ground, or raise the floor");
      }
    }
    if (platform.floorHeight() < LEAST_APART) {
      at.at("floorHeight")
          .add(floorWords(), "at least " + Problems.mm(LEAST_APART), "correct the height");
    }
  }

  private String floorWords() {
    return Problems.mm(platform.floorHeight());
  }

  private void checkBearers() {
    Problems.At here = at.at("crossBearers");
    double fromEnds = platform.bearers().fromEnds();
    int bays = platform.bays().size();
    double first = platform.bays().get(0);
    double last = platform.bays().get(bays - 1);
    double most = bays == 1 ? (first - LEAST_APART) / 2 : Math.min(first, last) - LEAST_APART;
    if (fromEnds > most) {
      here.at("fromEnds")
          .add(
              Problems.mm(fromEnds),
              "a place in the first bay, before its far posts: from 0 mm to " + Problems.mm(most),
              "correct it");
    } else if (fromEnds > 0 && fromEnds < LEAST_APART) {
      here.at("fromEnds")
          .add(
              Problems.mm(fromEnds),
              "0 mm, or at least " + Problems.mm(LEAST_APART),
              "put the bearer at the posts or farther from them");
    }
    double spacing = platform.bearers().spacing();
    if (spacing < LEAST_APART || platform.length() / spacing > MOST_PIECES) {
      here.at("spacing")
          .add(
              Problems.mm(spacing),
              "at least "
                  + Problems.mm(Math.max(LEAST_APART, Math.ceil(platform.length() / MOST_PIECES))),
              "correct the spacing or its unit");
    }
    if (fromEnds == 0 && platform.endBeams().isPresent()) {
      at.at("endBeams")
          .add(
              "end beams where bearers lie",
              "one member at each end",
              "leave \"endBeams\" out, or give \"fromEnds\"");
    }
  }

  private void checkGuardrail(Guardrail rail) {
    Problems.At here = at.at("guardrail");
    if (!platform.posts().through() && rail.railPost().isEmpty()) {
      here.add(
          "posts that end at the floor, and no part for rail posts",
          "\"railPost\": the part of posts that stand on the floor alone",
          "name the part, or let the posts run through");
    }
    RailHeights.check(
        rail.toeBoard().map(Guardrail.ToeBoard::middle).orElse(0.0),
        rail.middleRails(),
        rail.height(),
        here);
  }
}
