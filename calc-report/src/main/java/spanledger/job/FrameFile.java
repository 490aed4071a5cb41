package spanledger.job;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import spanledger.action.Rail;
import spanledger.action.RailKind;
import spanledger.action.Surface;
import spanledger.assembly.GeneratedFrame;
import spanledger.assembly.Part;
import spanledger.frame.Freedom;
import spanledger.frame.Member;
import spanledger.frame.MemberEnd;
import spanledger.frame.MemberRole;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Support;
import spanledger.frame.Vector;

/** A job file whose assembly is replaced by the nodes and members that it makes. */
public final class FrameFile {

  private static final Map<MemberRole, String> ROLES =
      Map.of(
          MemberRole.FLOOR, "floor",
          MemberRole.RAIL, "rail",
          MemberRole.RAIL_POST, "rail-post",
          MemberRole.LEG, "leg",
          MemberRole.BRACE, "brace",
          MemberRole.OTHER, "other");

  private static final Map<RailKind, String> KINDS =
      Map.of(RailKind.TOP, "top", RailKind.MIDDLE, "middle", RailKind.TOE, "toe");

  private static final List<String> HOLDS =
      List.of("shiftX", "shiftY", "shiftZ", "turnX", "turnY", "turnZ");

  private final GeneratedFrame frame;

  private FrameFile(GeneratedFrame frame) {
    this.frame = frame;
  }

  /**
   * The job file with its frame in place of its assembly, ending in a line break.
   *
   * @param text the job file
   * @param built what its assembly made
   * @throws IllegalArgumentException if the text is not that of a job file
   */
  public static String of(String text, BuiltAssembly built) {
    try {
      ObjectMapper mapper = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
      JsonNode given = mapper.readTree(text);
      ObjectNode root = new FrameFile(built.frame()).replaced(given);
      return mapper.writeValueAsString(root).replace("\r\n", "\n") + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("The text is no job file.", e);
    }
  }

  private ObjectNode replaced(JsonNode given) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    for (Map.Entry<String, JsonNode> field : given.properties()) {
      if (field.getKey().equals("assembly")) {
        put(root, given, "nodes", this::nodes);
        put(root, given, "members", this::members);
        put(root, given, "supports", this::supports);
        put(root, given, "surfaces", this::surfaces);
        put(root, given, "rails", this::rails);
      } else if (!root.has(field.getKey()) && !field.getKey().equals("$schema")) {
        root.set(field.getKey(), field.getValue());
      }
    }
    return root;
  }

  /** Generated things first, then those that the job gives by hand. */
  private static void put(
      ObjectNode root, JsonNode given, String key, Consumer<ObjectNode> generated) {
    ObjectNode all = JsonNodeFactory.instance.objectNode();
    generated.accept(all);
    given.path(key).properties().forEach(own -> all.set(own.getKey(), own.getValue()));
    if (!all.isEmpty()) {
      root.set(key, all);
    }
  }

  private void nodes(ObjectNode into) {
    for (Node node : frame.nodes()) {
      lengths(into.putArray(node.name()), node.place());
    }
  }

  private static void lengths(ArrayNode into, Vector place) {
    into.add(place.x() + " mm").add(place.y() + " mm").add(place.z() + " mm");
  }

  private void members(ObjectNode into) {
    for (Member member : frame.members()) {
      Part part = Optional.ofNullable(frame.parts().get(member.name())).orElseThrow();
      ObjectNode one = into.putObject(member.name());
      one.put("role", Optional.ofNullable(ROLES.get(member.role())).orElseThrow());
      ArrayNode along = one.putArray("nodes");
      member.nodes().forEach(node -> along.add(node.name()));
      one.put("section", member.section().name());
      one.put("material", part.material());
      if (member.roll() != 0) {
        one.put("roll", member.roll() + " rad");
      }
      one.set("start", joint(member.start()));
      one.set("end", joint(member.end()));
    }
  }

  private static ObjectNode joint(MemberEnd end) {
    ObjectNode joint = JsonNodeFactory.instance.objectNode();
    joint.put("torsion", hold(end.torsion(), "rigid", "pinned", "N*mm/rad"));
    joint.set("aboutY", jointHold(end.aboutY(), "N*mm/rad", "rad"));
    joint.set("aboutZ", jointHold(end.aboutZ(), "N*mm/rad", "rad"));
    if (!end.axial().equals(Restraint.FIXED)) {
      joint.set("axial", jointHold(end.axial(), "N/mm", "mm"));
    }
    if (!end.offset().equals(Vector.ZERO)) {
      lengths(joint.putArray("offset"), end.offset());
    }
    return joint;
  }

  /** A hold of a joint, which may have slip. */
  private static JsonNode jointHold(Restraint restraint, String unit, String moved) {
    if (restraint instanceof Restraint.Play play) {
      ObjectNode spring = JsonNodeFactory.instance.objectNode();
      spring.put("stiffness", play.stiffness() + " " + unit);
      spring.put("slip", play.freePlay() + " " + moved);
      spring.put("source", "as the job that describes the structure says");
      return spring;
    }
    return JsonNodeFactory.instance.textNode(hold(restraint, "rigid", "pinned", unit));
  }

  private static String hold(Restraint restraint, String fixed, String free, String unit) {
    if (restraint instanceof Restraint.Spring spring) {
      return spring.stiffness() + " " + unit;
    }
    if (restraint.equals(Restraint.FIXED)) {
      return fixed;
    }
    if (restraint.equals(Restraint.FREE)) {
      return free;
    }
    throw new IllegalStateException(
        "An assembly cannot ask for " + restraint + "; job files have no words for it.");
  }

  private void supports(ObjectNode into) {
    for (Map.Entry<String, Support> foot : frame.feet().entrySet()) {
      ObjectNode one = into.putObject(foot.getKey());
      one.put("node", foot.getValue().node().name());
      for (Freedom freedom : Freedom.values()) {
        String unit = freedom.isShift() ? "N/mm" : "N*mm/rad";
        one.put(
            HOLDS.get(freedom.ordinal()),
            hold(foot.getValue().restraint(freedom), "fixed", "free", unit));
      }
    }
  }

  private void surfaces(ObjectNode into) {
    for (Surface surface : frame.surfaces()) {
      ObjectNode one = into.putObject(surface.name());
      ArrayNode corners = one.putArray("corners");
      surface.corners().forEach(corner -> corners.add(corner.name()));
      ArrayNode carriedBy = one.putArray("carriedBy");
      surface.carriedBy().forEach(member -> carriedBy.add(member.name()));
      one.put("finishes", surface.finishes() + " N/mm2");
      surface.panel().ifPresent(panel -> one.put("panel", panel));
    }
  }

  private void rails(ObjectNode into) {
    for (Rail rail : frame.rails()) {
      ObjectNode one = into.putObject(rail.name());
      one.put("kind", Optional.ofNullable(KINDS.get(rail.kind())).orElseThrow());
      ArrayNode members = one.putArray("members");
      rail.members().forEach(member -> members.add(member.name()));
      ArrayNode posts = one.putArray("posts");
      rail.posts().forEach(post -> posts.add(post.name()));
      one.put("outward", axis(rail.outward()));
    }
  }

  /** Sides of platforms and stairs face along global axes. */
  private static String axis(Vector direction) {
    String name = Math.abs(direction.x()) > Math.abs(direction.y()) ? "X" : "Y";
    double part = name.equals("X") ? direction.x() : direction.y();
    return String.format(Locale.ROOT, "%s%s", part > 0 ? "+" : "-", name);
  }
}
