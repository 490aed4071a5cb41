package spanledger.picture;

import java.util.Optional;

/** Something drawn. */
public sealed interface Mark {

  /**
   * A shape: filled, outlined, or both. Where runs of its trace overlap, an even number of them
   * leaves the paper bare, so that holes are holes.
   */
  record Shape(Trace trace, Optional<Ink> fill, Optional<Pen> pen) implements Mark {}

  /**
   * Words on one line.
   *
   * @param at the end of their base line that {@code anchor} names
   * @param words plain text
   * @param size height of the letters' body
   * @param anchor which part of the words is at the place
   * @param turn of the base line, clockwise, in degrees
   * @param ink colour
   * @param cleared whether the paper around the letters is kept free of what was drawn before
   */
  record Words(
      Spot at, String words, double size, Anchor anchor, double turn, Ink ink, boolean cleared)
      implements Mark {}

  /** Which part of words is at their place. */
  enum Anchor {
    START("start"),
    MIDDLE("middle"),
    END("end");

    private final String word;

    Anchor(String word) {
      this.word = word;
    }

    /** As SVG names it. */
    String word() {
      return word;
    }

    /** How much of the length of the words is before the place. */
    double before() {
      return ordinal() / 2.0;
    }
  }
}
