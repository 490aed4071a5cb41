package spanledger.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spanledger.job.reading.Reading;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedText;
import spanledger.job.source.Quoted;
import spanledger.tables.NearMiss;

/**
 * The named things of one kind and who refers to them. A name whose thing has faults counts as
 * known, so that its users are not reported as well.
 *
 * @param <T> the thing
 */
final class Names<T> {

  /** How many names a message lists. */
  private static final int LISTED = 8;

  private final Reading reading;
  private final String kind;
  private final Map<String, Optional<T>> things = new LinkedHashMap<>();
  private final Map<String, Located.Entry> entries = new LinkedHashMap<>();
  private final Set<String> faulty = new LinkedHashSet<>();
  private final Set<String> used = new LinkedHashSet<>();
  private final Set<String> openMakers = new LinkedHashSet<>();

  /**
   * No names yet.
   *
   * @param kind the word for the things, for example {@code node}
   */
  Names(Reading reading, String kind) {
    this.reading = reading;
    this.kind = kind;
  }

  /** Adds a name; empty if its thing has faults. */
  void add(Located.Entry entry, Optional<T> thing) {
    things.put(entry.key(), thing);
    entries.put(entry.key(), entry);
    if (thing.isEmpty()) {
      faulty.add(entry.key());
    }
  }

  /**
   * Adds a name whose thing has faults, but is near enough to the one meant to check what refers to
   * it.
   */
  void addFaulty(Located.Entry entry, T thing) {
    add(entry, Optional.of(thing));
    faulty.add(entry.key());
  }

  /** Adds a thing that the assembly makes; it needs no user. */
  void addGenerated(Located.Entry entry, T thing) {
    add(entry, Optional.of(thing));
    used.add(entry.key());
  }

  /**
   * Says that parts of an assembly have faults and make nothing: a name that begins with one of
   * theirs cannot be known and is not reported.
   */
  void leaveOpen(Set<String> makers) {
    openMakers.addAll(makers);
    faulty.add("");
  }

  /** The parts of an assembly that have faults and make nothing. */
  Set<String> openMakers() {
    return Set.copyOf(openMakers);
  }

  /** Whether a name is taken; reports it. */
  boolean isTaken(Located.Entry entry) {
    boolean taken = things.containsKey(entry.key());
    if (taken) {
      reading.error(
          entry,
          "the name of a " + kind + " that the assembly makes",
          "another name",
          "choose another name, or leave this " + kind + " out");
    }
    return taken;
  }

  private boolean isLeftOpen(String name) {
    int end = name.indexOf('/');
    return end > 0 && openMakers.contains(name.substring(0, end));
  }

  /** The things that can be used for checks, in the order of the file. */
  List<T> usable() {
    return things.values().stream().flatMap(Optional::stream).toList();
  }

  /** The thing of a name, if it can be used for checks. */
  Optional<T> usable(String name) {
    return things.getOrDefault(name, Optional.empty());
  }

  /** The entries in the file, in its order. */
  List<Located.Entry> entries() {
    return List.copyOf(entries.values());
  }

  /** Whether all things can be used for checks. */
  boolean areAllUsable() {
    return openMakers.isEmpty() && things.values().stream().allMatch(Optional::isPresent);
  }

  /** Whether no thing has faults. */
  boolean areAllSound() {
    return faulty.isEmpty();
  }

  /** The entry in the file of a known name. */
  Located.Entry entry(String name) {
    Located.Entry entry = entries.get(name);
    if (entry == null) {
      throw new IllegalArgumentException("No " + kind + " is named " + name + ".");
    }
    return entry;
  }

  /** The thing that a text names; reports an unknown name. */
  Optional<T> resolve(Located reference) {
    if (!(reference instanceof LocatedText text)) {
      reading.gap(reference.pointer());
      return Optional.empty();
    }
    Optional<T> thing = things.get(text.text());
    if (thing == null && isLeftOpen(text.text())) {
      return Optional.empty();
    }
    if (thing == null) {
      reading.error(
          reference,
          Quoted.text(text.text()) + ", but no " + kind + " has this name",
          "the name of a " + kind + listed(),
          NearMiss.of(text.text(), things.keySet())
              .map(near -> "did you mean " + Quoted.text(near) + "?")
              .orElse("correct the name, or add this " + kind));
      return Optional.empty();
    }
    used.add(text.text());
    return thing;
  }

  /** The things that a list names; empty if one is unknown, faulty or named twice. */
  Optional<List<T>> resolveAll(List<Located> references) {
    List<T> found = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    boolean sound = true;
    for (Located reference : references) {
      Optional<T> thing = resolve(reference);
      thing.ifPresent(found::add);
      sound &= thing.isPresent();
      if (reference instanceof LocatedText text && !seen.add(text.text())) {
        sound = false;
        reading.error(
            reference,
            Quoted.text(text.text()) + " a second time in this list",
            "each " + kind + " once",
            "remove one of the two");
      }
    }
    return sound ? Optional.of(found) : Optional.empty();
  }

  /** The entries to which nothing refers. */
  List<Located.Entry> unused() {
    return entries.values().stream().filter(entry -> !used.contains(entry.key())).toList();
  }

  private String listed() {
    if (things.isEmpty()) {
      return "; there are none";
    }
    List<String> some = things.keySet().stream().limit(LISTED).map(Quoted::text).toList();
    String more = things.size() > LISTED ? ", ..." : "";
    return ": " + String.join(", ", some) + more;
  }
}
