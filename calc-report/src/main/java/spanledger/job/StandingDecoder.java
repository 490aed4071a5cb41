package spanledger.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import spanledger.action.CombinationSet;
import spanledger.action.EquilibriumRule;
import spanledger.action.Figure;
import spanledger.frame.Member;
import spanledger.frame.Node;
import spanledger.frame.Vector;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.reading.Values;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Located.LocatedTruth;
import spanledger.memberdesign.MemberPick;
import spanledger.overturning.Standing;
import spanledger.overturning.Wind;
import spanledger.provenance.Source;
import spanledger.quantity.Dimension;
import spanledger.robustness.RobustnessAnalysis;

/** Decodes how the structure stands as a whole. */
final class StandingDecoder {

  private final Reading reading;
  private final Values values;
  private final Names<Node> nodes;
  private final Names<Member> members;
  private final Optional<CombinationSet> combinations;
  private boolean sound = true;

  /**
   * A decoder.
   *
   * @param combinations the combination rules, if they are known
   */
  StandingDecoder(Reading reading, Structure structure, Optional<CombinationSet> combinations) {
    this.reading = reading;
    this.values = new Values(reading);
    this.nodes = structure.nodes();
    this.members = structure.members();
    this.combinations = combinations;
  }

  /** The standing; empty if it has faults. */
  Optional<StandingBlock> decode(Fields fields) {
    boolean anchored = needed(fields.require("anchored").flatMap(this::truth)).orElse(false);
    Optional<Standing.Friction> friction =
        fields
            .find("friction")
            .flatMap(f -> needed(reading.fields("friction", f).flatMap(this::friction)));
    List<Standing.Ballast> ballast = fields.find("ballast").map(this::ballast).orElse(List.of());
    Optional<Wind> wind =
        fields.find("wind").flatMap(w -> needed(reading.fields("wind", w).flatMap(this::wind)));
    Standing.Ground ground =
        fields
            .find("ground")
            .flatMap(g -> needed(new SlopeDecoder(reading).decode(g)))
            .orElse(Standing.Ground.LEVEL);
    Map<String, Figure> factors = fields.find("factors").map(this::factors).orElse(Map.of());
    Optional<MemberPick> leftOut =
        fields
            .find("robustness")
            .flatMap(r -> needed(reading.fields("robustness", r).flatMap(this::leftOut)));
    return sound
        ? Optional.of(
            new StandingBlock(
                new Standing(anchored, friction, ballast, wind, ground, factors), leftOut))
        : Optional.empty();
  }

  /** Notes that something that is there cannot be used. */
  private <T> Optional<T> needed(Optional<T> value) {
    sound &= value.isPresent();
    return value;
  }

  private Optional<MemberPick> leftOut(Fields fields) {
    Optional<MemberPick> pick = new MemberPickDecoder(reading, members).decode(fields);
    if (pick.isPresent()
        && members.areAllUsable()
        && members.usable().stream()
            .noneMatch(m -> pick.get().picks(m) && RobustnessAnalysis.isRemovable(m))) {
      reading.error(
          fields.object(),
          "only members that carry a floor or a rail",
          "braces, ties, legs or others that may be missing",
          "name those, or leave \"robustness\" out for all braces");
      return Optional.empty();
    }
    return pick;
  }

  private Optional<Standing.Friction> friction(Fields fields) {
    Optional<Double> coefficient =
        fields.require("coefficient").flatMap(c -> values.positive(c, Dimension.NONE));
    Optional<Source> source = source(fields);
    return coefficient.flatMap(c -> source.map(s -> new Standing.Friction(c, s)));
  }

  private List<Standing.Ballast> ballast(Located given) {
    Map<String, Standing.Ballast> all = new LinkedHashMap<>();
    for (Located.Entry entry : reading.named(given)) {
      needed(reading.fields("ballast", entry.value()).flatMap(fields -> ballast(entry, fields)))
          .ifPresent(one -> all.put(entry.key(), one));
    }
    return List.copyOf(all.values());
  }

  private Optional<Standing.Ballast> ballast(Located.Entry entry, Fields fields) {
    Optional<Located> node = fields.find("node");
    Optional<Located> at = fields.find("at");
    Optional<Double> mass =
        fields.require("mass").flatMap(m -> values.notNegative(m, Dimension.MASS));
    Optional<Source> source = source(fields);
    Optional<Vector> place =
        node.isPresent()
            ? node.flatMap(nodes::resolve).map(Node::place)
            : at.flatMap(a -> values.vector(a, Dimension.LENGTH));
    if (node.isPresent() == at.isPresent()) {
      reading.error(
          entry,
          node.isPresent() ? "ballast with both \"node\" and \"at\"" : "ballast without a place",
          "one of \"node\" and \"at\"",
          node.isPresent() ? "keep one of them" : "say at which node it hangs, or where it lies");
      return Optional.empty();
    }
    if (place.isEmpty() || mass.isEmpty() || source.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Standing.Ballast(entry.key(), place.get(), mass.get(), source.get()));
  }

