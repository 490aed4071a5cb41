package spanledger.resistance.joint;

import java.util.EnumSet;
import spanledger.provenance.Confidence;
import spanledger.provenance.Source;

/**
 * The friction between two faces. It is measured, declared or read in a publication; nothing else
 * is taken.
 *
 * @param coefficient μ
 * @param source the test, the publication or the declaration
 */
public record Friction(double coefficient, Source source) {

  /**
   * @throws IllegalArgumentException if μ is not above 0 and at most 1, or is no more than recalled
   */
  public Friction {
    if (!(coefficient > 0) || coefficient > 1) {
      throw new IllegalArgumentException(
          "A coefficient of friction of " + coefficient + " was found; expected above 0, up to 1.");
    }
    if (!EnumSet.of(Confidence.PUBLISHED, Confidence.DECLARED, Confidence.INVENTED)
        .contains(source.confidence())) {
      throw new IllegalArgumentException(
          "The coefficient of friction of "
              + source.citation()
              + " is "
              + source.confidence().words()
              + "; declare it with its test instead.");
    }
  }
}
