package spanledger.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.action.FloorBays;
import spanledger.action.Surface;
import spanledger.deck.Panel;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.quantity.Dimension;

/** Decodes the floors. */
final class SurfaceDecoder {

  private static final Map<String, FloorBays> BAYS =
      Map.of("spans", FloorBays.SPANS, "strips", FloorBays.STRIPS, "whole", FloorBays.WHOLE);

  private final Reading reading;
  private final Values values;
  private final Names<Node> nodes;
  private final Names<Member> members;
  private final Names<Panel> panels;

  SurfaceDecoder(Reading reading, Structure structure) {
    this.reading = reading;
    this.values = new Values(reading);
    this.nodes = structure.nodes();
    this.members = structure.members();
    this.panels = structure.panels();
  }

  /**
   * Decodes the floors given by hand.
   *
   * @param names the floors of the assembly; takes the others
   */
  Names<Surface> decode(Located surfaces, Names<Surface> names) {
    for (Located.Entry entry : reading.named(surfaces)) {
      if (names.isTaken(entry)) {
        continue;
      }
      names.add(
          entry, reading.fields("surface", entry.value()).flatMap(f -> surface(entry.key(), f)));
    }
    return names;
  }

  private Optional<Surface> surface(String name, Fields fields) {
    List<Located> cornerNames = fields.requireList("corners");
    List<Located> memberNames = fields.requireList("carriedBy");
    Optional<List<Node>> corners = nodes.resolveAll(cornerNames);
    Optional<List<Member>> carriedBy = members.resolveAll(memberNames);
    Optional<Double> finishes =
        fields
            .find("finishes")
            .map(weight -> values.notNegative(weight, Dimension.STRESS))
            .orElse(Optional.of(0.0));
    Optional<FloorBays> bays =
        fields.find("bays").map(b -> values.word(b, BAYS)).orElse(Optional.of(FloorBays.SPANS));
    Optional<Located> namedPanel = fields.find("panel");
    Optional<Panel> panel = namedPanel.flatMap(panels::resolve);
    if (corners.isEmpty() || corners.get().size() != 4) {
      return Optional.empty();
    }
    FloorShape shape = new FloorShape(corners.get());
    Optional<FloorShape.Fault> fault = shape.fault();
    if (fault.isPresent()) {
      reading.error(
          cornerNames.get(fault.get().corner()),
          fault.get().words(),
          "four corners of a rectangle, in order around it, to within 1 mm",
          "correct the corners or their order");
      return Optional.empty();
    }
    if (carriedBy.isEmpty()
        || carriedBy.get().isEmpty()
        || finishes.isEmpty()
        || bays.isEmpty()
        || namedPanel.isPresent() != panel.isPresent()) {
      return Optional.empty();
    }
    boolean carried = true;
    for (int i = 0; i < memberNames.size(); i++) {
      carried &= carries(carriedBy.get(), i, shape, memberNames.get(i));
    }
    return carried
        ? Optional.of(
            new Surface(
                name,
                corners.get(),
                carriedBy.get(),
                finishes.get(),
                bays.get(),
                panel.map(Panel::name)))
        : Optional.empty();
  }

  private boolean carries(List<Member> all, int index, FloorShape shape, Located reference) {
    Optional<String> fault = shape.faultOf(all.get(index), all.get(0));
    fault.ifPresent(
        words ->
            reading.error(
                reference,
                words,
                "parallel members that lie in the floor, along its sides or square to them",
                "correct the list, or the nodes of the member"));
    return fault.isEmpty();
  }
}
