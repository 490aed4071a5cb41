package spanledger.section.plate;

/** How a plate is held along its two long edges. */
public enum PlateKind {
  /** Both edges joined to other plates. */
  INTERNAL("internal"),
  /** One edge free. */
  OUTSTAND("outstand"),
  /** One edge joined, the other with a lip or bulb that may or may not hold it. */
  STIFFENED_OUTSTAND("outstand with a stiffened edge"),
  /** A round tube, without edges. */
  ROUND("round tube"),
  /** Both edges free: a flat bar. */
  FREE("free strip");

  private final String words;

  PlateKind(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
