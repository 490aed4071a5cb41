package spanledger.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spanledger.assembly.Bracing;
import spanledger.assembly.CrossBearers;
import spanledger.assembly.Deck;
import spanledger.assembly.EdgeBeams;
import spanledger.assembly.Guardrail;
import spanledger.assembly.Part;
import spanledger.assembly.Platform;
import spanledger.assembly.PlatformSite;
import spanledger.assembly.Posts;
import spanledger.assembly.Side;
import spanledger.deck.Panel;
import spanledger.frame.Restraint;
import spanledger.frame.Vector;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedArray;
import spanledger.overturning.Standing;

/** Decodes the platforms of an assembly. */
final class PlatformDecoder {

  /** More bays than this are a slip of the pen. */
  private static final int MOST_BAYS = 500;

  private final AssemblyFields values;
  private final Reading reading;
  private final FootDecoder feet;
  private final BracingDecoder bracing;
  private final GuardrailDecoder guardrails;
  private final SiteDecoder sites;

  PlatformDecoder(AssemblyFields values) {
    this.values = values;
    this.reading = values.reading();
    this.feet = new FootDecoder(reading);
    this.bracing = new BracingDecoder(values);
    this.guardrails = new GuardrailDecoder(values);
    this.sites = new SiteDecoder(values);
  }

  Optional<Platform> decode(Located.Entry entry) {
    return reading.fields("platform", entry.value()).flatMap(f -> platform(entry.key(), f));
  }

  private Optional<Platform> platform(String name, Fields fields) {
    Optional<Vector> at = fields.require("at").flatMap(this::levelPlace);
    Optional<Double> ground = values.place(fields, "ground");
    Optional<Double> length = values.size(fields, "length");
    Optional<Double> width = values.size(fields, "width");
    Optional<Double> height = values.size(fields, "floorHeight");
    Optional<List<Double>> bays = fields.require("bays").flatMap(b -> bays(b, length));
    Optional<Posts> posts = fields.require("posts").flatMap(p -> posts(p, bays, width));
    Optional<EdgeBeams> edges = fields.require("edgeBeams").flatMap(this::edgeBeams);
    boolean hasEnds = fields.has("endBeams");
    Optional<Part> ends = hasEnds ? values.part(fields, "endBeams") : noEnds(fields);
    Optional<CrossBearers> bearers = fields.require("crossBearers").flatMap(this::bearers);
    Optional<Deck> deck = fields.require("deck").flatMap(this::deck);
    Optional<Bracing> braces = bracing.decode(fields);
    Optional<PlatformSite> site = sites.platform(fields);
    Optional<Located> rail = fields.find("guardrail");
    Optional<Guardrail> guardrail = rail.flatMap(guardrails::decode);
    if (at.isEmpty()
        || ground.isEmpty()
        || length.isEmpty()
        || width.isEmpty()
        || height.isEmpty()
        || bays.isEmpty()
        || posts.isEmpty()
        || edges.isEmpty()
        || (hasEnds && ends.isEmpty())
        || bearers.isEmpty()
        || deck.isEmpty()
        || braces.isEmpty()
        || site.isEmpty()
        || (rail.isPresent() && guardrail.isEmpty())) {
      return Optional.empty();
    }
    Vector corner = new Vector(at.get().x(), at.get().y(), ground.get());
    return Optional.of(
        new Platform(
            name,
            corner,
            length.get(),
            width.get(),
            height.get(),
            bays.get(),
            posts.get(),
            edges.get(),
            ends,
            bearers.get(),
            deck.get(),
            braces.get(),
            guardrail,
            site.get()));
  }

  private static Optional<Part> noEnds(Fields fields) {
    fields.find("endBeams");
    return Optional.empty();
  }

  private Optional<Vector> levelPlace(Located value) {
    if (!(value instanceof LocatedArray list) || list.elements().size() != 2) {
      reading.gap(value.pointer());
      return Optional.empty();
    }
    Optional<Double> x = values.place(list.elements().get(0));
    Optional<Double> y = values.place(list.elements().get(1));
    return x.isPresent() && y.isPresent()
        ? Optional.of(new Vector(x.get(), y.get(), 0))
        : Optional.empty();
  }

  private Optional<List<Double>> bays(Located value, Optional<Double> length) {
    return reading.fields("bays", value).flatMap(fields -> bays(fields, length));
  }

