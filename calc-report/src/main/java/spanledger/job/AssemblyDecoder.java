package spanledger.job;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import spanledger.assembly.Assembly;
import spanledger.assembly.AssemblyGenerator;
import spanledger.assembly.AssemblyProblem;
import spanledger.assembly.GeneratedFrame;
import spanledger.assembly.Generation;
import spanledger.assembly.Part;
import spanledger.assembly.Platform;
import spanledger.assembly.ProductLimits;
import spanledger.assembly.Stair;
import spanledger.deck.Panel;
import spanledger.job.reading.Fields;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedArray;
import spanledger.job.source.Located.LocatedObject;
import spanledger.job.source.Located.LocatedText;

/** Decodes an assembly and generates its frame. */
final class AssemblyDecoder {

  private final Reading reading;
  private final PartDecoder parts;
  private final Names<Panel> panels;

  AssemblyDecoder(Reading reading, PartDecoder parts, Names<Panel> panels) {
    this.reading = reading;
    this.parts = parts;
    this.panels = panels;
  }

  /** The assembly with its frame; without a frame where it has faults. */
  DecodedAssembly decode(Located assembly) {
    return reading
        .fields("assembly", assembly)
        .map(this::decode)
        .orElse(DecodedAssembly.faulty(Set.of()));
  }

  private DecodedAssembly decode(Fields fields) {
    Names<Part> known =
        fields.require("parts").map(parts::decode).orElse(new Names<>(reading, "part"));
    AssemblyFields values = new AssemblyFields(reading, known, panels);
    SiteDecoder sites = new SiteDecoder(values);
    Names<Platform> platforms =
        named(fields.require("platforms"), "platform", new PlatformDecoder(values)::decode);
    Names<Stair> stairs = named(fields.find("stairs"), "stair", new StairDecoder(values)::decode);
    Set<String> without = without(fields);
    Optional<Located> givenProduct = fields.find("product");
    Optional<ProductLimits> product = givenProduct.flatMap(sites::product);
    Assembly assembly =
        new Assembly(platforms.usable(), checkable(stairs.usable(), platforms), without, product);
    Generation generation = AssemblyGenerator.generate(assembly);
    boolean whole =
        platforms.areAllUsable()
            && stairs.areAllUsable()
            && !platforms.usable().isEmpty()
            && product.isPresent() == givenProduct.isPresent()
            && fields.has("parts");
    for (AssemblyProblem problem : generation.problems()) {
      if (whole || !problem.path().get(0).equals("without")) {
        reading.error(
            place(fields.object(), problem.path()),
            problem.found(),
            problem.expected(),
            problem.remedy());
      }
    }
    for (Located.Entry part : known.unused()) {
      reading.warning(
          part,
          "part \"" + part.key() + "\", which nothing uses",
          "only what the assembly needs",
          "remove it, or use it where it was meant");
    }
    Optional<GeneratedFrame> frame = generation.frame();
    if (!whole || frame.isEmpty()) {
      return DecodedAssembly.faulty(makers(platforms, stairs));
    }
    return new DecodedAssembly(
        frame.map(made -> new BuiltAssembly(assembly, made)),
        known.areAllSound(),
        makers(platforms, stairs));
  }

  private <T> Names<T> named(
      Optional<Located> value, String kind, Function<Located.Entry, Optional<T>> decoder) {
    Names<T> names = new Names<>(reading, kind);
    for (Located.Entry entry : value.map(reading::named).orElse(List.of())) {
      names.add(entry, decoder.apply(entry));
    }
    return names;
  }

  /** The stairs whose platforms are either sound or unknown; faulty platforms are told already. */
  private static List<Stair> checkable(List<Stair> stairs, Names<Platform> platforms) {
    Set<String> faulty = new HashSet<>();
    for (Located.Entry entry : platforms.entries()) {
      if (platforms.usable(entry.key()).isEmpty()) {
        faulty.add(entry.key());
      }
    }
    return stairs.stream()
        .filter(stair -> !faulty.contains(stair.to()) && !faulty.contains(stair.from().orElse("")))
        .toList();
  }

  private Set<String> without(Fields fields) {
    Set<String> names = new HashSet<>();
    for (Located value : fields.findList("without")) {
      if (value instanceof LocatedText text) {
        names.add(text.text());
      } else {
        reading.gap(value.pointer());
      }
    }
    return names;
  }

  private static Set<Located.Entry> makers(Names<Platform> platforms, Names<Stair> stairs) {
    List<Located.Entry> all = new ArrayList<>(platforms.entries());
    all.addAll(stairs.entries());
    return new HashSet<>(all);
  }

  /** The deepest value on a path of keys, list places and texts of lists. */
  private static Located place(LocatedObject assembly, List<String> path) {
    Located value = assembly;
    for (String step : path) {
      Optional<Located> next = step(value, step);
      if (next.isEmpty()) {
        return value;
      }
      value = next.get();
    }
    return value;
  }

  private static Optional<Located> step(Located value, String step) {
    if (value instanceof LocatedObject object) {
      return object.find(step).map(Located.Entry::value);
    }
    if (value instanceof LocatedArray list) {
      for (int i = 0; i < list.elements().size(); i++) {
        Located element = list.elements().get(i);
        boolean named = element instanceof LocatedText text && text.text().equals(step);
        if (named || step.equals(String.valueOf(i))) {
          return Optional.of(element);
        }
      }
    }
    return Optional.empty();
  }
}
