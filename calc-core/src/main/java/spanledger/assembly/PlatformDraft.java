package spanledger.assembly;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import spanledger.frame.Node;
import spanledger.frame.Vector;

/** The frame of one platform while it is put together, as far as others join on to it. */
final class PlatformDraft {

  private final Platform platform;
  private final Draft draft;
  private final Map<Side, List<DraftMember>> posts = new EnumMap<>(Side.class);
  private final Map<Side, Map<String, DraftMember>> railPosts = new EnumMap<>(Side.class);
  private final Map<Side, List<DraftMember>> beams = new EnumMap<>(Side.class);
  private final TreeMap<Double, DraftMember> bearers = new TreeMap<>();
  private final Map<Side, TreeMap<Double, Station>> stations = new EnumMap<>(Side.class);

  /**
   * A post that holds the guardrail of a side.
   *
   * @param at along the side, mm
   * @param label its name among the posts of the platform, for example {@code north1}
   * @param post the post
   */
  record Station(double at, String label, DraftMember post) {}

  PlatformDraft(Platform platform, Draft draft) {
    this.platform = platform;
    this.draft = draft;
    for (Side side : Side.values()) {
      posts.put(side, new ArrayList<>());
      railPosts.put(side, new LinkedHashMap<>());
      beams.put(side, new ArrayList<>());
      stations.put(side, new TreeMap<>());
    }
  }

  Platform platform() {
    return platform;
  }

  Draft draft() {
    return draft;
  }

  String name(String rest) {
    return platform.name() + "/" + rest;
  }

  /** The posts of a long side from the west, as they stand under the floor. */
  List<DraftMember> posts(Side side) {
    return posts.getOrDefault(side, List.of());
  }

  void addPost(Side side, DraftMember post) {
    posts(side).add(post);
  }

  /** What stands above the floor at a post of a long side, if anything does. */
  Optional<DraftMember> railPost(Side side, String label) {
    return Optional.ofNullable(railPosts.getOrDefault(side, Map.of()).get(label));
  }

  void addRailPost(Side side, String label, DraftMember post) {
    railPosts.getOrDefault(side, Map.of()).put(label, post);
  }

  void addBeam(Side side, DraftMember beam) {
    beams.getOrDefault(side, List.of()).add(beam);
  }

  /** The bearers and end beams by their distance from the west end. */
  NavigableMap<Double, DraftMember> bearers() {
    return bearers;
  }

  /** The bearer or end beam at a distance from the west end. */
  Optional<DraftMember> bearerAt(double x) {
    Double near = bearers.ceilingKey(x - Draft.SAME_PLACE);
    return near != null && near <= x + Draft.SAME_PLACE
        ? Optional.of(Optional.ofNullable(bearers.get(near)).orElseThrow())
        : Optional.empty();
  }

  /** Whether a side has floor members on its whole length. */
  boolean hasBeam(Side side) {
    return !beams.getOrDefault(side, List.of()).isEmpty();
  }

  /** The node on the floor member of a side, made if need be; the members there go through it. */
  Node onBeam(Side side, double at, String name) {
    Vector place = platform.onSide(side, at);
    Node node = draft.node(name, place);
    beams.getOrDefault(side, List.of()).stream()
        .filter(beam -> beam.holds(place))
        .forEach(beam -> beam.through(node));
    return node;
  }

  NavigableMap<Double, Station> stations(Side side) {
    return Optional.ofNullable(stations.get(side)).orElseThrow();
  }

  /** The post of the guardrail at a place of a side, if there is one. */
  Optional<Station> station(Side side, double at) {
    Map.Entry<Double, Station> near = stations(side).ceilingEntry(at - Draft.SAME_PLACE);
    return near != null && near.getKey() <= at + Draft.SAME_PLACE
        ? Optional.of(near.getValue())
        : Optional.empty();
  }

  /** The node of a post at a level; the post goes through it. */
  Node onPost(DraftMember post, String label, double level, String word) {
    Vector foot = post.first().place();
    Node node = draft.node(name(label + "/" + word), new Vector(foot.x(), foot.y(), level));
    return post.through(node);
  }
}