  private Optional<List<Double>> bays(Fields fields, Optional<Double> length) {
    Optional<Located> count = fields.find("count");
    List<Located> given = fields.findList("lengths");
    Optional<Integer> repeat = values.count(fields, "repeat", 1);
    Optional<Boolean> mirrored = values.flag(fields, "mirrored", false);
    if (count.isPresent()) {
      Optional<Integer> number = count.flatMap(values::count);
      return number.isPresent() && length.isPresent()
          ? Optional.of(Collections.nCopies(number.get(), length.get() / number.get()))
          : Optional.empty();
    }
    List<Double> once = new ArrayList<>();
    given.forEach(one -> values.size(one).ifPresent(once::add));
    if (once.isEmpty() || once.size() < given.size() || repeat.isEmpty() || mirrored.isEmpty()) {
      return Optional.empty();
    }
    List<Double> all = new ArrayList<>();
    Collections.nCopies(Math.min(repeat.get(), MOST_BAYS), once).forEach(all::addAll);
    if (mirrored.get()) {
      List<Double> image = new ArrayList<>(all);
      Collections.reverse(image);
      all.addAll(image);
    }
    return Optional.of(all);
  }

  private Optional<Posts> posts(
      Located value, Optional<List<Double>> bays, Optional<Double> width) {
    return reading.fields("platformPosts", value).flatMap(fields -> posts(fields, bays, width));
  }

  private Optional<Posts> posts(
      Fields fields, Optional<List<Double>> bays, Optional<Double> width) {
    Optional<Part> part = values.part(fields, "part");
    Optional<Boolean> through = values.flag(fields, "through", true);
    Optional<List<Restraint>> foot = fields.require("foot").flatMap(feet::decode);
    Optional<Located> sloping = fields.find("groundSlope");
    Optional<Standing.Ground> slope = sloping.flatMap(new SlopeDecoder(reading)::decode);
    Map<String, Double> ground = new HashMap<>();
    boolean sound = slope.isPresent() == sloping.isPresent();
    if (slope.isPresent() && bays.isPresent() && width.isPresent()) {
      ground.putAll(levels(slope.get(), bays.get(), width.get()));
    }
    for (Located.Entry entry : fields.find("ground").map(reading::named).orElse(List.of())) {
      Optional<Double> level = values.place(entry.value());
      level.ifPresent(z -> ground.put(entry.key(), z));
      sound &= level.isPresent();
    }
    return part.isPresent() && through.isPresent() && foot.isPresent() && sound
        ? Optional.of(new Posts(part.get(), through.get(), foot.get(), ground))
        : Optional.empty();
  }

  /** How high a slope lies at each post above the platform's south-west corner. */
  private static Map<String, Double> levels(
      Standing.Ground slope, List<Double> bays, double width) {
    Map<String, Double> levels = new HashMap<>();
    double x = 0;
    for (int line = 0; line <= bays.size(); line++) {
      x += line == 0 ? 0 : bays.get(line - 1);
      for (Side side : List.of(Side.NORTH, Side.SOUTH)) {
        Vector place = new Vector(x, side == Side.NORTH ? width : 0, 0);
        double level = -Math.tan(slope.slope()) * place.dot(slope.downhill());
        if (level != 0) {
          levels.put(side.words() + (line + 1), level);
        }
      }
    }
    return levels;
  }

  private Optional<EdgeBeams> edgeBeams(Located value) {
    return reading
        .fields("edgeBeams", value)
        .flatMap(
            fields -> {
              Optional<Part> part = values.part(fields, "part");
              Optional<Integer> bays = values.count(fields, "baysPerBeam", 1);
              return part.isPresent() && bays.isPresent()
                  ? Optional.of(new EdgeBeams(part.get(), bays.get()))
                  : Optional.empty();
            });
  }

  private Optional<CrossBearers> bearers(Located value) {
    return reading
        .fields("crossBearers", value)
        .flatMap(
            fields -> {
              Optional<Part> part = values.part(fields, "part");
              Optional<Double> spacing = values.size(fields, "spacing");
              Optional<Double> fromEnds = values.distance(fields, "fromEnds", 0);
              return part.isPresent() && spacing.isPresent() && fromEnds.isPresent()
                  ? Optional.of(new CrossBearers(part.get(), spacing.get(), fromEnds.get()))
                  : Optional.empty();
            });
  }

  private Optional<Deck> deck(Located value) {
    return reading
        .fields("deck", value)
        .flatMap(
            fields -> {
              Optional<Double> finishes = values.areaLoad(fields, "finishes");
              Optional<Integer> bays = values.count(fields, "baysPerFloor", 1);
              Optional<Panel> panel = values.panel(fields, "panel");
              return finishes.isPresent() && bays.isPresent()
                  ? Optional.of(
                      new Deck(
                          finishes.get(),
                          bays.get(),
                          panel.map(Panel::name),
                          panel.flatMap(Panel::opening)))
                  : Optional.empty();
            });
  }
}
