package spanledger.job.reading;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spanledger.job.problem.Pointer;
import spanledger.job.source.Located;
import spanledger.job.source.Located.LocatedArray;
import spanledger.job.source.Located.LocatedObject;
import spanledger.job.source.Located.LocatedText;

/** The keys of one object, kept account of as they are asked for. */
public final class Fields {

  private final Reading reading;
  private final LocatedObject object;
  private final Set<String> askedOfKind;
  private final Set<String> asked = new HashSet<>();

  Fields(Reading reading, LocatedObject object, Set<String> askedOfKind) {
    this.reading = reading;
    this.object = object;
    this.askedOfKind = askedOfKind;
  }

  /** The object itself. */
  public LocatedObject object() {
    return object;
  }

  /** Whether the object has a key. */
  public boolean has(String key) {
    return object.find(key).isPresent();
  }

  /** The value of a key that may be left out. */
  public Optional<Located> find(String key) {
    asked.add(key);
    askedOfKind.add(key);
    return object.find(key).map(Located.Entry::value);
  }

  /** The value of a key that must be there. */
  public Optional<Located> require(String key) {
    Optional<Located> value = find(key);
    if (value.isEmpty()) {
      reading.gap(object.pointer().child(key));
    }
    return value;
  }

  /** A text that must be there. */
  public Optional<LocatedText> requireText(String key) {
    return require(key).flatMap(this::asText);
  }

  /** A text that may be left out; empty text then. */
  public String findText(String key) {
    return find(key).flatMap(this::asText).map(LocatedText::text).orElse("");
  }

  /** The elements of a list that may be left out. */
  public List<Located> findList(String key) {
    return find(key).map(this::asList).orElse(List.of());
  }

  /** The elements of a list that must be there; none if it is missing or no list. */
  public List<Located> requireList(String key) {
    return require(key).map(this::asList).orElse(List.of());
  }

  private Optional<LocatedText> asText(Located value) {
    if (value instanceof LocatedText text) {
      return Optional.of(text);
    }
    reading.gap(value.pointer());
    return Optional.empty();
  }

  private List<Located> asList(Located value) {
    if (value instanceof LocatedArray list) {
      return list.elements();
    }
    reading.gap(value.pointer());
    return List.of();
  }

  /** The keys that nobody asked for. */
  public Set<Pointer> unread() {
    Set<Pointer> unread = new HashSet<>();
    for (Located.Entry entry : object.entries()) {
      if (!asked.contains(entry.key())) {
        unread.add(entry.value().pointer());
      }
    }
    return unread;
  }
}
