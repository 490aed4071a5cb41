package spanledger.workbook.layout;

/**
 * The words in which cells judge. What is bad is in capitals, so that it shows without colour, too.
 */
public enum Outcome {
  PASS("pass", Tone.GOOD),
  FAIL("FAIL", Tone.BAD),
  NOT_CHECKED("NOT CHECKED", Tone.OPEN),
  /** A force handed on to somebody else's check. */
  DEMAND("demand", Tone.NEUTRAL),
  AGREES("agrees", Tone.GOOD),
  DIFFERS("DIFFERS", Tone.BAD),
  IN_RANGE("in range", Tone.GOOD),
  OUT_OF_RANGE("OUT OF RANGE", Tone.BAD),
  BALANCED("balanced", Tone.GOOD),
  NOT_BALANCED("NOT BALANCED", Tone.BAD);

  enum Tone {
    GOOD,
    NEUTRAL,
    OPEN,
    BAD
  }

  private final String words;
  private final Tone tone;

  Outcome(String words, Tone tone) {
    this.words = words;
    this.tone = tone;
  }

  /** The text in the cell. */
  public String words() {
    return words;
  }

  Tone tone() {
    return tone;
  }

  /** The live judgement {@code IF(condition, good, bad)}. */
  public static String formula(String condition, Outcome whenTrue, Outcome whenFalse) {
    return "IF(" + condition + ",\"" + whenTrue.words + "\",\"" + whenFalse.words + "\")";
  }
}
