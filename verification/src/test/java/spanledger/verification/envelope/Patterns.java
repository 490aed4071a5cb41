package spanledger.verification.envelope;

import java.util.ArrayList;
import java.util.List;

/** All ways of choosing some of a few things. */
final class Patterns {

  private Patterns() {}

  static <T> List<List<T>> all(List<T> things) {
    List<List<T>> patterns = new ArrayList<>();
    for (int bits = 0; bits < 1 << things.size(); bits++) {
      List<T> chosen = new ArrayList<>();
      for (int i = 0; i < things.size(); i++) {
        if ((bits >> i & 1) == 1) {
          chosen.add(things.get(i));
        }
      }
      patterns.add(chosen);
    }
    return patterns;
  }

  /** All of them, none of them, and each one alone. */
  static <T> List<List<T>> few(List<T> things) {
    List<List<T>> patterns = new ArrayList<>();
    patterns.add(List.of());
    if (!things.isEmpty()) {
      patterns.add(things);
      things.forEach(one -> patterns.add(List.of(one)));
    }
    return patterns;
  }
}
