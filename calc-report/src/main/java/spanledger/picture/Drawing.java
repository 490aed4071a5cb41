package spanledger.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A finished drawing. Its units are those of a screen with 96 dots per inch.
 *
 * @param width of the paper
 * @param height of the paper
 * @param title what it is, in a few words
 * @param description what there is to see, for those who cannot see it
 * @param marks from the one drawn first to the one on top
 */
public record Drawing(
    double width, double height, String title, String description, List<Mark> marks) {

  public Drawing {
    marks = List.copyOf(marks);
  }

  /** A drawing in the making. */
  public static final class Paper {
    private final List<Mark> marks = new ArrayList<>();

    /** Starts with an empty paper. */
    public Paper() {}

    /** Draws a line. */
    public Paper line(Trace trace, Pen pen) {
      marks.add(new Mark.Shape(trace, Optional.empty(), Optional.of(pen)));
      return this;
    }

    /** Fills an area. */
    public Paper area(Trace trace, Ink ink) {
      marks.add(new Mark.Shape(trace, Optional.of(ink), Optional.empty()));
      return this;
    }

    /** Fills an area and draws its edge. */
    public Paper area(Trace trace, Ink ink, Pen edge) {
      marks.add(new Mark.Shape(trace, Optional.of(ink), Optional.of(edge)));
      return this;
    }

    /** Writes level words. */
    public Paper words(Spot at, String words, double size, Mark.Anchor anchor, Ink ink) {
      marks.add(new Mark.Words(at, words, size, anchor, 0, ink, false));
      return this;
    }

    /** Adds any mark. */
    public Paper mark(Mark mark) {
      marks.add(mark);
      return this;
    }

    /** The drawing so far. */
    public Drawing finish(double width, double height, String title, String description) {
      return new Drawing(width, height, title, description, marks);
    }
  }
}
