package spanledger.job.problem;

/**
 * Where a value stands in a JSON document.
 *
 * @param text a JSON Pointer (RFC 6901), for example {@code /members/edge-north/section}; empty for
 *     the document itself
 */
public record Pointer(String text) implements Comparable<Pointer> {

  /** The document itself. */
  public static final Pointer ROOT = new Pointer("");

  /** The value of a key of the object that stands here. */
  public Pointer child(String key) {
    return new Pointer(text + "/" + key.replace("~", "~0").replace("/", "~1"));
  }

  /** An element of the array that stands here, from 0. */
  public Pointer child(int index) {
    return new Pointer(text + "/" + index);
  }

  /** The last key or index, as written in the document; empty for the document itself. */
  public String last() {
    return text.substring(text.lastIndexOf('/') + 1).replace("~1", "/").replace("~0", "~");
  }

  @Override
  public int compareTo(Pointer other) {
    return text.compareTo(other.text);
  }

  @Override
  public String toString() {
    return text;
  }
}
