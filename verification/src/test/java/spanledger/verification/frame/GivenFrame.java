package spanledger.verification.frame;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.action.LoadAxes;
import spanledger.action.LoadCase;
import spanledger.action.LoadOrigin;
import spanledger.action.NodalLoad;
import spanledger.action.SegmentLoad;
import spanledger.analysis.Side;
import spanledger.frame.Frame;
import spanledger.frame.Freedom;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Segment;
import spanledger.frame.Support;
import spanledger.frame.Vector;

/** The "given" part of a case: a frame, its loads, and a load that may stand anywhere. */
final class GivenFrame {

  private static final List<String> FREEDOMS = List.of("X", "Y", "Z", "RX", "RY", "RZ");

  private final Frame frame;
  private final LoadCase loads;
  private final Optional<JsonNode> moving;

  private GivenFrame(Frame frame, LoadCase loads, Optional<JsonNode> moving) {
    this.frame = frame;
    this.loads = loads;
    this.moving = moving;
  }

  static GivenFrame read(JsonNode given, JsonNode bars) {
    Map<String, Node> nodes = new LinkedHashMap<>();
    given
        .required("nodes")
        .properties()
        .forEach(e -> nodes.put(e.getKey(), new Node(e.getKey(), vector(e.getValue()))));
    List<Member> members =
        given.required("members").valueStream().map(m -> member(m, nodes, bars)).toList();
    List<Support> supports =
        given.required("supports").properties().stream()
            .map(
                e ->
                    new Support(
                        find(nodes, e.getKey()),
                        restraints(e.getValue()),
                        e.getValue().path("freeWhenLifted").asBoolean(false)))
            .toList();
    Frame frame = new Frame(List.copyOf(nodes.values()), members, supports);
    List<NodalLoad> nodal = new ArrayList<>();
    List<SegmentLoad> along = new ArrayList<>();
    for (JsonNode load : given.required("loads")) {
      if (load.has("node")) {
        nodal.add(
            new NodalLoad(
                find(nodes, load.get("node").asText()),
                load.has("force") ? vector(load.get("force")) : Vector.ZERO,
                load.has("moment") ? vector(load.get("moment")) : Vector.ZERO,
                "given"));
      } else if (load.has("P")) {
        along.add(point(frame, load, load.required("at").asDouble()));
      } else {
        along.addAll(spread(frame, load));
      }
    }
    return new GivenFrame(
        frame, new LoadCase("given", nodal, along), Optional.ofNullable(given.get("moving")));
  }

  Frame frame() {
    return frame;
  }

  LoadCase loads() {
    return loads;
  }

  /** The load that may stand anywhere, standing at a place along its member. */
  SegmentLoad.Point movingAt(double at) {
    return point(frame, moving.orElseThrow(), at);
  }

  Node node(String name) {
    return frame.nodes().stream().filter(n -> n.name().equals(name)).findFirst().orElseThrow();
  }

  static Freedom freedom(String name) {
    return Freedom.values()[FREEDOMS.indexOf(name)];
  }

  /** A place on one segment. */
  record Place(Segment segment, double x) {}

  /** A place along a member, from its start; at an inner node on the segment of that side. */
  Place place(String member, double x, Side side) {
    return place(frame, member, x, side);
  }

  Segment segment(String member, int number) {
    return segments(frame, member).get(number - 1);
  }

  private static Place place(Frame frame, String member, double x, Side side) {
    double before = 0;
    List<Segment> segments = segments(frame, member);
    for (Segment segment : segments) {
      double length = segment.length();
      boolean last = segment.equals(segments.get(segments.size() - 1));
      double reach = before + length * (side == Side.BEFORE || last ? 1 + 1e-12 : 1 - 1e-12);
      if (x <= reach) {
        return new Place(segment, Math.min(x - before, length));
      }
      before += length;
    }
    throw new IllegalArgumentException(x + " is beyond member " + member);
  }

  private static List<Segment> segments(Frame frame, String member) {
    return frame.segments().stream().filter(s -> s.member().name().equals(member)).toList();
  }

