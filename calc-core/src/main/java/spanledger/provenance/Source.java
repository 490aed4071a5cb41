package spanledger.provenance;

/**
 * Where a figure or formula comes from.
 *
 * @param work the standard, book, paper or document, for example {@code EN 1999-1-1:2007}
 * @param place clause, table or page in the work; empty if the whole work is meant
 * @param confidence how far it can be trusted
 */
public record Source(String work, String place, Confidence confidence) {

  /** A source read in print. */
  public static Source published(String work, String place) {
    return new Source(work, place, Confidence.PUBLISHED);
  }

  /** A source recalled and still to be confirmed. */
  public static Source fromMemory(String work, String place) {
    return new Source(work, place, Confidence.FROM_MEMORY);
  }

  /** A result of elementary mechanics, derived in docs/theory. */
  public static Source derived(String what) {
    return new Source(what, "", Confidence.DERIVED);
  }

  /** A figure given by the author of the job. */
  public static Source declared(String where) {
    return new Source(where, "", Confidence.DECLARED);
  }

  /** The citation on one line, without the confidence. */
  public String citation() {
    return place.isEmpty() ? work : work + ", " + place;
  }
}
