package spanledger.tables;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the name that was probably meant. */
public final class NearMiss {

  private NearMiss() {}

  /**
   * The known name nearest to a word, if it is near enough to be a slip: at most a third of the
   * letters differ. Capitals do not count. Of names equally near, the first in alphabetical order.
   *
   * @param word what was found
   * @param known what would have been right, not modified
   */
  public static Optional<String> of(String word, Collection<String> known) {
    int most = word.length() / 3;
    LevenshteinDistance distance = new LevenshteinDistance(most);
    return known.stream()
        .filter(name -> distance(distance, word, name) >= 0)
        .min(
            Comparator.<String>comparingInt(name -> distance(distance, word, name))
                .thenComparing(Comparator.naturalOrder()));
  }

  /** The question to begin a remedy with, or nothing. */
  static String question(String word, Collection<String> known) {
    return of(word, known).map(name -> "Did you mean " + name + "? ").orElse("");
  }

  private static int distance(LevenshteinDistance distance, String word, String name) {
    return distance.apply(word.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT));
  }
}