  private static SegmentLoad.Point point(Frame frame, JsonNode load, double at) {
    Place place = place(frame, load.required("member").asText(), at, Side.BEFORE);
    return new SegmentLoad.Point(
        place.segment(),
        LoadAxes.GLOBAL,
        vector(load.required("direction")),
        new LoadOrigin.Given("given"),
        load.required("P").asDouble(),
        place.x());
  }

  private static List<SegmentLoad> spread(Frame frame, JsonNode load) {
    JsonNode q = load.required("q");
    List<SegmentLoad> loads = new ArrayList<>();
    List<Segment> segments = segments(frame, load.required("member").asText());
    for (Segment segment : segments) {
      double length = segment.length();
      if (segments.size() > 1 && (q.isArray() || load.has("from"))) {
        throw new IllegalArgumentException("Varying or partial loads need a member of one segment");
      }
      loads.add(
          new SegmentLoad.Distributed(
              segment,
              LoadAxes.GLOBAL,
              vector(load.required("direction")),
              new LoadOrigin.Given("given"),
              q.isArray() ? q.get(0).asDouble() : q.asDouble(),
              q.isArray() ? q.get(1).asDouble() : q.asDouble(),
              load.path("from").asDouble(0),
              load.path("to").asDouble(length)));
    }
    return loads;
  }

  private static Member member(JsonNode node, Map<String, Node> nodes, JsonNode bars) {
    String bar = node.required("bar").asText();
    return new Member(
        node.required("name").asText(),
        MemberRole.OTHER,
        node.required("nodes").valueStream().map(n -> find(nodes, n.asText())).toList(),
        GivenBar.section(bar, bars.required(bar)),
        GivenBar.alloy(bar, bars.required(bar)),
        node.path("roll").asDouble(0),
        end(node.path("start")),
        end(node.path("end")));
  }

  private static MemberEnd end(JsonNode node) {
    return new MemberEnd(
        restraint(node.path("axial"), Restraint.FIXED),
        restraint(node.path("torsion"), Restraint.FIXED),
        restraint(node.path("aboutY"), Restraint.FIXED),
        restraint(node.path("aboutZ"), Restraint.FIXED),
        node.has("offset") ? vector(node.get("offset")) : Vector.ZERO);
  }

  private static List<Restraint> restraints(JsonNode node) {
    if (node.isTextual()) {
      List<String> held = List.of(node.asText().split(" ", -1));
      return FREEDOMS.stream()
          .map(f -> held.contains(f) ? Restraint.FIXED : Restraint.FREE)
          .toList();
    }
    return FREEDOMS.stream().map(f -> restraint(node.path(f), Restraint.FREE)).toList();
  }

  private static Restraint restraint(JsonNode node, Restraint otherwise) {
    if (node.isMissingNode()) {
      return otherwise;
    }
    if (node.isNumber()) {
      return new Restraint.Spring(node.asDouble());
    }
    if (node.has("play")) {
      double play = node.get("play").asDouble();
      double stiffness = node.path("stiffness").asDouble(Double.POSITIVE_INFINITY);
      return node.has("secondFrom")
          ? new Restraint.Play(
              play,
              stiffness,
              node.get("secondFrom").asDouble(),
              node.required("secondStiffness").asDouble())
          : new Restraint.Play(play, stiffness);
    }
    if (node.has("against")) {
      return new Restraint.OneWay(
          Restraint.Way.valueOf(node.get("against").asText()),
          node.path("gap").asDouble(0),
          node.path("stiffness").asDouble(Double.POSITIVE_INFINITY));
    }
    return switch (node.asText()) {
      case "fixed" -> Restraint.FIXED;
      case "free" -> Restraint.FREE;
      default -> throw new IllegalArgumentException("Unknown restraint " + node);
    };
  }

  private static Node find(Map<String, Node> nodes, String name) {
    return Optional.ofNullable(nodes.get(name)).orElseThrow();
  }

  private static Vector vector(JsonNode node) {
    return new Vector(node.get(0).asDouble(), node.get(1).asDouble(), node.get(2).asDouble());
  }
}
