package spanledger.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.frame.Freedom;
import spanledger.frame.Node;
import spanledger.frame.Restraint;
import spanledger.frame.Support;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedObject;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Located.LocatedTruth;
import spanledger.job.source.Quoted;
import spanledger.quantity.Dimension;

/** Decodes what holds the frame to the ground. */
final class SupportDecoder {

  private static final Map<Freedom, String> KEYS =
      Map.of(
          Freedom.SHIFT_X, "shiftX",
          Freedom.SHIFT_Y, "shiftY",
          Freedom.SHIFT_Z, "shiftZ",
          Freedom.TURN_X, "turnX",
          Freedom.TURN_Y, "turnY",
          Freedom.TURN_Z, "turnZ");
  private static final Map<String, Restraint> WORDS =
      Map.of("fixed", Restraint.FIXED, "free", Restraint.FREE);
  private static final Map<String, Boolean> TYPES = Map.of("pinned", false, "fixed", true);

  private final Reading reading;
  private final Values values;
  private final SpringDecoder springs;
  private final Names<Node> nodes;
  private final Map<String, Located.Entry> supported = new HashMap<>();

  SupportDecoder(Reading reading, SpringDecoder springs, Names<Node> nodes) {
    this.reading = reading;
    this.springs = springs;
    this.values = new Values(reading);
    this.nodes = nodes;
  }

  /**
   * Decodes the supports given by hand.
   *
   * @param names the feet of the assembly; takes the others
   */
  Names<Support> decode(Located supports, Names<Support> names) {
    for (Located.Entry entry : names.entries()) {
      names.usable(entry.key()).ifPresent(foot -> supported.put(foot.node().name(), entry));
    }
    for (Located.Entry entry : reading.named(supports)) {
      if (names.isTaken(entry)) {
        continue;
      }
      names.add(
          entry,
          reading.fields("support", entry.value()).flatMap(fields -> support(entry, fields)));
    }
    return names;
  }

  private Optional<Support> support(Located.Entry entry, Fields fields) {
    Optional<Located> reference = fields.require("node");
    Optional<Node> node = reference.flatMap(nodes::resolve);
    Optional<List<Restraint>> restraints =
        fields.find("type").map(this::ofType).orElseGet(() -> apart(entry, fields));
    Optional<Located> lifts = fields.find("lifts");
    Optional<Boolean> lifting = lifts.map(this::truth).orElse(Optional.of(false));
    Optional<Double> gap =
        fields
            .find("gap")
            .map(g -> values.notNegative(g, Dimension.LENGTH))
            .orElse(Optional.of(0.0));
    if (node.isEmpty() || restraints.isEmpty() || reference.isEmpty()) {
      return Optional.empty();
    }
    Located.Entry other = supported.putIfAbsent(node.get().name(), entry);
    if (other != null) {
      reading.error(
          reference.get(),
          Quoted.text(node.get().name())
              + ", which support "
              + Quoted.text(other.key())
              + " holds already",
          "one support for each node",
          "put both into one support, or correct the node");
      return Optional.empty();
    }
    if (gap.isEmpty() || lifting.isEmpty()) {
      return Optional.empty();
    }
    if (!lifting.get()) {
      return gap.get() == 0
          ? Optional.of(new Support(node.get(), restraints.get()))
          : gapWithoutLifting(fields);
    }
    return foot(node.get(), restraints.get(), gap.get(), lifts.get());
  }

  /** A foot in the air holds nothing, so all its other restraints let go with it. */
  private Optional<Support> foot(Node node, List<Restraint> restraints, double gap, Located lifts) {
    Restraint upright = restraints.get(Freedom.SHIFT_Z.ordinal());
    if (upright instanceof Restraint.Free) {
      reading.error(
          lifts,
          "a support that lifts but holds nothing along Z",
          "\"shiftZ\" held, which is what lets go when it lifts",
          "add \"shiftZ\", or leave \"lifts\" out");
      return Optional.empty();
    }
    double stiffness =
        upright instanceof Restraint.Spring spring ? spring.stiffness() : Double.POSITIVE_INFINITY;
    List<Restraint> all = new ArrayList<>(restraints);
    all.set(
        Freedom.SHIFT_Z.ordinal(), new Restraint.OneWay(Restraint.Way.NEGATIVE, gap, stiffness));
    return Optional.of(new Support(node, all, true));
  }

  private Optional<Support> gapWithoutLifting(Fields fields) {
    fields
        .find("gap")
        .ifPresent(
            gap ->
                reading.error(
                    gap,
                    "a gap under a support that cannot lift",
                    "\"lifts\": true beside it",
                    "add it, or leave the gap out"));
    return Optional.empty();
  }

  private Optional<Boolean> truth(Located value) {
    if (value instanceof LocatedTruth flag) {
      return Optional.of(flag.value());
    }
    reading.gap(value.pointer());
    return Optional.empty();
  }

  /** What one word says. */
  Optional<List<Restraint>> ofType(Located type) {
    return values
        .word(type, TYPES)
        .map(
            fixed -> {
              List<Restraint> restraints = new ArrayList<>();
              for (Freedom freedom : Freedom.values()) {
                restraints.add(freedom.isShift() || fixed ? Restraint.FIXED : Restraint.FREE);
              }
              return restraints;
            });
  }

  /** What is said freedom by freedom. */
  Optional<List<Restraint>> apart(Located.Entry entry, Fields fields) {
    List<Restraint> restraints = new ArrayList<>();
    for (Freedom freedom : Freedom.values()) {
      Optional<Located> given = fields.find(KEYS.getOrDefault(freedom, ""));
      given
          .map(value -> restraint(value, freedom))
          .orElse(Optional.of(Restraint.FREE))
          .ifPresent(restraints::add);
    }
    if (restraints.size() < Freedom.values().length) {
      return Optional.empty();
    }
    if (restraints.stream().allMatch(Restraint.FREE::equals)) {
      reading.error(
          entry,
          "a support that holds nothing",
          "\"type\", or at least one of "
              + String.join(", ", KEYS.values().stream().sorted().toList()),
          "add what it holds, or remove the support");
      return Optional.empty();
    }
    return Optional.of(restraints);
  }

  private Optional<Restraint> restraint(Located value, Freedom freedom) {
    if (value instanceof LocatedObject) {
      return springs.decode(
          freedom.isShift() ? "shiftBounds" : "turnBounds", value, !freedom.isShift());
    }
    if (value instanceof LocatedText text && WORDS.containsKey(text.text())) {
      return values.word(value, WORDS);
    }
    if (Values.isWord(value)) {
      reading.gap(value.pointer());
      return Optional.empty();
    }
    Dimension stiffness = freedom.isShift() ? Dimension.LINE_LOAD : Dimension.MOMENT;
    return values.positive(value, stiffness).map(Restraint.Spring::new);
  }
}
