package spanledger.picture.page;

import org.jspecify.annotations.Nullable;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Lettering;
import spanledger.picture.Mark;
import spanledger.picture.Spot;

/** Words in which an underscore lowers the letters behind it: I_y. */
public final class SymbolText {

  private static final double SMALL = 0.75;
  private static final double LOWERED = 0.22;

  private final Lettering lettering;
  private final double size;

  public SymbolText(Lettering lettering, double size) {
    this.lettering = lettering;
    this.size = size;
  }

  public double width(String words) {
    return write(null, new Spot(0, 0), words, Ink.BLACK);
  }

  /** Writes the words and returns their length. */
  public double write(Drawing.@Nullable Paper paper, Spot at, String words, Ink ink) {
    double x = at.x();
    int from = 0;
    while (from < words.length()) {
      int mark = words.indexOf('_', from);
      int end = mark < 0 ? words.length() : mark;
      x += piece(paper, new Spot(x, at.y()), words.substring(from, end), size, ink);
      if (mark < 0) {
        break;
      }
      int to = mark + 1;
      while (to < words.length() && Character.isLetterOrDigit(words.charAt(to))) {
        to++;
      }
      Spot low = new Spot(x, at.y() + size * LOWERED);
      x += piece(paper, low, words.substring(mark + 1, to), size * SMALL, ink);
      from = to;
    }
    return x - at.x();
  }

  private double piece(
      Drawing.@Nullable Paper paper, Spot at, String words, double height, Ink ink) {
    if (paper != null && !words.isBlank()) {
      paper.words(at, words, height, Mark.Anchor.START, ink);
    }
    return lettering.width(words, height);
  }
}
