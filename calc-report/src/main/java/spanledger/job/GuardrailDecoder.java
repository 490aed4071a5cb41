package spanledger.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import spanledger.assembly.Guardrail;
import spanledger.assembly.Part;
import spanledger.assembly.Side;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;

/** Decodes the guardrails of an assembly. */
final class GuardrailDecoder {

  private static final List<Side> ALL = List.of(Side.NORTH, Side.SOUTH, Side.EAST, Side.WEST);

  private final AssemblyFields values;
  private final Reading reading;

  GuardrailDecoder(AssemblyFields values) {
    this.values = values;
    this.reading = values.reading();
  }

  Optional<Guardrail> decode(Located value) {
    return reading.fields("guardrail", value).flatMap(this::guardrail);
  }

  private Optional<Guardrail> guardrail(Fields fields) {
    Optional<Double> height = values.size(fields, "height");
    Optional<Part> topRail = values.part(fields, "topRail");
    Optional<List<Guardrail.MiddleRail>> middle = middleRails(fields);
    Optional<Located> toe = fields.find("toeBoard");
    Optional<Guardrail.ToeBoard> toeBoard = toe.flatMap(this::toeBoard);
    Optional<Set<Side>> sides = values.sides(fields, ALL);
    Optional<Located> post = fields.find("railPost");
    Optional<Part> railPost = post.isPresent() ? values.part(fields, "railPost") : Optional.empty();
    Optional<Double> spacing =
        fields.find("postSpacing").map(values::size).orElse(Optional.of(Double.POSITIVE_INFINITY));
    Optional<List<Guardrail.PostPlace>> posts = all(fields, "posts", "postPlace", this::postPlace);
    Optional<List<Guardrail.Gate>> gates = all(fields, "gates", "gate", this::gate);
    if (height.isEmpty()
        || topRail.isEmpty()
        || middle.isEmpty()
        || (toe.isPresent() && toeBoard.isEmpty())
        || sides.isEmpty()
        || (post.isPresent() && railPost.isEmpty())
        || spacing.isEmpty()
        || posts.isEmpty()
        || gates.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Guardrail(
            height.get(),
            topRail.get(),
            middle.get(),
            toeBoard,
            sides.get(),
            railPost,
            spacing.get(),
            posts.get(),
            gates.get()));
  }

  /** The middle rails of a guardrail or of a stair's; none if they are left out. */
  Optional<List<Guardrail.MiddleRail>> middleRails(Fields fields) {
    Optional<Located> value = fields.find("middleRails");
    if (value.isEmpty()) {
      return Optional.of(List.of());
    }
    return reading.fields("middleRails", value.get()).flatMap(this::rails);
  }

  private Optional<List<Guardrail.MiddleRail>> rails(Fields fields) {
    Optional<Part> part = values.part(fields, "part");
    List<Located> given = fields.requireList("heights");
    List<Guardrail.MiddleRail> rails = new ArrayList<>();
    for (Located one : given) {
      Optional<Double> height = values.size(one);
      if (part.isPresent() && height.isPresent()) {
        rails.add(new Guardrail.MiddleRail(part.get(), height.get()));
      }
    }
    return rails.isEmpty() || rails.size() < given.size() ? Optional.empty() : Optional.of(rails);
  }

  private Optional<Guardrail.ToeBoard> toeBoard(Located value) {
    return reading
        .fields("toeBoard", value)
        .flatMap(
            fields -> {
              Optional<Part> part = values.part(fields, "part");
              Optional<Double> height = values.size(fields, "height");
              Optional<Double> gap = values.distance(fields, "gap", 0);
              return part.isPresent() && height.isPresent() && gap.isPresent()
                  ? Optional.of(new Guardrail.ToeBoard(part.get(), height.get(), gap.get()))
                  : Optional.empty();
            });
  }

  private <T> Optional<List<T>> all(
      Fields fields, String key, String kind, Function<Fields, Optional<T>> decoder) {
    List<Located> given = fields.findList(key);
    List<T> read = new ArrayList<>();
    for (Located value : given) {
      reading.fields(kind, value).flatMap(decoder).ifPresent(read::add);
    }
    return read.size() == given.size() ? Optional.of(read) : Optional.empty();
  }

  private Optional<Guardrail.PostPlace> postPlace(Fields fields) {
    Optional<Side> side = values.side(fields);
    Optional<Double> at = fields.require("at").flatMap(values::place);
    return side.isPresent() && at.isPresent()
        ? Optional.of(new Guardrail.PostPlace(side.get(), at.get()))
        : Optional.empty();
  }

  private Optional<Guardrail.Gate> gate(Fields fields) {
    Optional<Side> side = values.side(fields);
    Optional<Integer> bay = values.count(fields, "bay", 1);
    Optional<Double> from = values.distance(fields, "from", 0);
    Optional<Located> given = fields.find("width");
    Optional<Double> width = given.flatMap(values::size);
    if (side.isEmpty()
        || bay.isEmpty()
        || from.isEmpty()
        || (given.isPresent() && width.isEmpty())) {
      return Optional.empty();
    }
    return Optional.of(new Guardrail.Gate(side.get(), bay.get(), from.get(), width));
  }
}
