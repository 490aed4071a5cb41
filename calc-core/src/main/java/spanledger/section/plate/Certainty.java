package spanledger.section.plate;

/** Whether a plate was recognised beyond doubt. */
public sealed interface Certainty permits Certainty.Sure, Certainty.Unsure {

  /** Nothing speaks against it. */
  record Sure() implements Certainty {}

  /**
   * Someone has to look.
   *
   * @param because why, as the end of "unsure, because ..."
   */
  record Unsure(String because) implements Certainty {}

  static Certainty sure() {
    return new Sure();
  }

  static Certainty unsure(String because) {
    return new Unsure(because);
  }

  /** "sure", or "unsure, because ...". */
  default String words() {
    return this instanceof Unsure unsure ? "unsure, because " + unsure.because() : "sure";
  }
}
