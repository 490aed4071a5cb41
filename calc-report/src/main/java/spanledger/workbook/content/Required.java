package spanledger.workbook.content;

import org.jspecify.annotations.Nullable;

/** Looks up what earlier sheets must have written. */
final class Required {

  private Required() {}

  /**
   * The value itself.
   *
   * @throws IllegalStateException if there is none; a fault of the program
   */
  static <T> T of(@Nullable T value, String what) {
    if (value == null) {
      throw new IllegalStateException(what + " is not in the workbook.");
    }
    return value;
  }
}
