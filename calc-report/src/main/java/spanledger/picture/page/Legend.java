package spanledger.picture.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import spanledger.picture.Drawing;
import spanledger.picture.Ink;
import spanledger.picture.Lettering;
import spanledger.picture.Mark;
import spanledger.picture.Pen;
import spanledger.picture.Spot;
import spanledger.picture.Trace;

/** Lines of words beside a section, some with a sample of what they explain. */
public final class Legend {

  static final double SIZE = 12;
  private static final double LINE = 18;
  private static final double SAMPLE = 34;

  private final Drawing.Paper paper;
  private final SymbolText text;
  private final SymbolText heading;
  private final double left;
  private final double width;
  private double y;

  public Legend(Drawing.Paper paper, Lettering lettering, Spot at, double width) {
    this.paper = paper;
    text = new SymbolText(lettering, SIZE);
    heading = new SymbolText(lettering, SIZE + 1);
    this.left = at.x();
    this.y = at.y();
    this.width = width;
  }

  /** Where the next line would be. */
  public double bottom() {
    return y;
  }

  public void heading(String words) {
    y += 6;
    heading.write(paper, new Spot(left, y), words, Ink.BLACK);
    paper.line(
        Trace.through(new Spot(left, y + 5), new Spot(left + width, y + 5)),
        Pen.full(Ink.QUIET, 0.6));
    y += LINE + 4;
  }

  /** Words in as many lines as they need. */
  public void words(String words, Ink ink) {
    wrapped(words, 0, ink);
  }

  /** A symbol and what it is worth. */
  public void value(String symbol, String value) {
    text.write(paper, new Spot(left, y), symbol, Ink.QUIET);
    paper.words(new Spot(left + 62, y), value, SIZE, Mark.Anchor.START, Ink.BLACK);
    y += LINE;
  }

  /** Words after a sample that is drawn around the given place, at most 30 wide and 14 high. */
  public void sample(BiConsumer<Drawing.Paper, Spot> sample, String words) {
    sample.accept(paper, new Spot(left + 15, y - SIZE * 0.35));
    wrapped(words, SAMPLE, Ink.BLACK);
  }

  /** Words after a piece of line. */
  public void line(Pen pen, String words) {
    sample((on, at) -> on.line(Trace.through(at.plus(-15, 0), at.plus(15, 0)), pen), words);
  }

  public void gap() {
    y += LINE / 2;
  }

  private void wrapped(String words, double indent, Ink ink) {
    for (String line : lines(words, width - indent)) {
      text.write(paper, new Spot(left + indent, y), line, ink);
      y += LINE - 2;
    }
    y += 2;
  }

  private List<String> lines(String words, double room) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : words.split(" ", -1)) {
      if (line.length() > 0 && text.width(line + " " + word) > room) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
