package spanledger.summary;

import java.util.List;

/** The words that stand under every result. */
public final class Cautions {

  /** One caution per line. */
  public static final List<String> LINES =
      List.of(
          "People stand on these structures. This calculation is not a substitute for the judgement"
              + " and signature of a licensed engineer.",
          "Local codes and authorities govern. Figures marked 'from memory' must be confirmed against"
              + " the standard before anyone relies on them.");

  private Cautions() {}
}
