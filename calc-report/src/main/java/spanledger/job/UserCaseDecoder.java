package spanledger.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.action.ActionCategory;
import spanledger.action.LoadCase;
import spanledger.action.NodalLoad;
import spanledger.action.SegmentLoad;
import spanledger.action.UserCase;
import spanledger.frame.Node;
import spanledger.frame.Vector;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Quoted;
import spanledger.quantity.Dimension;

/** Decodes the load cases given in the job. */
final class UserCaseDecoder {

  private static final Map<String, ActionCategory> CATEGORIES =
      Map.of(
          "permanent", ActionCategory.PERMANENT,
          "imposed", ActionCategory.IMPOSED,
          "wind", ActionCategory.WIND,
          "other", ActionCategory.OTHER);

  /** The load case that the program makes itself and whose name has no space. */
  private static final String RESERVED = "self-weight";

  private final Reading reading;
  private final Values values;
  private final Names<Node> nodes;
  private final FrameChecks checks;
  private final MemberLoadDecoder memberLoads;

  UserCaseDecoder(
      Reading reading, Names<Node> nodes, FrameChecks checks, MemberLoadDecoder memberLoads) {
    this.reading = reading;
    this.values = new Values(reading);
    this.nodes = nodes;
    this.checks = checks;
    this.memberLoads = memberLoads;
  }

  Names<UserCase> decode(Located cases) {
    Names<UserCase> names = new Names<>(reading, "load case");
    for (Located.Entry entry : reading.named(cases)) {
      names.add(entry, reading.fields("userCase", entry.value()).flatMap(f -> userCase(entry, f)));
    }
    return names;
  }

  private Optional<UserCase> userCase(Located.Entry entry, Fields fields) {
    Optional<ActionCategory> category =
        fields.require("category").flatMap(c -> values.word(c, CATEGORIES));
    List<NodalLoad> nodal = new ArrayList<>();
    List<SegmentLoad> along = new ArrayList<>();
    boolean sound = true;
    for (Located load : fields.requireList("loads")) {
      sound &= load(entry.key(), load, nodal, along);
    }
    if (entry.key().equals(RESERVED)) {
      reading.error(
          entry,
          Quoted.text(RESERVED) + ", the load case that the program works out itself",
          "a name of your own",
          "rename it; leave it out if it is the weight of the members");
      return Optional.empty();
    }
    if (category.isEmpty() || !sound) {
      return Optional.empty();
    }
    return Optional.of(new UserCase(category.get(), new LoadCase(entry.key(), nodal, along)));
  }

  private boolean load(String name, Located load, List<NodalLoad> nodal, List<SegmentLoad> along) {
    if (load instanceof Located.LocatedObject object && object.find("node").isPresent()) {
      Optional<NodalLoad> decoded =
          reading.fields("nodeLoad", load).flatMap(fields -> nodeLoad(name, fields));
      decoded.ifPresent(nodal::add);
      return decoded.isPresent();
    }
    Optional<List<SegmentLoad>> decoded = memberLoads.decode(name, load);
    decoded.ifPresent(along::addAll);
    return decoded.isPresent();
  }

  private Optional<NodalLoad> nodeLoad(String name, Fields fields) {
    Optional<Located> reference = fields.require("node");
    Optional<Node> node = reference.flatMap(nodes::resolve);
    Optional<Vector> force =
        fields.require("force").flatMap(f -> values.vector(f, Dimension.FORCE));
    Optional<Vector> moment =
        fields
            .find("moment")
            .map(m -> values.vector(m, Dimension.MOMENT))
            .orElse(Optional.of(Vector.ZERO));
    if (node.isEmpty() || force.isEmpty() || moment.isEmpty()) {
      return Optional.empty();
    }
    if (checks.isLoose(node.get())) {
      reference.ifPresent(this::reportLoose);
      return Optional.empty();
    }
    return Optional.of(new NodalLoad(node.get(), force.get(), moment.get(), name));
  }

  private void reportLoose(Located reference) {
    reading.error(
        reference,
        reference.words() + ", a node that no member goes through",
        "a node of the frame",
        "correct the node, or add it to a member");
  }
}
