package spanledger.picture;

import java.util.List;

/**
 * How a line is drawn.
 *
 * @param ink its colour
 * @param width its width
 * @param dashes lengths of dash, gap, dash, gap ...; empty for a full line
 */
public record Pen(Ink ink, double width, List<Double> dashes) {

  public Pen {
    dashes = List.copyOf(dashes);
  }

  /** A full line. */
  public static Pen full(Ink ink, double width) {
    return new Pen(ink, width, List.of());
  }

  /** A broken line. */
  public static Pen dashed(Ink ink, double width, Double... dashes) {
    return new Pen(ink, width, List.of(dashes));
  }
}