  private Optional<Wind> wind(Fields fields) {
    Optional<Double> pressure =
        fields.require("pressure").flatMap(p -> values.positive(p, Dimension.STRESS));
    Optional<Source> source = source(fields);
    Optional<Located> rails = fields.find("guardrails");
    Optional<Wind.Screen> screen =
        rails.flatMap(r -> reading.fields("windScreen", r)).flatMap(this::screen);
    Optional<Located> depth = fields.find("deckDepth");
    Optional<Double> deckDepth = depth.flatMap(d -> values.positive(d, Dimension.LENGTH));
    Optional<Located> given = fields.find("areas");
    Map<String, Wind.Exposure> areas = new LinkedHashMap<>();
    boolean all = true;
    for (Located.Entry entry : given.map(reading::named).orElse(List.of())) {
      Optional<Wind.Exposure> area =
          reading.fields("windArea", entry.value()).flatMap(f -> area(entry.key(), f));
      all &= area.isPresent();
      area.ifPresent(a -> areas.put(entry.key(), a));
    }
    if (rails.isEmpty() && depth.isEmpty() && given.isEmpty()) {
      reading.error(
          fields.object(),
          "a wind that meets nothing",
          "at least one of \"guardrails\", \"deckDepth\" and \"areas\"",
          "say what the wind meets, or remove \"wind\"");
      return Optional.empty();
    }
    if (pressure.isEmpty()
        || source.isEmpty()
        || screen.isPresent() != rails.isPresent()
        || deckDepth.isPresent() != depth.isPresent()
        || !all) {
      return Optional.empty();
    }
    return Optional.of(
        new Wind(
            pressure.get(),
            source.get(),
            screen,
            deckDepth.orElse(0.0),
            List.copyOf(areas.values())));
  }

  private Optional<Wind.Screen> screen(Fields fields) {
    Optional<Double> height =
        fields.require("height").flatMap(h -> values.positive(h, Dimension.LENGTH));
    Optional<Located> written = fields.require("solidity");
    Optional<Double> solidity = written.flatMap(s -> values.positive(s, Dimension.NONE));
    if (solidity.isPresent() && solidity.get() > 1) {
      reading.error(
          written.get(),
          written.get().words(),
          "at most 1, which is a closed face",
          "give the share of the face that is not open");
      return Optional.empty();
    }
    return height.flatMap(h -> solidity.map(s -> new Wind.Screen(h, s)));
  }

  private Optional<Wind.Exposure> area(String name, Fields fields) {
    Optional<Vector> at = fields.require("at").flatMap(a -> values.vector(a, Dimension.LENGTH));
    Optional<Double> area = fields.require("area").flatMap(a -> values.positive(a, Dimension.AREA));
    Optional<Located> facing = fields.find("faces");
    Optional<Vector> faces = facing.flatMap(new Directions(reading)::level);
    if (at.isEmpty() || area.isEmpty() || faces.isPresent() != facing.isPresent()) {
      return Optional.empty();
    }
    return Optional.of(new Wind.Exposure(name, at.get(), area.get(), faces, false));
  }

  private Map<String, Figure> factors(Located given) {
    Map<String, Figure> known = new TreeMap<>();
    combinations.ifPresent(
        set -> {
          for (EquilibriumRule rule : set.equilibrium()) {
            known.putAll(rule.figures());
          }
        });
    Map<String, Figure> replaced = new TreeMap<>();
    for (Located.Entry entry : reading.named(given)) {
      Optional<Figure> old = Optional.ofNullable(known.get(entry.key()));
      reading
          .fields("override", entry.value())
          .flatMap(
              fields ->
                  combinations.isEmpty()
                      ? Optional.empty()
                      : needed(
                          new PublishedNames(reading)
                              .replacement(
                                  entry, fields, old, "the rules for tipping and sliding", known)))
          .ifPresent(figure -> replaced.put(entry.key(), figure));
    }
    return replaced;
  }

  private Optional<Boolean> truth(Located value) {
    if (value instanceof LocatedTruth truth) {
      return Optional.of(truth.value());
    }
    reading.gap(value.pointer());
    return Optional.empty();
  }

  private static Optional<Source> source(Fields fields) {
    return fields.requireText("source").map(LocatedText::text).map(Source::declared);
  }
}
